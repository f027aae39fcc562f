package job

import (
	"errors"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
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

// besideExamples opens gear files by their paths as from the examples.
func besideExamples(path string) (io.ReadCloser, error) {
	return fromDisk(filepath.Join("..", "..", "examples", path))
}

// readText reads a job that stands beside the examples.
func readText(text string) (*Job, Complaints) {
	return Read("job.yaml", strings.NewReader(text), besideExamples, latin)
}

// readTree reads such a job from the tree of its text: a change of the tree need
// not be written and parsed again.
func readTree(doc *yaml.Node) (*Job, Complaints) {
	r := newReader("job.yaml", besideExamples, latin)
	j := r.job(doc.Content[0])
	return j, r.complaints
}

// parsed is the tree of a text.
func parsed(t testing.TB, text string) *yaml.Node {
	t.Helper()
	var doc yaml.Node
	require.NoError(t, yaml.Unmarshal([]byte(text), &doc))
	return &doc
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

// TestBad holds what is said of every job of testdata/bad to its NAME.want.
// UPDATE_GOLDEN=1 writes that; read it as the person would who made the slip.
func TestBad(t *testing.T) {
	jobs := badJobs(t)
	for _, name := range slices.Sorted(maps.Keys(jobs)) {
		t.Run(name, func(t *testing.T) {
			j, complaints := Read(name+".yaml", strings.NewReader(jobs[name]), fromBad, latin)
			assert.Nil(t, j)
			said, file := complaints.Error()+"\n", filepath.Join(bad, name+".want")
			if os.Getenv("UPDATE_GOLDEN") != "" {
				require.NoError(t, os.WriteFile(file, []byte(said), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err, "nothing holds what is said of this job: UPDATE_GOLDEN=1 go test ./paperwork/job writes it; read it")
			assert.Equal(t, string(want), said)
		})
	}
	wants, err := filepath.Glob(filepath.Join(bad, "*.want"))
	require.NoError(t, err)
	for _, want := range wants {
		assert.Contains(t, jobs, stem(want), "%s is of no job: write its .slip or .yaml beside it, or take it out", want)
	}
}

// badJobs are the jobs of testdata/bad by name: NAME.yaml as it stands, or
// NAME.slip with lines of base.yaml to take out (-) and to put in (+), in the
// manner of a diff.
func badJobs(t testing.TB) map[string]string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(bad, "*.*"))
	require.NoError(t, err)
	jobs, whole := map[string]string{}, base(t)
	for _, file := range files {
		name := stem(file)
		_, twice := jobs[name]
		switch filepath.Ext(file) {
		case ".slip":
			require.False(t, twice, "%s is a .slip and a .yaml; keep one", name)
			jobs[name] = slipped(t, whole, file)
		case ".yaml":
			require.False(t, twice, "%s is a .slip and a .yaml; keep one", name)
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			jobs[name] = string(text)
		case ".want":
		default:
			t.Errorf("no test reads %s: a job of this folder is NAME.slip or NAME.yaml", file)
		}
	}
	delete(jobs, "base")
	require.Greater(t, len(jobs), 120)
	return jobs
}

// stem is the name of a file without its ending.
func stem(file string) string { return strings.TrimSuffix(filepath.Base(file), filepath.Ext(file)) }

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
