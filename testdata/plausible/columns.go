package plausible

import (
	"math"
	"math/cmplx"
	"strconv"
)

// What hangs from hooks and joints, roughly: extras and rigging are left out, and one
// pick is taken to hold the wanted aim. It is enough to draw limits near it.

// kilo is what a kilogram weighs, in kilonewtons.
const kilo = 9.80665e-3

const degree = math.Pi / 180

// checks are what the shop checks by, as far as limits need it: fractions of one,
// and degrees.
type checks struct{ more, dynamic, gearUse, hoistUse, sideShare, aimTolerance float64 }

// A column is a stack as it is written: radians, front down, and metres behind the
// bar's hinge pin.
type column struct {
	bar      bar
	cabinets []hung
	straight bool // all splays 0
	tilt     float64
	hoists   []string // of both ends where it is one
	holes    []int    // two picks: front and rear
}

// A hung cabinet with the joint above it, in radians.
type hung struct {
	cabinet
	splay float64
}

// add hangs cabinets below, and returns the splays of their joints.
func (c *column) add(below cabinet, splays []string) (list []string) {
	for _, s := range splays {
		if c.straight {
			s = "0"
		}
		deg, _ := strconv.ParseFloat(s, 64)
		c.cabinets, list = append(c.cabinets, hung{below, deg * degree}), append(list, s)
	}
	return list
}

// aimed says where cabinet 1 looks.
func (c *column) aimed(aim float64) { c.tilt = aim - c.cabinets[0].splay }

// A part is some mass at a place, x forward and z up.
type part struct {
	kg float64
	at complex128
}

func (p part) with(q part) part {
	kg := p.kg + q.kg
	return part{kg, (p.at*complex(p.kg, 0) + q.at*complex(q.kg, 0)) / complex(kg, 0)}
}

// turned is where something lies in a body that is turned front down.
func turned(behind, below, turn float64) complex128 {
	return complex(-behind, -below) * cmplx.Exp(complex(0, -turn))
}

// A jointLoad is what a hinge and a link carry, in kilonewtons.
type jointLoad struct {
	upper, lower string // keys of both bodies
	hinge, link  float64
}

// loads are the whole stack, and what each joint carries, from the lowest.
func (c column) loads() (all part, joints []jointLoad) {
	turn, pin := c.tilt, complex128(0)
	var pins []complex128
	var aims []float64
	for _, h := range c.cabinets {
		turn += h.splay
		pins, aims = append(pins, pin), append(aims, turn)
		pin += turned(0, h.front, turn)
	}
	for k := len(c.cabinets) - 1; k >= 0; k-- {
		h, upper := c.cabinets[k], c.bar.key
		if k > 0 {
			upper = c.cabinets[k-1].key
		}
		all = all.with(part{h.kg, pins[k] + turned(h.behind, h.below, aims[k])})
		weight, lean := all.kg*kilo, aims[k]-h.splay/2
		link := weight * real(pins[k]-all.at) / (h.arm * math.Cos(h.splay/2))
		joints = append(joints, jointLoad{upper, h.key, math.Hypot(weight*math.Cos(lean)-link, weight*math.Sin(lean)), math.Abs(link)})
	}
	return all.with(part{c.bar.kg, turned(c.bar.behind, -c.bar.above, c.tilt)}), joints
}

// level is how far forward a pick hole hangs.
func (c column) level(hole int) float64 {
	return real(turned(c.bar.at[hole], -c.bar.above, c.tilt))
}

// picks are what each pick carries, in kilograms.
func (c column) picks() []float64 {
	all, _ := c.loads()
	if len(c.holes) == 0 {
		return []float64{all.kg}
	}
	front, rear := c.level(c.holes[0]), c.level(c.holes[1])
	share := (real(all.at) - rear) / (front - rear)
	return []float64{all.kg * share, all.kg * (1 - share)}
}

// onHoist is the most that a hoist has to be good for, in kilonewtons.
func (w *writer) onHoist(key string) (kn float64) {
	for _, c := range w.columns {
		for i, kg := range c.picks() {
			if c.hoists[min(i, len(c.hoists)-1)] == key {
				kn = max(kn, kg*kilo*w.checks.more/w.checks.hoistUse)
			}
		}
	}
	return kn
}

// asGear is what something has to be rated for that holds so many kilonewtons.
func (w *writer) asGear(kn float64) float64 {
	return kn * w.checks.more * w.checks.dynamic / w.checks.gearUse
}

// onBar is the most that a bar, and one of its pick holes, has to be good for.
func (w *writer) onBar(key string) (all, pick float64) {
	for _, c := range w.columns {
		if c.bar.key == key {
			mass, _ := c.loads()
			all = max(all, w.asGear(mass.kg*kilo))
			for _, kg := range c.picks() {
				pick = max(pick, w.asGear(kg*kilo))
			}
		}
	}
	return all, pick
}

// onPins is the most that a pin of a bar or cabinet has to be good for, two sharing.
func (w *writer) onPins(key string) (hinge, link float64) {
	for _, c := range w.columns {
		_, joints := c.loads()
		for _, j := range joints {
			if j.upper == key || j.lower == key {
				hinge = max(hinge, w.asGear(j.hinge*w.checks.sideShare))
				link = max(link, w.asGear(j.link*w.checks.sideShare))
			}
		}
	}
	return hinge, link
}

// plumb is how far up cabinet 1 of a straight column looks when the link of its first
// joint carries nothing, in radians: its centre of gravity hangs plumb below the hinge.
func (c column) plumb() float64 {
	var all part
	pin := complex128(0)
	for _, h := range c.cabinets {
		all = all.with(part{h.kg, pin + turned(h.behind, h.below, 0)})
		pin += turned(0, h.front, 0)
	}
	return math.Atan2(-real(all.at), -imag(all.at))
}
