package paperwork

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/paperwork/job"
)

// A kitItem is some pieces of gear that are alike: how many, where they go, and
// what one weighs.
type kitItem struct {
	what   string
	stacks []string // ids, each once
	count  int
	spare  int     // pins alone have spares
	each   float64 // kg
	weighs string  // in place of each where no mass is given for it
}

// A kitList is items of one sort.
type kitList struct {
	of    string
	items []kitItem
}

// add counts pieces to the item that is alike, or to a new one.
func (l *kitList) add(stack string, n int, like kitItem) {
	i := slices.IndexFunc(l.items, func(k kitItem) bool { return k.what == like.what && k.each == like.each })
	if i < 0 {
		i = len(l.items)
		l.items = append(l.items, like)
	}
	k := &l.items[i]
	k.count += n
	if !slices.Contains(k.stacks, stack) {
		k.stacks = append(k.stacks, stack)
	}
}

// kit is all gear of the job, of held stacks too.
func (j *Job) kit() []kitList {
	lists := make([]kitList, 7)
	for i, of := range []string{"Bars", "Cabinets", "Pins, in their cabinets and bars", "Hoists (motors)", "Rigging", "Dollies", "Tied on, and secondaries"} {
		lists[i].of = of
	}
	for _, h := range j.stacks {
		lists[0].add(h.ID, 1, kitItem{what: h.Bar.Key, each: h.Bar.Mass})
		for _, c := range h.Cabinets {
			lists[1].add(h.ID, 1, kitItem{what: c.Name, each: c.Mass})
			lists[2].add(h.ID, c.HingePins, kitItem{what: "hinge pins of " + c.Name, weighs: "in it"})
			lists[2].add(h.ID, c.LinkPins, kitItem{what: "link pins of " + c.Name, weighs: "in it"})
		}
		for _, p := range h.Picks {
			h.hoistKit(&lists[3], p.Hoist)
			h.riggingKit(&lists[4], "between hook and bar", p.Below)
			h.riggingKit(&lists[4], "between steel and hoist", p.Above)
		}
		if h.Dolly != nil {
			lists[5].add(h.ID, len(h.Sets), kitItem{what: h.Dolly.Key, each: h.Dolly.Mass})
		}
		for _, e := range h.Extras {
			lists[6].add(h.ID, 1, kitItem{what: e.Name, each: e.Mass})
		}
		if h.Secondary != nil {
			lists[6].add(h.ID, 1, kitItem{what: h.secondary(), weighs: notGiven})
		}
	}
	for i := range lists[2].items {
		lists[2].items[i].spare = spares(lists[2].items[i].count, j.job.Spares)
	}
	return slices.DeleteFunc(lists, func(l kitList) bool { return len(l.items) == 0 })
}

// spares is a share of a number of pieces, up to whole ones.
func spares(n int, share float64) int { return int(math.Ceil(float64(n)*share - within)) }

func (h *hung) hoistKit(l *kitList, m *job.Hoist) {
	l.add(h.ID, 1, kitItem{what: m.Key + ", without chain", each: m.Mass})
	l.add(h.ID, 1, kitItem{what: fmt.Sprintf("chain of %s, %s each", m.Key, h.unit().span(m.ChainLength)), each: m.ChainMass * m.ChainLength})
}

func (h *hung) riggingKit(l *kitList, where string, r job.Rigging) {
	if r.Mass > 0 || r.Length > 0 {
		l.add(h.ID, 1, kitItem{what: fmt.Sprintf("%s, %s long", where, h.unit().fine(r.Length)), each: r.Mass})
	}
}

// kitMass is what all of it weighs together, in kg, but for what has no mass given.
func kitMass(lists []kitList) (kg float64) {
	for _, l := range lists {
		for _, k := range l.items {
			kg += float64(k.count) * k.each
		}
	}
	return kg
}

// stackList writes ids, where there are few, and how many there are else.
func stackList(ids []string) string {
	const most = 6
	if len(ids) > most {
		return fmt.Sprintf("%d stacks", len(ids))
	}
	return strings.Join(ids, ", ")
}
