package sheets

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// What people write on by hand: the venue's boxes beside each point, the three
// to sign on the cover, and the line at each open item. What is printed in one
// of them, or stands where no one finds it, is as bad as none.

// A slip is the ink of one piece of a page, in the order it was drawn.
type slip []paper.Mark

// slipsOf are the pieces of the pages whose sheet's name begins with a prefix,
// page by page, from the top.
func slipsOf(pdf paper.Drawn, pages []string, prefix string) (all []slip) {
	of, last := make([]bool, len(pages)), ""
	for n, page := range pages {
		of[n] = strings.HasPrefix(trials.SheetOf(trials.WordsOn(page)), prefix)
	}
	for _, m := range pdf.Marks {
		if !of[m.Page-1] || !strings.HasPrefix(m.Block, "piece ") {
			continue
		}
		if block := fmt.Sprint(m.Page, " ", m.Block); block != last {
			all, last = append(all, nil), block
		}
		all[len(all)-1] = append(all[len(all)-1], m)
	}
	return all
}

// kinds are the marks of one kind that are at least so wide and tall.
func (s slip) kinds(kind string, w, h float64) (all []paper.Mark) {
	for _, m := range s {
		if m.Kind == kind && m.X1-m.X0 >= w && m.Y1-m.Y0 >= h {
			all = append(all, m)
		}
	}
	return all
}

// inside are the marks of one kind that reach into a box.
func (s slip) inside(kind string, box paper.Mark) (all []paper.Mark) {
	for _, m := range s {
		if m.Kind == kind && m.X1 > box.X0 && m.X0 < box.X1 && m.Y1 > box.Y0 && m.Y0 < box.Y1 {
			all = append(all, m)
		}
	}
	return all
}

func (s slip) texts() (all []string) {
	for _, m := range s {
		if m.Kind == "text" {
			all = append(all, m.Text)
		}
	}
	return all
}

// TestRoomForThePen: on every sheet that is written on there is room where it
// is looked for, and nothing is printed there.
func TestRoomForThePen(t *testing.T) {
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		venueBoxes(t, name, j, slipsOf(pdf, pages, "POINTS"))
		cover := slipsOf(pdf, pages, "COVER")
		signBoxes(t, name, cover)
		linesForNames(t, name, j, cover)
	}
}

// venueBoxes: beside every point stand three boxes, apart, tall enough for
// figures, each under its heading.
func venueBoxes(t *testing.T, name string, j *worked.Job, points []slip) {
	t.Helper()
	var heads slip
	var got, want []string
	for _, s := range points {
		if slices.Contains(s.texts(), "initials") {
			heads = s
		}
		boxes := s.kinds("rect", 12, 12)
		if len(boxes) == 0 {
			continue
		}
		id := s.texts()[0]
		got = append(got, id)
		require.Len(t, boxes, 3, "%s: %s", name, id)
		for i, head := range []string{"venue's limit", "accepted", "initials"} {
			assert.Empty(t, s.inside("text", boxes[i]), "%s: %s, %s", name, id, head)
			assert.True(t, i == 0 || boxes[i-1].X1 < boxes[i].X0, "%s: %s, %s", name, id, head)
			assert.Equal(t, head, heads.over(boxes[i]), "%s: %s", name, id)
		}
	}
	for _, p := range plannedPoints(j) {
		want = append(want, p.id)
	}
	assert.Equal(t, want, got, name)
}

// over is what headings say over a box.
func (s slip) over(box paper.Mark) string {
	var all []string
	for _, m := range s {
		if m.Kind == "text" && m.X0 > box.X0-2 && m.X0 < box.X1 {
			all = append(all, m.Text)
		}
	}
	return strings.Join(all, " ")
}

// signBoxes: the cover has a box for each who signs, with a line for each thing
// to be written and nothing else in it.
func signBoxes(t *testing.T, name string, cover []slip) {
	t.Helper()
	var signs []string
	for _, s := range cover {
		for _, box := range s.kinds("rect", 45, 25) {
			says, lines := slip(s.inside("text", box)), s.inside("line", box)
			require.Equal(t, []string{"name", "date, time", "signature", "revision accepted"}, says.texts()[1:], name)
			require.Len(t, lines, 4, name)
			for i, line := range lines {
				word := says[1+i]
				assert.True(t, line.X0 > word.X1 && line.X1-line.X0 > 20 && line.Y0 > word.Y0 && line.Y1 < word.Y1+0.5, "%s: the line of %s", name, word.Text)
			}
			signs = append(signs, says.texts()[0])
		}
	}
	assert.Equal(t, []string{"Prepared by", "Checked by", "Accepted by the venue"}, signs, name)
}

// linesForNames: every open item has room for the name that closes it, under
// its heading, over a rule.
func linesForNames(t *testing.T, name string, j *worked.Job, cover []slip) {
	t.Helper()
	var closes *paper.Mark
	rows := 0
	for _, s := range cover {
		if i := slices.IndexFunc(s, func(m paper.Mark) bool { return m.Text == "closed by (name, time)" }); i >= 0 {
			closes = &s[i]
			continue
		}
		if closes == nil || s[0].Page != closes.Page || len(s.kinds("rect", 45, 25)) > 0 {
			closes = nil
			continue
		}
		rows++
		rule := s[len(s)-1]
		require.Equal(t, "line", rule.Kind, "%s: %q", name, s.texts())
		assert.Greater(t, rule.X1-closes.X0, 30.0, "%s: %q", name, s.texts())
		for _, m := range s[:len(s)-1] {
			assert.Less(t, m.X1, closes.X0, "%s: %s", name, m.Text)
		}
	}
	assert.Equal(t, len(openItems(j)), rows, name)
}
