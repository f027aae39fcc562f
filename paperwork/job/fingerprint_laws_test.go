package job

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

// TestFingerprintOfShuffledKeys puts the keys of every section in any order.
func TestFingerprintOfShuffledKeys(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for _, name := range []string{"arena.yaml", "concert.yaml", "held.yaml"} {
		text := example(t, name)
		want := fingerprintOf(t, text)
		for range 10 {
			var doc yaml.Node
			require.NoError(t, yaml.Unmarshal([]byte(text), &doc))
			shuffle(random, doc.Content[0])
			shuffled, err := yaml.Marshal(&doc)
			require.NoError(t, err)
			require.NotEqual(t, text, string(shuffled))
			assert.Equal(t, want, fingerprintOf(t, string(shuffled)), name)
		}
	}
}

func shuffle(random *rand.Rand, n *yaml.Node) {
	for _, child := range n.Content {
		shuffle(random, child)
	}
	if n.Kind == yaml.MappingNode {
		random.Shuffle(len(n.Content)/2, func(i, j int) {
			for k := range 2 {
				n.Content[2*i+k], n.Content[2*j+k] = n.Content[2*j+k], n.Content[2*i+k]
			}
		})
	}
}

// TestFingerprintCoversEveryValue changes each value of a job, one at a time,
// to another of its kind. What the job says of another place then may not fit,
// so the lines that the fingerprint is made of are compared.
func TestFingerprintCoversEveryValue(t *testing.T) {
	for _, name := range []string{"arena.yaml", "concert.yaml", "held.yaml"} {
		doc := parsed(t, example(t, name))
		before, values := lines(doc), 0
		everyValue(doc.Content[0], func(n *yaml.Node) {
			if n.Kind != yaml.ScalarNode {
				return
			}
			values++
			kept := n.Value
			n.Value = another(kept)
			after := lines(doc)
			n.Value = kept
			assert.NotEqual(t, before, after, "%s: %s as %s", name, kept, another(kept))
		})
		assert.Len(t, before, values, "%s: one line for each value", name)
	}
}

// lines returns what the fingerprint of a job is made of.
func lines(doc *yaml.Node) []string {
	r := newReader("job.yaml", fromDisk, anything)
	r.job(doc.Content[0])
	return slices.Sorted(slices.Values(r.given))
}

// another returns a value that differs in its first figure or letter.
func another(s string) string {
	first := "1"
	if strings.HasPrefix(s, "1") {
		first = "2"
	}
	return first + s[1:]
}
