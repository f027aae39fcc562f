package job

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// read reads the node of one key.
func (r *reader) read(n *yaml.Node, generic, key, name string, home spot) *value {
	v := &value{key: key, name: name, generic: generic, spot: r.spot(n), given: true, home: home}
	wrong := r.forbidden(n)
	if wrong != "" {
		r.at(v, "%s", wrong)
	}
	switch {
	case n.Kind == yaml.AliasNode, wrong != "" && n.Kind == yaml.ScalarNode:
	case isNull(n):
		r.noValue(v, n)
	case n.Kind == yaml.MappingNode && r.takesKeys(generic):
		r.readKeys(v, n)
	case n.Kind == yaml.SequenceNode && r.takesItems(generic):
		r.readItems(v, n)
	case n.Kind == yaml.ScalarNode && r.rows[generic].Kind.single():
		r.readScalar(v, n)
	case n.Kind == yaml.ScalarNode && slices.Contains(r.rows[generic].Choices, n.Value):
		v.text = n.Value
		r.given = append(r.given, v.key+"="+v.text)
	case n.Kind == yaml.ScalarNode && r.rows[generic].Nought && isNought(n.Value):
		r.given = append(r.given, v.key+"=0") // without keys, all of which are nought
	default:
		r.at(v, "%s is not written like this; write %s", name, r.forms(generic))
	}
	return v
}

func isNought(s string) bool { return number.MatchString(s) && float(s) == 0 }

// noValue complains of a key that stands alone, at the key.
func (r *reader) noValue(v *value, n *yaml.Node) {
	if n.Value == "" {
		v.spot = v.home
	}
	row, right := r.rows[v.generic], "write one or leave the key out"
	switch {
	case row.Need == Required:
		right = describe(row)
	case strings.HasSuffix(row.Path, "[]"):
		right = "write one or take the item out"
	}
	r.at(v, "%s has no value; %s", v.name, right)
}

func isNull(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Tag == "!!null" && n.Style&^yaml.TaggedStyle == 0
}

// forbidden returns what a job does not use of YAML.
func (r *reader) forbidden(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.AliasNode, n.Anchor != "":
		return noAnchors
	case n.Style&yaml.TaggedStyle != 0, r.bareTag(n):
		return "tags (!) are not used in a job; write the value alone"
	}
	return ""
}

// bareTag reports whether a lone ! stands before a value. The YAML library
// drops it, so the line of the file is looked at.
func (r *reader) bareTag(n *yaml.Node) bool {
	if n.Kind != yaml.ScalarNode && n.Style&yaml.FlowStyle == 0 {
		return false
	}
	line := r.file.line(n.Line)
	return n.Column <= len(line) && line[n.Column-1] == '!'
}

// takesKeys and takesItems report which forms a key of the table may have.
func (r *reader) takesKeys(generic string) bool { return len(r.below[generic]) > 0 }

func (r *reader) takesItems(generic string) bool { return r.rows[generic+"[]"] != nil }

// forms says which forms a key may have.
func (r *reader) forms(generic string) string {
	var forms []string
	if r.rows[generic].Kind.single() {
		forms = append(forms, "one value")
	}
	if row := r.rows[generic]; row.Nought {
		forms = append(forms, "0")
	} else if row.Kind == Section {
		forms = append(forms, row.Choices...)
	}
	if r.takesItems(generic) {
		forms = append(forms, "a list: [ … ]")
	}
	if names := r.below[generic]; r.takesKeys(generic) && names[0] != "*" {
		forms = append(forms, "keys of its own: "+strings.Join(names, ", "))
	} else if r.takesKeys(generic) {
		forms = append(forms, "names, each with what it is")
	}
	return strings.Join(forms, ", or ")
}

// readItems reads a list, as far as it may go.
func (r *reader) readItems(v *value, n *yaml.Node) {
	row := r.rows[v.generic]
	if c := float64(len(n.Content)); c < row.Min || c > row.Max {
		r.at(v, "%s lists %g; write %g to %g", v.name, c, row.Min, row.Max)
	}
	for i, item := range n.Content[:min(len(n.Content), int(row.Max))] {
		index := fmt.Sprintf("[%d]", i)
		v.items = append(v.items, r.read(item, v.generic+"[]", v.key+index, v.name+index, r.spot(item)))
	}
}

const noAnchors = "anchors (&) and aliases (*) are not used in a job; name the gear once under gear:"
