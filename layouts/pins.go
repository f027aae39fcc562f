package layouts

import (
	"hangpack/layouts/drawings"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Pins is the pin sheet of a stack: the schedule of its joints, the stack from
// the side, the bar with its pick holes, and what to read. A stack of many
// cabinets takes more than one page; each page is one of these.
type Pins struct {
	Sheet   string // 'SL PINS'
	Head    parts.Head
	Bar     string // 'flying-bar · pick hole 22'; "" on later pages
	Above   string // on later pages: what the first joint hangs from
	Rows    []PinRow
	Caption string // of the seen boxes
	Boxes   bool   // two boxes a joint where any joint has two link pins
	Side    drawings.Elevation
	Strip   *drawings.Strip
	Figures []parts.FigureLine
	Notes   []string
	Code    paper.Code
}

// A PinRow is one cabinet with the joint above it.
type PinRow struct {
	Number, Type string
	Hole         parts.JointHole
	Ghost        string // 'hole 1 on the next sheet': what stands for its joint on the page before its own
	Ladder       parts.Ladder
	Ordinal      string // '3rd of 9'
	Pins         int    // link pins of the joint: 1 or 2
	Cut          string // the dolly that begins with this cabinet; "" for none
}

// typesOf are the types of the cabinets of some rows.
func typesOf(rows []PinRow) (types []string) {
	for _, r := range rows {
		types = append(types, r.Type)
	}
	return types
}

// Measures of a pin sheet, in mm: how tall its rows are, how wide its tabs.
const (
	rowLeast = 6.05
	rowCut   = 8.2 // with a dolly named on its line, over a name with accents
	rowMost  = 17.0

	ladderPitch = 2.3  // from hole to hole of a ladder
	tabMost     = 30.0 // of a tab; wider labels are set less tall, all alike
)

// leastRow is how tall rows have to be for what stands on their lines.
func (p Pins) leastRow() float64 {
	cut, tall := false, false
	for _, r := range p.Rows {
		cut, tall = cut || r.Cut != "", tall || parts.Accented(r.Type)
	}
	if cut && tall {
		return rowCut
	}
	return rowLeast
}
