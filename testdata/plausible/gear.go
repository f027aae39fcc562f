package plausible

import (
	"fmt"
	"strings"
)

// gear is three types of cabinet, one or two bars, a dolly and two hoists.
func (w *writer) gear() {
	w.line("gear:\n  cabinets:")
	above := w.one(6) // types whose holes are for the joint above them are rare, and come together
	for i, usual := range []string{"one", "two", "three"} {
		c := cabinet{key: w.key(usual), number: i + 1, above: above && w.most(3)}
		w.cabinet(&c)
		w.cabinets = append(w.cabinets, c)
	}
	w.line("  bars:")
	for _, key := range []string{"bar", "other-bar"}[:1+w.Intn(2)] {
		w.bar(key)
	}
	w.takes = 1 + w.Intn(10)
	w.line("  dollies:\n    dolly: {takes: %d, mass: %s, deck_height: %s%s%s}", w.takes, w.mass(w.between(15, 40)), w.length(w.between(0.1, 0.25)), w.more(), w.stands())
	w.hoist("hoist", w.between(30, 45), 1)
	w.hoist("other-hoist", w.between(20, 50), w.between(1, 2))
}

// stands says how a set stands on the dolly, in half of the jobs.
func (w *writer) stands() string {
	if w.rarely(2) {
		return ", stands: " + w.apart(func() string { return w.pick("flat", "plumb", "plumb") })
	}
	return ""
}

// source says where the figures of a gear entry come from, in a third of them.
func (w *writer) source() (says []string) {
	if w.most(3) {
		return nil
	}
	says = append(says, "source: "+w.pick("data_sheet", "label", "weighed", "drawing", "estimate"))
	if w.one(2) {
		says = append(says, fmt.Sprintf("as_of: 2026-0%d-2%d", 1+w.Intn(9), w.Intn(9)))
	}
	return says
}

// more is the source of a gear entry that stands on one line, after its other keys.
func (w *writer) more() (says string) {
	for _, s := range w.source() {
		says += ", " + s
	}
	return says
}

func (w *writer) cabinet(c *cabinet) {
	front, depth := w.between(0.12, 0.45), w.between(0.25, 0.7)
	w.line("    %s:", c.key)
	if w.one(2) {
		w.line("      name: %q", w.name("Some cabinet ", 31)+fmt.Sprint(c.number))
	}
	c.kg, c.front = w.between(8, 90), front
	w.line("      mass: %s\n      width: %s\n      depth: %s", w.mass(c.kg), w.length(w.between(0.4, 1.3)), w.length(depth))
	w.line("      front_height: %s\n      back_height: %s", w.length(front), w.length(front*w.between(0.6, 1)))
	if w.most(4) {
		w.line("      hinge_behind_front: %s\n      hinge_below_top: %s\n      hinge_pitch: %s", w.length(w.between(0, 0.04)), w.length(w.between(-0.005, 0.005)), w.length(front+w.between(0, 0.003)))
	}
	c.behind, c.below = depth*w.between(0.3, 0.55), front*w.between(0.4, 0.6)
	w.line("      centre_of_gravity: %s", w.notKnown(w.centre(c.behind, c.below)))
	c.arm = depth * w.between(0.6, 0.95)
	w.line("      link_arm: %s", w.length(c.arm))
	w.splayHoles()
	if c.above {
		w.line("      splay_holes_for: joint_above")
	} else if w.one(4) {
		w.line("      splay_holes_for: joint_below")
	}
	if w.one(2) {
		w.line("      pins: {hinge: %d, link: %d}", 1+w.Intn(2), 1+w.Intn(2))
	}
	if w.most(3) {
		w.pinRatings(c.key)
	}
	if w.most(6) {
		w.line("      link_pushes: %s", w.pushes(w.pick("yes", "yes", "no")))
	}
	for _, line := range w.source() {
		w.line("      %s", line)
	}
}

// centre is the centre of gravity of a cabinet, measured from its hinge or from
// its front, or not known.
func (w *writer) centre(behind, below float64) string {
	switch {
	case w.one(8):
		return "not_known"
	case w.one(4):
		return fmt.Sprintf("{behind_front: %s, below_top: %s}", w.length(behind), w.length(below))
	}
	return fmt.Sprintf("{%s}", w.offset(behind, below))
}

// splayHoles are the holes of a joint, as stamped or with labels of their own, and
// the one for the truck, by its degrees or its label.
func (w *writer) splayHoles() {
	list, transport := Splays, "0"
	if w.one(3) {
		list, transport = w.labelled(), w.pick("A", "0")
	}
	w.line("      splay_holes: [%s]", strings.Join(list, ", "))
	if w.one(2) {
		w.line("      transport: %s", transport)
	}
}

// labelled are the holes of a joint with labels of their own.
func (w *writer) labelled() (list []string) {
	for i, s := range Splays {
		label := string(rune('A' + i))
		if w.wild && i == 3 {
			label = "WWWW"
		}
		list = append(list, fmt.Sprintf("{label: %s, splay: %s}", label, s))
	}
	return list
}

func (w *writer) pinRatings(of string) {
	hinge := w.limit(w.load(w.between(20, 90)), func() float64 { kn, _ := w.onPins(of); return kn })
	link := w.limit(w.load(w.between(18, 40)), func() float64 { _, kn := w.onPins(of); return kn })
	w.line("      pin_ratings: {hinge: %s, link: %s}", hinge, link)
}

func (w *writer) bar(key string) {
	b := bar{key: key, kg: w.between(10, 120)}
	mass := w.mass(b.kg)
	b.behind, b.above = w.between(0.1, 0.5), w.between(0.02, 0.12)
	w.line("    %s:\n      mass: %s\n      centre_of_gravity: {%s}", key, mass, w.offset(b.behind, -b.above))
	if w.wild && w.one(2) || w.one(5) {
		w.listedHoles(&b)
	} else {
		w.countedHoles(&b)
	}
	w.bars = append(w.bars, b)
	list := Splays
	if w.rarely(5) {
		list = w.labelled()
	}
	w.line("      splay_holes: [%s]", strings.Join(list, ", "))
	if w.one(3) {
		w.line("      link_arm: %s", w.length(w.between(0.2, 0.6)))
	}
	if w.one(2) {
		rating := w.limit(w.load(w.between(50, 100)), func() float64 { kn, _ := w.onBar(key); return kn })
		pick := w.limit(w.load(w.between(30, 50)), func() float64 { _, kn := w.onBar(key); return kn })
		tilts := w.tiltLimit(fmt.Sprintf("{down: 60 deg, up: %d deg}", 20+w.Intn(40)), key)
		w.line("      rating: %s\n      pick_rating: %s\n      tilt_limit: %s", rating, pick, tilts)
	}
	if w.one(4) {
		w.pinRatings(key)
	}
	if w.one(4) {
		w.line("      most: {%s: %d%s}", w.cabinets[w.Intn(3)].key, 15+w.Intn(26), w.anyType())
	}
	for _, line := range w.source() {
		w.line("      %s", line)
	}
}

// anyType is how many cabinets of all types a bar takes, of two bars in three.
func (w *writer) anyType() string {
	if w.rarely(3) {
		return ""
	}
	return w.apart(func() string { return fmt.Sprintf(", any: %d", 10+w.Intn(30)) })
}

func (w *writer) countedHoles(b *bar) {
	n, first := 20+w.Intn(60), w.between(-0.3, 0.05)
	says := w.behind(first)
	spacing := w.between(0.01, 0.06)
	w.line("      pick_holes: {count: %d, %s, spacing: %s, %s}", n, says, w.length(spacing), w.below(-w.between(0.04, 0.2)))
	for i := range n {
		b.hole(fmt.Sprint(i+1), first+float64(i)*spacing)
	}
}

func (w *writer) listedHoles(b *bar) {
	w.line("      pick_holes:")
	form := w.pick("F%d", "%d", "C-%d")
	if w.wild {
		form = "WW%02d"
	}
	for i := range 30 {
		behind := "behind_hinge: "
		if w.rarely(8) {
			behind = "ahead_of_hinge: -"
		}
		mm := 5 + i*30 + w.Intn(20)
		b.hole(fmt.Sprintf(form, i+1), float64(mm)/1000)
		w.line("        - {label: %s, %s%d mm, %s}", b.holes[i], behind, mm, w.below(-w.between(0.04, 0.06)))
	}
}

// hole adds a pick hole, metres behind the hinge pin.
func (b *bar) hole(label string, behind float64) {
	b.holes, b.at = append(b.holes, label), append(b.at, behind)
}

// hoist is a hoist of a capacity in kilonewtons; times makes a larger one heavier. A
// fifth have chain that may reach the dollies, trim alone or neither.
func (w *writer) hoist(key string, kn, times float64) {
	if w.hoists = append(w.hoists, key); len(w.hoists) == 1 {
		w.line("  hoists:")
	}
	more := w.more()
	falls := 1.0
	if w.one(2) {
		falls = float64(1 + w.Intn(2))
		more += fmt.Sprintf(", falls: %g", falls)
	}
	if w.one(2) {
		more += fmt.Sprintf(", class: %q", w.name("over people", 48))
	}
	if w.one(2) {
		more += ", speed: " + w.speed(w.between(2, 16))
	}
	capacity := w.limit(w.load(kn), func() float64 { return w.onHoist(key) })
	mass, chain, length := w.mass(52*times), w.perLength(1.1*times), w.length(falls*w.between(57.5, 62))
	if w.rarely(5) {
		length = w.apart(func() string { return w.length(falls * w.between(20, 60)) })
	}
	w.line("    %s: {capacity: %s, mass: %s, chain_mass: %s, chain_length: %s, headroom: %s%s}", key, capacity, mass, chain, length, w.length(w.between(0.5, 0.7)), more)
}
