package paper

import "strings"

// RunFaces are the faces of a text whose beginning stands out.
type RunFaces struct{ start, Rest Face }

// The two sizes of such texts.
var (
	Running = RunFaces{TextBold, Text}
	Larger  = RunFaces{Face{true, Reading.Pt}, Reading}
)

// A Run is a text whose beginning stands out, broken into lines, with its
// source small at the right of its last line, or below it where it has no room.
type Run struct {
	RunFaces
	w     float64
	bold  []string
	at    float64 // where the rest begins, on the last line of the beginning
	first string  // of the rest, on that line; "" where nothing fits there
	more  []string
	from  []string
	below bool // the source
}

// RunIn breaks a beginning in bold, and what follows it on the same line, into
// lines no wider than w.
func RunIn(c *Canvas, f RunFaces, w float64, bold, rest, from string) Run {
	r := Run{RunFaces: f, w: w, bold: c.Wrap(f.start, w, bold), from: c.Wrap(Small, w, from)}
	r.at = c.Width(f.start, r.bold[len(r.bold)-1]) + c.Width(f.Rest, " ")
	words := wordsOf(rest)
	n := len(words)
	for c.Width(f.Rest, strings.Join(words[:n], " ")) > w-r.at && n > 0 {
		n--
	}
	r.first = strings.Join(words[:n], " ")
	r.more = c.Wrap(f.Rest, w, strings.Join(words[n:], " "))
	r.below = len(r.from) > 1 || lastOf(c, r)+4+c.Width(Small, from) > w
	return r
}

// lastOf returns how wide the last line of a text is.
func lastOf(c *Canvas, r Run) float64 {
	if n := len(r.more); n > 0 {
		return c.Width(r.Rest, r.more[n-1])
	}
	return r.at + c.Width(r.Rest, r.first)
}

// Height returns how tall the lines are.
func (r Run) Height() float64 {
	h := float64(len(r.bold)+len(r.more)) * r.Rest.Lead()
	if r.below {
		h += float64(len(r.from)) * Small.Lead()
	}
	return h
}

// Draw writes the lines from the baseline y down.
func (r Run) Draw(c *Canvas, x, y float64) {
	y = c.Lines(x, y, r.start, r.bold)
	c.Text(x+r.at, y-r.Rest.Lead(), r.Rest, r.first)
	y = c.Lines(x, y, r.Rest, r.more) - r.Rest.Lead()
	for _, s := range r.from {
		if r.below {
			y += Small.Lead()
		}
		c.Right(x+r.w, y, Small, s)
	}
}
