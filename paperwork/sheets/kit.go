package sheets

import (
	"fmt"
	"strings"

	"hangpack/layouts"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

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

func kitRow(u say.Units, i kitItem) layouts.KitRow {
	r := layouts.KitRow{Of: i.what, Where: stackList(i.stacks), Count: fmt.Sprint(i.count), Spare: "-", Each: u.Tenth(i.each), All: u.Load(float64(i.count) * i.each)}
	if i.weighs != "" {
		r.Each, r.All = i.weighs, i.weighs
	}
	if i.spare > 0 {
		r.Spare = fmt.Sprint(i.spare)
	}
	return r
}

// kitWords say what is on the list and what is not.
func kitWords(j *worked.Job) string {
	words := "Out: counted out of the truck. In: counted in again. All that this job names, of every stack" + say.After("; ", j.IncludesHeld()) + ". Shackles, steels, cables and tools that the job does not name are not on it."
	if j.Spares > 0 {
		return words + fmt.Sprintf(" Spare: %s of the pins, up to whole ones.", say.Share(j.Spares))
	}
	return words + " Spares: the job asks for none."
}

// truckRows are a line per dolly.
func truckRows(j *worked.Job) (rows []layouts.TruckRow) {
	for _, h := range j.Stacks {
		if h.Dolly == nil {
			rows = append(rows, noDollyRow(h))
			continue
		}
		for k := range h.Sets {
			rows = append(rows, dollyRow(h, k))
		}
	}
	return rows
}

// noDollyRow is a stack whose dollies are not known.
func noDollyRow(h *rules.Checked) layouts.TruckRow {
	kg := 0.0
	for k := range h.Sets {
		set, _ := rig.SetMass(h.Hung, k)
		kg += set
	}
	return layouts.TruckRow{Stack: h.ID, Dolly: "no dolly", Holds: HoldsWords(h, say.Span{From: 1, To: len(h.Cabinets)}), Set: h.Unit().Load(kg), All: say.NotGiven, Height: say.NotGiven}
}

// dollyRow is the dolly of set k, counted from 0.
func dollyRow(h *rules.Checked, k int) layouts.TruckRow {
	kg, _ := rig.SetMass(h.Hung, k)
	return layouts.TruckRow{Stack: h.ID, Dolly: "dolly " + say.Dolly(k), Holds: HoldsWords(h, say.Span{From: h.Sets.First(k) + 1, To: h.Sets.First(k) + h.Sets[k]}) + "; " + h.Dolly.Key,
		Set: h.Unit().Load(kg), All: h.Unit().Load(kg + h.Dolly.Mass), Height: h.Unit().Length(h.OnDolly(k) - h.Floor)}
}

// HoldsWords say which cabinets a dolly holds: '4 Long-throw, 2 Wide-throw'.
func HoldsWords(h *rules.Checked, s say.Span) string {
	var parts []string
	for _, run := range say.Runs(s, func(n int) bool { return h.Cabinets[n-1].Cabinet == h.Cabinets[n-2].Cabinet }) {
		parts = append(parts, fmt.Sprintf("%d %s", run.To-run.From+1, h.Cabinets[run.From-1].Name))
	}
	return strings.Join(parts, ", ")
}
