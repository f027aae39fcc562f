package paper

import (
	"fmt"
	"strings"
	"sync"

	qrcode "github.com/skip2/go-qrcode"
)

// A Code is a square code that a phone reads. Text is what it carries: any
// {page} in it stands for the page of the sheet To, to which a click leads.
type Code struct{ Text, To string }

// A bitmap is the modules of a code, true for black, without its quiet zone.
type bitmap [][]bool

// Sizes of codes in mm. Modules of half a millimetre outlive two copies on a
// poor machine; the quiet zone of four modules is that of ISO/IEC 18004.
const (
	leastModule = 0.5
	quiet       = 4
	usualCode   = 30.0
)

// Filled returns the code's text with its page filled in.
func (c *Canvas) Filled(code Code) string { return code.filled(c.pages) }

func (code Code) filled(pages map[string]int) string {
	return strings.ReplaceAll(code.Text, "{page}", fmt.Sprint(pages[code.To]))
}

// encode makes the modules of a text, at level M.
func encode(s string) (bitmap, error) {
	q, err := qrcode.New(s, qrcode.Medium)
	if err != nil {
		return nil, err
	}
	q.DisableBorder = true
	return q.Bitmap(), nil
}

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

// modulesOf returns how many modules a code has in a row. Source: ISO/IEC 18004, a
// version has four more than the one before it, and version 1 has 21.
func modulesOf(q *qrcode.QRCode) int { return 17 + 4*q.VersionNumber }

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

// codes are the modules of texts. Each text is encoded once, whoever asks first.
type codes map[string]func() (bitmap, error)

// codesFor prepares to encode texts.
func codesFor(texts []string) codes {
	all := codes{}
	for _, s := range texts {
		if all[s] == nil {
			all[s] = sync.OnceValues(func() (bitmap, error) { return encode(s) })
		}
	}
	return all
}

// modules returns those of a text.
func (all codes) modules(s string) (bitmap, error) {
	if known, ok := all[s]; ok {
		return known()
	}
	return encode(s)
}

// ahead encodes texts in their order while the pages before them are drawn. What goes
// wrong with one is left to who draws it, and is told again then.
func (all codes) ahead(texts []string) {
	defer func() { recover() }()
	for _, s := range texts {
		all.modules(s)
	}
}
