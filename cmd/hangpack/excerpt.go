package main

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"hangpack/paperwork/job"
)

const (
	excerptIndent = "    "
	excerptMost   = 74 // cells of a line that are shown: 80 with what stands around them
	tabMost       = 8  // cells that a tab takes at most
)

// excerpt shows the line of a complaint as it stands in the file, and a caret
// under its column where the column is known. It is for terminals: editors and
// programs read the line before it.
func excerpt(c job.Complaint) string {
	text := []rune(c.Text)
	if len(text) == 0 {
		return ""
	}
	at := c.Col - 1
	pointed := !c.Near && at >= 0 && at < len(text)
	if !pointed {
		at = 0
	}
	from, to := window(text, at)
	line := excerptIndent + cut(from > 0) + strings.Map(harmless, string(text[from:to])) + cut(to < len(text)) + "\n"
	if pointed {
		line += blanks(excerptIndent+cut(from > 0)+string(text[from:at])) + "^\n"
	}
	return line
}

// cut marks where a line goes on and is not shown.
func cut(off bool) string {
	if off {
		return "…"
	}
	return ""
}

// window returns which part of a long line is shown: as much to either side of
// a place as there is room for.
func window(text []rune, at int) (from, to int) {
	from, to = at, at
	for room, grew := excerptMost, true; grew; {
		grew = false
		if to < len(text) && room >= most(text[to]) {
			room -= most(text[to])
			to, grew = to+1, true
		}
		if from > 0 && room >= most(text[from-1]) {
			room -= most(text[from-1])
			from, grew = from-1, true
		}
	}
	return from, to
}

// most is how many cells a character takes at most.
func most(c rune) int {
	if c == '\t' {
		return tabMost
	}
	return max(1, cells(harmless(c)))
}

// harmless puts a question mark for what would work a terminal or has no shape.
func harmless(c rune) rune {
	if c == '\t' || c != utf8.RuneError && (unicode.IsPrint(c) || unicode.Is(unicode.Zs, c)) {
		return c
	}
	return '?'
}

// blanks are as wide as a text as it is shown: tabs stay, since nobody knows
// where the terminal's next stop is.
func blanks(s string) string {
	var b strings.Builder
	for _, c := range s {
		if c == '\t' {
			b.WriteRune(c)
		} else {
			b.WriteString(strings.Repeat(" ", cells(harmless(c))))
		}
	}
	return b.String()
}

// wide are the blocks whose characters take two cells of a terminal, first and
// last, near enough for a caret. Source: Unicode Standard Annex 11, East Asian
// Width.
var wide = [][2]rune{{0x1100, 0x115f}, {0x2e80, 0xa4cf}, {0xac00, 0xd7a3}, {0xf900, 0xfaff}, {0xfe30, 0xfe6f},
	{0xff00, 0xff60}, {0xffe0, 0xffe6}, {0x1f300, 0x1faff}, {0x20000, 0x3fffd}}

// cells is how many cells of a terminal a character that prints takes.
func cells(c rune) int {
	if unicode.In(c, unicode.Mn, unicode.Me) {
		return 0
	}
	for _, block := range wide {
		if c >= block[0] && c <= block[1] {
			return 2
		}
	}
	return 1
}
