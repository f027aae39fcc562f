package told

import (
	"fmt"

	"hangpack/calc"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// PassedOverWords say which pick holes are nearer to the wanted aim than the one in use,
// and why each is passed over.
func PassedOverWords(h *rules.Checked) (all []string) {
	for _, p := range h.PassedOver {
		all = append(all, fmt.Sprintf("Pick hole %s is nearer to the wanted aim (%s) and is passed over, for the stack would be held there. %s.", h.Label(p.Hole).Text, say.Aim(p.Aim), sentence(p.Why)))
	}
	return all
}

// OtherHoleWords say of a held stack on one pick whether another pick hole would do, and
// not which; "" of others.
func OtherHoleWords(h *rules.Checked) string {
	within := fmt.Sprintf("within %s° of the wanted aim", say.Trimmed(calc.Degrees(h.Job.Practice.AimTolerance)))
	switch {
	case !h.Held() || len(h.Picks) > 1:
		return ""
	case h.OtherHole:
		return "From another pick hole " + within + " no hold is found."
	}
	return "No other pick hole " + within + " is without a hold."
}

// sentence is a finding as one sentence: 'Hoist: … is more than … (lift 1, front)'.
func sentence(f rules.Finding) string { return f.Lead() + f.Says + " (" + WhereWords(f.Where) + ")" }
