package changes

import (
	"maps"
	"reflect"
	"slices"

	"hangpack/paperwork/worked"
)

// figuresOf begins the name of gear that has changed.
const figuresOf = "figures of "

// gearOf is every gear entry that the stacks of a job are made of, by kind and key.
func gearOf(j *worked.Job) map[string]any {
	all := map[string]any{}
	for _, h := range j.Stacks {
		all["bar "+h.Bar.Key] = *h.Bar
		for _, c := range h.Cabinets {
			all["cabinet "+c.Key] = *c.Cabinet
		}
		for _, p := range h.Picks {
			all["hoist "+p.Hoist.Key] = *p.Hoist
		}
		if h.Dolly != nil {
			all["dolly "+h.Dolly.Key] = *h.Dolly
		}
	}
	return all
}

// compareGear names the gear that both revisions use and whose figures have changed:
// a speed or a rating may change with no load, hole or place.
func (c *List) compareGear() {
	old, new := gearOf(c.old), gearOf(c.new)
	for _, key := range slices.Sorted(maps.Keys(new)) {
		if was, both := old[key]; both && !reflect.DeepEqual(was, new[key]) {
			c.Others = append(c.Others, OtherChange{"", figuresOf + key, "as they were", "others"})
		}
	}
}
