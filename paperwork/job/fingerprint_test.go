package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func fingerprintOf(t *testing.T, text string) string {
	t.Helper()
	j, complaints := readText(text)
	require.Empty(t, complaints)
	return j.Fingerprint
}

func TestFingerprintIsBlindTo(t *testing.T) {
	want := fingerprintOf(t, least)
	for name, pairs := range map[string][]string{
		"comments":        {"aim: level", "aim: level   # as the designer asks"},
		"order of keys":   {"mass: 20 kg\n      width: 560 mm", "width: 560 mm\n      mass: 20 kg"},
		"other units":     {"width: 560 mm", "width: 0.560 m", "mass: 20 kg", "mass: 0.02 t"},
		"mass or force":   {"capacity: 250 kg", "capacity: 2451.6625 N"},
		"feet and inches": {"lowest: 5 m", "lowest: 5.0 m", "330 mm", "33 cm"},
		"quotes":          {"revision: 1", `revision: "1"`},
		"style":           {"{type: box, count: 2, splay: [0, 1]}", "{splay: [0.0,\n        1], count: 2, type: box}"},
		"level or nought": {"aim: level", "aim: -0 deg up"},
		"sign of nought":  {"stage_left: 0", "stage_left: -0 mm"},
	} {
		assert.Equal(t, want, fingerprintOf(t, with(t, least, pairs...)), name)
	}
	none := with(t, least, "aim: level", "aim: level\n    rigging_below: 0")
	assert.Equal(t, fingerprintOf(t, none), fingerprintOf(t, with(t, none, "rigging_below: 0", "rigging_below: -0.0")))
	for kg, n := range map[string]string{"1023 kg": "10032.20295 N", "1411 kg": "13837.18315 N", "2.071 t": "20309.57215 N"} { // half way between two of nine digits
		loaded := with(t, least, "250 kg", kg)
		assert.Equal(t, fingerprintOf(t, loaded), fingerprintOf(t, with(t, loaded, kg, n)), kg)
	}
	feet := with(t, least, "lowest: 5 m", "lowest: 14 ft 6 in")
	assert.Equal(t, fingerprintOf(t, feet), fingerprintOf(t, with(t, feet, "14 ft 6 in", "4.4196 m")))
}

// drape is another point of a job.
const drape = "other_points:\n  - {id: D1, place: {stage_left: 1 m, upstage: 2 m}, height: 9 m, mass: 40 kg, what: drape}\n"

func TestFingerprintSees(t *testing.T) {
	seen := map[string]string{fingerprintOf(t, least): "the job as it is"}
	for name, pairs := range map[string][]string{
		"a quantity":              {"mass: 20 kg", "mass: 20.001 kg"},
		"a text":                  {"title: Least", "title: Leest"},
		"a way":                   {"aim: level", "aim: 1 deg down"},
		"the other way":           {"aim: level", "aim: 1 deg up"},
		"a splay":                 {"splay: [0, 1]", "splay: [0, 0]"},
		"a label as stamped":      {"splay_holes: [0, 1]", "splay_holes: [0, 1.0]"},
		"the order of a list":     {"splay_holes: [0, 1]", "splay_holes: [1, 0]"},
		"a name of gear":          {"box:", "bax:", "type: box", "type: bax"},
		"a default that is given": {"aim: level", "aim: level\n    floor: 0 m"},
		"a nought for a section":  {"aim: level", "aim: level\n    rigging_below: 0"},
		"a nought for another":    {"aim: level", "aim: level\n    rigging_above: 0"},
		"a class of hoist":        {"headroom: 420 mm", "headroom: 420 mm, class: not over people"},
		"another class":           {"headroom: 420 mm", "headroom: 420 mm, class: over people"},
		"a secondary":             {"aim: level", "aim: level\n    secondary: {what: bond, rating: 1 t}"},
		"what a secondary is":     {"aim: level", "aim: level\n    secondary: {what: bend, rating: 1 t}"},
		"the rating of it":        {"aim: level", "aim: level\n    secondary: {what: bond, rating: 2 t}"},
		"another point":           {"stacks:", drape + "stacks:"},
		"where it is":             {"stacks:", with(t, drape, "upstage: 2 m", "downstage: 2 m") + "stacks:"},
		"how high it is":          {"stacks:", with(t, drape, "9 m", "9.1 m") + "stacks:"},
		"its mass":                {"stacks:", with(t, drape, "40 kg", "41 kg") + "stacks:"},
		"its id":                  {"stacks:", with(t, drape, "D1", "D2") + "stacks:"},
		"what it is":              {"stacks:", with(t, drape, "what: drape", "what: drope") + "stacks:"},
		"a switch":                {"link_arm: 280 mm", "link_arm: 280 mm\n      link_pushes: yes"},
	} {
		f := fingerprintOf(t, with(t, least, pairs...))
		assert.NotContains(t, seen, f, "%s and %s", name, seen[f])
		seen[f] = name
	}
}
