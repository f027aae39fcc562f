package sheets

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/calc"
	"hangpack/layouts/paper"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// The paper is read back here: what the texts and codes of a pack say must be
// what the job and its figures say.

// The jobs that many tests read, and what is drawn of them, are made once: no test
// changes them.
var (
	drawn = map[*worked.Job]drawnPack{}
)

type drawnPack struct {
	paper paper.Drawn
	pages []string
}

func paperOf(t *testing.T, j *worked.Job) (paper.Drawn, []string) {
	t.Helper()
	if d, ok := drawn[j]; ok {
		return d.paper, d.pages
	}
	pdf, err := Draw(j)
	require.NoError(t, err)
	pages := trials.Contents(t, pdf.PDF)
	require.Len(t, pages, pdf.Pages)
	if trials.Shared(j) {
		drawn[j] = drawnPack{pdf, pages}
	}
	return pdf, pages
}

// paperOfKind is a pack of the sheets of one kind alone, for jobs of many sheets.
func paperOfKind(t *testing.T, j *worked.Job, kind string) (paper.Drawn, []string) {
	t.Helper()
	var some []paper.Sheet
	for _, s := range All(j) {
		if s.Kind == kind {
			some = append(some, s.Sheet)
		}
	}
	pack, err := PackOf(j, some)
	require.NoError(t, err)
	pdf, err := paper.DrawAll(pack)
	require.NoError(t, err)
	return pdf, trials.Contents(t, pdf.PDF)
}

// pinned is what is read of one stack: its pick holes, and the hole of each
// cabinet's joint.
type pinned struct {
	picks []string
	holes map[string]string
}

func wanted(h *rules.Checked) pinned {
	p := pinned{holes: map[string]string{}}
	for _, hole := range h.Holes {
		p.picks = append(p.picks, h.Bar.PickHoles[hole].Label)
	}
	for i, c := range h.Cabinets {
		p.holes[fmt.Sprint(i+1)] = c.Hole.Label
	}
	return p
}

// sizes of what a dolly sheet shows, in points: 8 mm for cabinets' numbers,
// at least 12 mm for holes.
const (
	numberPt = 8 / 0.741 * 72 / 25.4
	holePt   = 12 / 0.741 * 72 / 25.4
)

// readDolly reads the pins of one dolly sheet from its texts alone. A hole's
// figure stands on the line over its cabinet: under the number of the cabinet
// above, over that of its own.
func readDolly(t *testing.T, words []trials.Word, into *pinned) {
	t.Helper()
	var numbers, holes []trials.Word
	for i, w := range words {
		switch {
		case math.Abs(w.Pt-numberPt) < 0.1:
			numbers, holes = append(numbers, w), nil
		case w.Pt > holePt-0.1 && !strings.HasPrefix(w.S, "REV") && len(numbers) > 0:
			holes = append(holes, w)
		case w.Pt > holePt-0.1 && i > 0 && (strings.HasSuffix(words[i-1].S, "hole") || words[i-1].S == "front" || words[i-1].S == "rear"):
			into.picks = append(into.picks, w.S)
		}
	}
	require.Len(t, holes, len(numbers))
	for i, n := range numbers {
		assert.Greater(t, holes[i].Y, n.Y, "hole of cabinet %s", n.S)
		if i > 0 {
			assert.Less(t, holes[i].Y, numbers[i-1].Y, "hole of cabinet %s", n.S)
		}
		into.holes[n.S] = holes[i].S
	}
}

// dollySheetsReadBack rebuilds every stack's pins from the texts of its
// dolly sheets alone, and again from their codes.
func dollySheetsReadBack(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		texts, codes := map[string]*pinned{}, map[string]*pinned{}
		for _, page := range pages {
			words := trials.WordsOn(page)
			id, sheet, _ := strings.Cut(trials.SheetOf(words), " ")
			if !strings.HasPrefix(sheet, "DOLLY") && !strings.HasPrefix(sheet, "CABINET") {
				continue
			}
			if texts[id] == nil {
				texts[id], codes[id] = &pinned{holes: map[string]string{}}, &pinned{holes: map[string]string{}}
			}
			readDolly(t, words, texts[id])
			readCode(t, j, id, trials.CodesOn(t, page), codes[id])
		}
		for _, h := range j.Stacks {
			if len(h.Holds) > 0 {
				assert.Nil(t, texts[h.ID], "%s: held %s has dolly sheets", name, h.ID)
				continue
			}
			require.NotNil(t, texts[h.ID], "%s: %s", name, h.ID)
			cases += len(h.Cabinets)
			assert.Equal(t, wanted(h), *texts[h.ID], "%s: texts of %s", name, h.ID)
			assert.Equal(t, wanted(h), *codes[h.ID], "%s: codes of %s", name, h.ID)
		}
	}
	return cases, 0
}

var pinCode = regexp.MustCompile(`^(\S+) REV (\S+) [2-9A-Z]{4}(?: PICK (?:(\S+)|FRONT (\S+) REAR (\S+)))?((?: [0-9]+:\S+)+)$`)

// readCode reads the pins in the text of a dolly's code; a second code has its address.
func readCode(t *testing.T, j *worked.Job, id string, codes []string, into *pinned) {
	t.Helper()
	codes = slices.DeleteFunc(codes, func(s string) bool { return strings.HasPrefix(s, "http") })
	require.Len(t, codes, 1)
	m := pinCode.FindStringSubmatch(codes[0])
	require.NotNil(t, m, codes[0])
	assert.Equal(t, []string{id, strings.ToUpper(j.Revision)}, m[1:3])
	if picks := slices.DeleteFunc(m[3:6], func(s string) bool { return s == "" }); len(picks) > 0 {
		into.picks = picks // pages of one sheet have one code
	}
	for _, pin := range strings.Fields(m[6]) {
		n, label, _ := strings.Cut(pin, ":")
		into.holes[n] = label
	}
}

// figuresReadBack finds every load, aim and height of the figures on the
// stack's own sheets, through its formatter, each in its row.
func figuresReadBack(t *testing.T) (cases int, worst float64) {
	for name, j := range trials.ReadJobs(t) {
		_, pages := paperOf(t, j)
		for i, h := range j.Stacks {
			if len(h.Holds) > 0 {
				continue
			}
			var lines []string
			for _, page := range pages {
				words := trials.WordsOn(page)
				if strings.HasPrefix(trials.SheetOf(words), h.ID+" ") {
					for _, row := range trials.RowsOf(words) {
						lines = append(lines, " "+strings.Join(row, " ")+" ")
					}
				}
			}
			for what, parts := range expected(h.Unit(), j.Figures.Stacks[i]) {
				if (what == "first" || what == "last") && len(h.Unknown()) > 0 {
					continue // unknownCentresAsJobs
				}
				cases++
				assert.True(t, slices.ContainsFunc(lines, func(line string) bool { return trials.InOrder(line, parts) }),
					"%s: %s: %s %q is not on paper", name, h.ID, what, parts)
			}
		}
	}
	return cases, 0
}

// expected is what the figures of a stack say, as it prints.
func expected(u say.Units, s worked.StackFigures) map[string][]string {
	want := map[string][]string{
		"mass":    {"Below the hooks", u.Load(s.Mass)},
		"first":   {"Cabinet 1 reads", say.Aim(calc.Radians(s.Aim)), "wanted " + say.Aim(calc.Radians(s.AimWanted)), "bar " + say.Aim(calc.Radians(s.Tilt))},
		"lowest":  {"lowest " + u.Length(s.Lowest)},
		"picking": {s.Picks[0].Hole.Text},
	}
	if n := len(s.Cabinets); n > 1 {
		bend := 0.0
		for _, c := range s.Cabinets[1:] {
			bend += c.Splay
		}
		want["last"] = []string{fmt.Sprintf("Cabinet %d reads", n), say.Aim(calc.Radians(s.LastAim)), "difference " + say.Angle(calc.Radians(bend))}
	}
	for _, c := range s.Cabinets {
		want[fmt.Sprint("joint ", c.Number)] = []string{fmt.Sprint(c.Number), say.Aim(calc.Radians(c.Aim)), u.Length(c.Lowest),
			u.Force(c.Hinge * 1000), way(u, c.HingePull*1000), way(u, c.Link*1000)}
	}
	for _, p := range s.Points {
		want["carries "+p.ID] = []string{"Point " + p.ID, u.Load(p.Static), "design " + u.Load(p.Design)}
	}
	return want
}

// TestCornersAsDrawn: the outlines of the side elevation, divided by its scale,
// are the corners of the figures within 0.1 mm of paper.
func TestCornersAsDrawn(t *testing.T) {
	scale := regexp.MustCompile(`^From the side, 1:([0-9]+)$`)
	for name, j := range trials.ReadJobs(t) {
		pdf, pages := paperOf(t, j)
		for n, page := range pages {
			words := trials.WordsOn(page)
			id, sheet, _ := strings.Cut(trials.SheetOf(words), " ")
			if !strings.HasPrefix(sheet, "PINS") {
				continue
			}
			per := 0.0
			for _, w := range words {
				if m := scale.FindStringSubmatch(w.S); m != nil {
					per = trials.Number(m[1])
				}
			}
			require.NotZero(t, per, name)
			cornersOf(t, name, pdf.Marks, n+1, j.Stack(id), per)
		}
	}
}

func cornersOf(t *testing.T, name string, marks []paper.Mark, page int, h *rules.Checked, scale float64) {
	t.Helper()
	var drawn [][][2]float64
	for _, m := range marks {
		if m.Page == page && m.Kind == "cabinet" {
			drawn = append(drawn, m.Corners)
		}
	}
	require.Len(t, drawn, len(h.Cabinets))
	o, from := drawn[0][0], h.Finished.Corners[0][0]
	for k, corners := range h.Finished.Corners {
		for i, c := range corners {
			assert.InDelta(t, o[0]+(c.X-from.X)*1000/scale, drawn[k][i][0], 0.1, "%s: cabinet %d of %s", name, k+1, h.ID)
			assert.InDelta(t, o[1]-(c.Z-from.Z)*1000/scale, drawn[k][i][1], 0.1, "%s: cabinet %d of %s", name, k+1, h.ID)
		}
	}
}

// TestHeldStacksCarryNoPins: no code and no text of a held stack's page has a
// hole.
func TestHeldStacksCarryNoPins(t *testing.T) {
	j := trials.OpenFile(t, "examples/held.yaml")
	require.NotEmpty(t, j.Stacks[1].Holds)
	_, pages := paperOf(t, j)
	found := 0
	for _, page := range pages {
		if s := trials.SheetOf(trials.WordsOn(page)); strings.HasPrefix(s, "D2 ") {
			found++
			assert.Equal(t, "D2 DO NOT FLY", s)
			require.Len(t, trials.CodesOn(t, page), 1)
			assert.Regexp(t, "^D2 REV "+j.Revision+" [2-9A-Z]{4} DO NOT FLY$", trials.CodesOn(t, page)[0])
		}
	}
	assert.Equal(t, 1, found)
}

// TestSameJobSameBytes: one job makes the same pack every time.
func TestSameJobSameBytes(t *testing.T) {
	yaml := trials.Gamble(7).Job()
	a, err := Draw(trials.OpenJob(t, yaml))
	require.NoError(t, err)
	b, err := Draw(trials.OpenJob(t, yaml))
	require.NoError(t, err)
	assert.Equal(t, a.PDF, b.PDF)
}
