package paperwork

import (
	"os"
	"strings"
	"testing"

	"hangpack/paperwork/job"
)

// arena reads the example of 58 pages.
func arena(b *testing.B) *Job {
	b.Helper()
	text, err := os.ReadFile("../examples/arena.yaml")
	if err != nil {
		b.Fatal(err)
	}
	j, complaints, err := Open("arena.yaml", strings.NewReader(string(text)), exampleGear)
	if err != nil || complaints != nil {
		b.Fatal(complaints, err)
	}
	return j
}

// BenchmarkOpen reads and works out the arena example.
func BenchmarkOpen(b *testing.B) {
	for b.Loop() {
		arena(b)
	}
}

// BenchmarkThousandStacks works out the figures of 1,000 stacks of 16 cabinets that
// are read already, in every lift, from each hoist alone and against every rule.
func BenchmarkThousandStacks(b *testing.B) {
	j := *arena(b).job
	one := j.Stacks[0]
	if len(one.Cabinets) != 16 || len(one.Picks) != 2 {
		b.Fatal("the arena's first stack is no longer one of 16 cabinets on two hoists")
	}
	j.Stacks = make([]job.Stack, 1000)
	for i := range j.Stacks {
		j.Stacks[i] = one
	}
	for b.Loop() {
		stacks := make([]*hung, len(j.Stacks))
		for i := range j.Stacks {
			h, err := hang(&j, &j.Stacks[i])
			if err != nil {
				b.Fatal(err)
			}
			stacks[i] = h
		}
		figures(&j, stacks)
	}
}

// BenchmarkPack draws the arena example.
func BenchmarkPack(b *testing.B) {
	j := arena(b)
	for b.Loop() {
		if _, err := j.Draw(); err != nil {
			b.Fatal(err)
		}
	}
}
