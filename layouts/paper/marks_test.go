package paper

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"math"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat/distuv"
)

// marksDrawn is how many random digests marks are made of.
const marksDrawn = 100_000

// eachMark visits the marks of random digests, the same each time.
func eachMark(visit func(mark string)) {
	for i := range uint64(marksDrawn) {
		digest := sha256.Sum256(binary.BigEndian.AppendUint64(nil, i))
		visit(markOf(digest[:]))
	}
}

// A mark is four of 29 letters: those of A to Z and 2 to 9 but B I O S Z, which a poor
// copy takes for 8 1 0 5 2.
func TestMarksAreOfTheirLetters(t *testing.T) {
	want := ""
	for r := '2'; r <= 'Z'; r++ {
		if r <= '9' || r >= 'A' && !strings.ContainsRune("BIOSZ", r) {
			want += string(r)
		}
	}
	require.Len(t, want, 29)
	assert.Equal(t, want, markLetters)
	eachMark(func(mark string) {
		require.Len(t, mark, 4)
		require.Empty(t, strings.Trim(mark, want), mark)
	})
}

// lettersOfMarks: each letter comes about equally often at each place. Source of the
// critical value: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper
// critical values of the chi-square distribution, 28 degrees of freedom, 0.001 (from
// memory), and gonum.
func lettersOfMarks(t *testing.T) (cases int, worst float64) {
	const critical = 56.892
	require.InDelta(t, distuv.ChiSquared{K: 28}.Quantile(0.999), critical, 0.0005)
	counts := [4]map[rune]float64{{}, {}, {}, {}}
	eachMark(func(mark string) {
		for place, r := range mark {
			counts[place][r]++
		}
	})
	expected := float64(marksDrawn) / 29
	for place, count := range counts {
		chi := 0.0
		for _, r := range markLetters {
			chi += (count[r] - expected) * (count[r] - expected) / expected
		}
		t.Logf("place %d: chi-square %.1f", place+1, chi)
		assert.Less(t, chi, critical, "place %d", place+1)
		worst = math.Max(worst, chi/critical)
	}
	return marksDrawn, worst
}

// equalMarks: marks are equal as seldom as if each were drawn from 29^4: of n marks
// n(n-1)/2 pairs, each with that chance, which is about a Poisson distribution; its
// standard deviation is the root of its mean. Source: the birthday problem, as in W.
// Feller, An Introduction to Probability Theory and Its Applications, vol. 1, II.3 (from
// memory).
func equalMarks(t *testing.T) (cases int, worst float64) {
	had, pairs := map[string]int{}, 0
	eachMark(func(mark string) {
		pairs += had[mark]
		had[mark]++
	})
	mean := float64(marksDrawn) * (marksDrawn - 1) / 2 / math.Pow(29, 4)
	most := 4 * math.Sqrt(mean)
	t.Logf("%d equal pairs, %.0f expected", pairs, mean)
	assert.InDelta(t, mean, float64(pairs), most)
	return marksDrawn, math.Abs(float64(pairs)-mean) / most
}

// A mark is made of its digest and of nothing else: whatever else is in the pack, it is
// the digest's first eight bytes, written to the base of 29 from the lowest digit, cut
// to four. The sum is made with whole numbers of any size.
func TestMarksAreOfTheDigestAlone(t *testing.T) {
	for _, p := range []Pack{{Sheets: []Sheet{oneCode("ONE"), oneCode("TWO")}}, {Title: "a", Revision: "Q", Letter: true, Sheets: []Sheet{oneCode("TWO")}}} {
		laid, err := Lay(p)
		require.NoError(t, err)
		for _, id := range laid.Identities() {
			digest, err := hex.DecodeString(id.Digest)
			require.NoError(t, err)
			require.Len(t, digest, sha256.Size)
			n, digit, mark := new(big.Int).SetBytes(digest[:8]), new(big.Int), ""
			for range 4 {
				n.DivMod(n, big.NewInt(29), digit)
				mark += string(markLetters[digit.Int64()])
			}
			assert.Equal(t, mark, id.Mark, id.Name)
		}
	}
}
