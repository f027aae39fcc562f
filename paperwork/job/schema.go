package job

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"
)

// Schema returns the table of keys as a JSON Schema of draft 2020-12, for
// editors that help to type a job. It takes whatever Read takes, and refuses
// what can be seen at one place: ranges of values with units, what one key has
// to do with another and how a number was written are for Read.
func Schema() []byte {
	r := newReader("", nil, nil)
	top := r.shapeOf("")
	top.Draft = "https://json-schema.org/draft/2020-12/schema"
	top.Title = "a job for hangpack"
	top.Description = "Stacks of flown loudspeakers: what they are made of, where they hang and what the shop checks by."
	// the kinds of gear need not all stand in the job where gear files are named
	top.If = &shape{Required: []string{"gear_files"}}
	top.Else = &shape{Required: []string{"gear"}, Properties: properties{{"gear", &shape{Required: r.required("gear")}}}}
	top.Required = slices.DeleteFunc(top.Required, func(name string) bool { return name == "gear" })
	var b bytes.Buffer
	if err := plainJSON(&b, top, " "); err != nil {
		panic(err) // shapes hold nothing that JSON has not
	}
	return b.Bytes()
}

// shapeOf returns the shape of a place of the table: one form, or any of those
// that its value may have.
func (r *reader) shapeOf(generic string) *shape {
	row := r.rows[generic]
	var forms []*shape
	if row != nil && row.Kind.single() {
		forms = append(forms, row.single())
	}
	if row != nil && row.Nought {
		forms = append(forms, nought())
	}
	if row != nil && row.Kind == Section && len(row.Choices) > 0 {
		forms = append(forms, &shape{Enum: row.Choices})
	}
	if r.takesKeys(generic) {
		forms = append(forms, r.keysShape(generic))
	}
	if r.takesItems(generic) {
		forms = append(forms, &shape{Type: types{"array"}, MinItems: int(row.Min), MaxItems: int(row.Max), Items: r.shapeOf(generic + "[]")})
	}
	s := forms[0]
	if len(forms) > 1 {
		s = &shape{AnyOf: forms}
	}
	if row != nil {
		s.Description, s.Default = row.describes(), row.defaults()
	}
	return s
}

// keysShape is of a section, or of names that the job chooses.
func (r *reader) keysShape(generic string) *shape {
	names := r.below[generic]
	if names[0] == "*" {
		return r.namesShape(generic)
	}
	s := &shape{Type: types{"object"}}
	for _, name := range names {
		s.Properties = append(s.Properties, property{name, r.shapeOf(join(generic, name))})
	}
	s.Required, s.Others = r.required(generic), false
	switch generic {
	case "gear":
		s.Required = nil // see Schema
	case "stacks[]":
		requireOfTwins(s)
	}
	return s
}

// namesShape is of names that the job chooses.
func (r *reader) namesShape(generic string) *shape {
	named := r.rows[generic]
	return &shape{Type: types{"object"}, MinNames: int(named.Min),
		NamesAre: &shape{MinLength: 1, MaxLength: int(named.Max)}, Others: r.shapeOf(generic + ".*")}
}

// requireOfTwins requires of a stack that is a twin only what it does not take from the
// other one.
func requireOfTwins(s *shape) {
	own := func(name string) bool { return ownOfTwin[name] }
	s.If, s.Else = &shape{Required: []string{"twin_of"}}, &shape{Required: slices.DeleteFunc(slices.Clone(s.Required), own)}
	s.Required = slices.DeleteFunc(s.Required, func(name string) bool { return !own(name) })
}

// required names the keys that a section must have.
func (r *reader) required(generic string) (names []string) {
	for _, name := range r.below[generic] {
		if name != "*" && r.rows[join(generic, name)].Need == Required {
			names = append(names, name)
		}
	}
	return names
}

// single is the shape of one value. An editor reads some texts of a job as
// numbers or as yes and no; the reader takes what is written.
func (k *Key) single() *shape {
	text := types{"string", "number", "boolean"}
	switch k.Kind {
	case Text:
		return &shape{Type: text, Pattern: `\S`, MaxLength: int(k.Max)}
	case Date:
		return &shape{Type: types{"string"}, Pattern: `^[0-9]{4}-[0-9]{2}-[0-9]{2}$`}
	case URL:
		return &shape{Type: types{"string"}, Pattern: `^https?://[!-~]+$`, MaxLength: int(k.Max)}
	case Revision:
		return &shape{Type: text, Pattern: revisions.String()}
	case ID:
		return &shape{Type: text, Pattern: ids.String()}
	case Label:
		return &shape{Type: text, Pattern: labels.String()}
	case Word:
		return &shape{Enum: k.Choices}
	case Switch:
		return &shape{Enum: []string{"yes", "no"}}
	case Name:
		return &shape{Type: text, MinLength: 1, MaxLength: wordMost}
	case Number, Count, Degrees:
		return k.bareShape()
	}
	return k.quantityShape()
}

// bareShape is of a number without a unit, also where it is quoted.
func (k *Key) bareShape() *shape {
	s := &shape{Type: types{"number", "string"}, Pattern: number.String(), Minimum: &k.Min, Maximum: &k.Max}
	if k.Kind == Count {
		s.Type[0], s.Pattern = "integer", `^-?(?:0|[1-9][0-9]*)$`
	}
	return s
}

// plainNought is the pattern of a nought, with or without a sign.
const plainNought = `-?0(?:\.0+)?`

// quantityShape is of a number with its unit or its way, and of a bare nought
// where that is in range.
func (k *Key) quantityShape() *shape {
	forms := k.written()
	s := &shape{Type: types{"string"}}
	if k.Min <= 0 && !k.Above {
		zero := 0.0
		s.Type, s.Minimum, s.Maximum = types{"string", "number"}, &zero, &zero
		forms = append(forms, plainNought)
	}
	s.Pattern = "^(?:" + strings.Join(forms, "|") + ")$"
	return s
}

// written are the patterns of what a quantity may look like.
func (k *Key) written() []string {
	switch k.Kind {
	case Aim:
		return aimWays.patterns()
	case Pan:
		return panWays.patterns()
	}
	var names []string
	for _, u := range units {
		if k.fits(u.kind) {
			names = append(names, regexp.QuoteMeta(u.name))
		}
	}
	forms := []string{k.decimals() + ` *(?:` + strings.Join(names, "|") + `)`}
	if k.Kind == Length {
		forms = append(forms, strings.Trim(tape.String(), "^$"))
	}
	return forms
}

// decimals is the pattern of the numbers of a quantity, which may be below
// nought or not.
func (k *Key) decimals() string {
	if k.Min < 0 {
		return `-?` + plainDecimal
	}
	return `(?:` + plainDecimal + `|-0(?:\.0+)?)`
}

func (w ways) patterns() []string {
	forms := []string{`-?` + plainDecimal + ` *deg +(?:` + w.plus + `|` + w.minus + `)`, plainNought + ` *deg`}
	if w.level != "" {
		forms = append(forms, w.level)
	}
	return forms
}

// nought is the shape of a 0 that stands for a section.
func nought() *shape {
	zero := 0.0
	return &shape{Type: types{"number", "string"}, Minimum: &zero, Maximum: &zero, Pattern: "^" + plainNought + "$"}
}

// describes says what a key holds, for who types it.
func (k *Key) describes() string {
	says := k.Meaning
	if words := k.Allowed(); words != "-" && len(k.Choices) == 0 && !strings.Contains(says, words) {
		says += "; " + words
	}
	if k.Default != "" {
		says += "; by default " + k.Default
	}
	return says
}

// defaults is the default of one value, as a job would have it.
func (k *Key) defaults() any {
	switch {
	case k.Need != Defaulted || !k.Kind.single():
		return nil
	case number.MatchString(k.Default):
		return json.Number(k.Default)
	}
	return k.Default
}

// Allowed says what a value may be, in words; - where there is nothing to say.
func (k *Key) Allowed() string {
	switch {
	case len(k.Choices) > 0:
		return strings.Join(k.Choices, ", ")
	case k.Max == 0:
		return "-"
	case k.Kind == Text || k.Kind == ID || k.Kind == Revision || k.Kind == Label:
		return k.Range() + " characters"
	case k.Kind == List:
		return k.Range() + " items"
	case k.Kind == Names:
		return fmt.Sprintf("names of 1 to %.0f characters", k.Max)
	}
	return k.Range()
}
