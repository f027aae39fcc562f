package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/testdata/trials"
)

// What a held stack keeps to itself: the holes of its joints, by label and by splay in
// degrees, and all pick holes of its bar. None of them stands for anything else in the
// job of twins.
var (
	heldLabels = []string{"QC", "QD", "QE", "QF", "QG", "QH", "QJ", "QK"}
	heldSplays = []string{"0.131", "0.572", "0.613", "1.074", "1.175", "2.056", "3.147", "11.378"}
	heldPicks  = pickLabels()
)

// heldPick is the pick hole in use: its aim is off by more than is tolerated.
const heldPick = "pick_hole: XFH"

// pickLabels are 41 of them, from the front.
func pickLabels() (all []string) {
	const letters = "CDEFGHJKL"
	for i := range 41 {
		all = append(all, "X"+letters[i/9:i/9+1]+letters[i%9:i%9+1])
	}
	return all
}

// twinsJob are two twins that no rule holds. HELD has a bar, a hoist and a dolly of its
// own, so that an edit holds it alone; CALM has other holes of the same cabinets. They
// hang so near to each other, and HELD is so made, that HELD has every caution that a
// stack on one pick can have.
func twinsJob() string {
	labels, splays := slices.Clone(heldLabels), slices.Clone(heldSplays)
	for i, splay := range []string{"0.222", "0.523", "0.624", "1.025", "1.126", "2.027", "3.128", "4.029", "5.02"} {
		labels, splays = append(labels, "Y"+"CDEFGHJKT"[i:i+1]), append(splays, splay)
	}
	var joints, picks []string
	for i, label := range labels {
		joints = append(joints, fmt.Sprintf("{label: %s, splay: %s}", label, splays[i]))
	}
	for i, label := range heldPicks {
		picks = append(picks, fmt.Sprintf("        - {label: %s, behind_hinge: %d mm, above_hinge: 95 mm}\n", label, i*15-60))
	}
	return strings.NewReplacer("JOINTS", strings.Join(joints, ", "), "PICKS\n", strings.Join(picks, ""),
		"HELD-SPLAYS", strings.Join(heldSplays, ", "), "CALM-SPLAYS", strings.Join(splays[8:16], ", ")).Replace(twinsText)
}

const twinsText = `job: {title: A show, venue: A hall, date: 2027-06-12, revision: A}
practice: {mass_tolerance: 5 %, dynamic_factor: 1.25, lift_tilt: 0.2 deg}
gear:
  cabinets:
    box:
      mass: 32.5 kg
      width: 780 mm
      depth: 420 mm
      front_height: 290 mm
      back_height: 225 mm
      hinge_behind_front: 18 mm
      centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}
      link_arm: 370 mm
      splay_holes: [JOINTS]
      transport: YT
      pin_ratings: {hinge: 6 kN, link: 4.5 kN}
  bars:
    held-bar:
      mass: 28 kg
      centre_of_gravity: {behind_hinge: 260 mm, above_hinge: 70 mm}
      pick_holes:
PICKS
      splay_holes: [JOINTS]
      link_arm: 364 mm
      rating: 750 kg
      pick_rating: 600 kg
      most: {box: 12}
      tilt_limit: {down: 25 deg, up: 25 deg}
      pin_ratings: {hinge: 6 kN, link: 4.5 kN}
    calm-bar:
      mass: 28 kg
      centre_of_gravity: {behind_hinge: 260 mm, above_hinge: 70 mm}
      pick_holes: {count: 41, ahead_of_hinge: 60 mm, spacing: 15 mm, above_hinge: 95 mm}
      splay_holes: [JOINTS]
      link_arm: 370 mm
      rating: 750 kg
  dollies:
    held-dolly: {takes: 4, mass: 24 kg, deck_height: 180 mm}
    calm-dolly: {takes: 4, mass: 24 kg, deck_height: 180 mm}
  hoists:
    held-hoist: {capacity: 500 kg, mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 24 m, headroom: 550 mm}
    calm-hoist: {capacity: 500 kg, mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 24 m, headroom: 550 mm}
stacks:
  - id: HELD
    place: {stage_left: 8.2 m, downstage: 0.6 m}
    bar: held-bar
    cabinets: [{type: box, count: 8, splay: [HELD-SPLAYS]}]
    dolly: held-dolly
    aim: 1 deg down
    hang: {picks: 1, hoist: held-hoist, pick_hole: XFH}
    trim: {lowest: 4.5 m}
    steel: 14 m
  - id: CALM
    twin_of: HELD
    place: {stage_left: 8.3 m, downstage: 0.6 m}
    bar: calm-bar
    cabinets: [{type: box, count: 8, splay: [CALM-SPLAYS]}]
    dolly: calm-dolly
    sets: [4, 4]
    aim: 1 deg down
    hang: {picks: 1, hoist: calm-hoist}
    trim: {lowest: 4.5 m}
    steel: 14 m
`

// twoPicked hangs HELD from two picks.
var twoPicked = []string{"{picks: 1, hoist: held-hoist, " + heldPick + "}", "{picks: 2, hoist: held-hoist, front_hole: XCC, rear_hole: XGG}"}

// heldBy are, for each rule that may hold a stack, edits of the job of twins by which it
// holds HELD: the first place where each stands.
var heldBy = map[string][]string{
	"hoist":          {"capacity: 500 kg", "capacity: 250 kg"},
	"bar":            {"rating: 750 kg", "rating: 300 kg"},
	"pick_hole":      {"pick_rating: 600 kg", "pick_rating: 300 kg"},
	"hinge_pin":      {"up: 25 deg}\n      pin_ratings: {hinge: 6 kN", "up: 25 deg}\n      pin_ratings: {hinge: 0.2 kN"},
	"link_pin":       {"up: 25 deg}\n      pin_ratings: {hinge: 6 kN, link: 4.5 kN", "up: 25 deg}\n      pin_ratings: {hinge: 6 kN, link: 0.4 kN"},
	"link_pushed":    append([]string{"aim: 1 deg down", "aim: 40 deg up", "{down: 25 deg, up: 25 deg}", "{down: 60 deg, up: 60 deg}"}, twoPicked...),
	"most":           {"most: {box: 12}", "most: {box: 7}"},
	"bar_tilt":       {"{down: 25 deg, up: 25 deg}", "{down: 0.5 deg, up: 0.5 deg}"},
	"slack":          {twoPicked[0], "{picks: 2, hoist: held-hoist, front_hole: XCC, rear_hole: XCD}"},
	"light_pick":     append([]string{"practice: {", "practice: {least_share: 49 %, "}, twoPicked...),
	"tips_over":      {"mass: 28 kg", "mass: 300 kg", "above_hinge: 70 mm", "above_hinge: 2000 mm"},
	"headroom":       {"steel: 14 m", "steel: 7 m"},
	"chain_reach":    {"chain_length: 24 m", "chain_length: 9 m"},
	"below_floor":    {"trim: {lowest: 4.5 m}", "trim: {highest_pick: 1 m}"},
	"dolly":          {"dolly: held-dolly\n", "dolly: held-dolly\n    sets: [3, 5]\n"},
	"one_hoist":      append([]string{"practice: {", "practice: {one_must_hold: yes, ", "capacity: 500 kg", "capacity: 250 kg"}, twoPicked...),
	"one_hoist_gear": append([]string{"practice: {", "practice: {one_must_hold: yes, ", "pick_rating: 600 kg", "pick_rating: 300 kg"}, twoPicked...),
}

// heldJob is the job of twins whose HELD a rule holds.
func heldJob(t *testing.T, rule string) string {
	t.Helper()
	edits, has := heldBy[rule]
	require.True(t, has, "give heldBy edits by which %s holds HELD", rule)
	return replaced(t, twinsJob(), edits...)
}

// replaced applies edits, pairs of what stands in a job and what is to stand there.
func replaced(t *testing.T, yaml string, edits ...string) string {
	t.Helper()
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, yaml, edits[i])
		yaml = strings.Replace(yaml, edits[i], edits[i+1], 1)
	}
	return yaml
}

// movedJob is the next revision of the job of twins: HELD, which no rule holds, has its
// link pins and its pick in others of its own holes.
func movedJob(t *testing.T) string {
	t.Helper()
	splays := slices.Clone(heldSplays)
	slices.Reverse(splays[:7])
	return replaced(t, twinsJob(), "revision: A", "revision: B", strings.Join(heldSplays, ", "), strings.Join(splays, ", "), heldPick, "pick_hole: XFJ")
}

// heldOf are the ids of the held stacks of a job, and the rules that hold HELD.
func heldOf(t *testing.T, yaml string) (ids, rules []string) {
	t.Helper()
	for _, h := range trials.OpenJob(t, yaml).Stacks {
		if h.Held() {
			ids = append(ids, h.ID)
		}
		for _, f := range h.Holds {
			if h.ID == "HELD" {
				rules = append(rules, f.Rule)
			}
		}
	}
	return ids, rules
}
