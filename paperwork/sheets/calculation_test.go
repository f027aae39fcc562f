package sheets

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// The calculation sheet is redone here as a checker would with a pencil: the
// numbers that it prints, put into the formulas that it prints, must give the
// results that it prints, within their rounding.

func calculationSheetAddsUp(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		for _, h := range j.Stacks {
			if len(h.Holds) > 0 {
				continue
			}
			sheet := calculationSheet(h)
			pdf := trials.TextOf(pages, h.ID+" CALCULATION")
			for _, steps := range [][]layouts.Formula{sheet.Hangs, sheet.Joint, sheet.Points} {
				for _, s := range steps {
					require.Contains(t, pdf, s.Symbols+" = "+s.Numbers+" = "+s.Is+say.After(" prints ", s.Prints), "%s: %s is not on paper", name, h.ID)
					worst = math.Max(worst, redo(t, fmt.Sprintf("%s, %s: %s", name, h.ID, s.Symbols), s))
					cases++
				}
			}
		}
	}
	assert.Greater(t, cases, deep.Of(400, 1000))
	return cases, worst
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

// partTableAddsUp redoes the table of the centre of gravity: each place from
// its cabinet's hinge, each moment, and the sums.
func partTableAddsUp(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		for _, h := range j.Stacks {
			if len(h.Holds) > 0 {
				continue
			}
			pdf, table := trials.TextOf(pages, h.ID+" CALCULATION"), partTable(h.Hung, massParts(h.Hung))
			what := name + ", " + h.ID
			perMoment, half := 1000.0, 0.0005 // mm in a metre; half of a moment's last digit
			if h.Unit().Imperial {
				perMoment, half = 1, 0.05
			}
			mass, behind, below := 0.0, 0.0, 0.0
			for _, row := range table.Rows[:len(table.Rows)-1] {
				require.Contains(t, pdf, strings.Join(row, " "), what)
				cases++
				m := trials.Number(row[1])
				for i, sum := range []*float64{&behind, &below} {
					at, moment := trials.Number(row[5+i]), trials.Number(row[7+i])
					open := (0.05*math.Abs(at)+0.05*m)/perMoment + 2*half
					assert.InDelta(t, m*at/perMoment, moment, open, "%s: %v", what, row)
					worst = math.Max(worst, math.Abs(m*at/perMoment-moment)/open)
					*sum += moment
				}
				mass += m
			}
			sum, n := table.Rows[len(table.Rows)-1], float64(len(table.Rows))
			assert.InDelta(t, mass, trials.Number(sum[1]), 0.05*n, what)
			assert.InDelta(t, behind, trials.Number(sum[7]), half*n, what)
			assert.InDelta(t, below, trials.Number(sum[8]), half*n, what)
			hingesFollow(t, what, h, table)
		}
	}
	return cases, worst
}

// hingesFollow: each hinge of the table lies one pitch along the cabinet above.
func hingesFollow(t *testing.T, what string, h *rules.Checked, table layouts.Table) {
	t.Helper()
	scale := 1000.0
	if h.Unit().Imperial {
		scale = 1 / 0.0254
	}
	for k := 1; k < len(h.Cabinets); k++ {
		above, row := cabinetRow(table, k), cabinetRow(table, k+1)
		turned := calc.Radians(trials.Number(above[2]))
		assert.InDelta(t, trials.Number(above[3])+scale*h.Cabinets[k-1].HingePitch*math.Sin(turned), trials.Number(row[3]), 0.3, "%s: cabinet %d", what, k+1)
		assert.InDelta(t, trials.Number(above[4])+scale*h.Cabinets[k-1].HingePitch*math.Cos(turned), trials.Number(row[4]), 0.3, "%s: cabinet %d", what, k+1)
		assert.InDelta(t, trials.Number(above[2])+h.Cabinets[k].Hole.Splay, trials.Number(row[2]), 0.011, "%s: cabinet %d", what, k+1)
	}
}

func cabinetRow(table layouts.Table, n int) []string {
	for _, row := range table.Rows {
		if strings.HasPrefix(row[0], fmt.Sprintf("%d ", n)) {
			return row
		}
	}
	return nil
}
