package layouts

// Cautions is the sheet of what this job's crew must know, and of what to look
// at before anything is lifted.
type Cautions struct {
	Stacks []StackCautions
	Before []string
	Rules  []string
}

// StackCautions are the cautions of one stack, or of several that share them.
type StackCautions struct {
	ID, Name, Shape string
	Items           []Caution
}

// A Caution is a sentence with where it applies.
type Caution struct{ Where, Says string }

func (v Cautions) pages(c *canvas) []page {
	var pieces []piece
	for _, s := range v.Stacks {
		pieces = append(pieces, c.cautionHead(s))
		for _, item := range s.Items {
			pieces = append(pieces, c.cautionRow(item))
		}
	}
	pieces = append(pieces, c.beforeUse(v.Before))
	for _, r := range v.Rules {
		pieces = append(pieces, c.words(reading, r, 1.6))
	}
	return c.flowing("cautions", "CAUTIONS", "", plainHead("CAUTIONS", "each with its figure and its place"), pieces)
}

func (c *canvas) cautionHead(s StackCautions) piece {
	x := 11 + c.width(section, s.ID)
	name := c.wrap(text, c.body().w-x, s.Name)
	return piece{h: 10 + float64(len(name)-1)*text.lead(), draw: func(c *canvas, room box) {
		c.sideMark(s.Shape, box{room.x, room.y + 2.4, 5, 5})
		c.text(room.x+7, room.y+7, section, s.ID)
		c.lines(room.x+x, room.y+7, text, name)
	}, keep: true}
}

func (c *canvas) cautionRow(item Caution) piece {
	const at = 46.0
	where, says := c.wrap(small, at-4, item.Where), c.wrap(reading, c.body().w-at, item.Says)
	h := max(float64(len(where))*small.lead(), float64(len(says))*reading.lead()) + 2.4
	return piece{h: h, draw: func(c *canvas, room box) {
		c.lines(room.x, room.y+4.6, small, where)
		c.lines(room.x+at, room.y+4.6, reading, says)
		c.line(room.x, room.bottom(), room.right(), room.bottom(), light)
	}}
}

// beforeUse is what to look at before use, with boxes to tick.
func (c *canvas) beforeUse(items []string) piece {
	w := c.body().w - 12
	h := 14.0
	for _, s := range items {
		h += max(float64(len(c.wrap(reading, w, s)))*reading.lead()+2, 8)
	}
	return piece{h: h, draw: func(c *canvas, room box) {
		c.text(room.x, room.y+9, section, "Look at, with eyes and hands, before use")
		c.handsOff(box{room.right() - 26, room.y + 2, 11, 9})
		c.stop(box{room.right() - 11, room.y + 2, 9, 9})
		y := room.y + 14
		for _, s := range items {
			lines := c.wrap(reading, w, s)
			c.tick(room.x, y-1, tickSide)
			c.lines(room.x+10, y+3.2, reading, lines)
			y += max(float64(len(lines))*reading.lead()+2, 8)
		}
	}}
}
