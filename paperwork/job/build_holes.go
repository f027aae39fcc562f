package job

import (
	"fmt"
	"strconv"
	"strings"

	"hangpack/calc"
)

// holes reads a list of splays, bare as stamped or with labels of their own.
// It is nil if anything in it was complained of, so that nothing is looked up
// in a list that is not whole.
func (b builder) holes(v *value) (holes []Hole) {
	if v == nil {
		return nil
	}
	labels, splays := labelled{}, map[float64]int{}
	for _, item := range v.items {
		label, splay := item, item
		if item.fields != nil {
			label, splay = item.field("label"), item.field("splay")
		}
		b.bareLabel(item)
		b.uniqueSplay(splays, splay)
		b.uniqueLabel(labels, label)
		holes = append(holes, Hole{label.text, splay.num})
	}
	if !v.sound() {
		return nil
	}
	return holes
}

// bareLabel complains of a bare splay that is no label as it is written.
func (b builder) bareLabel(item *value) {
	if item.fields == nil && !item.bad && strings.HasPrefix(item.text, "-") {
		b.in.at(item, "%s has a sign; write a splay as stamped, like 0", item.text)
	}
	if item.fields == nil && !item.bad && !labels.MatchString(item.text) {
		b.in.at(item, "%s is too long for a label; write {label: …, splay: %s}", item.text, item.text)
	}
}

// labelled are the labels of one list, by how they read.
type labelled map[string]*value

// alike makes one of the letters and figures that are taken for each other on paper, on
// stamped metal and over the radio.
var alike = strings.NewReplacer("O", "0", "I", "1", "S", "5", "B", "8", "Z", "2")

// uniqueLabel complains of a label that stands for the second time in its list, or that
// reads like another one there.
func (b builder) uniqueLabel(seen labelled, v *value) {
	if v == nil || v.bad {
		return
	}
	switch first := seen[alike.Replace(v.text)]; {
	case first == nil:
		seen[alike.Replace(v.text)] = v
	case first.text == v.text:
		b.in.at(v, "%q stands here again; it is already on line %d", v.text, first.line)
	default:
		b.in.at(v, "%q reads like %q on line %d, as O and 0, I and 1, S and 5, B and 8, Z and 2 do; mark one of the two holes otherwise", v.text, first.text, first.line)
	}
}

// uniqueSplay complains of a splay that stands for the second time.
func (b builder) uniqueSplay(seen map[float64]int, v *value) {
	if v.bad {
		return
	}
	if line, twice := seen[v.num]; twice {
		b.in.at(v, "a splay of %s stands here again; it is already on line %d", degreesText(v.num), line)
		return
	}
	seen[v.num] = v.line
}

// transport finds the hole for the truck: by its label, or by its degrees where these
// are no other hole's label.
func (b builder) transport(cabinet *value, holes []Hole) *Hole {
	v := cabinet.field("transport")
	if v == nil || v.bad || len(holes) == 0 {
		return nil
	}
	called, set := withLabel(holes, v.text), (*Hole)(nil)
	if number.MatchString(v.text) {
		set = withSplay(holes, float(v.text))
	}
	switch {
	case called != nil && set != nil && called != set:
		b.in.at(v, "%s is the label of the hole of %s degrees and the degrees of the hole %s; %s", v.text, degreesText(called.Splay), set.Label, oneOfTwo(holes, called, set))
	case called != nil:
		return called
	case set != nil:
		return set
	case number.MatchString(v.text):
		b.in.at(v, "splay_holes has no hole for %s; %s", v.text, nearestHoles(holes, float(v.text)))
	default:
		b.in.at(v, "splay_holes has no hole %q; write one by its label or its degrees", v.text)
	}
	return nil
}

// oneOfTwo says how to write either of two holes so that it is taken for no other one.
func oneOfTwo(holes []Hole, called, set *Hole) string {
	degrees, label := degreesText(called.Splay), set.Label
	if withLabel(holes, degrees) != nil || number.MatchString(label) && withSplay(holes, float(label)) != nil {
		return "write labels in splay_holes that are no other hole's degrees"
	}
	return fmt.Sprintf("write %s for the one, %s for the other", degrees, label)
}

func withLabel(holes []Hole, label string) *Hole {
	for i := range holes {
		if holes[i].Label == label {
			return &holes[i]
		}
	}
	return nil
}

func withSplay(holes []Hole, degrees float64) *Hole {
	for i := range holes {
		if holes[i].Splay == degrees {
			return &holes[i]
		}
	}
	return nil
}

// nearestHoles names the holes either side of a splay that has none.
func nearestHoles(holes []Hole, degrees float64) string {
	var below, above *Hole
	for i, h := range holes {
		if h.Splay < degrees && (below == nil || h.Splay > below.Splay) {
			below = &holes[i]
		}
		if h.Splay > degrees && (above == nil || h.Splay < above.Splay) {
			above = &holes[i]
		}
	}
	switch {
	case below == nil:
		return "the nearest is " + above.text()
	case above == nil:
		return "the nearest is " + below.text()
	}
	return fmt.Sprintf("the nearest are %s and %s", below.text(), above.text())
}

// text writes a hole as its degrees, with its label where that is another.
func (h *Hole) text() string {
	if d := degreesText(h.Splay); d != h.Label {
		return d + " (" + h.Label + ")"
	}
	return h.Label
}

func degreesText(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// pickHoles reads a bar's row of pick holes: counted from the front, or one by
// one. It is nil if anything in it was complained of.
func (b builder) pickHoles(v *value) (holes []PickHole) {
	switch {
	case v == nil:
	case v.fields != nil:
		holes = b.countedHoles(v)
	default:
		holes = b.listedHoles(v.items)
	}
	if !v.sound() {
		return nil
	}
	return holes
}

func (b builder) countedHoles(v *value) (holes []PickHole) {
	b.spaced(v)
	first, spacing := b.in.offset(v), v.number("spacing")
	for i := range v.count("count") {
		at := calc.Offset{Behind: first.Behind + float64(i)*spacing, Below: first.Below}
		holes = append(holes, PickHole{strconv.Itoa(i + 1), true, at})
	}
	if n := len(holes); n > 1 && v.sound() {
		b.within(v.field("spacing"), holes[n-1].At.Behind, fmt.Sprintf("pick hole %d", n))
	}
	return holes
}

// spaced complains of more than one hole without a spacing.
func (b builder) spaced(v *value) {
	if v.count("count") <= 1 || v.field("spacing") != nil {
		return
	}
	if !v.excused["spacing"] {
		key := join(v.key, "spacing")
		b.in.complain(v.home, key, "spacing is missing; %s", describe(b.in.rows[join(v.generic, "spacing")]))
	}
	v.bad = true
}

func (b builder) listedHoles(items []*value) (holes []PickHole) {
	seen := labelled{}
	for _, item := range items {
		if item.fields == nil {
			continue
		}
		label := item.field("label")
		b.uniqueLabel(seen, label)
		plain := !label.quoted && isCanonical(label.text)
		holes = append(holes, PickHole{label.text, plain, b.in.offset(item)})
	}
	return holes
}

// isCanonical reports whether a text is a number that a program would write
// the same: 4 and 1.5, and not 04, 4.0 or -0.
func isCanonical(s string) bool {
	return number.MatchString(s) && s == strconv.FormatFloat(float(s)+0, 'f', -1, 64)
}
