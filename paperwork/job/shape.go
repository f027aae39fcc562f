package job

import (
	"bytes"
	"encoding/json"
)

// A shape is a JSON Schema for one place of a job; its keywords are written in
// this order.
//
// Source: JSON Schema, draft 2020-12, Core and Validation.
type shape struct {
	Draft       string     `json:"$schema,omitempty"`
	Title       string     `json:"title,omitempty"`
	Description string     `json:"description,omitempty"`
	Default     any        `json:"default,omitempty"`
	AnyOf       []*shape   `json:"anyOf,omitempty"`
	Type        types      `json:"type,omitempty"`
	Enum        []string   `json:"enum,omitempty"`
	Pattern     string     `json:"pattern,omitempty"`
	Minimum     *float64   `json:"minimum,omitempty"`
	Above       *float64   `json:"exclusiveMinimum,omitempty"`
	Maximum     *float64   `json:"maximum,omitempty"`
	MinLength   int        `json:"minLength,omitempty"`
	MaxLength   int        `json:"maxLength,omitempty"`
	MinItems    int        `json:"minItems,omitempty"`
	MaxItems    int        `json:"maxItems,omitempty"`
	MinNames    int        `json:"minProperties,omitempty"`
	Items       *shape     `json:"items,omitempty"`
	Required    []string   `json:"required,omitempty"`
	Properties  properties `json:"properties,omitempty"`
	NamesAre    *shape     `json:"propertyNames,omitempty"`
	Others      any        `json:"additionalProperties,omitempty"` // false, or a shape
	If          *shape     `json:"if,omitempty"`
	Else        *shape     `json:"else,omitempty"`
}

// types are the types of JSON that a value may have.
type types []string

// MarshalJSON writes one type alone as its name.
func (t types) MarshalJSON() ([]byte, error) {
	if len(t) == 1 {
		return json.Marshal(t[0])
	}
	return json.Marshal([]string(t))
}

// properties are keys with their shapes, in the order of a job file.
type properties []property

type property struct {
	name string
	is   *shape
}

// MarshalJSON writes them as one object.
func (p properties) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	between := byte('{')
	for _, one := range p {
		b.WriteByte(between)
		between = ','
		if err := plainJSON(&b, one.name, ""); err != nil {
			return nil, err
		}
		b.WriteByte(':')
		if err := plainJSON(&b, one.is, ""); err != nil {
			return nil, err
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// plainJSON writes JSON in which <, > and & stand as they are.
func plainJSON(b *bytes.Buffer, v any, indent string) error {
	enc := json.NewEncoder(b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", indent)
	return enc.Encode(v)
}
