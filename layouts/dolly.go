package layouts

import (
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
)

// Dolly is the sheet that is taped to a dolly: its cabinets with the joints
// that are set on it, read from 2 m. At most eight cabinets a sheet.
type Dolly struct {
	Sheet   string // 'SL DOLLY A'
	ID      string
	Word    string // 'dolly', or 'cabinets' where a stack has no dollies
	Which   string // 'A', '1-8'
	Shape   string
	Joins   string // '1st of 2: joins the bar above, dolly B below'
	Above   string // what the first joint hangs from
	Picks   []PickHole
	First   string   // how the first joint is made
	Rows    []PinRow // cabinets with the joints above them
	Below   string   // what hangs below; "" for nothing
	Ghost   string   // 'hole 1 goes with dolly B'
	Caption string   // of the boxes
	Boxes   bool     // two link pins at some joint
	PinsSet string   // when the pins are set; "" for a blank line to fill in
	Sum     string   // '0 + 0.5 + 0.5 + 1 = 2'
	Figures []parts.FigureLine
	LoadOut string     // in the black box
	Code    paper.Code // its pins as text
	Address paper.Code // where this sheet is to be found; no text where the job has no address
}

// A PickHole is a pick hole to use, as it prints on the first dolly's sheet:
// what it is ('pick hole front') and its label.
type PickHole struct{ Of, Label string }

// part is the sheet with some of its rows.
func (d Dolly) part(from, to int) Dolly {
	all := d.Rows
	d.Rows = all[from:to]
	if from > 0 {
		d.Above, d.First, d.Picks = "cabinet "+all[from-1].Number+", on the sheet before", "", nil
	}
	if to < len(all) {
		d.Below, d.Ghost = "cabinet "+all[to].Number+" below", all[to].Ghost
	}
	return d
}

// Measures of a dolly sheet, in mm: how tall digits, words and rows are, and how wide.
const (
	idTall         = 24.0
	wordTall       = 10.0
	dollyDigitMost = 18.0 // of the digits of a hole
	dollyRow       = 36.0 // the tallest row
	dollyAir       = 1.2  // between digits and either line of their tab
	dollyTight     = 2.1  // the least of that, both together: the line is heavy, and round figures reach past straight ones
	rowsUp         = 10.0 // headings above the first box
	pickBar        = 15.6 // around a pick hole
	pickWords      = 20.0 // room for 'pick hole'
	ghostBar       = 8.0  // what hangs below

	dollyTabMost = 64.0 // of a tab; wider labels are set less tall, but for 12 mm
	numberWidth  = 19.0 // of a cabinet's number
)

// boxesWidth is what the tick boxes of a sheet w wide leave its cabinets.
func boxesWidth(w float64) float64 { return w - 4*parts.TickSide*1.25 - 14 }

// besideTabs is what the widest tab there may be leaves a box of its cabinet.
func besideTabs(c *paper.Canvas, d Dolly, w float64) float64 {
	return boxesWidth(w) - dollyTabs(c, d, dollyRow).Width()
}

// firstFits reports whether the words of the first joint stand in their row;
// else they stand in the notes.
func firstFits(c *paper.Canvas, d Dolly, w float64) bool {
	if name := d.Rows[0].Type; parts.Accented(name) && len(dollyNames(c, d, w).Lines(name)) > 1 {
		return false
	}
	return c.Width(paper.Small, d.First) < besideTabs(c, d, w)-numberWidth-8
}

// dollyTabs are as large as their rows leave room, 12 to 18 mm.
func dollyTabs(c *paper.Canvas, d Dolly, row float64) parts.Tabs {
	var holes []parts.JointHole
	for _, r := range d.Rows {
		holes = append(holes, r.Hole)
	}
	digit := max(min(row*0.62, dollyDigitMost), paper.AfarTall)
	for ; digit > paper.AfarTall; digit -= 0.5 {
		if parts.TabsFor(c, row, digit, paper.TextBold, holes).Width() <= dollyTabMost {
			break
		}
	}
	t := parts.TabsFor(c, row, digit, paper.TextBold, holes)
	t.Height = min(digit+t.Tail+2*dollyAir, row-0.4)
	return t
}

// dollyRowLeast is how tall a row has to be for its tab.
func dollyRowLeast(c *paper.Canvas, d Dolly) float64 {
	return paper.AfarTall + dollyTabs(c, d, 0).Tail + dollyTight + 0.4
}

// dollyNames measures the names beside the widest tab there may be.
func dollyNames(c *paper.Canvas, d Dolly, w float64) parts.Names {
	return parts.NamesFor(c, typesOf(d.Rows), paper.Text, besideTabs(c, d, w)-numberWidth-8, 2)
}
