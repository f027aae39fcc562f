package layouts

import (
	"encoding/binary"
	"sync"

	"golang.org/x/image/font/gofont/goregular"
)

// glyphs is the set of characters that the paper's font has. The regular and
// the bold face have the same ones, which a test holds.
var glyphs = sync.OnceValue(func() map[rune]bool { return characters(goregular.TTF) })

// Prints reports whether the paper's font has a character. A text with one
// that it lacks would print an empty box and must be refused before.
func Prints(r rune) bool { return glyphs()[r] }

// characters reads the characters that a font has from its format 4 character
// map. Source: ISO/IEC 14496-22 (Open Font Format), cmap table, format 4.
func characters(ttf []byte) map[rune]bool {
	have := map[rune]bool{}
	sub := subtable(ttf)
	u16 := func(at int) int { return int(binary.BigEndian.Uint16(sub[at:])) }
	n := u16(6) // twice the number of segments
	for i := 0; i < n; i += 2 {
		last, first := u16(14+i), u16(16+n+i)
		delta, at := u16(16+2*n+i), 16+3*n+i
		for r := first; r <= last && r != 0xFFFF; r++ {
			glyph := r
			if skip := u16(at); skip != 0 {
				glyph = u16(at + skip + 2*(r-first))
			}
			if (glyph+delta)&0xFFFF != 0 {
				have[rune(r)] = true
			}
		}
	}
	return have
}

// subtable finds the Unicode subtable of a font's character map.
func subtable(ttf []byte) []byte {
	u16 := func(at int) int { return int(binary.BigEndian.Uint16(ttf[at:])) }
	u32 := func(at int) int { return int(binary.BigEndian.Uint32(ttf[at:])) }
	for t := range u16(4) {
		if string(ttf[12+16*t:][:4]) != "cmap" {
			continue
		}
		cmap := u32(12 + 16*t + 8)
		for e := range u16(cmap + 2) {
			at := cmap + 4 + 8*e
			if sub := cmap + u32(at+4); u16(at) == 3 && u16(at+2) == 1 && u16(sub) == 4 {
				return ttf[sub:]
			}
		}
	}
	panic("the paper's font has no Unicode character map")
}
