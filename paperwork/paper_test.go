package paperwork

import (
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/testdata/readback"
)

// A word is one text of a page as it stands in the PDF: its baseline from the
// bottom left corner, in points, and its size.
type word struct {
	s        string
	x, y, pt float64
}

var texts = regexp.MustCompile(`(?s)/F[0-9a-f]+ ([0-9.]+) Tf|BT ([0-9.-]+) ([0-9.-]+) Td \(((?:\\.|[^\\)])*)\) Tj ET`)

// contents returns the drawing instructions of every page of a PDF, inflated.
func contents(t *testing.T, pdf []byte) []string {
	t.Helper()
	pages := readback.Contents(pdf)
	require.NotEmpty(t, pages)
	return pages
}

// Pages that many tests read are taken apart once, up to so many.
var pagesRead = map[string][]word{}

const readMost = 2000

// wordsOn reads the texts of one page in the order they were set.
func wordsOn(page string) (words []word) {
	if had, ok := pagesRead[page]; ok {
		return had
	}
	defer func() {
		if len(pagesRead) < readMost {
			pagesRead[page] = words
		}
	}()
	pt := 0.0
	for _, m := range texts.FindAllStringSubmatch(page, -1) {
		if m[1] != "" {
			pt = number(m[1])
			continue
		}
		words = append(words, word{readback.Text(m[4]), number(m[2]), number(m[3]), pt})
	}
	return words
}

func number(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic(err)
	}
	return x
}

var codes = regexp.MustCompile(`(?s)q [0-9. -]+ cm\n` + readback.Runs)

// codesOn decodes the codes of a page from its drawn modules.
func codesOn(t *testing.T, page string) (read []string) {
	t.Helper()
	for _, m := range codes.FindAllStringSubmatch(page, -1) {
		text, err := readback.Code(m[1])
		require.NoError(t, err)
		read = append(read, text)
	}
	return read
}
