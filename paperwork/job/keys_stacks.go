package job

// pinsSet are the ways to set link pins.
var pinsSet = []string{string(OnDolly), string(AtTheHoist), string(InTheAir)}

var stackKeys = []Key{
	items("stacks", 1, 60, Required, "", "the stacks"),
	section("stacks[]", Optional, "one stack"),
	{Path: "stacks[].id", Kind: ID, Min: 1, Max: 6, Need: Required, Meaning: "1 to 6 of A-Z 0-9 and -, unique"},
	ref("stacks[].twin_of", Optional, "", "id of another stack; what this one does not give is as there, name, shape and note apart"),
	words("stacks[].name", 48, Derived, "the id", "name on paper"),
	words("stacks[].note", noteMost, Optional, "", "anything else that the cover and its PINS sheet are to say; not printed while it is held"),
	choice("stacks[].shape", Optional, "", "its side mark", "square", "circle", "triangle", "diamond"),
	section("stacks[].place", Required, "of the bar's hinge pin, in plan"),
	plan("stacks[].place.stage_left", "stage left of the datum"),
	plan("stacks[].place.stage_right", "or stage right of it"),
	plan("stacks[].place.downstage", "downstage of the datum"),
	plan("stacks[].place.upstage", "or upstage of it"),
	{Path: "stacks[].place.pan", Kind: Pan, Min: -180 * degree, Max: 180 * degree, Need: Defaulted, Default: "0", Meaning: "from straight downstage, like 6 deg stage_left"},
	ref("stacks[].bar", Required, "", "its bar"),
	items("stacks[].cabinets", 1, 40, Required, "", "its cabinets, from the top"),
	section("stacks[].cabinets[]", Optional, "cabinets of one type"),
	ref("stacks[].cabinets[].type", Required, "", "which type"),
	tally("stacks[].cabinets[].count", 1, 40, Required, "", "how many"),
	items("stacks[].cabinets[].splay", 1, 40, Required, "", "of each cabinet's joint to what is above it"),
	{Path: "stacks[].cabinets[].splay[]", Kind: Degrees, Max: 30, Need: Optional, Meaning: "in degrees, as stamped"},
	ref("stacks[].dolly", Optional, "", "what its sets travel on; they fill from the top"),
	items("stacks[].sets", 1, 40, Optional, "", "how many cabinets on each dolly, if not as many as it takes"),
	tally("stacks[].sets[]", 1, 40, Optional, "", "cabinets of one set"),
	choice("stacks[].pins_set", Optional, "", "when link pins are set", pinsSet...),
	{Path: "stacks[].aim", Kind: Aim, Min: -60 * degree, Max: 60 * degree, Need: Required, Meaning: "wanted of cabinet 1: 1 deg down, 2 deg up, level"},
	section("stacks[].trim", Required, "the height at which it stays; lowest or highest_pick"),
	height("stacks[].trim.lowest", Optional, "", "of the lowest corner of a cabinet"),
	height("stacks[].trim.highest_pick", Optional, "", "or of the highest pick hole in use"),
	height("stacks[].steel", Optional, "", "height of the structure; with two picks also {front, rear}"),
	height("stacks[].steel.front", Required, "", "over the front pick"),
	height("stacks[].steel.rear", Required, "", "over the rear pick"),
	height("stacks[].floor", Defaulted, "0", "height of what the dollies roll on"),
}

// rigging is the rows of what hangs in a hoist's line.
func rigging(path, meaning string) []Key {
	part := func(path string) []Key {
		return []Key{
			mass(path+".mass", 0, 5000, Defaulted, "0", "its mass"),
			{Path: path + ".length", Kind: Length, Hint: smallLengths, Max: 200, Need: Defaulted, Default: "0", Meaning: "its length"},
		}
	}
	keys := append([]Key{noughtOr(path, Defaulted, meaning+"; with two picks also {front, rear}")}, part(path)...)
	for _, end := range []string{".front", ".rear"} {
		keys = append(append(keys, noughtOr(path+end, Optional, "in the line of the "+end[1:]+" pick")), part(path+end)...)
	}
	return keys
}

var hangKeys = append(append([]Key{
	section("stacks[].hang", Required, "how it hangs"),
	tally("stacks[].hang.picks", 1, 2, Required, "", "one pick, or a front and a rear one"),
	ref("stacks[].hang.hoist", Required, "", "which hoist; with two picks also {front, rear}"),
	ref("stacks[].hang.hoist.front", Required, "", "at the front pick"),
	ref("stacks[].hang.hoist.rear", Required, "", "at the rear pick"),
	ref("stacks[].hang.pick_hole", Defaulted, "auto", "one pick: which hole, or auto"),
	ref("stacks[].hang.front_hole", Optional, "", "two picks: hole of the front one"),
	ref("stacks[].hang.rear_hole", Optional, "", "two picks: hole of the rear one"),
	choice("stacks[].hang.load_cell", Optional, "", "where a load cell hangs; below_hoist where not given", "below_hoist", "above_hoist"),
	items("stacks[].extras", 0, 200, Optional, "", "what else hangs with it"),
	section("stacks[].extras[]", Optional, "one thing, placed where it is tied"),
	words("stacks[].extras[].name", textMost, Required, "", "what it is"),
	mass("stacks[].extras[].mass", 0, 5000, Required, "", "its mass"),
	tally("stacks[].extras[].on_cabinet", 1, 40, Optional, "", "which cabinet it is tied to; else the bar"),
	place("stacks[].extras[].behind_hinge", Optional, "", "behind the hinge pin of bar or cabinet"),
	place("stacks[].extras[].ahead_of_hinge", Optional, "", "or ahead of it"),
	place("stacks[].extras[].below_hinge", Optional, "", "below it"),
	place("stacks[].extras[].above_hinge", Optional, "", "or above it"),
	section("stacks[].secondary", Optional, "what would hold it if its hoists or their rigging failed"),
	words("stacks[].secondary.what", 48, Required, "", "what it is"),
	load("stacks[].secondary.rating", masses, Required, "of all of it together"),
}, rigging("stacks[].rigging_below", "between hook and bar, at every pick")...),
	rigging("stacks[].rigging_above", "between steel and hoist, at every point")...)

var pointKeys = []Key{
	items("other_points", 0, 60, Optional, "", "what else this job hangs from the roof, and no stack carries"),
	section("other_points[]", Optional, "one point"),
	{Path: "other_points[].id", Kind: ID, Min: 1, Max: 6, Need: Required, Meaning: "as a stack's, unique among both"},
	section("other_points[].place", Required, "of the point, in plan"),
	plan("other_points[].place.stage_left", "stage left of the datum"),
	plan("other_points[].place.stage_right", "or stage right of it"),
	plan("other_points[].place.downstage", "downstage of the datum"),
	plan("other_points[].place.upstage", "or upstage of it"),
	height("other_points[].height", Required, "", "of the hook that takes it"),
	mass("other_points[].mass", 0, 5000, Required, "", "all that the point carries at rest"),
	words("other_points[].what", 48, Required, "", "what it is"),
}
