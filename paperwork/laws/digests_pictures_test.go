package laws

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// What a sheet says, by a picture of it that another program makes, in which all that
// belongs to the pack is made white.

// pictureDPI shows a change of 0.1 mm as a shade of a pixel of half a millimetre.
const pictureDPI = 50

// A picture is a page in shades of grey.
type picture struct {
	wide, tall int
	shades     []byte
}

// picturesOf draws every page of a pack with pdftoppm.
func picturesOf(t *testing.T, pdf []byte) (pages []picture) {
	t.Helper()
	dir := t.TempDir()
	file := filepath.Join(dir, "pack.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o644))
	trials.Tool(t, "pdftoppm", "-r", fmt.Sprint(pictureDPI), "-gray", file, filepath.Join(dir, "page"))
	names, err := filepath.Glob(filepath.Join(dir, "page-*.pgm"))
	require.NoError(t, err)
	slices.Sort(names)
	for _, name := range names {
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		pages = append(pages, asPicture(t, text))
	}
	return pages
}

// asPicture reads a portable graymap of a byte for each pixel. Source: the format's own
// page of netpbm, pgm(5).
func asPicture(t *testing.T, text []byte) (p picture) {
	t.Helper()
	most := 0
	r := bytes.NewReader(text)
	_, err := fmt.Fscanf(r, "P5\n%d %d\n%d\n", &p.wide, &p.tall, &most)
	require.NoError(t, err)
	require.Equal(t, 255, most)
	p.shades = text[len(text)-r.Len():]
	require.Len(t, p.shades, p.wide*p.tall)
	return p
}

// cleared is a picture with some places white.
func (p picture) cleared(places [][4]float64) picture {
	p.shades = slices.Clone(p.shades)
	const perMm, air = pictureDPI / 25.4, 0.6 // mm; ascenders and brackets stand out of a text's room
	for _, b := range places {
		for y := max(int((b[1]-air)*perMm), 0); y <= min(int((b[3]+air)*perMm), p.tall-1); y++ {
			for x := max(int((b[0]-air)*perMm), 0); x <= min(int((b[2]+air)*perMm), p.wide-1); x++ {
				p.shades[y*p.wide+x] = 255
			}
		}
	}
	return p
}

// ofThePack are the places of a page where mark, revision, numbers of pages and codes
// stand. The marks of other sheets, which the cover lists, belong to what it says.
func (e *edition) ofThePack(sheet string, page int) (places [][4]float64) {
	for _, m := range e.drawn.Marks {
		listed := sheet == "COVER" && m.Pt == paper.SmallBold.Pt && m.Bold && len(m.Text) == 4
		if m.Page == page && (m.Apart && !listed || m.Kind == "code") {
			places = append(places, [4]float64{m.X0, m.Y0, m.X1, m.Y1})
		}
	}
	return places
}

// pagesOf are the numbers of the pages of a sheet.
func (e *edition) pagesOf(sheet string) (pages []int) {
	for i, name := range e.pageSheets() {
		if name == sheet {
			pages = append(pages, i+1)
		}
	}
	return pages
}

// TestPicturesFollowTheDigests: sheets of equal digests are pictures of equal pixels,
// those of other digests are not, unless the record says that they differ in nothing
// that a picture shows.
func TestPicturesFollowTheDigests(t *testing.T) {
	var n digestCount
	unseen := 0
	for k := range deep.Of(1, 6) {
		r := newRound(600_000 + int64(k)*jobsOfRound)
		for i := range 5 {
			one, not := r.somePair(5*k + i).pictured(t)
			n.add(one)
			unseen += not
		}
	}
	t.Logf("%+v, of them unseen: %d", n, unseen)
	require.Greater(t, min(n.equal, n.unequal), 5)
}

// pictured compares the pictures of all sheets that both packs have, and counts those of
// other digests whose pictures are the same.
func (p pair) pictured(t *testing.T) (n digestCount, unseen int) {
	t.Helper()
	n.pairs = 1
	was, is := picturesOf(t, p.was.drawn.PDF), picturesOf(t, p.is.drawn.PDF)
	require.Len(t, was, p.was.drawn.Pages)
	for name, r := range p.was.records {
		if _, both := p.is.records[name]; !both {
			continue
		}
		alike := p.picturedAlike(name, was, is)
		equal := p.was.identities[name].Digest == p.is.identities[name].Digest
		n.count(same, equal)
		if alike && !equal {
			unseen++
			assert.True(t, nothingToSee(r, p.is.records[name]), "%s of seed %d: %s has another digest and the same picture", p.edit.name, p.seed, name)
		}
		assert.True(t, alike || !equal, "%s of seed %d: %s has the same digest and another picture", p.edit.name, p.seed, name)
	}
	return n, unseen
}

// somePair is a pair of packs of few pages with revisions of as many characters, of the
// next edit that has one. The first of them has a stack more, which moves pages.
func (r *round) somePair(i int) pair {
	const pagesMost = 40
	first := slices.IndexFunc(edits, func(e edit) bool { return e.name == "a stack more" })
	for ; ; i++ {
		e := &edits[(first+7*i)%len(edits)]
		for k := range jobsOfRound {
			p, ok := r.pairOf(e, (i+k)%jobsOfRound)
			if ok && p.is.drawn.Pages <= pagesMost && p.was.drawn.Pages <= pagesMost && len(p.was.Revision) == len(p.is.Revision) {
				return p
			}
		}
	}
}

// picturedAlike reports whether a sheet has the same pixels in both packs where neither
// has what belongs to the pack.
func (p pair) picturedAlike(sheet string, was, is []picture) bool {
	first, second := p.was.pagesOf(sheet), p.is.pagesOf(sheet)
	if len(first) != len(second) {
		return false
	}
	for i := range first {
		places := append(p.was.ofThePack(sheet, first[i]), p.is.ofThePack(sheet, second[i])...)
		a, b := was[first[i]-1].cleared(places), is[second[i]-1].cleared(places)
		if a.wide != b.wide || !bytes.Equal(a.shades, b.shades) {
			return false
		}
	}
	return true
}

// nothingToSee reports whether two records differ, and in the texts of codes and in
// places by less than a fifth of a pixel alone.
func nothingToSee(was, is record) bool {
	if how, _ := was.against(is); how == same || len(was.ink) != len(is.ink) || !slices.Equal(was.apart, is.apart) {
		return false
	}
	for i, m := range was.ink {
		n := is.ink[i]
		if m.Kind == "code" {
			m.Text, n.Text = "", ""
		}
		if moved(m, n) > 0.1 {
			return false
		}
	}
	return true
}
