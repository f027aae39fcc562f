package tagging

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

var room = mm.BoxAt(28, 40, 170, 180)

// planted makes a ground of n marks at random, each with a tag to place, and a word.
func planted(r *rand.Rand, n int) (*Ground, []Tag) {
	g := NewGround(room)
	g.Word(mm.BoxAt(100, 100, 20, 4))
	var tags []Tag
	for i := range n {
		d := Dot{Spot: mm.At(room.X+10+r.Float64()*150, room.Y+10+r.Float64()*160), R: 1}
		g.Mark(d)
		tags = append(tags, Tag{Points: []int{i}, At: mm.BoxAt(0, 0, 24, 12), To: d})
	}
	g.Outline(mm.BoxAt(60, 60, 12, 8))
	g.Settle()
	return g, tags
}

// Tags that are placed stand in the room, on nothing that is taken, and apart; their
// leaders end at their marks, cross no other and run over no word.
func TestPlace(t *testing.T) {
	r := rand.New(rand.NewSource(7))
	placed := 0
	for range 30 {
		g, tags := planted(r, 1+r.Intn(18))
		tags, ok := Place(g, mm.At(113, 130), false, tags)
		if !ok {
			continue
		}
		placed++
		for i, a := range tags {
			assert.Zero(t, g.count(a.At))
			assert.Equal(t, a.At, mm.BoxAt(max(a.At.X, room.X), max(a.At.Y, room.Y), 24, 12))
			assert.True(t, a.At.Right() <= room.Right() && a.At.Bottom() <= room.Bottom())
			assert.InDelta(t, a.To.R, mm.Distance(a.Leader.B, a.To.Spot), 1e-9)
			for _, w := range g.words {
				assert.False(t, a.Leader.Hits(w))
			}
			for _, b := range tags[:i] {
				assert.False(t, a.At.Meets(b.At) || a.Leader.Crosses(b.Leader) || a.Leader.Hits(b.At) || b.Leader.Hits(a.At))
			}
		}
	}
	assert.Greater(t, placed, 20)
}

// The same ground and tags come out the same, and more tags than the room holds are
// refused.
func TestPlaceIsRepeatable(t *testing.T) {
	place := func() []Tag {
		g, tags := planted(rand.New(rand.NewSource(3)), 12)
		tags, ok := Place(g, mm.At(113, 130), false, tags)
		require.True(t, ok)
		return tags
	}
	assert.Equal(t, place(), place())
	g, tags := planted(rand.New(rand.NewSource(3)), 90)
	_, ok := Place(g, mm.At(113, 130), false, tags)
	assert.False(t, ok)
}

// Where placing is strict every tag stands on its mark's side of the centre line.
func TestStrictTagsKeepTheirSide(t *testing.T) {
	g, tags := planted(rand.New(rand.NewSource(5)), 8)
	tags, ok := Place(g, mm.At(113, 130), true, tags)
	require.True(t, ok)
	for _, tag := range tags {
		if side := tag.To.X - 113; side > 1 || side < -1 {
			assert.Greater(t, side*(tag.At.X+tag.At.W/2-113), 0.0)
		}
	}
}

// A word takes only room that is free.
func TestWordsTakeFreeRoom(t *testing.T) {
	g := NewGround(room)
	assert.True(t, g.Word(mm.BoxAt(50, 50, 20, 4)))
	assert.False(t, g.Word(mm.BoxAt(60, 52, 20, 4)), "taken")
	assert.False(t, g.Word(mm.BoxAt(20, 70, 20, 4)), "leaves the room")
}

// Marks that touch share a tag, as many as it may have, and its leader goes to a ring
// around all of them.
func TestMarksThatTouchShareATag(t *testing.T) {
	marks := []mm.Spot{mm.At(0, 0), mm.At(10, 0), mm.At(1, 0), mm.At(2, 0)}
	assert.Equal(t, [][]int{{0, 2}, {1}, {3}}, Together(marks, 3, 2))
	assert.Equal(t, Dot{Spot: mm.At(1, 0), R: 1 + 0.7 + ringAir}, Ring([]mm.Spot{mm.At(0, 0), mm.At(2, 0)}, 0.7))
	assert.Equal(t, Dot{Spot: mm.At(4, 5), R: 0.7}, Ring([]mm.Spot{mm.At(4, 5)}, 0.7))
}
