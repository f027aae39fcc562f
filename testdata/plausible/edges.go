package plausible

import (
	"fmt"
	"math"
	"math/rand"
	"strings"
)

// Jobs at the edge of what checks let pass. Whether a job is one, and all that is drawn
// for it, comes from a source of its own, so that the others stay as they are.

// edgeSeeds keep that source apart; see laterSeeds.
const edgeSeeds = 1 << 41

// edges says which edges a job is drawn to.
type edges struct {
	*rand.Rand
	limits  bool    // hoists, ratings and limits of tilt near what they hold
	least   float64 // of what they hold
	cut     bool    // little tolerance and wide windows, which those limits cut
	up      bool    // straight columns that look up, their links pushed or nearly so
	unknown bool    // most centres of gravity not known
	slack   bool    // two picks with the centre of gravity near one of them
}

func edgesOf(seed int64) edges {
	e := edges{Rand: rand.New(rand.NewSource(seed + edgeSeeds)), least: 0.8}
	e.limits, e.up, e.unknown, e.slack = e.one(3), e.one(10), e.one(12), e.one(8)
	if e.one(2) {
		e.least, e.cut = 1.05, e.limits
	}
	return e
}

// one reports true once in n times.
func (e edges) one(n int) bool { return e.Intn(n) == 0 }

// atEdge writes something from the source of edges.
func (w *writer) atEdge(write func() string) string {
	usual := w.Rand
	w.Rand = w.edge.Rand
	defer func() { w.Rand = usual }()
	return write()
}

// A limit is a place in the text for what is written once all stacks are.
type limit struct {
	mark, usual string
	near        func() string // "" where nothing comes near it
}

// limit leaves a place for a rating, for half of those of a job near its limits and for
// most where windows are to be cut; load is what it holds, in kilonewtons and with all
// factors.
func (w *writer) limit(usual string, load func() float64) string {
	if !w.edge.limits || w.edge.one(map[bool]int{false: 2, true: 6}[w.edge.cut]) {
		return usual
	}
	return w.placed(usual, func() string {
		kn := load()
		if kn <= 0 {
			return ""
		}
		return w.load(min(max(kn*w.between(w.edge.least, 1.4), 0.5), 450))
	})
}

// tiltLimit leaves a place for a bar's limit of tilt: the tilt of one of its stacks and
// some of the aim's tolerance.
func (w *writer) tiltLimit(usual, key string) string {
	if !w.edge.limits || w.edge.one(3) {
		return usual
	}
	return w.placed(usual, func() string {
		for _, c := range w.columns {
			if c.bar.key == key {
				limit := max(math.Abs(c.tilt)/degree+w.between(-0.1, 1)*w.checks.aimTolerance, 0)
				if c.tilt < 0 {
					return fmt.Sprintf("{down: 60 deg, up: %.2f deg}", limit)
				}
				return fmt.Sprintf("{down: %.2f deg, up: 20 deg}", limit)
			}
		}
		return ""
	})
}

// placed leaves a place in the text.
func (w *writer) placed(usual string, near func() string) string {
	l := limit{fmt.Sprintf("\x00%d\x00", len(w.limits)), usual, near}
	w.limits = append(w.limits, l)
	return l.mark
}

// settled is the job with all limits in their places.
func (w *writer) settled() string {
	var pairs []string
	for _, l := range w.limits {
		says := w.atEdge(l.near)
		if says == "" {
			says = l.usual
		}
		pairs = append(pairs, l.mark, says)
	}
	return strings.NewReplacer(pairs...).Replace(w.text.String())
}

// leastShare is less than 3 percent where picks are to be light, or light_pick would
// hold them all.
func (w *writer) leastShare(usual int) int {
	if w.edge.slack {
		return w.edge.Intn(3)
	}
	return usual
}

// tolerance is of masses, in percent: little where windows are to be cut.
func (w *writer) tolerance(usual int) int {
	if w.edge.cut {
		return w.edge.Intn(4)
	}
	return usual
}

// floor writes the least reading window: wide where windows are to be cut.
func (w *writer) floor(usual string) string {
	if w.edge.cut {
		return w.atEdge(func() string { return w.mass(w.between(15, 49)) })
	}
	return usual
}

// notKnown writes a centre of gravity, or that nobody knows it.
func (w *writer) notKnown(usual string) string {
	if w.edge.unknown && !w.edge.one(4) {
		return "not_known"
	}
	return usual
}

// nearOne moves two pick holes so that the centre of gravity hangs near one of them,
// where the bar has holes for that.
func (w *writer) nearOne(c *column, front, rear int) (int, int) {
	if !w.edge.slack || w.edge.one(3) {
		return front, rear
	}
	all, _ := c.loads()
	behind := 0 // the first hole behind the centre of gravity
	for behind < len(c.bar.at) && c.level(behind) > real(all.at) {
		behind++
	}
	apart := 10 + w.edge.Intn(10)
	if rear = behind + w.edge.Intn(3) - 1; w.edge.one(2) {
		rear = behind - w.edge.Intn(3) + apart
	}
	if front = rear - apart; front < 0 || rear >= len(c.bar.at) {
		return 0, len(c.bar.at) - 1
	}
	return front, rear
}

// pushes says whether a link may be pushed: in half of the straight columns not.
func (w *writer) pushes(usual string) string {
	if w.edge.up {
		return [...]string{"yes", "no"}[w.edge.Intn(2)]
	}
	return usual
}

// lookingUp aims a straight column so that its first link carries little.
func (w *writer) lookingUp(c *column) string {
	up := min(c.plumb()*(0.5+0.7*w.edge.Float64()), 20*degree)
	c.aimed(-up)
	return fmt.Sprintf("%.1f deg up", up/degree)
}
