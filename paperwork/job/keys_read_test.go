package job

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestEveryKeyIsRead: a key whose value is another one makes another job. One that is in
// the table alone would be taken from every job file and never be heard of again.
func TestEveryKeyIsRead(t *testing.T) {
	text, err := os.ReadFile("../../testdata/bad/base.yaml")
	require.NoError(t, err)
	tried := 0
	for _, k := range Keys() {
		values := edges(k, 0)
		if len(values) < 2 {
			continue
		}
		jobs := make([]Job, 0, 2)
		for _, value := range values[:2] {
			doc := parsed(t, string(text))
			put(t, doc.Content[0], k.Path, value)
			if j, complaints := readTree(doc); len(complaints) == 0 {
				one := *j
				one.Fingerprint = ""
				jobs = append(jobs, one)
			}
		}
		if len(jobs) < 2 {
			continue // one of two forms, or an edge that the rest of the job does not bear
		}
		tried++
		assert.NotEqual(t, jobs[0], jobs[1], "%s: nothing of the Job changes with it: give it its line in build_*.go", k.Path)
	}
	assert.Greater(t, tried, 40)
}
