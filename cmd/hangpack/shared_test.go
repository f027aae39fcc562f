package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSharedFile: two jobs of a line that would write one file are both refused,
// whatever the spelling or the link by which they get there, and nothing is written.
func TestSharedFile(t *testing.T) {
	for name, tt := range map[string]struct{ line, says string }{
		"two endings":          {"a.yaml a.yml", "a.pdf is also what a.yml would write; neither job is packed"},
		"a folder over":        {"a.yaml deep/../a.yaml", "a.pdf is also what deep/../a.yaml would write, as deep/../a.pdf; neither job is packed"},
		"a linked folder":      {"a.yaml again/a.yaml", "a.pdf is also what again/a.yaml would write, as again/a.pdf; neither job is packed"},
		"capitals":             {"a.yaml A.yaml", "a.pdf is also what A.yaml would write, as A.pdf; neither job is packed"},
		"links to one file":    {"b.yaml c.yaml", "b.pdf is also what c.yaml would write, as c.pdf; neither job is packed"},
		"a link to another":    {"d.yaml deep/a.yaml", "d.pdf is also what deep/a.yaml would write, as deep/a.pdf; neither job is packed"},
		"a link into the dark": {"e.yaml f.yaml", "e.pdf is also what f.yaml would write, as f.pdf; neither job is packed"},
		"a pack and a stack":   {"SL.yaml stacks.yaml", "SL.pdf is also what stacks.yaml would write, since job.url has {stack}; neither job is packed"},
		"a stack by capitals":  {"sr.yaml stacks.yaml", "sr.pdf is also what stacks.yaml would write, as SR.pdf, since job.url has {stack}; neither job is packed"},
		"two stacks":           {"stacks.yaml more.yaml", "SL.pdf is also what more.yaml would write, since job.url has {stack}; neither job is packed"},
	} {
		t.Run(name, func(t *testing.T) {
			sharing(t)
			for _, old := range []bool{false, true} { // also where packs are there already
				if old {
					for _, pack := range []string{"a.pdf", "A.pdf", "SL.pdf"} {
						if name != "capitals" || pack != "A.pdf" {
							require.NoError(t, os.WriteFile(pack, []byte("old"), 0o644))
						}
					}
				}
				files := strings.Fields(tt.line)
				_, errs, code := apart(t, "hangpack pack "+tt.line)
				assert.Equal(t, exitWrong, code)
				said := lines(errs)
				require.Len(t, said, 2, errs)
				assert.Equal(t, "hangpack: pack: "+files[0]+": "+tt.says, said[0])
				assert.Contains(t, said[1], "hangpack: pack: "+files[1]+": ")
				assert.Contains(t, said[1], " is also what "+files[0]+" would write")
				for pack, text := range pdfs(t) {
					assert.Equal(t, "old", text, "%s is written", pack)
				}
				relink(t)
			}
		})
	}
}

// sharing makes a folder of jobs that get in each other's way, and goes there.
func sharing(t *testing.T) {
	t.Helper()
	copied(t)
	for _, name := range []string{"a.yaml", "a.yml", "A.yaml", "b.yaml", "c.yaml", "d.yaml", "e.yaml", "f.yaml", "SL.yaml", "sr.yaml", "deep/a.yaml"} {
		edited(t, "examples/club.yaml", name)
	}
	for _, name := range []string{"stacks.yaml", "more.yaml"} {
		edited(t, "examples/concert.yaml", name, "lantern-quay.pdf", "{stack}.pdf")
	}
	require.NoError(t, os.Symlink(".", "again"))
	relink(t)
}

// relink lays the links by which packs lead to each other.
func relink(t *testing.T) {
	t.Helper()
	for link, to := range map[string]string{"b.pdf": "deep/real.pdf", "c.pdf": "again/deep/real.pdf", "d.pdf": "deep/a.pdf", "e.pdf": "nowhere.pdf", "f.pdf": "e.pdf"} {
		os.Remove(link)
		require.NoError(t, os.Symlink(to, link))
	}
}

// TestNotShared: what only looks alike is packed.
func TestNotShared(t *testing.T) {
	sharing(t)
	require.NoError(t, os.Symlink("a.yaml", "other.yaml")) // another name, another pack
	_, errs, code := apart(t, "hangpack pack -q a.yaml deep/a.yaml other.yaml stacks.yaml")
	assert.Equal(t, exitDone, code, errs)
	assert.Empty(t, errs)
	for _, name := range []string{"a.pdf", "deep/a.pdf", "other.pdf", "stacks.pdf", "SL.pdf", "SR.pdf"} {
		assert.FileExists(t, name)
	}
	// A job that is at fault writes nothing, and so does not stand in the way.
	require.NoError(t, os.Remove("a.pdf"))
	edited(t, "testdata/slips.yaml", "a.yml")
	_, errs, code = apart(t, "hangpack pack -q a.yaml a.yml")
	assert.Equal(t, exitWrong, code)
	assert.Contains(t, errs, "4 complaints; nothing written")
	assert.FileExists(t, "a.pdf")
}

// TestNotOverAnother: no job is written over another one of the line, nor over a file
// that another one is read from; that other one is packed.
func TestNotOverAnother(t *testing.T) {
	sharing(t)
	edited(t, "examples/club.yaml", "job.pdf")
	edited(t, "examples/club.yaml", "job.yaml")
	edited(t, "examples/gear/harbour-lights.yaml", "tour.pdf")
	edited(t, "examples/club.yaml", "tour.yaml")
	edited(t, "examples/arena.yaml", "arena.yaml", "gear/harbour-lights.yaml", "tour.pdf")
	edited(t, "testdata/slips.yaml", "SR.pdf")
	require.NoError(t, os.Symlink("job.pdf", "link.pdf"))
	edited(t, "examples/club.yaml", "link.yaml")
	kept := map[string]string{}
	for _, name := range []string{"job.pdf", "tour.pdf", "SR.pdf"} {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		kept[name] = string(text)
	}
	_, errs, code := apart(t, "hangpack pack -q job.yaml tour.yaml job.pdf link.yaml arena.yaml stacks.yaml ./SR.pdf")
	assert.Equal(t, exitWrong, code)
	said := lines(errs)
	require.Len(t, said, 10, errs)
	assert.Equal(t, []string{
		"hangpack: pack: job.yaml: job.pdf is a job of this line; it is not written over",
		"hangpack: pack: tour.yaml: tour.pdf is read for arena.yaml; it is not written over",
		"hangpack: pack: job.pdf: job.pdf is the job itself; name another file with -o",
		"hangpack: pack: link.yaml: link.pdf is job.pdf, a job of this line; it is not written over",
		"hangpack: pack: stacks.yaml: SR.pdf is ./SR.pdf, a job of this line; it is not written over",
	}, said[:5])
	for name, text := range kept {
		got, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.Equal(t, text, string(got), name)
	}
	assert.FileExists(t, "arena.pdf")
	for _, name := range []string{"stacks.pdf", "SL.pdf"} {
		assert.NoFileExists(t, name)
	}
	drafts, err := filepath.Glob(".hangpack-*")
	require.NoError(t, err)
	assert.Empty(t, drafts)
}
