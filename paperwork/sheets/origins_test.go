package sheets

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/layouts/parts"
	"hangpack/testdata/trials"
)

// again is the stack of plainJob with another id.
func again(id string) string {
	_, stack, _ := strings.Cut(trials.Plain, "stacks:\n")
	return strings.Replace(stack, "id: SL", "id: "+id, 1)
}

// TestOriginsOnPaper: figures that nobody looked up or weighed are an open item,
// one for each gear entry, however many stacks are made of it.
func TestOriginsOnPaper(t *testing.T) {
	j := trials.OpenFile(t, "examples/held.yaml") // two stacks of the same gear
	var got []parts.Remark
	for _, o := range openItems(j) {
		if o.Where != "slim-cabinet" && (o.Says[:9] == "Estimated" || o.Says[:16] == "Not known: where") {
			got = append(got, o)
		}
	}
	assert.Equal(t, []parts.Remark{
		{Where: "six-dolly", Says: "Estimated: the figures of dolly six-dolly; weigh it or ask its maker"},
	}, got)
	bare := trials.OpenJob(t, strings.Replace(trials.Plain, "steel: 14 m\n", "steel: 14 m\n"+again("SR"), 1))
	for _, kind := range []string{"bar bar", "cabinet box", "dolly dolly", "hoist hoist"} {
		assert.Equal(t, 1, openItemsOf(bare, "Not known: where the figures of "+kind+" come from"), kind)
	}
	_, pages := paperOf(t, trials.OpenFile(t, "examples/arena.yaml"))
	calculation := trials.TextOf(pages, "SL CALCULATION")
	for _, says := range []string{"weighed, as of 2027-02-18", "figures from data sheet, as of 2026-11-02", "figures from label, as of 2027-08-30"} {
		assert.Contains(t, calculation, says)
	}
}
