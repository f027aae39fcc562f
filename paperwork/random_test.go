package paperwork

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/paperwork/sheets"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// TestEveryJobPacks: whatever check accepts finds room on paper, with no ink
// outside its block.
func TestEveryJobPacks(t *testing.T) {
	for seed := range int64(deep.Of(30, 120)) {
		g := trials.Gamble(seed)
		g.Wild = seed%2 == 1
		yaml := g.Job()
		j := trials.OpenJob(t, yaml)
		if _, err := sheets.Draw(j); err != nil {
			t.Errorf("seed %d: %v", seed, err)
		}
	}
}

// TestManyPagesPack: the widest ids with page numbers of three digits fit below
// their codes.
func TestManyPagesPack(t *testing.T) {
	head, stack, _ := strings.Cut(trials.Plain, "stacks:\n")
	stack = strings.Replace(stack, "count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 2, splay: [0, 1]", 1)
	yaml := head + "stacks:\n"
	for i := range 26 {
		one := strings.Replace(stack, "id: SL", fmt.Sprintf("id: WWWWW%c", 'A'+i%26), 1)
		if i >= 24 { // held: its code is the smallest
			one = strings.Replace(one, "lowest: 4.5 m", "lowest: -4.5 m", 1)
		}
		yaml += one
	}
	pdf, err := sheets.Draw(trials.OpenJob(t, yaml))
	require.NoError(t, err)
	require.Greater(t, pdf.Pages, 100)
}
