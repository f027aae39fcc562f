// Package readback takes the pages of a pack apart as they stand in its PDF.
package readback

import (
	"bytes"
	"compress/zlib"
	"image"
	"io"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf16"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
)

var (
	streams = regexp.MustCompile(`(?s)stream\n(.*?)\nendstream`)
	unquote = strings.NewReplacer(`\\`, `\`, `\(`, `(`, `\)`, `)`, `\r`, "\r")
	run     = regexp.MustCompile(`([0-9]+) ([0-9]+) ([0-9]+) 1 re`)
)

// Contents returns the drawing instructions of every page of a PDF, inflated.
func Contents(pdf []byte) (pages []string) {
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
	return pages
}

// Text reads what stands between the brackets of a text. A character of the embedded
// font is two bytes, its UTF-16 unit.
func Text(quoted string) string {
	raw := unquote.Replace(quoted)
	units := make([]uint16, len(raw)/2)
	for i := range units {
		units[i] = uint16(raw[2*i])<<8 | uint16(raw[2*i+1])
	}
	return string(utf16.Decode(units))
}

// Runs is the path of a code as a regular expression: its runs of black modules.
const Runs = `((?:[0-9]+ [0-9]+ [0-9]+ 1 re\n)+)f Q`

// Code decodes a code from the runs that it is drawn with, four dots a module, with
// its quiet zone.
func Code(runs string) (string, error) {
	bits, err := gozxing.NewBinaryBitmapFromImage(modules(runs))
	if err != nil {
		return "", err
	}
	r, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
	if err != nil {
		return "", err
	}
	return r.GetText(), nil
}

func modules(runs string) image.Image {
	const dots, quiet = 4, 4
	all := run.FindAllStringSubmatch(runs, -1)
	at := func(m []string, i int) int { n, _ := strconv.Atoi(m[i]); return n }
	side := 0
	for _, m := range all {
		side = max(side, (at(m, 2)+1+quiet)*dots)
	}
	img := image.NewGray(image.Rect(0, 0, side, side))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	for _, m := range all {
		for dx := range at(m, 3) * dots {
			for dy := range dots {
				img.Pix[(at(m, 2)*dots+dy)*img.Stride+at(m, 1)*dots+dx] = 0
			}
		}
	}
	return img
}
