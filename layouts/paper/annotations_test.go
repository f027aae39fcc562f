package paper

import (
	"bytes"
	"fmt"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

// A clicked is a sheet with clicks to others.
type clicked struct {
	name string
	to   []string
}

func (s clicked) Name() string { return s.name }

func (s clicked) Pages(*Canvas) []Page {
	return []Page{{Draw: func(c *Canvas, room mm.Box) {
		for i, to := range s.to {
			c.LeadsTo(mm.BoxAt(room.X, room.Y+float64(10*i), 20, 5), to)
		}
	}}}
}

// Every click is an object that its page refers to, as ISO 32000-1, 7.7.3.3, has it, and
// the trailer counts them in.
func TestClicksAreObjects(t *testing.T) {
	drawn, err := DrawAll(Pack{Sheets: []Sheet{clicked{"ONE", []string{"TWO", "THREE", "ONE"}}, clicked{"TWO", nil}, clicked{"THREE", []string{"ONE", "NONE"}}}})
	require.NoError(t, err)
	objects, trailer, err := apart(drawn.PDF)
	require.NoError(t, err)
	assert.Contains(t, string(trailer), fmt.Sprintf("/Size %d\n", len(objects)+1))
	var leads []string
	for _, list := range regexp.MustCompile(`/Annots \[(.*)\]`).FindAllSubmatch(drawn.PDF, -1) {
		require.Regexp(t, `^[0-9]+ 0 R( [0-9]+ 0 R)*$`, string(list[1]))
		for _, ref := range regexp.MustCompile(`([0-9]+) 0 R`).FindAllSubmatch(list[1], -1) {
			click := objects[numberOf(t, ref[1])-1]
			assert.True(t, bytes.HasPrefix(click, append(ref[1], " 0 obj\n<</Type /Annot /Subtype /Link "...)), string(click))
			leads = append(leads, string(regexp.MustCompile(`/Dest \[([0-9]+ 0 R) `).FindSubmatch(click)[1]))
		}
	}
	page := kids(objects[0])
	assert.Equal(t, []string{page[1], page[2], page[0], page[0]}, leads)
}

func numberOf(t *testing.T, digits []byte) int {
	n, err := strconv.Atoi(string(digits))
	require.NoError(t, err)
	return n
}
