package sheets

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// The calculation sheet is redone here as a checker would with a pencil: the
// numbers that it prints, put into the formulas that it prints, must give the
// results that it prints, within their rounding.

func calculationSheetAddsUp(t *testing.T) (cases int, worst float64) {
	seen := map[string]bool{}
	for name, j := range calculationJobs(t) {
		_, pages := paperOf(t, j)
		for _, h := range j.Stacks {
			if len(h.Holds) > 0 {
				continue
			}
			sheet := calculationSheet(h)
			pdf := trials.TextOf(pages, h.ID+" CALCULATION")
			for _, s := range formulasOf(sheet) {
				left, _, _ := strings.Cut(s.Symbols, " = ")
				seen[left], seen["T_b"] = true, seen["T_b"] || strings.Contains(s.Symbols, "T_b")
				require.Contains(t, pdf, s.Symbols+" = "+s.Numbers+" = "+s.Is+say.After(" prints ", s.Prints), "%s: %s is not on paper", name, h.ID)
				worst = math.Max(worst, redo(t, fmt.Sprintf("%s, %s: %s", name, h.ID, s.Symbols), s))
				cases++
			}
			what := name + ", " + h.ID
			sheetFollows(t, what, sheet)
			cases += sheetGoverns(t, what, h, figuresOf(j, h.ID), sheet) + rowsAddUp(t, what, sheet.Parts, formulasOf(sheet))
		}
	}
	for _, left := range []string{"B", "T_b", "ahead", "slack_f", "least", "governing"} {
		assert.True(t, seen[left], left)
	}
	assert.Greater(t, cases, deep.Of(400, 1000))
	return cases, worst
}

// calculationJobs are the jobs that all read, and some that hang otherwise: with cabinets
// behind the rear hook, unknown centres of gravity, more load at a lift, a weight that
// pushes a link.
func calculationJobs(t *testing.T) map[string]*worked.Job {
	jobs := maps.Clone(trials.ReadJobs(t))
	for _, name := range []string{"unknown-centres", "lift-loads-more", "twenty-four-cabinets"} {
		jobs[name] = trials.OpenFile(t, "testdata/jobs/"+name+".yaml")
	}
	const splays, picks = "[0, 0.5, 0.5, 1, 1, 2, 3, 4]", "{picks: 2, hoist: hoist, front_hole: 1, rear_hole: %d}"
	jobs["beyond"] = trials.OpenJob(t, trials.Edited(t, trials.OnePick, fmt.Sprintf(picks, 26), splays, "[0, 0.5, 1, 2, 3, 4, 4, 4]"))
	jobs["corners"] = trials.OpenJob(t, trials.Edited(t, trials.OnePick, fmt.Sprintf(picks, 30), splays, "[0, 2, 4, 4, 4, 12, 12, 12]", "aim: 1 deg down", "aim: 5 deg up",
		"{behind_hinge: 190 mm, below_hinge: 145 mm}", "not_known"))
	jobs["ahead"] = trials.OpenJob(t, trials.Edited(t, "steel: 14 m", "steel: 14 m\n    extras: [{name: lamp, mass: 8 kg, on_cabinet: 8, ahead_of_hinge: 500 mm, below_hinge: 0 mm}]"))
	for _, name := range []string{"beyond", "corners", "ahead"} {
		require.Empty(t, jobs[name].Stacks[0].Holds, name)
	}
	return jobs
}

// figuresOf are the figures of a stack.
func figuresOf(j *worked.Job, id string) worked.StackFigures {
	i := slices.IndexFunc(j.Figures.Stacks, func(f worked.StackFigures) bool { return f.ID == id })
	return j.Figures.Stacks[i]
}

// formulasOf are all formulas of a sheet, from its top.
func formulasOf(v layouts.Calculation) []layouts.Formula {
	all := slices.Concat(v.Hangs, v.Slack, v.Joint.Formulas, v.Link.Formulas, v.Points)
	for _, s := range v.Picks {
		all = append(all, s.Formulas...)
	}
	return all
}

// redo puts a step's numbers into its formula, and returns how much of what their
// digits leave open the result is off.
func redo(t *testing.T, what string, s layouts.Formula) float64 {
	t.Helper()
	_, right, ok := strings.Cut(s.Symbols, " = ")
	require.True(t, ok, what)
	symbols, numbers := parse(t, right), readSum(t, s.Numbers)
	require.True(t, alikeSums(symbols, numbers.expr), "%s: %q is not %q with numbers put in", what, s.Numbers, right)
	got, spread := numbers.value(t)
	want := readSum(t, s.Is)
	require.Len(t, want.put, 1, what)
	assert.InDelta(t, want.put[0], got, spread+want.half[0]+1e-9, "%s: %s = %s", what, s.Numbers, s.Is)
	return math.Abs(want.put[0]-got) / (spread + want.half[0] + 1e-9)
}

// A pencilSum is a printed sum: its numbers with units, and half a unit of the
// last digit of each. Numbers without a unit are exact.
type pencilSum struct {
	expr      ast.Expr
	put, half []float64
}

// belowNought is a number below nought in parentheses of its own, and not those
// of a function.
var belowNought = regexp.MustCompile(`(^|[^a-z])\((-[0-9.]+[^()]*?)\)`)

var printedNumber = regexp.MustCompile(`(-?[0-9]+(?:\.([0-9]+))?)(?: ?(kg·m|lb·in|kg/m|lb/ft|N/kg|kg|lbf|lb|kN|mm|ft|in|m|°|%))`)

func readSum(t *testing.T, s string) pencilSum {
	t.Helper()
	var p pencilSum
	s = belowNought.ReplaceAllString(s, "$1$2")
	s = printedNumber.ReplaceAllStringFunc(s, func(one string) string {
		m := printedNumber.FindStringSubmatch(one)
		p.put, p.half = append(p.put, trials.Number(m[1])), append(p.half, 0.5*math.Pow10(-len(m[2])))
		return fmt.Sprintf("v%d", len(p.put)-1)
	})
	p.expr = parse(t, s)
	return p
}

func parse(t *testing.T, s string) ast.Expr {
	t.Helper()
	e, err := parser.ParseExpr(strings.ReplaceAll(s, "·", "*"))
	require.NoError(t, err, s)
	return e
}

// value is what a sum comes to, and how far that may be off when each number
// with a unit was rounded.
func (p pencilSum) value(t *testing.T) (value, spread float64) {
	value = p.eval(t, p.expr, p.put)
	for i, half := range p.half {
		moved := append([]float64{}, p.put...)
		moved[i] += half
		spread += math.Abs(p.eval(t, p.expr, moved) - value)
	}
	return value, spread
}

// eval works with degrees, as the paper does.
func (p pencilSum) eval(t *testing.T, e ast.Expr, put []float64) float64 {
	switch e := e.(type) {
	case *ast.ParenExpr:
		return p.eval(t, e.X, put)
	case *ast.BasicLit:
		return trials.Number(e.Value)
	case *ast.Ident:
		i, err := strconv.Atoi(strings.TrimPrefix(e.Name, "v"))
		require.NoError(t, err, "%s has no number", e.Name)
		return put[i]
	case *ast.BinaryExpr:
		a, b := p.eval(t, e.X, put), p.eval(t, e.Y, put)
		return map[token.Token]float64{token.ADD: a + b, token.SUB: a - b, token.MUL: a * b, token.QUO: a / b}[e.Op]
	case *ast.CallExpr:
		x := p.eval(t, e.Args[0], put)
		switch e.Fun.(*ast.Ident).Name {
		case "sin":
			return math.Sin(calc.Radians(x))
		case "cos":
			return math.Cos(calc.Radians(x))
		case "atan":
			return calc.Degrees(math.Atan(x))
		case "sqrt":
			return math.Sqrt(x)
		}
	}
	require.Fail(t, "not a sum", "%T", e)
	return 0
}

// alikeSums reports whether two sums are built alike, names and numbers apart.
func alikeSums(a, b ast.Expr) bool {
	switch a := a.(type) {
	case *ast.ParenExpr:
		c, ok := b.(*ast.ParenExpr)
		return ok && alikeSums(a.X, c.X)
	case *ast.BinaryExpr:
		c, ok := b.(*ast.BinaryExpr)
		return ok && a.Op == c.Op && alikeSums(a.X, c.X) && alikeSums(a.Y, c.Y)
	case *ast.CallExpr:
		c, ok := b.(*ast.CallExpr)
		return ok && a.Fun.(*ast.Ident).Name == c.Fun.(*ast.Ident).Name && alikeSums(a.Args[0], c.Args[0])
	}
	_, name := b.(*ast.Ident)
	_, literal := b.(*ast.BasicLit)
	return name || literal
}
