package laws

import (
	"fmt"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/paperwork/worked"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// TestChecked runs every check of figures that is made against something
// outside the code that makes them, every law among them, and writes down what it was
// and how it came out; and which figures of check -json no page of checks names.
func TestChecked(t *testing.T) {
	if os.Getenv("HANGPACK_SEED")+os.Getenv("HANGPACK_SEEDS") != "" {
		return // other jobs than those of the page
	}
	file := trials.File("testdata/checked/figures.md")
	var all []proof.Check
	for _, checks := range [][]proof.Check{solvedChecks, lawChecks()} {
		all = append(all, checks...)
	}
	rest := []string{"", "## Without an outside check", ""}
	for _, f := range proof.Unnamed(t, file, all, numberPaths("", reflect.TypeOf(worked.Figures{}))) {
		rest = append(rest, "- `"+f+"`")
	}
	if len(rest) == 3 {
		rest = append(rest, "No number of check -json: each is named above or on another page of this folder.")
	}
	proof.Page(t, file, "Figures, and what they were checked against", all, rest...)
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
	{Figure: "hooks, what they may read and how far they are from slack, at every lift", Keys: []string{"hook_kg", "low_kg", "high_kg", "sum_low_kg", "sum_high_kg", "slack_mm", "tilt_deg"}, Against: oneSystem, Unit: "kg, mm", Run: windowsAsOneSystem},
	{Figure: "what is held over the reach of every lift", Keys: []string{"holds"}, Against: oneSystem, Run: reachAsOneSystem},
	{Figure: "governing loads", Keys: []string{"governing", "alone_design_kg"}, Against: oneSystem, Unit: "kg", Run: pointsAsOneSystem},
	{Figure: "each hoist alone at every lift: hook, uses, what is found", Keys: []string{"alone_kg"}, Against: oneSystem, Unit: "of each", Run: aloneAsOneSystem},
	{Figure: "most used part, closest measure", Against: "every check of every lift worked out again and sorted", Unit: "in SI", Run: closestChecks},
}

// TestEveryNumberHasAName: the list of numbers is that of check -json and not less.
func TestEveryNumberHasAName(t *testing.T) {
	all := numberPaths("", reflect.TypeOf(worked.Figures{}))
	for _, one := range []string{"total.static_kg", "stacks.points.most.design_kg", "stacks.lifts.pick_clear_m", "stacks.alone_kg", "stacks.cabinets.set"} {
		assert.Contains(t, all, one)
	}
	assert.Greater(t, len(all), 45, fmt.Sprint(all))
}
