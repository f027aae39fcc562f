package laws

import (
	"reflect"
	"slices"
	"strings"

	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
	"hangpack/paperwork/worked"
)

// A but says what becomes of some figures, by their path in check -json without
// numbers of items ("stacks.points.static_kg") or, on every other path, by their own
// name ("static_kg"). Where it is nil for one, nothing is held of it and of what is
// below it.
type but map[string]func(float64) float64

func plus(d float64) func(float64) float64 { return func(x float64) float64 { return x + d } }

func times(f float64) func(float64) float64 { return func(x float64) float64 { return x * f } }

// and is a but with more in it.
func (b but) and(more but) but {
	all := but{}
	for _, of := range []but{b, more} {
		for key, f := range of {
			all[key] = f
		}
	}
	return all
}

// anyFinding leaves open what is held and cautioned, by which words, and the windows of
// readings, which are cut to where a check would hold a stack that is not.
var anyFinding = but{"stacks.held": nil, "stacks.holds": nil, "stacks.cautions": nil, "low_kg": nil, "high_kg": nil, "sum_low_kg": nil, "sum_high_kg": nil}

// anyPlaces leaves open what a stack is cautioned of for its place beside other ones.
var anyPlaces = but{"places": nil}

func ofPlaces(f rules.Finding) bool { return f.Rule == "points_meet" || f.Rule == "stacks_overlap" }

// anotherJob leaves open which job it is.
var anotherJob = but{"job": nil}

// alike holds the figures of a changed job to those that they were: number for
// number, and findings by rule and place.
func (t *trial) alike(is *worked.Job, b but) {
	if is != nil {
		t.cases++
		t.compare("", reflect.ValueOf(t.Figures), reflect.ValueOf(is.Figures), b)
	}
}

// alikeStacks holds the figures of one stack to those of another.
func (t *trial) alikeStacks(was, is worked.StackFigures, b but) {
	t.compare("stacks", reflect.ValueOf(was), reflect.ValueOf(is), b)
}

func (t *trial) compare(path string, was, is reflect.Value, b but) {
	f, named := b[path]
	if !named {
		f, named = b[path[strings.LastIndexByte(path, '.')+1:]]
	}
	if named && f == nil {
		return
	}
	switch was.Kind() {
	case reflect.Struct:
		for i := range was.NumField() {
			if below, ok := pathOf(path, was.Type().Field(i)); ok {
				t.compare(below, was.Field(i), is.Field(i), b)
			}
		}
	case reflect.Slice:
		t.compareLists(path, was, is, b)
	case reflect.Pointer:
		t.must(was.IsNil() == is.IsNil(), "%s: given in one of both", path)
		if !was.IsNil() && !is.IsNil() {
			t.compare(path, was.Elem(), is.Elem(), b)
		}
	case reflect.Float64:
		want := was.Float()
		if f != nil {
			want = f(want)
		}
		t.near(path, want, is.Float())
	default:
		t.must(was.Equal(is), "%s: %v, has to be %v", path, is, was)
	}
}

// pathOf is the path of a field; those of an embedded struct stand beside its own.
func pathOf(path string, field reflect.StructField) (string, bool) {
	key, _, _ := strings.Cut(field.Tag.Get("json"), ",")
	switch {
	case field.Anonymous:
		return path, true
	case !field.IsExported():
		return "", false
	case key == "":
		key = field.Name
	}
	if path == "" {
		return key, true
	}
	return path + "." + key, true
}

func (t *trial) compareLists(path string, was, is reflect.Value, b but) {
	if findings, ok := was.Interface().([]rules.Finding); ok {
		others := is.Interface().([]rules.Finding)
		if _, open := b["places"]; open {
			findings, others = slices.DeleteFunc(slices.Clone(findings), ofPlaces), slices.DeleteFunc(slices.Clone(others), ofPlaces)
		}
		a, b := placesOf(findings), placesOf(others)
		t.must(slices.Equal(a, b), "%s: %q, has to be %q", path, b, a)
		return
	}
	if was.Len() != is.Len() {
		t.fault("%s: %d, has to be %d", path, is.Len(), was.Len())
		return
	}
	for i := range was.Len() {
		t.compare(path, was.Index(i), is.Index(i), b)
	}
}

// placesOf are rule and place of findings, sorted.
func placesOf(findings []rules.Finding) (all []string) {
	for _, f := range findings {
		all = append(all, say.Listed(f.Rule, f.Where.String()))
	}
	slices.Sort(all)
	return all
}
