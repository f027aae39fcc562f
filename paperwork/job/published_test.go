package job

import (
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/testdata/proof"
	"hangpack/testdata/published"
)

// TestChecked writes testdata/checked/units.md.
func TestChecked(t *testing.T) {
	proof.Page(t, "../../testdata/checked/units.md", "Units as they are read, and what they were checked against", []proof.Check{{
		Figure: "units of mass, length, force, speed, mass per length and angle; gravity", Against: "printed factors: testdata/published/units.csv",
		Unit: "of half a last digit", Run: printedUnits,
	}})
}

// printedUnits holds the units to printed factors: testdata/published/units.csv
// names its source.
func printedUnits(t *testing.T) (cases int, worst float64) {
	kinds := map[string]Kind{"mass": Mass, "length": Length, "force": Force, "load": Load, "speed": Speed,
		"mass per length": MassPerLength, "angle": Angle}
	return published.Held(t, "../../testdata/published/units.csv", func(r published.Row) map[string]float64 {
		if r.Text("kind") == "gravity" {
			return map[string]float64{"factor": gravity}
		}
		got, wrong := measure(row(kinds[r.Text("kind")]), "1 "+r.Text("from"))
		require.Empty(t, wrong, r.Text("from"))
		return map[string]float64{"factor": got * r.In("per")}
	})
}
