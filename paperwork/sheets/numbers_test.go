package sheets

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/testdata/trials"
)

// TestPageNumbers: every page says on its spine which it is and of how many, and
// wherever another page is named, in words or in a code, the sheet that is meant
// stands there. Goldens leave these numbers out.
func TestPageNumbers(t *testing.T) {
	named := 0
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		spines, sheet := make([]string, len(pages)), make([]string, len(pages))
		for i, page := range pages {
			sheet[i] = trials.SheetOf(trials.WordsOn(page))
		}
		for _, m := range pdf.Marks {
			if m.Block == "spine" {
				spines[m.Page-1] += " " + m.Text
				continue
			}
			if page, means := pageNamed(m); page > 0 {
				named++
				require.LessOrEqual(t, page, len(pages), "%s: %s", name, m.Text)
				assert.Regexp(t, means, sheet[page-1], "%s: %s", name, m.Text)
			}
		}
		for i, says := range spines {
			assert.Regexp(t, fmt.Sprintf(`· page %d of %d( |$)`, i+1, len(pages)), says, name)
		}
	}
	require.Greater(t, named, 100)
}

var (
	pageInWords = regexp.MustCompile(`^(?:(\S+):|(\S.*)) page ([0-9]+)$`)
	pageInCode  = regexp.MustCompile(`#page=([0-9]+)$`)
)

// pageNamed is the number of the page that a mark leads to, 0 for none, and the
// sheet's name: 'SL: page 4' and codes mean the stack's pins, or that it must not fly.
func pageNamed(m paper.Mark) (page int, means string) {
	const pins = " (PINS|DO NOT FLY)"
	if says := pageInWords.FindStringSubmatch(m.Text); says != nil {
		page = int(trials.Number(says[3]))
		if says[1] != "" {
			return page, "^" + regexp.QuoteMeta(says[1]) + pins
		}
		stack, kind, found := strings.Cut(says[2], " ")
		if !found {
			return page, "^" + strings.ToUpper(says[2])
		}
		return page, "^" + regexp.QuoteMeta(stack) + " " + strings.ToUpper(kind)
	}
	if says := pageInCode.FindStringSubmatch(m.Text); says != nil {
		return int(trials.Number(says[1])), pins
	}
	return 0, ""
}
