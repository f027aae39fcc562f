package paperwork

import (
	"os"
	"strings"
	"testing"
)

// BenchmarkFigures reads and works out the arena example.
func BenchmarkFigures(b *testing.B) {
	text, err := os.ReadFile("../examples/arena.yaml")
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, complaints, err := Open("arena.yaml", strings.NewReader(string(text)), exampleGear); err != nil || complaints != nil {
			b.Fatal(complaints, err)
		}
	}
}

// BenchmarkPack draws the arena example.
func BenchmarkPack(b *testing.B) {
	text, err := os.ReadFile("../examples/arena.yaml")
	if err != nil {
		b.Fatal(err)
	}
	j, _, err := Open("arena.yaml", strings.NewReader(string(text)), exampleGear)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := j.Draw(); err != nil {
			b.Fatal(err)
		}
	}
}
