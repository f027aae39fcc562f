package job

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func anything(rune) bool { return true }

func example(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "examples", name))
	require.NoError(t, err)
	return string(text)
}

// TestExamplesWhateverTheFont: every example is clean in any font.
func TestExamplesWhateverTheFont(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.yaml"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 4)
	for _, name := range files {
		f, err := os.Open(name)
		require.NoError(t, err)
		defer f.Close()
		j, complaints := Read(name, f, fromDisk, anything)
		assert.Empty(t, complaints, name)
		assert.NotNil(t, j, name)
	}
}

// TestConcertInSI holds what concert.yaml says of gear against its value in
// SI, worked out by hand: 1 kg hangs with 9.80665 N.
func TestConcertInSI(t *testing.T) {
	j, complaints := readText(example(t, "concert.yaml"))
	require.Empty(t, complaints)
	require.Len(t, j.Stacks, 2)
	s := j.Stacks[0]
	c, pick := s.Cabinets[0].Cabinet, s.Picks[0]
	for _, tt := range []struct {
		what      string
		want, got float64
	}{
		{"width: 780 mm", 0.78, c.Width},
		{"depth: 420 mm", 0.42, c.Depth},
		{"front_height: 290 mm", 0.29, c.FrontHeight},
		{"back_height: 225 mm", 0.225, c.BackHeight},
		{"hinge_pitch: 290 mm", 0.29, c.HingePitch},
		{"hinge_below_top, not given", 0, c.HingeBelowTop},
		{"behind_hinge: 190 mm", 0.19, c.CentreOfGravity.Behind},
		{"below_hinge: 145 mm", 0.145, c.CentreOfGravity.Below},
		{"link_arm: 370 mm", 0.37, c.LinkArm},
		{"link pin: 4.5 kN", 4500, c.PinRatings.Link},
		{"bar mass: 28 kg", 28, s.Bar.Mass},
		{"bar behind_hinge: 260 mm", 0.26, s.Bar.CentreOfGravity.Behind},
		{"bar rating: 750 kg", 7354.9875, s.Bar.Rating},
		{"tilt down: 15 deg", 0.2617993877991494, s.Bar.TiltLimit.Down},
		{"first pick hole, ahead_of_hinge: 60 mm", -0.06, s.Bar.PickHoles[0].At.Behind},
		{"dolly mass: 24 kg", 24, s.Dolly.Mass},
		{"deck_height: 180 mm", 0.18, s.Dolly.DeckHeight},
		{"dolly takes 4", 4, float64(s.Dolly.Takes)},
		{"capacity: 500 kg", 4903.325, pick.Hoist.Capacity},
		{"hoist mass: 38 kg", 38, pick.Hoist.Mass},
		{"chain_mass: 0.9 kg/m", 0.9, pick.Hoist.ChainMass},
		{"chain_length: 24 m", 24, pick.Hoist.ChainLength},
		{"headroom: 500 mm", 0.5, pick.Hoist.Headroom},
		{"stage_left: 8.2 m", 8.2, s.StageLeft},
		{"pan: 6 deg stage_left", 0.10471975511965977, s.Pan},
		{"aim: 1 deg down", 0.017453292519943295, s.Aim},
		{"rigging_above mass: 6 kg", 6, pick.Above.Mass},
		{"rigging_above length: 400 mm", 0.4, pick.Above.Length},
	} {
		assert.InDelta(t, tt.want, tt.got, 1e-12*max(1, tt.want), tt.what)
	}
}
