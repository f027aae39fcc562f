package paper

import (
	"bytes"
	"compress/zlib"
	"io"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/mm"
)

// plainPDF is what the PDF library makes of two pages.
func plainPDF(t *testing.T) []byte {
	t.Helper()
	c := canvasFor()
	for _, s := range []string{"endstream and /Type /Catalog", "stream (\\) >>"} {
		c.pdf.AddPage()
		c.In("all", mm.BoxAt(0, 0, 200, 200), func() { c.Text(20, 20, Text, s); c.Line(10, 10, 90, 90, Solid) })
	}
	var out bytes.Buffer
	require.NoError(t, c.pdf.Output(&out))
	return out.Bytes()
}

var streamOf = regexp.MustCompile(`(?s)^(.*?)\nstream\n(.*)\nendstream\nendobj\n$`)

// inflated returns an object's stream as a reader sees it, and nil where it has none.
func inflated(t *testing.T, object []byte) []byte {
	t.Helper()
	m := streamOf.FindSubmatch(object)
	if m == nil || !bytes.Contains(m[1], []byte("/FlateDecode")) {
		return bytes.Join(m[min(1, len(m)):], nil)
	}
	z, err := zlib.NewReader(bytes.NewReader(m[2]))
	require.NoError(t, err)
	text, err := io.ReadAll(z)
	require.NoError(t, err)
	return text
}

// A finished PDF has the objects of the plain one, in their order, each at the place
// that its table names, and every stream inflates to what it was: pages, character
// maps, and fonts, which were packed before.
func TestFinishKeepsEveryObject(t *testing.T) {
	plain := plainPDF(t)
	pdf, err := finish(plain, []destination{{"TWO", 2}, {"ONE", 1}}, Colophon{})
	require.NoError(t, err)
	was, _, err := apart(plain)
	require.NoError(t, err)
	is, trailer, err := apart(pdf)
	require.NoError(t, err)
	require.Len(t, is, len(was))
	packed := 0
	for i := range was {
		number, _, _ := strings.Cut(string(was[i]), "\n")
		assert.True(t, strings.HasPrefix(string(is[i]), number+"\n"), "object %d", i+1)
		before := inflated(t, was[i])
		if m := streamOf.FindSubmatch(was[i]); m != nil && !bytes.Contains(m[1], []byte("/Filter")) {
			before = m[2]
			packed++
			assert.Contains(t, string(is[i]), "/FlateDecode")
		}
		assert.Equal(t, before, inflated(t, is[i]), "object %d", i+1)
	}
	assert.GreaterOrEqual(t, packed, 3, "two pages and a character map")
	assert.Contains(t, string(is[len(is)-1]), "/Type /Catalog\n/ViewerPreferences <</PrintScaling /None>>\n")
	assert.Regexp(t, `/ID \[<([0-9a-f]{32})> <[0-9a-f]{32}>\]`, string(trailer))
	assert.True(t, bytes.HasPrefix(pdf, []byte("%PDF-1.7\n%")))
}

// What is no PDF of the library is an error and not a broken file.
func TestFinishRefuses(t *testing.T) {
	plain := plainPDF(t)
	for _, bad := range [][]byte{nil, []byte("%PDF"), plain[:len(plain)/2], bytes.Replace(plain, []byte("\nxref\n"), []byte("\nxrex\n"), 1)} {
		_, err := finish(bad, nil, Colophon{})
		assert.Error(t, err)
	}
}
