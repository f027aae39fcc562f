package paper

import "github.com/go-pdf/fpdf"

// Pens, in mm; and fills, from black to white, or none.
const (
	Light = 0.2
	Solid = 0.4
	Heavy = 0.8

	None  = -1
	White = 255
	Grey  = 224
	Black = 0
)

// An ink is what the PDF library draws with next. It writes an instruction for every
// change it is told of, so it is told only of what does change.
type ink struct {
	pdf     *fpdf.Fpdf // nil where ink is only kept on record
	face    Face
	thick   float64 // of lines, mm
	ground  int     // shade of areas, plus 1
	letters int     // shade of texts
}

// on draws onto the PDF, if there is one.
func (k *ink) on(draw func(*fpdf.Fpdf)) {
	if k.pdf != nil {
		draw(k.pdf)
	}
}

// letter writes in a face, in the shade of texts.
func (k *ink) letter(f Face, write func(*fpdf.Fpdf)) {
	k.set(f)
	k.fill(k.letters)
	k.on(write)
}

// set chooses a face.
func (k *ink) set(f Face) {
	switch {
	case f == k.face || k.pdf == nil:
		return
	case f.Bold == k.face.Bold && k.face.Pt > 0:
		k.pdf.SetFontSize(f.Pt)
	case f.Bold:
		k.pdf.SetFont("go", "B", f.Pt)
	default:
		k.pdf.SetFont("go", "", f.Pt)
	}
	k.face = f
}

// pen chooses how thick lines are, in mm.
func (k *ink) pen(thick float64) {
	if thick != k.thick {
		k.thick = thick
		k.on(func(p *fpdf.Fpdf) { p.SetLineWidth(thick) })
	}
}

// fill chooses the shade that areas are filled with.
func (k *ink) fill(shade int) {
	if shade+1 != k.ground {
		k.ground = shade + 1
		k.on(func(p *fpdf.Fpdf) { p.SetFillColor(shade, shade, shade) })
	}
}

// style sets pen and fill and returns the PDF library's word for both.
func (k *ink) style(pen float64, fill int) string {
	style := ""
	if fill != None {
		k.fill(fill)
		style = "F"
	}
	if pen > 0 {
		k.pen(pen)
		style += "D"
	}
	return style
}

// write chooses the shade of texts. The PDF library sets the shade of each text by
// itself unless areas are filled with the same one: see Canvas.Text.
func (k *ink) write(shade int) {
	k.letters = shade
	k.on(func(p *fpdf.Fpdf) { p.SetTextColor(shade, shade, shade) })
}
