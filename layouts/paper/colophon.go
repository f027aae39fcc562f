package paper

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf16"
)

// A Colophon is what a PDF of ours says of itself, so that it is known again: what it
// is, of which job and revision, and the sheets that it holds, in their order. It stands
// as JSON in the document information dictionary.
type Colophon struct {
	Kind     string     `json:"kind"`            // WholePack or another of these
	Stack    string     `json:"stack,omitempty"` // of StackSheets
	Title    string     `json:"title"`
	Venue    string     `json:"venue"`
	Date     string     `json:"date"`
	Revision string     `json:"revision"` // of a sheet of changes, the new one
	Sheets   []Identity `json:"sheets"`
}

// The kinds of PDFs.
const (
	WholePack    = "pack"
	ChosenSheets = "sheets"
	StackSheets  = "stack" // of one stack, in a file of its own
	ChangesSheet = "changes"
)

const (
	producer     = "hangpack"
	colophonKey  = "/Hangpack"
	colophonMost = 1 << 20 // bytes that are read; 60 stacks of 40 dollies take a third of it
	textMost     = 1 << 10 // bytes of one of its texts
)

// colophon is that of the sheets that are chosen.
func (l *Laid) colophon(chosen func(sheet int) bool) Colophon {
	p := l.pack
	c := Colophon{Kind: ChosenSheets, Title: p.Spine.Title, Venue: p.Spine.Venue, Date: p.Spine.Date, Revision: p.Revision}
	for i, s := range l.sheets {
		if chosen(i) {
			c.Sheets = append(c.Sheets, s.Identity)
		}
	}
	switch {
	case p.Changes:
		c.Kind = ChangesSheet
	case len(c.Sheets) == len(l.sheets):
		c.Kind = WholePack
	}
	return c
}

// withColophon puts a colophon into the information dictionary that the PDF library
// writes, ahead of the producer. An error is of any other object. Source: ISO 32000-1,
// 14.3.3 (entries of one's own), 7.3.4.2 (literal strings).
func withColophon(info []byte, c Colophon) ([]byte, error) {
	head, rest, ok := bytes.Cut(info, []byte("<<\n/Producer ("))
	if !ok {
		return nil, errors.New("no producer in its information")
	}
	text, err := json.Marshal(c)
	if err != nil {
		return nil, err
	}
	escaped := strings.NewReplacer(`\`, `\\`, `(`, `\(`, `)`, `\)`).Replace(ascii(string(text)))
	return fmt.Appendf(nil, "%s<<\n%s (%s)\n/Producer (%s", head, colophonKey, escaped, rest), nil
}

// ascii writes all other characters of a JSON text as \u escapes, which only its strings
// have, and '/' too, so that no text is taken for a key.
func ascii(text string) string {
	var b strings.Builder
	for _, c := range text {
		if c < 0x7f && c != '/' {
			b.WriteRune(c)
			continue
		}
		for _, unit := range utf16.AppendRune(nil, c) {
			fmt.Fprintf(&b, `\u%04x`, unit)
		}
	}
	return b.String()
}

// ReadColophon finds what a PDF says of itself. ours is false of a file that hangpack
// did not make; of one that it made and that cannot be read, cut, encrypted or of
// another version, the Colophon is the zero one. Whatever the bytes, it takes time and
// memory in proportion to them at most.
func ReadColophon(pdf []byte) (c Colophon, ours bool) {
	if !bytes.HasPrefix(pdf, []byte("%PDF-")) {
		return Colophon{}, false
	}
	value, has := lastEntry(pdf, colophonKey)
	if !has {
		return Colophon{}, producedHere(pdf)
	}
	if json.Unmarshal(literal(value), &c) != nil || !c.sound() {
		return Colophon{}, true
	}
	return c, true
}

// sound reports whether a colophon that was read has what any of ours has, and nothing
// that is longer than it can be.
func (c Colophon) sound() bool {
	texts := []string{c.Stack, c.Title, c.Venue, c.Date, c.Revision}
	for _, s := range c.Sheets {
		texts = append(texts, s.Name, s.Mark, s.Digest)
	}
	for _, s := range texts {
		if len(s) > textMost {
			return false
		}
	}
	switch c.Kind {
	case WholePack, ChosenSheets, StackSheets, ChangesSheet:
		return c.Title != "" && c.Venue != "" && c.Date != "" && (c.Stack != "") == (c.Kind == StackSheets)
	}
	return false
}

// blanks are what may stand between a key and its value. Source: ISO 32000-1, 7.2.2.
const blanks = "\x00\t\n\f\r "

// lastEntry is what follows the last entry of a key, from its value on: who changes a
// PDF writes the new entry behind the old one.
func lastEntry(pdf []byte, key string) (value []byte, ok bool) {
	for end := len(pdf); ; {
		at := bytes.LastIndex(pdf[:end], []byte(key))
		if at < 0 {
			return nil, false
		}
		after := pdf[at+len(key):]
		if len(after) == 0 || strings.IndexByte(blanks+"(<", after[0]) >= 0 {
			return bytes.TrimLeft(after, blanks), true
		}
		end = at
	}
}

// producedHere reports whether any entry names hangpack as the producer, in either way
// that a PDF may write that.
func producedHere(pdf []byte) bool {
	wide := "\xfe\xff"
	for _, c := range producer {
		wide += "\x00" + string(c)
	}
	for {
		_, rest, found := bytes.Cut(pdf, []byte("/Producer"))
		if !found {
			return false
		}
		value := bytes.TrimLeft(rest[:min(len(rest), textMost)], blanks)
		if bytes.HasPrefix(value, []byte("("+wide+")")) || bytes.HasPrefix(value, []byte("("+producer+")")) {
			return true
		}
		pdf = rest
	}
}

// literal reads a literal string of printable characters, of a bounded length, that a
// value begins with; nil where it does not end. Source: ISO 32000-1, 7.3.4.2.
func literal(value []byte) (text []byte) {
	if value = value[:min(len(value), colophonMost)]; !bytes.HasPrefix(value, []byte("(")) {
		return nil
	}
	open := 1
	for i := 1; i < len(value); i++ {
		c, taken := value[i], 0
		switch c {
		case '\\':
			c, taken = escape(value[i+1:])
		case '(':
			open++
		case ')':
			open--
		}
		if open == 0 {
			return text
		}
		text, i = append(text, c), i+taken
	}
	return nil
}

// escape is the character that stands behind a backslash, as itself or by its number,
// and how many bytes it takes.
func escape(after []byte) (c byte, taken int) {
	for taken < min(3, len(after)) && after[taken] >= '0' && after[taken] <= '7' {
		taken++
	}
	if n, err := strconv.ParseUint(string(after[:taken]), 8, 8); err == nil {
		return byte(n), taken
	}
	if len(after) == 0 {
		return '\\', 0
	}
	return after[0], 1
}
