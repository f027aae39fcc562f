package sheets

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/testdata/trials"
)

// TestWaysToSetPins: what sheets say goes by the way that is given, of the stack or of
// practice, and nothing is asked that is known.
func TestWaysToSetPins(t *testing.T) {
	const not, asks = "    pins_set: in_the_air\n", "When are the link pins set? The rigger in charge writes it here: "
	for _, tt := range []struct{ name, from, to, dolly, lift string }{
		{"on the dolly", "in_the_air", "on_dolly", "Set all pins now, before it rolls in. Joint above cabinet 4: made hanging: hinge first, then link.", ""},
		{"at the hoist", "in_the_air", "at_the_hoist", "Leave its links in their truck holes; at the hoist (motor), from the top joint down, one at a time, each goes to its show hole. Joint above cabinet 4: made hanging: hinge first, then link.",
			"Links of the joints above cabinets 5 to 6, from the top joint down, one at a time: from their truck holes to their show holes, as on the sheet of dolly B and as their maker says."},
		{"in the air", not, not, "Hinges only now, link pins at the lift. Joint above cabinet 4: made hanging: hinge first, then link.", "Link pins of the joints above cabinets 5 to 6, as on the sheet of dolly B."},
		{"not known", not, "", asks, "When link pins go in is not known: ask."},
	} {
		t.Run(tt.name, func(t *testing.T) {
			for _, practice := range []bool{false, true} {
				edits := []string{tt.from, tt.to}
				if practice && tt.to != "" {
					way := strings.TrimSpace(strings.TrimPrefix(tt.to, "    pins_set:"))
					edits = []string{not, "", "practice: {", "practice: {pins_set: " + way + ", "}
				}
				h := day(t, edits...)
				sheet, card := dollyParts(h.Hung, 1)[0], liftSheet(h).Cards[2]
				if tt.dolly == asks {
					assert.Empty(t, sheet.PinsSet, "the sheet asks")
				} else {
					assert.Equal(t, tt.dolly, sheet.PinsSet)
				}
				if tt.lift != "" {
					assert.Contains(t, stepsOf(card), tt.lift)
				} else {
					assert.NotContains(t, stepsOf(card), "ink pins")
				}
				asked := false
				for _, o := range openHanging(h.Hung) {
					asked = asked || o.Says == "Not known: whether link pins are set on the dolly, at the hoist (motor) or in the air"
				}
				assert.Equal(t, tt.to == "", asked, "on the cover")
			}
		})
	}
}

// TestSetHeldPlumb: a dolly that holds a set with a front plumb says whose, on paper.
func TestSetHeldPlumb(t *testing.T) {
	yaml := strings.Replace(trials.Plain, "deck_height: 180 mm", "deck_height: 180 mm, stands: plumb", 1)
	_, pages := paperOf(t, trials.OpenJob(t, yaml))
	assert.Contains(t, trials.TextOf(pages, "SL DOLLY A"), "standing with the front of cabinet 4 plumb")
	assert.Contains(t, trials.TextOf(pages, "SL DOLLY B"), "standing with the front of cabinet 8 plumb")
	_, pages = paperOf(t, trials.OpenJob(t, trials.Plain))
	assert.NotContains(t, trials.TextOf(pages, "SL DOLLY A"), "standing with")
}
