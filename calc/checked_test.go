package calc

import (
	"testing"

	"hangpack/testdata/proof"
)

// What the differences are parts of, where they have no unit.
const (
	halfDigit = "of half a last digit"
	ofForce   = "of the largest force"
	ofLoad    = "of the load"
)

// TestChecked runs every check of statics that is made against something outside
// calc, and writes down what it was and how it came out.
func TestChecked(t *testing.T) {
	var all []proof.Check
	for _, checks := range [][]proof.Check{printedChecks, solvedChecks, lawsOfStacks, lawsOfHooks, lawsOfPoints} {
		all = append(all, checks...)
	}
	proof.Page(t, "../testdata/checked/statics.md", "Statics, and what they were checked against", all)
}

const inPublished = "answers printed in books and on the web: testdata/published/"

var printedChecks = []proof.Check{
	{Figure: "mass and centre of gravity", Keys: []string{"mass_kg", "centre_of_gravity"}, Against: inPublished + "centres.csv", Unit: halfDigit, Run: printedCentres},
	{Figure: "load on two hooks", Keys: []string{"load_kg", "share", "hook_kg"}, Against: inPublished + "two_hooks.csv", Unit: halfDigit, Run: printedTwoHooks},
	{Figure: "load on two hooks, as legs of bridles", Keys: []string{"load_kg", "share"}, Against: inPublished + "bridles.csv", Unit: halfDigit, Run: printedBridles},
	{Figure: "hinge and link", Keys: []string{"hinge_kn", "hinge_pull_kn", "link_kn"}, Against: inPublished + "joints.csv", Unit: halfDigit, Run: printedJoints},
	{Figure: "tilt", Keys: []string{"tilt_deg"}, Against: inPublished + "tilt.csv", Unit: halfDigit, Run: printedTilts},
	{Figure: "places of hinges", Keys: []string{"lowest_m", "drop_m"}, Against: inPublished + "arms.csv", Unit: halfDigit, Run: printedArms},
	{Figure: "places in plan", Keys: []string{"stage_left_m", "downstage_m"}, Against: inPublished + "plan.csv", Unit: halfDigit, Run: printedPlans},
	{Figure: "tape from corner to corner", Against: inPublished + "tape.csv", Unit: halfDigit, Run: printedTapes},
	{Figure: "centre of gravity below the line of picks", Keys: []string{"holds"}, Against: inPublished + "lines.csv", Unit: halfDigit, Run: printedLines},
	{Figure: "two hoists out of step", Against: inPublished + "sine_bars.csv", Unit: halfDigit, Run: printedSineBars},
	{Figure: "room between backs", Keys: []string{"cautions"}, Against: inPublished + "wedges.csv", Unit: halfDigit, Run: printedWedges},
}

var solvedChecks = []proof.Check{
	{Figure: "a stack of three cabinets", Keys: []string{"centre_of_gravity", "tilt_deg", "load_kg", "hinge_pull_kn", "link_kn"}, Against: "testdata/three-cabinets.md, worked by hand", Unit: halfDigit, Run: workedByHand},
	{Figure: "every joint at once", Keys: []string{"hinge_kn", "hinge_pull_kn", "link_kn"}, Against: "one linear system of all cabinets", Unit: ofForce, Run: jointsSolved},
	{Figure: "two hooks", Keys: []string{"load_kg", "share"}, Against: "a linear system of the stack on two hooks", Unit: ofForce, Run: hooksSolved},
	{Figure: "hooks and joints at once", Keys: []string{"mass_kg", "load_kg", "hinge_kn", "hinge_pull_kn", "link_kn"}, Against: "one linear system of bar and cabinets, pushed links among them", Unit: ofForce, Run: wholeSolved},
	{Figure: "aims, hinges and corners", Keys: []string{"aim_deg", "last_aim_deg", "lowest_m", "drop_m"}, Against: "a rotation matrix of the test's own", Unit: "m or rad", Run: placesSolved},
	{Figure: "load on a point", Keys: []string{"static_kg", "alone_kg"}, Against: "a linear system of a line of bodies", Unit: ofLoad, Run: pointsSolved},
	{Figure: "places in plan, turned", Keys: []string{"stage_left_m", "downstage_m"}, Against: "a rotation matrix of the test's own", Unit: "m", Run: plansSolved},
	{Figure: "two rectangles in plan", Keys: []string{"cautions"}, Against: "one cut down to the other, and corners along every side", Unit: "m", Run: plotsSolved},
}

var lawsOfStacks = []proof.Check{
	{Figure: "balance at every joint", Keys: []string{"hinge_kn", "hinge_pull_kn", "link_kn"}, Against: "forces and moments about any point sum to nothing", Unit: ofForce, Run: forcesBalance},
	{Figure: "twice the mass", Keys: []string{"hinge_kn", "hinge_pull_kn", "link_kn", "tilt_deg"}, Against: "doubling every mass doubles every force and moves no angle", Unit: ofForce, Run: doubled},
	{Figure: "a stack in the mirror", Keys: []string{"centre_of_gravity", "link_kn", "tilt_deg"}, Against: "a mirrored stack mirrors its answers", Unit: ofForce, Run: mirrored},
	{Figure: "a joint in the mirror", Keys: []string{"hinge_kn", "hinge_pull_kn", "link_kn"}, Against: "a mirrored joint mirrors its answers", Unit: ofForce, Run: jointsMirrored},
	{Figure: "one rigid body", Keys: []string{"mass_kg", "centre_of_gravity"}, Against: "the centre of gravity has one place in the bar's axes, and the mass of all parts", Unit: "m", Run: rigid},
	{Figure: "order and lumps", Keys: []string{"mass_kg", "centre_of_gravity"}, Against: "weights in another order, or two as one at their centre, change nothing", Unit: "m", Run: lumped},
	{Figure: "heavier is never lighter", Keys: []string{"load_kg", "link_kn"}, Against: "a weight added takes nothing off a hook or a link", Unit: "of the weight added", Run: heavier},
}

var lawsOfHooks = []proof.Check{
	{Figure: "each mass off to its own worse side", Keys: []string{"governing", "hoist_use", "holds"}, Against: "every part made heavier by itself, and the differences added up", Unit: "of the spread", Run: spreadsTried},
	{Figure: "from slack", Keys: []string{"slack_mm"}, Against: "the tilt at which the weight is plumb below the other hook, by halving", Unit: "m", Run: slackTried},
	{Figure: "plumb below the hook", Keys: []string{"tilt_deg", "aim_deg"}, Against: "a freely hung body has its centre of gravity plumb below its hook", Unit: "m", Run: plumb},
	{Figure: "two hooks, moved and turned round", Keys: []string{"load_kg", "share"}, Against: "where places are counted from changes nothing", Unit: ofForce, Run: hooksMoved},
	{Figure: "below the line of picks, tilted", Keys: []string{"holds"}, Against: "the height of the line above the centre of gravity, by the line's slope", Unit: "m", Run: belowPicks},
	{Figure: "out of step", Against: "after that time the bar stands just as far off as it may", Unit: "rad", Run: outOfStep},
	{Figure: "backs that touch", Keys: []string{"cautions"}, Against: "with all room used the rear corners meet", Unit: "m", Run: backsTouch},
	{Figure: "backs with a gap in front", Keys: []string{"cautions"}, Against: "the corner on the edge, within 0.13 degrees for gaps to 10 mm", Unit: "degrees", Run: backsWithAGap},
}

var lawsOfPoints = []proof.Check{
	{Figure: "governing load", Keys: []string{"governing", "alone_design_kg"}, Against: "the design load where parts do not lever against each other; a heavier pick by the dynamic factor", Unit: ofLoad, Run: governingTried},
	{Figure: "design load", Keys: []string{"design_kg"}, Against: "each factor is taken once", Unit: ofLoad, Run: designLoads},
	{Figure: "a set as it stands", Keys: []string{"chain_needed_m", "holds"}, Against: "pitches as complex numbers, the lowest one's under side level", Unit: "m", Run: columnsStand},
	{Figure: "chain", Keys: []string{"chain_needed_m", "holds"}, Against: "the chain keeps its length", Unit: "m", Run: chainKept},
	{Figure: "force on one pin", Keys: []string{"holds"}, Against: "the pins of a joint carry its force between them", Unit: "of the force", Run: pinsShare},
}
