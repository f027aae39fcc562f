package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A failing writer takes so many bytes, and then no more.
type failing struct {
	room   int
	writes int
}

var errNoRoom = errors.New("no room")

func (f *failing) Write(p []byte) (int, error) {
	f.writes++
	if len(p) > f.room {
		n := f.room
		f.room = 0
		return n, errNoRoom
	}
	f.room -= len(p)
	return len(p), nil
}

// TestAnyWriteFails: wherever in its output a command cannot go on, it says so
// once, and is a failure. No command line is left out: each prints something.
func TestAnyWriteFails(t *testing.T) {
	copied(t)
	for _, line := range []string{
		"help", "help pack", "version", "--version",
		"check examples/club.yaml", "check -json examples/held.yaml", "check -json testdata/slips.yaml",
		"points examples/club.yaml", "points -csv examples/arena.yaml",
		"pack examples/club.yaml -o x.pdf", "pack examples/held.yaml -o y.pdf", "pack examples/club.yaml examples/held.yaml",
	} {
		args := strings.Fields(line)
		var whole bytes.Buffer
		run(args, &whole, &bytes.Buffer{})
		require.NotZero(t, whole.Len(), line)
		size := whole.Len()
		for _, room := range []int{0, 1, size / 3, size / 2, size - 1} {
			var errs bytes.Buffer
			f := &failing{room: room}
			assert.Equal(t, exitFailed, run(args, f, &errs), "%s, %d of %d bytes", line, room, size)
			assert.Equal(t, "hangpack: cannot write standard output: no room\n", errs.String(), "%s, %d of %d bytes", line, room, size)
		}
	}
}

// TestPackOnStandardOutputFails: what was not written is not said to be.
func TestPackOnStandardOutputFails(t *testing.T) {
	copied(t)
	for _, room := range []int{0, 1, 10_000} {
		var errs bytes.Buffer
		assert.Equal(t, exitFailed, run([]string{"pack", "examples/club.yaml", "-o", "-"}, &failing{room: room}, &errs))
		assert.Equal(t, "hangpack: cannot write standard output: no room\n", errs.String())
	}
}

// TestStandardErrorFails: what could not be said is a failure, but for what the
// exit code says already.
func TestStandardErrorFails(t *testing.T) {
	copied(t)
	for line, code := range map[string]int{
		"pack -o - examples/club.yaml":    exitFailed,
		"pack -q -o - examples/club.yaml": exitDone,
		"check testdata/slips.yaml":       exitWrong,
		"":                                exitWrong,
		"check missing.yaml":              exitFailed,

		"pack examples/club.yaml missing.yaml":          exitFailed,
		"pack examples/club.yaml testdata/slips.yaml":   exitWrong,
		"pack examples/club.yaml examples/concert.yaml": exitDone,
		"pack -o x examples/club.yaml missing.yaml":     exitWrong,
	} {
		assert.Equal(t, code, run(strings.Fields(line), &bytes.Buffer{}, &failing{}), line)
	}
}

// TestSeveralThoughNothingIsSaid: jobs are packed, all of them, though what is said of
// them cannot be printed from some place on.
func TestSeveralThoughNothingIsSaid(t *testing.T) {
	copied(t)
	want := map[string]bool{"examples/club.pdf": true, "examples/concert.pdf": true, "examples/held.pdf": true}
	for _, room := range []int{0, 1, 100, 200} {
		for _, first := range []bool{true, false} {
			out, errs := io.Writer(&failing{room: room}), io.Writer(&bytes.Buffer{})
			if !first {
				out, errs = errs, out
			}
			code := run(strings.Fields("pack examples/club.yaml testdata/slips.yaml examples/concert.yaml examples/held.yaml"), out, errs)
			assert.Equal(t, map[bool]int{true: exitFailed, false: exitWrong}[first], code)
			packs := pdfs(t)
			assert.Len(t, packs, len(want))
			for name, text := range packs {
				assert.True(t, want[name] && strings.HasSuffix(text, "%%EOF\n"), name)
			}
		}
	}
}

// TestStreamKeepsTheFirst: after a failed write nothing more is tried, so that
// no piece is missing from the middle.
func TestStreamKeepsTheFirst(t *testing.T) {
	f := &failing{room: 3}
	s := newStream(f)
	for _, text := range []string{"ab", "cd", "e"} {
		s.Write([]byte(text))
	}
	assert.Equal(t, errNoRoom, s.err)
	assert.Equal(t, 2, f.writes)
	s.keep(errors.New("later"))
	assert.Equal(t, errNoRoom, s.err)
}

// TestPackNotForTerminal: a terminal gets no PDF, under either name, and the
// job is not even read.
func TestPackNotForTerminal(t *testing.T) {
	copied(t)
	for code, terminal := range map[int]bool{exitWrong: true, exitDone: false} {
		var out, errs bytes.Buffer
		stdout := newStream(&out)
		stdout.terminal = terminal
		got := answer([]string{"pack", "examples/club.yaml", "-o", "-"}, stdout, newStream(&errs))
		assert.Equal(t, code, got)
		assert.Equal(t, !terminal, out.Len() > 0)
		if terminal {
			assert.Equal(t, "hangpack: pack: a PDF is not for a terminal; name a file with -o, or send it on with > or |\n", errs.String())
		}
	}
}

// TestNoTerminal: files, pipes and the null device are none.
func TestNoTerminal(t *testing.T) {
	null, err := os.Open(os.DevNull)
	require.NoError(t, err)
	defer null.Close()
	file, err := os.Create(t.TempDir() + "/file")
	require.NoError(t, err)
	defer file.Close()
	reader, writer, err := os.Pipe()
	require.NoError(t, err)
	defer reader.Close()
	defer writer.Close()
	for _, f := range []*os.File{null, file, writer} {
		assert.False(t, newStream(f).terminal, f.Name())
	}
	assert.False(t, newStream(&bytes.Buffer{}).terminal)
}

func TestPlain(t *testing.T) {
	for s, want := range map[string]string{
		"show/Bühne 1.yaml":       "show/Bühne 1.yaml",
		`C:\jobs\a.yaml`:          `C:\jobs\a.yaml`,
		"it's \"so\"":             "it's \"so\"",
		"舞台.yaml":                 "舞台.yaml",
		"a\u00a0b":                "a\u00a0b",
		"a\nb\tc\r":               `a\nb\tc\r`,
		"\x1b]0;title\a":          `\x1b]0;title\a`,
		"\u0085\u009b\u2028":      `\u0085\u009b\u2028`,
		"\u202eright to left":     `\u202eright to left`,
		"\xff\xfe":                `\xff\xfe`,
		"the sign \ufffd is fair": "the sign \ufffd is fair",
		"":                        "",
	} {
		assert.Equal(t, want, plain(s))
	}
}
