package sheets

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// sumsOfRows are formulas whose words say of which rows the sums are: 'the bar,
// cabinets 1 to 8 and all extras on them: M, S_b, S_d are sums of their rows'.
var sumsOfRows = regexp.MustCompile(`^(.*): M\S*, S_b\S*, S_d\S* are sums of their rows`)

// rowsAddUp adds up the rows of the table that a step names, and holds mass and moments
// against the numbers in it and in the next one.
func rowsAddUp(t *testing.T, what string, table layouts.Table, steps []layouts.Formula) (cases int) {
	t.Helper()
	perRow := 0.0005
	if strings.Contains(table.Heads[1], "lb") {
		perRow = 0.05
	}
	for n, s := range steps {
		m := sumsOfRows.FindStringSubmatch(s.Of)
		if m == nil || strings.Contains(m[1], "those ") {
			continue
		}
		mass, behind, below, rows := rowsNamed(table, m[1])
		first, second := readSum(t, s.Numbers), readSum(t, steps[n+1].Numbers)
		assert.InDelta(t, behind, first.put[0], perRow*(rows+1), "%s: %s", what, s.Of)
		assert.InDelta(t, below, second.put[0], perRow*(rows+1), "%s: %s", what, s.Of)
		if !strings.Contains(s.Symbols, "T_b") {
			assert.InDelta(t, mass, first.put[1], 0.05*(rows+1), "%s: %s", what, s.Of)
		}
		cases++
	}
	return cases
}

var cabinetSpan = regexp.MustCompile(`cabinets? (\d+)(?: to (\d+))?`)

// rowsNamed sums the rows of a table that are named in words.
func rowsNamed(table layouts.Table, words string) (mass, behind, below, rows float64) {
	names := strings.ReplaceAll(words, " on cabinet ", " at ")
	in := func(n int) bool {
		for _, m := range cabinetSpan.FindAllStringSubmatch(names, -1) {
			from := int(trials.Number(m[1]))
			to := from
			if m[2] != "" {
				to = int(trials.Number(m[2]))
			}
			if n >= from && n <= to {
				return true
			}
		}
		return false
	}
	with, cabinet := strings.Contains(words, "all extras on them"), 0
	for i, row := range table.Rows[:len(table.Rows)-1] {
		of, rest, _ := strings.Cut(row[0], " ")
		takes := false
		switch {
		case i == 0:
			takes = strings.Contains(words, "the bar")
		case rest != "" && of == fmt.Sprint(cabinet+1):
			cabinet++
			takes = in(cabinet)
		case with:
			takes = cabinet == 0 && strings.Contains(words, "the bar") || in(cabinet)
		case cabinet == 0:
			takes = strings.Contains(names+",", row[0]+",")
		default:
			takes = strings.Contains(names+",", fmt.Sprintf("%s at %d,", row[0], cabinet))
		}
		if takes {
			mass, behind, below, rows = mass+trials.Number(row[1]), behind+trials.Number(row[7]), below+trials.Number(row[8]), rows+1
		}
	}
	return mass, behind, below, rows
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
