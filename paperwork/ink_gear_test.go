package paperwork

import (
	"fmt"
	"strings"
)

// A setup is what stacks hang and travel on, by name.
type setup struct {
	holes  []string // of the bar
	dolly  string
	hoists [2]string
}

// rig writes the gear but for the cabinets.
func (g *crowd) rig(w writer) setup {
	r := setup{holes: g.frame(w), dolly: g.key("truck"), hoists: [2]string{g.key("h1"), g.key("h2")}}
	takes := g.dollies
	if takes == 0 {
		takes = 40
	}
	w("  dollies:\n    %s: {takes: %d, mass: %.0f kg, deck_height: %s, stands: plumb}\n  hoists:", r.dolly, takes, g.between(0, 5000), g.length(g.between(10, 1000)))
	for _, h := range r.hoists {
		w("    %s: {capacity: %.1f t, mass: %.0f kg, chain_mass: %.1f kg/m, chain_length: %.0f m, falls: %d, headroom: 550 mm, speed: 4 m/min, class: %q}",
			h, g.between(5, 100), g.between(0, 100)*g.between(1, 50), g.between(0, 10)*g.between(0.5, 10), g.between(80, 200), 1+g.Intn(8)/7*g.Intn(8), g.text("over people", 48))
	}
	return r
}

// labels are so many holes of a joint, with the splays they set.
func (g *crowd) labels(n int) (list string, given []string) {
	var all []string
	plain := !g.long && g.Intn(2) == 0
	for i := range n {
		s := fmt.Sprintf("%.2f", float64(i)*0.25)
		given = append(given, s)
		if !plain {
			s = fmt.Sprintf("{label: %q, splay: %s}", []string{fmt.Sprintf("WW%02d", i), fmt.Sprintf("M.%02d", i), fmt.Sprint(i), fmt.Sprintf("%d/W", i), fmt.Sprintf("QJ%d", i)}[(i+g.kind)%5], s)
		}
		all = append(all, s)
	}
	return strings.Join(all, ", "), given
}

const joints = 24 // holes of every joint

func (g *crowd) cabinet(w writer, n int, key string) {
	front, depth := g.between(120, 450)*g.size, g.between(250, 700)*g.size
	w("    %s:\n      name: \"%s%c%c\"\n      mass: %.1f kg", key, g.text("Cabinet ", 30), 'A'+n/10, 'A'+n%10, min(500, max(1, g.between(8, 90)*g.size*g.size)))
	w("      width: %s\n      depth: %.0f mm\n      front_height: %.1f mm\n      back_height: %.1f mm", g.length(min(4900, g.between(400, 1300)*g.size)), depth, front, max(5, front*g.between(0.5, 1)))
	w("      hinge_pitch: %.1f mm\n      link_arm: %.1f mm", max(5, front), min(3000, max(20, depth*g.between(0.5, 0.95))))
	if not := g.unknown || g.Intn(8) == 0; not && g.unknowns < 3 { // the most of one stack
		g.unknowns++
		w("      centre_of_gravity: not_known")
	} else {
		w("      centre_of_gravity: {behind_hinge: %.0f mm, below_hinge: %.0f mm}", depth*g.between(0.3, 0.55), front*g.between(0.4, 0.6))
	}
	list, _ := g.labels(joints)
	w("      splay_holes: [%s]\n      pins: {hinge: %d, link: %d}\n      link_pushes: yes", list, 1+g.Intn(2), 1+g.Intn(2))
	if g.Intn(2) == 0 {
		w("      transport: 0")
	}
	if g.Intn(2) == 0 {
		w("      pin_ratings: {hinge: %.1f kN, link: %.0f lb}\n      source: data_sheet\n      as_of: 2026-01-02", g.between(50, 1000), g.between(9000, 90000))
	}
}

// frame writes the bar and returns its pick holes.
func (g *crowd) frame(w writer) (holes []string) {
	list, _ := g.labels(joints)
	w("  bars:\n    bar:\n      mass: %.0f kg\n      centre_of_gravity: {behind_hinge: %.0f mm, above_hinge: 60 mm}\n      splay_holes: [%s]", g.between(1, 2000), g.between(100, 300)*min(g.size, 3), list)
	n, spacing, wide := 3+g.Intn(97), 600*min(g.size, 5), g.pick("WW", "QJ", "W/")
	spacing = max(5, spacing/float64(n))
	if g.Intn(2) == 0 {
		w("      pick_holes: {count: %d, ahead_of_hinge: %.0f mm, spacing: %.1f mm, above_hinge: %.0f mm}", n, g.between(0, 30), spacing, g.between(40, 400)*min(g.size, 3))
		for i := range n {
			holes = append(holes, fmt.Sprint(i+1))
		}
	} else {
		w("      pick_holes:")
		for i := range n {
			holes = append(holes, fmt.Sprintf("%s%02d", wide, i))
			w("        - {label: %s%02d, behind_hinge: %.0f mm, above_hinge: %.0f mm}", wide, i, float64(i)*spacing, g.between(40, 60))
		}
	}
	if g.Intn(2) == 0 {
		w("      rating: %.0f kN\n      pick_rating: %.0f kN", g.between(100, 1000), g.between(100, 1000))
	}
	return holes
}
