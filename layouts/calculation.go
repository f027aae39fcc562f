package layouts

// Loads is the sheet of what each joint of a stack carries and of what to read
// after each dolly is joined.
type Loads struct {
	Sheet  string
	Head   Head
	Joints []JointRow
	Lifts  []LiftRow
	Points []PointRow
	Notes  []string
}

// A JointRow is a cabinet with the joint above it, in words.
type JointRow struct{ Joint, Looks, Lowest, Hinge, Along, Link, HingeUse, LinkUse string }

// A LiftRow is the stack after a dolly has been joined, in words.
type LiftRow struct{ After, Flown, Mass, Hook, Looks, Bar, Drop string }

// A PointRow is one point of the roof, in words.
type PointRow struct{ ID, Place, Pick, Hook, Carries, Static, Design string }

// Columns of the three tables; the last of each takes what is left.
var (
	jointColumns = []column{{"joint above cabinet", 17, false}, {"cabinet looks", 23, true}, {"its lowest corner", 29, true},
		{"hinge, all", 21, true}, {"of it along", 28, true}, {"rear link", 28, true}, {"hinge pin used", 14, true}, {"link pin used", 0, true}}
	liftColumns = []column{{"after", 17, false}, {"flown", 23, false}, {"mass", 18, true}, {"hook reads", 49, true},
		{"cabinet 1 looks", 20, true}, {"bar tilts", 20, true}, {"pick to lowest corner", 0, true}}
	pointColumns = []column{{"point", 23, false}, {"place", 44, false}, {"pick hole", 28, true}, {"low hook", 28, true},
		{"pick carries", 16, true}, {"static", 16, true}, {"design", 0, true}}
)

// pages sets the tables in running type, or where that takes a second page in
// the smallest.
func (v Loads) pages(c *canvas) []page {
	pages := c.flowing("", v.Sheet, v.Head.Shape, c.underHead(v.Head), v.pieces(c, text))
	if len(pages) > 1 {
		pages = c.flowing("", v.Sheet, v.Head.Shape, c.underHead(v.Head), v.pieces(c, small))
	}
	return pages
}

// underHead is the head of a stack's sheet, for pieces that flow below it.
func (c *canvas) underHead(h Head) func(*canvas, box, string) box {
	return func(on *canvas, room box, _ string) box {
		if on == nil {
			return c.headRoom(room, h)
		}
		return on.head(room, h)
	}
}

func (v Loads) pieces(c *canvas, f face) (pieces []piece) {
	table := func(heading string, columns []column, rows [][]string) {
		columns = c.rest(columns)
		pieces = append(pieces, c.heading(heading), c.tableHead(columns))
		for _, r := range rows {
			pieces = append(pieces, c.tableRow(columns, r, f, false))
		}
	}
	var joints, lifts, points [][]string
	for _, r := range v.Joints {
		joints = append(joints, []string{r.Joint, r.Looks, r.Lowest, r.Hinge, r.Along, r.Link, r.HingeUse, r.LinkUse})
	}
	for _, r := range v.Lifts {
		lifts = append(lifts, []string{r.After, r.Flown, r.Mass, r.Hook, r.Looks, r.Bar, r.Drop})
	}
	for _, r := range v.Points {
		points = append(points, []string{r.ID, r.Place, r.Pick, r.Hook, r.Carries, r.Static, r.Design})
	}
	table("What each joint carries, both sides together", jointColumns, joints)
	table("What to read after each dolly is joined", liftColumns, lifts)
	table("What the roof carries", pointColumns, points)
	pieces = append(pieces, piece{h: 4, draw: func(*canvas, box) {}})
	for _, n := range v.Notes {
		pieces = append(pieces, c.words(small, n, 1))
	}
	return pieces
}

// rest gives the last column what the others leave of the page.
func (c *canvas) rest(columns []column) []column {
	columns = append([]column{}, columns...)
	left := c.body().w
	for _, col := range columns {
		left -= col.w
	}
	columns[len(columns)-1].w = left
	return columns
}
