package job

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"gopkg.in/yaml.v3"
)

func TestKeysAreWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range Keys() {
		assert.False(t, seen[k.Path], "%s stands twice", k.Path)
		seen[k.Path] = true
		assert.NotEmpty(t, k.Meaning, k.Path)
		assert.NotContains(t, k.Meaning, "\n", k.Path)
		if k.Kind.numeric() {
			assert.Less(t, k.Min, k.Max, k.Path)
		}
		assert.Equal(t, k.Default != "" || k.Kind == Section, k.Need >= Defaulted || k.Kind == Section, k.Path)
	}
}

// TestRanges holds the table against the ranges that a job may give, and
// those chosen where it is silent.
func TestRanges(t *testing.T) {
	want := map[string]string{
		"gear.cabinets.*.mass":               "1 kg to 500 kg",
		"gear.bars.*.mass":                   "1 kg to 2000 kg",
		"gear.dollies.*.mass":                "0 to 5000 kg",
		"gear.hoists.*.mass":                 "0 to 5000 kg",
		"stacks[].extras[].mass":             "0 to 5000 kg",
		"stacks[].rigging_below.mass":        "0 to 5000 kg",
		"practice.reading_floor":             "0 to 100 kg",
		"gear.cabinets.*.width":              "5 mm to 5 m",
		"gear.cabinets.*.hinge_pitch":        "5 mm to 5 m",
		"gear.bars.*.pick_holes.spacing":     "5 mm to 5 m",
		"gear.dollies.*.deck_height":         "5 mm to 5 m",
		"gear.hoists.*.headroom":             "5 mm to 5 m",
		"gear.cabinets.*.hinge_behind_front": "-5 m to 5 m",
		"stacks[].extras[].below_hinge":      "-5 m to 5 m",
		"gear.cabinets.*.link_arm":           "20 mm to 3 m",
		"gear.bars.*.link_arm":               "20 mm to 3 m",
		"gear.cabinets.*.splay_holes[]":      "0 to 30",
		"stacks[].cabinets[].splay[]":        "0 to 30",
		"stacks[].aim":                       "within 60 deg of level",
		"stacks[].place.pan":                 "within 180 deg either way",
		"stacks[].cabinets[].count":          "1 to 40",
		"gear.bars.*.pick_holes":             "1 to 200",
		"gear.bars.*.pick_holes.count":       "1 to 200",
		"gear.hoists.*.capacity":             "above 0, at most 1000 kN",
		"gear.bars.*.rating":                 "above 0, at most 1000 kN",
		"gear.cabinets.*.pin_ratings.link":   "above 0, at most 1000 kN",
		"stacks[].trim.lowest":               "-20 m to 200 m",
		"stacks[].steel":                     "-20 m to 200 m",
		"stacks[].floor":                     "-20 m to 200 m",
		"stacks[].place.stage_left":          "-500 m to 500 m",
		"gear.hoists.*.chain_length":         "above 0, at most 200 m",
		"practice.dynamic_factor":            "1 to 3",
		"practice.mass_tolerance":            "0 to 30 %",
		"practice.hoist_use":                 "above 0, at most 100 %",
		"practice.gear_use":                  "above 0, at most 100 %",
		"practice.side_share":                "50 % to 100 %",
		"stacks":                             "1 to 60",
		"stacks[].secondary.rating":          "above 0, at most 1000 kN",
		"other_points":                       "0 to 60",
		"other_points[].place.upstage":       "-500 m to 500 m",
		"other_points[].height":              "-20 m to 200 m",
		"other_points[].mass":                "0 to 5000 kg",
		// Limits of the reader alone:
		"practice.least_share":          "0 to 50 %",
		"practice.aim_tolerance":        "0 to 30 deg",
		"practice.lift_tilt":            "0 to 90 deg",
		"practice.clearance":            "0 to 5 m",
		"practice.limit_reserve":        "0 to 5 m",
		"gear.bars.*.tilt_limit.up":     "0 to 90 deg",
		"gear.bars.*.most.*":            "0 to 1000",
		"gear.dollies.*.takes":          "1 to 40",
		"gear.hoists.*.falls":           "1 to 8",
		"gear.hoists.*.speed":           "0.1 m/min to 60 m/min",
		"gear.hoists.*.chain_mass":      "0 to 100 kg/m",
		"gear.cabinets.*.splay_holes":   "1 to 60",
		"stacks[].rigging_above.length": "0 to 200 m",
		"stacks[].extras":               "0 to 200",
	}
	for _, k := range Keys() {
		if w, ok := want[k.Path]; ok {
			assert.Equal(t, w, k.Range(), k.Path)
			delete(want, k.Path)
		}
	}
	assert.Empty(t, want, "these keys are not in the table")
}

// TestEdges puts the edge of every range of the table into a job, and what
// lies just beyond it.
func TestEdges(t *testing.T) {
	text := base(t)
	for _, k := range Keys() {
		for _, in := range edges(k, 0) {
			assert.Zero(t, outOfRange(t, text, k.Path, in), "%s: %.99s", k.Path, in)
		}
		for _, out := range edges(k, 1) {
			assert.Equal(t, 1, outOfRange(t, text, k.Path, out), "%s: %.99s", k.Path, out)
		}
	}
}

// outOfRange counts the complaints of a value's range or length.
func outOfRange(t *testing.T, text, path, value string) (n int) {
	for _, c := range complaintsOf(t, text, path, value) {
		if strings.Contains(c.Message, "out of range") || strings.Contains(c.Message, "too many") || !strings.HasPrefix(c.Message, "count") && strings.Contains(c.Message, " lists ") {
			n++
		}
	}
	return n
}

// edges returns the values at the edges of a key's range, or by a step beyond
// them.
func edges(k Key, beyond float64) []string {
	unit, per, step := map[Kind]string{
		Length: "m", Mass: "kg", Load: "N", MassPerLength: "kg/m", Angle: "deg", Percent: "%", Aim: "deg down", Pan: "deg stage_left", Speed: "m/s",
	}[k.Kind], 1.0, 0.001
	switch k.Kind {
	case Angle, Aim, Pan:
		per = math.Pi / 180
	case Percent:
		per = 0.01
	case Count:
		step = 1
	case Text:
		return []string{strings.Repeat("x", int(k.Max+beyond))}
	case List:
		return []string{"[" + strings.TrimSuffix(strings.Repeat("0, ", int(k.Max+beyond)), ", ") + "]"}
	}
	if !k.Kind.numeric() {
		return nil
	}
	write := func(x float64) string {
		return strings.TrimSpace(strconv.FormatFloat(math.Round(x*1e6)/1e6, 'f', -1, 64) + " " + unit)
	}
	low := k.Min/per - step*beyond
	if k.Above {
		low = k.Min/per + step*(1-beyond)
	}
	return []string{write(low), write(k.Max/per + step*beyond)}
}

// put puts a value at a path of the table, into the first of names and items,
// and returns its path in the job.
func put(t *testing.T, n *yaml.Node, path, value string) string {
	key := ""
	for _, part := range strings.Split(path, ".") {
		name := strings.TrimSuffix(part, "[]")
		if name == "*" {
			name = n.Content[0].Value
		}
		n, key = child(n, name), join(key, name)
		if strings.HasSuffix(part, "[]") {
			if n.Kind != yaml.SequenceNode {
				*n = yaml.Node{Kind: yaml.SequenceNode, Line: 1, Column: 1, Content: []*yaml.Node{{Kind: yaml.MappingNode, Line: 1, Column: 1}}}
			}
			n, key = n.Content[0], key+"[0]"
		}
	}
	*n = *parsed(t, value).Content[0]
	return key
}

// child returns the value of a key, made if it is not there.
func child(n *yaml.Node, name string) *yaml.Node {
	if n.Kind != yaml.MappingNode {
		*n = yaml.Node{Kind: yaml.MappingNode, Line: 1, Column: 1}
	}
	for i := 0; i < len(n.Content); i += 2 {
		if n.Content[i].Value == name {
			return n.Content[i+1]
		}
	}
	v := &yaml.Node{Kind: yaml.MappingNode, Line: 1, Column: 1}
	n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: name, Line: 1, Column: 1}, v)
	return v
}

// TestDefaultsAreAccepted reads every default of the table as if a job gave it.
func TestDefaultsAreAccepted(t *testing.T) {
	text := base(t)
	for _, k := range Keys() {
		if k.Need == Defaulted && k.Kind != Section {
			assert.Empty(t, complaintsOf(t, text, k.Path, k.Default), "%s: %s", k.Path, k.Default)
		}
	}
}

// complaintsOf puts a value at a path of a job and returns the complaints there.
func complaintsOf(t *testing.T, text, path, value string) (found Complaints) {
	doc := parsed(t, text)
	key := put(t, doc.Content[0], path, value)
	_, complaints := readTree(doc)
	for _, c := range complaints {
		if c.Key == key {
			found = append(found, c)
		}
	}
	return found
}
