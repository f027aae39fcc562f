package layouts

import "hangpack/layouts/paper"

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
)

// Draw is paper.Draw.
func Draw(p Pack) (Paper, error) { return paper.Draw(p) }

// Lay is paper.Lay.
func Lay(p Pack) (*Laid, error) { return paper.Lay(p) }

// Prints is paper.Prints.
func Prints(r rune) bool { return paper.Prints(r) }
