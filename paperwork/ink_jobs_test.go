package paperwork

import (
	"fmt"
	"math/rand"
	"strings"
)

// A crowd writes jobs at the limits of what a job may give: many stacks or many
// cabinets, gear as small and as large as there is, the longest words in letters
// that are tall, deep and wide. The same seed writes the same job.
type crowd struct {
	*rand.Rand
	size                 float64 // of cabinets against a usual one
	stacks, others, most int     // most cabinets of a stack
	least                int
	long                 bool // every text as long as it may be
	unknown, held        bool
	unknowns             int // types of a centre that is not known, so far
	dollies              int // cabinets a dolly takes, 0 for any sets
	picks                int // 0 for either
	kind                 int // of labels
	twins                bool
	types, tied          int // of cabinets; things tied to a stack; 0 for a few
}

// crowds are kinds of jobs that lay their sheets out in different ways.
var crowds = []struct {
	name string
	make func(g *crowd)
}{
	{"any", func(g *crowd) { g.stacks, g.most, g.others = 1+g.Intn(4), 1+g.Intn(30), g.Intn(6) }},
	{"many stacks", func(g *crowd) { g.stacks, g.most, g.others = 5+g.Intn(56), 2, g.Intn(61) }},
	{"sixty stacks", func(g *crowd) { g.stacks, g.most, g.others, g.long, g.picks = 60, 1, 60, true, 2 }},
	{"one cabinet each", func(g *crowd) { g.stacks, g.most, g.others, g.dollies = 1+g.Intn(9), 1, g.Intn(3), 1 }},
	{"forty cabinets", func(g *crowd) { g.stacks, g.least, g.most, g.dollies = 1, 40, 40, 1+g.Intn(2) }},
	{"forty cabinets on any dollies", func(g *crowd) { g.stacks, g.least, g.most = 1, 30, 40 }},
	{"all held", func(g *crowd) { g.stacks, g.most, g.others, g.held = 1+g.Intn(30), 6, g.Intn(20), true }},
	{"unknown centres", func(g *crowd) { g.stacks, g.most, g.unknown = 1+g.Intn(3), 1+g.Intn(24), true }},
	{"tiny gear", func(g *crowd) { g.size, g.stacks, g.most = 0.05, 1+g.Intn(3), 1+g.Intn(40) }},
	{"huge gear", func(g *crowd) { g.size, g.stacks, g.most = 7, 1+g.Intn(3), 1+g.Intn(12) }},
	{"longest words", func(g *crowd) { g.stacks, g.most, g.others, g.long = 1+g.Intn(3), 1+g.Intn(24), g.Intn(8), true }},
	{"sixty twins", func(g *crowd) { g.stacks, g.most, g.long, g.twins = 55+g.Intn(6), 1, true, true }},
	{"every cabinet another", func(g *crowd) {
		g.stacks, g.least, g.most, g.long, g.unknown, g.types = 1, 25, 40, true, g.Intn(2) == 0, 40
	}},
	{"all that can be tied on", func(g *crowd) { g.stacks, g.most, g.long, g.tied = 1, 20, true, 200 }},
	{"the roof is full", func(g *crowd) { g.stacks, g.most, g.others = 1+g.Intn(3), 4, 60 }},
}

func crowdOf(seed int64) *crowd {
	g := &crowd{Rand: rand.New(rand.NewSource(seed + 1<<32)), size: 1, least: 1}
	g.kind = g.Intn(5)
	crowds[seed%int64(len(crowds))].make(g)
	return g
}

func (g *crowd) between(lo, hi float64) float64 { return lo + (hi-lo)*g.Float64() }

func (g *crowd) pick(words ...string) string { return words[g.Intn(len(words))] }

// text is usual words or the longest, in letters of every shape.
func (g *crowd) text(usual string, most int) string {
	if !g.long && g.Intn(2) == 0 {
		return usual
	}
	word := g.pick("W", "Wm ", "Ǻģj ", "i", "l.", "ЩЖЮ ", "Ώ", "10.0 ", "a long name of a thing ", "Ǽq", "W/", "fj")
	long := []rune(strings.Repeat(word, most))[:most]
	if long[most-1] == ' ' {
		long[most-1] = 'W'
	}
	return string(long)
}

// key is one name of gear of a kind: no two of a job are alike.
func (g *crowd) key(usual string) string {
	if !g.long && g.Intn(2) == 0 {
		return usual
	}
	return usual + strings.Repeat(g.pick("W", "-", "i"), 32-len(usual)-1) + "W"
}

// length writes some millimetres in one of the ways that a job may.
func (g *crowd) length(mm float64) string {
	inches, sixteenths := int(mm/25.4), g.Intn(16)
	if inches == 0 {
		return fmt.Sprintf("%.1f mm", mm)
	}
	switch g.Intn(6) {
	case 0:
		return fmt.Sprintf("%.3f m", mm/1000)
	case 1:
		return fmt.Sprintf("%d %d/16 in", inches, sixteenths)
	case 2:
		return fmt.Sprintf("%d ft %d %d/16 in", inches/12, inches%12, sixteenths)
	}
	return fmt.Sprintf("%.1f mm", mm)
}

// id is the n-th of the widest ids, or a short one.
func (g *crowd) id(n int) string {
	if g.long || g.Intn(2) == 0 {
		return fmt.Sprintf("WWWW%c%c", 'A'+n/10, 'A'+n%10)
	}
	return fmt.Sprintf("%c%d", 'A'+n%26, n)
}

type writer func(format string, args ...any)

func (g *crowd) job() string {
	var b strings.Builder
	w := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	g.head(w)
	var types []string
	for n := range max(g.types, 1+g.Intn(3)) {
		types = append(types, g.key(fmt.Sprintf("c%d", n)))
	}
	w("gear:\n  cabinets:")
	for n, t := range types {
		g.cabinet(w, n, t)
	}
	rig := g.rig(w)
	w("stacks:")
	for n := range g.stacks {
		g.stack(w, n, types, rig)
	}
	g.otherPoints(w)
	return b.String()
}

// head is what stands before the gear.
func (g *crowd) head(w writer) {
	w("job:\n  title: %q\n  venue: %q\n  date: 2027-12-28\n  revision: %q", g.text("A show", 72), g.text("A hall", 72), g.pick("A", "r.2-x", "WWWWWW"))
	w("  prepared_by: %q\n  contact: %q\n  datum: %q\n  heights_from: %q", g.text("me", 120), g.text("here", 120), g.text("the edge", 120), g.text("arena floor", 120))
	w("  note: %q", g.text("the long ladder", 240))
	if g.Intn(2) == 0 {
		w("  url: https://paper.example/%s", g.pick("a.pdf", "{stack}.pdf", strings.Repeat("long/", 18)+"{page}"))
	}
	w("paper: {size: %s, units: %s}", g.pick("A4", "Letter"), g.pick("metric", "imperial"))
	w("practice: {mass_tolerance: %d %%, dynamic_factor: %.2f, gear_use: 100 %%, least_share: 0 %%, hoist_use: %d %%, reading_floor: %d kg, one_must_hold: %s}",
		g.Intn(31), g.between(1, 3), 60+g.Intn(41), g.Intn(101), g.pick("no", "no", "no", "no", "yes"))
}

func (g *crowd) otherPoints(w writer) {
	if g.others > 0 {
		w("other_points:")
	}
	for n := range g.others {
		w("  - {id: %s, place: {stage_left: %.2f m, downstage: %.2f m}, height: %.1f m, mass: %.0f kg, what: %q}", fmt.Sprintf("OW%s%02d", g.pick("", "WW"), n),
			g.between(-40, 40), g.between(-20, 40), g.between(-20, 200), g.between(0, 5000), g.text("cable pick", 48))
	}
}

func (g *crowd) stack(w writer, n int, types []string, r setup) {
	w("  - id: %s\n    name: %q", g.id(n), g.text("Main", 48))
	if g.Intn(2) == 0 {
		w("    note: %q", g.text("mind the balcony", 240))
	}
	if g.Intn(2) == 0 {
		w("    shape: %s", g.pick("square", "circle", "triangle", "diamond"))
	}
	reach := g.between(5, 60)
	w("    place: {stage_left: %.2f m, downstage: %.2f m, pan: %.1f deg stage_left}", g.between(-reach, reach), g.between(-reach, reach), g.between(-180, 180))
	if g.twins && n > 0 {
		w("    twin_of: %s", g.id(0))
		return
	}
	total := g.least + g.Intn(g.most-g.least+1)
	w("    bar: bar\n    cabinets:")
	g.column(w, total, types)
	if g.Intn(4) > 0 {
		w("    dolly: %s", r.dolly)
		if g.dollies == 0 && g.Intn(2) == 0 {
			w("    sets: [%s]", g.sets(total))
		}
	}
	if g.Intn(2) == 0 {
		w("    pins_set: %s", g.pick("on_dolly", "at_the_hoist", "in_the_air"))
	}
	w("    aim: %.1f deg %s", g.between(0, 30), g.pick("up", "down"))
	g.hang(w, r)
	g.extras(w, total)
}

// column writes cabinets that splay by up to some 75 degrees all together.
func (g *crowd) column(w writer, total int, types []string) {
	_, splays := g.labels(joints)
	most := 1 + min(len(splays)-1, g.Intn(600/total))
	for left := total; left > 0; {
		k := 1 + g.Intn(left)
		var list []string
		for range k {
			list = append(list, splays[g.Intn(most)])
		}
		w("      - {type: %s, count: %d, splay: [%s]}", g.pick(types...), k, strings.Join(list, ", "))
		left -= k
	}
}

func (g *crowd) extras(w writer, total int) {
	most := 5.0 // kg
	if g.held || g.tied > 0 && g.Intn(2) == 0 {
		most = 5000
	}
	for i := range max(g.tied, g.Intn(3)*g.Intn(12)) {
		if i == 0 {
			w("    extras:")
		}
		w("      - {name: %q, mass: %.1f kg, on_cabinet: %d, behind_hinge: %s, below_hinge: 0}", g.text("cable loom", 120), g.between(0, most), 1+g.Intn(total)*g.Intn(2), g.length(g.between(0, 300)))
	}
	if g.Intn(2) == 0 {
		w("    secondary: {what: %q, rating: %.0f kg}", g.text("steel bond", 48), g.between(100, 90000))
	}
}

func (g *crowd) hang(w writer, r setup) {
	trim := g.between(10, 40)
	if g.held {
		trim = -19
	}
	w("    trim: {%s: %.2f m}", g.pick("lowest", "highest_pick"), trim)
	if g.Intn(2) == 0 {
		w("    steel: %.1f m", g.between(60, 200))
	}
	cell := g.pick("", ", load_cell: above_hoist", ", load_cell: below_hoist")
	if two := g.picks == 2 || g.picks == 0 && g.Intn(2) == 0; two {
		front, rear := g.Intn(1+len(r.holes)/8), len(r.holes)-1-g.Intn(1+len(r.holes)/8)
		if g.Intn(3) == 0 {
			front = g.Intn(len(r.holes) * 5 / 6) // about where most centres of gravity are
			rear = min(front+1+len(r.holes)/6, len(r.holes)-1)
		}
		w("    hang: {picks: 2, hoist: {front: %s, rear: %s}, front_hole: %s, rear_hole: %s%s}", r.hoists[0], r.hoists[g.Intn(2)], r.holes[front], r.holes[rear], cell)
		w("    rigging_below: {front: {mass: %.0f kg, length: %s}, rear: {mass: 3 kg, length: 1 ft 6 3/16 in}}", g.between(0, 50), g.length(g.between(0, 2000)))
		return
	}
	w("    hang: {picks: 1, hoist: %s%s}\n    rigging_above: {mass: %.0f kg, length: %s}", g.pick(r.hoists[:]...), cell, g.between(0, 500), g.length(g.between(0, 2000)))
}

// sets shares cabinets among dollies.
func (g *crowd) sets(total int) string {
	var all []string
	for total > 0 {
		n := 1 + g.Intn(total)
		if g.Intn(2) == 0 {
			n = 1 + g.Intn(min(total, 3))
		}
		all, total = append(all, fmt.Sprint(n)), total-n
	}
	return strings.Join(all, ", ")
}
