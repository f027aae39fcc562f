package job

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"gopkg.in/yaml.v3"

	"hangpack/testdata/deep"
)

// TestAnythingAnywhere puts values of every form in place of every value of a
// job: whatever stands where, the reader goes on. Each day every value gets a
// third of the forms, and every form stands in a third of the places.
func TestAnythingAnywhere(t *testing.T) {
	doc, each := parsed(t, base(t)), deep.Of(3, 1)
	for i, text := range []string{"~", "x", "0", "[]", "[x]", "[[0]]", "{}", "{x: 1}", "{front: 1, rear: x}", "{label: 1}"} {
		other, place := parsed(t, text).Content[0], i
		everyValue(doc.Content[0], func(n *yaml.Node) {
			if place++; place%each > 0 || n == doc.Content[0] {
				return
			}
			kept := *n
			*n = *other
			assert.NotPanics(t, func() { readTree(doc) }, "%s on line %d", text, kept.Line)
			*n = kept
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
