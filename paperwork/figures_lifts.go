package paperwork

import (
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// HookFigures are what hangs from each hook in kg, front first, the rigging below
// included: as worked out, and the least and the most over masses and, with two
// picks, tilts within their tolerance, no closer to it than practice.reading_floor.
type HookFigures struct {
	Hooks []float64 `json:"hook_kg"`
	Low   []float64 `json:"low_kg"`
	High  []float64 `json:"high_kg"`
}

// LiftFigures is a stack after one of its sets has been joined. SetSum is the sum
// of that set's splays, its first joint included; LastAim is of the lowest cabinet
// flown; PickClear is how high the highest pick hole in use has to be for the next
// dolly to roll in, nil where no dolly is given.
type LiftFigures struct {
	Set      int     `json:"set"`
	Cabinets int     `json:"cabinets_flown"`
	Mass     float64 `json:"mass_kg"`
	HookFigures
	Tilt      float64  `json:"tilt_deg"`
	Aim       float64  `json:"aim_deg"`
	Drop      float64  `json:"drop_m"`
	SetSum    float64  `json:"set_sum_deg"`
	LastAim   float64  `json:"last_aim_deg"`
	PickClear *float64 `json:"pick_clear_m,omitempty"`
}

func liftFigures(h *rules.Checked) []LiftFigures {
	lifts := []LiftFigures{}
	for k, s := range h.Lifts {
		f := LiftFigures{Set: k + 1, Cabinets: s.Flown, Mass: s.Centre.Mass, HookFigures: hookFigures(h, k),
			Tilt: say.Degrees(s.Tilt), Aim: say.Degrees(s.Poses[0].Aim), Drop: s.Drop(), SetSum: rig.SetSum(h.Hung, k), LastAim: say.Degrees(s.LastAim())}
		if h.Dolly != nil {
			clear := h.RollIn(k)
			f.PickClear = &clear
		}
		lifts = append(lifts, f)
	}
	return lifts
}

// hookFigures are of the stack after lift k, counted from 0.
func hookFigures(h *rules.Checked, k int) (f HookFigures) {
	for _, r := range h.Readings(k) {
		f.Hooks, f.Low, f.High = append(f.Hooks, r.Is), append(f.Low, r.Low), append(f.High, r.High)
	}
	return f
}

// aloneFigures are what each of two hooks holds with the other one slack, in kg.
func aloneFigures(h *rules.Checked) []float64 {
	alone := []float64{}
	for i := range h.Swung {
		alone = append(alone, h.AloneOnHook(i))
	}
	return alone
}
