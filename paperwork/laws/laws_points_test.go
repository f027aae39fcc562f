package laws

import (
	"fmt"
	"math"
	"math/cmplx"

	"hangpack/calc"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// Laws of points, heights and lifts, on the figures of each stack.

// eachPoint looks at every point that carries a stack.
func (t *trial) eachPoint(look func(h *rules.Checked, f worked.StackFigures, i int, p rig.Point)) {
	for k, h := range t.Stacks {
		for i, p := range t.Figures.Stacks[k].Points {
			t.cases++
			look(h, t.Figures.Stacks[k], i, p)
		}
	}
}

// inLine is what point i carries besides the stack: rigging, hoist and chain.
func inLine(h *rules.Checked, i int) float64 {
	p := h.Picks[i]
	return p.Below.Mass + p.Hoist.Mass + p.Hoist.ChainMass*p.Hoist.ChainLength + p.Above.Mass
}

func pointsCarryTheirLine(t *trial) {
	t.eachPoint(func(h *rules.Checked, f worked.StackFigures, i int, p rig.Point) {
		t.near(p.ID+": static", f.Picks[i].Load+inLine(h, i), p.Static)
		if len(h.Picks) == 2 {
			more := 1 + t.Practice.MassTolerance
			t.near(p.ID+": alone", (f.Mass+inLine(h, i))*more, p.Alone)
			t.near(p.ID+": hook alone", f.Mass+h.Picks[i].Below.Mass, f.Alone[i])
		}
		t.must(len(h.Picks) == len(f.Points) && p.Hoist == h.Picks[i].Hoist.Key, "%s: hoist %s", p.ID, p.Hoist)
	})
}

func designHasItsFactors(t *trial) {
	p := t.Practice
	both := func(of string, c rig.Carried) {
		t.near(of+": design", c.Static*(1+p.MassTolerance)*p.DynamicFactor, c.Design)
	}
	t.eachPoint(func(_ *rules.Checked, _ worked.StackFigures, _ int, p rig.Point) {
		both(p.ID, p.Carried)
		both(p.ID+" at the most", p.Most.Carried)
	})
	for i, o := range t.Figures.Others {
		both(o.ID, o.Carried)
		t.near(o.ID+": static", t.OtherPoints[i].Mass, o.Static)
	}
	both("total", t.Figures.Total)
}

func totalIsTheSum(t *trial) {
	t.cases++
	sum := rig.Carried{}
	for _, s := range t.Figures.Stacks {
		for _, p := range s.Points {
			sum = rig.Carried{Static: sum.Static + p.Static, Design: sum.Design + p.Design}
		}
	}
	for _, o := range t.Figures.Others {
		sum = rig.Carried{Static: sum.Static + o.Static, Design: sum.Design + o.Design}
	}
	t.near("total static", sum.Static, t.Figures.Total.Static)
	t.near("total design", sum.Design, t.Figures.Total.Design)
}

// mostIsTheWorst: a newton decides, as everywhere among loads, and a pick that would
// have to push carries nothing.
func mostIsTheWorst(t *trial) {
	t.eachPoint(func(h *rules.Checked, f worked.StackFigures, i int, p rig.Point) {
		below := h.Picks[i].Below.Mass
		hook := p.Most.Static - inLine(h, i) + below
		limit := h.Picks[i].Hoist.Capacity * t.Practice.HoistUse / newton
		t.atLeast(p.ID+": use of the hoist", hook*(1+t.Practice.MassTolerance)/limit, p.HoistUse)
		for _, s := range allAloft(h, f) {
			t.must(s.hooks.Hooks[i]-math.Max(hook, below) <= 1/newton+rounding, "%s: most is %v, %s has %v", p.ID, hook, s.of, s.hooks.Hooks[i])
			if s.of == say.Listed(f.ID, p.Most.Where) {
				t.near(p.ID+": most, as at "+s.of, s.hooks.Hooks[i], hook)
			}
		}
	})
}

// heightsAreOfOneBody: the outline turned as the figures say, hung where they say.
func heightsAreOfOneBody(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		picks := picksAt(h, f, calc.Radians(f.Tilt))
		hinge := f.Points[0].PickHeight - imag(picks[0])
		lowest, highest := math.Inf(1), math.Inf(-1)
		for k, corners := range trials.Outline(h.Stack, len(h.Cabinets), calc.Radians(f.Tilt)) {
			low := hinge + lowestOf(corners)
			t.near(fmt.Sprintf("%s: lowest of cabinet %d", f.ID, k+1), low, f.Cabinets[k].Lowest)
			lowest = math.Min(lowest, low)
		}
		t.near(f.ID+": lowest", lowest, f.Lowest)
		for i, p := range f.Points {
			t.near(p.ID+": pick height", hinge+imag(picks[i]), p.PickHeight)
			highest = math.Max(highest, p.PickHeight)
		}
		trimmed := map[bool]float64{true: highest, false: lowest}[h.Trim.OfPick]
		t.near(f.ID+": trim", h.Trim.Height, trimmed)
	})
}

func lowestOf(corners [4]complex128) float64 {
	low := math.Inf(1)
	for _, c := range corners {
		low = math.Min(low, imag(c))
	}
	return low
}

func pointsStandOverTheirPicks(t *trial) {
	t.eachPoint(func(h *rules.Checked, f worked.StackFigures, i int, p rig.Point) {
		ahead := real(picksAt(h, f, calc.Radians(f.Tilt))[i])
		in := complex(h.Downstage, h.StageLeft) + cmplx.Rect(ahead, h.Pan)
		t.near(p.ID+": downstage", real(in), p.Downstage)
		t.near(p.ID+": stage left", imag(in), p.StageLeft)
	})
}

func liftsGrow(t *trial) {
	t.eachStack(func(h *rules.Checked, f worked.StackFigures) {
		n, mass, set := 0, 0.0, 0
		for k, s := range allAloft(h, f) {
			n, set = n+h.Sets[k], set+1
			t.must(s.flown == n, "%s: %d cabinets, has to be %d", s.of, s.flown, n)
			t.must(s.mass > mass, "%s: no heavier than before", s.of)
			mass = s.mass
			for _, c := range f.Cabinets[n-h.Sets[k] : n] {
				t.must(c.Set == set, "%s: cabinet %d in set %d", s.of, c.Number, c.Set)
			}
			if s.lifted != nil {
				t.must(s.lifted.Set == set, "%s: set %d", s.of, s.lifted.Set)
				splays := trials.Looks(h.Stack, n, 0) - trials.Looks(h.Stack, n-h.Sets[k], 0)
				t.near(s.of+": sum of its splays", calc.Degrees(splays), s.lifted.SetSum)
			}
		}
		t.must(set == len(h.Sets) && n == len(h.Cabinets), "%s: %d sets, %d cabinets", f.ID, set, n)
	})
}

func liftsHangInTheirRoom(t *trial) {
	t.eachAloft(func(h *rules.Checked, f worked.StackFigures, s aloft) {
		if s.lifted == nil {
			return
		}
		high, low := math.Inf(-1), math.Inf(1)
		for _, p := range picksAt(h, f, s.tilt) {
			high = math.Max(high, imag(p))
		}
		for _, corners := range trials.Outline(h.Stack, s.flown, s.tilt) {
			low = math.Min(low, lowestOf(corners))
		}
		t.near(s.of+": drop", high-low, s.lifted.Drop)
		t.must((s.lifted.PickClear == nil) == (h.Dolly == nil), "%s: clear without a dolly", s.of)
		if s.lifted.PickClear != nil {
			clear := h.Floor + h.Dolly.DeckHeight + t.Practice.Clearance + s.lifted.Drop
			for n := range h.Sets[s.lifted.Set] {
				clear += h.Cabinets[s.flown+n].HingePitch
			}
			t.near(s.of+": pick for the next dolly", clear, *s.lifted.PickClear)
		}
	})
}

func windowsHoldTheReading(t *trial) {
	p := t.Practice
	t.eachAloft(func(h *rules.Checked, _ worked.StackFigures, s aloft) {
		for i, kg := range s.hooks.Hooks {
			off := math.Abs(kg-h.Picks[i].Below.Mass) * p.MassTolerance // a window may be cut as if rigging were exact
			if h.Held() {                                               // else windows are cut
				t.atLeast(s.of+": most less its floor", kg+p.ReadingFloor, s.hooks.High[i])
				t.atLeast(s.of+": floor less its least", p.ReadingFloor-kg, -s.hooks.Low[i])
				off = math.Abs(kg) * p.MassTolerance
			}
			t.atLeast(s.of+": most for its masses", kg+off, s.hooks.High[i])
			t.atLeast(s.of+": least for its masses", off-kg, -s.hooks.Low[i])
		}
	})
}
