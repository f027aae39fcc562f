package sheets

import (
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/say"
)

// An entry is one gear entry that a stack is made of.
type entry struct {
	kind, key string
	job.Origin
}

// gearEntries lists the gear entries of a stack: bar, cabinets from the top, dolly and
// hoists, each once.
func gearEntries(h *rig.Hung) []entry {
	all := []entry{{"bar", h.Bar.Key, h.Bar.Origin}}
	for _, t := range h.Types() {
		all = append(all, entry{"cabinet", t.Key, t.Origin})
	}
	if h.Dolly != nil {
		all = append(all, entry{"dolly", h.Dolly.Key, h.Dolly.Origin})
	}
	for i, p := range h.Picks {
		if i == 0 || p.Hoist != h.Picks[0].Hoist {
			all = append(all, entry{"hoist", p.Hoist.Key, p.Hoist.Origin})
		}
	}
	return all
}

// openWords say what is open about the figures of a gear entry that nobody has
// looked up or weighed.
func (e entry) openWords() string {
	if e.Source == job.Estimate {
		return "Estimated: the figures of " + e.kind + " " + e.key + say.After(", as of ", e.AsOf) + "; weigh it or ask its maker"
	}
	return "Not known: where the figures of " + e.kind + " " + e.key + " come from"
}

// originWords say where figures come from: 'figures from data sheet, as of
// 2027-03-01'.
func originWords(o job.Origin) string {
	from := "figures from " + strings.ReplaceAll(string(o.Source), "_", " ")
	switch o.Source {
	case "":
		from = "source of figures not given"
	case job.Estimate:
		from = "figures estimated"
	case "weighed":
		from = "weighed"
	}
	return from + say.After(", as of ", o.AsOf)
}
