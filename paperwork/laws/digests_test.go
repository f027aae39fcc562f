package laws

import (
	"fmt"
	"maps"
	"math/rand"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/testdata/deep"
	"hangpack/testdata/plausible"
)

// A pair is a random job and an edit of it, both packed.
type pair struct {
	edit    *edit
	seed    int64
	was, is *edition
	// as written once more, after the edit
	wasText, isText string
}

// jobsOfRound are the random jobs that the edits of a round share.
const jobsOfRound = 16

// A round is some random jobs, each packed once, and the edits that are tried on them.
type round struct {
	from     int64
	editions [jobsOfRound]func() *edition
}

func newRound(from int64) *round {
	r := &round{from: from}
	for i := range r.editions {
		seed := from + int64(i)
		r.editions[i] = sync.OnceValue(func() *edition {
			e, err := editionOf(plausible.Job(seed, seed%4 == 3))
			if err != nil {
				panic(fmt.Sprintf("seed %d: %v", seed, err))
			}
			return e
		})
	}
	return r
}

// pairOf edits one of the jobs; false where the edit finds nothing in it, or makes a job
// that is refused.
func (r *round) pairOf(e *edit, i int) (p pair, ok bool) {
	seed := r.from + int64(i)
	n := asTree(plausible.Job(seed, seed%4 == 3))
	p = pair{edit: e, seed: seed, was: r.editions[i](), wasText: n.text()}
	if !e.do(&editor{tree: n, Rand: rand.New(rand.NewSource(seed)), was: p.was}) {
		return p, false
	}
	var err error
	p.isText = n.text()
	p.is, err = editionOf(p.isText)
	return p, err == nil
}

// firstPair is a pair of an edit with the first job that takes it, from job i on.
func (r *round) firstPair(e *edit, i int) (p pair, ok bool) {
	for k := range jobsOfRound {
		if p, ok = r.pairOf(e, (i+k)%jobsOfRound); ok {
			return p, true
		}
	}
	return p, false
}

// A digestCount is what a run has compared.
type digestCount struct{ pairs, sheets, equal, unequal, close, onlyInOne int }

// TestDigestsFollowTheInk: two sheets of one name have equal digests in two packs if
// and only if they have the same ink there, mark, revision and numbers of pages apart.
func TestDigestsFollowTheInk(t *testing.T) {
	var n digestCount
	var counting sync.Mutex
	rounds := deep.Of(2, 5)
	for k := range rounds {
		r := newRound(500_000 + int64(k)*jobsOfRound)
		onAllCores(len(edits), func(i int) {
			p, ok := r.firstPair(&edits[i], i+5*k)
			if !ok {
				t.Errorf("%s: no job of round %d takes it", edits[i].name, k)
				return
			}
			one := p.held(t)
			counting.Lock()
			defer counting.Unlock()
			n.add(one)
		})
	}
	t.Logf("%+v", n)
	require.Greater(t, min(n.equal, n.unequal), 200*rounds)
}

// held holds all sheets that both packs have to the law.
func (p pair) held(t *testing.T) (n digestCount) {
	t.Helper()
	n.pairs = 1
	p.thereAndBack(t)
	if len(p.was.Revision) != len(p.is.Revision) {
		p.onlyCoverMoves(t)
		return n
	}
	for name, was := range p.was.records {
		if is, has := p.is.records[name]; has {
			n.count(p.iff(t, name, was, is))
		} else {
			n.onlyInOne++
		}
	}
	return n
}

// count counts a sheet that is in both packs.
func (n *digestCount) count(how int, equal bool) {
	n.sheets++
	switch {
	case how == close:
		n.close++
	case equal:
		n.equal++
	default:
		n.unequal++
	}
}

func (n *digestCount) add(m digestCount) {
	n.pairs, n.sheets, n.onlyInOne = n.pairs+m.pairs, n.sheets+m.sheets, n.onlyInOne+m.onlyInOne
	n.equal, n.unequal, n.close = n.equal+m.equal, n.unequal+m.unequal, n.close+m.close
}

// iff holds the digests of a sheet in two packs to what the record says of both.
func (p pair) iff(t *testing.T, name string, was, is record) (how int, equal bool) {
	t.Helper()
	how, says := was.against(is)
	back, _ := is.against(was)
	assert.Equal(t, how, back, "%s: one way and the other", name)
	one, two := p.was.identities[name], p.is.identities[name]
	equal = one.Digest == two.Digest
	assert.True(t, !equal || one.Mark == two.Mark, "%s: two marks of one digest", name)
	switch {
	case how == same && !equal:
		t.Errorf("%s of seed %d: %s has another digest and the same ink", p.edit.name, p.seed, name)
	case how == other && equal:
		t.Errorf("%s of seed %d: %s has the same digest and other ink:\n  %s", p.edit.name, p.seed, name, strings.Join(says[:min(len(says), 5)], "\n  "))
	}
	if p.edit.same {
		assert.True(t, equal, "%s of seed %d: nothing may change, and %s does: %v", p.edit.name, p.seed, name, says[:min(len(says), 5)])
	}
	return how, equal
}

// thereAndBack: the first job again after the second, and the second after that, each
// as another file, have the digests that they had.
func (p pair) thereAndBack(t *testing.T) {
	t.Helper()
	digests := func(e *edition) map[string]string {
		all := map[string]string{}
		for name, id := range e.identities {
			all[name] = id.Digest
		}
		return all
	}
	for text, e := range map[string]*edition{p.wasText: p.was, p.isText: p.is} {
		if again := digestsOf(text); !maps.Equal(again, digests(e)) {
			t.Errorf("%s of seed %d: written once more it has other digests", p.edit.name, p.seed)
		}
	}
}

// onlyCoverMoves: a revision of other length may break lines elsewhere, which no digest
// sees; the cover has the fingerprint of the job, which covers the revision.
func (p pair) onlyCoverMoves(t *testing.T) {
	t.Helper()
	assert.Equal(t, len(p.was.identities), len(p.is.identities))
	for name, id := range p.was.identities {
		if name != "COVER" {
			assert.Equal(t, id.Digest, p.is.identities[name].Digest, "%s of seed %d: %s", p.edit.name, p.seed, name)
		}
	}
}
