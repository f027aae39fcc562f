package sheets

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// TestGoldens holds the ink of sheets, a file for each kind of a job: texts, where they
// stand and how tall they are, and a digest of each block's lines. A golden shows
// change and proves nothing: read the diff before you commit it, and say why the paper
// changed. UPDATE_GOLDEN=1 writes them.
func TestGoldens(t *testing.T) {
	for _, name := range trials.Examples {
		golden(t, name, "examples/"+name+".yaml")
	}
}

// TestGoldenExtremes holds the venue's sheets of one point, of twenty-four in feet and
// pounds on Letter, and of the longest names; and the lift sheets and those of coming
// down of centres of gravity that are not known, of twenty-four cabinets in feet and
// pounds on Letter, of the longest names, and of one cabinet without a dolly.
func TestGoldenExtremes(t *testing.T) {
	venue, lifts := []string{"cover", "points"}, []string{"lifts", "down"}
	for name, kinds := range map[string][]string{
		"one-point": venue, "twenty-four-points": venue, "longest-names": slices.Concat(venue, lifts),
		"unknown-centres": lifts, "twenty-four-cabinets": lifts, "one-cabinet": lifts,
	} {
		golden(t, name, "testdata/jobs/"+name+".yaml", kinds...)
	}
}

// golden holds the sheets of a job, of some kinds or of all, and sees that no golden
// of another kind is left.
func golden(t *testing.T, name, file string, kinds ...string) {
	t.Helper()
	laid, all, err := Lay(trials.OpenFile(t, file))
	require.NoError(t, err)
	var held, written []string
	for _, s := range all {
		if slices.Contains(held, s.Kind) || len(kinds) > 0 && !slices.Contains(kinds, s.Kind) {
			continue
		}
		held = append(held, s.Kind)
		pdf, err := laid.Draw(func(i int) bool { return all[i].Kind == s.Kind })
		require.NoError(t, err)
		file := strings.ReplaceAll(s.Kind, " ", "-") + ".txt"
		trials.Golden(t, name+"/"+file, trials.InkIn(pdf))
		written = append(written, file)
	}
	files, err := os.ReadDir(trials.File("testdata/golden/" + name))
	require.NoError(t, err)
	for _, f := range files {
		assert.Contains(t, written, f.Name(), "testdata/golden/%s/%s: no sheet of this kind; remove it", name, f.Name())
	}
}
