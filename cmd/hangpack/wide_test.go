package main

import (
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"golang.org/x/text/width"
)

// TestCells holds the cells of every character that is shown to another
// library's table.
func TestCells(t *testing.T) {
	wides := 0
	for c := ' '; c <= unicode.MaxRune; c++ {
		if harmless(c) != c || unicode.In(c, unicode.Mn, unicode.Me) {
			continue
		}
		want := 1
		if kind := width.LookupRune(c).Kind(); kind == width.EastAsianWide || kind == width.EastAsianFullwidth {
			want = 2
			wides++
		}
		assert.Equal(t, want, cells(c), "%U", c)
	}
	assert.Greater(t, wides, 100_000)
}
