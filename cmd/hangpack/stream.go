package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A stream is standard output or standard error. It keeps the first write that
// failed, so that one place can say so whatever was being printed.
type stream struct {
	w        io.Writer
	terminal bool
	info     os.FileInfo // of the file behind it; nil where there is none
	err      error
}

func newStream(w io.Writer) *stream {
	s := &stream{w: w}
	if f, ok := w.(*os.File); ok {
		if info, err := f.Stat(); err == nil {
			s.info, s.terminal = info, isTerminal(info)
		}
	}
	return s
}

func (s *stream) Write(p []byte) (int, error) {
	if s.err != nil {
		return 0, s.err
	}
	n, err := s.w.Write(p)
	s.keep(err)
	return n, err
}

// keep keeps an error of what was printed, unless there was one before.
func (s *stream) keep(err error) {
	if s.err == nil {
		s.err = err
	}
}

// isTerminal reports whether a file is one that a person reads from a screen:
// a character device, but for those that swallow or refuse all.
func isTerminal(info os.FileInfo) bool {
	if info.Mode()&os.ModeCharDevice == 0 {
		return false
	}
	for _, name := range []string{os.DevNull, "/dev/zero", "/dev/full"} {
		if other, err := os.Stat(name); err == nil && os.SameFile(info, other) {
			return false
		}
	}
	return true
}

// say prints what is said in passing, on one line.
func say(stderr io.Writer, format string, args ...any) {
	fmt.Fprintln(stderr, "hangpack: "+plain(fmt.Sprintf(format, args...)))
}

// plain writes out what would break a line or work a terminal: a file's name
// may hold anything.
func plain(s string) string {
	var b strings.Builder
	for len(s) > 0 {
		c, n := utf8.DecodeRuneInString(s)
		switch {
		case c == utf8.RuneError && n == 1:
			fmt.Fprintf(&b, `\x%02x`, s[0])
		case unicode.IsPrint(c) || unicode.Is(unicode.Zs, c):
			b.WriteRune(c)
		default:
			b.WriteString(strings.Trim(strconv.QuoteRune(c), "'"))
		}
		s = s[n:]
	}
	return b.String()
}

// reason is what the system said, without the name of what was tried: that is
// said in the user's words, and may be a file that the user never named.
func reason(err error) error {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		return path.Err
	case errors.As(err, &link):
		return link.Err
	}
	return err
}

// printJSON prints a value as JSON, set out so that people can read it too.
func printJSON(stdout *stream, value any) {
	enc := json.NewEncoder(stdout)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	stdout.keep(enc.Encode(value))
}
