package main

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
)

// TestJobKey: a text reads like a job or a gear file by one key at the start of a line,
// however it is written; not by what only looks like one.
func TestJobKey(t *testing.T) {
	for text, want := range map[string]int{
		"job: {}": 1, "# of a show\n\ngear:\n": 3, "\ufeffjob:": 1, "x: 1\r\nstacks:\r\n": 2, "x\rpaper :\r": 1,
		"{job: {title: x}}": 1, "{\n  \"job\": {": 2, "'gear' :": 1, "---\n\"practice\": {}": 2, "other_points:": 1, "gear_files: [a]": 1,
		"": 0, "job": 0, "the job: x": 0, "jobs: x": 0, "  job: x": 0, "# job: x": 0, "x: {job: y}": 0, "title: x": 0, "%PDF-1.7\njob: x": 0,
		strings.Repeat("x\n", readMost/2) + "job: x": 0,
	} {
		line, key := jobKey([]byte(text))
		assert.Equal(t, want, line, "%.40q", text)
		assert.Equal(t, want > 0, key != "", "%.40q", text)
	}
}

// TestReplaces: a PDF is another one's own by all of its job's title, venue and date, and
// by its kind.
func TestReplaces(t *testing.T) {
	one := paper.Colophon{Kind: paper.WholePack, Title: "Show", Venue: "Hall", Date: "2027-03-04", Revision: "A"}
	of := func(change func(*paper.Colophon)) paper.Colophon {
		c := one
		change(&c)
		return c
	}
	chosen := of(func(c *paper.Colophon) { c.Kind = paper.ChosenSheets })
	moves := of(func(c *paper.Colophon) { c.Kind = paper.ChangesSheet })
	left := of(func(c *paper.Colophon) { c.Kind, c.Stack = paper.StackSheets, "SL" })
	right := of(func(c *paper.Colophon) { c.Kind, c.Stack = paper.StackSheets, "SR" })
	all := []paper.Colophon{one, chosen, moves, left, right, {}}
	for i, new := range []paper.Colophon{one, moves, left, right} {
		for k, old := range all {
			own := []bool{k <= 1, k == 2, k == 3, k == 4}[i]
			assert.Equal(t, own, replaces(new, old), "%+v over %+v", new, old)
			for _, change := range []func(*paper.Colophon){
				func(c *paper.Colophon) { c.Title += "x" }, func(c *paper.Colophon) { c.Venue += "x" }, func(c *paper.Colophon) { c.Date += "x" },
			} {
				other := old
				change(&other)
				assert.False(t, replaces(new, other), "%+v over %+v", new, other)
			}
			old.Revision = "B"
			assert.Equal(t, own, replaces(new, old), "another revision of it")
		}
	}
}

// TestMixedUpNamesSome: of many sheets a dozen are named.
func TestMixedUpNamesSome(t *testing.T) {
	pack := func(digest string, names ...string) paper.Colophon {
		c := paper.Colophon{Kind: paper.WholePack, Revision: "B"}
		for _, name := range names {
			c.Sheets = append(c.Sheets, paper.Identity{Name: name, Digest: digest})
		}
		return c
	}
	names := strings.Fields("COVER A B C D E F G H I J K")
	assert.Empty(t, mixedUp("x.pdf", pack("1", names...), pack("1", names...)))
	assert.Equal(t, "x.pdf replaces a pack of the same revision B that says something else: A, B, C, D, E, F, G, H, I, J, K, COVER; raise the revision, or sheets of both will be mixed up",
		mixedUp("x.pdf", pack("1", names...), pack("2", names...)))
	assert.Contains(t, mixedUp("x.pdf", pack("1", append(names, "L", "M")...), pack("2", names...)), ": A, B, C, D, E, F, G, H, I, J, K, L (gone) and 2 more; ")
}

// TestNotLookedAt: what is too large to be a pack is not read.
func TestNotLookedAt(t *testing.T) {
	copied(t)
	require.NoError(t, os.WriteFile("large.pdf", []byte("%PDF-1.7\n/Producer (hangpack)"), 0o644))
	refused := "large.pdf is made by hangpack, and of which job cannot be read"
	_, errs, code := apart(t, "hangpack pack -q examples/club.yaml -o large.pdf")
	assert.Equal(t, exitWrong, code)
	assert.Contains(t, errs, refused)
	require.NoError(t, os.Truncate("large.pdf", standingMost+1))
	_, errs, code = apart(t, "hangpack pack -q examples/club.yaml -o large.pdf")
	assert.Equal(t, exitDone, code, errs)
}

// TestOwnThroughLinks: what stands in a place is known through a link to it.
func TestOwnThroughLinks(t *testing.T) {
	copied(t)
	_, errs, code := apart(t, "hangpack pack -q examples/concert.yaml -o real.pdf")
	require.Equal(t, exitDone, code, errs)
	require.NoError(t, os.Symlink("real.pdf", "link.pdf"))
	before, err := os.ReadFile("real.pdf")
	require.NoError(t, err)
	_, errs, code = apart(t, "hangpack pack examples/club.yaml -o link.pdf")
	assert.Equal(t, exitWrong, code)
	assert.True(t, strings.HasPrefix(errs, "hangpack: pack: link.pdf is the pack of Lantern Quay summer concert, "), errs)
	after, err := os.ReadFile("real.pdf")
	require.NoError(t, err)
	assert.True(t, string(before) == string(after))
}
