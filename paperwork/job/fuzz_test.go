package job

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var oneLine = regexp.MustCompile(`^[^\n]+:[0-9]+:[0-9]+: [^\n]+$`)

// FuzzRead reads anything without panic, to either a job or complaints, each
// at a place and on one line.
func FuzzRead(f *testing.F) {
	files, _ := filepath.Glob(filepath.Join(bad, "*.yaml"))
	for _, file := range files {
		if text, err := os.ReadFile(file); err == nil {
			f.Add(string(text))
		}
	}
	f.Add(least)
	f.Add("0:\n<<:\n  {}:\n") // panics in yaml.v3, its issue 895
	f.Add("job: &a {title: *a}\n---\n")
	f.Fuzz(func(t *testing.T, text string) {
		j, complaints := Read("job.yaml", strings.NewReader(text), fromDisk, latin)
		if (j == nil) == (len(complaints) == 0) {
			t.Fatalf("job is nil: %v, with %d complaints", j == nil, len(complaints))
		}
		for _, c := range complaints {
			if c.Line < 1 || c.Col < 1 || !oneLine.MatchString(c.Error()) {
				t.Errorf("complaint %q", c.Error())
			}
		}
	})
}
