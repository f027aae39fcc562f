package paper

import (
	"math"
	"strings"
)

// Width returns how wide a text is, in mm.
func (c *Canvas) Width(f Face, s string) float64 {
	return float64(c.units(f.advances(), s)) / perEm * f.Em()
}

// units returns how wide a text is, in units of its em: the font has no kerning, so
// that a text is as wide as its characters together.
func (c *Canvas) units(of []uint16, s string) (units int) {
	for _, r := range s {
		units += c.advance(of, r)
	}
	return units
}

// unitsIn returns how many units of its em a face has in w mm.
func (f Face) unitsIn(w float64) int { return int(math.Floor(w/f.Em()*perEm + 1e-6)) }

// advance returns how far the pen moves after a character, and faults one that the
// font lacks: it would print an empty box.
func (c *Canvas) advance(of []uint16, r rune) int {
	units := advanceOf(of, r)
	if units == 0 {
		c.Fault("page %d: the paper's font has no %q", c.page, r)
	}
	return units
}

// Text writes s with its left end at x and its baseline at y.
func (c *Canvas) Text(x, y float64, f Face, s string) {
	if s == "" {
		return
	}
	m := c.mark("text", x, y-f.Em()*0.75, x+c.Width(f, s), y+f.Em()*0.21)
	m.Text, m.Pt, m.Bold, m.White = s, f.Pt, f.Bold, c.now.letters == White
	c.now.set(f)
	c.now.fill(c.now.letters)
	c.pdf.Text(x, y, s)
}

// Right writes s with its right end at x.
func (c *Canvas) Right(x, y float64, f Face, s string) { c.Text(x-c.Width(f, s), y, f, s) }

// Centre writes s with its middle at x.
func (c *Canvas) Centre(x, y float64, f Face, s string) { c.Text(x-c.Width(f, s)/2, y, f, s) }

// upwards writes s turned to the left by a right angle, its baseline at x, its
// left end at y.
func (c *Canvas) upwards(x, y float64, f Face, s string) {
	m := c.mark("text", x-f.Em()*0.75, y-c.Width(f, s), x+f.Em()*0.21, y)
	m.Text, m.Pt, m.Bold, m.White = s, f.Pt, f.Bold, c.now.letters == White
	c.now.set(f)
	c.now.fill(c.now.letters)
	c.pdf.TransformBegin()
	c.pdf.TransformRotate(90, x, y)
	c.pdf.Text(x, y, s)
	c.pdf.TransformEnd()
}

// Wrap breaks s into lines no wider than w: at blanks, never between a figure
// and its unit, and inside a word only where the word alone is too wide.
func (c *Canvas) Wrap(f Face, w float64, s string) (lines []string) {
	of, most := f.advances(), f.unitsIn(w)
	blank := c.advance(of, ' ')
	line, used := "", 0
	for _, word := range wordsOf(s) {
		units := c.units(of, word)
		if line != "" && used+blank+units > most {
			lines, line, used = append(lines, line), "", 0
		}
		if line != "" {
			word, units = line+" "+word, used+blank+units
		}
		if units > most {
			for n := c.fitting(f, w, word); n < len(word); n = c.fitting(f, w, word) {
				lines, word = append(lines, word[:n]), word[n:]
			}
			units = c.units(of, word)
		}
		line, used = word, units
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// wordsOf cuts a text at blanks, and leaves a figure together with its unit.
func wordsOf(s string) (words []string) {
	for _, word := range strings.Fields(s) {
		n := len(words)
		if n > 0 && goesOn(words[n-1], word) {
			words[n-1] += " " + word
			continue
		}
		if n > 0 && isUnit(strings.TrimRight(word, ".,;:)")) && strings.ContainsAny(words[n-1][len(words[n-1])-1:], "0123456789") {
			words[n-1] += " " + word
			continue
		}
		words = append(words, word)
	}
	return words
}

// goesOn reports whether a word goes on with the length that the one before it
// begins: inches after feet, a fraction after whole inches.
func goesOn(before, word string) bool {
	digit := strings.ContainsAny(word[:1], "0123456789")
	return digit && strings.HasSuffix(before, " ft") || digit && strings.Contains(word, "/") && strings.Contains(before, " ft ")
}

func isUnit(s string) bool {
	switch s {
	case "kg", "lb", "kN", "lbf", "m", "mm", "ft", "in", "%":
		return true
	}
	return false
}

// fitting returns how many bytes of s, whole characters and at least one, are
// no wider than w.
func (c *Canvas) fitting(f Face, w float64, s string) int {
	units, of, most := 0, f.advances(), f.unitsIn(w)
	for i, r := range s {
		if units += c.advance(of, r); units > most && i > 0 {
			return i
		}
	}
	return len(s)
}

// Lines writes lines from the baseline y down and returns the next baseline.
func (c *Canvas) Lines(x, y float64, f Face, lines []string) float64 {
	for _, s := range lines {
		c.Text(x, y, f, s)
		y += f.Lead()
	}
	return y
}

// Paragraph writes s into a column w wide and returns the next baseline.
func (c *Canvas) Paragraph(x, y, w float64, f Face, s string) float64 {
	return c.Lines(x, y, f, c.Wrap(f, w, s))
}

// WrapAll wraps texts one after another.
func (c *Canvas) WrapAll(f Face, w float64, texts []string) (lines []string) {
	for _, s := range texts {
		lines = append(lines, c.Wrap(f, w, s)...)
	}
	return lines
}
