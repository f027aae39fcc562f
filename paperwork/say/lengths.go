package say

import (
	"fmt"
	"math"
	"strconv"
)

// Length writes a height or a length to 1 cm or to half an inch.
func (u Units) Length(m float64) string {
	if u.Imperial {
		return feet(m, 2)
	}
	return plain(Fixed(m, 2)) + " m"
}

// Fine writes a length on the bar: to 1 mm or to a sixteenth of an inch.
func (u Units) Fine(m float64) string {
	if u.Imperial {
		return feet(m, 16)
	}
	return whole(math.Round(m*1000)) + " mm"
}

// FineDown writes the same rounded down, for what must not be said to be further off than
// it is; m is not below 0.
func (u Units) FineDown(m float64) string {
	if u.Imperial {
		return u.Fine(math.Floor(m/inchM*16+dust) / 16 * inchM)
	}
	return u.Fine(math.Floor(m*1000+dust) / 1000)
}

// Tape writes a distance along the floor: to 1 mm or to a sixteenth of an inch.
func (u Units) Tape(m float64) string {
	if u.Imperial {
		return feet(m, 16)
	}
	return plain(Fixed(m, 3)) + " m"
}

// TapeRounding is how far a tape check of two points may be off because their
// offsets are rounded, to the next 5 mm or quarter inch: two offsets, each of
// two points, are rounded by up to half of 1 cm or of 1/2 in, which makes √2
// times the whole.
func (u Units) TapeRounding() string {
	if u.Imperial {
		return "3/4 in"
	}
	return "15 mm"
}

// ExactLength writes a length so that two that differ read differently: with all its
// digits, in metres also on imperial paper where sixteenths of an inch do not do.
func (u Units) ExactLength(m float64) string {
	if sixteenths := m / inchM * 16; u.Imperial && math.Abs(sixteenths-math.Round(sixteenths)) < 1e-4 {
		return feet(m, 16)
	}
	return Trimmed(m) + " m"
}

// Known writes a length in m, or that it is not given where it is nil.
func (u Units) Known(m *float64) string {
	if m == nil {
		return NotGiven
	}
	return u.Length(*m)
}

// Apart returns the writer of lengths that has the fewest digits and tells two
// of them apart, so that a sentence never says that 14.00 m is more than 14.00 m.
func (u Units) Apart(a, b float64) func(float64) string {
	for _, write := range []func(float64) string{u.Length, u.Fine} {
		if write(a) != write(b) {
			return write
		}
	}
	return func(m float64) string { return Trimmed(m) + " m" }
}

// Across writes a place across, in m and positive to stage left: 'stage left 4.50 m'.
func (u Units) Across(m float64) string {
	return u.offset(m, "stage left", "stage right", u.Length(0)+" across")
}

// UpDown writes a place up or down stage, in m and positive downstage: 'upstage 0.60 m'.
func (u Units) UpDown(m float64) string {
	return u.offset(m, "downstage", "upstage", u.Length(0)+" up or down")
}

func (u Units) offset(m float64, positive, negative, none string) string {
	size := u.Length(math.Abs(m))
	switch {
	case size == u.Length(0):
		return none
	case m > 0:
		return positive + " " + size
	default:
		return negative + " " + size
	}
}

// feet writes a length in feet and inches to the nearest 1/parts of an inch.
func feet(m float64, parts int) string {
	n := int(math.Round(math.Abs(m) / inchM * float64(parts)))
	sign := ""
	if m < 0 && n > 0 {
		sign = "-"
	}
	ft, rest := n/(12*parts), n%(12*parts)
	inches := inches(rest/parts, rest%parts, parts)
	if ft == 0 {
		return sign + inches + " in"
	}
	return fmt.Sprintf("%s%d ft %s in", sign, ft, inches)
}

// inches writes whole inches and a fraction, in its lowest terms: '7 3/16'. den is a
// power of 2.
func inches(in, num, den int) string {
	if num == 0 {
		return strconv.Itoa(in)
	}
	for num%2 == 0 {
		num, den = num/2, den/2
	}
	if in == 0 {
		return fmt.Sprintf("%d/%d", num, den)
	}
	return fmt.Sprintf("%d %d/%d", in, num, den)
}
