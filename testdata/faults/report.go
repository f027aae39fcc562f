package main

import (
	"fmt"
	"io"
	"maps"
	"slices"
	"time"
)

// least is the part of all faults that build which have to be caught, so that
// naming faults as equivalent has an end too.
const least = 0.95

// A count is how many faults came out how.
type count struct{ tried, caught, unbuilt, survived, named int }

func (c *count) add(f *fault) {
	c.tried++
	switch f.outcome {
	case caught:
		c.caught++
	case unbuilt:
		c.unbuilt++
	case survived:
		c.survived++
		if f.why != "" {
			c.named++
		}
	}
}

func (c count) String() string {
	return fmt.Sprintf("%d faults, %d caught, %d do not build, %d survived, %d named as equivalent", c.tried, c.caught, c.unbuilt, c.survived, c.named)
}

// enough says whether all is well with the tests.
func (c count) enough() bool {
	return c.survived == c.named && float64(c.caught) >= least*float64(c.caught+c.survived)
}

// report prints what survived and the counts, and says whether all is well.
func report(w io.Writer, tried []*fault, of int, seed int64, took time.Duration, stale []equivalent) (ok bool) {
	var all count
	kinds := map[string]*count{}
	for _, f := range tried {
		if kinds[f.kind] == nil {
			kinds[f.kind] = &count{}
		}
		kinds[f.kind].add(f)
		all.add(f)
		switch {
		case f.outcome == survived && f.why == "":
			fmt.Fprintf(w, "%s\n\t%s\n\t%s\n", f, f.text, f.change())
		case f.outcome == caught && f.why != "":
			fmt.Fprintf(w, "%s: named as equivalent, but it is caught\n", f)
			stale = append(stale, equivalent{})
		}
	}
	for _, e := range stale {
		if e.file != "" {
			fmt.Fprintf(w, "%s: named as equivalent, but it is not there: %s (%s)\n", e.file, e.text, e.change)
		}
	}
	for _, kind := range slices.Sorted(maps.Keys(kinds)) {
		fmt.Fprintf(w, "%-26s %s\n", kind, kinds[kind])
	}
	fmt.Fprintf(w, "%s; tried %d of %d, seed %d, in %.0f s\n", all, len(tried), of, seed, took.Seconds())
	return all.enough() && len(stale) == 0
}
