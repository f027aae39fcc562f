package sheets

import (
	"fmt"
	"math"

	"hangpack/layouts"
	"hangpack/layouts/drawings"
	"hangpack/layouts/parts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// liftSheet is the stack from the bar to trim, lift by lift: what to do, what to
// read, and how to get down.
func liftSheet(h *rules.Checked) layouts.Sequence {
	s := layouts.Sequence{
		Target: "lifts " + h.ID, Sheet: h.ID + " LIFTS", Head: headOf(h, "Going up, lift by lift"),
		Says:  []string{cellWords(h) + " Zero it with nothing hanging on it. " + heightWords(h) + " Inclinometer on the flat of front or back, where its maker marks it, not on the lid." + steerWords(h) + betweenWords(h)},
		Stop:  stopWords(h),
		Ruler: drawings.Ruler{Imperial: h.Job.Imperial}, Cards: []layouts.Card{startCard(h)},
		Alone: aloneTable(h),
	}
	for k := range h.Sets {
		s.Cards = append(s.Cards, liftCard(h, k))
	}
	return s
}

// cellWords say what a load cell's reading counts.
func cellWords(h *rules.Checked) string {
	switch h.LoadCell {
	case job.AboveHoist:
		return "The load cell hangs above the hoist (motor): what it reads counts the hoist, all of its chain and the rigging below."
	case "":
		return "The job does not say where a load cell hangs: readings are of one below the hoist (motor), with the rigging below it counted."
	}
	return "The load cell hangs below the hoist (motor): what it reads counts the rigging below it and neither hoist nor chain."
}

func heightWords(h *rules.Checked) string {
	if h.Floor == 0 {
		return fmt.Sprintf("Heights above %s, which is the floor that dollies roll on.", h.Job.HeightsFrom)
	}
	way := "above"
	if h.Floor < 0 {
		way = "below"
	}
	return fmt.Sprintf("Heights above %s; dollies roll %s %s it.", h.Job.HeightsFrom, h.Unit().Length(math.Abs(h.Floor)), way)
}

// headOf is the head of a stack's sheet, with what the sheet is of.
func headOf(h *rules.Checked, what string) parts.Head {
	head := stackHead(h)
	head.Says = what + " · " + head.Says
	return head
}

// betweenWords say why figures lie between two, where a centre of gravity is not
// known.
func betweenWords(h *rules.Checked) string {
	if types := h.Unknown(); len(types) > 0 {
		return " " + rules.UnknownCentres(types) + "."
	}
	return ""
}

// steerWords ask who steers a stack that hangs from one hook.
func steerWords(h *rules.Checked) string {
	if len(h.Picks) == 2 {
		return ""
	}
	return " Nothing in this paper keeps it from turning; steered by: ______________________"
}

// stopWords say what to do when a reading is not as it should be. Reasons: common
// practice; no published tolerance of a load cell against a calculation was found.
func stopWords(h *rules.Checked) []string {
	p, u := h.Job.Practice, h.Unit()
	may := fmt.Sprintf("masses %s more or less", say.Share(p.MassTolerance))
	if len(h.Picks) == 2 {
		may += fmt.Sprintf(", the bar %s° off its tilt", say.Trimmed(say.Degrees(p.AimTolerance)))
	}
	return []string{
		"Reads outside 'may read'? Stop, lower, find out why. Then go on or go down.",
		fmt.Sprintf("'May read' is %s, and at least %s either way; of aims %s° either way. This job sets it: no standard does.", may, u.Reading(p.ReadingFloor), say.Trimmed(say.Degrees(p.AimTolerance))),
		"Usual reasons: a cable that hangs on the bar and not on its own pick; bar or dolly still touching; a cabinet too many, too few or of another type; wet covers; a hook not plumb; " +
			"the bar not at its tilt; the cell not zeroed or pulled sideways; hoist and chain counted or not. A wrong pin shows in the difference of two aims; two that cancel do not: touch every pin.",
	}
}

// ownOfHoist is what a load cell reads besides the hook's load: above the hoist
// its mass and all of its chain.
func ownOfHoist(h *rules.Checked, i int) float64 {
	if h.LoadCell != job.AboveHoist {
		return 0
	}
	m := h.Picks[i].Hoist
	return m.Mass + m.ChainMass*m.ChainLength
}

// cellReads are what the load cells should read.
func cellReads(h *rules.Checked, readings []rig.Reading) (reads []layouts.Instrument) {
	u := h.Unit()
	for i, r := range readings {
		own := ownOfHoist(h, i)
		reads = append(reads, layouts.Instrument{Of: label("load cell", h.End(i)), Is: u.Between(r.From+own, r.To+own, u.Reading),
			May: say.FromTo(u.Reading(math.Max(r.Low, 0)+own), u.Reading(r.High+own))})
	}
	return reads
}

// aimRead is what an inclinometer on cabinet n should read after lift k, counted
// from 0.
func aimRead(h *rules.Checked, k, n int) layouts.Instrument {
	from, to := h.Over(func(v *rig.Hung) float64 { return v.Joined(k).Poses[n-1].Aim })
	off := h.Job.Practice.AimTolerance
	return layouts.Instrument{Of: fmt.Sprintf("cabinet %d looks", n), Is: h.Unit().Between(from, to, say.Aim), May: say.Aims(from-off, to+off)}
}

// aimReads are of cabinet 1, of the lowest one flown, and their difference.
func aimReads(h *rules.Checked, k int) []layouts.Instrument {
	s := h.Joined(k)
	reads := []layouts.Instrument{aimRead(h, k, 1)}
	if s.Flown == 1 {
		return reads
	}
	return append(reads, aimRead(h, k, s.Flown),
		layouts.Instrument{Of: "difference", Is: say.Angle(s.LastAim() - s.Poses[0].Aim), May: "by the pins alone"})
}
