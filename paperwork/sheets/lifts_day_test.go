package sheets

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts"
	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// One stack from the bar to trim and down again, worked through by hand: what has to
// be said, and in which order. Every hole, mass and name of the job is another one.

// dayJob is seven cabinets on three dollies, of 3, 3 and 1, with two hoists that
// differ. Dollies roll 0.50 m above the datum of heights.
const dayJob = `
job: {title: A show, venue: A hall, date: 2027-06-12, revision: A}
practice: {mass_tolerance: 4 %, aim_tolerance: 0.7 deg, lift_tilt: 21 deg, reading_floor: 3 kg, clearance: 250 mm}
gear:
  cabinets:
    long: {mass: 30 kg, width: 780 mm, depth: 420 mm, front_height: 300 mm, back_height: 225 mm, centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}, link_arm: 370 mm, splay_holes: [0, 1, 2, 3, 4, 5], transport: 5, link_pushes: yes}
    wide: {mass: 40 kg, width: 780 mm, depth: 420 mm, front_height: 300 mm, back_height: 225 mm, centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}, link_arm: 370 mm, splay_holes: [{label: A, splay: 2}, {label: B, splay: 3}, {label: C, splay: 4}, {label: T, splay: 0}], pins: {hinge: 1, link: 2}, transport: T, link_pushes: yes}
  bars:
    bar: {mass: 28 kg, centre_of_gravity: {behind_hinge: 260 mm, above_hinge: 70 mm}, splay_holes: [0.5], pick_holes: {count: 41, ahead_of_hinge: 60 mm, spacing: 15 mm, above_hinge: 95 mm}}
  dollies:
    dolly: {takes: 3, mass: 24 kg, deck_height: 170 mm}
  hoists:
    slow: {capacity: 1000 kg, mass: 52 kg, chain_mass: 1.5 kg/m, chain_length: 20 m, headroom: 550 mm, speed: 4 m/min}
    fast: {capacity: 1000 kg, mass: 60 kg, chain_mass: 2 kg/m, chain_length: 30 m, headroom: 550 mm, speed: 8 m/min}
stacks:
  - id: SL
    place: {stage_left: 8.2 m, downstage: 0.6 m}
    bar: bar
    cabinets: [{type: long, count: 4, splay: [0.5, 1, 2, 3]}, {type: wide, count: 3, splay: [4, 3, 4]}]
    dolly: dolly
    pins_set: in_the_air
    floor: 0.5 m
    aim: 2.5 deg down
    hang: {picks: 2, hoist: {front: slow, rear: fast}, front_hole: 2, rear_hole: 40, load_cell: above_hoist}
    trim: {lowest: 6.2 m}
    secondary: {what: steel bond, rating: 900 kg}
    rigging_below: {front: {mass: 3 kg, length: 150 mm}, rear: {mass: 5 kg, length: 150 mm}}
    rigging_above: {mass: 6 kg, length: 150 mm}
    extras:
      - {name: loom, mass: 2 kg, behind_hinge: 400 mm, below_hinge: 0 mm}
      - {name: sensor, mass: 1 kg, behind_hinge: 100 mm, below_hinge: 0 mm}
      - {name: flag, mass: 1 kg, behind_hinge: 200 mm, below_hinge: 0 mm}
      - {name: lamp, mass: 1 kg, behind_hinge: 300 mm, below_hinge: 0 mm}
      - {name: top strap, mass: 1 kg, on_cabinet: 1, behind_hinge: 100 mm, below_hinge: 100 mm}
      - {name: third strap, mass: 1 kg, on_cabinet: 3, behind_hinge: 100 mm, below_hinge: 100 mm}
      - {name: fourth strap, mass: 1 kg, on_cabinet: 4, behind_hinge: 100 mm, below_hinge: 100 mm}
      - {name: tail, mass: 4 kg, on_cabinet: 7, behind_hinge: 100 mm, below_hinge: 100 mm}
`

// day is the stack of that job, with some edits.
func day(t *testing.T, edits ...string) *rules.Checked {
	t.Helper()
	yaml := dayJob
	for i := 0; i < len(edits); i += 2 {
		require.Contains(t, yaml, edits[i])
		yaml = strings.ReplaceAll(yaml, edits[i], edits[i+1])
	}
	h := trials.OpenJob(t, yaml).Stacks[0]
	require.False(t, h.Held(), "%v", h.Holds)
	return h
}

// saysInOrder asserts that parts stand in a text one after the other.
func saysInOrder(t *testing.T, says string, parts ...string) {
	t.Helper()
	rest := says
	for _, p := range parts {
		_, after, ok := strings.Cut(rest, p)
		require.True(t, ok, "%q, after what comes before it, in: %s", p, says)
		rest = after
	}
}

// momentsOf are which moments cards are of.
func momentsOf(cards []layouts.Card) (all []string) {
	for _, c := range cards {
		all = append(all, c.Of+" "+c.Which)
	}
	return all
}

// TestDayUp: the cards of the way up.
func TestDayUp(t *testing.T) {
	s := liftSheet(day(t))
	assert.Equal(t, []string{"first the bar", "after dolly A", "after dolly B", "after dolly C"}, momentsOf(s.Cards))
	for i, parts := range [][]string{
		{"loom, sensor, flag, and 1 more", "front at pick hole 2, rear at 40", "closed and locked", "Raise the bar level", "Stop and read"},
		// the next dolly needs 170 + 250 + 3 · 300 mm, and the last one 170 + 250 + 300 mm, above 0.50 m
		{"Roll in dolly A", "castors locked", "lower onto it", "above cabinet 1: hinge first, then link, hole 0.5.", "above cabinets 2 to 3", "sheet of dolly A", "Tied on now: top strap, third strap.",
			"clear of dolly A. Stop.", "every pin", "read", "Roll it out, nobody below. Raise both hoists together", "1.32 m above what dollies roll on (height 1.82 m)", "Then dolly B", "pick hole then at "},
		{"Roll in dolly B", "castors locked", "lower onto it", "above cabinet 4: hinge first, then link, hole 3.", "above cabinets 5 to 6", "sheet of dolly B", "Tied on now: fourth strap.",
			"clear of dolly B. Stop.", "every pin", "read", "Roll it out, nobody below. Raise both hoists together", "0.72 m above what dollies roll on (height 1.22 m)", "Then dolly C", "pick hole then at "},
		{"Roll in dolly C", "castors locked", "lower onto it", "above cabinet 7: hinge first, then link, hole C (4°).", "Tied on now: tail.",
			"clear of dolly C. Stop.", "every pin", "read", "Nobody below. Raise both hoists together to trim", "lowest corner 6.20 m", "highest pick hole ", "Read again", "Secondary on: steel bond"},
	} {
		saysInOrder(t, stepsOf(s.Cards[i]), parts...)
	}
	assert.NotContains(t, stepsOf(s.Cards[3]), "Link pins", "cabinet 7 is alone on its dolly")
	assert.NotContains(t, stepsOf(s.Cards[3]), "NOT KNOWN")
	for _, c := range s.Cards[:3] {
		assert.NotContains(t, stepsOf(c), "trim")
		assert.NotContains(t, stepsOf(c), "Secondary")
	}
}

// dayUpReads: how much hangs, which bodies a joint is between, what the aims are
// by the splays from a tilt of 2°, and how to get down again.
func dayUpReads(t *testing.T) (cases int, worst float64) {
	s := liftSheet(day(t))
	for i, c := range []struct {
		says, above, below, last, lastMay, difference string
		down                                          []string
	}{
		{"33 kg", "", "", "", "", "", []string{"lower the bar to the floor", "chains slack", "hooks off"}},
		{"3 of 7 cabinets, 125 kg with bar", "bar", "1", "5.5° down", "4.8° to 6.2° down", "3.0°", []string{"dolly B away", "dolly A back in below", "carries cabinets 1-3;"}},
		{"6 of 7 cabinets, 236 kg with bar", "3", "4", "15.5° down", "14.8° to 16.2° down", "13.0°", []string{"dolly C away", "dolly B back in below", "carries cabinets 4-6;"}},
		{"7 of 7 cabinets, 280 kg with bar", "6", "7", "19.5° down", "18.8° to 20.2° down", "17.0°", []string{"dolly C back in below", "carries cabinets 7;"}},
	} {
		card := s.Cards[i]
		cases++
		assert.Contains(t, strings.Join(card.Says, ", "), c.says)
		saysInOrder(t, card.Notes[len(card.Notes)-1], append([]string{"Down from here: "}, c.down...)...)
		if i == 0 {
			assert.Nil(t, card.Joint)
			assert.Equal(t, layouts.Instrument{Of: "bar", Is: "level", May: "between 0.7° up and 0.7° down"}, card.Reads[2])
			continue
		}
		assert.Equal(t, []string{c.above, c.below}, []string{card.Joint.Above, card.Joint.Below})
		assert.Equal(t, []string{"both cells together", "load cell front", "load cell rear", "cabinet 1 looks", "cabinet " + c.says[:1] + " looks", "difference"}, readNames(card))
		assert.Equal(t, []string{"2.5° down", "1.8° to 3.2° down", c.last, c.lastMay, c.difference}, []string{card.Reads[3].Is, card.Reads[3].May, card.Reads[4].Is, card.Reads[4].May, card.Reads[5].Is})
		assert.Contains(t, card.Notes[0], "Readings assume the bar 2.0° down.")
	}
	assert.Contains(t, s.Cards[1].Notes[1], "To join dolly B: cabinet 3 hangs 5.5° down, that much off level")
	assert.Contains(t, s.Cards[2].Notes[1], "To join dolly C: cabinet 6 hangs 15.5° down, that much off level")
	return cases, 0
}

func readNames(c layouts.Card) (all []string) {
	for _, r := range c.Reads {
		all = append(all, r.Of)
	}
	return all
}

// TestDayDown: the cards of the way down, the lowest dolly first. Dollies roll in
// under 170 + 250 mm. Cabinet 4 has the list for the joint above cabinet 5, and
// cabinet 5 that for the joint above cabinet 6.
func TestDayDown(t *testing.T) {
	s := downSheet(day(t))
	assert.Equal(t, []string{"release dolly C", "release dolly B", "release dolly A"}, momentsOf(s.Cards))
	const room = "0.42 m above what dollies roll on (height 0.92 m)"
	for i, parts := range [][]string{
		{"Weight on the hoist", "read", "secondary comes off: steel bond", "Nobody below. Lower both hoists together: lowest corner " + room, "Roll dolly C in, castors locked", "cabinet 7 stands on dolly C",
			"Stop when dolly C carries cabinet 7 and both hooks read", "above cabinet 7: hinge and link slack", "link pins out, to hole T (0°), locked", "hinge pins out", "both hoists together", "keeps its aim", "Dolly C out."},
		{"Nobody below. Lower both hoists together: lowest corner " + room, "Roll dolly B in, castors locked", "cabinet 6 stands on dolly B", "above cabinet 6", "lowest up", "hole T (0°)",
			"Stop when dolly B carries cabinets 4 to 6 and both hooks read", "above cabinet 4: hinge and link slack", "link pins out, to hole 5, locked", "hinge pins out", "both hoists together", "keeps its aim", "Dolly B out."},
		{"Nobody below. Lower both hoists together: lowest corner " + room, "Roll dolly A in, castors locked", "cabinet 3 stands on dolly A", "Joints above cabinets 2 to 3", "lowest up", "hole 5",
			"Stop when dolly A carries cabinets 1 to 3 and both hooks read", "above cabinet 1: hinge and link slack", "the bar's own holes, locked", "hinge pins out", "Raise the bar", "dolly A out", "Lower the bar", "hooks off"},
	} {
		saysInOrder(t, stepsOf(s.Cards[i]), parts...)
	}
	for _, c := range s.Cards[1:] {
		assert.NotContains(t, stepsOf(c), "secondary", "it is off by then")
	}
}

// dayDownCounts: what is on each dolly, with all that is tied to it, how much of
// the stack still hangs, and the pins that come with it: 2 hinge and 2 link pins of
// a long cabinet's joint, 1 and 2 of a wide one's.
func dayDownCounts(t *testing.T) (cases int, worst float64) {
	for i, c := range []struct {
		says, joint, still, looks string
		hinges, links             string
	}{
		{"cabinet 7, 44 kg in all", "6 7 C", "6 cabinets", "cabinet 6 looks 15.5° down", "1 pin", "2 pins"},
		{"cabinets 4 to 6, 111 kg in all", "3 4 3", "3 cabinets", "cabinet 3 looks 5.5° down", "4 pins", "6 pins"},
		{"cabinets 1 to 3, 92 kg in all", "bar 1 0.5", "", "", "6 pins", "6 pins"},
	} {
		cases++
		card := downSheet(day(t)).Cards[i]
		assert.Equal(t, c.says, strings.Join(card.Says, ", "))
		assert.Equal(t, c.joint, card.Joint.Above+" "+card.Joint.Below+" "+card.Joint.Hole.Label)
		last := len(card.Reads) - 2
		assert.Equal(t, []string{"link pins in", c.links, "hinge pins in", c.hinges}, []string{card.Reads[last].Of, card.Reads[last].Is, card.Reads[last+1].Of, card.Reads[last+1].Is})
		assert.Equal(t, c.still != "", strings.Contains(strings.Join(card.Notes, " "), " hang: "))
		saysInOrder(t, strings.Join(card.Notes, " "), c.still, c.looks)
	}
	return cases, 0
}

// TestDayFacts: what stands above the cards, from the job.
func TestDayFacts(t *testing.T) {
	up, down := liftSheet(day(t)), downSheet(day(t))
	for _, says := range []string{up.Says[0], down.Says[0]} {
		assert.Contains(t, says, "above the hoist (motor): what it reads counts the hoist, all of its chain and the rigging below")
		assert.Contains(t, says, "dollies roll 0.50 m above it")
	}
	stop := strings.Join(up.Stop, " ")
	assert.Regexp(t, `^Reads outside 'may read'\? Stop, `, stop)
	assert.Contains(t, stop, "masses 4 % more or less, the bar 0.7° off its tilt, and at least 3 kg either way; of aims 0.7° either way")
	assert.NotContains(t, up.Says[0], "steered by", "two hooks keep it from turning")

	one := day(t, "picks: 2, hoist: {front: slow, rear: fast}, front_hole: 2, rear_hole: 40, load_cell: above_hoist", "picks: 1, hoist: slow, load_cell: below_hoist",
		"{front: {mass: 3 kg, length: 150 mm}, rear: {mass: 5 kg, length: 150 mm}}", "{mass: 3 kg, length: 150 mm}", "floor: 0.5 m", "floor: -0.5 m")
	assert.Contains(t, liftSheet(one).Says[0], "below the hoist (motor): what it reads counts the rigging below it and neither hoist nor chain")
	assert.Contains(t, liftSheet(one).Says[0], "dollies roll 0.50 m below it")
	assert.Contains(t, liftSheet(one).Says[0], "steered by: ____")
	assert.NotContains(t, strings.Join(liftSheet(one).Stop, " "), "off its tilt")
	assert.Contains(t, liftSheet(day(t, ", load_cell: above_hoist", "")).Says[0], "does not say where a load cell hangs: readings are of one below the hoist")
	assert.Contains(t, liftSheet(day(t, "    floor: 0.5 m\n", "")).Says[0], "the floor, which is the floor that dollies roll on")
}

// TestDayStops: wherever a crew reads something going up it stops before, and
// wherever something is raised or lowered far nobody is below.
func TestDayStops(t *testing.T) {
	raises := regexp.MustCompile(`(nobody|Nobody) below\. (Raise|Lower) both`)
	h, n := day(t), 0
	for _, c := range append(liftSheet(h).Cards[1:], downSheet(h).Cards...) {
		for _, d := range c.Steps {
			if strings.Contains(d.Says, "together to trim") || strings.Contains(d.Says, "together: lowest") {
				assert.Regexp(t, raises, d.Says)
				assert.True(t, d.Strong, d.Says)
				n++
			}
		}
	}
	assert.Equal(t, 6, n)
}
