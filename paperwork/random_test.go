package paperwork

import (
	"fmt"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/paperwork/worked"
	"hangpack/testdata/plausible"
)

// A gambler writes the random job of its seed; see package plausible.
type gambler struct {
	seed int64
	wild bool // the longest names, ids and lists too
}

func gamble(seed int64) *gambler { return &gambler{seed: seed} }

// job writes a whole job of up to three stacks.
func (g *gambler) job() string { return plausible.Job(g.seed, g.wild) }

// splays are the holes of every joint of a random job, in degrees.
var splays = plausible.Splays

// exampleGear opens the gear files of examples.
func exampleGear(path string) (io.ReadCloser, error) { return os.Open("../examples/" + path) }

// open reads a job that has no complaint.
func open(t *testing.T, yaml string) *worked.Job {
	t.Helper()
	j, complaints, err := Open("job.yaml", strings.NewReader(yaml), exampleGear)
	require.NoError(t, err)
	require.Empty(t, complaints)
	return j
}

// TestEveryJobPacks: whatever check accepts finds room on paper, with no ink
// outside its block.
func TestEveryJobPacks(t *testing.T) {
	for seed := range int64(120) {
		g := gamble(seed)
		g.wild = seed%2 == 1
		yaml := g.job()
		j := open(t, yaml)
		if _, err := Draw(j); err != nil {
			t.Errorf("seed %d: %v", seed, err)
		}
	}
}

// TestManyPagesPack: the widest ids with page numbers of three digits fit below
// their codes.
func TestManyPagesPack(t *testing.T) {
	head, stack, _ := strings.Cut(plainJob, "stacks:\n")
	stack = strings.Replace(stack, "count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 2, splay: [0, 1]", 1)
	yaml := head + "stacks:\n"
	for i := range 26 {
		one := strings.Replace(stack, "id: SL", fmt.Sprintf("id: WWWWW%c", 'A'+i%26), 1)
		if i >= 24 { // held: its code is the smallest
			one = strings.Replace(one, "lowest: 4.5 m", "lowest: -4.5 m", 1)
		}
		yaml += one
	}
	paper, err := Draw(open(t, yaml))
	require.NoError(t, err)
	require.Greater(t, paper.Pages, 100)
}
