package layouts

// Dolly is the sheet that is taped to a dolly: its cabinets with the joints
// that are set on it, read from 2 m. At most eight cabinets a sheet.
type Dolly struct {
	Sheet    string // 'SL DOLLY A'
	ID       string
	Word     string // 'dolly', or 'cabinets' where a stack has no dollies
	Which    string // 'A', '1-8'
	Revision string
	Shape    string
	Joins    string // '1st of 2: joins the bar above, dolly B below'
	Part     string // 'cabinets 1-8 of this dolly', or ""
	Above    string // what the first joint hangs from
	Picks    []PickHole
	First    string   // how the first joint is made
	Rows     []PinRow // cabinets with the joints above them
	Below    string   // what hangs below; "" for nothing
	Ghost    string   // '1 · goes with dolly B'
	Caption  string   // of the boxes
	Boxes    bool     // two link pins at some joint
	PinsSet  string   // when the pins are set; "" for a blank line to fill in
	Sum      string   // '0 + 0.5 + 0.5 + 1 = 2'
	Figures  []Line
	LoadOut  string // in the black box
	Code     Code
}

// A PickHole is a pick hole to use, as it prints on the first dolly's sheet:
// what it is ('pick hole front') and its label.
type PickHole struct{ Of, Label string }

func (d Dolly) pages(*canvas) []page {
	return []page{{name: d.Sheet, shape: d.Shape, inner: true, draw: d.draw}}
}

const (
	dollyDigit = 12.0 // mm; NUREG-0700 rev. 3, 11.4.1.5-1: 20 minutes of arc at 2 m is 11.6 mm
	idTall     = 24.0
	wordTall   = 10.0
	dollyMost  = 18.0
	dollyRow   = 36.0
)

func (d Dolly) draw(c *canvas, room box) {
	room = c.dollyHead(room, d)
	foot := c.dollyFootHeight(d, room.w)
	rows := box{room.x, room.y, room.w, room.h - foot}
	c.in("joints", rows, func() { c.dollyRows(rows, d) })
	c.dollyFoot(box{room.x, rows.bottom(), room.w, foot}, d)
}

// dollyHead draws the stack's id and the dolly's letter, large, with REV. A
// long id has the line to itself, dolly and REV below it.
func (c *canvas) dollyHead(room box, d Dolly) box {
	id, word, rev := digits(idTall), digits(wordTall), digits(dollyDigit)
	revision := "REV " + d.Revision
	name := c.width(id, d.ID)
	dolly := 5 + c.width(word, d.Word) + 5 + c.whichWidth(d)
	height, wordX, second := 40.0, room.x+name, 0.0
	if len(d.ID) > 3 || name+dolly+6+c.width(rev, revision) > room.w {
		height, wordX, second = 68, room.x-5, 28
	}
	revY := 14.0 + second
	if second > 0 && dolly+c.width(rev, revision) > room.w {
		height, revY = height+15, revY+26
	}
	c.in("head", box{room.x, room.y, room.w, height}, func() {
		c.text(room.x, room.y+idTall+1, id, d.ID)
		base := room.y + idTall + 1 + second
		c.text(wordX+5, base, word, d.Word)
		c.text(wordX+10+c.width(word, d.Word), base, c.whichFace(d), d.Which)
		c.right(room.right(), room.y+revY-1, rev, revision)
		c.right(room.right(), room.y+revY+3.2, small, "bin any other")
		mark := 15.0
		c.sideMark(d.Shape, box{room.right() - mark, room.y + revY + 5, mark, mark})
		c.lines(room.x, room.y+height-8, text, c.wrap(text, room.w-mark-6, d.Joins))
		c.line(room.x, room.y+height-1.5, room.right(), room.y+height-1.5, heavy)
	})
	return box{room.x, room.y + height, room.w, room.h - height}
}

// whichFace is 24 mm tall for a dolly's letter, and as tall as the word beside
// it for a range of cabinets.
func (c *canvas) whichFace(d Dolly) face {
	if d.Word == "dolly" {
		return digits(idTall)
	}
	return digits(wordTall)
}

func (c *canvas) whichWidth(d Dolly) float64 { return c.width(c.whichFace(d), d.Which) }

// dollyRows draws the cabinets with their tabs and boxes. Rows are as tall as
// the page allows, and the figures grow with them.
func (c *canvas) dollyRows(room box, d Dolly) {
	const ghost, top = 10.0, 12.0
	bar := 12.0
	if len(d.Picks) > 0 {
		bar = 17
	}
	row := min((room.h-top-bar-ghost-2)/float64(len(d.Rows)), dollyRow)
	t := c.dollyTabs(d, row)
	boxW := room.w - 4*tickSide*1.25 - 14
	x := [4]float64{}
	for i := range x {
		x[i] = room.x + boxW + 5 + float64(i)*tickSide*1.25 + float64(i/2)*4
	}
	c.tickHeads(room.y, x, d.Boxes)
	c.audience(box{room.x, room.y + 1, 22, 8})
	c.text(room.x+25, room.y+6.4, textB, "audience this way: tape it so that the arrow points there")
	tabX := room.x + boxW - t.width() - 6
	y := room.y + top
	c.dollyBar(box{room.x, y, boxW, bar}, tabX, d)
	y += bar
	for i, r := range d.Rows {
		c.dollyRow(box{room.x, y + row*float64(i), boxW, row}, tabX, r)
		c.dollyTicks(x, y+row*float64(i), r.Pins)
	}
	c.lines(room.x+24, y+4.2, small, c.wrap(small, tabX-room.x-26, d.First))
	for i, r := range d.Rows {
		c.tab(tabX, y+row*float64(i), t, r.Hole)
	}
	y += row * float64(len(d.Rows))
	c.dollyBelow(box{room.x, y, boxW, ghost}, tabX, t.width(), d)
}

// dollyTabs are as large as their rows leave room, 12 to 18 mm.
func (c *canvas) dollyTabs(d Dolly, row float64) tabStyle {
	var holes []Hole
	for _, r := range d.Rows {
		holes = append(holes, r.Hole)
	}
	digit := max(min(row*0.62, dollyMost), dollyDigit)
	return c.tabsFor(digit+2.4, digit, section, holes)
}

// dollyBar draws what the first joint hangs from: on the first dolly the bar
// with its pick holes, as tall as the holes of the joints.
func (c *canvas) dollyBar(b box, tabX float64, d Dolly) {
	c.rect(b, solid, grey)
	if len(d.Picks) == 0 {
		c.lines(b.x+4, b.y+5.4, textB, c.wrap(textB, tabX-b.x-6, d.Above))
		return
	}
	x, f := b.x+4, digits(dollyDigit)
	for _, p := range d.Picks {
		words := c.wrap(textB, 14, p.Of)
		c.lines(x, b.y+b.h/2+1.4-float64(len(words)-1)*textB.lead()/2, textB, words)
		x += 15
		c.rect(box{x, b.y + 1.2, c.width(f, p.Label) + 3, b.h - 2.4}, solid, white)
		x += 1.5 + c.width(f, p.Label)
		c.endLabel(x, b.y+b.h/2+dollyDigit/2, dollyDigit, p.Label)
		x += 6
	}
	if room := tabX - x - 2; room > 20 {
		c.lines(x, b.y+4.6, small, c.wrap(small, room, d.Above))
	}
}

// tickHeads writes what the boxes of a dolly sheet are for.
func (c *canvas) tickHeads(y float64, x [4]float64, both bool) {
	side := tickSide * 1.25
	for i, s := range []string{"pinned", "checked"} {
		c.centre((x[2*i]+x[2*i+1]+side)/2, y+4, textB, s)
	}
	if !both {
		return
	}
	for i, s := range []string{"L", "R", "L", "R"} {
		c.centre(x[i]+side/2, y+8, text, s)
	}
}

// dollyTicks draws a joint's boxes: two a side, or one for a pin in the middle.
func (c *canvas) dollyTicks(x [4]float64, y float64, pins int) {
	const side = tickSide * 1.15
	for i := 0; i < 4; i++ {
		at := x[i]
		if pins == 1 {
			if i%2 == 1 {
				continue
			}
			at = (x[i] + x[i+1]) / 2
		}
		c.tick(at, y-side/2, side)
	}
}

// dollyRow draws one cabinet.
func (c *canvas) dollyRow(b box, tabX float64, r PinRow) {
	c.rect(b, solid, white)
	base := b.y + b.h/2 + 4
	c.text(b.x+4, base, digits(8), r.Number)
	name := c.wrap(text, tabX-b.x-26, r.Type)
	c.lines(b.x+24, base-1-float64(len(name)-1)*text.lead()/2, text, name)
}

// dollyBelow draws what hangs below as a pale ghost, with no boxes.
func (c *canvas) dollyBelow(b box, tabX, tabW float64, d Dolly) {
	if d.Below == "" {
		return
	}
	c.dashed(1.5, 1.2, func() { c.rect(b, light, none) })
	c.text(b.x+4, b.y+7, text, d.Below)
	w := max(c.width(text, d.Ghost)+4, tabW)
	c.ghost(tabX+tabW-w, b.y+0.6, w, 6.5, d.Ghost)
}
