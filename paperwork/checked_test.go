package paperwork

import (
	"fmt"
	"math"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
)

// TestChecked runs every check of figures and sheets that is made against something
// outside the code that makes them, every law among them, and writes down what it was
// and how it came out; and which figures of check -json no page of checks names.
func TestChecked(t *testing.T) {
	if os.Getenv("HANGPACK_SEED")+os.Getenv("HANGPACK_SEEDS") != "" {
		return // other jobs than those of the page
	}
	const file = "../testdata/checked/figures.md"
	var all []proof.Check
	for _, checks := range [][]proof.Check{solvedChecks, handChecks, paperChecks, lawChecks()} {
		all = append(all, checks...)
	}
	rest := []string{"", "## Without an outside check", ""}
	for _, f := range proof.Unnamed(t, file, all, numberPaths("", reflect.TypeOf(worked.Figures{}))) {
		rest = append(rest, "- `"+f+"`")
	}
	if len(rest) == 3 {
		rest = append(rest, "No number of check -json: each is named above or on another page of this folder.")
	}
	proof.Page(t, file, "Figures and sheets, and what they were checked against", all, rest...)
}

// numberPaths are the paths of all numbers of a type as check -json writes it, sorted
// and each once.
func numberPaths(path string, of reflect.Type) (all []string) {
	switch of.Kind() {
	case reflect.Struct:
		for i := range of.NumField() {
			if below, ok := pathOf(path, of.Field(i)); ok {
				all = append(all, numberPaths(below, of.Field(i).Type)...)
			}
		}
	case reflect.Slice, reflect.Pointer:
		all = numberPaths(path, of.Elem())
	case reflect.Float64, reflect.Int:
		all = []string{path}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// offBy is how many cases a check has had, and the largest difference that it saw.
type offBy struct {
	cases int
	worst float64
}

func (a *offBy) inDelta(t *testing.T, want, got, most float64, says ...any) {
	t.Helper()
	assert.InDelta(t, want, got, most, says...)
	a.worst = math.Max(a.worst, math.Max(math.Abs(want-got), untold))
}

// lawChecks are the laws, each over all jobs of TestLaws, which are tried once for
// both.
func lawChecks() (all []proof.Check) {
	for i := range laws {
		l := &laws[i]
		all = append(all, proof.Check{Figure: "law: " + l.name, Keys: strings.Fields(l.keys), Against: l.why, Unit: "of the figure", All: l.keys == "", Run: l.held})
	}
	return all
}

const oneSystem = "one linear system of bar and cabinets, straight from the job, solved by another library"

var solvedChecks = []proof.Check{
	{Figure: "hooks and their windows at every lift", Keys: []string{"hook_kg", "low_kg", "high_kg", "tilt_deg"}, Against: oneSystem, Unit: "kg", Run: liftsAsOneSystem},
	{Figure: "each hoist alone: hook, joints, uses", Keys: []string{"alone_kg"}, Against: oneSystem, Unit: "of the weight", Run: aloneAsOneSystem},
	{Figure: "centres of gravity that are not known", Keys: []string{"low_kg", "high_kg", "most"}, Against: "jobs that give them, one for each corner of the middle third, written out in the test", Unit: "kg", Run: unknownCentresAsJobs},
	{Figure: "most used part, closest measure", Against: "every check of every lift worked out again and sorted", Unit: "in SI", Run: closestChecks},
}

var handChecks = []proof.Check{
	{Figure: "masses, aims and windows of aims on cards", Keys: []string{"mass_kg", "aim_deg", "last_aim_deg"}, Against: "a stack's day up to trim, by hand", Run: dayUpReads},
	{Figure: "masses and pins of dollies coming down", Against: "a stack's day down again, by hand", Run: dayDownCounts},
	{Figure: "mass of the kit", Keys: []string{"mass_kg"}, Against: "all that the stacks hang, summed by piece", Unit: "kg", Run: kitWeighsTheStacks},
}

// What is read back is what the figures say, through their formatters: the paper
// loses nothing. It proves no figure by itself.
var paperChecks = []proof.Check{
	{Figure: "formulas of the calculation sheet", Against: "the numbers it prints put into the formulas it prints", Unit: "of what its digits leave open", Run: calculationSheetAddsUp},
	{Figure: "centre of gravity, part by part", Keys: []string{"centre_of_gravity"}, Against: "the sums and moments of the table as printed", Unit: "of what its digits leave open", Run: partTableAddsUp},
	{Figure: "distances on the plan", Against: "Pythagoras, from the figures", Run: tapeChecks},
	{Figure: "points and outlines of the plan", Against: "lines of the PDF divided by the plan's scale, turned as complex numbers", Run: planAsDrawn},
	{Figure: "sheets of a stack", Against: "texts read out of the PDF, row by row", Run: figuresReadBack},
	{Figure: "holes on dolly sheets and in their codes", Against: "texts and modules read out of the PDF", Run: dollySheetsReadBack},
	{Figure: "cards of lifts and of coming down", Against: "texts read out of the PDF, card by card", Run: liftSheetsReadBack},
	{Figure: "the venue's table", Against: "texts read out of the PDF, point by point", Run: pointsReadBack},
	{Figure: "points as data", Against: "the standard library's reader of RFC 4180", Run: pointsAsData},
}

// TestEveryNumberHasAName: the list of numbers is that of check -json and not less.
func TestEveryNumberHasAName(t *testing.T) {
	all := numberPaths("", reflect.TypeOf(worked.Figures{}))
	for _, one := range []string{"total.static_kg", "stacks.points.most.design_kg", "stacks.lifts.pick_clear_m", "stacks.alone_kg", "stacks.cabinets.set"} {
		assert.Contains(t, all, one)
	}
	assert.Greater(t, len(all), 45, fmt.Sprint(all))
}
