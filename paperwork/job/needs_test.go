package job

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestDefaultsOfKeys: the table has these defaults, and no others: one is changed here too, on purpose.
func TestDefaultsOfKeys(t *testing.T) {
	want := map[string]string{
		"job.heights_from":                   "the floor",
		"job.spares":                         "0 %",
		"paper.size":                         "A4",
		"paper.units":                        "metric",
		"practice.mass_tolerance":            "5 %",
		"practice.dynamic_factor":            "1.25",
		"practice.hoist_use":                 "100 %",
		"practice.gear_use":                  "100 %",
		"practice.side_share":                "60 %",
		"practice.least_share":               "10 %",
		"practice.aim_tolerance":             "1 deg",
		"practice.lift_tilt":                 "15 deg",
		"practice.clearance":                 "300 mm",
		"practice.limit_reserve":             "300 mm",
		"practice.reading_floor":             "20 kg",
		"practice.one_must_hold":             "no",
		"gear.cabinets.*.name":               "its key",
		"gear.cabinets.*.hinge_behind_front": "0",
		"gear.cabinets.*.hinge_below_top":    "0",
		"gear.cabinets.*.hinge_pitch":        "the front_height",
		"gear.cabinets.*.splay_holes_for":    "joint_below",
		"gear.cabinets.*.pins.hinge":         "2",
		"gear.cabinets.*.pins.link":          "2",
		"gear.cabinets.*.link_pushes":        "no",
		"gear.bars.*.link_arm":               "the first cabinet's",
		"gear.bars.*.splay_holes":            "[0]",
		"gear.dollies.*.stands":              "flat",
		"gear.hoists.*.falls":                "1",
		"stacks[].name":                      "the id",
		"stacks[].place.pan":                 "0",
		"stacks[].floor":                     "0",
		"stacks[].hang.pick_hole":            "auto",
	}
	for _, rigging := range []string{"stacks[].rigging_below", "stacks[].rigging_above"} {
		for _, end := range []string{"", ".front", ".rear"} {
			want[rigging+end+".mass"], want[rigging+end+".length"] = "0", "0"
		}
	}
	got := map[string]string{}
	for _, k := range Keys() {
		if k.Kind != Section && k.Need >= Defaulted {
			got[k.Path] = k.Default
		}
	}
	assert.Equal(t, want, got)
}

// TestOptionalKeys: what may be left out and has no default stands here, and so may one of each pair and the spacing of a single hole. Names and
// items of lists aside, all else without a default is required.
func TestOptionalKeys(t *testing.T) {
	want := strings.Fields(`job.prepared_by job.contact job.note job.datum job.url practice.pins_set gear_files
		gear.cabinets.*.transport gear.cabinets.*.pin_ratings
		gear.bars.*.rating gear.bars.*.pick_rating gear.bars.*.most gear.bars.*.tilt_limit gear.bars.*.pin_ratings gear.dollies
		gear.bars.*.pick_holes.spacing gear.hoists.*.class gear.hoists.*.speed stacks[].hang.load_cell stacks[].twin_of stacks[].secondary other_points
		other_points[].place.stage_left other_points[].place.stage_right other_points[].place.downstage other_points[].place.upstage
		stacks[].note stacks[].shape stacks[].place.stage_left stacks[].place.stage_right stacks[].place.downstage stacks[].place.upstage
		stacks[].dolly stacks[].sets stacks[].pins_set stacks[].trim.lowest stacks[].trim.highest_pick stacks[].steel
		stacks[].hang.front_hole stacks[].hang.rear_hole stacks[].extras stacks[].extras[].on_cabinet
		stacks[].rigging_below.front stacks[].rigging_below.rear stacks[].rigging_above.front stacks[].rigging_above.rear
		gear.cabinets.*.centre_of_gravity.behind_front gear.cabinets.*.centre_of_gravity.below_top`)
	for _, kind := range []string{"cabinets", "bars", "dollies", "hoists"} {
		want = append(want, "gear."+kind+".*.source", "gear."+kind+".*.as_of")
	}
	for _, placed := range []string{"gear.cabinets.*.centre_of_gravity", "gear.bars.*.centre_of_gravity", "gear.bars.*.pick_holes", "gear.bars.*.pick_holes[]", "stacks[].extras[]"} {
		for _, way := range []string{".behind_hinge", ".ahead_of_hinge", ".below_hinge", ".above_hinge"} {
			want = append(want, placed+way)
		}
	}
	for _, k := range Keys() {
		optional := k.Need == Optional && !strings.HasSuffix(k.Path, "*") && !strings.HasSuffix(k.Path, "[]")
		assert.Equal(t, slices.Contains(want, k.Path), optional, "%s: whether it is optional stands in this test too, so that no required key becomes optional unseen", k.Path)
		want = slices.DeleteFunc(want, func(path string) bool { return path == k.Path })
	}
	assert.Empty(t, want, "no such keys")
}

// TestRangeEdges holds each range of the table at its edges: the numbers next
// to the edge by more than the dust of turning units are refused.
func TestRangeEdges(t *testing.T) {
	ranges := 0
	for _, k := range Keys() {
		if !k.Kind.numeric() {
			continue
		}
		ranges++
		step := 1e-9 * math.Max(1, math.Max(math.Abs(k.Min), math.Abs(k.Max)))
		assert.Empty(t, rangeWrong(&k, k.Max, "x"), "%s at its most", k.Path)
		assert.NotEmpty(t, rangeWrong(&k, k.Max+step, "x"), "%s above its most", k.Path)
		assert.NotEmpty(t, rangeWrong(&k, k.Min-step, "x"), "%s below its least", k.Path)
		assert.Equal(t, k.Above, rangeWrong(&k, k.Min, "x") != "", "%s at its least", k.Path)
		assert.Empty(t, rangeWrong(&k, k.Min+step, "x"), "%s above its least", k.Path)
		wrong := rangeWrong(&k, math.Inf(1), "x")
		assert.Contains(t, wrong, k.Range(), k.Path)
		assert.NotContains(t, wrong, "*", k.Path)
	}
	assert.Greater(t, ranges, 60)
}

// TestLengthEdges: texts, names and lists at their most, and one more.
func TestLengthEdges(t *testing.T) {
	r := newReader("job.yaml", fromDisk, latin)
	for _, k := range Keys() {
		most := int(k.Max)
		switch k.Kind {
		case Text, URL, Names:
			assert.Empty(t, r.textWrong(strings.Repeat("é", most), most), k.Path)
			assert.NotEmpty(t, r.textWrong(strings.Repeat("é", most+1), most), k.Path)
			assert.NotEmpty(t, r.textWrong("", most), k.Path)
		case Revision, ID, Label:
			assert.Empty(t, wordingWrong(&k, strings.Repeat("7", most)), k.Path)
			assert.NotEmpty(t, wordingWrong(&k, strings.Repeat("7", most+1)), k.Path)
			assert.NotEmpty(t, wordingWrong(&k, ""), k.Path)
		}
	}
}

// TestOutOfRangeIsNotUsed: a figure out of range makes no more complaints, and
// nothing is built of it. This count once filled the memory.
func TestOutOfRangeIsNotUsed(t *testing.T) {
	_, complaints := readText(with(t, base(t), "count: 41, ahead_of_hinge: 60 mm", "count: 1000000000, ahead_of_hinge: 60 m"))
	require.Len(t, complaints, 2)
	for _, c := range complaints {
		assert.Contains(t, c.Message, "out of range")
	}
}
