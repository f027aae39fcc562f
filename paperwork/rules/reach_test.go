package rules_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/told"
	"hangpack/testdata/trials"
)

// ofEight is the plain job with all eight cabinets on one dolly, on a stage at 1.4 m.
var ofEight = []string{"takes: 4", "takes: 8", "steel: 14 m", "steel: 7.9 m\n    floor: 1.4 m"}

// curled are eight boxes that curl by 84 degrees below one pick, and a small one on a
// second dolly that rolls in below them with no clearance.
var curled = []string{"[{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]}]", "[{type: box, count: 8, splay: [0, 12, 12, 12, 12, 12, 12, 12]}, {type: other, count: 1, splay: [0]}]",
	"  cabinets:\n    box:", "  cabinets:\n" + trials.OtherBox + "    box:", "takes: 4", "takes: 8", "practice: {", "practice: {clearance: 0 mm, ",
	"      tilt_limit: {down: 15 deg, up: 8 deg}\n", "", "aim: 1 deg down", "aim: 38 deg up", "link_arm: 370 mm", "link_arm: 370 mm\n      link_pushes: yes"}

// TestChainReach: each hook has to come down to the lowest place there is, and the
// sentence names that one. A chain of length L on one fall lets it down to
// steel - 0.55 - (L - 0.3). Four boxes that stand on dolly A with their links in truck
// holes of 0 degrees, which the plain job does not give, are 4 · 0.29 · cos 4.4248° =
// 1.1565 m high (see TestStanding of calc), and the pick hole is 0.095 m above the hinge.
func TestChainReach(t *testing.T) {
	const none, noDolly = "", "    dolly: dolly\n"
	for _, tt := range []struct {
		name, chain string
		edits       []string
		to          string
	}{
		// The stack drops 2.4098 m from its pick: 4.5 + 2.4098 = 6.9098 m. 14 - 0.55 - (L -
		// 0.3) is that at L = 6.8402 m.
		{"trim alone, without a dolly", "6.83 m", []string{noDolly, ""}, "6.91 m, at trim"},
		{"just down to trim", "6.85 m", []string{noDolly, ""}, none},
		// Trim 1.42 + 2.4098 = 3.8298 m, below dolly A at 1.4 + 0.18 + 8 · 0.29 · cos 4.4248° +
		// 0.095 = 3.9881 m. 7.9 - 0.55 - (3.75 - 0.3) = 3.90 m.
		{"trim below dolly A", "3.75 m", append([]string{"{lowest: 4.5 m}", "{lowest: 1.42 m}"}, ofEight...), "3.83 m, at trim"},
		// 7.9 - 0.55 - (L - 0.3) is 3.9881 m at L = 3.6619 m.
		{"dolly A below trim", "3.65 m", ofEight, "3.99 m, onto the bar on dolly A"},
		{"just down to dolly A", "3.67 m", ofEight, none},
		// The bar hangs 35.927 degrees up; the cabinets look 35.927, 23.927, 11.927 up and
		// 0.073, 12.073, 24.073, 36.073, 48.073 down: 0.29 · 7.0698 = 2.0502 m, and the front
		// of the last one 0.018 · sin 48.073° = 0.0134 m lower. The hole, 60 mm ahead and 95
		// above, is 0.06 · sin + 0.095 · cos = 0.1121 m above the hinge. So it drops 2.1757 m,
		// and the hook rolls in at 0.18 + 0.2 + 2.1757 = 2.5557 m; dolly A is at 0.18 + 8 ·
		// 0.29 · cos 4.4248° + 0.095 = 2.5881 m. 14 - 0.55 - (11.18 - 0.3) = 2.57 m.
		{"a roll-in below dolly A, far below trim", "11.18 m", curled, "2.56 m, to the roll-in after lift 1"},
		{"just down to the roll-in", "11.20 m", curled, none},
		// 14 - 0.55 - (12.6 - 0.3) = 1.15 m: down to dolly A at 1.4315 m, not to 0.095 m. It
		// is that at L = 13.655 m.
		{"two picks: the bar on the floor", "12.6 m", []string{trials.OnePick, trials.TwoPicks}, "0.10 m, to the bar on the floor"},
		{"two picks without a dolly", "13.65 m", []string{trials.OnePick, trials.TwoPicks, noDolly, ""}, "95 mm, to the bar on the floor"},
		{"just down to the floor", "13.66 m", []string{trials.OnePick, trials.TwoPicks}, none},
	} {
		t.Run(tt.name, func(t *testing.T) {
			h := trials.OpenJob(t, trials.Edited(t, append([]string{"chain_length: 24 m", "chain_length: " + tt.chain}, tt.edits...)...)).Stacks[0]
			if tt.to == none {
				assert.Empty(t, h.Holds)
				return
			}
			require.Len(t, h.Holds, len(h.Picks), "one for each pick")
			for i, f := range h.Holds {
				assert.Equal(t, "chain_reach", f.Rule)
				assert.Equal(t, string(h.End(i)), f.Where.String())
				assert.Contains(t, f.Says, "and it has to come to "+tt.to)
			}
		})
	}
}

// TestChainDownToTheSetAsItStands: how high dolly A stands goes by how it is set and held.
func TestChainDownToTheSetAsItStands(t *testing.T) {
	// The boxes of dolly A have splays of 0.5, 0.5 and 1 degrees between them, truck holes of
	// 2 degrees where they are given. The lowest one looks 4.4248 degrees up, or 0 where it
	// is held plumb, and each above it by the splays further up:
	const (
		show  = 0.29 * (0.997019 + 0.995521 + 0.994658 + 0.993720) // cos 4.4248°, 5.4248°, 5.9248°, 6.4248°
		flat  = 0.29 * 4 * 0.997019
		truck = 0.29 * (0.997019 + 0.993720 + 0.989209 + 0.983493) // cos 4.4248°, 6.4248°, 8.4248°, 10.4248°
		plumb = 0.29 * (1 + 0.999391 + 0.997564 + 0.994522)        // cos 0°, 2°, 4°, 6°
	)
	given := []string{"splay_holes: [0, 0.5, 1, 2, 3, 4, 12]", "splay_holes: [0, 0.5, 1, 2, 3, 4, 12]\n      transport: 2"}
	upright := []string{"deck_height: 180 mm", "deck_height: 180 mm, stands: plumb"}
	way := func(way string) []string { return []string{"    aim: 1", "    pins_set: " + way + "\n    aim: 1"} }
	for _, tt := range []struct {
		name  string
		edits [][]string
		high  float64
	}{
		{"on the dolly", [][]string{way("on_dolly"), given}, show},
		{"at the hoist, truck holes not given", [][]string{way("at_the_hoist")}, flat},
		{"at the hoist", [][]string{way("at_the_hoist"), given}, truck},
		{"in the air", [][]string{way("in_the_air"), given}, truck},
		{"not known", [][]string{given}, truck},
		{"of practice", [][]string{given, {"practice: {", "practice: {pins_set: on_dolly, "}}, show},
		{"its own before that of practice", [][]string{given, {"practice: {", "practice: {pins_set: on_dolly, "}, way("at_the_hoist")}, truck},
		{"held plumb", [][]string{given, upright}, plumb},
	} {
		var edits []string
		for _, e := range tt.edits {
			edits = append(edits, e...)
		}
		h := trials.OpenJob(t, trials.Edited(t, edits...)).Stacks[0]
		assert.InDelta(t, 0.18+tt.high+0.095, h.LowestPlace(0).Hook, 2e-6, tt.name)
	}
}

// TestChainOfUnknownCentres: the hold is of the lowest place wherever centres of gravity
// that are not known lie. Without a dolly one pick comes down to trim alone, which goes by
// how the stack hangs.
func TestChainOfUnknownCentres(t *testing.T) {
	yaml := strings.ReplaceAll(strings.Replace(trials.UnknownJob(t), "chain_length: 20 m", "chain_length: 4 m", 1), "    dolly: dolly\n", "")
	h := trials.OpenJob(t, yaml).Stacks[0]
	lowest := h.LowestOfWays(0)
	require.NotEqual(t, h.Unit().Length(h.LowestPlace(0).Hook), h.Unit().Length(lowest.Hook), "else this says nothing")
	var found []string
	for _, f := range h.Holds {
		if f.Rule == "chain_reach" {
			found = append(found, f.Says)
		}
	}
	require.Len(t, found, 1)
	assert.Contains(t, found[0], "and it has to come to "+rules.LowWords(h.Hung, lowest))
	assert.Contains(t, found[0], "if the centre of gravity that is not known lies: ")
}

// TestMostOfAny: five boxes and three others are eight cabinets, and each type is within
// its own limit.
func TestMostOfAny(t *testing.T) {
	mixed := func(most string) *rules.Checked {
		return trials.OpenJob(t, trials.Edited(t, "[{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]}]", "[{type: box, count: 5, splay: [0, 0.5, 0.5, 1, 1]}, {type: other, count: 3, splay: [0, 0, 0]}]",
			"  cabinets:\n    box:", "  cabinets:\n"+trials.OtherBox+"    box:", "most: {box: 12}", "most: "+most)).Stacks[0]
	}
	unlimited := "NOT CHECKED: how many cabinets of all types together the bar takes: no number given"
	assert.Empty(t, mixed("{box: 12, other: 12, any: 8}").Holds)
	held := mixed("{box: 12, other: 12, any: 7}")
	assert.Equal(t, []string{"most, any"}, trials.Found(held.Holds))
	assert.Equal(t, "8 of all types together is more than the 7 that bar takes", held.Holds[0].Says)
	assert.NotContains(t, unchecked(held), unlimited)
	assert.Equal(t, []string{"most, any", "most, lift 1, any"}, trials.Found(mixed("{box: 12, other: 12, any: 3}").Holds))
	assert.Contains(t, unchecked(mixed("{box: 12, other: 12}")), unlimited)
	assert.NotContains(t, unchecked(trials.OpenJob(t, trials.Plain).Stacks[0]), unlimited, "a column of one type")
}

func unchecked(h *rules.Checked) (says []string) {
	for _, f := range h.Cautions {
		if f.Rule == rules.NotChecked {
			says = append(says, f.Says)
		}
	}
	return says
}

// TestNotCheckedInWords: what has no rating is named in words, and never by a key of the
// job; all of it is counted.
func TestNotCheckedInWords(t *testing.T) {
	bare := []string{"      rating: 750 kg\n      pick_rating: 600 kg\n      most: {box: 12}\n      tilt_limit: {down: 15 deg, up: 8 deg}\n      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n", "",
		"      pin_ratings: {hinge: 6 kN, link: 4.5 kN}\n", "", "    steel: 14 m\n", "", "    dolly: dolly\n", ""}
	want := []string{
		"NOT CHECKED: the bar with all that hangs on it: no rating given",
		"NOT CHECKED: the bar's pick holes: no rating given",
		"NOT CHECKED: the hinge and link pins of the bar: no rating given",
		"NOT CHECKED: how many cabinets the bar takes: no number given",
		"NOT CHECKED: how far the bar may tilt: no limit given",
		"NOT CHECKED: the hinge and link pins of box: no rating given",
		"NOT CHECKED: headroom and chain: the height of the steel is not given",
		"NOT CHECKED: chain and headroom down to the dollies: no dolly given",
	}
	h := trials.OpenJob(t, trials.Edited(t, bare...)).Stacks[0]
	assert.Equal(t, want, unchecked(h))
	_, n := told.Counts(h)
	assert.Equal(t, len(want), n)
	other := trials.OpenJob(t, trials.Edited(t, "most: {box: 12}", "most: {other: 12}", "  cabinets:\n    box:", "  cabinets:\n"+trials.OtherBox+"    box:")).Stacks[0]
	assert.Equal(t, []string{"NOT CHECKED: how many of box the bar takes: no number given"}, unchecked(other))
}
