package job

import (
	"math"
	"os"
	"path/filepath"
	"testing"

	"hangpack/calc"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const rad = math.Pi / 180

func TestConcert(t *testing.T) {
	f, err := os.Open(filepath.Join("..", "..", "examples", "concert.yaml"))
	require.NoError(t, err)
	defer f.Close()
	j, complaints := Read("concert.yaml", f, fromDisk, latin)
	require.Empty(t, complaints)
	assert.Equal(t, "Lantern Quay summer concert", j.Title)
	assert.Equal(t, "2027-06-12", j.Date)
	assert.Equal(t, "B", j.Revision)
	assert.Equal(t, "arena floor", j.HeightsFrom)
	assert.Regexp(t, `^[0-9a-f]{8}$`, j.Fingerprint)
	require.Len(t, j.Stacks, 2)

	s := j.Stacks[1]
	assert.Equal(t, "SR", s.ID)
	assert.Equal(t, Shape("circle"), s.Shape)
	assert.Equal(t, OnDolly, s.PinsSet)
	assert.InDelta(t, -8.2, s.StageLeft, 1e-12)
	assert.InDelta(t, 0.6, s.Downstage, 1e-12)
	assert.InDelta(t, -6*rad, s.Pan, 1e-12)
	assert.InDelta(t, 1*rad, s.Aim, 1e-12)
	assert.Equal(t, Trim{Height: 4.5}, s.Trim)
	assert.Equal(t, Sets{4, 4}, s.Sets, "sets fill from the top")
	assert.InDelta(t, 0.37, s.LinkArm, 1e-12)

	require.Len(t, s.Cabinets, 8)
	assert.Equal(t, []Hole{{"0", 0}}, s.Cabinets[0].Joint, "a bar without a list allows 0 only")
	assert.Equal(t, Hole{"0.5", 0.5}, s.Cabinets[1].Hole)
	assert.Len(t, s.Cabinets[1].Joint, 9)
	assert.Equal(t, Hole{"4", 4}, s.Cabinets[7].Hole)

	c := s.Cabinets[0].Cabinet
	assert.InDelta(t, 32.5, c.Mass, 1e-12)
	assert.InDelta(t, 0.018, c.HingeBehindFront, 1e-12)
	assert.Equal(t, &Hole{"0", 0}, c.Transport)
	assert.InDelta(t, 6000, c.PinRatings.Hinge, 1e-9)

	assert.InDelta(t, 750*9.80665, s.Bar.Rating, 1e-9)
	assert.Zero(t, s.Bar.PickRating)
	assert.Equal(t, []Most{{"big-cabinet", 12}}, s.Bar.Most)
	assert.InDelta(t, 8*rad, s.Bar.TiltLimit.Up, 1e-12)
	assert.InDelta(t, -0.07, s.Bar.CentreOfGravity.Below, 1e-12)
	require.Len(t, s.Bar.PickHoles, 41)
	last := s.Bar.PickHoles[40]
	assert.Equal(t, "41", last.Label)
	assert.True(t, last.Number)
	assert.InDelta(t, -0.060+40*0.015, last.At.Behind, 1e-12)
	assert.InDelta(t, -0.095, last.At.Below, 1e-12)

	require.Len(t, s.Picks, 1)
	assert.Equal(t, Auto, s.Picks[0].Hole)
	assert.InDelta(t, 500*9.80665, s.Picks[0].Hoist.Capacity, 1e-9)
	assert.Equal(t, 1, s.Picks[0].Hoist.Falls)
	assert.InDelta(t, 14, *s.Picks[0].Steel, 1e-12)
	assert.Equal(t, Rigging{3, 0.15}, s.Picks[0].Below)
	assert.Equal(t, []Extra{{"cable loom", 12, 0, calc.Offset{Behind: 0.43}}}, s.Extras)
}

func TestExamplesAreClean(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.yaml"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		f, err := os.Open(file)
		require.NoError(t, err)
		_, complaints := Read(file, f, fromDisk, latin)
		f.Close()
		assert.Empty(t, complaints, file)
	}
}

func TestTwoPicks(t *testing.T) {
	j, complaints := readText(base(t))
	require.Empty(t, complaints)
	s := j.Stacks[1]
	assert.InDelta(t, -8.2, s.StageLeft, 1e-12)
	assert.InDelta(t, -0.6096, s.Downstage, 1e-12)
	assert.InDelta(t, -2.5*rad, s.Aim, 1e-12)
	assert.True(t, s.Trim.OfPick)
	assert.InDelta(t, 433*0.0254, s.Trim.Height, 1e-12)
	assert.Equal(t, Sets{2}, s.Sets, "with neither dolly nor sets: one set")
	assert.InDelta(t, 0.37, s.LinkArm, 1e-12, "the first cabinet's")

	front, rear := s.Picks[0], s.Picks[1]
	assert.Equal(t, []int{0, 2}, []int{front.Hole, rear.Hole})
	assert.Equal(t, []string{"half-tonne", "one-tonne"}, []string{front.Hoist.Key, rear.Hoist.Key})
	assert.InDelta(t, 9800, rear.Hoist.Capacity, 1e-9)
	assert.InDelta(t, 13.5, *rear.Steel, 1e-12)
	assert.Equal(t, []Rigging{{3, 0.15}, {3, 0.15}}, []Rigging{front.Below, rear.Below})
	assert.Equal(t, []Rigging{{6, 0.4}, {0, 1}}, []Rigging{front.Above, rear.Above})
	assert.True(t, s.Bar.PickHoles[0].Number)
	assert.False(t, s.Bar.PickHoles[1].Number)

	c := s.Cabinets[0].Cabinet
	assert.Equal(t, "down-cabinet", c.Name)
	assert.InDelta(t, 16.5*0.0254, c.Depth, 1e-12)
	assert.InDelta(t, 0.19, c.CentreOfGravity.Behind, 1e-12)
	assert.Equal(t, Hole{"B", 5}, s.Cabinets[1].Hole)

	first := j.Stacks[0]
	assert.Equal(t, 21, first.Picks[0].Hole, "pick hole 22")
	assert.Equal(t, Sets{4, 2}, first.Sets)
	assert.Equal(t, 6, first.Extras[1].Cabinet)
}

// TestMeasuredFromTheFront: behind_hinge = behind_front - hinge_behind_front,
// below_hinge = below_top - hinge_below_top.
func TestMeasuredFromTheFront(t *testing.T) {
	j, complaints := readText(with(t, base(t),
		"    down-cabinet:\n", "    down-cabinet:\n      hinge_behind_front: 24 mm\n      hinge_below_top: 4 mm\n"))
	require.Empty(t, complaints)
	at := j.Stacks[1].Cabinets[0].CentreOfGravity
	assert.InDelta(t, 0.166, at.Behind, 1e-12)
	assert.InDelta(t, 0.141, at.Below, 1e-12)
}

// TestJointAbove: a cabinet whose list is for the joint above brings it.
func TestJointAbove(t *testing.T) {
	j, complaints := readText(with(t, base(t),
		"      splay_holes:\n", "      splay_holes_for: joint_above\n      splay_holes:\n",
		"splay: [2, 5]}", "splay: [5, 7.5]}"))
	require.Empty(t, complaints)
	s := j.Stacks[0]
	assert.Equal(t, Hole{"B", 5}, s.Cabinets[4].Hole)
	assert.Equal(t, Hole{"C", 7.5}, s.Cabinets[5].Hole)
	assert.Len(t, j.Stacks[1].Cabinets[0].Joint, 3, "even below a bar")
}

// TestLabels: a label is a number when it is written as one, unquoted.
func TestLabels(t *testing.T) {
	for label, number := range map[string]bool{"7": true, `"7"`: false, "07": false, "7.5": true, "7.0": false, "-0": false, "C4": false, "-3": true} {
		j, complaints := readText(with(t, base(t), "label: F2", "label: "+label))
		require.Empty(t, complaints, label)
		assert.Equal(t, number, j.Stacks[1].Bar.PickHoles[1].Number, label)
	}
}

// TestTransport: by label or by degrees, where only one hole is meant by either.
func TestTransport(t *testing.T) {
	labels := "        - {label: A, splay: 0}\n        - {label: B, splay: 5}\n"
	others := "        - {label: 4, splay: 0}\n        - {label: B, splay: 5}\n        - {label: 6, splay: 6}\n"
	for transport, want := range map[string]Hole{"4": {"4", 0}, "0": {"4", 0}, "B": {"B", 5}, "5": {"B", 5}, "6": {"6", 6}, "7.50": {"C", 7.5}} {
		j, complaints := readText(with(t, base(t), labels, others, "    down-cabinet:\n", "    down-cabinet:\n      transport: "+transport+"\n"))
		require.Empty(t, complaints)
		assert.Equal(t, &want, j.Stacks[1].Cabinets[0].Transport)
	}
}

// TestAddresses: an address ends with the fragment of a page or with none.
func TestAddresses(t *testing.T) {
	for url, right := range map[string]bool{
		"https://x.example/a.pdf": true, "https://x.example/a.pdf#page={page}": true, "https://x.example/{stack}/{page}": true, "https://x.example/a%23b.pdf": true,
		"https://x.example/a.pdf#": false, "https://x.example/a.pdf#{stack}": false, "https://x.example/a.pdf#page={page}&zoom=80": false,
		"https://x.example/a.pdf#page=4": false, "https://x.example/#a?b#page={page}": false,
	} {
		assert.Equal(t, right, urlWrong(url) == "", url)
	}
}

// TestLabelsThatLookAlike: each pair of letter and figure is one label too many in a list
// of pick holes, and in two lists none.
func TestLabelsThatLookAlike(t *testing.T) {
	for _, pair := range []string{"O0", "I1", "S5", "B8", "Z2"} {
		_, complaints := readText(with(t, base(t), "label: F2", "label: F"+pair[:1], "label: 3", "label: F"+pair[1:], "rear_hole: 3", "rear_hole: F"+pair[1:]))
		require.Len(t, complaints, 1, pair)
		assert.Contains(t, complaints[0].Message, "reads like \"F"+pair[:1]+"\" on line 57", pair)
		_, complaints = readText(with(t, base(t), "label: F2", "label: F"+pair[:1], "label: C, splay", "label: F"+pair[1:]+", splay"))
		assert.Empty(t, complaints, "%s: in two lists", pair)
	}
}

// TestOrderAsTheBarHangs: hole 4 is 1 mm behind hole 3 and 220 mm above it, so
// with the bar's front up by 1 deg it hangs cos 1 + 220 sin 1 = 4.8 mm behind.
// The bar's tilt is the aim less the first splay: 1 deg - 2 deg.
func TestOrderAsTheBarHangs(t *testing.T) {
	_, complaints := readText(with(t, base(t),
		"      mass: 20 kg\n", "      mass: 20 kg\n      splay_holes: [0, 2]\n",
		"splay: [0, 5]}", "splay: [2, 5]}", "aim: 2.5 deg up", "aim: 1 deg down",
		"front_hole: 1, rear_hole: 3", "front_hole: 3, rear_hole: 4"))
	assert.Empty(t, complaints)
}

func TestOtherPoints(t *testing.T) {
	j, complaints := readText(base(t))
	require.Empty(t, complaints)
	assert.Equal(t, []OtherPoint{
		{ID: "CABLE1", What: "cable pick for SL", StageLeft: 13, Downstage: -3.5, Height: 11, Mass: 85},
		{ID: "DRAPE", What: "drape line", StageLeft: -4, Height: 30 * 0.3048},
	}, j.OtherPoints)
	assert.Equal(t, &Secondary{"steel bond to the grid", 2000 * 9.80665}, j.Stacks[1].Secondary)
	assert.Nil(t, j.Stacks[0].Secondary)
	assert.Equal(t, "not over people", j.Stacks[1].Picks[1].Hoist.Class)
	assert.Empty(t, j.Stacks[1].Picks[0].Hoist.Class)

	j, complaints = readText(least + "other_points: []\n")
	require.Empty(t, complaints)
	assert.Nil(t, j.OtherPoints)
}

// TestIDsInTheOrderOfTheFile: the second of two is at fault, also where the
// other points come first.
func TestIDsInTheOrderOfTheFile(t *testing.T) {
	_, complaints := readText(with(t, least, "stacks:", with(t, drape, "D1", "A")+"stacks:"))
	assert.Equal(t, `job.yaml:24:9: "A" stands here again; it is already on line 22`, complaints.Error())
}

// TestNoRigging: 0 stands for none, also at one of two ends.
func TestNoRigging(t *testing.T) {
	j, complaints := readText(with(t, base(t),
		"    rigging_below: {mass: 3 kg, length: 150 mm}\n", "    rigging_below: 0\n", "rear: {length: 1 m}}\n", "rear: 0}\n",
		"    extras:\n", "    rigging_above: 0.0\n    extras:\n"))
	require.Empty(t, complaints)
	assert.Equal(t, Rigging{}, j.Stacks[0].Picks[0].Above)
	front, rear := j.Stacks[1].Picks[0], j.Stacks[1].Picks[1]
	assert.Equal(t, []Rigging{{}, {}}, []Rigging{front.Below, rear.Below})
	assert.Equal(t, []Rigging{{6, 0.4}, {}}, []Rigging{front.Above, rear.Above})
}

// TestOneHoleHasNoSpacing: a spacing is required of more than one hole.
func TestOneHoleHasNoSpacing(t *testing.T) {
	for _, spacing := range []string{"", ", spacing: 5 m"} {
		j, complaints := readText(with(t, least, "[{label: A, behind_hinge: 150 mm, above_hinge: 80 mm}]",
			"{count: 1, behind_hinge: 150 mm, above_hinge: 80 mm"+spacing+"}"))
		require.Empty(t, complaints, spacing)
		assert.Equal(t, []PickHole{{"1", true, calc.Offset{Behind: 0.15, Below: -0.08}}}, j.Stacks[0].Bar.PickHoles)
	}
}

// A centre of gravity that is not known is taken in the middle of the outline, seen
// from the hinge.
func TestCentreNotKnown(t *testing.T) {
	known := "centre_of_gravity: {behind_hinge: 190 mm, below_hinge: 145 mm}\n      link_arm"
	text := with(t, base(t), known, "centre_of_gravity: not_known\n      hinge_below_top: 6 mm\n      link_arm")
	j, complaints := readText(text)
	require.Empty(t, complaints)
	c := j.Stacks[0].Cabinets[0]
	assert.True(t, c.CentreUnknown)
	assert.InDelta(t, 0.420/2-0.018, c.CentreOfGravity.Behind, 1e-12)
	assert.InDelta(t, 0.290/2-0.006, c.CentreOfGravity.Below, 1e-12)
	plain, _ := readText(base(t))
	assert.False(t, plain.Stacks[0].Cabinets[0].CentreUnknown)
	assert.NotEqual(t, plain.Fingerprint, j.Fingerprint)
}
