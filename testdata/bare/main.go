// Bare draws pages that another program recorded with nothing but the PDF library:
// no reading, no statics, no layout. It is what hangpack's pace is held against.
//
//	bare RECORD OUT.pdf
package main

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"math"
	"os"
	"strings"

	"github.com/go-pdf/fpdf"
	qrcode "github.com/skip2/go-qrcode"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

func main() {
	record, err := os.ReadFile(os.Args[1])
	if err != nil {
		panic(err)
	}
	d := drawing{record: record, pdf: fpdf.New("P", "mm", "A4", "")}
	d.pdf.SetMargins(0, 0, 0)
	d.pdf.SetAutoPageBreak(false, 0)
	d.pdf.AddUTF8FontFromBytes("go", "", bytes.Clone(goregular.TTF))
	d.pdf.AddUTF8FontFromBytes("go", "B", bytes.Clone(gobold.TTF))
	for len(d.record) > 0 {
		d.step()
	}
	if err := d.pdf.OutputFileAndClose(os.Args[2]); err != nil {
		panic(err)
	}
}

// A drawing is a record that is being drawn. Its steps are a letter, then numbers of
// eight bytes, then a text that its length stands before: see package record.
type drawing struct {
	record []byte
	pdf    *fpdf.Fpdf
}

func (d *drawing) step() {
	kind := d.record[0]
	d.record = d.record[1:]
	switch pdf := d.pdf; kind {
	case 'p':
		pdf.AddPage()
	case 'f':
		pdf.SetFont("go", d.text(), d.number())
	case 't':
		x, y := d.number(), d.number()
		pdf.Text(x, y, d.text())
	case 'i':
		grey := int(d.number())
		pdf.SetTextColor(grey, grey, grey)
	case 'l':
		pdf.Line(d.number(), d.number(), d.number(), d.number())
	case 'r':
		x, y, w, h := d.number(), d.number(), d.number(), d.number()
		pdf.Rect(x, y, w, h, d.text())
	case 'w':
		pdf.SetLineWidth(d.number())
	case 'g':
		grey := int(d.number())
		pdf.SetFillColor(grey, grey, grey)
	case 'c':
		x, y, module := d.number(), d.number(), d.number()
		d.code(x, y, module, d.text())
	default:
		pdf.RawWriteStr(d.text())
	}
}

func (d *drawing) number() float64 {
	x := math.Float64frombits(binary.LittleEndian.Uint64(d.record))
	d.record = d.record[8:]
	return x
}

func (d *drawing) text() string {
	n := binary.LittleEndian.Uint32(d.record)
	s := string(d.record[4 : 4+n])
	d.record = d.record[4+n:]
	return s
}

// code draws a code as one path; x, y and module are in points.
func (d *drawing) code(x, y, module float64, s string) {
	q, err := qrcode.New(s, qrcode.Medium)
	if err != nil {
		panic(err)
	}
	q.DisableBorder = true
	var runs strings.Builder
	for row, line := range q.Bitmap() {
		for from := 0; from < len(line); from++ {
			to := from
			for to < len(line) && line[to] {
				to++
			}
			if to > from {
				fmt.Fprintf(&runs, "%d %d %d 1 re\n", from+4, row+4, to-from)
			}
			from = to
		}
	}
	d.pdf.RawWriteStr(fmt.Sprintf("q %.5f 0 0 %.5f %.3f %.3f cm\n%sf Q\n", module, -module, x, y, runs.String()))
}
