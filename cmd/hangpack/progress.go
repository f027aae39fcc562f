package main

import (
	"fmt"
	"io"
	"os"
	"strings"
	"sync/atomic"
)

// A progress is one line on a terminal that says how far several jobs are. It is
// written over in place, and gone before anything else is printed.
type progress struct {
	to    *stream // nil where nobody is to see it
	names []string
	does  string       // reading, packing
	begun atomic.Int64 // how many jobs
	shown int          // cells of the line that stands there
}

// progressMost is how wide the line may be: less than any terminal, since a line that
// wraps cannot be written over.
const progressMost = 78

// newProgress is for standard error where that is a terminal that can go back to the
// start of a line.
func newProgress(c *call) *progress {
	p := &progress{names: c.operands}
	if c.stderr.terminal && !c.has("q") && os.Getenv("TERM") != "dumb" {
		p.to = c.stderr
	}
	return p
}

func (p *progress) begin(does string) {
	p.does = does
	p.begun.Store(0)
}

// show shows how far the work is.
func (p *progress) show() {
	n := int(p.begun.Load())
	if p.to == nil || n == 0 {
		return
	}
	line := fmt.Sprintf("%s %d of %d: ", p.does, n, len(p.names))
	line += endOf(plain(p.names[n-1]), progressMost-len(line))
	over := p.over()
	p.shown = width(line)
	io.WriteString(p.to, over+line)
}

// clear takes the line away.
func (p *progress) clear() {
	if p.shown > 0 {
		io.WriteString(p.to, p.over())
		p.shown = 0
	}
}

// over is what writes over the line that stands there.
func (p *progress) over() string {
	if p.shown == 0 {
		return ""
	}
	return "\r" + strings.Repeat(" ", p.shown) + "\r"
}

// around prints something where the line stands, and the line after it.
func (p *progress) around(print func()) {
	stood := p.shown > 0
	p.clear()
	print()
	if stood {
		p.show()
	}
}

// endOf is the end of a name, which tells it from others in a folder, in so many
// cells.
func endOf(name string, room int) string {
	if width(name) <= room {
		return name
	}
	rest := []rune(name)
	for len(rest) > 0 && width(string(rest)) > room-1 {
		rest = rest[1:]
	}
	return "…" + string(rest)
}

// width is how many cells of a terminal a text takes.
func width(s string) (n int) {
	for _, c := range s {
		n += cells(c)
	}
	return n
}
