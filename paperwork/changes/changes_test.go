package changes

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/layouts/paper"
	"hangpack/paperwork/say"
	"hangpack/paperwork/sheets"
	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/trials"
)

// TestNothingChanges: a job against itself, read a second time, moves nothing, and no
// sheet of it says something else.
func TestNothingChanges(t *testing.T) {
	again := map[string]*worked.Job{}
	for _, name := range trials.Examples {
		again[name] = trials.OpenFile(t, "examples/"+name+".yaml")
	}
	for name, j := range trials.ReadJobs(t) {
		twin := again[name]
		if twin == nil {
			var seed int64
			_, err := fmt.Sscanf(name, "seed %d", &seed)
			require.NoError(t, err)
			twin = trials.OpenJob(t, trials.Gamble(1000+seed).Job())
		}
		c := Compare(j, twin)
		joints := 0
		for i, s := range j.Figures.Stacks {
			if !j.Stacks[i].Held() {
				joints += len(s.Cabinets)
			}
		}
		assert.Equal(t, 0, c.Move, name)
		assert.Equal(t, joints, c.Stay, name)
		for _, n := range []int{len(c.Joints), len(c.Picks), len(c.Points), len(c.Added), len(c.Gone), len(c.CabinetsAdded), len(c.CabinetsGone), len(c.Others), len(c.PointsAdded), len(c.PointsGone), len(c.HoldsGone), len(c.CautionsAdded), len(c.CautionsGone), c.Set, c.Pins} {
			assert.Zero(t, n, name)
		}
		all, err := c.papers()
		require.NoError(t, err)
		for stack, f := range all {
			assert.Empty(t, append(f.goes, f.comes...), "%s: sheets of %q", name, stack)
			assert.NotEmpty(t, f.stays, "%s: sheets of %q", name, stack)
		}
	}
}

var splayLists = regexp.MustCompile(`splay: \[([^\]]*)\]`)

// resplayed is a job with some splays drawn anew, and another revision.
func resplayed(yaml string, r *rand.Rand) string {
	yaml = splayLists.ReplaceAllStringFunc(yaml, func(s string) string {
		list := strings.Split(splayLists.FindStringSubmatch(s)[1], ", ")
		for i := range list {
			if r.Intn(3) == 0 {
				list[i] = trials.Splays[r.Intn(len(trials.Splays)/2)]
			}
		}
		return "splay: [" + strings.Join(list, ", ") + "]"
	})
	return regexp.MustCompile(`revision: .*`).ReplaceAllString(yaml, "revision: Z")
}

// scheduleOf is the hole of every joint of the stacks that neither job holds.
func scheduleOf(j, other *worked.Job) map[string]float64 {
	holes := map[string]float64{}
	for i, h := range j.Stacks {
		if o := other.Stack(h.ID); h.Held() || o != nil && o.Held() {
			continue
		}
		for _, c := range j.Figures.Stacks[i].Cabinets {
			holes[fmt.Sprint(h.ID, " ", c.Number)] = c.Splay
		}
	}
	return holes
}

// TestMovesGiveTheNewSchedule: every move applied to the old revision's schedule
// gives the new one's; there and back the lists are mirrored.
func TestMovesGiveTheNewSchedule(t *testing.T) {
	r := rand.New(rand.NewSource(9))
	moves := 0
	for seed := range int64(120) {
		yaml := trials.Gamble(25_000 + seed).Job()
		old, new := trials.OpenJob(t, yaml), trials.OpenJob(t, resplayed(yaml, r))
		if seed%4 == 0 { // other stacks as well
			new = trials.OpenJob(t, resplayed(trials.Gamble(26_000+seed).Job(), r))
		}
		there, back := Compare(old, new), Compare(new, old)
		got, want := scheduleOf(old, new), scheduleOf(new, old)
		for _, m := range there.Joints {
			key := fmt.Sprint(m.Stack, " ", m.Cabinet)
			assert.Equal(t, got[key], m.From, "seed %d: %s", seed, key)
			moves++
		}
		for _, m := range there.CabinetsGone {
			delete(got, fmt.Sprint(m.Stack, " ", m.Cabinet))
		}
		for _, m := range there.Joints {
			got[fmt.Sprint(m.Stack, " ", m.Cabinet)] = m.To
		}
		for _, m := range there.CabinetsAdded {
			got[fmt.Sprint(m.Stack, " ", m.Cabinet)] = m.Splay
		}
		for key := range got { // stacks that only one of them has
			id, _, _ := strings.Cut(key, " ")
			if new.Stack(id) == nil {
				delete(got, key)
			}
		}
		for key, hole := range want {
			id, _, _ := strings.Cut(key, " ")
			if old.Stack(id) == nil {
				got[key] = hole
			}
		}
		assert.Equal(t, want, got, "seed %d", seed)
		assert.Len(t, there.Joints, there.Move)
		require.Len(t, back.Joints, len(there.Joints))
		for _, m := range there.Joints {
			m.From, m.To, m.FromLabel, m.ToLabel, m.out, m.in = m.To, m.From, m.ToLabel, m.FromLabel, m.in, m.out
			assert.Contains(t, back.Joints, m, "seed %d", seed)
		}
		assert.Equal(t, []any{there.Stay, there.Added, there.Gone, there.CabinetsAdded, there.CabinetsGone}, []any{back.Stay, back.Gone, back.Added, back.CabinetsGone, back.CabinetsAdded}, "seed %d", seed)
		for _, p := range there.Points {
			p.From, p.To, p.FromStatic, p.ToStatic, p.FromMost, p.ToMost = p.To, p.From, p.ToStatic, p.FromStatic, p.ToMost, p.FromMost
			p.StageLeft, p.Downstage, p.Raised = -p.StageLeft, -p.Downstage, -p.Raised
			assert.Contains(t, back.Points, p, "seed %d", seed)
		}
		assert.Len(t, back.Points, len(there.Points))
	}
	require.Greater(t, moves, 150)
}

// TestEachChange: one change of the job is found, and is what has to be done about
// it.
func TestEachChange(t *testing.T) {
	tests := []struct {
		name  string
		edits []string
		says  []string // of the report
		not   []string
	}{
		{"a pin", []string{"splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 2, 2, 3, 4]"}, []string{"5 5 box 1 2 B hole", "1 joint is set anew (link pins: 2 out, 2 in), 7 stay"}, nil},
		{"one pin a joint", []string{"splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 2, 2, 3, 4]", "link_arm: 370 mm", "link_arm: 370 mm\n      pins: {hinge: 2, link: 1}"}, []string{"8 joints are set anew (link pins: 16 out, 8 in), 0 stay", "5 5 box 1 2 B hole, above, below", "1 1 box 0 0 A below", "pins per joint: joints 1-8 2 hinge, 2 link, now joints 1-8 2 hinge, 1 link"}, nil},
		{"trim", []string{"trim: {lowest: 4.5 m}", "trim: {lowest: 4.6 m}"}, []string{"trim: lowest corner at 4.5 m, now lowest corner at 4.6 m", "0 joints are set anew (link pins: 0 out, 0 in), 8 stay", "point SL: finished, loads as they were; pick 0.10 m higher, same place", "point SL, trim of SL"}, []string{"MOVED"}},
		{"a mass", []string{"mass: 28 kg", "mass: 29 kg"}, []string{"2 kg more; same place", "1 1 box 0 0 A above", "1 joint is set anew (link pins: 2 out, 2 in), 7 stay", "Ask the venue again, before it flies: point SL, figures of bar bar."}, []string{"MOVED"}},
		{"the hole on the bar", []string{trials.OnePick, "{picks: 1, hoist: hoist, pick_hole: 23}"}, []string{"pick holes: pick hole 22, now pick hole 23", "pick holes of SL"}, nil},
		{"when pins are set", []string{"    aim: 1", "    pins_set: on_dolly\n    aim: 1"}, []string{"pins set: not given, now on dolly", "Nothing that the cover wants accepted again has changed."}, nil},
		{"a cabinet less", []string{"count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 7, splay: [0, 0.5, 0.5, 1, 1, 2, 3]"}, []string{"gone: cabinet 8", "cabinets: 8 box, now 7 box", "0 joints are set anew (link pins: 2 out, 0 in), 7 stay"}, nil},
		{"another cabinet in the same hole", []string{"  cabinets:\n    box:", "  cabinets:\n" + trials.OtherBox + "    box:", "{type: box, count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]}", "{type: box, count: 7, splay: [0, 0.5, 0.5, 1, 1, 2, 3]}, {type: other, count: 1, splay: [4]}"}, []string{"cabinet 8: box out, other in", "8 8 other 4 4 B below", "1 joint is set anew (link pins: 2 out, 2 in), 7 stay"}, nil},
		{"units", []string{"gear:", "paper: {units: imperial}\ngear:"}, []string{"units: metric, now imperial", "0 joints are set anew (link pins: 0 out, 0 in), 8 stay"}, []string{"trim:", "place:"}},
		{"held now", []string{"trim: {lowest: 4.5 m}", "trim: {lowest: -4.5 m}", "splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 2, 2, 3, 4]"}, []string{"DO NOT FLY SL", "HELD: Below the floor:", "0 joints are set anew (link pins: 0 out, 0 in), 0 stay", "throw away: SL PINS:", "put up: SL DO NOT FLY:"}, []string{"5 box"}},
		{"a speed", []string{"headroom: 550 mm}", "headroom: 550 mm, speed: 4 m/min}"}, []string{"figures of hoist hoist: as they were, now others"}, []string{"figures of bar"}},
		{"a rating", []string{"rating: 750 kg", "rating: 740 kg"}, []string{"figures of bar bar: as they were, now others"}, []string{"figures of hoist"}},
		{"tolerance", []string{"mass_tolerance: 5 %", "mass_tolerance: 6 %"}, []string{"practice, tolerance on masses: 5 %, now 6 %"}, nil},
		{"another id", []string{"id: SL", "id: ML"}, []string{"stacks added: ML", "stacks gone: SL", "points added: ML", "points gone: SL"}, nil},
	}
	for _, tt := range tests {
		text, err := Compare(trials.OpenJob(t, trials.Plain), trials.OpenJob(t, trials.Edited(t, tt.edits...))).Report()
		require.NoError(t, err, tt.name)
		flat := strings.Join(strings.Fields(text), " ")
		for _, line := range strings.Split(text, "\n") {
			assert.LessOrEqual(t, len([]rune(line)), say.Columns, "%s: %s", tt.name, line)
		}
		for _, s := range tt.says {
			assert.Contains(t, flat, s, tt.name)
		}
		for _, s := range tt.not {
			assert.NotContains(t, flat, s, tt.name)
		}
		assert.Contains(t, flat, "TWO DIFFERENT JOBS ARE CALLED REV", tt.name)
	}
}

// TestHeldNoMore: a stack that was held has no holes in the list, and is named.
func TestHeldNoMore(t *testing.T) {
	held := trials.OpenJob(t, trials.Edited(t, "trim: {lowest: 4.5 m}", "trim: {lowest: -4.5 m}"))
	c := Compare(held, trials.OpenJob(t, trials.Plain))
	assert.Equal(t, []string{"SL"}, c.WasHeld)
	assert.Empty(t, c.Held)
	assert.Zero(t, c.Move+c.Stay)
	assert.Equal(t, []int{8, 16}, []int{c.Set, c.Pins}, "all of them")
	text, err := c.Report()
	require.NoError(t, err)
	assert.Contains(t, strings.Join(strings.Fields(text), " "), "SL was held and is not any more: set all its pins from the new sheets.")
	assert.Empty(t, Compare(trials.OpenJob(t, trials.Plain), held).WasHeld)
	assert.Empty(t, Compare(held, held).WasHeld)
}

// TestChangedSheets: the dolly sheet with the pin that moves says something else,
// the one without does not.
func TestChangedSheets(t *testing.T) {
	old, new := trials.OpenJob(t, trials.Plain), trials.OpenJob(t, trials.Edited(t, "splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "splay: [0, 0.5, 0.5, 1, 1, 2, 4, 4]"))
	all, err := Compare(old, new).papers()
	require.NoError(t, err)
	names := func(of []paper.Identity) (names []string) {
		for _, s := range of {
			names = append(names, s.Name)
		}
		return names
	}
	sl := all.of("SL")
	assert.Equal(t, []string{"SL PINS", "SL DOLLY B", "SL LIFTS", "SL CALCULATION"}, names(sl.goes))
	assert.Equal(t, names(sl.goes), names(sl.comes))
	assert.Equal(t, []string{"SL DOLLY A", "SL DOWN"}, names(sl.stays))
	assert.Contains(t, names(all.of("").stays), "KIT")
	assert.Contains(t, names(all.of("").goes), "COVER")
}

// TestChangesAsData holds the keys that scripts go by, without nulls.
func TestChangesAsData(t *testing.T) {
	text, err := json.Marshal(Compare(trials.OpenJob(t, trials.Plain), trials.OpenJob(t, trials.Edited(t, "id: SL", "id: ML"))))
	require.NoError(t, err)
	assert.NotContains(t, string(text), "null")
	for _, key := range []string{`"move":0`, `"stay":0`, `"joints":[]`, `"picks":[]`, `"points":[]`, `"stacks_added":["ML"]`, `"stacks_gone":["SL"]`, `"old":"`, `"new":"`} {
		assert.Contains(t, string(text), key)
	}
}

// TestChangesReadBack finds every move on the printed sheet, old hole before new
// one, and in the report; and the sheet of the longest names fits.
func TestChangesReadBack(t *testing.T) {
	r := rand.New(rand.NewSource(10))
	for seed := range int64(deep.Of(10, 40)) {
		g := trials.Gamble(27_000 + seed)
		g.Wild = seed%2 == 0
		yaml := g.Job()
		c := Compare(trials.OpenJob(t, yaml), trials.OpenJob(t, resplayed(yaml, r)))
		pdf, err := c.Paper()
		require.NoError(t, err, "seed %d", seed)
		var words []string
		for _, page := range trials.Contents(t, pdf.PDF) {
			for _, w := range trials.WordsOn(page) {
				words = append(words, w.S)
			}
		}
		all := strings.Join(words, " ")
		assert.Contains(t, all, c.closing())
		for _, m := range c.Joints {
			h, was := c.new.Stack(m.Stack), c.old.Stack(m.Stack)
			above := fmt.Sprint(m.Cabinet - 1)
			if m.Cabinet == 1 {
				above = "bar"
			}
			rest := all[strings.Index(all, " "+h.ID+" "):]
			_, rest, found := strings.Cut(rest, fmt.Sprintf(" %s %d ", above, m.Cabinet))
			require.True(t, found, "seed %d: %v", seed, m)
			from, to := was.Cabinets[m.Cabinet-1].Hole.Label, h.Cabinets[m.Cabinet-1].Hole.Label
			if from+" "+to == to+" "+from {
				from = "" // another cabinet in the same hole
			}
			if hole := sheets.JointHole(was.Cabinets[m.Cabinet-1].Hole); from != "" && hole.Splay != "" {
				from += " " + hole.Splay
			}
			_, after, found := strings.Cut(" "+rest, strings.TrimRight(" "+from, " ")+" "+to+" ")
			assert.True(t, found && trials.InOrder(" "+after, []string{sheets.SetName(h.Hung, h.Sets.Of(m.Cabinet))}), "seed %d: %v: %.200s", seed, m, rest)
		}
		text, err := c.Report()
		require.NoError(t, err)
		for _, line := range strings.Split(text, "\n") {
			assert.LessOrEqual(t, len([]rune(line)), say.Columns, "seed %d: %s", seed, line)
		}
	}
}

// TestCautionsOfAHeldStack: a caution that tells an aim is not told of a stack that either
// revision holds.
func TestCautionsOfAHeldStack(t *testing.T) {
	missed := trials.Edited(t, trials.OnePick, "{picks: 1, hoist: hoist, pick_hole: 26}")
	held := strings.Replace(trials.Plain, "trim: {lowest: 4.5 m}", "trim: {lowest: -4.5 m}", 1)
	old, new := trials.OpenJob(t, missed), trials.OpenJob(t, held)
	require.False(t, old.Stacks[0].Held())
	require.True(t, new.Stacks[0].Held())
	for _, pair := range [][2]*worked.Job{{old, new}, {new, old}} {
		text, err := Compare(pair[0], pair[1]).Report()
		require.NoError(t, err)
		assert.NotContains(t, text, "wanted")
	}
	text, err := Compare(trials.OpenJob(t, trials.Plain), old).Report()
	require.NoError(t, err)
	assert.Contains(t, text, "wanted", "where neither holds it")
}
