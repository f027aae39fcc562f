package job

import (
	"io"
	"path/filepath"

	"gopkg.in/yaml.v3"
)

// An Opener opens a file by its path. Its error says what is wrong in a few
// words, without the path.
type Opener func(path string) (io.ReadCloser, error)

// readGear reads the gear files that a job names, and puts their gear beside the
// job's own.
func (r *reader) readGear(root *value) {
	if own := root.field("gear"); own != nil {
		r.gearIn = append(r.gearIn, own)
	}
	list := root.field("gear_files")
	if list == nil {
		return
	}
	r.gearLost = list.bad
	first := map[string]int{}
	for _, v := range list.items {
		path := beside(root.file.name, v.text)
		switch line, twice := first[path]; {
		case v.bad:
		case path == filepath.Clean(root.file.name):
			r.at(v, "%q is this job itself; name a file with the section gear alone", clipped(v.text))
		case twice:
			r.at(v, "%q stands here again; it is already on line %d", clipped(v.text), line)
		}
		if v.bad {
			r.gearLost = true
			continue
		}
		first[path] = v.line
		r.gearFile(v, path)
	}
	r.file = root.file
}

// beside returns the path of a gear file, which a job gives as from its own
// folder.
func beside(job, path string) string {
	path = filepath.FromSlash(path)
	if filepath.IsAbs(path) {
		return filepath.Clean(path)
	}
	return filepath.Join(filepath.Dir(job), path)
}

// gearFile reads the gear file that v names.
func (r *reader) gearFile(v *value, path string) {
	src, err := r.open(path)
	if err != nil {
		r.gearLost = true
		r.at(v, "%q cannot be read: %v; write the path of a gear file as from the folder of this job", clipped(v.text), err)
		return
	}
	defer src.Close()
	r.paths = append(r.paths, path)
	r.file = &file{name: path, order: len(r.paths)}
	var top *yaml.Node
	if text, ok := r.text(src); ok {
		top = r.parse(text)
	}
	if top == nil {
		r.gearLost = true
		return
	}
	r.gearSection(top)
}

// gearSection reads the one section that a gear file has.
func (r *reader) gearSection(top *yaml.Node) {
	before, own := len(r.complaints), (*value)(nil)
	for i := 0; i+1 < len(top.Content); i += 2 {
		k, node := top.Content[i], top.Content[i+1]
		name, ok := r.keyName(&value{excused: map[string]bool{}}, k)
		switch {
		case !ok:
		case name == "gear_files":
			r.complain(r.spot(k), name, "a gear file cannot bring in others; name them in the job")
		case name != "gear":
			r.complain(r.spot(k), name, "unknown key %q; a gear file has the section gear and nothing beside it", clipped(name))
		case own != nil:
			r.complain(r.spot(k), name, "gear stands here again; it is already on line %d", own.home.line)
		default:
			own = r.read(node, "gear", "gear", "gear", r.spot(k))
			r.gearIn = append(r.gearIn, own)
		}
	}
	r.gearLost = r.gearLost || own == nil
	if own == nil && len(r.complaints) == before {
		r.complain(r.start(), "gear", "gear is missing; write gear: and what it has below it")
	}
}

// allGear returns the gear of a job and of its gear files as one section.
func (r *reader) allGear(root *value) *value {
	files := root.field("gear_files")
	if files == nil && root.field("gear") != nil {
		return root.field("gear")
	}
	if files == nil {
		return &value{}
	}
	all := &value{fields: map[string]*value{}, excused: map[string]bool{}}
	for _, own := range r.gearIn {
		r.gearLost = r.gearLost || own.fields == nil
		for _, kind := range own.names {
			r.mergeGear(all, kind, own.fields[kind])
		}
		for kind := range own.excused {
			all.excused[kind] = true
		}
	}
	r.gearWhole(all, files)
	return all
}

// mergeGear adds the gear of one kind to all gear, and complains of a name that
// another file has described.
func (r *reader) mergeGear(all *value, kind string, more *value) {
	r.gearLost = r.gearLost || more.fields == nil
	into := all.fields[kind]
	if into == nil {
		into = &value{fields: map[string]*value{}}
		all.fields[kind] = into
	}
	for _, name := range more.names {
		v := more.fields[name]
		if there := into.fields[name]; there != nil {
			r.complain(v.home, v.key, "%s is described here again; it is already %s", clipped(name), there.home.from(v.home))
			continue
		}
		into.names, into.fields[name] = append(into.names, name), v
	}
}

// gearWhole complains of kinds of gear that every job has and that neither it
// nor its gear files describe.
func (r *reader) gearWhole(all, files *value) {
	for _, kind := range r.below["gear"] {
		row := r.rows["gear."+kind]
		if row.Need == Required && all.fields[kind] == nil && !r.gearLost && !all.excused[kind] && !all.excused[unlike] {
			all.fields[kind] = &value{bad: true}
			r.complain(files.home, row.Path, "neither the job nor its gear files have %s under gear; write it in one of them (%s)", kind, row.Meaning)
		}
	}
}
