package paper

import (
	"fmt"
	"strings"

	qrcode "github.com/skip2/go-qrcode"
)

// A Code is a square code that a phone reads. Text is what it carries: any
// {page} in it stands for the page of the sheet To, to which a click leads.
type Code struct{ Text, To string }

func (code Code) filled(pages map[string]int) string {
	return strings.ReplaceAll(code.Text, "{page}", fmt.Sprint(pages[code.To]))
}

// Filled returns the code's text with its page filled in.
func (c *Canvas) Filled(code Code) string { return code.filled(c.pages) }

// CodeSide returns how wide the square of a code is, with its quiet zone: the
// usual size, or more where modules would be too small. A page number takes at
// most four digits while pages are still being counted. Asking for it makes a
// note that the code is wanted.
func (c *Canvas) CodeSide(code Code) float64 {
	c.wanted = append(c.wanted, code)
	s := strings.ReplaceAll(code.Text, "{page}", "9999")
	q, err := qrcode.New(s, qrcode.Medium)
	if err != nil {
		c.Fault("code for %q: %w", s, err)
		return usualCode
	}
	return max(leastModule*float64(modulesOf(q)+2*quiet), usualCode)
}

// Code draws a code into a square and makes it a click to its sheet.
func (c *Canvas) Code(x, y, side float64, code Code) {
	s := c.Filled(code)
	bits, err := c.codes.modules(s)
	if err != nil {
		c.Fault("code for %q: %w", s, err)
		return
	}
	module := side / float64(len(bits)+2*quiet)
	c.mark("code", x, y, x+side, y+side).Text = s
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
	if link, ok := c.links[code.To]; ok {
		c.pdf.Link(x, y, side, side, link)
	}
}
