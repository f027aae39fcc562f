package laws

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"gopkg.in/yaml.v3"

	"hangpack/paperwork/job"
	"hangpack/testdata/trials"
)

// A tree is a job as YAML, or a part of it, that a law changes before it is read
// again.
type tree struct{ *yaml.Node }

func asTree(text string) tree {
	var doc yaml.Node
	if err := yaml.Unmarshal([]byte(text), &doc); err != nil {
		panic(err)
	}
	return tree{doc.Content[0]}
}

// copied is a tree of its own.
func (n tree) copied() tree {
	own := *n.Node
	own.Content = nil
	for _, child := range n.Content {
		own.Content = append(own.Content, tree{child}.copied().Node)
	}
	return tree{&own}
}

// at is what stands under some keys, one below the other; its Node is nil where
// nothing does.
func (n tree) at(keys ...string) tree {
	for _, key := range keys {
		if n.Node == nil {
			return n
		}
		n = n.under(key)
	}
	return n
}

func (n tree) under(key string) tree {
	if n.Kind == yaml.MappingNode {
		for i := 0; i < len(n.Content); i += 2 {
			if n.Content[i].Value == key {
				return tree{n.Content[i+1]}
			}
		}
	}
	return tree{}
}

// items are those of a list, or the values of a mapping.
func (n tree) items() (all []tree) {
	if n.Node == nil {
		return nil
	}
	for i, child := range n.Content {
		if n.Kind == yaml.SequenceNode || i%2 == 1 {
			all = append(all, tree{child})
		}
	}
	return all
}

// names are the keys of a mapping.
func (n tree) names() (all []string) {
	for i := 0; i < len(n.Content); i += 2 {
		all = append(all, n.Content[i].Value)
	}
	return all
}

// put gives a key a value, written as in a job.
func (n tree) put(key, text string) {
	value := asTree("v: " + text).Content[1]
	for i := 0; i < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			n.Content[i+1] = value
			return
		}
	}
	n.Content = append(n.Content, &yaml.Node{Kind: yaml.ScalarNode, Value: key}, value)
}

// drop takes a key out.
func (n tree) drop(key string) {
	for i := 0; i < len(n.Content); i += 2 {
		if n.Content[i].Value == key {
			n.Content = append(n.Content[:i:i], n.Content[i+2:]...)
			return
		}
	}
}

// add adds an item, written as in a job, to the list under a key.
func (n tree) add(key, text string) {
	if n.under(key).Node == nil {
		n.put(key, "[]")
	}
	list := n.under(key)
	list.Style = yaml.FlowStyle
	list.Content = append(list.Content, asTree(text).Node)
}

// text is the tree as a job is written.
func (n tree) text() string {
	text, err := yaml.Marshal(n.Node)
	if err != nil {
		panic(err)
	}
	return string(text)
}

// keyRows are the keys of a job by their paths.
var keyRows = func() map[string]job.Key {
	all := map[string]job.Key{}
	for _, row := range job.Keys() {
		all[row.Path] = row
	}
	return all
}()

// each visits every single value with its path and its row in the table of keys.
func (n tree) each(visit func(path string, row job.Key, n tree)) { n.visit("", visit) }

func (n tree) visit(path string, visit func(string, job.Key, tree)) {
	switch n.Kind {
	case yaml.ScalarNode:
		visit(path, keyRows[path], n)
	case yaml.SequenceNode:
		for _, item := range n.items() {
			item.visit(path+"[]", visit)
		}
	case yaml.MappingNode:
		for _, key := range n.names() {
			below := strings.TrimPrefix(path+"."+key, ".")
			if _, named := keyRows[path+".*"]; named {
				below = path + ".*"
			}
			n.under(key).visit(below, visit)
		}
	}
}

// eachOf visits every quantity of some kinds.
func (n tree) eachOf(visit func(path string, n tree), kinds ...job.Kind) {
	n.each(func(path string, row job.Key, value tree) {
		for _, k := range kinds {
			if row.Kind == k && value.Value != job.NotKnown {
				visit(path, value)
			}
		}
	})
}

// times multiplies every quantity of some kinds.
func (n tree) times(factor float64, kinds ...job.Kind) {
	n.eachOf(func(_ string, v tree) { v.set(v.si()*factor, v.unitSI()) }, kinds...)
}

// factors to SI, by the definitions of pound, inch and standard gravity.
var toSI = map[string]float64{"mm": 1e-3, "cm": 1e-2, "m": 1, "in": 0.0254, "ft": 12 * 0.0254, "kg": 1, "t": 1e3, "lb": 0.45359237,
	"kg/m": 1, "lb/ft": 0.45359237 / 0.3048, "N": 1, "kN": 1e3, "lbf": 0.45359237 * 9.80665, "m/min": 1. / 60, "ft/min": 0.3048 / 60, "%": 0.01, "deg": math.Pi / 180, "": 1}

var quantity = regexp.MustCompile(`^(-?[0-9.]+)(?: ([0-9]+)/([0-9]+))? ?([a-zA-Z%/]*)`)

// si is the magnitude of a quantity in SI, a mass as kg and a force as N, without
// its way. A sign is that of all that follows it: '-2 7/16 in', '-1 ft 5 in'.
func (n tree) si() (sum float64) {
	size, negative := strings.CutPrefix(n.Value, "-")
	for rest := size; rest != ""; {
		m := quantity.FindStringSubmatch(rest)
		x := trials.Number(m[1])
		if m[2] != "" {
			x += trials.Number(m[2]) / trials.Number(m[3])
		}
		sum += x * toSI[m[4]]
		if m[4] != "ft" {
			break
		}
		rest = strings.TrimSpace(strings.TrimPrefix(rest, m[0]))
	}
	if negative {
		return -sum
	}
	return sum
}

// TestSizesOfTrees: by hand, in inches of 25.4 mm.
func TestSizesOfTrees(t *testing.T) {
	for says, inches := range map[string]float64{"11 7/16 in": 11.4375, "-2 7/16 in": -2.4375, "-0 1/2 in": -0.5, "1 ft 5 in": 17, "-1 ft 5 1/2 in": -17.5, "-3 in": -3, "2 ft": 24} {
		assert.InDelta(t, inches*0.0254, asTree(strconv.Quote(says)).si(), 1e-12, says)
		read := trials.OpenJob(t, trials.Edited(t, "ahead_of_hinge: 60 mm", "ahead_of_hinge: "+says)).Stacks[0].Bar.PickHoles[0].At.Behind
		assert.InDelta(t, -inches*0.0254, read, 1e-12, "%s, as a job is read", says)
	}
}

// unitSI is the SI unit of what a quantity is written in.
func (n tree) unitSI() string {
	switch unit := quantity.FindStringSubmatch(n.Value)[4]; unit {
	case "mm", "cm", "in", "ft":
		return "m"
	case "t", "lb":
		return "kg"
	case "lb/ft":
		return "kg/m"
	case "kN", "lbf":
		return "N"
	default:
		return unit
	}
}

// set writes a quantity to its last digit, in a unit; x is in SI.
func (n tree) set(x float64, unit string) {
	n.SetString(quantityText(x, unit))
	n.Style = 0
}

func quantityText(x float64, unit string) string {
	return strings.TrimSpace(strconv.FormatFloat(x/toSI[unit], 'f', -1, 64) + " " + unit)
}
