package sheets

import (
	"slices"
	"testing"

	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// TestChecked runs every check of sheets that is made against something outside the
// code that makes them, and writes down what it was and how it came out.
func TestChecked(t *testing.T) {
	proof.Page(t, trials.File("testdata/checked/sheets.md"), "Sheets, and what they were checked against", slices.Concat(handChecks, paperChecks))
}

var handChecks = []proof.Check{
	{Figure: "centres of gravity that are not known", Keys: []string{"low_kg", "high_kg", "most"}, Against: "jobs that give them, one for each corner of the middle third, written out in the test", Unit: "kg", Run: unknownCentresAsJobs},
	{Figure: "masses, aims and windows of aims on cards", Keys: []string{"mass_kg", "aim_deg", "last_aim_deg"}, Against: "a stack's day up to trim, by hand", Run: dayUpReads},
	{Figure: "masses and pins of dollies coming down", Against: "a stack's day down again, by hand", Run: dayDownCounts},
	{Figure: "mass of the kit", Keys: []string{"mass_kg"}, Against: "all that the stacks hang, summed by piece", Unit: "kg", Run: kitWeighsTheStacks},
}

// What is read back is what the figures say, through their formatters: the paper
// loses nothing. It proves no figure by itself.
var paperChecks = []proof.Check{
	{Figure: "formulas of the calculation sheet", Against: "the numbers it prints put into the formulas it prints", Unit: "of what its digits leave open", Run: calculationSheetAddsUp},
	{Figure: "centre of gravity, part by part", Keys: []string{"centre_of_gravity"}, Against: "the sums and moments of the table as printed", Unit: "of what its digits leave open", Run: partTableAddsUp},
	{Figure: "distances on the plan", Against: "Pythagoras, from the figures", Run: tapeChecks},
	{Figure: "points and outlines of the plan", Against: "lines of the PDF divided by the plan's scale, turned as complex numbers", Run: planAsDrawn},
	{Figure: "sheets of a stack", Against: "texts read out of the PDF, row by row", Run: figuresReadBack},
	{Figure: "holes on dolly sheets and in their codes", Against: "texts and modules read out of the PDF", Run: dollySheetsReadBack},
	{Figure: "cards of lifts and of coming down", Against: "texts read out of the PDF, card by card", Run: liftSheetsReadBack},
	{Figure: "the venue's table", Against: "texts read out of the PDF, point by point", Run: pointsReadBack},
	{Figure: "points as data", Against: "the standard library's reader of RFC 4180", Run: pointsAsData},
}
