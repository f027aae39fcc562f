package job

import (
	"fmt"
	"sort"
	"strings"
)

// A Complaint is one thing wrong with a job file, at the place where a person
// has to mend it.
type Complaint struct {
	File      string
	Line, Col int    // from 1, columns in characters
	Key       string // path in the job: stacks[1].trim.lowest
	Message   string // what is wrong; what would be right
}

// Error returns the complaint as one line: FILE:LINE:COL: message.
func (c Complaint) Error() string {
	return fmt.Sprintf("%s:%d:%d: %s", c.File, c.Line, c.Col, c.Message)
}

// Complaints are all that is wrong with a job file, in its order.
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
	sort.SliceStable(c, func(i, j int) bool {
		if c[i].Line != c[j].Line {
			return c[i].Line < c[j].Line
		}
		return c[i].Col < c[j].Col
	})
}

// near returns the one of some words that a misspelt one was likely meant to
// be, or "": it must be within two slips and less than half of it wrong.
func near(wrong string, words []string) string {
	best, least := "", 3
	for _, w := range words {
		if d := slips(wrong, w); d < least && 2*d < len(wrong) {
			best, least = w, d
		}
	}
	return best
}

// slips counts the letters to insert, drop or change to turn a into b.
// Source: V. I. Levenshtein, Binary codes capable of correcting deletions,
// insertions, and reversals, 1966.
func slips(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		last := row[0]
		row[0] = i + 1
		for j := range len(b) {
			change := last
			if a[i] != b[j] {
				change++
			}
			last = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
