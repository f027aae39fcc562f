package layouts

// A face is one size of one weight of the paper's font; the size in points.
type face struct {
	bold bool
	pt   float64
}

// The faces of running text. What is read from afar is sized by the height of
// its digits: see digits.
var (
	small   = face{false, 8.5}
	smallB  = face{true, 8.5}
	text    = face{false, 10}
	textB   = face{true, 10}
	reading = face{false, 12}
	section = face{true, 14}
	title   = face{true, 24}
)

// Measures of the font, in ems. Source: the glyph outlines of Go Bold.
const (
	digitHeight = 0.741
	capHeight   = 0.723
	digitWidth  = 0.556
	pointWidth  = 0.278
	ptPerMm     = 72 / 25.4
)

// digits returns the bold face whose digits are so tall, in mm.
func digits(tall float64) face { return face{true, tall / digitHeight * ptPerMm} }

// capitals returns the bold face whose capitals are so tall, in mm; its digits are a
// little taller.
func capitals(tall float64) face { return face{true, tall / capHeight * ptPerMm} }

// revTall is how tall REV stands on every sheet that has it, in mm.
const revTall = 12.0

// em returns the size of a face in mm.
func (f face) em() float64 { return f.pt / ptPerMm }

// advances is how far the pen moves after each character of a face.
func (f face) advances() []uint16 {
	if f.bold {
		return advances[1]()
	}
	return advances[0]()
}

// lead returns the distance of two lines of a face, in mm.
func (f face) lead() float64 { return f.em() * 1.3 }

// Pens, in mm, and fills.
const (
	light = 0.2
	solid = 0.4
	heavy = 0.8

	none  = -1
	white = 255
	grey  = 224
	black = 0
)
