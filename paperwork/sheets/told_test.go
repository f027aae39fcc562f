package sheets

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/layouts/parts"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/told"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// rowsOf are the rows that a stack's lines of findings make on paper.
func rowsOf(first string, findings []rules.Finding) (rows []parts.Remark) {
	for _, l := range told.Gathered(findings) {
		rows = append(rows, parts.Remark{Where: told.WhereWords(l.At...), Says: first + l.OnPaper()})
	}
	return rows
}

// TestOneRowForEachLine: the sheets CAUTIONS and DO NOT FLY have a row for each line of
// findings, with all of its places; so many are counted on the cover.
func TestOneRowForEachLine(t *testing.T) {
	trials.EachStack(t, 54_000, func(t *testing.T, h *rules.Checked, f worked.StackFigures) {
		held, cautions := rowsOf("", f.Holds), rowsOf("", f.Cautions)
		assert.Equal(t, held, doNotFlySheet(h).Reasons)
		want := append(rowsOf("HELD. ", f.Holds), cautions...)
		if len(want) > 0 {
			assert.Equal(t, want, amongStacks(h, nil)[0].Items)
		}
		n, unchecked := told.Counts(h)
		assert.Equal(t, len(cautions), n+unchecked)
		assert.Equal(t, told.ShortVerdict(h), coverRow(h).Verdict)
	})
}
