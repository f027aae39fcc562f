package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var (
	fileNamed = regexp.MustCompile(`[\w/]+\.(?:go|txt|md)\b`)
	nameGiven = regexp.MustCompile("`(?:\\w+\\.)?([A-Za-z]\\w+)`")
)

// TestGuideNamesWhatIsThere: every file and every name of the code that DEVELOPERS.md
// gives is there, so that it leads nobody astray.
func TestGuideNamesWhatIsThere(t *testing.T) {
	guide, err := os.ReadFile("../../DEVELOPERS.md")
	require.NoError(t, err)
	files, code := []string{}, strings.Builder{}
	require.NoError(t, filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		files = append(files, path)
		if strings.HasSuffix(path, ".go") && !strings.HasSuffix(path, "guide_test.go") {
			text, err := os.ReadFile(path)
			code.Write(text)
			return err
		}
		return nil
	}))
	for _, name := range fileNamed.FindAllString(string(guide), -1) {
		if strings.Contains(name, "/JOB/") { // a pattern
			continue
		}
		there := slices.ContainsFunc(files, func(f string) bool { return strings.HasSuffix(f, "/"+name) })
		assert.True(t, there, "DEVELOPERS.md names %s", name)
	}
	for _, m := range nameGiven.FindAllStringSubmatch(string(guide), -1) {
		assert.Regexp(t, `\b`+m[1]+`\b`, code.String(), "DEVELOPERS.md names %s", m[0])
	}
}
