package rules

import (
	"fmt"

	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// LightPick is the ID of its rule, for sheets that treat its findings apart.
const LightPick = "light_pick"

// lightPick: a pick that carries less than its least share at the nominal tilt: a hold of
// the finished stack and a caution of the worst lift.
var lightPick = Rule{ID: LightPick, Title: "Light pick", Severity: Either, worstLift: true, Grave: Lurches, states: checkPicks, stack: cautionLightPick}

func checkPicks(c *check, s *rig.State) {
	if len(s.Loads) == 1 {
		return
	}
	least := c.Job.Practice.LeastShare
	for i, kg := range s.Loads {
		part := kg / s.Centre.Mass
		c.measured(string(c.End(i))+" pick's share", part-least, func() (rig.Where, string, string) {
			return rig.Where{Lift: s.Lift}, pickShare(c.Hung, s, i), "at least " + say.Share(least) + " finished"
		})
		if s.Lift == 0 && part < least-rig.Within {
			c.hold(rig.Where{Lift: s.Lift, End: c.End(i)}, "%s", lightPickWords(c.Hung, s, i)).By = least - part
		}
	}
}

func cautionLightPick(c *check) {
	for i := range c.Picks {
		least, worst := c.Job.Practice.LeastShare-rig.Within, (*rig.State)(nil)
		for _, s := range c.Lifts {
			if share := s.Loads[i] / s.Centre.Mass; share < least {
				least, worst = share, s
			}
		}
		if worst != nil && len(c.Picks) > 1 {
			c.caution(rig.Where{Lift: worst.Lift, End: c.End(i)}, "%s", lightPickWords(c.Hung, worst, i)).By = -least
		}
	}
}

func lightPickWords(h *rig.Hung, s *rig.State, i int) string {
	return pickShare(h, s, i) + ", less than " + say.Share(h.Job.Practice.LeastShare)
}

// pickShare writes what a pick carries of the stack: '35 kg of 302 kg is 11.6 %'; below 0
// of one that would have to push.
func pickShare(h *rig.Hung, s *rig.State, i int) string {
	kg, write := s.Loads[i], h.Unit().Load
	if kg < 0 {
		write = h.Unit().FineMass
	}
	return fmt.Sprintf("%s of %s is %s %%", write(kg), h.Unit().Load(s.Centre.Mass), say.Fixed(100*kg/s.Centre.Mass, 1))
}
