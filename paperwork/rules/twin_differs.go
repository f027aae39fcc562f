package rules

import (
	"fmt"
	"slices"
	"strings"

	"hangpack/calc"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// twinDiffers: two twins are not alike. It is held against both of them once all stacks
// of a job are checked: see CompareStacks.
var twinDiffers = Rule{ID: "twin_differs", Title: "Twins differ", Severity: Caution, Grave: Differs}

// A Difference is what is not alike of two twins: in what, and how each has it.
type Difference struct {
	Joint           int // counted from 1; 0 for what is of no one joint
	Of, This, Other string

	ofHoles bool // to set: of a joint or of picks
}

// compareTwins makes the twins among the stacks of a job known to each other, and
// cautions both of each difference. Place and pan, name and shape may differ.
func compareTwins(stacks []*Checked) {
	for _, h := range stacks {
		for _, other := range stacks {
			if h.TwinOf == other.ID {
				h.Twin, other.Twin = other, h
				held := heldTwins(other, h)
				cautionTwin(h, other, held)
				cautionTwin(other, h, held)
			}
		}
	}
}

// cautionTwin cautions a stack of what is told of its differences from its twin; where
// held says that one of them is held, of that too, unless they differ in nothing.
func cautionTwin(h, other *Checked, held string) {
	c := &check{h, &twinDiffers}
	for _, d := range toldDifferences(h, other) {
		c.caution(rig.Where{Joint: d.Joint}, "%s: %s %s, %s %s: on purpose? Ask", d.Of, h.ID, d.This, other.ID, d.Other)
	}
	if held != "" && len(differences(h.Hung, other.Hung)) > 0 {
		c.caution(rig.Where{}, "%s", held)
	}
}

// heldTwins say that the holes of two twins are not compared, for one of them or both are
// held; "" where neither is.
func heldTwins(h, other *Checked) string {
	switch {
	case h.Held() && other.Held():
		return h.ID + " and " + other.ID + " are held, so their holes are not compared"
	case h.Held():
		return h.ID + " is held, so its holes are not compared"
	case other.Held():
		return other.ID + " is held, so its holes are not compared"
	}
	return ""
}

// toldDifferences are the differences of two twins that may be told. Where one of them is
// held none is of holes: those of the other stand on its sheets, and would tell which the
// held one has.
func toldDifferences(h, other *Checked) []Difference {
	all := differences(h.Hung, other.Hung)
	if h.Held() || other.Held() {
		all = slices.DeleteFunc(all, func(d Difference) bool { return d.ofHoles })
	}
	return all
}

// differences are those of two stacks, how h has it as This: joint by joint, then of all
// else.
func differences(h, other *rig.Hung) (all []Difference) {
	for k := range min(len(h.Cabinets), len(other.Cabinets)) {
		a, b := h.Cabinets[k], other.Cabinets[k]
		if a.Key != b.Key {
			all = append(all, Difference{k + 1, fmt.Sprintf("cabinet %d", k+1), a.Key, b.Key, false})
		}
		if a.Hole != b.Hole {
			all = append(all, Difference{k + 1, fmt.Sprintf("hole of joint %d", k+1), say.Hole(a.Hole.Label, a.Hole.Splay), say.Hole(b.Hole.Label, b.Hole.Splay), true})
		}
	}
	return append(all, PartDifferences(h, other)...)
}

// PartDifferences are those of all but the joints.
func PartDifferences(h, other *rig.Hung) (all []Difference) {
	for _, p := range twinParts {
		if this, that := p.of(h), p.of(other); this != that {
			all = append(all, Difference{0, p.what, this, that, p.what == OfPickHoles})
		}
	}
	return all
}

// TwinWords gather in what a stack is told to differ from its twin: 'joints 5, 6; trim',
// and "" where in nothing.
func TwinWords(h *Checked) string {
	if h.Twin == nil {
		return ""
	}
	var joints, parts []string
	for _, d := range toldDifferences(h, h.Twin) {
		switch k := fmt.Sprint(d.Joint); {
		case d.Joint == 0:
			parts = append(parts, d.Of)
		case len(joints) == 0 || joints[len(joints)-1] != k:
			joints = append(joints, k)
		}
	}
	if len(joints) > 0 {
		parts = append([]string{"joints " + strings.Join(joints, ", ")}, parts...)
	}
	return strings.Join(parts, "; ")
}

// What a Difference is of, where more is asked of one than that there is one.
const (
	OfCount        = "number of cabinets"
	OfBar          = "bar"
	OfPickHoles    = "pick holes"
	OfTrim         = "trim"
	OfHoist        = "hoist (motor)"
	OfSteel        = "steel"
	OfRiggingBelow = "rigging below"
	OfRiggingAbove = "rigging above"
	OfSecondary    = "secondary"
)

// twinParts are what twins have alike besides their joints, each in words that
// differ where it does.
var twinParts = []struct {
	what string
	of   func(*rig.Hung) string
}{
	{OfCount, func(h *rig.Hung) string { return fmt.Sprint(len(h.Cabinets)) }},
	{OfBar, func(h *rig.Hung) string { return h.Bar.Key }},
	{OfPickHoles, func(h *rig.Hung) string { return PickHoleWords(h) }},
	{"aim wanted", func(h *rig.Hung) string { return exactAim(h.Aim) }},
	{OfTrim, func(h *rig.Hung) string { return TrimWords(h) + " at " + h.Unit().ExactLength(h.Trim.Height) }},
	{OfHoist, eachPick(func(_ say.Units, p job.Pick) string { return p.Hoist.Key })},
	{"load cell", func(h *rig.Hung) string { return say.Given(string(h.LoadCell)) }},
	{OfSteel, eachPick(func(u say.Units, p job.Pick) string {
		if p.Steel == nil {
			return say.NotGiven
		}
		return u.ExactLength(*p.Steel)
	})},
	{OfRiggingBelow, eachPick(func(u say.Units, p job.Pick) string { return riggingWords(u, p.Below) })},
	{OfRiggingAbove, eachPick(func(u say.Units, p job.Pick) string { return riggingWords(u, p.Above) })},
	{"dolly", func(h *rig.Hung) string {
		if h.Dolly == nil {
			return say.NotGiven
		}
		return h.Dolly.Key
	}},
	{"sets", func(h *rig.Hung) string { return strings.Trim(fmt.Sprint(h.Sets), "[]") }},
	{"pins set", func(h *rig.Hung) string { return say.Given(strings.ReplaceAll(string(h.PinsSet), "_", " ")) }},
	{"floor", func(h *rig.Hung) string { return h.Unit().ExactLength(h.Floor) }},
	{"extras", func(h *rig.Hung) string { return extraWords(h) }},
	{OfSecondary, func(h *rig.Hung) string {
		if h.Secondary == nil {
			return say.NotGiven
		}
		return SecondaryWords(h)
	}},
}

// eachPick writes something of every pick, once where both have it alike.
func eachPick(of func(say.Units, job.Pick) string) func(*rig.Hung) string {
	return func(h *rig.Hung) string {
		front, rear := of(h.Unit(), h.Picks[0]), of(h.Unit(), h.Picks[len(h.Picks)-1])
		if front == rear {
			return front
		}
		return "front " + front + ", rear " + rear
	}
}

// exactAim writes an aim with all its digits.
func exactAim(rad float64) string {
	if rad < 0 {
		return say.Trimmed(-calc.Degrees(rad)) + "° up"
	}
	return say.Trimmed(calc.Degrees(rad)) + "° down"
}

func riggingWords(u say.Units, r job.Rigging) string {
	return u.ExactMass(r.Mass) + ", " + u.ExactLength(r.Length)
}

// extraWords write what else hangs with a stack and where.
func extraWords(h *rig.Hung) string {
	u, all := h.Unit(), []string(nil)
	for _, e := range h.Extras {
		at := "the bar"
		if e.Cabinet > 0 {
			at = fmt.Sprintf("cabinet %d", e.Cabinet)
		}
		all = append(all, fmt.Sprintf("%s %s on %s, %s behind, %s below its hinge", e.Name, u.ExactMass(e.Mass), at, u.ExactLength(e.At.Behind), u.ExactLength(e.At.Below)))
	}
	if len(all) == 0 {
		return "none"
	}
	return strings.Join(all, "; ")
}
