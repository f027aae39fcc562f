package layouts

import (
	"hangpack/layouts/drawings"
	"hangpack/layouts/paper"
	"hangpack/layouts/parts"
	"hangpack/layouts/plan"
)

// Names that package paperwork still goes by.
type (
	Block = paper.Block
	Code  = paper.Code
	Laid  = paper.Laid
	Mark  = paper.Mark
	Pack  = paper.Pack
	Paper = paper.Drawn
	Sheet = paper.Sheet
	Spine = paper.Spine

	Elevation = drawings.Elevation
	Level     = drawings.Level
	Place     = drawings.Place
	Ruler     = drawings.Ruler
	Side      = drawings.Side
	Strip     = drawings.Strip
	StripHole = drawings.BarHole
	View      = drawings.View

	Caution  = parts.Remark
	Fact     = parts.Fact
	Head     = parts.Head
	Hole     = parts.JointHole
	Ladder   = parts.Ladder
	Line     = parts.FigureLine
	OpenItem = parts.Remark
	Picture  = parts.Picture

	Plan      = plan.Sheet
	PlanPoint = plan.Point
	PlanStack = plan.Stack
	TapeCheck = plan.TapeCheck

	Anyone         = Advice
	Check          = Inspection
	Do             = Task
	Entry          = SheetEntry
	GeneralCaution = Advice
	Read           = Instrument
	Step           = Formula
	TotalRow       = PointTotal
)

// Pictures that a caution may have.
const (
	PinIn       = parts.PinIn
	PinOut      = parts.PinOut
	HandsOff    = parts.HandsOff
	Stop        = parts.Stop
	NobodyBelow = parts.NobodyBelow
	TwoLook     = parts.TwoLook
	Fence       = parts.Fence
)

// Draw is paper.DrawAll.
func Draw(p Pack) (Paper, error) { return paper.DrawAll(p) }

// Lay is paper.Lay.
func Lay(p Pack) (*Laid, error) { return paper.Lay(p) }

// Prints is paper.Prints.
func Prints(r rune) bool { return paper.Prints(r) }
