package say

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/calc"
)

// TestRoundingUp: what a roof carries is never printed as less.
func TestRoundingUp(t *testing.T) {
	m, i := Units{}, Units{Imperial: true}
	assert.Equal(t, "300 kg", m.Load(300.0000000001))
	assert.Equal(t, "301 kg", m.Load(300.001))
	assert.Equal(t, "662 lb", i.Load(300)) // 300 / 0.45359237 = 661.39
	assert.Equal(t, "0.01 kN", m.Force(0.1))
	assert.Equal(t, "1.70 kN", m.Force(-1700))
	assert.Equal(t, "0.00 kN", m.Force(0))
	assert.Equal(t, "225 lbf", i.Force(1000)) // 1000 / 4.4482216 = 224.81
	assert.Equal(t, "31 %", Percent(0.301))
	assert.Equal(t, "30 %", Percent(0.3))
	assert.Equal(t, "level", Aim(calc.Radians(0.049)))
	assert.Equal(t, "0.1° up", Aim(calc.Radians(-0.051)))
	assert.Equal(t, "14.00 m", m.Apart(14.006, 14)(14))
	assert.Equal(t, "14001 mm", m.Apart(14.001, 14)(14.001))
	assert.Equal(t, "14.000001 m", m.Apart(14.000001, 14)(14.000001))
	assert.Equal(t, "14 ft 6 1/2 in", i.Length(4.4323)) // 14.5417 ft
	assert.Equal(t, "11 7/16 in", i.Fine(0.2905))
	for m, want := range map[float64][2]string{0.0929: {"92 mm", "3 5/8 in"}, 0.0936625: {"93 mm", "3 11/16 in"}, 0.093: {"93 mm", "3 5/8 in"}} { // 3 11/16 in are 93.6625 mm
		assert.Equal(t, want, [2]string{Units{}.FineDown(m), i.FineDown(m)})
	}
	assert.Equal(t, "-0.31 m", m.Length(-0.311))
	assert.Equal(t, "0.00 m", m.Length(-0.001))
	assert.Equal(t, "500 kg", m.Limit(4903.325))
}

// TestRatingsRoundDown: what may be held is never printed as more.
func TestRatingsRoundDown(t *testing.T) {
	m, i := Units{}, Units{Imperial: true}
	assert.Equal(t, "499.9 kg", m.Limit(4903.3))    // 499.997 kg
	assert.Equal(t, "1102.3 lb", i.Limit(4903.325)) // 500 / 0.45359237 = 1102.311
	assert.Equal(t, "4.49 kN", m.ForceLimit(4499.9))
	assert.Equal(t, "4.50 kN", m.ForceLimit(4500))
	assert.Equal(t, "1011.6 lbf", i.ForceLimit(4500)) // 4500 / 4.4482216 = 1011.64
}

// TestPaces: a hoist of 4 m in a minute, and of 16 ft.
func TestPaces(t *testing.T) {
	assert.Equal(t, "4 m/min", Units{}.Pace(4./60))
	assert.Equal(t, "13.12 ft/min", Units{Imperial: true}.Pace(4./60)) // 4 / 0.3048 = 13.123
	assert.Equal(t, "16 ft/min", Units{Imperial: true}.Pace(16*0.3048/60))
}

// TestDifferences: by how much a load grew as both are printed, or that it did not.
func TestDifferences(t *testing.T) {
	u := Units{}
	assert.Equal(t, "2 kg more", u.Difference(300, 301.2))
	assert.Equal(t, "2 kg less", u.Difference(301.2, 300))
	assert.Equal(t, "no change", u.Difference(300, 300))
	assert.Equal(t, "32 kg less", u.Difference(1043.1, 1011.9)) // 1044 and 1012
	assert.Equal(t, "no change", u.Difference(300.2, 300.9))    // 301 both
	assert.Equal(t, "1 lb more", Units{Imperial: true}.Difference(0.45359237*10, 0.45359237*10.5))
}

// TestWindowsInwards: the ends of a window are rounded inwards, a narrow one is written to
// the digits that it takes, and a reading near an end stays within.
func TestWindowsInwards(t *testing.T) {
	kg, lb := Units{}, Units{Imperial: true}
	assert.Equal(t, "155 to 164 kg", kg.Window(154.2, 164.9))
	assert.Equal(t, "154 to 165 kg", kg.Window(154, 165))
	assert.Equal(t, "154.2 to 154.8 kg", kg.Window(154.17, 154.83))
	assert.Equal(t, "154.02 to 154.04 kg", kg.Window(154.013, 154.047))
	assert.Equal(t, "155 to 155 kg", kg.Window(154.9451, 154.9452), "no more digits than a cell has")
	assert.Equal(t, "11 to 22 lb", lb.Window(10.1*PoundKg, 22.9*PoundKg))
	assert.Equal(t, "534 kg", kg.ReadingIn(534.78, 454, 534.7808))
	assert.Equal(t, "455 kg", kg.ReadingIn(454.2, 454.1, 534))
	assert.Equal(t, "500 kg", kg.ReadingIn(499.8, 454, 534))
}
