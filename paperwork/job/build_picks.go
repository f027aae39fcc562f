package job

import "math"

// picks reads where the hoists take the bar, front first.
func (b builder) picks(v *value, s Stack, g gear) []Pick {
	hang := v.field("hang")
	n := hang.field("picks")
	if n == nil || n.bad {
		return nil
	}
	two := n.num == 2
	b.otherForm(hang, two)
	picks := make([]Pick, int(n.num))
	for i := range picks {
		end := [...]string{"front", "rear"}[i]
		picks[i] = Pick{
			Hole:  b.pickHole(hang, s.Bar, two, end),
			Hoist: named(b, b.ofEnd(hang.field("hoist"), two, end), g.hoists, "gear.hoists"),
			Steel: steel(b.ofEnd(v.field("steel"), two, end)),
			Below: b.rigging(v.field("rigging_below"), two, end),
			Above: b.rigging(v.field("rigging_above"), two, end),
		}
	}
	if two {
		b.order(hang, s, picks, v.field("aim").sound(), g.tolerance)
	}
	return picks
}

// otherForm complains of keys that belong to the other number of picks.
func (b builder) otherForm(hang *value, two bool) {
	if two {
		if v := hang.field("pick_hole"); v.given {
			b.in.at(v, "pick_hole goes with picks: 1; with two write front_hole and rear_hole")
		}
		return
	}
	for _, name := range []string{"front_hole", "rear_hole"} {
		if v := hang.field(name); v != nil {
			b.in.at(v, "%s goes with picks: 2; with one write pick_hole", name)
		}
	}
}

// ofEnd returns the value for one end, where a key may be one for both.
func (b builder) ofEnd(v *value, two bool, end string) *value {
	switch {
	case v == nil || v.bad:
		return nil
	case v.fields == nil:
		return v
	case !two:
		b.in.at(v, "front and rear go with picks: 2; with one write one value")
		return nil
	}
	return v.field(end)
}

func steel(v *value) *float64 {
	if v == nil || v.bad {
		return nil
	}
	h := v.num
	return &h
}

// rigging reads what hangs in the line of one end: its own, or that of both.
func (b builder) rigging(v *value, two bool, end string) Rigging {
	if v == nil || v.bad {
		return Rigging{}
	}
	if !v.has("front") && !v.has("rear") {
		return Rigging{v.number("mass"), v.number("length")}
	}
	at := v.field(end)
	switch {
	case !two:
		b.in.at(v, "front and rear go with picks: 2; with one write mass and length")
	case v.has("mass") || v.has("length"):
		b.besideEnds(v)
	case at == nil && !v.excused[end]:
		b.in.complain(v.home, join(v.key, end), "%s is missing; write front and rear", end)
	case at != nil:
		return Rigging{at.number("mass"), at.number("length")}
	}
	return Rigging{}
}

// besideEnds complains of what stands beside front and rear, at its key.
func (b builder) besideEnds(v *value) {
	v.bad = true
	for _, name := range []string{"mass", "length"} {
		if v.has(name) {
			at := v.field(name)
			b.in.complain(at.home, at.key, "%s stands beside front and rear; write it under each", name)
		}
	}
}

// pickHole finds the hole of one pick.
func (b builder) pickHole(hang *value, bar *Bar, two bool, end string) int {
	name := "pick_hole"
	if two {
		name = end + "_hole"
	}
	v := hang.field(name)
	switch {
	case v == nil && hang.excused[name]:
		return Auto
	case v == nil:
		b.in.complain(hang.home, join(hang.key, name), "%s is missing; with picks: 2 write front_hole and rear_hole", name)
		return Auto
	case v.bad || bar == nil || !two && v.text == "auto":
		return Auto
	}
	return b.holeCalled(v, bar)
}

func (b builder) holeCalled(v *value, bar *Bar) int {
	for i, h := range bar.PickHoles {
		if h.Label == v.text {
			return i
		}
	}
	if Near(v.text, []string{"auto"}) != "" && v.generic == "stacks[].hang.pick_hole" {
		b.in.at(v, "%s has no pick hole %q; did you mean \"auto\"?", bar.Key, v.text)
		return Auto
	}
	if n := len(bar.PickHoles); n > 0 {
		b.in.at(v, "%s has no pick hole %q; its holes go from %s to %s", bar.Key, v.text, bar.PickHoles[0].Label, bar.PickHoles[n-1].Label)
	}
	return Auto
}

// apart is how far the rear hook of two must be behind the front one, measured
// level as the bar hangs, in metres. It is a limit of hangpack's own.
const apart = 0.001

// order checks that the rear hole lies behind the front one, on the bar and,
// where its tilt is known, as the bar hangs, also where it is off by as much as
// the aim may be: readings are worked out there too. A place b behind and d below the
// hinge lies at x = -b cos t - d sin t when the bar is tilted by t, positive
// front down.
func (b builder) order(hang *value, s Stack, picks []Pick, aimed bool, tolerance float64) {
	v := hang.field("rear_hole")
	if v == nil || v.bad || picks[0].Hole == Auto || picks[1].Hole == Auto {
		return
	}
	front, rear := s.Bar.PickHoles[picks[0].Hole].At, s.Bar.PickHoles[picks[1].Hole].At
	if rear.Behind <= front.Behind {
		b.in.at(v, "the rear hole does not lie behind the front one; write one further back")
		return
	}
	if !aimed || len(s.Cabinets) == 0 {
		return
	}
	for _, off := range []float64{0, -tolerance, tolerance} {
		sin, cos := math.Sincos(s.Aim - s.Cabinets[0].Hole.Splay*degree + off)
		if level := (rear.Behind-front.Behind)*cos + (rear.Below-front.Below)*sin; level < apart {
			b.in.at(v, "as the bar hangs, %sthe rear hole is not 1 mm behind the front one; write one further back", withinTolerance(off))
			return
		}
	}
}

// withinTolerance says that a bar hangs off its wanted tilt, where it does.
func withinTolerance(off float64) string {
	if off == 0 {
		return ""
	}
	return "within its aim_tolerance, "
}
