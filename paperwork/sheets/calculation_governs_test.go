package sheets

import (
	"fmt"
	"go/ast"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// sheetGoverns holds the own calculation of what governs against the figures, which it
// has to be, and against the sheet, to the digits there.
func sheetGoverns(t *testing.T, what string, h *rules.Checked, f worked.StackFigures, sheet layouts.Calculation) (cases int) {
	t.Helper()
	p := h.Job.Practice
	most, least := ownGoverns(h)
	onHook := 0.0
	for i, pick := range h.Picks {
		m := pick.Hoist
		line := pick.Below.Mass + m.Mass + m.ChainMass*m.ChainLength + pick.Above.Mass
		governing, use := (most[i]+line*(1+p.MassTolerance))*p.DynamicFactor, (most[i]+pick.Below.Mass*(1+p.MassTolerance))*9.80665/(m.Capacity*p.HoistUse)
		assert.InEpsilon(t, governing, f.Points[i].Governing.Design, 1e-9, "%s: governing load %d", what, i)
		assert.InEpsilon(t, use, f.Points[i].HoistUse, 1e-9, "%s: hoist %d", what, i)
		if len(h.Picks) == 1 {
			assert.InEpsilon(t, f.Points[i].Design, f.Points[i].Governing.Design, 1e-12, what)
			assert.Empty(t, sheet.Picks, what)
			continue
		}
		steps := sheet.Picks[i].Formulas
		printed(t, what, steps, "governing = ", governing, h)
		printed(t, what, steps, "use = 100 · hook", 100*use, nil)
		if h.Bar.PickRating > 0 {
			printed(t, what, steps, "use = 100 · most", 100*most[i]*p.DynamicFactor*9.80665/(h.Bar.PickRating*p.GearUse), nil)
		}
		ownSlack(t, what, h, f, sheet, i)
		alone := (f.Mass + line) * (1 + p.MassTolerance) * p.DynamicFactor
		assert.InEpsilon(t, alone, f.Points[i].AloneDesign, 1e-9, what)
		printed(t, what, pointFormulas(sheet, h.PointID(i)), "A = ", alone, h)
		onHook = math.Max(onHook, (f.Mass+pick.Below.Mass)*(1+p.MassTolerance)*9.80665/(m.Capacity*p.HoistUse))
		cases += 4
	}
	ownAlone(t, what, sheet, onHook)
	if math.IsInf(least, 1) {
		assert.Empty(t, sheet.Link.Formulas, what)
		return cases
	}
	one := 9.80665 * 0.00045359237 // kN in a lbf
	if !h.Unit().Imperial {
		one = 1
	}
	printed(t, what, sheet.Link.Formulas, "least = ", least/one, nil)
	return cases + 1
}

// ownAlone: the table of checks has how much the more used of two hoists is used alone,
// and nothing of the kind with one pick, where use is 0.
func ownAlone(t *testing.T, what string, sheet layouts.Calculation, use float64) {
	t.Helper()
	var alone []string
	for _, row := range sheet.Checks {
		if row[0] == "hoist, alone" {
			alone = append(alone, row[4])
		}
	}
	if use == 0 {
		assert.Empty(t, alone, what)
		return
	}
	assert.Equal(t, []string{say.Percent(use)}, alone, what)
}

// ownSlack turns the stack below the other hole: how much higher hole i stands over it
// then is slack_mm, and on the sheet with its direction.
func ownSlack(t *testing.T, what string, h *rules.Checked, f worked.StackFigures, sheet layouts.Calculation, i int) {
	t.Helper()
	level, _ := ownParts(h.Stack, len(h.Cabinets), 0, nil)
	rise := func(tilt float64) float64 { return imag(trials.At(h.Hole(i), tilt) - trials.At(h.Hole(1-i), tilt)) }
	off := 1000 * (rise(plumbBelow(level, h.Hole(1-i))) - rise(f.Tilt*math.Pi/180))
	assert.InDelta(t, math.Abs(off), f.Slack[i], 1e-6, "%s: slack %d", what, i)
	mm := 1.0
	if h.Unit().Imperial {
		mm = 25.4
	}
	name := string(h.End(i))
	s := printed(t, what, sheet.Slack, "slack_"+name[:1]+" = ", off/mm, nil)
	says := fmt.Sprintf("%s chain slack when the %s pick is %s ", name, name, downwards(h.Unit(), math.Abs(off)))
	assert.Equal(t, says+map[bool]string{true: "lower", false: "higher"}[off < 0], s.Of, what)
	assert.Contains(t, strings.ToLower(slackWords(h.Hung, h.Finished)), s.Of, "%s: as on the other sheets", what)
}

// pointFormulas are those of one point, whose words begin with its name.
func pointFormulas(sheet layouts.Calculation, id string) (some []layouts.Formula) {
	for _, s := range sheet.Points {
		if strings.HasPrefix(s.Of, id+",") {
			some = append(some, s)
		}
	}
	return some
}

// printed finds the last formula that begins so, and holds what it comes to against a
// figure, to the digits that it has; of a load, in kg, the units are those of the stack.
func printed(t *testing.T, what string, steps []layouts.Formula, begins string, want float64, load *rules.Checked) (found layouts.Formula) {
	t.Helper()
	for _, s := range steps {
		if strings.HasPrefix(s.Symbols, begins) {
			found = s
		}
	}
	require.NotEmpty(t, found.Is, "%s: no %s", what, begins)
	if load != nil && load.Unit().Imperial {
		want /= 0.45359237
	}
	is := readSum(t, found.Is)
	require.Len(t, is.put, 1, what)
	assert.InDelta(t, want, is.put[0], is.half[0]+1e-6, "%s: %s", what, found.Symbols)
	return found
}

// sheetFollows: a name that an earlier step has worked out has that figure wherever it is
// put in: how the stack hangs goes before each block, and the joint before the link where
// that is of the same one.
func sheetFollows(t *testing.T, what string, sheet layouts.Calculation) {
	t.Helper()
	hangs := follow(t, what, nil, sheet.Hangs)
	follow(t, what, hangs, sheet.Slack)
	before := hangs
	if !slices.ContainsFunc(sheet.Link.Formulas, func(s layouts.Formula) bool { return strings.HasPrefix(s.Symbols, "b = ") }) {
		before = follow(t, what, hangs, sheet.Joint.Formulas) // the same joint, whose steps stand above
	}
	follow(t, what, before, sheet.Link.Formulas)
	follow(t, what, hangs, sheet.Points)
	for _, s := range append(sheet.Picks, sheet.Joint) {
		steps := follow(t, what, hangs, s.Formulas)
		says := "nominal tilt"
		if end, has := steps["tilt_e"]; has {
			off := end - steps["tilt"]
			says = fmt.Sprintf("%.1f° more %s than nominal", math.Abs(off), map[bool]string{true: "down", false: "up"}[off > 0])
		}
		assert.Contains(t, s.How, says, what)
	}
}

// follow holds the figures of steps to those known before, and returns what is known then.
func follow(t *testing.T, what string, before map[string]float64, steps []layouts.Formula) map[string]float64 {
	t.Helper()
	known := maps.Clone(before)
	if known == nil {
		known = map[string]float64{}
	}
	for _, s := range steps {
		left, right, _ := strings.Cut(s.Symbols, " = ")
		numbers := readSum(t, s.Numbers)
		namesIn(parse(t, right), numbers.expr, func(name string, is ast.Expr) {
			want, has := known[name]
			assert.True(t, has || !strings.HasPrefix(name, "tilt"), "%s: %s in %s comes from nowhere", what, name, s.Symbols)
			if has {
				assert.InDelta(t, want, numbers.eval(t, is, numbers.put), 1e-9, "%s: %s in %s", what, name, s.Symbols)
			}
		})
		known[left] = readSum(t, s.Is).put[0]
	}
	return known
}

// namesIn finds the names of a sum, and what is put in for each in one built alike.
func namesIn(a, b ast.Expr, found func(name string, is ast.Expr)) {
	if p, ok := b.(*ast.ParenExpr); ok {
		if _, both := a.(*ast.ParenExpr); !both {
			b = p.X
		}
	}
	switch a := a.(type) {
	case *ast.Ident:
		found(a.Name, b)
	case *ast.ParenExpr:
		namesIn(a.X, b.(*ast.ParenExpr).X, found)
	case *ast.BinaryExpr:
		namesIn(a.X, b.(*ast.BinaryExpr).X, found)
		namesIn(a.Y, b.(*ast.BinaryExpr).Y, found)
	case *ast.CallExpr:
		namesIn(a.Args[0], b.(*ast.CallExpr).Args[0], found)
	}
}
