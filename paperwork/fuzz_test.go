package paperwork

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"hangpack/paperwork/report"
	"hangpack/testdata/trials"
)

// FuzzFigures works out whatever job is accepted: every figure is a finite
// number, for JSON has no others, and every report is written.
func FuzzFigures(f *testing.F) {
	for _, glob := range []string{"examples/*.yaml", "testdata/jobs/*.yaml", "testdata/bad/base.yaml"} {
		files, err := filepath.Glob(trials.File(glob))
		require.NoError(f, err)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(f, err)
			f.Add(string(text))
		}
	}
	f.Add(trials.Plain)
	f.Fuzz(func(t *testing.T, text string) {
		j, complaints, err := trials.Try(text, trials.GearFile)
		if err != nil {
			t.Fatal(err)
		}
		if len(complaints) > 0 {
			return
		}
		if _, err := json.Marshal(j.Figures); err != nil {
			t.Error(err)
		}
		if report.Check(j) == "" || report.Points(j) == "" {
			t.Error("no report")
		}
	})
}
