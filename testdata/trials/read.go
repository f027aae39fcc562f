package trials

import (
	"fmt"
	"hash/fnv"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/testdata/readback"
)

// TextOf is all words of the pages whose sheet's name begins with a prefix, in
// the order they were drawn.
func TextOf(pages []string, prefix string) string {
	var all []string
	for _, page := range pages {
		words := WordsOn(page)
		if !strings.HasPrefix(SheetOf(words), prefix) {
			continue
		}
		for _, w := range words {
			all = append(all, w.S)
		}
	}
	return strings.Join(strings.Fields(strings.Join(all, " ")), " ")
}

// InkIn is the texts of some pages, and after those of a block how many lines and
// outlines it has, with a digest of where they stand and what they are drawn with.
// An empty line parts pages. What says the same whatever it is, as marks and numbers of
// pages, is left out: TestPageNumbers holds those.
func InkIn(pdf paper.Drawn) string {
	var b strings.Builder
	last, strokes, digest := paper.Mark{}, 0, fnv.New32a()
	end := func() {
		if strokes > 0 {
			fmt.Fprintf(&b, "%-10s %d drawn %08x\n", last.Block, strokes, digest.Sum32())
		}
		strokes, digest = 0, fnv.New32a()
	}
	for _, m := range pdf.Marks {
		if m.Apart {
			continue
		}
		if m.Page != last.Page || m.In != last.In {
			end()
		}
		if m.Page != last.Page && last.Page > 0 {
			b.WriteString("\n")
		}
		last = m
		if m.Text != "" {
			fmt.Fprintf(&b, "%-10s %s\n", m.Block, textOfMark(m))
			continue
		}
		strokes++
		fmt.Fprintf(digest, "%s %.1f %.1f %.1f %.1f %.1f %.1f %d;", m.Kind, m.X0, m.Y0, m.X1, m.Y1, m.Corners, m.Pen, m.Fill)
	}
	end()
	return b.String()
}

var ofTheMoment = regexp.MustCompile(`(#page=|REV \S+ )[2-9A-Z]+`)

// textOfMark is where a text stands, how tall it is and what it says. Codes name a page
// or the mark of their sheet.
func textOfMark(m paper.Mark) string {
	says := m.Text
	if m.Kind == "code" {
		says = ofTheMoment.ReplaceAllString(says, "$1…")
	}
	return fmt.Sprintf("%6.1f %6.1f %5.1f  %s", m.X0, m.Y1, m.Pt, says)
}

// A Word is one text of a page as it stands in the PDF: its baseline from the
// bottom left corner, in points, and its size.
type Word struct {
	S        string
	X, Y, Pt float64
}

var drawnTexts = regexp.MustCompile(`(?s)/F[0-9a-f]+ ([0-9.]+) Tf|BT ([0-9.-]+) ([0-9.-]+) Td \(((?:\\.|[^\\)])*)\) Tj ET`)

// Contents returns the drawing instructions of every page of a PDF, inflated.
func Contents(t *testing.T, pdf []byte) []string {
	t.Helper()
	pages := readback.Contents(pdf)
	require.NotEmpty(t, pages)
	return pages
}

// Pages that many tests read are taken apart once, up to so many.
var pagesRead = map[string][]Word{}

const readMost = 2000

// WordsOn reads the texts of one page in the order they were set.
func WordsOn(page string) (words []Word) {
	if had, ok := pagesRead[page]; ok {
		return had
	}
	defer func() {
		if len(pagesRead) < readMost {
			pagesRead[page] = words
		}
	}()
	pt := 0.0
	for _, m := range drawnTexts.FindAllStringSubmatch(page, -1) {
		if m[1] != "" {
			pt = Number(m[1])
			continue
		}
		words = append(words, Word{readback.Text(m[4]), Number(m[2]), Number(m[3]), pt})
	}
	return words
}

func Number(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic(err)
	}
	return x
}

var codes = regexp.MustCompile(`(?s)q [0-9. -]+ cm\n` + readback.Runs)

// CodesOn decodes the codes of a page from its drawn modules.
func CodesOn(t *testing.T, page string) (read []string) {
	t.Helper()
	for _, m := range codes.FindAllStringSubmatch(page, -1) {
		text, err := readback.Code(m[1])
		require.NoError(t, err)
		read = append(read, text)
	}
	return read
}

// SheetOf returns which sheet a page is: the words of its spine's foot, which
// are the first of the page.
func SheetOf(words []Word) string { return words[0].S }

// RowsOf gathers the texts of a page that stand on one line.
func RowsOf(words []Word) (lines [][]string) {
	at := map[float64][]Word{}
	for _, w := range words {
		at[w.Y] = append(at[w.Y], w)
	}
	for _, line := range at {
		slices.SortFunc(line, func(a, b Word) int { return int(math.Copysign(1, a.X-b.X)) })
		var s []string
		for _, w := range line {
			s = append(s, w.S)
		}
		lines = append(lines, s)
	}
	return lines
}

// InOrder reports whether parts stand in a line in their order, each as words
// of its own.
func InOrder(line string, parts []string) bool {
	for _, p := range parts {
		i := strings.Index(line, " "+p)
		if i < 0 {
			return false
		}
		line = line[i+len(p)+1:]
		if line != "" && !strings.ContainsAny(line[:1], " ,:;)") {
			return false
		}
	}
	return true
}
