package laws

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"hangpack/paperwork/rules"
	"hangpack/testdata/trials"
)

// Laws of gear that is described in another way.

// eitherCentre measures centres of gravity from the front where they are measured
// from the hinge pin, and the other way round.
func eitherCentre(t *trial) {
	t.alike(t.changed(func(n tree) {
		for _, c := range n.at("gear", "cabinets").items() {
			given := func(key string) float64 {
				if v := c.at(key); v.Node != nil {
					return v.si()
				}
				return 0
			}
			centre, behind, below := c.at("centre_of_gravity"), given("hinge_behind_front"), given("hinge_below_top")
			switch front := centre.at("behind_front"); {
			case centre.Kind == yaml.ScalarNode:
			case front.Node != nil:
				c.put("centre_of_gravity", fmt.Sprintf("{behind_hinge: %s, below_hinge: %s}", quantityText(front.si()-behind, "m"), quantityText(centre.at("below_top").si()-below, "m")))
			default:
				b, d := centre.way("behind_hinge", "ahead_of_hinge"), centre.way("below_hinge", "above_hinge")
				c.put("centre_of_gravity", fmt.Sprintf("{behind_front: %s, below_top: %s}", quantityText(b+behind, "m"), quantityText(d+below, "m")))
			}
		}
	}), anotherJob)
}

// renamed gives every gear entry another key.
func renamed(t *trial) {
	to := map[string]string{}
	is := t.changed(func(n tree) {
		for _, kind := range n.at("gear").items() {
			for i := 0; i < len(kind.Content); i += 2 {
				to[kind.Content[i].Value] = fmt.Sprintf("gear-%d", len(to))
				kind.Content[i].Value = to[kind.Content[i].Value]
			}
		}
		n.renameUses(to)
	})
	t.alike(is, but{"type": nil, "hoist": nil, "stacks.points.most.where": nil}.and(anyFinding).and(anotherJob))
	if is == nil {
		return
	}
	for i, s := range is.Figures.Stacks {
		was := t.Figures.Stacks[i]
		t.must(slices.Equal(rulesOf(was.Holds), rulesOf(s.Holds)) && slices.Equal(rulesOf(was.Cautions), rulesOf(s.Cautions)), "%s: other findings", s.ID)
		for k, c := range s.Cabinets {
			t.must(c.Type == to[was.Cabinets[k].Type], "%s: cabinet %d is %s", s.ID, k+1, c.Type)
		}
		for k, p := range s.Points {
			t.must(p.Hoist == to[was.Points[k].Hoist], "%s hangs on %s", p.ID, p.Hoist)
		}
	}
}

func (n tree) renameUses(to map[string]string) {
	for _, s := range n.at("stacks").items() {
		for _, v := range append([]tree{s.at("bar"), s.at("dolly"), s.at("hang", "hoist"), s.at("hang", "hoist", "front"), s.at("hang", "hoist", "rear")}, s.typesNamed()...) {
			if v.Node != nil && v.Kind == yaml.ScalarNode {
				v.Value = to[v.Value]
			}
		}
	}
	for _, b := range n.at("gear", "bars").items() {
		if most := b.at("most"); most.Node != nil {
			for i := 0; i < len(most.Content); i += 2 {
				if named := most.Content[i]; named.Value != "any" {
					named.Value = to[named.Value]
				}
			}
		}
	}
}

func (n tree) typesNamed() (all []tree) {
	for _, c := range n.at("cabinets").items() {
		all = append(all, c.at("type"))
	}
	return all
}

func rulesOf(findings []rules.Finding) (all []string) {
	for _, f := range findings {
		all = append(all, f.Rule)
	}
	slices.Sort(all)
	return all
}

// countsWrittenOut writes every cabinet on a line of its own, and every pick hole.
func countsWrittenOut(t *trial) {
	t.alike(t.changed(func(n tree) {
		for _, s := range n.at("stacks").items() {
			var all []*yaml.Node
			for _, c := range s.at("cabinets").items() {
				for _, splay := range c.at("splay").items() {
					all = append(all, asTree(fmt.Sprintf("{type: %s, count: 1, splay: [%s]}", c.at("type").Value, splay.Value)).Node)
				}
			}
			if all != nil {
				s.at("cabinets").Content = all
			}
		}
		for _, b := range n.at("gear", "bars").items() {
			holes := b.at("pick_holes")
			if holes.Kind != yaml.MappingNode {
				continue
			}
			first, down, spacing := holes.way("behind_hinge", "ahead_of_hinge"), holes.way("below_hinge", "above_hinge"), holes.at("spacing").si()
			var all []string
			for i := range int(trials.Number(holes.at("count").Value)) {
				all = append(all, fmt.Sprintf("{label: %d, behind_hinge: %s, below_hinge: %s}", i+1, quantityText(first+float64(i)*spacing, "m"), quantityText(down, "m")))
			}
			b.put("pick_holes", "["+strings.Join(all, ", ")+"]")
		}
	}), anotherJob)
}

// endsAlike writes for front and rear what is one value for both.
func endsAlike(t *trial) {
	is := t.changed(func(n tree) {
		for _, s := range n.stacksInFull() {
			if s.at("hang", "picks").Value != "2" {
				continue
			}
			for _, section := range []tree{s, s.at("hang")} {
				for _, key := range []string{"steel", "rigging_below", "rigging_above", "hoist"} {
					if v := section.at(key); v.Node != nil && v.at("front").Node == nil {
						both := v.flow()
						section.put(key, fmt.Sprintf("{front: %s, rear: %s}", both, both))
					}
				}
			}
		}
	})
	t.alike(is, anotherJob)
}

// flow is the tree on one line.
func (n tree) flow() string {
	own := n.copied()
	if own.Kind != yaml.ScalarNode {
		own.Style = yaml.FlowStyle
	}
	return strings.TrimSpace(own.text())
}

// gearInAFile puts all gear into a file.
func gearInAFile(t *trial) {
	n := t.tree.copied()
	gear := tree{&yaml.Node{Kind: yaml.MappingNode}}
	gear.Content = []*yaml.Node{{Kind: yaml.ScalarNode, Value: "gear"}, n.at("gear").Node}
	n.drop("gear")
	n.put("gear_files", "[shop/gear.yaml]")
	t.alike(t.openedWith(n.text(), gear.text()), anotherJob)
}
