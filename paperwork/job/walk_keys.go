package job

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"
)

// namesMost is the most names of gear of one kind in one file: more than a
// company has, and no more than can be looked through.
const namesMost = 1000

// readKeys reads keys with their values: those of a section, or names of gear.
func (r *reader) readKeys(v *value, n *yaml.Node) {
	v.fields, v.excused = map[string]*value{}, map[string]bool{}
	lines := map[string]int{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		k, node := n.Content[i], n.Content[i+1]
		if i/2 == namesMost && r.below[v.generic][0] == "*" {
			r.gearLost = true
			r.complain(r.spot(k), v.key, "%s has more than %d names; write fewer", clipped(v.name), namesMost)
			break
		}
		name, ok := r.keyName(v, k)
		if !ok {
			continue
		}
		here := r.spot(k)
		line, twice := lines[name]
		switch {
		case twice && n.Style&yaml.FlowStyle == 0 && strings.HasSuffix(v.generic, "[]") && name == n.Content[0].Value:
			r.complain(here, join(v.key, name), "%s stands here again; it is already on line %d; write - before it if the next one begins here", clipped(name), line)
			r.fill(v)
			return // what follows belongs to the next one
		case twice:
			r.again(v, name, here, line)
		default:
			lines[name] = k.Line
			r.readKey(v, n, name, node, here)
		}
	}
	r.fill(v)
}

// again complains of a key that stands for the second time. What gear it has
// below it is not known.
func (r *reader) again(v *value, name string, here spot, line int) {
	r.complain(here, join(v.key, name), "%s stands here again; it is already on line %d", clipped(name), line)
	if v.generic == "gear" || v.generic == "" {
		r.gearLost = true
	}
}

// readKey reads what a key of a section holds. A misspelt one is complained of
// and read as what it was likely meant to be, so that slips below it are found
// too.
func (r *reader) readKey(v *value, n *yaml.Node, name string, node *yaml.Node, here spot) {
	as, generic := r.keyPath(v, name, here, node, n.Style&yaml.FlowStyle != 0)
	if as == "" || as != name && (hasKey(n, as) || v.fields[as] != nil) {
		return
	}
	v.names = append(v.names, as)
	v.fields[as] = r.read(node, generic, join(v.key, as), as, here)
}

// keyName returns the name of a key, or complains of it.
func (r *reader) keyName(v *value, k *yaml.Node) (string, bool) {
	here := r.spot(k)
	switch wrong := r.forbidden(k); {
	case k.Tag == "!!merge":
		v.excuseAll(r.below[v.generic])
		r.complain(here, v.key, "merge keys (<<) are not used in a job; name the gear once under gear:")
	case wrong != "":
		v.excuseAll(r.below[v.generic])
		r.complain(here, v.key, "%s", wrong)
	case k.Kind != yaml.ScalarNode:
		r.complain(here, v.key, "a key has to be one word; write key: value")
	default:
		return k.Value, true
	}
	return "", false
}

func (v *value) excuseAll(names []string) {
	for _, name := range names {
		v.excused[name] = true
	}
}

// unlike marks a key that is like no known one: any key may be missing because of it.
const unlike = ""

// keyPath returns a key below v as it is meant, and its path in the table; it
// complains of one that the table does not know, and returns "" where that is
// like none. braced says that it stands in braces.
func (r *reader) keyPath(v *value, name string, here spot, node *yaml.Node, braced bool) (as, generic string) {
	names := r.below[v.generic]
	switch {
	case names[0] == "*":
		r.nameFits(v, name, here)
		return name, v.generic + ".*"
	case slices.Contains(names, name):
		return name, join(v.generic, name)
	}
	meant, lone := Near(name, names), isNull(node)
	if p := keyAndValue.FindStringSubmatch(name); lone && p != nil && slices.Contains(names, p[1]) {
		v.excused[p[1]] = true
		r.complain(here, join(v.key, name), "%q is one word; write %s: %s, with a blank after the colon", clipped(name), p[1], clipped(p[2]))
		return "", ""
	}
	v.excused[meant] = true
	r.complain(here, join(v.key, name), "%s", r.unknownKey(v, name, meant, lone && braced))
	return meant, join(v.generic, meant)
}

// keyAndValue is a key that a slip has joined to its value.
var keyAndValue = regexp.MustCompile(`^([a-z_]+)(?: *[:=] *| +)(\S.*)$`)

// afterComma is what stands after a decimal comma, which in braces begins a
// key of its own.
var afterComma = regexp.MustCompile(`^[0-9]+( *[a-z%/]+)?$`)

// knownMost is the most keys that a complaint lists.
const knownMost = 8

// unknownKey says that a key is not known; part says that it may be a part of
// the value before it.
func (r *reader) unknownKey(v *value, name, meant string, part bool) string {
	wrong := fmt.Sprintf("unknown key %q", clipped(name))
	if v.key != "" {
		wrong += " under " + clipped(v.name)
	}
	names := r.below[v.generic]
	switch {
	case meant != "":
		return fmt.Sprintf("%s; did you mean %q?", wrong, meant)
	case part && afterComma.MatchString(name):
		return wrong + "; a comma ends a value in braces: write decimals with a point, and thousands without a mark"
	case part:
		return wrong + "; a comma ends a value in braces: quote a text that has one"
	case len(names) <= knownMost:
		return wrong + "; known here: " + strings.Join(names, ", ")
	}
	return wrong + "; take it out, or see the list of keys"
}

// nameFits checks a name of gear as a text of the paper.
func (r *reader) nameFits(v *value, name string, here spot) {
	if wrong := r.textWrong(name, int(r.rows[v.generic].Max)); wrong != "" {
		r.complain(here, join(v.key, name), "%s", wrong)
	}
}

// fill complains of missing keys and reads the defaults of those left out.
func (r *reader) fill(v *value) {
	for _, name := range r.below[v.generic] {
		if name == "*" || v.fields[name] != nil {
			continue
		}
		row, key := r.rows[join(v.generic, name)], join(v.key, name)
		switch {
		case r.shared && (row.Path == "gear" || v.generic == "gear"): // see gearWhole
		case v.fields["twin_of"] != nil && row.Need == Required && !ownOfTwin[name]: // see takeFromTwin
		case row.Need == Required && v.given:
			if !v.excused[name] && !r.cut {
				r.complain(v.home, key, "%s is missing; %s", name, describe(row))
			}
			v.fields[name] = &value{key: key, generic: row.Path, bad: true, spot: v.home}
		case row.Need == Defaulted:
			v.fields[name] = r.defaulted(row, key, v.home)
		}
	}
}

// describe says what a missing key would hold.
func describe(row *Key) string {
	if row.Hint[0] != "" {
		return fmt.Sprintf("write it in %s (%s)", row.units(), row.Meaning)
	}
	return "write it here (" + row.Meaning + ")"
}

// defaulted reads the default of a key that the job does not give.
func (r *reader) defaulted(row *Key, key string, home spot) *value {
	v := &value{key: key, generic: row.Path, spot: home, home: home}
	switch row.Kind {
	case Section:
		v.fields = map[string]*value{}
		r.fill(v)
	case List:
		for _, s := range strings.Split(strings.Trim(row.Default, "[]"), ", ") {
			item := &value{key: key + "[]", generic: row.Path + "[]", home: home}
			r.scalar(item, r.rows[item.generic], s)
			v.items = append(v.items, item)
		}
	default:
		r.scalar(v, row, row.Default)
	}
	return v
}
