package job

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"
)

var oneLine = regexp.MustCompile(`^[^\n]+:[0-9]+:[0-9]+: [^\n]+$`)

// FuzzRead reads anything without panic, to either a job or complaints, each
// at a place and on one line.
func FuzzRead(f *testing.F) {
	jobs := badJobs(f)
	for _, name := range slices.Sorted(maps.Keys(jobs)) {
		f.Add(jobs[name])
	}
	f.Add(base(f))
	f.Add(least)
	f.Add("0:\n<<:\n  {}:\n") // panics in yaml.v3, its issue 895
	f.Add("job: &a {title: *a}\n---\n")
	f.Fuzz(func(t *testing.T, text string) {
		j, complaints := Read("job.yaml", strings.NewReader(text), shelf(map[string]string{"gear.yaml": text}), latin)
		if (j == nil) == (len(complaints) == 0) {
			t.Fatalf("job is nil: %v, with %d complaints", j == nil, len(complaints))
		}
		for _, c := range complaints {
			if c.Line < 1 || c.Col < 1 || !oneLine.MatchString(c.Error()) {
				t.Errorf("complaint %q", c.Error())
			}
		}
	})
}

// FuzzMagnitude reads any text as every kind of number of the table: it is
// refused in one line, or a finite value within the range of its key, which
// reads the same with blanks about its unit.
func FuzzMagnitude(f *testing.F) {
	for _, s := range []string{"0", "-0", "12.5 kg", "14 ft 6 7/16 in", "-11 7/16 in", "5 %", "1.5 deg down", "level", "6 deg stage_left", "010", "1e400", ".inf", "0x1F", "1_000", "12,5", "2 tons", "3 kN", "1.1 lb/ft", "\u00a05 m", "5°"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for _, row := range Keys() {
			if !row.Kind.numeric() {
				continue
			}
			x, wrong := magnitude(&row, s)
			if wrong != "" {
				continue
			}
			if math.IsNaN(x) || x > row.Max+1e-9*math.Max(1, row.Max) || x < row.Min-1e-9*math.Max(1, -row.Min) {
				t.Errorf("%s: %q is %g", row.Path, s, x)
			}
			if again, wrong := magnitude(&row, spaced.ReplaceAllString(s, "$1 $2")); wrong != "" || again != x {
				t.Errorf("%s: %q is %g, with a blank %g %s", row.Path, s, x, again, wrong)
			}
		}
	})
}

var spaced = regexp.MustCompile(`([0-9])([a-zA-Z%])`)
