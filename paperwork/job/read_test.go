package job

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const bad = "../../testdata/bad"

// latin stands for the paper's font: here it has ASCII and Latin letters.
func latin(c rune) bool { return c < 0x250 }

// fromDisk opens gear files. Its error is the reason alone.
func fromDisk(path string) (io.ReadCloser, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, errors.Unwrap(err)
	}
	return f, nil
}

// fromBad opens the gear files of testdata/bad.
func fromBad(path string) (io.ReadCloser, error) { return fromDisk(filepath.Join(bad, path)) }

// readText reads a job that stands beside the examples.
func readText(text string) (*Job, Complaints) {
	beside := func(path string) (io.ReadCloser, error) { return fromDisk(filepath.Join("..", "..", "examples", path)) }
	return Read("job.yaml", strings.NewReader(text), beside, latin)
}

func base(t testing.TB) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(bad, "base.yaml"))
	require.NoError(t, err)
	return string(text)
}

func TestBaseIsClean(t *testing.T) {
	j, complaints := readText(base(t))
	require.Empty(t, complaints)
	require.Len(t, j.Stacks, 2)
}

// TestBad reads every job of testdata/bad. NAME.want has what is to be
// complained of in NAME.yaml; or NAME.slip has lines of base.yaml to take out
// (-) and to put in (+), in the manner of a diff.
func TestBad(t *testing.T) {
	wants, err := filepath.Glob(filepath.Join(bad, "*.want"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(wants), 45)
	whole := base(t)
	for _, want := range wants {
		name := strings.TrimSuffix(filepath.Base(want), ".want")
		t.Run(name, func(t *testing.T) {
			expected, err := os.ReadFile(want)
			require.NoError(t, err)
			text, err := os.ReadFile(filepath.Join(bad, name+".yaml"))
			if os.IsNotExist(err) {
				text = []byte(slipped(t, whole, filepath.Join(bad, name+".slip")))
			}
			j, complaints := Read(name+".yaml", strings.NewReader(string(text)), fromBad, latin)
			assert.Nil(t, j)
			assert.Equal(t, strings.TrimRight(string(expected), "\n"), complaints.Error())
		})
	}
}

// slipped makes the slips of a file in a text: each run of - lines stands once
// in it, and gives way to the + lines after it.
func slipped(t testing.TB, text, file string) string {
	t.Helper()
	slip, err := os.ReadFile(file)
	require.NoError(t, err)
	var out, in string
	change := func() {
		if out == "" {
			return
		}
		require.Equal(t, 1, strings.Count(text, out), "%s: these lines do not stand once in base.yaml:\n%s", file, out)
		text = strings.Replace(text, out, in, 1)
		out, in = "", ""
	}
	for _, line := range strings.SplitAfter(string(slip), "\n") {
		switch {
		case strings.HasPrefix(line, "-"):
			if in != "" {
				change()
			}
			out += line[1:]
		case strings.HasPrefix(line, "+"):
			in += line[1:]
		}
	}
	change()
	return text
}

// TestLineEnds: a job reads the same whatever editor ended its lines, and
// complaints stand at the same places.
func TestLineEnds(t *testing.T) {
	text := base(t)
	want, complaints := readText(text)
	require.Empty(t, complaints)
	slip := strings.Replace(text, "mass: 28 kg", "mass: 28", 1)
	_, atLine := readText(slip)
	require.Len(t, atLine, 1)
	for name, ends := range map[string]func(string) string{
		"CRLF": func(s string) string { return strings.ReplaceAll(s, "\n", "\r\n") },
		"mark": func(s string) string { return "\ufeff" + s },
		"none": func(s string) string { return strings.TrimRight(s, "\n") },
	} {
		got, complaints := readText(ends(text))
		require.Empty(t, complaints, name)
		assert.Equal(t, want, got, name)
		_, complaints = readText(ends(slip))
		assert.Equal(t, atLine, complaints, name)
	}
}
