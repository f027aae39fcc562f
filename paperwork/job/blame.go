package job

import (
	"regexp"
	"strings"
)

// A fault of indentation shows at the line that fits no more, which is often
// not the line that was shifted: that of the block's first key, or the one
// above. Of the lines of our jobs, each shifted by one blank, one in eight would
// be told at another line, the furthest at the other end of its block; of those
// put at the edge of the page, nine in ten.

// blamed returns the line that is likely at fault where a text cannot be read
// at line n: the one above where that is no whole key or stands less deep than
// both its neighbours; else the one line of the file that stands oddly, if it is
// the one above or one that opened the block; else n itself.
func (f *file) blamed(n int) int {
	above := f.written(n, -1)
	switch {
	case above == 0:
		return n
	case keyless(f.lines[above-1]) && f.indent(above) >= f.indent(n)-2, f.shallow(above, n):
		return above
	case f.odd(n) || f.oddLines() > 1:
		return n
	case f.odd(above):
		return above
	}
	for _, opens := range []int{f.opener(n), f.parent(n)} {
		if opens > 0 && f.odd(opens) {
			return opens
		}
	}
	return n
}

// keyless reports whether a line begins as a key or an item does, and lacks its
// colon, the blank after it, or the blank after its dash.
func keyless(line string) bool {
	line = strings.TrimRight(line, " ")
	return dashed.MatchString(line) || wordy.MatchString(line) && !strings.Contains(line, ": ") && !strings.HasSuffix(line, ":")
}

var (
	wordy  = regexp.MustCompile(`^ *(- +)?[a-z_]{2,}[^{\["'#/]*$`)
	dashed = regexp.MustCompile(`^ *-[a-z_]+: `)
)

// whole is a key with its value.
var whole = regexp.MustCompile(`^ *[^ {\["'].*: +[^ ]`)

// shallow reports whether the line above n is a key with its value that stands
// less deep than the lines on both its sides.
func (f *file) shallow(above, n int) bool {
	before := f.written(above, -1)
	return before > 0 && whole.MatchString(f.lines[above-1]) && f.indent(above) < f.indent(n) && f.indent(before) == f.indent(n)
}

// written returns the nearest line before n that says something, going up or
// down; 0 where there is none.
func (f *file) written(n, step int) int {
	for n += step; n >= 1 && n <= len(f.lines); n += step {
		if s := strings.TrimSpace(f.lines[n-1]); s != "" && s[0] != '#' {
			return n
		}
	}
	return 0
}

func (f *file) indent(n int) int {
	line := f.lines[n-1]
	return len(line) - len(strings.TrimLeft(line, " "))
}

// odd reports whether a line is indented by an odd number of blanks, as no
// editor and few people do.
func (f *file) odd(n int) bool { return f.indent(n)%2 == 1 }

// oddLines counts the lines that stand oddly: where there are many, that is how
// the file is written.
func (f *file) oddLines() (odd int) {
	for n := f.written(0, 1); n > 0; n = f.written(n, 1) {
		if f.odd(n) {
			odd++
		}
	}
	return odd
}

// opener returns the first line of the block above n that is indented further
// than n and belongs to a line indented less.
func (f *file) opener(n int) (first int) {
	at := f.indent(n)
	for above := f.written(n, -1); above > 0 && f.indent(above) > at; above = f.written(above, -1) {
		first = above
	}
	return first
}

// parent returns the line above n that it would belong to: the nearest that is
// indented less; 0 where there is none.
func (f *file) parent(n int) int {
	above := f.written(n, -1)
	for above > 0 && f.indent(above) >= f.indent(n) {
		above = f.written(above, -1)
	}
	return above
}
