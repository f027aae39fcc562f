package sheets

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
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

// kitSheet is what has to come out of the truck and go back into it.
func kitSheet(j *worked.Job) layouts.Kit {
	u, lists := j.Unit(), kitOf(j)
	k := layouts.Kit{
		Says: []string{kitWords(j)}, Trucks: truckRows(j),
		Total: fmt.Sprintf("All of it together: %s, but for what has no mass given.", u.Load(kitMass(lists))),
	}
	for _, l := range lists {
		g := layouts.KitGroup{Of: l.of}
		for _, i := range l.items {
			g.Rows = append(g.Rows, kitRow(u, i))
		}
		k.Groups = append(k.Groups, g)
	}
	return k
}

// kitWords say what is on the list and what is not.
func kitWords(j *worked.Job) string {
	words := "Out: counted out of the truck. In: counted in again. All that this job names, of every stack" + say.After("; ", j.IncludesHeld()) + ". Shackles, steels, cables and tools that the job does not name are not on it."
	if j.Spares > 0 {
		return words + fmt.Sprintf(" Spare: %s of the pins, up to whole ones.", say.Share(j.Spares))
	}
	return words + " Spares: the job asks for none."
}

// kitRow is an item in words.
func kitRow(u say.Units, i kitItem) layouts.KitRow {
	r := layouts.KitRow{Of: i.what, Where: stackList(i.stacks), Count: fmt.Sprint(i.count), Spare: "-", Each: u.FineMass(i.each), All: u.Load(float64(i.count) * i.each)}
	if i.weighs != "" {
		r.Each, r.All = i.weighs, i.weighs
	}
	if i.spare > 0 {
		r.Spare = fmt.Sprint(i.spare)
	}
	return r
}

// stackList writes ids where they are few, else how many there are.
func stackList(ids []string) string {
	const most = 6
	if len(ids) > most {
		return fmt.Sprintf("%d stacks", len(ids))
	}
	return strings.Join(ids, ", ")
}

// truckRows are a line per dolly.
func truckRows(j *worked.Job) (rows []layouts.TruckRow) {
	for _, h := range j.Stacks {
		if h.Dolly == nil {
			rows = append(rows, noDollyRow(h.Hung))
			continue
		}
		for k := range h.Sets {
			rows = append(rows, dollyRow(h.Hung, k))
		}
	}
	return rows
}

// noDollyRow is a stack whose dollies are not known.
func noDollyRow(h *rig.Hung) layouts.TruckRow {
	kg := 0.0
	for k := range h.Sets {
		set, _ := rig.SetMass(h, k)
		kg += set
	}
	return layouts.TruckRow{Stack: h.ID, Dolly: "no dolly", Holds: HoldsWords(h, say.Span{From: 1, To: len(h.Cabinets)}), Set: h.Unit().Load(kg), All: say.NotGiven, Height: say.NotGiven}
}

// dollyRow is the dolly of set k, counted from 0.
func dollyRow(h *rig.Hung, k int) layouts.TruckRow {
	kg, _ := rig.SetMass(h, k)
	return layouts.TruckRow{Stack: h.ID, Dolly: "dolly " + say.Dolly(k), Holds: HoldsWords(h, setSpan(h, k)) + "; " + h.Dolly.Key,
		Set: h.Unit().Load(kg), All: h.Unit().Load(kg + h.Dolly.Mass), Height: h.Unit().Length(h.OnDolly(k) - h.Floor)}
}

// kitOf is all gear of the job, of held stacks too, sort by sort.
func kitOf(j *worked.Job) (lists []kitList) {
	for _, sort := range []struct {
		of  string
		add func(*kitList, *rig.Hung)
	}{{"Bars", barKit}, {"Cabinets", cabinetKit}, {"Pins, in their cabinets and bars", pinKit}, {"Hoists (motors)", hoistKit},
		{"Rigging", riggingKit}, {"Dollies", dollyKit}, {"Tied on, and secondaries", extraKit}} {
		l := kitList{of: sort.of}
		for _, h := range j.Stacks {
			sort.add(&l, h.Hung)
		}
		if len(l.items) > 0 {
			lists = append(lists, l)
		}
	}
	return lists
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

// barKit counts the bar.
func barKit(l *kitList, h *rig.Hung) { l.add(h.ID, 1, kitItem{what: h.Bar.Key, each: h.Bar.Mass}) }

// cabinetKit counts the cabinets by what they are called.
func cabinetKit(l *kitList, h *rig.Hung) {
	for _, c := range h.Cabinets {
		l.add(h.ID, 1, kitItem{what: c.Name, each: c.Mass})
	}
}

// pinKit counts the pins of each joint under the cabinet below it, with spares.
func pinKit(l *kitList, h *rig.Hung) {
	for _, c := range h.Cabinets {
		l.add(h.ID, c.HingePins, kitItem{what: "hinge pins of " + c.Name, weighs: "in it"})
		l.add(h.ID, c.LinkPins, kitItem{what: "link pins of " + c.Name, weighs: "in it"})
	}
	for i := range l.items {
		l.items[i].spare = spares(l.items[i].count, h.Job.Spares)
	}
}

// spares is a share of a number of pieces, up to whole ones.
func spares(n int, share float64) int { return int(math.Ceil(float64(n)*share - rig.Within)) }

// hoistKit counts the hoists and, apart from them, their chains.
func hoistKit(l *kitList, h *rig.Hung) {
	for _, p := range h.Picks {
		m := p.Hoist
		l.add(h.ID, 1, kitItem{what: m.Key + ", without chain", each: m.Mass})
		l.add(h.ID, 1, kitItem{what: fmt.Sprintf("chain of %s, %s each", m.Key, h.Unit().ChainLength(m.ChainLength)), each: m.ChainMass * m.ChainLength})
	}
}

// riggingKit counts what the job gives a mass or a length between bar, hoist and steel.
func riggingKit(l *kitList, h *rig.Hung) {
	add := func(where string, r job.Rigging) {
		if r.Mass > 0 || r.Length > 0 {
			l.add(h.ID, 1, kitItem{what: fmt.Sprintf("%s, %s long", where, h.Unit().Fine(r.Length)), each: r.Mass})
		}
	}
	for _, p := range h.Picks {
		add("between hook and bar", p.Below)
		add("between steel and hoist", p.Above)
	}
}

// dollyKit counts a dolly for each set.
func dollyKit(l *kitList, h *rig.Hung) {
	if h.Dolly != nil {
		l.add(h.ID, len(h.Sets), kitItem{what: h.Dolly.Key, each: h.Dolly.Mass})
	}
}

// extraKit counts what is tied on, and the secondary, whose mass no job gives.
func extraKit(l *kitList, h *rig.Hung) {
	for _, e := range h.Extras {
		l.add(h.ID, 1, kitItem{what: e.Name, each: e.Mass})
	}
	if h.Secondary != nil {
		l.add(h.ID, 1, kitItem{what: rules.SecondaryWords(h), weighs: say.NotGiven})
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
