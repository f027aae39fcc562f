package job

import (
	"slices"
)

// table is every key of a job and of a gear file, in the order of README's list.
var table = slices.Concat(jobKeys, practiceKeys, cabinetKeys, originKeys("gear.cabinets.*"), barKeys, originKeys("gear.bars.*"),
	dollyKeys, originKeys("gear.dollies.*"), hoistKeys, originKeys("gear.hoists.*"), stackKeys, hangKeys, pointKeys)

var jobKeys = []Key{
	section("job", Required, "what show this is"),
	words("job.title", titleMost, Required, "", "name of the show"),
	words("job.venue", titleMost, Required, "", "where it hangs"),
	{Path: "job.date", Kind: Date, Need: Required, Meaning: "day of the show, YYYY-MM-DD"},
	{Path: "job.revision", Kind: Revision, Min: 1, Max: 6, Need: Required, Meaning: "revision of this job, 1 to 6 of A-Z a-z 0-9 . -"},
	words("job.prepared_by", textMost, Optional, "", "who prepared the job"),
	words("job.contact", textMost, Optional, "", "where to ask"),
	words("job.note", noteMost, Optional, "", "anything else that the cover is to say"),
	words("job.datum", textMost, Optional, "", "what the plan is measured from"),
	words("job.heights_from", textMost, Defaulted, "the floor", "what heights are measured from"),
	{Path: "job.url", Kind: URL, Min: 1, Max: textMost, Need: Optional, Meaning: "where the pack will be found; {page} and {stack} are filled in"},
	percentage("job.spares", 0, 1, false, "0 %", "of the pins, up to whole ones"),
	section("paper", Defaulted, "what the pack is printed on"),
	choice("paper.size", Defaulted, "A4", "size of the paper", "A4", "Letter"),
	choice("paper.units", Defaulted, "metric", "units on the paper", "metric", "imperial"),
}

var practiceKeys = []Key{
	section("practice", Defaulted, "what the shop checks by"),
	fills("tolerance on masses", func(p *Practice) any { return &p.MassTolerance },
		percentage("practice.mass_tolerance", 0, 0.3, false, "5 %", "how far real masses may be from the data sheet")),
	fills("dynamic factor", func(p *Practice) any { return &p.DynamicFactor },
		Key{Path: "practice.dynamic_factor", Kind: Number, Min: 1, Max: 3, Need: Defaulted, Default: "1.25", Meaning: "for starting and stopping"}),
	fills("use of hoists", func(p *Practice) any { return &p.HoistUse },
		percentage("practice.hoist_use", 0, 1, true, "100 %", "most of a hoist's capacity")),
	fills("use of gear", func(p *Practice) any { return &p.GearUse },
		percentage("practice.gear_use", 0, 1, true, "100 %", "most of a rating")),
	fills("side share", func(p *Practice) any { return &p.SideShare },
		percentage("practice.side_share", 0.5, 1, false, "60 %", "of a joint's force on the worse side, where it has a pin each side")),
	fills("least share", func(p *Practice) any { return &p.LeastShare },
		percentage("practice.least_share", 0, 0.5, false, "10 %", "of the mass; a pick that carries less is light")),
	fills("tolerance on aim", func(p *Practice) any { return &p.AimTolerance },
		angle("practice.aim_tolerance", 30, Defaulted, "1 deg", "how far the aim may be off")),
	fills("lift tilt", func(p *Practice) any { return &p.LiftTilt },
		angle("practice.lift_tilt", 90, Defaulted, "15 deg", "a lift whose bar tilts further gets a caution")),
	fills("clearance", func(p *Practice) any { return &p.Clearance },
		Key{Path: "practice.clearance", Kind: Length, Hint: smallLengths, Max: far, Need: Defaulted, Default: "300 mm", Meaning: "under the flown part when the next dolly rolls in"}),
	fills("reserve of chain and headroom", func(p *Practice) any { return &p.LimitReserve },
		Key{Path: "practice.limit_reserve", Kind: Length, Hint: smallLengths, Max: far, Need: Defaulted, Default: "300 mm", Meaning: "of chain or headroom never used"}),
	fills("least reading window", func(p *Practice) any { return &p.ReadingFloor },
		mass("practice.reading_floor", 0, 100, Defaulted, "20 kg", "no reading window is narrower to either side")),
	fills("each hoist must hold alone", func(p *Practice) any { return &p.OneMustHold },
		Key{Path: "practice.one_must_hold", Kind: Switch, Need: Defaulted, Default: "no", Meaning: "yes where each of two hoists, its pick and all below it must hold the stack alone"}),
	fills("pins set", func(p *Practice) any { return &p.PinsSet },
		choice("practice.pins_set", Optional, "", "pins_set of the stacks that do not say", pinsSet...)),
}

var cabinetKeys = []Key{
	items("gear_files", 1, 16, Optional, "", "files with more of the section gear, shared by jobs"),
	words("gear_files[]", 255, Optional, "", "path of one, as from this job's folder"),
	section("gear", Required, "what the stacks are made of; neither it nor its kinds are required beside gear_files"),
	{Path: "gear.cabinets", Kind: Names, Max: nameMost, Need: Required, Meaning: "types of cabinet, by name"},
	section("gear.cabinets.*", Optional, "one type of cabinet"),
	words("gear.cabinets.*.name", nameMost, Derived, "its key", "name on paper"),
	mass("gear.cabinets.*.mass", 1, 500, Required, "", "mass of one"),
	size("gear.cabinets.*.width", Required, "", "across the front"),
	size("gear.cabinets.*.depth", Required, "", "front to back"),
	size("gear.cabinets.*.front_height", Required, "", "height of the front"),
	size("gear.cabinets.*.back_height", Required, "", "height of the back"),
	place("gear.cabinets.*.hinge_behind_front", Defaulted, "0", "front face to hinge pin"),
	place("gear.cabinets.*.hinge_below_top", Defaulted, "0", "top front edge down to the top hinge pin"),
	size("gear.cabinets.*.hinge_pitch", Derived, "the front_height", "top hinge pin to bottom hinge pin"),
	sectionOr("gear.cabinets.*.centre_of_gravity", Required, NotKnown, "where it is; not_known takes the middle of the outline and holds the rest against its middle third"),
	place("gear.cabinets.*.centre_of_gravity.behind_hinge", Optional, "", "behind the top hinge pin"),
	place("gear.cabinets.*.centre_of_gravity.ahead_of_hinge", Optional, "", "or ahead of it"),
	place("gear.cabinets.*.centre_of_gravity.behind_front", Optional, "", "or behind the front face"),
	place("gear.cabinets.*.centre_of_gravity.below_hinge", Optional, "", "below the top hinge pin"),
	place("gear.cabinets.*.centre_of_gravity.above_hinge", Optional, "", "or above it"),
	place("gear.cabinets.*.centre_of_gravity.below_top", Optional, "", "or below the top front edge"),
	arm("gear.cabinets.*.link_arm", Required, "", "hinge pin to link pin"),
	items("gear.cabinets.*.splay_holes", 1, 60, Required, "", "holes of a joint"),
	{Path: "gear.cabinets.*.splay_holes[]", Kind: Degrees, Max: 30, Need: Optional, Meaning: "a splay as stamped, or {label, splay}"},
	{Path: "gear.cabinets.*.splay_holes[].label", Kind: Label, Min: 1, Max: 4, Need: Required, Meaning: "as stamped, 1 to 4 of A-Z 0-9 . - /"},
	{Path: "gear.cabinets.*.splay_holes[].splay", Kind: Degrees, Max: 30, Need: Required, Meaning: "the splay it sets"},
	choice("gear.cabinets.*.splay_holes_for", Defaulted, "joint_below", "which joint the holes are for", "joint_below", "joint_above"),
	{Path: "gear.cabinets.*.transport", Kind: Name, Need: Optional, Meaning: "the hole for the truck, by label or degrees"},
	section("gear.cabinets.*.pins", Defaulted, "pins per joint that share its force"),
	tally("gear.cabinets.*.pins.hinge", 1, 2, Defaulted, "2", "2, one each side, or 1 in the middle"),
	tally("gear.cabinets.*.pins.link", 1, 2, Defaulted, "2", "2, one each side, or 1 in the middle"),
	section("gear.cabinets.*.pin_ratings", Optional, "of one pin with its ironwork"),
	load("gear.cabinets.*.pin_ratings.hinge", forces, Required, "of a hinge pin"),
	load("gear.cabinets.*.pin_ratings.link", forces, Required, "of a link pin"),
	{Path: "gear.cabinets.*.link_pushes", Kind: Switch, Need: Defaulted, Default: "no", Meaning: "yes where the maker lets the link take compression"},
}

var barKeys = []Key{
	{Path: "gear.bars", Kind: Names, Max: nameMost, Need: Required, Meaning: "bars, by name"},
	section("gear.bars.*", Optional, "one bar"),
	mass("gear.bars.*.mass", 1, 2000, Required, "", "its mass"),
	section("gear.bars.*.centre_of_gravity", Required, "where it is"),
	place("gear.bars.*.centre_of_gravity.behind_hinge", Optional, "", "behind the hinge pin"),
	place("gear.bars.*.centre_of_gravity.ahead_of_hinge", Optional, "", "or ahead of it"),
	place("gear.bars.*.centre_of_gravity.below_hinge", Optional, "", "below the hinge pin"),
	place("gear.bars.*.centre_of_gravity.above_hinge", Optional, "", "or above it"),
	items("gear.bars.*.pick_holes", 1, 200, Required, "", "the row of pick holes: {count, …} or a list"),
	tally("gear.bars.*.pick_holes.count", 1, 200, Required, "", "how many; 1 is at the front"),
	size("gear.bars.*.pick_holes.spacing", Optional, "", "from one to the next; required where count is over 1"),
	place("gear.bars.*.pick_holes.behind_hinge", Optional, "", "hole 1 behind the hinge pin"),
	place("gear.bars.*.pick_holes.ahead_of_hinge", Optional, "", "or ahead of it"),
	place("gear.bars.*.pick_holes.below_hinge", Optional, "", "all below the hinge pin"),
	place("gear.bars.*.pick_holes.above_hinge", Optional, "", "or above it"),
	section("gear.bars.*.pick_holes[]", Optional, "one pick hole"),
	{Path: "gear.bars.*.pick_holes[].label", Kind: Label, Min: 1, Max: 4, Need: Required, Meaning: "as stamped, 1 to 4 of A-Z 0-9 . - /"},
	place("gear.bars.*.pick_holes[].behind_hinge", Optional, "", "behind the hinge pin"),
	place("gear.bars.*.pick_holes[].ahead_of_hinge", Optional, "", "or ahead of it"),
	place("gear.bars.*.pick_holes[].below_hinge", Optional, "", "below the hinge pin"),
	place("gear.bars.*.pick_holes[].above_hinge", Optional, "", "or above it"),
	arm("gear.bars.*.link_arm", Derived, "the first cabinet's", "hinge pin to link pin"),
	items("gear.bars.*.splay_holes", 1, 60, Defaulted, "[0]", "holes of joint 1"),
	{Path: "gear.bars.*.splay_holes[]", Kind: Degrees, Max: 30, Need: Optional, Meaning: "a splay as stamped, or {label, splay}"},
	{Path: "gear.bars.*.splay_holes[].label", Kind: Label, Min: 1, Max: 4, Need: Required, Meaning: "as stamped, 1 to 4 of A-Z 0-9 . - /"},
	{Path: "gear.bars.*.splay_holes[].splay", Kind: Degrees, Max: 30, Need: Required, Meaning: "the splay it sets"},
	load("gear.bars.*.rating", masses, Optional, "of all that hangs from the hooks, the bar included"),
	load("gear.bars.*.pick_rating", masses, Optional, "of one pick hole"),
	{Path: "gear.bars.*.most", Kind: Names, Min: 1, Max: nameMost, Need: Optional, Meaning: "the maker's count limits, by type of cabinet; any: of all types together"},
	tally("gear.bars.*.most.*", 0, 1000, Optional, "", "most cabinets of that type, or of all types together"),
	section("gear.bars.*.tilt_limit", Optional, "how far the bar may tilt"),
	angle("gear.bars.*.tilt_limit.down", 90, Required, "", "front down"),
	angle("gear.bars.*.tilt_limit.up", 90, Required, "", "front up"),
	section("gear.bars.*.pin_ratings", Optional, "of one pin with its ironwork"),
	load("gear.bars.*.pin_ratings.hinge", forces, Required, "of a hinge pin"),
	load("gear.bars.*.pin_ratings.link", forces, Required, "of a link pin"),
}

var dollyKeys = []Key{
	{Path: "gear.dollies", Kind: Names, Max: nameMost, Need: Optional, Meaning: "dollies, by name"},
	section("gear.dollies.*", Optional, "one type of dolly"),
	tally("gear.dollies.*.takes", 1, 40, Required, "", "cabinets it takes"),
	mass("gear.dollies.*.mass", 0, 5000, Required, "", "mass of one"),
	size("gear.dollies.*.deck_height", Required, "", "what it rolls on up to its deck"),
	choice("gear.dollies.*.stands", Defaulted, "flat", "how a set stands on it: flat on the under side of its lowest cabinet, or with that one's front plumb", "flat", "plumb"),
}

var hoistKeys = []Key{
	{Path: "gear.hoists", Kind: Names, Max: nameMost, Need: Required, Meaning: "hoists, by name"},
	section("gear.hoists.*", Optional, "one type of hoist"),
	load("gear.hoists.*.capacity", masses, Required, "what it may hold"),
	mass("gear.hoists.*.mass", 0, 5000, Required, "", "without its chain"),
	{Path: "gear.hoists.*.chain_mass", Kind: MassPerLength, Hint: chains, Max: 100, Need: Required, Meaning: "of its chain"},
	{Path: "gear.hoists.*.chain_length", Kind: Length, Hint: largeLengths, Above: true, Max: 200, Need: Required, Meaning: "all of its chain"},
	tally("gear.hoists.*.falls", 1, 8, Defaulted, "1", "falls of chain"),
	size("gear.hoists.*.headroom", Required, "", "hook to hook, run right up"),
	{Path: "gear.hoists.*.speed", Kind: Speed, Hint: speeds, Min: 0.1 / 60, Max: 1, Need: Optional, Meaning: "of its hook, as it runs"},
	words("gear.hoists.*.class", 48, Optional, "", "may it hold over people? in the shop's own words"),
}

// originKeys say where the figures of a gear entry come from.
func originKeys(path string) []Key {
	return []Key{
		choice(path+".source", Optional, "", "where its figures come from", "data_sheet", "label", "weighed", "drawing", "estimate"),
		{Path: path + ".as_of", Kind: Date, Need: Optional, Meaning: "of which day they are, YYYY-MM-DD"},
	}
}
