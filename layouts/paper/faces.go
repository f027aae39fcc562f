package paper

// A Face is one size of one weight of the paper's font; the size in points.
type Face struct {
	Bold bool
	Pt   float64
}

// Bold returns the bold face of so many points.
func Bold(pt float64) Face { return Face{true, pt} }

// Digits returns the bold face whose digits are so tall, in mm.
func Digits(tall float64) Face { return Face{true, tall / DigitHeight * ptPerMm} }

// Capitals returns the bold face whose capitals are so tall, in mm; its digits are a
// little taller.
func Capitals(tall float64) Face { return Face{true, tall / CapHeight * ptPerMm} }

// Measures of the font, in ems. Source: the glyph outlines of Go Bold.
const (
	DigitHeight = 0.741
	CapHeight   = 0.723
	ptPerMm     = 72 / 25.4
)

// AfarTall is how tall digits are that are read from 2 m, in mm; letters are then 12
// mm tall. Source: NUREG-0700 rev. 3, 11.4.1.5-1: 20 minutes of arc at 2 m is 11.6 mm.
const AfarTall = 12.3

// The faces of running text. What is read from afar is sized by the height of
// its digits: see Digits.
var (
	Small     = Face{false, 8.5}
	SmallBold = Face{true, 8.5}
	Text      = Face{false, 10}
	TextBold  = Face{true, 10}
	Reading   = Face{false, 12}
	Section   = Face{true, 14}
	Title     = Face{true, 24}
)

// Em returns the size of a face in mm.
func (f Face) Em() float64 { return f.Pt / ptPerMm }

// Lead returns the distance of two lines of a face, in mm.
func (f Face) Lead() float64 { return f.Em() * 1.3 }

// advances is how far the pen moves after each character of a face.
func (f Face) advances() []uint16 {
	if f.Bold {
		return advances[1]()
	}
	return advances[0]()
}
