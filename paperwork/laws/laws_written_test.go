package laws

import (
	"encoding/json"
	"strings"

	"gopkg.in/yaml.v3"

	"hangpack/paperwork/job"
	"hangpack/paperwork/report"
	"hangpack/paperwork/worked"
)

// Laws of jobs that say the same in another way.

// sameFingerprint: the job says the same, and so is the same job.
func (t *trial) sameFingerprint(is *worked.Job) {
	if is != nil {
		was := t.Figures.Job.Fingerprint
		t.must(is.Figures.Job.Fingerprint == was, "fingerprint %s, has to be %s", is.Figures.Job.Fingerprint, was)
	}
}

func readTwice(t *trial) {
	t.cases++
	again := t.opened(t.yaml)
	if again == nil {
		return
	}
	was, _ := json.Marshal(t.Figures)
	is, _ := json.Marshal(again.Figures)
	t.must(string(was) == string(is), "read again it is not the same")
	t.must(report.Check(t.base.Job) == report.Check(again) && report.Points(t.base.Job) == report.Points(again), "read again it reads otherwise")
}

var otherUnit = map[job.Kind][2]string{job.Length: {"m", "in"}, job.Mass: {"kg", "lb"}, job.Load: {"N", "lbf"}, job.MassPerLength: {"kg/m", "lb/ft"}}

// inOneSystem writes every quantity in units of one system.
func inOneSystem(system int) func(t *trial) {
	return func(t *trial) {
		is := t.changed(func(n tree) {
			for kind, units := range otherUnit {
				n.eachOf(func(_ string, v tree) {
					x := v.si()
					if kind == job.Load && v.unitSI() == "kg" {
						x *= newton
					}
					v.set(x, units[system])
				}, kind)
			}
		})
		t.alike(is, nil)
		t.sameFingerprint(is)
	}
}

func paperIsPaper(t *trial) {
	t.alike(t.changed(func(n tree) {
		other := map[string]string{"A4": "Letter", "Letter": "A4", "metric": "imperial", "imperial": "metric"}
		for _, v := range n.at("paper").items() {
			v.Value = other[v.Value]
		}
	}), anotherJob)
}

// styles: keys in any order, in braces or on lines of their own, with comments and
// blank lines.
func styles(t *trial) {
	n := t.tree.copied()
	n.restyle(t)
	lines := strings.Split(n.text(), "\n")
	for i := range lines {
		lines[i] += t.commentOr("")
	}
	is := t.opened("# a job\n\n" + strings.Join(lines, "\n"))
	t.alike(is, nil)
	t.sameFingerprint(is)
}

func (t *trial) commentOr(nothing string) string {
	return []string{nothing, " # a note: {with, marks}", "\n", nothing}[t.Intn(4)]
}

func (n tree) restyle(t *trial) {
	for _, item := range n.items() {
		item.restyle(t)
	}
	if n.Kind == yaml.MappingNode {
		t.Shuffle(len(n.Content)/2, func(i, j int) {
			for k := range 2 {
				n.Content[2*i+k], n.Content[2*j+k] = n.Content[2*j+k], n.Content[2*i+k]
			}
		})
	}
	if n.Kind != yaml.ScalarNode {
		n.Style = []yaml.Style{0, yaml.FlowStyle}[t.Intn(2)]
	}
}

var otherWays = map[string]string{"behind_hinge": "ahead_of_hinge", "below_hinge": "above_hinge", "stage_left": "stage_right", "downstage": "upstage"}

// otherWay writes what lies one way as its negative the other way.
func otherWay(t *trial) {
	to := map[string]string{}
	for one, other := range otherWays {
		to[one], to[other] = other, one
	}
	t.alike(t.changed(func(n tree) { n.turnWays(to) }), anotherJob)
}

func (n tree) turnWays(to map[string]string) {
	for i := 0; n.Kind == yaml.MappingNode && i < len(n.Content); i += 2 {
		if other, ok := to[n.Content[i].Value]; ok {
			v := tree{n.Content[i+1]}
			n.Content[i].Value = other
			v.set(-v.si(), v.unitSI())
		}
	}
	for _, item := range n.items() {
		item.turnWays(to)
	}
}

// defaultsWritten gives every key that has a default its default.
func defaultsWritten(t *trial) {
	t.alike(t.changed(func(n tree) {
		for _, key := range []string{"paper", "practice"} {
			if n.at(key).Node == nil {
				n.put(key, "{}")
			}
		}
		n.giveDefaults("")
		for _, c := range n.at("gear", "cabinets").items() {
			if c.at("hinge_pitch").Node == nil {
				c.put("hinge_pitch", c.at("front_height").Value)
			}
		}
		for _, s := range n.at("stacks").items() {
			if s.at("name").Node == nil {
				s.put("name", s.at("id").Value)
			}
		}
	}), anotherJob)
}

func (n tree) giveDefaults(path string) {
	if n.Kind == yaml.SequenceNode {
		for _, item := range n.items() {
			item.giveDefaults(path + "[]")
		}
	}
	if n.Kind != yaml.MappingNode || n.at("twin_of").Node != nil {
		return
	}
	for _, key := range n.names() {
		below := strings.TrimPrefix(path+"."+key, ".")
		if _, named := keyRows[path+".*"]; named {
			below = path + ".*"
		}
		n.at(key).giveDefaults(below)
	}
	for _, row := range job.Keys() {
		in, key := row.Path[:max(strings.LastIndexByte(row.Path, '.'), 0)], row.Path[strings.LastIndexByte(row.Path, '.')+1:]
		ofTwo := key == "pick_hole" && n.at("picks").Node != nil && n.at("picks").Value == "2"
		ofEnds := n.at("front").Node != nil
		if in == path && row.Need == job.Defaulted && key != "*" && row.Kind > job.List && n.at(key).Node == nil && !ofTwo && !ofEnds {
			n.put(key, row.Default)
		}
	}
}
