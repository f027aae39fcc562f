package job

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

// compiled is the schema as another program reads it, which also holds it to
// the schema of schemas.
func compiled(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(string(Schema())))
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	require.NoError(t, c.AddResource("job.json", doc))
	s, err := c.Compile("job.json")
	require.NoError(t, err)
	require.Equal(t, 2020, s.DraftVersion)
	return s
}

// instance is a job as an editor reads it: YAML 1.2, core schema, in which yes
// and 2027-06-12 are texts. ok is false where the text is no YAML.
func instance(text string) (v any, ok bool) {
	var doc yaml.Node
	if yaml.Unmarshal([]byte(text), &doc) != nil || len(doc.Content) != 1 {
		return nil, false
	}
	return asJSON(doc.Content[0]), true
}

var (
	coreNumber = regexp.MustCompile(`^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$`)
	coreNull   = regexp.MustCompile(`^(null|Null|NULL|~|)$`)
	coreBool   = regexp.MustCompile(`^(true|True|TRUE|false|False|FALSE)$`)
)

// asJSON turns a node into what a JSON reader would give. Source: YAML Ain't
// Markup Language version 1.2.2, 10.3.2, tag resolution.
func asJSON(n *yaml.Node) any {
	switch n.Kind {
	case yaml.MappingNode:
		m := map[string]any{}
		for i := 0; i+1 < len(n.Content); i += 2 {
			m[n.Content[i].Value] = asJSON(n.Content[i+1])
		}
		return m
	case yaml.SequenceNode:
		list := []any{}
		for _, item := range n.Content {
			list = append(list, asJSON(item))
		}
		return list
	case yaml.AliasNode:
		return asJSON(n.Alias)
	}
	switch plain := n.Style&quotedStyles == 0; {
	case plain && coreNull.MatchString(n.Value):
		return nil
	case plain && coreBool.MatchString(n.Value):
		return strings.EqualFold(n.Value, "true")
	case plain && coreNumber.MatchString(n.Value):
		var x json.Number
		if number.MatchString(n.Value) && json.Unmarshal([]byte(n.Value), &x) == nil {
			return x
		}
		return json.Number("0.123456789") // a number that is written in another way
	}
	return n.Value
}

// TestSchemaTakesJobs: whatever the reader takes, the schema takes.
func TestSchemaTakesJobs(t *testing.T) {
	s := compiled(t)
	texts := map[string]string{"base": base(t), "least": least}
	for _, glob := range []string{"examples/*.yaml", "testdata/jobs/*.yaml", "cmd/hangpack/starter.yaml"} {
		files, err := filepath.Glob("../../" + glob)
		require.NoError(t, err)
		require.NotEmpty(t, files, glob)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			texts[file] = string(text)
		}
	}
	for name, text := range texts {
		v, ok := instance(text)
		require.True(t, ok, name)
		assert.NoError(t, s.Validate(v), name)
	}
}

// TestSchemaTakesValues: every way of writing a value that the reader takes for
// a key, the schema takes for it, at both ends of its range in all units.
func TestSchemaTakesValues(t *testing.T) {
	compiler := jsonschema.NewCompiler()
	r := newReader("", nil, latin)
	tried := 0
	for _, row := range Keys() {
		if !row.Kind.single() {
			continue
		}
		text, err := json.Marshal(row.single())
		require.NoError(t, err)
		doc, err := jsonschema.UnmarshalJSON(strings.NewReader(string(text)))
		require.NoError(t, err)
		require.NoError(t, compiler.AddResource(row.Path, doc))
		s, err := compiler.Compile(row.Path)
		require.NoError(t, err, row.Path)
		for _, written := range writings {
			v := &value{spot: r.start(), generic: row.Path}
			r.scalar(v, &row, written)
			quoted := s.Validate(written) == nil
			plain := s.Validate(asJSON(&yaml.Node{Kind: yaml.ScalarNode, Value: written})) == nil
			if !v.bad {
				tried++
				assert.True(t, quoted && plain, "%s takes %q", row.Path, written)
			} else if row.Kind.numeric() && !within(&row, written) {
				assert.False(t, quoted, "%s refuses %q", row.Path, written)
			}
		}
	}
	assert.Greater(t, tried, 1000)
}

// writings are values of every kind, right for some keys and wrong for others.
var writings = strings.Split(`0|0.0|-0|1|2|1.25|0.5|12|40|30|200|-3|5 mm|5mm|100 cm|0.3 m|1 m|-20 m|200 m|11 in|11 7/16 in|7/16 in|-7/16 in|14 ft|14 ft 6 in|14ft 6 7/16in|`+
	`1 kg|500 kg|0.4 t|20 lb|5 kN|5000 N|1200 lbf|1.1 kg/m|0.4 lb/ft|5 %|100%|15 deg|0 deg|-0 deg|level|1 deg down|1.5deg up|60 deg up|6 deg stage_left|180 deg stage_right|`+
	`yes|no|on_dolly|A4|metric|square|joint_above|estimate|auto|12|C4|A|SL-1|TRUE|1.5|F/2|2027-06-12|https://paper.example/x.pdf?p={page}|B|r.2-x|Main, stage left|true`, "|")

// within reports whether a value would do but for its range, which the schema
// does not see.
func within(row *Key, written string) bool {
	wide := *row
	wide.Min, wide.Max, wide.Above = math.Inf(-1), math.Inf(1), false
	_, wrong := magnitude(&wide, written)
	return wrong == ""
}

// TestSchemaRefuses: of the jobs in testdata/bad the schema refuses all but
// those listed in testdata/schema_passes.txt with a reason: what one place does
// not show. Files that are no YAML are left out.
func TestSchemaRefuses(t *testing.T) {
	s := compiled(t)
	list, err := os.ReadFile("../../testdata/schema_passes.txt")
	require.NoError(t, err)
	passes := map[string]bool{}
	for _, line := range strings.Split(string(list), "\n") {
		if name, _, ok := strings.Cut(line, ": "); ok && !strings.HasPrefix(line, "#") {
			passes[name] = true
		}
	}
	for name, text := range badJobs(t) {
		v, ok := instance(text)
		if !ok {
			assert.False(t, passes[name], "%s is no YAML and need not be listed", name)
			continue
		}
		assert.Equal(t, passes[name], s.Validate(v) == nil, "%s: whether the schema takes it", name)
		delete(passes, name)
	}
	assert.Empty(t, passes, "listed, and no such job")
}

// TestSchemaOfGear: the kinds of gear that every job has must stand in the job,
// or else it names gear files.
func TestSchemaOfGear(t *testing.T) {
	s := compiled(t)
	head, rest, _ := strings.Cut(least, "gear:\n")
	gear, stacks, _ := strings.Cut(rest, "stacks:\n")
	for _, tt := range []struct {
		gear string
		want bool
	}{
		{"gear:\n" + gear, true},
		{"", false},
		{"gear_files: [a.yaml]\n", true},
		{"gear_files: []\n", false},
		{"gear: {cabinets: {}, bars: {}}\n", false},
		{"gear: {cabinets: {}, bars: {}}\ngear_files: [a.yaml]\n", true},
		{"gear: {cabinets: {}, bars: {}, hoists: {}}\n", true},
	} {
		v, ok := instance(head + tt.gear + "stacks:\n" + stacks)
		require.True(t, ok)
		assert.Equal(t, tt.want, s.Validate(v) == nil, tt.gear)
	}
}
