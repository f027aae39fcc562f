package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var (
	wrote     = regexp.MustCompile(`(?m)^wrote (\S+), (?:([0-9]+) of )?([0-9]+) pages`)
	allPacked = regexp.MustCompile(`(?m)^packed 2 of 2 jobs, ([0-9]+) pages`)
	pageOfPDF = regexp.MustCompile(`/Type /Page\s`)
)

// TestPagesSaid: the pages that are said to be written are those of the files, and the
// whole that some are part of is that of the whole pack.
func TestPagesSaid(t *testing.T) {
	copied(t)
	number := func(s string) int {
		n, err := strconv.Atoi(s)
		require.NoError(t, err)
		return n
	}
	whole := map[string]int{}
	for _, chosen := range []string{"", " -only pins,lifts"} {
		out, _, code := apart(t, "hangpack pack examples/concert.yaml examples/club.yaml"+chosen)
		require.Equal(t, exitDone, code)
		said, sum := wrote.FindAllStringSubmatch(out, -1), 0
		require.Len(t, said, 2, out)
		for _, m := range said {
			pdf, err := os.ReadFile(m[1])
			require.NoError(t, err)
			pages := len(pageOfPDF.FindAll(pdf, -1))
			sum += pages
			if chosen == "" {
				assert.Equal(t, pages, number(m[3]), m[0])
				whole[strings.TrimSuffix(filepath.Base(m[1]), ".pdf")] = pages
				continue
			}
			job, _, _ := strings.Cut(filepath.Base(m[1]), "-")
			assert.Equal(t, []int{pages, whole[job]}, []int{number(m[2]), number(m[3])}, m[0])
		}
		assert.Equal(t, sum, number(allPacked.FindStringSubmatch(out)[1]), out)
	}
}
