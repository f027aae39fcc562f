package paper

import (
	"fmt"
	"strings"
	"unicode/utf8"

	qrcode "github.com/skip2/go-qrcode"

	"hangpack/layouts/mm"
)

// A Code is a square code that a phone reads. Text is what it carries: any {page} in it
// stands for the first page of the sheet To, to which a click leads, {rev} for the
// revision, {mark} for the mark of the sheet that the code stands on.
type Code struct {
	Text, To string
	Small    bool // no larger than its modules have to be
}

func (code Code) filled(revision, mark string, page int) string {
	return strings.NewReplacer("{page}", fmt.Sprint(page), "{rev}", strings.ToUpper(revision), "{mark}", mark).Replace(code.Text)
}

// Filled returns the code's text with all that is left open in it. It belongs into
// Apart; the code itself stands for it in what the sheet says.
func (c *Canvas) Filled(code Code) string {
	return code.filled(c.Revision, c.mark, c.sheets[code.To].first)
}

// Widest returns the code's text to measure with. A page number takes at most four
// digits while pages are still being counted.
func (c *Canvas) Widest(code Code) string { return code.filled(c.WidestRevision(), WidestMark, 9999) }

// WidestRevision takes as much room as any revision of as many characters.
func (c *Canvas) WidestRevision() string {
	return strings.Repeat("W", utf8.RuneCountInString(c.Revision))
}

// CodeSide returns how wide the square of a code is, with its quiet zone: the usual
// size, or more where modules would be too small. Asking for it makes a note that the
// code is wanted.
func (c *Canvas) CodeSide(code Code) float64 {
	c.wanted = append(c.wanted, code)
	s := c.Widest(code)
	q, err := qrcode.New(s, qrcode.Medium)
	if err != nil {
		c.Fault("code for %q: %w", s, err)
		return usualCode
	}
	side := leastModule * float64(modulesOf(q)+2*quiet)
	if code.Small {
		return side
	}
	return max(side, usualCode)
}

// Code draws a code into a square and makes it a click to its sheet.
func (c *Canvas) Code(x, y, side float64, code Code) {
	m := c.ink("code", x, y, x+side, y+side)
	if m.Text = code.Text; c.pdf == nil {
		return
	}
	c.LeadsTo(mm.BoxAt(x, y, side, side), code.To)
	s := c.Filled(code)
	m.Text = s
	bits, err := c.codes.modules(s)
	if err != nil {
		c.Fault("code for %q: %w", s, err)
		return
	}
	module := side / float64(len(bits)+2*quiet)
	runs := make([]byte, 0, 4*len(bits)*len(bits))
	for row, line := range bits {
		for from := 0; from < len(line); {
			to := from
			for to < len(line) && line[to] {
				to++
			}
			if to > from {
				runs = fmt.Appendf(runs, "%d %d %d 1 re\n", from+quiet, row+quiet, to-from)
			}
			from = to + 1
		}
	}
	c.now.fill(Black)
	c.pdf.RawWriteStr(c.placed(x, y, module, -module) + string(runs) + "f Q\n")
}
