package job

import (
	"testing"

	"github.com/stretchr/testify/require"
	"hangpack/testdata/published"
)

// TestPublishedUnits holds the units to printed factors: testdata/published/units.csv
// names its source.
func TestPublishedUnits(t *testing.T) {
	kinds := map[string]Kind{"mass": Mass, "length": Length, "force": Force, "load": Load, "speed": Speed,
		"mass per length": MassPerLength, "angle": Angle}
	published.Held(t, "../../testdata/published/units.csv", func(r published.Row) map[string]float64 {
		if r.Text("kind") == "gravity" {
			return map[string]float64{"factor": gravity}
		}
		got, wrong := measure(row(kinds[r.Text("kind")]), "1 "+r.Text("from"))
		require.Empty(t, wrong, r.Text("from"))
		return map[string]float64{"factor": got * r.In("per")}
	})
}
