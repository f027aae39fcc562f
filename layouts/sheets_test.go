package layouts

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

func draw(t *testing.T, letter bool, sheets ...paper.Sheet) paper.Drawn {
	t.Helper()
	whole, err := paper.DrawAll(paper.Pack{Letter: letter, Revision: "B", Spine: paper.Spine{Title: "Show"}, Sheets: sheets})
	require.NoError(t, err)
	return whole
}

// texts joins the texts of a page.
func texts(whole paper.Drawn, page int) string {
	var all []string
	for _, m := range whole.Marks {
		if m.Page == page && m.Kind == "text" {
			all = append(all, m.Text)
		}
	}
	return strings.Join(all, "|")
}

// times is a long text of numbered words.
func times(n int) string {
	var all []string
	for i := range n {
		all = append(all, fmt.Sprintf("word%03d", i))
	}
	return strings.Join(all, " ")
}

// Sheets with few words and with very many draw without a fault on both papers. Every
// page has the sheet's head, and no word is lost.
func TestSheetsFlowFromPageToPage(t *testing.T) {
	for name, of := range map[string]func(says string) paper.Sheet{
		"DO NOT FLY": func(says string) paper.Sheet {
			return DoNotFly{Head: parts.Head{ID: "SL"}, Reasons: []parts.Remark{{Where: "lift 1", Says: says}, {Where: "lift 2", Says: says}}, Code: paper.Code{Text: "HELD"}}
		},
		"KIT": func(says string) paper.Sheet {
			return Kit{Says: []string{says, says}, Groups: []KitGroup{{Of: "pins", Rows: []KitRow{{Of: "link pin", Count: "9"}}}}, Trucks: []TruckRow{{Stack: "SL", Dolly: "A"}}}
		},
		"CHANGES": func(says string) paper.Sheet {
			return Changes{Says: "REV A, now REV B", Venue: []string{says, says, says}, Stacks: []ChangedStack{{ID: "SL",
				Joints: []ChangedJoint{{Above: "1", Below: "2", From: parts.JointHole{Label: "0.5"}, To: parts.JointHole{Label: "1"}, Pins: 2}}}}}
		},
		"CAUTIONS": func(says string) paper.Sheet {
			return Cautions{Anyone: Advice{Do: "Stop.", Says: "Any time.", From: "rule"}, Roles: []Role{{Is: "rigger", Does: "leads"}},
				Stacks: []StackCautions{{Of: []StackMark{{ID: "SL", Name: "left"}}, Items: []parts.Remark{{Says: says}, {Says: says}}}},
				Checks: CheckList{Head: "Look at", When: Inspection{Thing: "Before use.", Out: "Put away."}, Signed: []string{"by"}}}
		},
	} {
		for _, words := range []int{3, 150} {
			for _, letter := range []bool{false, true} {
				whole := draw(t, letter, of(times(words)))
				last := times(words)[8*(words-1):]
				found := ""
				for page := 1; page <= whole.Pages; page++ {
					assert.Contains(t, texts(whole, page), name, "page %d", page)
					found += texts(whole, page)
				}
				assert.Contains(t, found, last, name)
			}
		}
	}
}

// The sheet of a dolly is cut where its rows would be too low to read, each page with
// all its words; each joint has its tab once.
func TestDollySheetsAreCut(t *testing.T) {
	d := Dolly{Sheet: "SL DOLLY A", ID: "SL", Word: "dolly", Which: "A", Code: paper.Code{Text: "SL A"}, LoadOut: "pull the pins"}
	for i := range 11 {
		d.Rows = append(d.Rows, PinRow{Number: fmt.Sprint(i + 1), Type: "big cabinet", Hole: parts.JointHole{Label: fmt.Sprintf("%d.25", i)}, Ghost: fmt.Sprintf("hole %d.25 on the next sheet", i), Pins: 2})
	}
	whole := draw(t, false, d)
	require.Equal(t, 2, whole.Pages)
	for i := range 11 {
		tabs := 0
		for _, m := range whole.Marks {
			if m.Text == fmt.Sprintf("%d.25", i) {
				tabs++
			}
		}
		assert.Equal(t, 1, tabs, "joint %d", i+1)
	}
	assert.Contains(t, texts(whole, 1), "hole 5.25 on the next sheet")
	assert.Contains(t, texts(whole, 2), "cabinet 5, on the sheet before")
	assert.Contains(t, texts(whole, 2), " · 2 of 2|")
}
