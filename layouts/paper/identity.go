package paper

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"math"
	"strconv"
)

// An Identity is a sheet of a pack by what it says: its name, the mark that is printed
// on it, and the whole digest, in hex, that the mark is made of. Two sheets of one name
// say the same if their digests are equal, whatever pack they are in.
type Identity struct {
	Name   string `json:"name"`
	Mark   string `json:"mark"`
	Digest string `json:"digest"`
}

// markLetters are what marks are made of: no two of them look alike on a poor copy.
const markLetters = "23456789ACDEFGHJKLMNPQRTUVWXY"

// WidestMark takes as much room as any mark.
const WidestMark = "WWWW"

// markOf makes a mark of a digest.
func markOf(digest []byte) string {
	n := binary.BigEndian.Uint64(digest)
	mark := make([]byte, len(WidestMark))
	for i := range mark {
		mark[i] = markLetters[n%uint64(len(markLetters))]
		n /= uint64(len(markLetters))
	}
	return string(mark)
}

// An inked sheet is what it says: a digest of its ink, the sheets whose marks it shows,
// and how many pieces of ink there are.
type inked struct {
	own    []byte
	shows  []string
	pieces int
}

// anyRevision stands on sheets while their ink is taken: a long one makes lines break
// elsewhere, and the sheet says the same.
const anyRevision = "A"

// ink draws the pages of a sheet, cut with some canvas, into no PDF to take a digest of
// its ink.
func (p Pack) ink(s Sheet, c *Canvas, pages []Page) (inked, error) {
	var seen []byte
	pieces := 0
	for i, pg := range pages {
		c.page, c.before, c.marks = i+1, len(c.blocks), c.marks[:0]
		c.drawPage(p.Spine, s.Name(), pg, i, len(pages))
		for _, m := range c.marks {
			if !m.Apart {
				seen = m.appendSeen(seen)
			}
		}
		pieces += len(c.marks)
	}
	sum := sha256.Sum256(seen)
	return inked{sum[:], c.shows, pieces}, c.err
}

// appendSeen appends all that is seen of a piece of ink, lengths to 0.01 mm.
func (m Mark) appendSeen(to []byte) []byte {
	number := func(x float64) { to = binary.AppendVarint(to, int64(math.Round(x*100))) }
	for _, x := range [...]float64{float64(m.Page), m.X0, m.Y0, m.X1, m.Y1, m.Pt, m.Pen, float64(m.Fill), m.Rounded, float64(len(m.Corners)), float64(len(m.Dashes))} {
		number(x)
	}
	for _, corner := range m.Corners {
		number(corner[0])
		number(corner[1])
	}
	for _, dash := range m.Dashes {
		number(dash)
	}
	for _, is := range [...]bool{m.Bold, m.White, m.Open} {
		to = strconv.AppendBool(to, is)
	}
	return append(append(append(append(to, m.Kind...), 0), m.Text...), 0)
}

// identify gives every sheet its digest and its mark. A sheet that shows the marks of
// others says something else when they do.
func (l *Laid) identify() {
	own := map[string][]byte{}
	for _, s := range l.sheets {
		own[s.Name] = s.own
	}
	for i := range l.sheets {
		s, sum := &l.sheets[i], sha256.New()
		sum.Write(s.own)
		for _, name := range s.shows {
			sum.Write(own[name])
		}
		digest := sum.Sum(nil)
		s.Mark, s.Digest = markOf(digest), hex.EncodeToString(digest)
	}
}

// Identities are those of all sheets of the pack, in their order.
func (l *Laid) Identities() (all []Identity) {
	for _, s := range l.sheets {
		all = append(all, s.Identity)
	}
	return all
}
