package laws

import (
	"fmt"
	"slices"

	"gopkg.in/yaml.v3"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/worked"
)

// Laws of stacks among others, and of parts of stacks.

// keepStacks keeps some stacks, by their place in the job.
func (n tree) keepStacks(keep ...int) {
	list := n.at("stacks")
	all := slices.Clone(list.Content)
	list.Content = nil
	for _, i := range keep {
		list.Content = append(list.Content, all[i])
	}
}

// inFull writes a twin out: all that it takes from the other one.
func (n tree) inFull(twin tree) {
	of := twin.at("twin_of")
	if of.Node == nil {
		return
	}
	for _, other := range n.at("stacks").items() {
		if other.at("id").Value != of.Value {
			continue
		}
		for _, key := range other.names() {
			own := slices.Contains([]string{"id", "name", "note", "shape", "place"}, key)
			if !own && twin.at(key).Node == nil {
				twin.Content = append(twin.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: key}, other.at(key).copied().Node)
			}
		}
	}
	twin.drop("twin_of")
}

// byItself leaves out what a stack is cautioned of beside other ones.
func byItself(s worked.StackFigures) worked.StackFigures {
	s.Cautions = slices.DeleteFunc(slices.Clone(s.Cautions), func(f rules.Finding) bool { return f.Rule == "twin_differs" || ofPlaces(f) })
	return s
}

func aloneAsAmongOthers(t *trial) {
	t.cases++
	i := t.Intn(len(t.Stacks))
	is := t.onlyStack(i, func(tree) {})
	if is == nil {
		return
	}
	was := byItself(t.Figures.Stacks[i])
	t.alikeStacks(was, is.Figures.Stacks[0], anyPlaces)
	t.near("total static", was.PointsTotal().Static+t.Figures.OthersTotal().Static, is.Figures.Total.Static)
	t.near("total design", was.PointsTotal().Design+t.Figures.OthersTotal().Design, is.Figures.Total.Design)
}

func orderOfStacks(t *trial) {
	order := t.Perm(len(t.Stacks))
	is := t.changed(func(n tree) { n.keepStacks(order...) })
	if is == nil || len(order) == 1 {
		return
	}
	t.cases++
	for k, i := range order {
		t.alikeStacks(t.Figures.Stacks[i], is.Figures.Stacks[k], nil)
	}
	t.near("total static", t.Figures.Total.Static, is.Figures.Total.Static)
	t.near("total design", t.Figures.Total.Design, is.Figures.Total.Design)
}

// twinIsTheOther but for its name and its place, whichever of the two comes first.
func twinIsTheOther(t *trial) {
	first := t.one(2)
	is := t.changed(func(n tree) {
		of := n.stacksInFull()[0]
		list := n.at("stacks")
		twin := asTree(fmt.Sprintf("{id: TWIN, twin_of: %s, name: Other side, place: {stage_left: 3 m, upstage: 2 m}}", of.at("id").Value))
		list.Content = append(list.Content, twin.Node)
		if last := len(list.Content) - 1; first {
			n.keepStacks(append([]int{last}, upTo(last)...)...)
		}
	})
	if is == nil {
		return
	}
	t.cases++
	twin, others := is.Figures.Stacks[len(t.Stacks)], is.Figures.Stacks
	if first {
		twin, others = others[0], others[1:]
	}
	t.alikeStacks(byItself(t.Figures.Stacks[0]), byItself(twin), but{"id": nil, "name": nil, "stage_left_m": nil, "downstage_m": nil})
	for i, s := range t.Figures.Stacks {
		t.alikeStacks(s, others[i], anyPlaces)
	}
	t.near("total", t.Figures.Total.Static+t.Figures.Stacks[0].PointsTotal().Static, is.Figures.Total.Static)
}

// one reports true once in n times.
func (t *trial) one(n int) bool { return t.Intn(n) == 0 }

// stackWith draws a stack of those that have something; -1 where none has.
func (t *trial) stackWith(has func(worked.StackFigures) bool) int {
	for _, i := range t.Perm(len(t.Stacks)) {
		if has(t.Figures.Stacks[i]) {
			return i
		}
	}
	return -1
}

func upTo(n int) (all []int) {
	for i := range n {
		all = append(all, i)
	}
	return all
}
