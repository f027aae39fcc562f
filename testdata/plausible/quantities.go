package plausible

import (
	"fmt"
	"strings"
)

// Quantities as people write them: in the units of the job, or now in these and
// now in those.

// metric reports whether the next quantity is written in metric units.
func (w *writer) metric() bool { return w.units == "metric" || w.units == "both" && w.one(2) }

// length writes metres.
func (w *writer) length(m float64) string {
	if w.metric() {
		switch {
		case m < 2 && m > -2:
			return fmt.Sprintf("%.0f mm", m*1000)
		case w.one(4):
			return fmt.Sprintf("%.0f cm", m*100)
		}
		return fmt.Sprintf("%.2f m", m)
	}
	in := m / 0.0254
	switch {
	case in > 12 && w.one(2):
		return fmt.Sprintf("%d ft %.0f in", int(in/12), w.between(0, 11))
	case in > 1 && in < 60 && w.one(2):
		return fmt.Sprintf("%d %s in", int(in), w.pick("1/2", "3/8", "7/16"))
	case in > 60 && w.one(2):
		return fmt.Sprintf("%.2f ft", in/12)
	}
	return fmt.Sprintf("%.2f in", in)
}

// mass writes kilograms.
func (w *writer) mass(kg float64) string {
	switch {
	case !w.metric():
		return fmt.Sprintf("%.1f lb", kg/0.45359237)
	case kg > 800:
		return fmt.Sprintf("%.3f t", kg/1000)
	}
	return fmt.Sprintf("%.1f kg", kg)
}

// load writes a rating or a capacity, given in kilonewtons, as a force or a mass.
func (w *writer) load(kn float64) string {
	switch {
	case !w.metric():
		return fmt.Sprintf("%.0f %s", kn*224.809, w.pick("lb", "lbf"))
	case w.one(3):
		return fmt.Sprintf("%.0f kg", kn*101.97)
	case w.one(2):
		return fmt.Sprintf("%.0f N", kn*1000)
	}
	return fmt.Sprintf("%.1f kN", kn)
}

// perLength writes the mass of a chain, given in kilograms a metre.
func (w *writer) perLength(kg float64) string {
	if w.metric() {
		return fmt.Sprintf("%.2f kg/m", kg)
	}
	return fmt.Sprintf("%.2f lb/ft", kg*0.671969)
}

// speed writes metres a minute.
func (w *writer) speed(m float64) string {
	if w.metric() {
		return fmt.Sprintf("%.1f m/min", m)
	}
	return fmt.Sprintf("%.1f ft/min", m/0.3048)
}

// offset writes a place in a part's axes, in metres behind and below its hinge pin.
// Either may be written the other way, with its sign turned.
func (w *writer) offset(behind, below float64) string {
	return w.behind(behind) + ", " + w.below(below)
}

func (w *writer) behind(m float64) string {
	if m < 0 || w.one(8) {
		return "ahead_of_hinge: " + w.length(-m)
	}
	return "behind_hinge: " + w.length(m)
}

func (w *writer) below(m float64) string {
	if m >= 0 && w.most(8) {
		return "below_hinge: " + w.length(m)
	}
	says := w.length(-m)
	if m < 0 && w.rarely(8) && !strings.Contains(says, "/") { // or every seed would write another job
		return "below_hinge: -" + says
	}
	return "above_hinge: " + says
}

// place writes a place in plan, up to 20 m to either side of the datum.
func (w *writer) place() string {
	return fmt.Sprintf("stage_%s: %s, %sstage: %s", w.pick("left", "right"), w.length(w.between(0, 20)), w.pick("up", "down"), w.length(w.between(0, 9)))
}
