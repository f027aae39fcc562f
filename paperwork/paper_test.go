package paperwork

import (
	"bytes"
	"compress/zlib"
	"image"
	"image/color"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
	"github.com/stretchr/testify/require"
)

// A word is one text of a page as it stands in the PDF: its baseline from the
// bottom left corner, in points, and its size.
type word struct {
	s        string
	x, y, pt float64
}

var (
	streams = regexp.MustCompile(`(?s)stream\n(.*?)\nendstream`)
	texts   = regexp.MustCompile(`(?s)/F[0-9a-f]+ ([0-9.]+) Tf|BT ([0-9.-]+) ([0-9.-]+) Td \(((?:\\.|[^\\)])*)\) Tj ET`)
	unquote = strings.NewReplacer(`\\`, `\`, `\(`, `(`, `\)`, `)`, `\r`, "\r")
)

// contents returns the drawing instructions of every page of a PDF, inflated.
func contents(t *testing.T, pdf []byte) (pages []string) {
	t.Helper()
	for _, m := range streams.FindAllSubmatch(pdf, -1) {
		z, err := zlib.NewReader(bytes.NewReader(m[1]))
		if err != nil {
			continue
		}
		text, err := io.ReadAll(z)
		if err == nil && bytes.Contains(text, []byte(" Tj ET")) {
			pages = append(pages, string(text))
		}
	}
	require.NotEmpty(t, pages)
	return pages
}

// Pages that many tests read are taken apart once, up to so many.
var pagesRead = map[string][]word{}

const readMost = 2000

// wordsOn reads the texts of one page in the order they were set. A character
// of the embedded font is two bytes, its UTF-16 unit.
func wordsOn(page string) (words []word) {
	if had, ok := pagesRead[page]; ok {
		return had
	}
	defer func() {
		if len(pagesRead) < readMost {
			pagesRead[page] = words
		}
	}()
	pt := 0.0
	for _, m := range texts.FindAllStringSubmatch(page, -1) {
		if m[1] != "" {
			pt = number(m[1])
			continue
		}
		raw := unquote.Replace(m[4])
		units := make([]uint16, len(raw)/2)
		for i := range units {
			units[i] = uint16(raw[2*i])<<8 | uint16(raw[2*i+1])
		}
		words = append(words, word{string(utf16.Decode(units)), number(m[2]), number(m[3]), pt})
	}
	return words
}

func number(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic(err)
	}
	return x
}

var (
	codes = regexp.MustCompile(`(?s)q [0-9. -]+ cm\n((?:[0-9]+ [0-9]+ [0-9]+ 1 re\n)+)f Q`)
	runs  = regexp.MustCompile(`([0-9]+) ([0-9]+) ([0-9]+) 1 re`)
)

// codesOn decodes the codes of a page from its drawn modules.
func codesOn(t *testing.T, page string) (read []string) {
	t.Helper()
	for _, m := range codes.FindAllStringSubmatch(page, -1) {
		bits, err := gozxing.NewBinaryBitmapFromImage(modules(m[1]))
		require.NoError(t, err)
		r, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
		require.NoError(t, err)
		read = append(read, r.GetText())
	}
	return read
}

// modules draws the runs of a code, four dots a module, with its quiet zone.
func modules(rects string) image.Image {
	const dots = 4
	last := 0
	all := runs.FindAllStringSubmatch(rects, -1)
	for _, m := range all {
		last = max(last, int(number(m[2])))
	}
	side := (last + 1 + 4) * dots
	img := image.NewGray(image.Rect(0, 0, side, side))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, m := range all {
		x, y, w := int(number(m[1])), int(number(m[2])), int(number(m[3]))
		for dx := range w * dots {
			for dy := range dots {
				img.SetGray(x*dots+dx, y*dots+dy, color.Gray{})
			}
		}
	}
	return img
}
