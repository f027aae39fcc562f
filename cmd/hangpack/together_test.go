package main

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

// threeFiles are written together; the last of them does something more before it is
// filled, when all others are drafts.
func threeFiles(last func()) []fresh {
	return []fresh{{"a.pdf", filled("new a")}, {"b.pdf", filled("new b")}, {"c.pdf", func(w io.Writer) error {
		last()
		return filled("new c")(w)
	}}}
}

// olds are what stands in the places of files that are written together.
var olds = []map[string]string{
	{}, {"a.pdf": "old a"}, {"b.pdf": "old b"}, {"a.pdf": "old a", "b.pdf": "old b"}, {"a.pdf": "old a", "b.pdf": "old b", "c.pdf": "old c"},
}

// inFolder writes files into a new folder and goes there.
func inFolder(t *testing.T, files map[string]string) {
	t.Helper()
	t.Chdir(t.TempDir())
	for name, text := range files {
		require.NoError(t, os.WriteFile(name, []byte(text), 0o640))
	}
}

// TestTogether: files are replaced together, with the modes of the old ones, and nothing
// else is left.
func TestTogether(t *testing.T) {
	for _, old := range olds {
		inFolder(t, old)
		_, err := together(threeFiles(func() { holds(t, ".", withDrafts(t, old)) })...)
		require.NoError(t, err)
		holds(t, ".", map[string]string{"a.pdf": "new a", "b.pdf": "new b", "c.pdf": "new c"})
		for name := range old {
			info, err := os.Stat(name)
			require.NoError(t, err)
			assert.Equal(t, os.FileMode(0o640), info.Mode())
		}
	}
}

// withDrafts are old files and the drafts that stand beside them.
func withDrafts(t *testing.T, old map[string]string) map[string]string {
	t.Helper()
	all := map[string]string{}
	for name, text := range old {
		all[name] = text
	}
	found, err := filepath.Glob(".hangpack-*")
	require.NoError(t, err)
	assert.Len(t, found, 3)
	for _, name := range found {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		all[name] = string(text)
	}
	return all
}

// TestTogetherNotDrawn: where one cannot be written down, none is changed.
func TestTogetherNotDrawn(t *testing.T) {
	full := errors.New("no space left")
	for _, old := range olds {
		for which := range 3 {
			inFolder(t, old)
			files := threeFiles(func() {})
			files[which].fill = func(w io.Writer) error {
				io.WriteString(w, "ne")
				return full
			}
			failed, err := together(files...)
			assert.Equal(t, files[which].name, failed)
			assert.ErrorIs(t, err, full)
			assert.EqualError(t, err, "no space left; no file is changed")
			holds(t, ".", old)
		}
	}
}

// TestTogetherNotRenamed: where the first, the second or the last cannot be put in its
// place, those before it are put back as they were, the same files with their links, and
// no draft is left.
func TestTogetherNotRenamed(t *testing.T) {
	for _, old := range olds {
		for _, name := range []string{"a.pdf", "b.pdf", "c.pdf"} {
			inFolder(t, old)
			files := map[string]os.FileInfo{}
			for file := range old {
				info, err := os.Stat(file)
				require.NoError(t, err)
				files[file] = info
			}
			failed, err := together(threeFiles(func() {
				os.Remove(name)
				require.NoError(t, os.MkdirAll(filepath.Join(name, "in the way"), 0o755))
			})...)
			assert.Equal(t, name, failed)
			require.Error(t, err)
			assert.Equal(t, "file exists; no file is changed", err.Error())
			require.NoError(t, os.RemoveAll(name))
			want := map[string]string{}
			for file, text := range old {
				if file != name {
					want[file] = text
					now, err := os.Stat(file)
					require.NoError(t, err)
					assert.True(t, os.SameFile(files[file], now), "%s is another file", file)
				}
			}
			holds(t, ".", want)
		}
	}
}

// TestTogetherDraftGone: a draft that somebody took away is as good as a place that
// cannot be had, and its old file stays as it was.
func TestTogetherDraftGone(t *testing.T) {
	for _, old := range olds {
		for _, which := range []string{"a", "b"} {
			inFolder(t, old)
			failed, err := together(threeFiles(func() {
				for name, text := range withDrafts(t, old) {
					if text == "new "+which {
						require.NoError(t, os.Remove(name))
					}
				}
			})...)
			assert.Equal(t, which+".pdf", failed)
			assert.EqualError(t, err, "no such file or directory; no file is changed")
			holds(t, ".", old)
		}
	}
}

// TestTogetherThroughLinks: links stay links, also where files are put back.
func TestTogetherThroughLinks(t *testing.T) {
	for _, fails := range []bool{false, true} {
		inFolder(t, nil)
		require.NoError(t, os.Mkdir("deep", 0o755))
		require.NoError(t, os.WriteFile("deep/a.pdf", []byte("old a"), 0o644))
		for _, name := range []string{"a.pdf", "b.pdf"} {
			require.NoError(t, os.Symlink("deep/"+name, name))
		}
		want := map[string]string{"a.pdf": "new a", "b.pdf": "new b"}
		_, err := together(threeFiles(func() {
			if fails {
				want = map[string]string{"a.pdf": "old a"}
				require.NoError(t, os.MkdirAll("c.pdf/in the way", 0o755))
			}
		})...)
		assert.Equal(t, fails, err != nil)
		holds(t, "deep", want)
		for _, name := range []string{"a.pdf", "b.pdf"} {
			to, err := os.Readlink(name)
			require.NoError(t, err)
			assert.Equal(t, "deep/"+name, to)
		}
	}
}

// TestTogetherPanics: no draft outlives a fault of hangpack's own.
func TestTogetherPanics(t *testing.T) {
	inFolder(t, olds[3])
	assert.Panics(t, func() { together(threeFiles(func() { panic("at fault") })...) })
	holds(t, ".", olds[3])
}

// TestPackTogether: the pack and the files of its stacks are replaced together.
func TestPackTogether(t *testing.T) {
	copied(t)
	edited(t, "examples/concert.yaml", "job.yaml", "lantern-quay.pdf", "{stack}.pdf")
	edited(t, "job.yaml", "next.yaml", "revision: B", "revision: C")
	_, errs, code := apart(t, "hangpack pack -q job.yaml")
	require.Equal(t, exitDone, code, errs)
	before := map[string]string{}
	for _, name := range []string{"job.pdf", "SL.pdf"} {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		before[name] = string(text)
	}
	require.NoError(t, os.Remove("SR.pdf"))
	require.NoError(t, os.MkdirAll("SR.pdf/in the way", 0o755))
	out, errs, code := apart(t, "hangpack pack next.yaml -o job.pdf")
	assert.Equal(t, exitFailed, code)
	assert.Empty(t, out)
	assert.Equal(t, "hangpack: cannot write SR.pdf: it is a folder; name a file in it; no file is changed\n", errs)
	for name, text := range pdfs(t) {
		assert.True(t, before[name] == text, name)
		delete(before, name)
	}
	for name := range before {
		assert.True(t, strings.HasPrefix(name, "examples/"), "%s is gone", name)
	}
}
