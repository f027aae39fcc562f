package paper

import (
	"encoding/binary"
	"math"
	"sync"

	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// An sfnt is a TrueType font as its bytes. Source of what is read from it: ISO/IEC
// 14496-22 (Open Font Format).
type sfnt []byte

// advances is how far the pen moves after each character of the paper's font, by
// its number: regular and bold. A character that the font lacks has none.
var advances = [2]func() []uint16{
	sync.OnceValue(func() []uint16 { return sfnt(goregular.TTF).advances() }),
	sync.OnceValue(func() []uint16 { return sfnt(gobold.TTF).advances() }),
}

// perEm is how many units of an advance make an em: those of PDF (ISO 32000-1,
// 9.2.4), to which the PDF library rounds the font's own.
const perEm = 1000

// Prints reports whether the paper's font has a character. A text with one
// that it lacks would print an empty box and must be refused before. The regular
// and the bold face have the same characters, which a test holds.
func Prints(r rune) bool { return advanceOf(advances[0](), r) > 0 }

// advanceOf returns the advance of a character, in units per em, or 0.
func advanceOf(face []uint16, r rune) int {
	if r < 0 || int(r) >= len(face) {
		return 0
	}
	return int(face[r])
}

// advances reads the advance of every character that the font's character map of
// format 4 has, in PDF's units.
func (f sfnt) advances() []uint16 {
	cmap, hmtx := f.characterMap(), f.table("hmtx")
	metrics := f.u16(f.table("hhea") + 34)
	scale := perEm / float64(f.u16(f.table("head")+18))
	of := make([]uint16, 1<<16)
	for r, glyph := range cmap.glyphs {
		of[r] = uint16(math.Round(scale * float64(f.u16(hmtx+4*min(glyph, metrics-1)))))
	}
	return of
}

func (f sfnt) u16(at int) int { return int(binary.BigEndian.Uint16(f[at:])) }

func (f sfnt) u32(at int) int { return int(binary.BigEndian.Uint32(f[at:])) }

// table returns where a table of the font begins.
func (f sfnt) table(name string) int {
	for t := range f.u16(4) {
		if at := 12 + 16*t; string(f[at:at+4]) == name {
			return f.u32(at + 8)
		}
	}
	panic("the paper's font has no table " + name)
}

// characterMap finds the font's Unicode character map of format 4.
func (f sfnt) characterMap() characterMap {
	cmap := f.table("cmap")
	for e := range f.u16(cmap + 2) {
		at := cmap + 4 + 8*e
		if sub := cmap + f.u32(at+4); f.u16(at) == 3 && f.u16(at+2) == 1 && f.u16(sub) == 4 {
			return characterMap(f[sub:])
		}
	}
	panic("the paper's font has no Unicode character map")
}

// A characterMap is a cmap subtable of format 4: segments of characters.
type characterMap sfnt

// glyphs yields every character that has a glyph, with the glyph's number.
func (m characterMap) glyphs(yield func(r, glyph int) bool) {
	u16 := sfnt(m).u16
	n := u16(6) // twice the number of segments
	for i := 0; i < n; i += 2 {
		last, first := u16(14+i), u16(16+n+i)
		delta, at := u16(16+2*n+i), 16+3*n+i
		for r := first; r <= last && r != 0xFFFF; r++ {
			glyph := r
			if skip := u16(at); skip != 0 {
				glyph = u16(at + skip + 2*(r-first))
			}
			if glyph = (glyph + delta) & 0xFFFF; glyph != 0 && !yield(r, glyph) {
				return
			}
		}
	}
}
