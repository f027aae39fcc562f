package paper

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// smallPDF is a pack of ours, and what it should say of itself.
func smallPDF(t testing.TB, spine Spine) ([]byte, Colophon) {
	t.Helper()
	drawn, err := DrawAll(Pack{Title: spine.Title, Revision: "B", Spine: spine, Day: time.Date(2027, 6, 12, 0, 0, 0, 0, time.UTC), Sheets: []Sheet{called("COVER"), called("SL PINS")}})
	require.NoError(t, err)
	require.Len(t, drawn.Colophon.Sheets, 2)
	return drawn.PDF, drawn.Colophon
}

// everyLetter is a text of all characters that the paper's font has.
func everyLetter() string {
	var b strings.Builder
	for c := rune(1); c <= 0x10ffff; c++ {
		if Prints(c) {
			b.WriteRune(c)
		}
	}
	return b.String()
}

var spines = map[string]Spine{
	"plain":   {"Show", "Hall", "2027-06-12"},
	"marks":   {`a (b \ c) \( "d" 'e' <f> &g; \\)`, `)))((\`, "2027-06-12"},
	"letters": {"Été à la façade, Ünter Łódź, Ωμέγα, Жук", "«Hall» – “two” €", "2027-06-12"},
	"a name":  {"/Hangpack ({}) /Producer (x)", "%%EOF endobj", "2027-06-12"},
}

// What a PDF says of itself is read back whatever letters its texts have.
func TestColophonIsReadBack(t *testing.T) {
	for name, spine := range spines {
		pdf, says := smallPDF(t, spine)
		got, ours := ReadColophon(pdf)
		assert.True(t, ours, name)
		assert.Equal(t, says, got, name)
		assert.Equal(t, Colophon{Kind: WholePack, Title: spine.Title, Venue: spine.Venue, Date: spine.Date, Revision: "B", Sheets: says.Sheets}, got)
	}
	letters := []rune(everyLetter() + "𝄞\u2028\x7f")
	require.Greater(t, len(letters), 500)
	for len(letters) > 0 {
		n := min(72, len(letters))
		says := Colophon{Kind: ChangesSheet, Title: string(letters[:n]), Venue: "Hall", Date: "2027-06-12", Revision: "A"}
		info, err := withColophon([]byte("9 0 obj\n<<\n/Producer (x)\n>>\nendobj\n"), says)
		require.NoError(t, err)
		for _, c := range info {
			require.True(t, c == '\n' || c >= ' ' && c < 0x7f, "%q", info)
		}
		got, ours := ReadColophon(append([]byte("%PDF-1.7\n"), info...))
		assert.True(t, ours)
		assert.Equal(t, says, got)
		letters = letters[n:]
	}
}

// Another program finds the same in the document information, and a PDF that it wrote
// anew is known as well.
func TestColophonReadByAnother(t *testing.T) {
	if _, err := exec.LookPath("qpdf"); err != nil {
		if os.Getenv("HANGPACK_TOOLS") != "" {
			t.Fatal("qpdf is not installed")
		}
		t.Skip("qpdf is not installed")
	}
	for name, spine := range spines {
		pdf, says := smallPDF(t, spine)
		file := filepath.Join(t.TempDir(), "x.pdf")
		require.NoError(t, os.WriteFile(file, pdf, 0o644))
		out, err := exec.Command("qpdf", "--json", "--json-key=qpdf", file).Output()
		require.NoError(t, err, name)
		var whole struct {
			QPDF []map[string]any
		}
		require.NoError(t, json.Unmarshal(out, &whole))
		var text string
		for _, o := range whole.QPDF[1] {
			object, _ := o.(map[string]any)
			info, _ := object["value"].(map[string]any)
			if said, has := info["/Hangpack"].(string); has {
				text = said
			}
		}
		var got Colophon
		require.NoError(t, json.Unmarshal([]byte(strings.TrimPrefix(text, "u:")), &got), text)
		assert.Equal(t, says, got, name)

		for _, change := range [][]string{{"--qdf"}, {"--linearize"}, {"--encrypt", "", "secret", "256", "--"}} {
			other := filepath.Join(t.TempDir(), "y.pdf")
			require.NoError(t, exec.Command("qpdf", append(change, file, other)...).Run(), change)
			pdf, err := os.ReadFile(other)
			require.NoError(t, err)
			got, ours := ReadColophon(pdf)
			assert.True(t, ours, "%s %v", name, change)
			if change[0] == "--encrypt" {
				says = Colophon{}
			}
			assert.Equal(t, says, got, "%s %v", name, change)
		}
	}
}

// A cut PDF says all of what it is or nothing, and no longer that it is ours where what
// says so is cut off.
func TestColophonOfCutPDFs(t *testing.T) {
	pdf, says := smallPDF(t, spines["marks"])
	key, end := bytes.LastIndex(pdf, []byte(colophonKey)), bytes.LastIndex(pdf, []byte("\n/Producer"))
	require.Less(t, key, end)
	for n := range len(pdf) {
		got, ours := ReadColophon(pdf[:n])
		assert.Equal(t, n >= key+len(colophonKey), ours, "%d of %d bytes", n, len(pdf))
		if n < end {
			assert.Zero(t, got, "%d of %d bytes", n, len(pdf))
		} else {
			assert.Equal(t, says, got, "%d of %d bytes", n, len(pdf))
		}
	}
}

// Whatever byte of a PDF is another one, it is never taken for that of another job by
// more than that byte, and nothing panics.
func TestColophonOfFlippedBytes(t *testing.T) {
	pdf, says := smallPDF(t, spines["letters"])
	key, end := bytes.LastIndex(pdf, []byte(colophonKey)), bytes.LastIndex(pdf, []byte("\n/Producer"))
	for at := range pdf {
		if (at < key-100 || at > end+100) && at%97 > 5 {
			continue
		}
		for _, flip := range []byte{1, 0x20, 0x80, 0xff} {
			bad := bytes.Clone(pdf)
			bad[at] ^= flip
			got, ours := ReadColophon(bad)
			if at < len("%PDF-") {
				assert.False(t, ours, "byte %d", at)
				continue
			}
			assert.True(t, ours, "byte %d", at) // by its key or by its producer
			if at < key || at > end {
				assert.Equal(t, says, got, "byte %d", at)
			}
		}
	}
}

// What is no PDF, not ours, or ours and of an older version.
func TestColophonOfOthers(t *testing.T) {
	pdf, _ := smallPDF(t, spines["plain"])
	old := bytes.Replace(pdf, []byte(colophonKey+" "), []byte("/Keywords "), 1)
	wide := "\xfe\xff"
	for _, u := range utf16.Encode([]rune("another hangpack")) {
		wide += string([]byte{byte(u >> 8), byte(u)})
	}
	for name, tt := range map[string]struct {
		pdf  string
		ours bool
	}{
		"nothing":           {"", false},
		"a text":            {"of /Hangpack ({})", false},
		"another's":         {"%PDF-1.7\n<< /Producer (another) >>", false},
		"another's, wide":   {"%PDF-1.7\n<< /Producer (" + wide + ") >>", false},
		"another's key":     {"%PDF-1.7\n<< /HangpackOther (x) /Producer (another) >>", false},
		"an older one":      {string(old), true},
		"by its plain name": {"%PDF-1.7\n<< /Producer (hangpack) >>", true},
		"by its key":        {"%PDF-1.7\n<< /Hangpack <7b7d> >>", true},
		"no JSON":           {"%PDF-1.7\n<< /Hangpack (x) >>", true},
		"no kind":           {`%PDF-1.7 /Hangpack ({"title":"Show","venue":"Hall","date":"2027-06-12"})`, true},
		"no title":          {`%PDF-1.7 /Hangpack ({"kind":"pack","venue":"Hall","date":"2027-06-12"})`, true},
		"no stack":          {`%PDF-1.7 /Hangpack ({"kind":"stack","title":"Show","venue":"Hall","date":"2027-06-12"})`, true},
		"too long":          {`%PDF-1.7 /Hangpack ({"kind":"pack","title":"` + strings.Repeat("x", textMost+1) + `","venue":"Hall","date":"2027-06-12"})`, true},
		"far too long":      {`%PDF-1.7 /Hangpack ({"kind":"pack","title":"Show","venue":"Hall","date":"2027-06-12","x":"` + strings.Repeat("x", colophonMost) + `"})`, true},
		"never ending":      {"%PDF-1.7 /Hangpack (" + strings.Repeat("(", 1<<20), true},
		"ends in an escape": {`%PDF-1.7 /Hangpack (\`, true},
		"deep":              {"%PDF-1.7 /Hangpack (" + strings.Repeat("[", 1<<19) + ")", true},
	} {
		got, ours := ReadColophon([]byte(tt.pdf))
		assert.Equal(t, tt.ours, ours, name)
		assert.Zero(t, got, name)
	}
}

// The last of several entries is the one that holds.
func TestColophonOfChangedPDF(t *testing.T) {
	const one = `/Hangpack ({"kind":"pack","title":"One","venue":"Hall \050old\051","date":"2027-06-12"}) `
	got, ours := ReadColophon([]byte("%PDF-1.7 " + one + strings.Replace(one, "One", "Two", 1) + "/HangpackOther (x)"))
	assert.True(t, ours)
	assert.Equal(t, Colophon{Kind: WholePack, Title: "Two", Venue: "Hall (old)", Date: "2027-06-12"}, got)
}

// A hostile file takes no longer than any other of its size.
func TestColophonTakesBoundedTime(t *testing.T) {
	for _, piece := range []string{"/Hangpack", "/Hangpack (", "/Producer (", "/Producer (\xfe\xff\x00h", "/Producer    ", `/Hangpack ({"kind":`} {
		pdf := "%PDF-1.7\n" + strings.Repeat(piece, 1<<24/len(piece))
		start := time.Now()
		ReadColophon([]byte(pdf))
		assert.Less(t, time.Since(start), 20*time.Second, piece)
	}
}

// FuzzReadColophon: no bytes make it panic, and what is read is sound.
func FuzzReadColophon(f *testing.F) {
	pdf, _ := smallPDF(f, spines["marks"])
	at := bytes.LastIndex(pdf, []byte(colophonKey))
	f.Add(pdf)
	f.Add(append([]byte("%PDF-1.7\n"), pdf[at:]...))
	f.Add([]byte("%PDF-1.7 /Producer (hangpack)"))
	f.Fuzz(func(t *testing.T, pdf []byte) {
		c, ours := ReadColophon(pdf)
		if c.Kind != "" && (!ours || !c.sound()) {
			t.Errorf("%+v, ours: %v", c, ours)
		}
	})
}
