package laws

import (
	"fmt"
	"math/rand"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"hangpack/paperwork/job"
	"hangpack/testdata/trials"
)

// An edit changes a job as somebody would who goes on with it; it says false where the
// job has nothing that it is about.
type edit struct {
	name string
	same bool // the paper of it says the same, the cover too
	do   func(e *editor) bool
}

// An editor is the job that is edited, and how it was packed.
type editor struct {
	tree
	*rand.Rand
	was *edition
}

// stack is one of the stacks that give all of their own, and which one that is.
func (e *editor) stack() (tree, int) {
	all := e.at("stacks").items()
	for _, i := range e.Perm(len(all)) {
		if all[i].at("twin_of").Node == nil {
			return all[i], i
		}
	}
	panic("a job of twins alone")
}

// gear is an entry of a kind of gear.
func (e *editor) gear(kind string) tree {
	all := e.at("gear", kind).items()
	return all[e.Intn(len(all))]
}

// among is one of some words that is not the one there.
func (e *editor) among(not string, words ...string) string {
	words = slices.DeleteFunc(slices.Clone(words), func(w string) bool { return w == not })
	return words[e.Intn(len(words))]
}

// value is what stands under some keys, "" where nothing does.
func (n tree) value(keys ...string) string {
	if v := n.at(keys...); v.Node != nil {
		return v.Value
	}
	return ""
}

// puts gives a key of a section another of some values.
func puts(section, key string, values ...string) func(e *editor) bool {
	return func(e *editor) bool {
		if e.at(section).Node == nil {
			e.put(section, "{}")
		}
		e.at(section).put(key, e.among(e.value(section, key), values...))
		return true
	}
}

// stackPuts gives a key of a stack another of some values.
func stackPuts(key string, values ...string) func(e *editor) bool {
	return func(e *editor) bool {
		s, _ := e.stack()
		s.put(key, e.among(s.value(key), values...))
		return true
	}
}

// gearPuts gives a key of a gear entry another of some values.
func gearPuts(kind, key string, values ...string) func(e *editor) bool {
	return func(e *editor) bool {
		g := e.gear(kind)
		g.put(key, e.among(g.value(key), values...))
		return true
	}
}

// gearTimes makes a quantity of a gear entry larger.
func gearTimes(kind, key string, factor float64) func(e *editor) bool {
	return func(e *editor) bool {
		v := e.gear(kind).at(key)
		if v.Node == nil {
			return false
		}
		v.set(v.si()*factor, v.unitSI())
		return true
	}
}

// anyValue makes one quantity of the job larger, whichever it is.
func anyValue(factor float64) func(e *editor) bool {
	return func(e *editor) bool {
		var all []tree
		e.eachOf(func(_ string, v tree) { all = append(all, v) }, job.Length, job.Mass, job.Load, job.MassPerLength)
		v := all[e.Intn(len(all))]
		v.set(v.si()*factor, v.unitSI())
		return true
	}
}

// trim raises a stack by some metres.
func trim(by float64) func(e *editor) bool {
	return func(e *editor) bool {
		s, _ := e.stack()
		for _, v := range s.at("trim").items() {
			v.set(v.si()+by, "m")
		}
		return true
	}
}

// oneHole hangs a stack from another pick hole.
func oneHole(e *editor) bool {
	s, i := e.stack()
	holes := e.was.Stacks[i].Bar.PickHoles
	label := func(k int) string { return fmt.Sprintf("%q", holes[k].Label) }
	if s.value("hang", "picks") == "1" {
		s.at("hang").put("pick_hole", label(e.Intn(len(holes))))
		return true
	}
	front := e.was.Stacks[i].Holes[0]
	if front == 0 {
		return false
	}
	s.at("hang").put("front_hole", label(front-1))
	return true
}

// oneSplay sets a joint to another hole.
func oneSplay(e *editor) bool {
	s, _ := e.stack()
	groups := s.at("cabinets").items()
	splays := groups[e.Intn(len(groups))].at("splay").items()
	one := splays[e.Intn(len(splays))]
	one.SetString(e.among(one.Value, trials.Splays[:6]...))
	return true
}

// otherHoist hangs a stack from another hoist.
func otherHoist(e *editor) bool {
	s, _ := e.stack()
	names := e.at("gear", "hoists").names()
	s.at("hang").put("hoist", e.among(s.value("hang", "hoist"), names...))
	return true
}

// otherLabel stamps another label on a hole of a joint.
func otherLabel(e *editor) bool {
	holes := e.gear("cabinets").at("splay_holes").items()
	one := holes[1+e.Intn(len(holes)-1)]
	splay := one.Value
	if one.Kind == yaml.MappingNode {
		splay = one.value("splay")
	}
	*one.Node = *asTree(fmt.Sprintf("{label: Q7, splay: %s}", splay)).Node
	return true
}

// addStack adds a stack that is like another one.
func addStack(e *editor) bool {
	s, _ := e.stack()
	one := s.copied()
	one.put("id", "ZZ")
	one.put("place", "{stage_left: 40 m, downstage: 2 m}")
	e.at("stacks").Content = append(e.at("stacks").Content, one.Node)
	return true
}

// dropStack leaves out a stack that no other one is a twin of.
func dropStack(e *editor) bool {
	list := e.at("stacks")
	i := e.Intn(len(list.Content))
	id := tree{list.Content[i]}.value("id")
	if len(list.Content) < 2 || strings.Contains(e.text(), "twin_of: "+id) {
		return false
	}
	list.Content = slices.Delete(list.Content, i, i+1)
	return true
}

// renameStack gives a stack another id.
func renameStack(e *editor) bool {
	s, _ := e.stack()
	was := s.value("id")
	for _, other := range e.at("stacks").items() {
		if other.value("twin_of") == was {
			other.put("twin_of", "NEW")
		}
	}
	s.put("id", "NEW")
	return true
}

// otherSets puts the cabinets of a stack on its dollies one by one from the top.
func otherSets(e *editor) bool {
	s, i := e.stack()
	if s.at("dolly").Node == nil || len(e.was.Stacks[i].Cabinets) == 1 {
		return false
	}
	s.put("sets", "["+strings.TrimSuffix(strings.Repeat("1, ", len(e.was.Stacks[i].Cabinets)), ", ")+"]")
	return true
}

// noDolly takes the dollies of a stack away.
func noDolly(e *editor) bool {
	s, _ := e.stack()
	had := s.at("dolly").Node != nil
	s.drop("dolly")
	s.drop("sets")
	return had
}

// longerRevision is of six characters, or of one where it was longer.
func longerRevision(e *editor) bool {
	e.at("job").put("revision", map[bool]string{true: "WWWWWW", false: "Z"}[len(e.was.Revision) == 1])
	return true
}
