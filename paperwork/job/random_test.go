package job

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"hangpack/testdata/plausible"
)

// TestRandomJobs: the reader has no complaint about a plausible job, the schema takes
// it too, and its fingerprint is the same whatever the order of its keys and another
// one when any value of it is another.
func TestRandomJobs(t *testing.T) {
	s, random, seen := compiled(t), rand.New(rand.NewPCG(3, 4)), map[string]int64{}
	for seed := range int64(300) {
		text := plausible.Job(seed, seed%4 == 3)
		j, complaints := readText(text)
		require.Empty(t, complaints, "seed %d", seed)
		v, ok := instance(text)
		require.True(t, ok, "seed %d", seed)
		assert.NoError(t, s.Validate(v), "seed %d", seed)
		assert.NotContains(t, seen, j.Fingerprint, "seed %d", seed)
		seen[j.Fingerprint] = seed
		var doc yaml.Node
		require.NoError(t, yaml.Unmarshal([]byte(text), &doc))
		shuffle(random, doc.Content[0])
		shuffled, err := yaml.Marshal(&doc)
		require.NoError(t, err)
		assert.Equal(t, j.Fingerprint, fingerprintOf(t, string(shuffled)), "seed %d", seed)
	}
}
