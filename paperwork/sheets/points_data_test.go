package sheets

import (
	"bytes"
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// pointsAsData reads the CSV back with the standard library's reader: every
// figure to its last digit, and lines as RFC 4180 ends them.
func pointsAsData(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		var b bytes.Buffer
		require.NoError(t, report.PointsCSV(j, &b))
		assert.Equal(t, strings.Count(b.String(), "\n"), strings.Count(b.String(), "\r\n"))
		rows, err := csv.NewReader(&b).ReadAll()
		require.NoError(t, err)
		at := map[string]map[string]string{}
		for _, row := range rows[1:] {
			at[row[0]] = map[string]string{}
			for i, head := range rows[0] {
				at[row[0]][head] = row[i]
			}
		}
		n := len(j.Figures.Others)
		for i, s := range j.Figures.Stacks {
			n += len(s.Points)
			for _, p := range s.Points {
				csvHas(t, at[p.ID], map[string]float64{"stage_left_m": p.StageLeft, "downstage_m": p.Downstage, "pick_height_m": p.PickHeight,
					"low_hook_m": p.LowHook, "static_kg": p.Static, "design_kg": p.Design, "static_kn": p.Static * 9.80665 / 1000, "hoist_use": p.HoistUse,
					"design_kn": p.Design * 9.80665 / 1000, "most_static_kg": p.Most.Static, "most_design_kg": p.Most.Design,
					"hoist_capacity_kn": capacityOf(j, p.Hoist), "governing_kg": p.Governing.Design})
				assert.Equal(t, p.Governing.Where, at[p.ID]["governing_at"], name)
				if len(s.Points) == 2 {
					csvHas(t, at[p.ID], map[string]float64{"alone_kg": p.Alone, "alone_design_kg": p.AloneDesign})
				}
				assert.Equal(t, p.Most.Where, at[p.ID]["most_at"], name)
				if p.ChainNeeded != nil {
					csvHas(t, at[p.ID], map[string]float64{"chain_needed_m": *p.ChainNeeded})
				}
				assert.Equal(t, p.ChainNeeded == nil, at[p.ID]["chain_needed_m"] == "", name)
				assert.Equal(t, map[bool]string{true: "yes", false: "no"}[s.Held], at[p.ID]["held"], name)
				assert.Equal(t, p.HighHook == nil, at[p.ID]["high_hook_m"] == "", name)
				assert.Equal(t, len(s.Points) == 1, at[p.ID]["alone_kg"] == "", name)
				assert.Equal(t, j.Stacks[i].Name, at[p.ID]["what"], name)
			}
		}
		for _, o := range j.Figures.Others {
			csvHas(t, at[o.ID], map[string]float64{"stage_left_m": o.StageLeft, "low_hook_m": o.Height, "static_kg": o.Static, "design_kg": o.Design})
			assert.Equal(t, o.What, at[o.ID]["what"], name)
		}
		assert.Len(t, rows, 1+n)
		cases += n
	}
	return cases, 0
}

// capacityOf is a hoist's capacity in kN.
func capacityOf(j *worked.Job, key string) float64 {
	for _, h := range j.Stacks {
		for _, p := range h.Picks {
			if p.Hoist.Key == key {
				return p.Hoist.Capacity / 1000
			}
		}
	}
	return math.NaN()
}

func csvHas(t *testing.T, row map[string]string, want map[string]float64) {
	t.Helper()
	for head, x := range want {
		got, err := strconv.ParseFloat(row[head], 64)
		require.NoError(t, err, head)
		assert.InDelta(t, x, got, 1e-12, head)
	}
}
