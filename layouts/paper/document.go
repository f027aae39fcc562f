package paper

import (
	"bytes"
	"fmt"

	"github.com/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// newDrawingCanvas returns a canvas that draws a pack. All that could differ from run to run is
// fixed: dates, order, the fonts' own bytes.
func newDrawingCanvas(p Pack) *Canvas {
	c := newCanvas(p.Letter, p.Revision)
	c.links, c.sheets = map[string]int{}, map[string]laidSheet{}
	c.pdf = fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: c.w, Ht: c.h}})
	c.now.pdf = c.pdf
	c.pdf.SetMargins(0, 0, 0)
	c.pdf.SetAutoPageBreak(false, 0)
	c.pdf.SetCatalogSort(true)
	c.pdf.SetCompression(false) // finish does it
	c.pdf.SetCreationDate(p.Day.UTC())
	c.pdf.SetModificationDate(p.Day.UTC())
	c.pdf.SetProducer(producer, true)
	c.pdf.SetTitle(p.Title, true)
	c.pdf.SetLang("en")
	// The PDF library writes into the bytes it is given.
	c.pdf.AddUTF8FontFromBytes("go", "", bytes.Clone(goregular.TTF))
	c.pdf.AddUTF8FontFromBytes("go", "B", bytes.Clone(gobold.TTF))
	c.now.set(Text)
	return c
}

// bound returns the finished PDF, which says of itself what it is.
func (c *Canvas) bound(says Colophon) ([]byte, error) {
	var out bytes.Buffer
	if err := c.pdf.Output(&out); err != nil {
		return nil, fmt.Errorf("writing the PDF: %w", err)
	}
	return finish(out.Bytes(), c.destinations, says)
}
