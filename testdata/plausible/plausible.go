// Package plausible writes random jobs of the kind that a shop would write: one
// to three stacks of mixed cabinets under their bars, on one hoist or two, with
// all keys of a job, in metric units, in feet and pounds, or in both; some of them at
// the edge of what checks let pass (edges.go). The reader has no complaint about any. Property tests of all packages draw their
// jobs here.
package plausible

import (
	"fmt"
	"math/rand"
	"strings"
)

// Splays are the holes of every joint of a random job, in degrees; its stacks use
// the first half of them.
var Splays = []string{"0", "0.25", "0.5", "1", "2", "3", "4", "5", "6", "7.5", "8", "10"}

// Job writes a whole job; the same seed writes the same one. A wild one has the
// longest names, ids and lists too.
func Job(seed int64, wild bool) string {
	w := &writer{Rand: rand.New(rand.NewSource(seed)), later: rand.New(rand.NewSource(seed + laterSeeds)), notes: rand.New(rand.NewSource(seed + noteSeeds)), edge: edgesOf(seed), wild: wild}
	w.units = w.pick("metric", "metric", "imperial", "both")
	w.head()
	w.practice()
	w.gear()
	w.stacks()
	w.otherPoints()
	return w.settled()
}

// laterSeeds keep what is drawn for keys that were added later apart from the
// rest, so that a new key changes nothing else in the job of a seed: draw for it
// whether it is given with writer.rarely, and its value with writer.apart.
const laterSeeds = 1 << 40

// noteSeeds keep what is drawn for notes apart: no figure knows of them, and with and
// without them a job is the same.
const noteSeeds = 1 << 42

// A writer writes one job. What a stack may name is kept as the gear is written.
type writer struct {
	*rand.Rand
	later    *rand.Rand // see laterSeeds
	notes    *rand.Rand // see noteSeeds
	text     strings.Builder
	wild     bool
	units    string // metric, imperial or both
	cabinets []cabinet
	bars     []bar
	takes    int // cabinets on a dolly
	hoists   []string
	checks   checks
	columns  []*column
	edge     edges
	limits   []limit
}

// A cabinet is the key of a type and its number, whether its holes are for the joint above it, and
// about what it is like; metres from its hinge pin.
type cabinet struct {
	key           string
	number        int
	above         bool
	kg            float64
	front, arm    float64
	behind, below float64
}

// A bar is the key of a bar and the labels of its pick holes, from the front, with how
// far each lies behind its hinge pin; and about what it is like.
type bar struct {
	key           string
	holes         []string
	at            []float64
	kg            float64
	behind, above float64
}

// line writes a line of the job.
func (w *writer) line(format string, args ...any) { fmt.Fprintf(&w.text, format+"\n", args...) }

// one reports true once in n times.
func (w *writer) one(n int) bool { return w.Intn(n) == 0 }

// rarely reports true once in n times, and disturbs no other draw.
func (w *writer) rarely(n int) bool { return w.later.Intn(n) == 0 }

// apart writes a value of a key that was added later, and disturbs no other draw.
func (w *writer) apart(write func() string) string {
	w.Rand, w.later = w.later, w.Rand
	defer func() { w.Rand, w.later = w.later, w.Rand }()
	return write()
}

// most reports true but for once in n times.
func (w *writer) most(n int) bool { return !w.one(n) }

func (w *writer) between(lo, hi float64) float64 { return lo + (hi-lo)*w.Float64() }

func (w *writer) pick(words ...string) string { return words[w.Intn(len(words))] }

// name is the usual words, or of the longest and widest that a job may give if wild.
func (w *writer) name(usual string, most int) string {
	if !w.wild || w.one(2) {
		return usual
	}
	return w.pick(strings.Repeat("W", most), (strings.Repeat("Wm ", most/3) + "Ww")[:most-1]+"W", strings.Repeat("a long name of a thing ", 11)[:most-1]+"x")
}

// note is something else to say, in a third of jobs and stacks.
func (w *writer) note(indent string) {
	usual := w.Rand
	w.Rand = w.notes
	defer func() { w.Rand = usual }()
	if w.one(3) {
		w.line("%snote: %q", indent, w.name("Ask for the long ladder", 240))
	}
}

// key is the usual key of a gear entry, or the longest there may be if wild.
func (w *writer) key(usual string) string {
	if !w.wild || w.one(2) {
		return usual
	}
	return usual + "-" + strings.Repeat("W", 32-len(usual)-1)
}

// head says which show it is, and what the pack is printed on.
func (w *writer) head() {
	w.line("job:\n  title: %q\n  venue: %q\n  date: 2027-0%d-1%d", w.name("A show", 72), w.name("A hall", 72), 1+w.Intn(9), w.Intn(10))
	w.line("  revision: %q", w.pick("A", "B", "12", "r.2-x", "WWWWWW"))
	if w.one(2) {
		w.line("  url: https://paper.example/%s", w.pick("a.pdf", "{stack}.pdf", "{stack}/{page}", strings.Repeat("long/", 18)+"a.pdf"))
	}
	if w.one(2) {
		w.line("  datum: %q\n  heights_from: %q", w.name("edge of the stage", 120), w.name("arena floor", 120))
	}
	if w.one(3) {
		w.line("  prepared_by: %q\n  contact: %q", w.name("the shop", 120), w.name("the shop's desk", 120))
	}
	w.note("  ")
	if w.one(3) {
		w.line("  spares: %d %%", w.Intn(30))
	}
	w.line("paper: {size: %s, units: %s}", w.pick("A4", "Letter"), w.pick("metric", "imperial"))
}

// practice is what the shop checks by. Two of three shops keep most of the defaults.
func (w *writer) practice() {
	hold := w.pick("no", "no", "no", "no", "no", "no", "yes")
	rest, share, least, tolerance := "", 60, 10, 1.0
	if w.one(3) {
		share, least, tolerance = 50+w.Intn(51), w.Intn(20), w.between(0, 2)
		rest = fmt.Sprintf(", side_share: %d %%, least_share: %d %%, aim_tolerance: %.1f deg, lift_tilt: %d deg, clearance: %s, limit_reserve: %s, reading_floor: %s",
			share, w.leastShare(least), tolerance, w.Intn(40), w.length(w.between(0, 0.6)), w.length(w.between(0, 0.8)), w.floor(w.mass(w.between(0, 40))))
	} else if w.edge.slack || w.edge.cut {
		rest = fmt.Sprintf(", least_share: %d %%, reading_floor: %s", w.leastShare(least), w.floor("20 kg"))
	}
	if w.rarely(3) {
		rest += ", pins_set: " + w.apart(w.way)
	}
	more, dynamic, gearUse, hoistUse := w.tolerance(w.Intn(20)), w.between(1, 2), 70+10*w.Intn(4), 70+10*w.Intn(4)
	w.checks = checks{1 + float64(more)/100, dynamic, float64(gearUse) / 100, float64(hoistUse) / 100, float64(share) / 100, tolerance}
	w.line("practice: {mass_tolerance: %d %%, dynamic_factor: %.2f, one_must_hold: %s, gear_use: %d %%, hoist_use: %d %%%s}",
		more, dynamic, hold, gearUse, hoistUse, rest)
}

// otherPoints are cable picks and the like, in half of the jobs.
func (w *writer) otherPoints() {
	if w.one(2) {
		return
	}
	w.line("other_points:")
	for i := range 1 + w.Intn(4) {
		id := fmt.Sprintf("CP%d", i)
		if w.wild {
			id = fmt.Sprintf("WWWW%d", i)
		}
		w.line("  - {id: %s, place: {%s}, height: %s, mass: %s, what: %q}", id, w.place(), w.length(w.between(5, 20)), w.mass(w.between(0, 400)), w.name("cable pick", 48))
	}
}
