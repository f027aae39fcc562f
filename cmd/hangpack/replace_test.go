package main

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// filled fills with a text.
func filled(text string) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	}
}

// holds checks that a folder has these files with these texts, and no others.
func holds(t *testing.T, dir string, files map[string]string) {
	t.Helper()
	found := map[string]string{}
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	for _, e := range entries {
		text, err := os.ReadFile(filepath.Join(dir, e.Name()))
		require.NoError(t, err)
		found[e.Name()] = string(text)
	}
	assert.Equal(t, files, found)
}

func TestReplace(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, replace("x.pdf", filled("a first pack")))
	holds(t, ".", map[string]string{"x.pdf": "a first pack"})
	require.NoError(t, replace("x.pdf", filled("another")))
	holds(t, ".", map[string]string{"x.pdf": "another"})
}

// TestReplaceAfterAnyByte: a disk that fails, wherever in the pack, leaves the
// old pack or none.
func TestReplaceAfterAnyByte(t *testing.T) {
	t.Chdir(t.TempDir())
	full := errors.New("no space left")
	const pack = "a whole new pack"
	for _, old := range []map[string]string{{}, {"x.pdf": "the old pack"}} {
		for name, text := range old {
			require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
		}
		for n := range len(pack) + 1 {
			err := replace("x.pdf", func(w io.Writer) error {
				io.WriteString(w, pack[:n])
				return full
			})
			assert.ErrorIs(t, err, full)
			holds(t, ".", old)
		}
	}
}

// TestReplaceAfterPanic: no draft outlives a fault of hangpack's own.
func TestReplaceAfterPanic(t *testing.T) {
	t.Chdir(t.TempDir())
	assert.Panics(t, func() { replace("x.pdf", func(io.Writer) error { panic("at fault") }) })
	holds(t, ".", map[string]string{})
}

// TestReplaceThroughLinks: a link stays one, and what it leads to is replaced,
// also where that is not there yet.
func TestReplaceThroughLinks(t *testing.T) {
	for name, links := range map[string]struct{ target, x string }{
		"beside":            {"real.pdf", "real.pdf"},
		"folder":            {"deep/real.pdf", "deep/real.pdf"},
		"up from a folder":  {"deep/real.pdf", "inside/../real.pdf"},
		"link to a link":    {"deep/real.pdf", "deep/link.pdf"},
		"through the shelf": {"real.pdf", "deep/inner/up.pdf"},
	} {
		for _, old := range []bool{false, true} {
			t.Run(name, func(t *testing.T) {
				t.Chdir(t.TempDir())
				require.NoError(t, os.MkdirAll("deep/inner", 0o755))
				require.NoError(t, os.Symlink("deep/inner", "inside"))
				require.NoError(t, os.Symlink("real.pdf", "deep/link.pdf"))
				require.NoError(t, os.Symlink("../../real.pdf", "deep/inner/up.pdf"))
				require.NoError(t, os.Symlink(links.x, "x.pdf"))
				if old {
					require.NoError(t, os.WriteFile(links.target, []byte("old"), 0o644))
				}
				require.NoError(t, replace("x.pdf", filled("new")))
				to, err := os.Readlink("x.pdf")
				require.NoError(t, err)
				assert.Equal(t, links.x, to)
				text, err := os.ReadFile(links.target)
				require.NoError(t, err)
				assert.Equal(t, "new", string(text))
				info, err := os.Lstat(links.target)
				require.NoError(t, err)
				assert.True(t, info.Mode().IsRegular())
			})
		}
	}
}

// TestReplaceRefused: what stands in the way is said without the draft's name,
// and nothing is left.
func TestReplaceRefused(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("file", []byte("a file"), 0o644))
	require.NoError(t, os.Symlink("loop.pdf", "loop.pdf"))
	for out, says := range map[string]string{
		"nowhere/x.pdf":                   "there is no such folder",
		"file/x.pdf":                      "not a directory",
		"file/":                           "not a directory",
		".":                               "it is a folder; name a file in it",
		"loop.pdf":                        "too many levels of symbolic links",
		strings.Repeat("x", 300) + ".pdf": "file name too long",
	} {
		err := replace(out, func(io.Writer) error { return errors.New("was opened") })
		assert.EqualError(t, err, says, out)
	}
	require.NoError(t, os.Remove("loop.pdf"))
	holds(t, ".", map[string]string{"file": "a file"})
}

// TestReplaceLongName: a name as long as any may be has a draft too.
func TestReplaceLongName(t *testing.T) {
	t.Chdir(t.TempDir())
	name := strings.Repeat("x", 251) + ".pdf"
	require.NoError(t, replace(name, filled("new")))
	holds(t, ".", map[string]string{name: "new"})
}

// TestReplaceInRemovedFolder: a folder that went while the pack was drawn.
func TestReplaceInRemovedFolder(t *testing.T) {
	t.Chdir(t.TempDir())
	require.NoError(t, os.Mkdir("show", 0o755))
	err := replace("show/x.pdf", func(w io.Writer) error {
		require.NoError(t, os.RemoveAll("show"))
		return filled("new")(w)
	})
	assert.Error(t, err)
	assert.NotContains(t, err.Error(), ".hangpack-")
	holds(t, ".", map[string]string{})
}

// TestReplaceAtOnce: while many runs write one pack, whoever reads it finds a
// whole one, and no draft is left.
func TestReplaceAtOnce(t *testing.T) {
	t.Chdir(t.TempDir())
	whole := func(text string) bool {
		return len(text) == 1<<16 && strings.Count(text, text[:1]) == len(text)
	}
	require.NoError(t, replace("x.pdf", filled(strings.Repeat("z", 1<<16))))
	var runs sync.WaitGroup
	for c := range 8 {
		runs.Go(func() {
			for range 20 {
				assert.NoError(t, replace("x.pdf", func(w io.Writer) error {
					for range 64 {
						io.WriteString(w, strings.Repeat(string(rune('a'+c)), 1<<10))
					}
					return nil
				}))
			}
		})
	}
	done := make(chan struct{})
	go func() { runs.Wait(); close(done) }()
	for reading := true; reading; {
		select {
		case <-done:
			reading = false
		default:
		}
		text, err := os.ReadFile("x.pdf")
		require.NoError(t, err)
		require.True(t, whole(string(text)), "half a pack of %d bytes", len(text))
	}
	entries, err := os.ReadDir(".")
	require.NoError(t, err)
	assert.Len(t, entries, 1)
}

// TestNeverOverItself: no spelling of a file that the job reads is written over.
func TestNeverOverItself(t *testing.T) {
	copied(t)
	t.Chdir("examples")
	before, err := os.ReadFile("club.yaml")
	require.NoError(t, err)
	here, err := os.Getwd()
	require.NoError(t, err)
	require.NoError(t, os.Symlink("club.yaml", "soft.pdf"))
	require.NoError(t, os.Link("club.yaml", "hard.pdf"))
	require.NoError(t, os.Symlink(".", "again"))
	for _, out := range []string{"club.yaml", "./club.yaml", filepath.Join(here, "club.yaml"), "soft.pdf", "hard.pdf", "again/club.yaml", "again/soft.pdf"} {
		for _, name := range []string{"club.yaml", "soft.pdf", "hard.pdf"} {
			_, errs, code := apart(t, "hangpack pack "+name+" -o "+out)
			assert.Equal(t, exitWrong, code, out)
			assert.Equal(t, "hangpack: pack: "+out+" is the job itself; name another file with -o\n", errs)
		}
	}
	after, err := os.ReadFile("club.yaml")
	require.NoError(t, err)
	assert.Equal(t, before, after)
	drafts, err := filepath.Glob(".hangpack-*")
	require.NoError(t, err)
	assert.Empty(t, drafts)
}

// TestClash: what else a job reads is as safe as the job.
func TestClash(t *testing.T) {
	t.Chdir(t.TempDir())
	for _, name := range []string{"job.yaml", "gear.yaml", "x.pdf"} {
		require.NoError(t, os.WriteFile(name, []byte(name), 0o644))
	}
	require.NoError(t, os.Symlink("gear.yaml", "soft.pdf"))
	files := []string{"job.yaml", "gear.yaml", "missing.yaml"}
	for name, says := range map[string]string{
		"job.yaml":   "job.yaml is the job itself; name another file with -o",
		"gear.yaml":  "gear.yaml is read for it; name another file with -o",
		"./soft.pdf": "./soft.pdf is gear.yaml, which the job reads; name another file with -o",
		"x.pdf":      "", "new.pdf": "", "missing.yaml": "",
	} {
		c := call{flags: map[string]string{"o": name}, stdout: &stream{}}
		err := c.outlet().clash(files)
		if says == "" {
			assert.NoError(t, err, name)
		} else {
			assert.EqualError(t, err, says)
		}
	}
}

// TestOutputIsStandardOutput: a job that standard output goes to is as safe.
func TestOutputIsStandardOutput(t *testing.T) {
	copied(t)
	before, err := os.ReadFile("examples/club.yaml")
	require.NoError(t, err)
	f, err := os.OpenFile("examples/club.yaml", os.O_WRONLY|os.O_APPEND, 0)
	require.NoError(t, err)
	defer f.Close()
	var errs strings.Builder
	assert.Equal(t, exitWrong, run([]string{"pack", "examples/club.yaml", "-o", "-"}, f, &errs))
	assert.Equal(t, "hangpack: pack: standard output is the job itself; name another file with -o\n", errs.String())
	after, err := os.ReadFile("examples/club.yaml")
	require.NoError(t, err)
	assert.Equal(t, before, after)
}
