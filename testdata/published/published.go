// Package published holds figures to answers that are printed in books and on
// pages of the web. The cases stand beside it, a CSV file for each calculation:
// lines that open with # name the sources, a column that opens with = is a
// printed answer, all others are what the page gives.
package published

import (
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A Row is one printed case.
type Row struct {
	t     *testing.T
	cells map[string]string
}

// how a value may have been had: on its page; worked out from what the page
// gives, the printed answer not seen.
var how = []string{"read", "derived"}

// Text returns a cell that the page gives.
func (r Row) Text(column string) string {
	cell, ok := r.cells[column]
	require.True(r.t, ok && column[0] != '=', "no column %q that a page gives", column)
	return cell
}

// In returns the number in a cell that the page gives.
func (r Row) In(column string) float64 {
	x, err := Number(r.Text(column))
	require.NoError(r.t, err, "column %q", column)
	return x
}

// Weights returns the cell of weights, "w @ x z; w @ x z", as three numbers each.
// A place with one number lies at z = 0.
func (r Row) Weights() (all [][3]float64) {
	for _, one := range strings.Split(r.Text("weights"), ";") {
		var w [3]float64
		for i, s := range strings.Fields(strings.Replace(one, "@", " ", 1)) {
			x, err := Number(s)
			require.NoError(r.t, err, "weight %q", one)
			w[i] = x
		}
		all = append(all, w)
	}
	return all
}

// Held works out every case of a file and holds it to the answers that are
// printed. work returns the answers by the names of their columns, without the =;
// an answer that is not printed is left out of its row. An answer agrees where it
// rounds to all printed digits, halves away from nought; a fraction agrees within
// rounding. Held also plants each digit wrong in each answer and fails unless it
// sees that. It returns the number of answers, and the largest difference as a
// part of what the last printed digit permits.
func Held(t *testing.T, file string, work func(Row) map[string]float64) (answers int, worst float64) {
	t.Helper()
	rows := read(t, file)
	planted := 0
	for _, r := range rows {
		require.Contains(t, how, r.cells["how"], "%s: %v", file, r.cells)
		require.NotEmpty(t, r.cells["source"], "%s: %v", file, r.cells)
		worked := work(r)
		for column, printed := range r.cells {
			if column[0] != '=' || printed == "" {
				continue
			}
			got, ok := worked[column[1:]]
			require.True(t, ok, "%s: nothing works out %s", file, column)
			part, ok := agrees(printed, got)
			if !ok {
				t.Errorf("%s: %s: %s is printed as %s, and worked out as %.9g", file, r.cells["source"], column[1:], printed, got)
			}
			for _, wrong := range Plants(printed) {
				if _, ok := agrees(wrong, got); ok {
					t.Errorf("%s: %s: %s in place of %s would not be seen", file, r.cells["source"], wrong, printed)
				}
				planted++
			}
			answers, worst = answers+1, math.Max(worst, part)
		}
	}
	t.Logf("%s: %d cases, %d answers, %d planted digits", file, len(rows), answers, planted)
	return answers, worst
}

func read(t *testing.T, file string) (rows []Row) {
	t.Helper()
	f, err := os.Open(file)
	require.NoError(t, err)
	defer f.Close()
	table := csv.NewReader(f)
	table.Comment, table.TrimLeadingSpace = '#', true
	lines, err := table.ReadAll()
	require.NoError(t, err)
	for _, line := range lines[1:] {
		r := Row{t, map[string]string{}}
		for i, column := range lines[0] {
			r.cells[column] = line[i]
		}
		rows = append(rows, r)
	}
	return rows
}

// agrees says whether a worked-out figure is the printed one, and how much of
// what the last printed digit permits it is off.
func agrees(printed string, got float64) (part float64, ok bool) {
	want, err := Number(printed)
	if err != nil {
		return 0, false
	}
	off := got - want
	if strings.Contains(printed, "/") {
		return 0, math.Abs(off) <= 1e-12*math.Max(1, math.Abs(got))
	}
	_, decimals, _ := strings.Cut(printed, ".")
	half := 0.5 * math.Pow10(-len(decimals))
	away := math.Copysign(1, got) * off / half
	return math.Abs(off) / half, away >= -1-1e-9 && away < 1-1e-9
}

// Plants returns an answer with every digit in turn made every other digit, and
// with its sign changed.
func Plants(printed string) (wrong []string) {
	for i, was := range printed {
		for d := '0'; d <= '9'; d++ {
			if was >= '0' && was <= '9' && d != was {
				wrong = append(wrong, printed[:i]+string(d)+printed[i+1:])
			}
		}
	}
	if x, err := Number(printed); err == nil && x != 0 {
		other, negative := strings.CutPrefix(printed, "-")
		if !negative {
			other = "-" + printed
		}
		wrong = append(wrong, other)
	}
	return slices.Clip(wrong)
}

// NotHeld returns the files of cases in a folder that none of the tests names.
func NotHeld(t *testing.T, folder string, tests ...string) (left []string) {
	t.Helper()
	files, err := os.ReadDir(folder)
	require.NoError(t, err)
	var code strings.Builder
	for _, test := range tests {
		text, err := os.ReadFile(test)
		require.NoError(t, err)
		code.Write(text)
	}
	for _, f := range files {
		if strings.HasSuffix(f.Name(), ".csv") && !strings.Contains(code.String(), f.Name()+`"`) {
			left = append(left, f.Name())
		}
	}
	return left
}
