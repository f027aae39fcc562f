package plausible

import (
	"fmt"
	"strings"
)

// stacks are up to three; of three the last one may be a twin of the first.
func (w *writer) stacks() {
	w.line("stacks:")
	n := 1 + w.Intn(3)
	for i := range n {
		id := fmt.Sprintf("S%d", i)
		if w.wild && w.one(2) {
			id = fmt.Sprintf("WWWWW%d", i)
		}
		w.line("  - id: %s", id)
		if i == 0 || w.most(4) {
			w.line("    name: %q", w.name("Main", 48))
		}
		w.note("    ")
		if w.one(2) {
			w.line("    shape: %s", w.pick("square", "circle", "triangle", "diamond"))
		}
		w.line("    place: {%s, pan: %.1f deg stage_%s}", w.place(), w.between(-90, 90), w.pick("left", "left", "right"))
		if i == 2 && w.one(2) && strings.Contains(w.text.String(), "  - id: S0\n") {
			w.line("    twin_of: S0")
			w.trim()
			if w.edge.one(2) {
				w.line("    steel: %s", w.atEdge(func() string { return w.length(w.between(20, 36)) })) // it may be too low for the twin alone
			}
			continue
		}
		w.stack()
	}
}

// stack writes all that a stack gives after its place.
func (w *writer) stack() {
	b := w.bars[w.Intn(len(w.bars))]
	w.line("    bar: %s", b.key)
	c := w.column(b)
	total := len(c.cabinets)
	if w.most(4) {
		w.line("    dolly: dolly")
		w.sets(total)
	}
	if w.one(4) {
		w.line("    floor: %s", w.length(w.between(-1, 2)))
	}
	if w.most(3) {
		way := w.pick("on_dolly", "in_the_air")
		if w.rarely(3) {
			way = "at_the_hoist"
		}
		w.line("    pins_set: %s", way)
	}
	w.line("    aim: %s", w.aim(c))
	w.hang(c)
	w.trim()
	w.extras(total)
	if w.one(2) {
		w.line("    secondary: {what: %q, rating: %s}", w.name("steel bond", 48), w.load(w.between(1, 30)))
	}
}

// way is one of the ways to set link pins.
func (w *writer) way() string { return w.pick("on_dolly", "at_the_hoist", "in_the_air") }

// column writes the cabinets from the top. Below holes for the joint above there have
// to be more of that kind.
func (w *writer) column(b bar) *column {
	w.line("    cabinets:")
	most := 1 + w.Intn(24)
	if w.wild {
		most = 1 + w.Intn(40)
	}
	column := &column{bar: b, straight: w.edge.up && !w.edge.one(4)}
	w.columns = append(w.columns, column)
	above := cabinet{}
	for len(column.cabinets) < most {
		n := 1 + w.Intn(most-len(column.cabinets))
		var list []string
		for range n {
			list = append(list, Splays[w.Intn(len(Splays)/2)])
		}
		c := w.cabinets[w.Intn(len(w.cabinets))]
		if above.above && !c.above {
			c = above
		}
		w.line("      - {type: %s, count: %d, splay: [%s]}", c.key, n, strings.Join(column.add(c, list), ", "))
		above = c
	}
	return column
}

// aim writes where cabinet 1 looks.
func (w *writer) aim(c *column) string {
	deg, way := w.between(0, 8), w.pick("up", "down")
	says := fmt.Sprintf("%.1f deg %s", deg, way)
	if w.one(8) {
		says, deg = "level", 0
	}
	if c.straight {
		return w.lookingUp(c)
	}
	if way == "up" {
		deg = -deg
	}
	c.aimed(deg * degree)
	return says
}

// sets says in a fifth of the stacks how many cabinets stand on each dolly; in one of
// ten of them a set is larger than the dolly takes.
func (w *writer) sets(total int) {
	if w.most(5) {
		return
	}
	most := w.takes
	if w.one(10) {
		most = w.takes + 1
	}
	var sets []string
	for left := total; left > 0; {
		n := min(left, 1+w.Intn(most))
		sets, left = append(sets, fmt.Sprint(n)), left-n
	}
	w.line("    sets: [%s]", strings.Join(sets, ", "))
}

// hang is one hoist or two with their rigging and their steel.
func (w *writer) hang(c *column) {
	b := c.bar
	cell := w.pick("", ", load_cell: above_hoist", ", load_cell: below_hoist")
	two := w.most(2)
	if two {
		front := w.Intn(5)
		rear := front + 10 + w.Intn(len(b.holes)-front-10)
		if w.wild {
			rear = front + 1 + w.Intn(14)
		}
		front, rear = w.nearOne(c, front, rear)
		c.holes = []int{front, rear}
		hoist := func() string {
			key := w.pick(w.hoists...)
			c.hoists = append(c.hoists, key)
			return key
		}
		w.line("    hang: {picks: 2, hoist: %s, front_hole: %s, rear_hole: %s%s}", w.ofEnds(two, hoist), b.holes[front], b.holes[rear], cell)
	} else {
		c.hoists = []string{"hoist"}
		hole := w.pick("", "", ", pick_hole: auto")
		if w.one(8) {
			hole = ", pick_hole: " + b.holes[w.Intn(len(b.holes))]
		}
		w.line("    hang: {picks: 1, hoist: hoist%s%s}", hole, cell)
	}
	if w.most(3) {
		w.line("    steel: %s", w.ofEnds(two, func() string { return w.length(w.between(58, 62)) }))
	}
	w.line("    rigging_below: %s", w.ofEnds(two, func() string { return w.rigging(9, 0.4) }))
	if w.most(6) {
		w.line("    rigging_above: %s", w.ofEnds(two, func() string { return w.rigging(12, 1) }))
	}
}

// ofEnds writes one value for both ends or, where there are two hoists, in a third
// of them one for each.
func (w *writer) ofEnds(two bool, value func() string) string {
	if !two || w.most(3) {
		return value()
	}
	return fmt.Sprintf("{front: %s, rear: %s}", value(), value())
}

func (w *writer) rigging(kg, m float64) string {
	if w.one(8) {
		return "0"
	}
	return fmt.Sprintf("{mass: %s, length: %s}", w.mass(w.between(0, kg)), w.length(w.between(0, m)))
}

func (w *writer) trim() {
	w.line("    trim: {%s: %s}", w.pick("lowest", "highest_pick"), w.length(w.between(20, 30)))
}

// extras are a loom on the bar and something on a cabinet, in half of the stacks.
func (w *writer) extras(total int) {
	if w.one(2) {
		return
	}
	w.line("    extras:\n      - {name: loom, mass: %s, %s}", w.mass(w.between(1, 40)), w.offset(w.between(0.2, 0.5), w.between(-0.1, 0.1)))
	w.line("      - {name: laser, mass: %s, on_cabinet: %d, %s}", w.mass(w.between(0.5, 5)), 1+w.Intn(total), w.offset(w.between(-0.1, 0.2), w.between(0.1, 0.3)))
}
