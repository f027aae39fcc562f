package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func row(kind Kind) *Key {
	return &Key{Path: "x", Kind: kind, Hint: [2]string{"mm", "in"}, Min: -1e9, Max: 1e9}
}

// TestQuantities reads what a job may give. The values follow from 1 in =
// 25.4 mm, 1 ft = 12 in, 1 t = 1000 kg and g = 9.80665 m/s².
func TestQuantities(t *testing.T) {
	for _, tt := range []struct {
		kind Kind
		text string
		want float64
	}{
		{Length, "14 ft 6 in", 174 * 0.0254},
		{Length, "14ft 6in", 174 * 0.0254},
		{Length, "14 ft", 168 * 0.0254},
		{Length, "14.5 ft", 174 * 0.0254},
		{Length, "6 in", 6 * 0.0254},
		{Length, "6.5 in", 6.5 * 0.0254},
		{Length, "11 7/16 in", 11.4375 * 0.0254},
		{Length, "7/16 in", 0.4375 * 0.0254},
		{Length, "7/16in", 0.4375 * 0.0254},
		{Length, "14 ft 6 7/16 in", 174.4375 * 0.0254},
		{Length, "-14 ft 6 in", -174 * 0.0254},
		{Length, "-7/16 in", -0.4375 * 0.0254},
		{Length, "-18 mm", -0.018},
		{Length, "12 cm", 0.12},
		{Length, "0", 0},
		{Mass, "32.5kg", 32.5},
		{Mass, "1.6 t", 1600},
		{Load, "750 kg", 7354.9875},
		{Load, "1.6 t", 15690.64},
		{Load, "4.5 kN", 4500},
		{Load, "800 N", 800},
		{Percent, "5 %", 0.05},
		{Percent, "5%", 0.05},
		{MassPerLength, "1.1 kg/m", 1.1},
		{Density, "1.2 kg/m3", 1.2},
		{Speed, "36 km/h", 10},
		{Speed, "3 m/s", 3},
		{Speed, "3 m/min", 0.05},
		{Speed, "20 ft/min", 0.1016},
		{Time, "2 min", 120},
		{Time, "2 s", 2},
		{Angle, "180 deg", 3.141592653589793},
		{Aim, "180 deg up", -3.141592653589793},
		{Aim, "-90 deg up", 3.141592653589793 / 2},
		{Aim, "level", 0},
		{Aim, "0", 0},
		{Pan, "90deg stage_left", 3.141592653589793 / 2},
		{Pan, "90 deg stage_right", -3.141592653589793 / 2},
		{Pan, "0", 0},
	} {
		got, wrong := magnitude(row(tt.kind), tt.text)
		assert.Empty(t, wrong, tt.text)
		assert.InDelta(t, tt.want, got, 1e-12*max(1, tt.want), tt.text)
	}
}

func TestNoQuantities(t *testing.T) {
	for kind, texts := range map[Kind][]string{
		Length: {"", "mm", "5", "1 mm 2", "5 mm mm", "1e3 mm", "+1 mm", "01 mm", "1. mm", ".5 mm", "1,5 mm", "1_0 mm", "0x1F mm",
			"inf m", ".inf m", "5 MM", "5 kg", "5 deg", "14 ft 12 in", "14 ft 11 16/16 in", "14.5 ft 6 in", "14 ft -6 in", "014 ft 6 in",
			"1 1/0 in", "1.5 1/2 in", "3/2 in", "6 in 14 ft", "14 ft 6", "5′", "−5 mm", "1 ton"},
		Mass:    {"5 m", "5 N", "1 ton", "1 tons", "14 ft 6 in", "5 KG", "5 kg/m"},
		Load:    {"5 m", "1 ton", "5 kn"},
		Percent: {"0.05", "5 kg", "5 percent"},
		Aim:     {"1", "1 deg", "down", "1 down", "level down", "1 deg stage_left", "1 deg down up", "1° down"},
		Pan:     {"1", "1 deg", "level", "1 deg down"},
		Count:   {"1.0", "1.5", "1e1", "+1", "01", "one"},
		Number:  {"1.25x", "125 %", ".5", "1,25"},
		Degrees: {"2 deg", "0.5°", "1/2"},
	} {
		for _, text := range texts {
			_, wrong := magnitude(row(kind), text)
			assert.NotEmpty(t, wrong, text)
			assert.NotContains(t, wrong, "out of range", text)
		}
	}
}

// TestHardBlank: a space that only looks like a blank is named in words, and
// what it stands in is shown with plain ones.
func TestHardBlank(t *testing.T) {
	for text, name := range map[string]string{
		"20\u00a0kg": "a no-break space (U+00A0)", "20\u202fkg": "a no-break space (U+202F)",
		"20\u2007kg": "a no-break space (U+2007)", "20 \u2009kg": "a special space (U+2009)", "20 kg\u00a0": "a no-break space (U+00A0)",
	} {
		_, wrong := magnitude(row(Mass), text)
		assert.Contains(t, wrong, "has "+name+" where an ordinary blank is wanted", text)
		assert.NotContains(t, wrong, `\u`, text)
	}
	for _, kind := range []Kind{Number, Count, Degrees, Aim, Pan} {
		_, wrong := magnitude(row(kind), "1\u00a0")
		assert.Contains(t, wrong, `"1" has a no-break space`)
	}
}

func TestNear(t *testing.T) {
	words := []string{"mass", "width", "link_arm", "bar"}
	assert.Equal(t, "width", Near("widht", words))
	assert.Equal(t, "link_arm", Near("linkarm", words))
	assert.Equal(t, "mass", Near("mas", words))
	assert.Equal(t, "bar", Near("bra", words), "two letters that have changed places are one slip")
	assert.Empty(t, Near("bot", words), "two slips in three letters are no near miss")
	assert.Empty(t, Near("weight", words), "three slips are too many")
}
