package job

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"hangpack/testdata/deep"
	"hangpack/testdata/plausible"
)

// TestRandomJobs: the reader has no complaint about a plausible job, the schema takes
// it too, and its fingerprint is the same whatever the order of its keys and another
// one when any value of it is another.
func TestRandomJobs(t *testing.T) {
	s, random, seen := compiled(t), rand.New(rand.NewPCG(3, 4)), map[string]int64{}
	for seed := range int64(deep.Of(100, 1000)) {
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

// keysLeftOut are keys that no random job gives, with the reason why.
var keysLeftOut = map[string]string{
	"gear_files":   "a random job is one text; gear_files_test.go has jobs with gear files",
	"gear_files[]": "as gear_files",
}

// TestRandomJobsHaveEveryKey: no law tries a key that no random job gives.
func TestRandomJobsHaveEveryKey(t *testing.T) {
	given := map[string]bool{}
	for seed := range int64(200) {
		keysOf(tree(t, plausible.Job(seed, seed%4 == 3)), given)
	}
	for _, k := range Keys() {
		why, left := keysLeftOut[k.Path]
		switch {
		case left:
			assert.False(t, given[k.Path], "random jobs give %s: take it out of keysLeftOut (%s)", k.Path, why)
		default:
			assert.True(t, given[k.Path], "no random job gives %s: write it in testdata/plausible, drawn with rarely and apart so that all else in most jobs stays, or list it in keysLeftOut with the reason", k.Path)
		}
	}
}

// tree reads a job as far as its keys and values.
func tree(t *testing.T, text string) *value {
	t.Helper()
	r, root := newReader("job.yaml", fromDisk, latin), &value{given: true}
	r.readKeys(root, r.parse([]byte(text)))
	require.Empty(t, r.complaints)
	return root
}

// keysOf adds the paths of the table that a job gives below a value.
func keysOf(v *value, given map[string]bool) {
	given[v.generic] = given[v.generic] || v.given
	for _, below := range v.fields {
		keysOf(below, given)
	}
	for _, item := range v.items {
		keysOf(item, given)
	}
}
