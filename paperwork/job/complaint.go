package job

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// A Complaint is one thing wrong with a job file, at the place where a person
// has to mend it.
type Complaint struct {
	File      string
	Line, Col int    // from 1, columns in characters
	Key       string // path in the job, items of lists from 0: stacks[1].trim.lowest
	Message   string // what is wrong; what would be right
	Text      string // the line as it stands in the file; "" where it cannot be read
	Near      bool   // Line is the best that is known, and Col says nothing
	order     int    // of its file
}

// Error returns the complaint as one line: FILE:LINE:COL: message.
func (c Complaint) Error() string {
	return fmt.Sprintf("%s:%d:%d: %s", c.File, c.Line, c.Col, c.Message)
}

// String returns what Error does.
func (c Complaint) String() string { return c.Error() }

// Complaints are all that is wrong with a job file, in its order and
// those of its gear files after it.
type Complaints []Complaint

// Error returns the complaints, one a line.
func (c Complaints) Error() string {
	var lines []string
	for _, one := range c {
		lines = append(lines, one.Error())
	}
	return strings.Join(lines, "\n")
}

func (c Complaints) sort() {
	slices.SortStableFunc(c, func(a, b Complaint) int {
		return cmp.Or(cmp.Compare(a.order, b.order), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Col, b.Col))
	})
}

// orList writes words as a choice: 'mm, in or ft'.
func orList(words []string) string {
	n := len(words)
	if n < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:n-1], ", ") + " or " + words[n-1]
}

// clipped shortens what a person wrote to what fits a complaint.
func clipped(s string) string {
	if r := []rune(s); len(r) > wordMost {
		return string(r[:wordMost]) + "…"
	}
	return s
}

// onOneLine puts a blank for what would break a line: a quoted name in the
// job may hold a newline.
func onOneLine(s string) string {
	return strings.Map(func(c rune) rune {
		if unicode.In(c, unicode.Cc, unicode.Zl, unicode.Zp) {
			return ' '
		}
		return c
	}, s)
}

// Near returns the one of some words that a misspelt one was likely meant to
// be, or "": it must be within two slips and less than half of it wrong.
func Near(wrong string, words []string) string {
	best, least := "", 3
	letters := []rune(wrong)
	if len(letters) > wordMost {
		return ""
	}
	for _, w := range words {
		if strings.EqualFold(w, wrong) {
			return w
		}
		if d := slips(letters, []rune(w)); d < least && 2*d < len(letters) {
			best, least = w, d
		}
	}
	return best
}

// slips counts the letters to insert, drop, change or swap with the next to turn
// a into b. Sources: V. I. Levenshtein, Binary codes capable of correcting
// deletions, insertions, and reversals, 1966; for swaps F. J. Damerau, A
// technique for computer detection and correction of spelling errors, 1964.
func slips(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range a {
		before, last, row = last, row, before
		row[0] = i + 1
		for j := range b {
			change := last[j]
			if a[i] != b[j] {
				change++
			}
			row[j+1] = min(change, row[j]+1, last[j+1]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
	}
	return row[len(b)]
}
