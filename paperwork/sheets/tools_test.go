package sheets

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// packs writes the examples' packs, and some random ones, into files.
func packs(t *testing.T) map[string]*worked.Job {
	t.Helper()
	files := map[string]*worked.Job{}
	for name, j := range trials.ReadJobs(t) {
		if strings.HasPrefix(name, "seed") && !strings.HasSuffix(name, "0") {
			continue
		}
		pdf, _ := paperOf(t, j)
		file := filepath.Join(t.TempDir(), strings.ReplaceAll(name, " ", "-")+".pdf")
		require.NoError(t, os.WriteFile(file, pdf.PDF, 0o644))
		files[file] = j
	}
	return files
}

// wildPacks adds packs with the longest names to some others.
func wildPacks(t *testing.T, files map[string]*worked.Job) map[string]*worked.Job {
	t.Helper()
	for seed := range int64(deep.Of(5, 20)) {
		g := trials.Gamble(3000 + seed)
		g.Wild = true
		j := trials.OpenJob(t, g.Job())
		pdf, err := Draw(j)
		require.NoError(t, err)
		file := filepath.Join(t.TempDir(), fmt.Sprintf("wild-%d.pdf", seed))
		require.NoError(t, os.WriteFile(file, pdf.PDF, 0o644))
		files[file] = j
	}
	return files
}

// TestPackIsSound: the PDF has no fault of structure, and its fonts are in it.
func TestPackIsSound(t *testing.T) {
	for file := range wildPacks(t, packs(t)) {
		assert.Contains(t, trials.Tool(t, "qpdf", "--check", file), "No syntax or stream encoding errors found")
		for _, line := range strings.Split(strings.TrimSpace(trials.Tool(t, "pdffonts", file)), "\n")[2:] {
			fields := strings.Fields(line)
			assert.Equal(t, "yes", fields[len(fields)-5], "font not in the file: %s", line)
		}
	}
}

var bbox = regexp.MustCompile(`<word xMin="([0-9.]+)" yMin="([0-9.]+)" xMax="([0-9.]+)" yMax="([0-9.]+)">(.*)</word>`)

// TestWordsKeepApart: no word within 8 mm of an edge, no two that overlap. The
// boxes of words are shrunk by a fifth above and below, as their lines are
// taller than their ink.
func TestWordsKeepApart(t *testing.T) {
	const edge, spine = 8 * 72 / 25.4, 23 * 72 / 25.4
	for file, j := range wildPacks(t, packs(t)) {
		w, h := 595.28, 841.89
		if j.Letter {
			w, h = 612, 792
		}
		for n, page := range strings.Split(trials.Tool(t, "pdftotext", "-bbox", file, "-"), "</page>") {
			var words [][4]float64
			var says []string
			for _, m := range bbox.FindAllStringSubmatch(page, -1) {
				b := [4]float64{trials.Number(m[1]), trials.Number(m[2]), trials.Number(m[3]), trials.Number(m[4])}
				assert.True(t, b[0] > edge && b[1] > edge && b[2] < w-edge && b[3] < h-edge, "%s page %d: %s at the edge", file, n+1, m[5])
				if fifth := (b[3] - b[1]) / 5; b[2] > spine {
					b[1], b[3] = b[1]+fifth, b[3]-fifth
				} else { // turned: its lines run upwards
					fifth := (b[2] - b[0]) / 5
					b[0], b[2] = b[0]+fifth, b[2]-fifth
				}
				words, says = append(words, b), append(says, m[5])
			}
			overlaps(t, fmt.Sprintf("%s page %d", file, n+1), words, says)
		}
	}
}

func overlaps(t *testing.T, page string, words [][4]float64, says []string) {
	t.Helper()
	const dust = 0.2
	for i, a := range words {
		for k, b := range words[:i] {
			if a[0] < b[2]-dust && b[0] < a[2]-dust && a[1] < b[3]-dust && b[1] < a[3]-dust {
				t.Errorf("%s: %q and %q overlap", page, says[i], says[k])
			}
		}
	}
}

// TestPhonesReadCodes: every code is read from pages drawn at 150 dpi; each day those
// of every third page.
func TestPhonesReadCodes(t *testing.T) {
	for file, j := range packs(t) {
		pdf, _ := paperOf(t, j)
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			want, got := map[string]int{}, map[string]int{}
			for page, codes := range codesByPage(pdf) {
				if page%deep.Of(3, 1) > 0 {
					continue
				}
				image := pictureOf(t, file, page)
				for _, code := range readCodes(t, image) {
					got[code]++
				}
				for _, code := range codes {
					want[code]++
				}
			}
			assert.Equal(t, want, got)
		})
	}
}

// codesByPage are the texts of the codes of every page that has one.
func codesByPage(pdf paper.Drawn) map[int][]string {
	codes := map[int][]string{}
	for _, m := range pdf.Marks {
		if m.Kind == "code" {
			codes[m.Page] = append(codes[m.Page], m.Text)
		}
	}
	return codes
}

// pictureOf draws one page of a file as a phone sees it.
func pictureOf(t *testing.T, file string, page int) string {
	t.Helper()
	stem, n := filepath.Join(t.TempDir(), "page"), fmt.Sprint(page)
	trials.Tool(t, "pdftoppm", "-r", "150", "-gray", "-png", "-singlefile", "-f", n, "-l", n, file, stem)
	return stem + ".png"
}

// readCodes reads the codes of one image; a page without codes has none.
func readCodes(t *testing.T, image string) []string {
	t.Helper()
	if _, err := exec.LookPath("zbarimg"); err != nil {
		trials.Tool(t, "zbarimg")
	}
	out, err := exec.Command("zbarimg", "-q", "--raw", "-Sdisable", "-Sqrcode.enable", image).Output()
	if err != nil && len(out) == 0 {
		return nil
	}
	return strings.Split(strings.TrimSpace(string(out)), "\n")
}

// TestPagesReadByAnother: another program's reading of the dolly sheets has
// every hole's line of the code's text.
func TestPagesReadByAnother(t *testing.T) {
	for file, j := range packs(t) {
		text := strings.Join(strings.Fields(trials.Tool(t, "pdftotext", "-layout", file, "-")), " ")
		for _, h := range j.Stacks {
			if len(h.Holds) == 0 {
				assert.Regexp(t, h.ID+" REV "+strings.ToUpper(j.Revision)+" [2-9A-Z]{4} PICK", text, file)
			}
		}
	}
}
