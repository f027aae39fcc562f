package job

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// least is a job that gives nothing with a default.
const least = `
job: {title: Least, venue: Barn, date: 2027-01-31, revision: 1}
gear:
  cabinets:
    box:
      mass: 20 kg
      width: 560 mm
      depth: 330 mm
      front_height: 230 mm
      back_height: 188 mm
      centre_of_gravity: {behind_hinge: 150 mm, below_hinge: 115 mm}
      link_arm: 280 mm
      splay_holes: [0, 1]
  bars:
    rail:
      mass: 14 kg
      centre_of_gravity: {behind_hinge: 170 mm, above_hinge: 55 mm}
      pick_holes: [{label: A, behind_hinge: 150 mm, above_hinge: 80 mm}]
  hoists:
    lift: {capacity: 250 kg, mass: 24 kg, chain_mass: 0.6 kg/m, chain_length: 18 m, headroom: 420 mm}
stacks:
  - id: A
    place: {stage_left: 0, downstage: 0}
    bar: rail
    cabinets: [{type: box, count: 2, splay: [0, 1]}]
    aim: level
    hang: {picks: 1, hoist: lift}
    trim: {lowest: 5 m}
`

// TestDefaults checks each default.
func TestDefaults(t *testing.T) {
	j, complaints := readText(least)
	require.Empty(t, complaints)
	assert.Equal(t, "the floor", j.HeightsFrom)
	assert.False(t, j.Letter)
	assert.False(t, j.Imperial)
	assert.Empty(t, j.PreparedBy+j.Contact+j.Datum+j.URL)

	p := j.Practice
	assert.Equal(t, 20.0, p.ReadingFloor)
	for want, got := range map[float64]float64{0.05: p.MassTolerance, 1.25: p.DynamicFactor, 0.6: p.SideShare, 0.1: p.LeastShare,
		1 * rad: p.AimTolerance, 15 * rad: p.LiftTilt} {
		assert.InDelta(t, want, got, 1e-12)
	}
	assert.Equal(t, []float64{1, 1}, []float64{p.HoistUse, p.GearUse})
	assert.Equal(t, []float64{0.3, 0.3}, []float64{p.Clearance, p.LimitReserve})

	s := j.Stacks[0]
	assert.Equal(t, "A", s.Name)
	assert.Equal(t, []string{"", ""}, []string{string(s.Shape), string(s.PinsSet)})
	assert.Zero(t, s.Pan)
	assert.Zero(t, s.Floor)
	assert.Nil(t, s.Dolly)
	assert.Empty(t, s.Extras)
	assert.Equal(t, Sets{2}, s.Sets)
	assert.Equal(t, 0.28, s.LinkArm)
	assert.Equal(t, Auto, s.Picks[0].Hole)
	assert.Nil(t, s.Picks[0].Steel)
	assert.Equal(t, Rigging{}, s.Picks[0].Below)
	assert.Equal(t, Rigging{}, s.Picks[0].Above)
	assert.Equal(t, 1, s.Picks[0].Hoist.Falls)
	assert.Empty(t, s.Picks[0].Hoist.Class)
	assert.Nil(t, s.Secondary)
	assert.Nil(t, j.OtherPoints)

	c := s.Cabinets[0].Cabinet
	assert.Equal(t, "box", c.Name)
	assert.Zero(t, c.HingeBehindFront)
	assert.Zero(t, c.HingeBelowTop)
	assert.Equal(t, 0.23, c.HingePitch)
	assert.False(t, c.HolesForJointAbove)
	assert.Nil(t, c.Transport)
	assert.Equal(t, []int{2, 2}, []int{c.HingePins, c.LinkPins})
	assert.Nil(t, c.PinRatings)
	assert.False(t, c.LinkPushes)

	b := s.Bar
	assert.Equal(t, []Hole{{"0", 0}}, b.Holes)
	assert.Equal(t, []float64{0, 0, 0}, []float64{b.LinkArm, b.Rating, b.PickRating})
	assert.Nil(t, b.Most)
	assert.Nil(t, b.TiltLimit)
	assert.Nil(t, b.PinRatings)
}

func TestLongestTextsAreAccepted(t *testing.T) {
	j, complaints := readText(with(t, least, "title: Least", "title: "+strings.Repeat("é", 72)))
	require.Empty(t, complaints)
	assert.Len(t, []rune(j.Title), 72)
}

func TestTooLarge(t *testing.T) {
	j, complaints := readText(least + strings.Repeat("# padding\n", 110_000))
	assert.Nil(t, j)
	assert.Equal(t, "job.yaml:1:1: the file is larger than 1 MiB; it should be a few pages of text", complaints.Error())
	_, complaints = readText(least + strings.Repeat("#", sizeMost-len(least)))
	assert.Empty(t, complaints, "1 MiB itself is read")
}

func TestComplaintsStandInOrder(t *testing.T) {
	_, complaints := readText(with(t, least, "mass: 20 kg", "mass: 20", "aim: level", "aim: 5", "bar: rail", "bar: ", "id: A", "id: a", "venue: Barn", "venue: ~"))
	var places []string
	for _, c := range complaints {
		places = append(places, fmt.Sprintf("%d %s", c.Line, c.Key))
	}
	assert.Equal(t, []string{"2 job.venue", "6 gear.cabinets.box.mass", "22 stacks[0].id", "24 stacks[0].bar", "26 stacks[0].aim"}, places)
	assert.Equal(t, complaints[0].Error(), complaints[0].String())
}

// with returns a text with some parts, each of which stands in it once or
// more, replaced.
func with(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		require.Contains(t, text, pairs[i])
	}
	return strings.NewReplacer(pairs...).Replace(text)
}
