package layouts

import (
	"strings"

	"hangpack/layouts/paper"
)

// Names of cabinets as they stand in their rows: as they are where there is
// room, else by a letter that a legend explains.
type names struct {
	short  map[string][]string
	legend []string
}

// NamesFor measures the names of some rows for w mm and a number of lines.
func NamesFor(c *paper.Canvas, rows []PinRow, f paper.Face, w float64, most int) names {
	n := names{short: map[string][]string{}}
	for _, r := range rows {
		if n.short[r.Type] != nil {
			continue
		}
		n.short[r.Type] = c.Wrap(f, w, r.Type)
		if len(n.short[r.Type]) > most {
			letter := string(rune('a' + len(n.legend)%26))
			n.short[r.Type] = []string{"type " + letter}
			n.legend = append(n.legend, "type "+letter+": "+r.Type)
		}
	}
	return n
}

// accented reports whether a name may have capitals with accents, which stand taller.
func accented(name string) bool {
	return strings.ContainsFunc(name, func(r rune) bool { return r >= 'À' })
}

// lines are the lines of one name.
func (n names) lines(name string) []string { return n.short[name] }
