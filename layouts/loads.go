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

func (v Loads) pages(c *canvas) []page {
	joints := []column{{"joint above cabinet", 22, false}, {"cabinet looks", 24, true}, {"its lowest corner", 24, true}, {"hinge, all", 21, true},
		{"of it along", 27, true}, {"rear link", 27, true}, {"hinge pin used", 15, true}, {"link pin used", 0, true}}
	lifts := []column{{"after", 22, false}, {"flown", 22, false}, {"mass", 20, true}, {"hook reads", 38, true}, {"cabinet 1 looks", 22, true}, {"bar tilts", 22, true}, {"pick to lowest corner", 0, true}}
	points := []column{{"point", 24, false}, {"place", 52, false}, {"pick hole", 22, true}, {"low hook", 22, true}, {"pick carries", 18, true}, {"static", 18, true}, {"design", 0, true}}
	pieces := []piece{c.heading("What each joint carries, both sides together"), c.tableHead(c.rest(joints))}
	for _, r := range v.Joints {
		pieces = append(pieces, c.tableRow(joints, []string{r.Joint, r.Looks, r.Lowest, r.Hinge, r.Along, r.Link, r.HingeUse, r.LinkUse}, small, false))
	}
	pieces = append(pieces, c.heading("What to read after each dolly is joined"), c.tableHead(c.rest(lifts)))
	for _, r := range v.Lifts {
		pieces = append(pieces, c.tableRow(lifts, []string{r.After, r.Flown, r.Mass, r.Hook, r.Looks, r.Bar, r.Drop}, small, false))
	}
	pieces = append(pieces, c.heading("What the roof carries"), c.tableHead(c.rest(points)))
	for _, r := range v.Points {
		pieces = append(pieces, c.tableRow(points, []string{r.ID, r.Place, r.Pick, r.Hook, r.Carries, r.Static, r.Design}, small, false))
	}
	for i, n := range v.Notes {
		if i == 0 {
			pieces = append(pieces, piece{4, func(*canvas, box) {}})
		}
		pieces = append(pieces, c.words(small, n, 1))
	}
	head := func(cv *canvas, room box, _ string) box {
		if cv == nil {
			return c.headRoom(room, v.Head)
		}
		return cv.head(room, v.Head)
	}
	return c.flowing("", v.Sheet, v.Head.Shape, head, pieces)
}

// rest gives the last column what the others leave of the page.
func (c *canvas) rest(columns []column) []column {
	left := c.body().w
	for _, col := range columns {
		left -= col.w
	}
	columns[len(columns)-1].w += left
	return columns
}
