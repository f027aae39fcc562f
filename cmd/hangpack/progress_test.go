package main

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// screen is what a terminal shows of what was written to it: \r goes back to the start
// of a line, and what follows stands in place of what was there.
func screen(written string) (shown []string) {
	for _, line := range strings.Split(written, "\n") {
		var row []rune
		at := 0
		for _, c := range line {
			if c == '\r' {
				at = 0
				continue
			}
			for n := cells(c); n > 0; n-- {
				row = append(row[:at:at], append([]rune{c}, row[min(at+1, len(row)):]...)...)
				at++
			}
		}
		shown = append(shown, strings.TrimRight(string(row), " "))
	}
	return shown
}

// onTerminal is a call of three jobs whose standard error is a terminal.
func onTerminal(errs *bytes.Buffer, flags ...string) *call {
	c := &call{operands: []string{"a.yaml", "b.yaml", "c.yaml"}, flags: map[string]string{}, stdout: newStream(errs), stderr: newStream(errs)}
	c.stderr.terminal = true
	for _, f := range flags {
		c.flags[f] = ""
	}
	return c
}

// TestProgress: the line says which job was begun last, is written over in place, and
// leaves nothing behind, also of a longer one before it.
func TestProgress(t *testing.T) {
	t.Setenv("TERM", "xterm")
	var errs bytes.Buffer
	p := newProgress(onTerminal(&errs))
	p.names[1] = "a-much-longer-name.yaml"
	p.begin("packing")
	p.show()
	assert.Empty(t, errs.String(), "nothing is begun")
	for i, want := range []string{"packing 1 of 3: a.yaml", "packing 2 of 3: a-much-longer-name.yaml", "packing 3 of 3: c.yaml"} {
		p.begun.Add(1)
		p.show()
		assert.Equal(t, []string{want}, screen(errs.String()), i)
	}
	p.around(func() { errs.WriteString("wrote a.pdf\n") })
	assert.Equal(t, []string{"wrote a.pdf", "packing 3 of 3: c.yaml"}, screen(errs.String()))
	p.clear()
	assert.Equal(t, []string{"wrote a.pdf", ""}, screen(errs.String()))
	before := errs.Len()
	p.clear()
	p.around(func() {})
	assert.Equal(t, before, errs.Len(), "what is not there is not taken away")
	assert.NotContains(t, errs.String(), "\x1b")
}

// TestNoProgress: nothing of it but on a terminal that can go back to the start of a
// line, nor where the call is to be quiet.
func TestNoProgress(t *testing.T) {
	for term, want := range map[string]bool{"xterm": true, "": true, "dumb": false} {
		t.Setenv("TERM", term)
		for _, terminal := range []bool{true, false} {
			for _, flag := range []string{"q", "only"} {
				var errs bytes.Buffer
				c := onTerminal(&errs, flag)
				c.stderr.terminal = terminal
				p := newProgress(c)
				p.begin("packing")
				p.begun.Add(1)
				p.show()
				p.clear()
				assert.Equal(t, want && terminal && flag != "q", errs.Len() > 0, "%q %v %s", term, terminal, flag)
			}
		}
	}
}

// TestProgressOnTicks: the line comes with a tick and not before, and what is printed
// stands above it.
func TestProgressOnTicks(t *testing.T) {
	t.Setenv("TERM", "xterm")
	var errs bytes.Buffer
	p := newProgress(onTerminal(&errs))
	p.begin("packing")
	ticks, told := make(chan time.Time), make(chan bool)
	work := func(i int) {
		p.begun.Add(1)
		if i == 1 {
			ticks <- time.Time{}
			<-told
		}
	}
	var at []string
	tick := func() {
		p.show()
		at = append(at, screen(errs.String())...)
		close(told)
	}
	then := func(i int) { p.around(func() { errs.WriteString("wrote " + p.names[i] + "\n") }) }
	abreast(3, 1, work, then, ticks, tick)
	assert.Equal(t, []string{"wrote a.yaml", "packing 2 of 3: b.yaml"}, at)
	p.clear()
	assert.Equal(t, []string{"wrote a.yaml", "wrote b.yaml", "wrote c.yaml", ""}, screen(errs.String()))
}

// TestProgressFits: a line that would wrap could not be written over, so of a long name
// the end is shown; and a name works no terminal.
func TestProgressFits(t *testing.T) {
	t.Setenv("TERM", "xterm")
	for name, want := range map[string]string{
		"shows/a.yaml":                        "packing 1 of 3: shows/a.yaml",
		"a\x1b[2J\nb\r.yaml":                  `packing 1 of 3: a\x1b[2J\nb\r.yaml`,
		strings.Repeat("x", 62):               "packing 1 of 3: " + strings.Repeat("x", 62),
		strings.Repeat("x", 58) + "/a.yaml":   "packing 1 of 3: …" + strings.Repeat("x", 54) + "/a.yaml",
		strings.Repeat("舞", 40) + "/show.yml": "packing 1 of 3: …" + strings.Repeat("舞", 26) + "/show.yml",
	} {
		var errs bytes.Buffer
		p := newProgress(onTerminal(&errs))
		p.names[0] = name
		p.begin("packing")
		p.begun.Add(1)
		p.show()
		assert.Equal(t, want, errs.String())
		assert.LessOrEqual(t, width(want), progressMost)
		p.clear()
		assert.Equal(t, []string{""}, screen(errs.String()))
	}
}
