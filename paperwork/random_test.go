package paperwork

import (
	"fmt"
	"io"
	"math/rand"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A gambler writes random plausible jobs: types and bars mixed, one and two
// picks, extras on bar and cabinets, both units and papers. The same seed
// writes the same job.
type gambler struct {
	*rand.Rand
	wild  bool     // the longest names, ids and lists too
	holes []string // labels of the bar's pick holes, from 1
}

func gamble(seed int64) *gambler { return &gambler{Rand: rand.New(rand.NewSource(seed))} }

func (g *gambler) between(lo, hi float64) float64 { return lo + (hi-lo)*g.Float64() }

func (g *gambler) pick(s ...string) string { return s[g.Intn(len(s))] }

// text is some words, of the longest and widest that a job may give if wild.
func (g *gambler) text(usual string, most int) string {
	if !g.wild || g.Intn(2) == 0 {
		return usual
	}
	return g.pick(strings.Repeat("W", most), (strings.Repeat("Wm ", most/3) + "Ww")[:most-1]+"W", strings.Repeat("a long name of a thing ", 9)[:most-1]+"x")
}

func (g *gambler) key(usual string, most int) string {
	if !g.wild || g.Intn(2) == 0 {
		return usual
	}
	return usual + "-" + strings.Repeat("W", most-len(usual)-1)
}

// job writes a whole job of up to three stacks.
func (g *gambler) job() string {
	var b strings.Builder
	w := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	w("job:\n  title: %q\n  venue: %q\n  date: 2027-0%d-1%d\n  revision: %q", g.text("A show", 72), g.text("A hall", 72), 1+g.Intn(9), g.Intn(10), g.pick("A", "B", "12", "r.2-x", "WWWWWW"))
	if g.Intn(2) == 0 {
		w("  url: https://paper.example/%s", g.pick("a.pdf", "{stack}.pdf", "{stack}/{page}", strings.Repeat("long/", 18)+"a.pdf"))
	}
	if g.Intn(2) == 0 {
		w("  datum: %q\n  heights_from: %q", g.text("edge of the stage", 120), g.text("arena floor", 120))
	}
	if g.Intn(3) == 0 {
		w("  spares: %d %%", g.Intn(30))
	}
	w("paper: {size: %s, units: %s}", g.pick("A4", "Letter"), g.pick("metric", "imperial"))
	w("practice: {mass_tolerance: %d %%, dynamic_factor: %.2f, one_must_hold: %s, gear_use: %d %%, hoist_use: %d %%}", g.Intn(20), g.between(1, 2), g.pick("no", "no", "no", "no", "no", "no", "yes"), 70+10*g.Intn(4), 70+10*g.Intn(4))
	cabinets := []string{g.key("one", 32), g.key("two", 32), g.key("three", 32)}
	w("gear:\n  cabinets:")
	for _, key := range cabinets {
		g.cabinet(w, key)
	}
	g.otherGear(w)
	w("stacks:")
	for i := range 1 + g.Intn(3) {
		g.stack(w, i, cabinets)
	}
	g.otherPoints(w)
	return b.String()
}

// otherPoints are cable picks and the like, in half of the jobs.
func (g *gambler) otherPoints(w func(string, ...any)) {
	if g.Intn(2) == 0 {
		return
	}
	w("other_points:")
	for i := range 1 + g.Intn(4) {
		id := fmt.Sprintf("CP%d", i)
		if g.wild {
			id = fmt.Sprintf("WWWW%d", i)
		}
		w("  - {id: %s, place: {stage_%s: %.2f m, %sstage: %.2f m}, height: %.1f m, mass: %.1f kg, what: %q}", id,
			g.pick("left", "right"), g.between(0, 20), g.pick("up", "down"), g.between(0, 9), g.between(5, 20), g.between(0, 400), g.text("cable pick", 48))
	}
}

// wide is the widest label of pick hole i, counted from 0.
func (g *gambler) wide(i int) string {
	g.holes[i+1] = fmt.Sprintf("WW%02d", i)
	return g.holes[i+1]
}

// splays are the holes of every joint of a random job, in degrees.
var splays = []string{"0", "0.25", "0.5", "1", "2", "3", "4", "5", "6", "7.5", "8", "10"}

func (g *gambler) cabinet(w func(string, ...any), key string) {
	front, depth := g.between(120, 450), g.between(250, 700)
	w("    %s:", key)
	if g.Intn(2) == 0 {
		w("      name: %q", g.text("Some cabinet", 32))
	}
	w("      mass: %.1f kg\n      width: %.0f mm\n      depth: %.0f mm", g.between(8, 90), g.between(400, 1300), depth)
	w("      front_height: %.0f mm\n      back_height: %.0f mm", front, front*g.between(0.6, 1))
	w("      hinge_behind_front: %.0f mm\n      hinge_below_top: %.0f mm\n      hinge_pitch: %.1f mm", g.between(0, 40), g.between(-5, 5), front+g.between(0, 3))
	if g.Intn(8) == 0 {
		w("      centre_of_gravity: not_known")
	} else {
		w("      centre_of_gravity: {behind_hinge: %.0f mm, below_hinge: %.0f mm}", depth*g.between(0.3, 0.55), front*g.between(0.4, 0.6))
	}
	w("      link_arm: %.0f mm", depth*g.between(0.6, 0.95))
	if g.Intn(3) == 0 {
		var labelled []string
		for i, s := range splays {
			label := string(rune('A' + i))
			if g.wild && i == 3 {
				label = "WWWW"
			}
			labelled = append(labelled, fmt.Sprintf("{label: %s, splay: %s}", label, s))
		}
		w("      splay_holes: [%s]", strings.Join(labelled, ", "))
	} else {
		w("      splay_holes: [%s]", strings.Join(splays, ", "))
	}
	if g.Intn(2) == 0 {
		w("      transport: 0")
	}
	if g.Intn(2) == 0 {
		w("      pins: {hinge: %d, link: %d}", 1+g.Intn(2), 1+g.Intn(2))
	}
	if g.Intn(3) > 0 {
		w("      pin_ratings: {hinge: %.1f kN, link: %.0f lb}", g.between(20, 90), g.between(4000, 9000))
	}
	w("      link_pushes: %s", g.pick("yes", "no"))
}

func (g *gambler) otherGear(w func(string, ...any)) {
	g.holes = []string{""}
	for i := range 30 {
		g.holes = append(g.holes, fmt.Sprint(i+1))
	}
	w("  bars:\n    bar:\n      mass: %.0f kg\n      centre_of_gravity: {behind_hinge: %.0f mm, above_hinge: %.0f mm}", g.between(10, 120), g.between(100, 500), g.between(20, 120))
	if g.wild && g.Intn(2) == 0 {
		w("      pick_holes:")
		for i := range 30 {
			w("        - {label: %q, behind_hinge: %d mm, above_hinge: %.0f mm}", g.wide(i), 5+i*30+g.Intn(20), g.between(40, 60))
		}
	} else {
		w("      pick_holes: {count: %d, ahead_of_hinge: %.0f mm, spacing: %.0f mm, above_hinge: %.0f mm}", 20+g.Intn(60), g.between(-50, 300), g.between(10, 60), g.between(40, 200))
	}
	w("      splay_holes: [%s]", strings.Join(splays, ", "))
	if g.Intn(2) == 0 {
		w("      rating: 9 t\n      pick_rating: 40 kN\n      tilt_limit: {down: 60 deg, up: 60 deg}")
	}
	w("  dollies:\n    dolly: {takes: %d, mass: 30 kg, deck_height: 6 1/2 in}", 1+g.Intn(10))
	class := ""
	if g.Intn(2) == 0 {
		class = fmt.Sprintf(", class: %q", g.text("over people", 48))
	}
	if g.Intn(2) == 0 {
		class += fmt.Sprintf(", speed: %.1f %s", g.between(2, 16), g.pick("m/min", "ft/min"))
	}
	w("  hoists:\n    hoist: {capacity: 4 t, mass: 52 kg, chain_mass: 1.1 kg/m, chain_length: 60 m, falls: %d, headroom: 550 mm%s}", 1+g.Intn(2), class)
	w("    other-hoist: {capacity: %.1f t, mass: 80 kg, chain_mass: 2 kg/m, chain_length: 58 m, headroom: 700 mm, speed: %.1f m/min}", g.between(2, 5), g.between(2, 10))
}

func (g *gambler) stack(w func(string, ...any), i int, cabinets []string) {
	id := fmt.Sprintf("S%d", i)
	if g.wild && g.Intn(2) == 0 {
		id = fmt.Sprintf("WWWWW%d", i)
	}
	w("  - id: %s\n    name: %q", id, g.text("Main", 48))
	if g.Intn(2) == 0 {
		w("    shape: %s", g.pick("square", "circle", "triangle", "diamond"))
	}
	w("    place: {stage_%s: %.2f m, %sstage: %.2f m, pan: %.1f deg stage_left}", g.pick("left", "right"), g.between(0, 20), g.pick("up", "down"), g.between(0, 9), g.between(-90, 90))
	w("    bar: bar\n    cabinets:")
	total, most := 0, 1+g.Intn(24)
	if g.wild {
		most = 1 + g.Intn(40)
	}
	for total < most {
		n := 1 + g.Intn(most-total)
		total += n
		var list []string
		for range n {
			list = append(list, splays[g.Intn(len(splays)/2)])
		}
		w("      - {type: %s, count: %d, splay: [%s]}", g.pick(cabinets...), n, strings.Join(list, ", "))
	}
	if g.Intn(4) > 0 {
		w("    dolly: dolly")
	}
	if g.Intn(4) == 0 {
		w("    floor: %.1f m", g.between(-1, 2))
	}
	if g.Intn(3) > 0 {
		w("    pins_set: %s", g.pick("on_dolly", "in_the_air"))
	}
	w("    aim: %.1f deg %s", g.between(0, 8), g.pick("up", "down"))
	cell := g.pick("", ", load_cell: above_hoist", ", load_cell: below_hoist")
	if g.Intn(2) == 0 {
		w("    hang: {picks: 1, hoist: hoist%s}", cell)
	} else {
		front := 1 + g.Intn(5)
		rear := front + 10 + g.Intn(5)
		if g.wild {
			rear = front + 1 + g.Intn(14)
		}
		hoists := g.pick("hoist", "other-hoist", "{front: hoist, rear: other-hoist}", "{front: other-hoist, rear: hoist}")
		w("    hang: {picks: 2, hoist: %s, front_hole: %s, rear_hole: %s%s}", hoists, g.holes[front], g.holes[rear], cell)
	}
	w("    trim: {%s: %.2f m}", g.pick("lowest", "highest_pick"), g.between(20, 30))
	if g.Intn(3) > 0 {
		w("    steel: 60 m")
	}
	w("    rigging_below: {mass: %.1f kg, length: 250 mm}\n    rigging_above: {mass: 7 kg, length: 1 ft 6 in}", g.between(0, 9))
	if g.Intn(2) == 0 {
		w("    secondary: {what: %q, rating: %.0f kg}", g.text("steel bond", 48), g.between(100, 3000))
	}
	if g.Intn(2) == 0 {
		w("    extras:\n      - {name: loom, mass: %.1f kg, behind_hinge: 400 mm, above_hinge: 10 mm}\n      - {name: laser, mass: 2 kg, on_cabinet: %d, ahead_of_hinge: 30 mm, below_hinge: 9 in}", g.between(1, 40), 1+g.Intn(total))
	}
}

// exampleGear opens the gear files of examples.
func exampleGear(path string) (io.ReadCloser, error) { return os.Open("../examples/" + path) }

// open reads a job that has no complaint.
func open(t *testing.T, yaml string) *Job {
	t.Helper()
	j, complaints, err := Open("job.yaml", strings.NewReader(yaml), exampleGear)
	require.NoError(t, err)
	require.Empty(t, complaints)
	return j
}

// TestEveryJobPacks: whatever check accepts finds room on paper, with no ink
// outside its block.
func TestEveryJobPacks(t *testing.T) {
	for seed := range int64(120) {
		g := gamble(seed)
		g.wild = seed%2 == 1
		yaml := g.job()
		j := open(t, yaml)
		if _, err := j.Draw(); err != nil {
			t.Errorf("seed %d: %v", seed, err)
		}
	}
}

// TestManyPagesPack: the widest ids with page numbers of three digits fit below
// their codes.
func TestManyPagesPack(t *testing.T) {
	head, stack, _ := strings.Cut(plainJob, "stacks:\n")
	stack = strings.Replace(stack, "count: 8, splay: [0, 0.5, 0.5, 1, 1, 2, 3, 4]", "count: 2, splay: [0, 1]", 1)
	yaml := head + "stacks:\n"
	for i := range 26 {
		one := strings.Replace(stack, "id: SL", fmt.Sprintf("id: WWWWW%c", 'A'+i%26), 1)
		if i >= 24 { // held: its code is the smallest
			one = strings.Replace(one, "lowest: 4.5 m", "lowest: -4.5 m", 1)
		}
		yaml += one
	}
	paper, err := open(t, yaml).Draw()
	require.NoError(t, err)
	require.Greater(t, paper.Pages, 100)
}
