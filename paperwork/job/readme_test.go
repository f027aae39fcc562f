package job

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const (
	keysBegin = "<!-- keys: written by UPDATE_GOLDEN=1 go test ./paperwork/job -->\n"
	keysEnd   = "<!-- end of keys -->"
)

// TestReadmeKeys: README's list of keys is the reader's own table.
func TestReadmeKeys(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	before, rest, ok := strings.Cut(string(text), keysBegin)
	require.True(t, ok)
	had, after, ok := strings.Cut(rest, keysEnd)
	require.True(t, ok)
	want := keyTable()
	if os.Getenv("UPDATE_GOLDEN") != "" && had != want { // cmd/hangpack writes README's sessions meanwhile
		require.NoError(t, os.WriteFile("../../README.md", []byte(before+keysBegin+want+keysEnd+after), 0o644))
		return
	}
	assert.Equal(t, want, had, "UPDATE_GOLDEN=1 go test ./paperwork/job")
}

func keyTable() string {
	var b strings.Builder
	b.WriteString("\n| key | what it is | range | default |\n|---|---|---|---|\n")
	for _, k := range Keys() {
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s |\n", k.Path, k.Meaning, k.Allowed(), needWords(k))
	}
	return b.String() + "\n"
}

func needWords(k Key) string {
	switch {
	case k.Need == Required:
		return "required"
	case k.Need == Optional:
		return "-"
	case k.Kind == Section:
		return "its keys' defaults"
	}
	return k.Default
}
