package main

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// spare is a line of the starter that says a key in a comment.
var spare = regexp.MustCompile(`(?m)^( *)# ((?: *)(?:- \{name|[a-z_]+: ).*|practice:.*|extras:.*)$`)

// TestStarterInFull: what the starter says in comments is right too: with every
// such line put in it packs, and its first line is what editors look for.
func TestStarterInFull(t *testing.T) {
	t.Chdir(t.TempDir())
	text := string(starter)
	assert.True(t, strings.HasPrefix(text, "# yaml-language-server: $schema=hangpack.schema.json\n"))
	_, text, _ = strings.Cut(text, "\n\n") // what is above is no key
	full := spare.ReplaceAllString(text, "$1$2")
	require.Equal(t, 13, len(strings.Split(text, "# "))-len(strings.Split(full, "# ")), full)
	require.NoError(t, os.Mkdir("gear", 0o755))
	require.NoError(t, os.WriteFile("gear/our-columns.yaml", []byte("gear:\n  dollies:\n    spare-dolly: {takes: 2, mass: 9 kg, deck_height: 150 mm}\n"), 0o644))
	require.NoError(t, os.WriteFile("full.yaml", []byte(full), 0o644))
	out, errs, code := apart(t, "hangpack pack full.yaml")
	assert.Empty(t, errs)
	assert.Equal(t, exitDone, code, out)
	for _, line := range strings.Split(text, "\n") {
		assert.LessOrEqual(t, len(line), 125, line)
	}
}
