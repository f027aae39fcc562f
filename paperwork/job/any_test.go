package job

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

// TestAnythingAnywhere puts values of every form in place of every value of a
// job: whatever stands where, the job is read or complained of.
func TestAnythingAnywhere(t *testing.T) {
	var doc yaml.Node
	require.NoError(t, yaml.Unmarshal([]byte(base(t)), &doc))
	for _, text := range []string{"~", "x", "0", "[]", "[x]", "[[0]]", "{}", "{x: 1}", "{front: 1, rear: x}", "{label: 1}"} {
		var other yaml.Node
		require.NoError(t, yaml.Unmarshal([]byte(text), &other))
		everyValue(doc.Content[0], func(n *yaml.Node) {
			kept := *n
			*n = *other.Content[0]
			written, err := yaml.Marshal(&doc)
			*n = kept
			require.NoError(t, err)
			j, complaints := readText(string(written))
			assert.Equal(t, j == nil, len(complaints) > 0, "%s", written)
		})
	}
}

func everyValue(n *yaml.Node, do func(*yaml.Node)) {
	step := 1
	if n.Kind == yaml.MappingNode {
		step = 2
	}
	for i := step - 1; i < len(n.Content); i += step {
		everyValue(n.Content[i], do)
	}
	do(n)
}

// TestAnyLineMissing takes every line out of a job.
func TestAnyLineMissing(t *testing.T) {
	lines := strings.SplitAfter(base(t), "\n")
	for i := range lines {
		text := ""
		for k, line := range lines {
			if k != i {
				text += line
			}
		}
		j, complaints := readText(text)
		assert.Equal(t, j == nil, len(complaints) > 0, lines[i])
	}
}
