package sheets

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"hangpack/layouts"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// printedGenerals are the general cautions of a job, by what they say to do.
func printedGenerals(j *worked.Job) map[string]layouts.Advice {
	all := map[string]layouts.Advice{}
	for _, g := range cautionSheet(j).General {
		for _, item := range g.Items {
			all[item.Do] = item
		}
	}
	return all
}

// has reports whether a general caution with some words prints.
func has(j *worked.Job, words string) bool {
	for _, g := range printedGenerals(j) {
		if strings.Contains(g.Do+" "+g.Says, words) {
			return true
		}
	}
	return false
}

// secondStack adds a stack SR with two picks and no dolly to the plain job.
const secondStack = `
  - id: SR
    place: {stage_right: 8.2 m, downstage: 0.6 m}
    bar: bar
    cabinets: [{type: box, count: 4, splay: [0, 0.5, 0.5, 1]}]
    aim: 1 deg down
    hang: {picks: 2, hoist: hoist, front_hole: 1, rear_hole: 41}
    trim: {lowest: 4.5 m}
    steel: 14 m
`

// TestGeneralCautionsApply: a job prints the general cautions that apply to it
// and no other.
func TestGeneralCautionsApply(t *testing.T) {
	const (
		steel = "    steel: 14 m\n"
		truck = "splay_holes: [0, 0.5, 1, 2, 3, 4, 12]"
	)
	tests := []struct {
		name     string
		edits    []string
		yes, not []string
	}{
		{"one pick", nil, []string{"One hoist lets it turn"}, []string{"Two hoists"}},
		{"two picks", []string{trials.OnePick, trials.TwoPicks}, []string{"Two hoists, one load"}, []string{"One hoist"}},
		{"a dolly", nil, []string{"Dollies:", "Feet clear of the dolly", "Land it on its dolly"}, []string{"Settle before the lift"}},
		{"no dolly", []string{"    dolly: dolly\n", ""}, []string{"Settle before the lift"}, []string{"olly", "ollies"}},
		{"no hole for the truck", nil, []string{"Which hole is for the truck is not known"}, []string{"transport hole"}},
		{"a hole for the truck", []string{truck, truck + "\n      transport: 0"}, []string{"transport hole"}, []string{"Which hole is for the truck"}},
		{"a hole and no dolly", []string{truck, truck + "\n      transport: 0", "    dolly: dolly\n", ""}, []string{"Settle before the lift"}, []string{"transport hole"}},
		{"no secondary", nil, []string{"No secondary is named:"}, []string{"Secondary:", "secondary comes off"}},
		{"a secondary", []string{steel, steel + "    secondary: {what: two wire ropes, rating: 1 t}\n"},
			[]string{"Secondary: two wire ropes, rated 1000 kg.", "before the secondary comes off"}, []string{"No secondary is named"}},
		{"no class", nil, []string{"The class of hoist hoist is not given"}, []string{"Hoist class, as"}},
		{"a class", []string{"hoist: {capacity", "hoist: {class: holds over people, capacity"},
			[]string{`Hoist class, as the job gives it: hoist "holds over people".`}, []string{"The class of hoist"}},
		{"no extras", nil, []string{"Cables weigh, and the job lists none"}, []string{"Only what the job lists"}},
		{"extras", []string{steel, steel + "    extras: [{name: loom, mass: 9 kg, behind_hinge: 0.4 m, below_hinge: 0 m}]\n"},
			[]string{"Only what the job lists is counted"}, []string{"the job lists none"}},
		{"stacks that differ", []string{steel, steel + secondStack},
			[]string{"SL: One hoist", "SR: Two hoists", "SL: Dollies", "SR: Weight off", "No secondary is named"}, []string{"SL, SR:"}},
		{"always", nil, []string{"If it hangs outdoors:", "Nobody below", "Hands off", "Two people touch every pin", "Fence"}, nil},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			j := trials.OpenJob(t, trials.Edited(t, tt.edits...))
			for _, words := range tt.yes {
				assert.True(t, has(j, words), "%q does not print", words)
			}
			for _, words := range tt.not {
				assert.False(t, has(j, words), "%q prints", words)
			}
		})
	}
}

// TestNeverOnPaper: no job has more than two hoists on one bar, or a stack that
// stands on the ground; and no source is a page of the web.
func TestNeverOnPaper(t *testing.T) {
	never := []string{"more than two hoists", "three hoists", "ground stack", "slope", "ratchet", "http", "www.", ".com", ".org"}
	for name, j := range trials.ReadJobs(t) {
		s := cautionSheet(j)
		words := strings.ToLower(strings.Join(s.Rules, " ") + s.Sources)
		for _, g := range printedGenerals(j) {
			words += strings.ToLower(" " + g.Do + " " + g.Says + " " + g.From)
		}
		for _, c := range s.Checks.Items {
			words += strings.ToLower(" " + c.Thing + " " + c.Out + " " + c.From)
		}
		for _, n := range never {
			assert.False(t, strings.Contains(words, n), "%s: %q prints", name, n)
		}
	}
}

// TestEveryCautionHasItsSource: a law, a standard or a book, or the words
// common practice.
func TestEveryCautionHasItsSource(t *testing.T) {
	known := regexp.MustCompile(`^(common practice|(OSHA 29 CFR|WAC|DGUV Vorschrift|DGUV Information|LOLER \(NI\)|ASME B30|EM 385-1-1|IGVW SQP).+)$`)
	all := map[string][]source{when.thing: when.from}
	for _, c := range criteria {
		all[c.thing] = c.from
	}
	for _, group := range generals {
		for _, g := range group.cautions {
			all[g.do+g.says] = g.from
		}
	}
	for what, from := range all {
		assert.NotEmpty(t, from, what)
		for _, s := range from {
			assert.Regexp(t, known, string(s), what)
		}
	}
	assert.NotEmpty(t, anyone.From)
}
