package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// season makes a folder of so many jobs out of the examples, each with a title, a
// revision and aims of its own, and their gear files beside them. It goes there and
// returns their names.
func season(b *testing.B, jobs int) (names []string) {
	b.Helper()
	examples, err := filepath.Abs("../../examples")
	require.NoError(b, err)
	b.Chdir(b.TempDir())
	require.NoError(b, os.CopyFS("gear", os.DirFS(filepath.Join(examples, "gear"))))
	kinds := []string{"concert", "club", "arena", "held", "concert-c"}
	for i := range jobs {
		text, err := os.ReadFile(filepath.Join(examples, kinds[i%len(kinds)]+".yaml"))
		require.NoError(b, err)
		name := fmt.Sprintf("night-%03d.yaml", i)
		require.NoError(b, os.WriteFile(name, varied(text, i), 0o644))
		names = append(names, name)
	}
	return names
}

var (
	titleOf    = regexp.MustCompile(`(title: )[^,\n]+`)
	revisionOf = regexp.MustCompile(`(revision: )[^,}\n]+`)
	aimOf      = regexp.MustCompile(`(aim: )[0-9.]+( deg down)`)
)

// varied is a job as another night of the season has it.
func varied(text []byte, night int) []byte {
	text = titleOf.ReplaceAll(text, fmt.Appendf(nil, "${1}Night %d", night+1))
	text = revisionOf.ReplaceAll(text, fmt.Appendf(nil, "${1}R%d", night))
	return aimOf.ReplaceAll(text, fmt.Appendf(nil, "${1}%.2f${2}", 1+float64(night%20)/20))
}

var pagesIn = regexp.MustCompile(`wrote \S+, ([0-9]+) pages`)

// pagesOf are all pages that were said to be written.
func pagesOf(b *testing.B, said string, jobs int) (pages int) {
	b.Helper()
	found := pagesIn.FindAllStringSubmatch(said, -1)
	require.Len(b, found, jobs, said)
	for _, f := range found {
		n, err := strconv.Atoi(f[1])
		require.NoError(b, err)
		pages += n
	}
	return pages
}

// perSecond reports what was packed in a second, over all rounds.
func perSecond(b *testing.B, jobs, pages int) {
	b.ReportMetric(float64(jobs*b.N)/b.Elapsed().Seconds(), "jobs/s")
	b.ReportMetric(float64(pages*b.N)/b.Elapsed().Seconds(), "pages/s")
}

const nights = 200

// BenchmarkSeason packs a folder of jobs with one command, in a process of its own as a
// rigger does.
func BenchmarkSeason(b *testing.B) {
	names := season(b, nights)
	var out bytes.Buffer
	for b.Loop() {
		out.Reset()
		once(b, &out, names)
	}
	perSecond(b, nights, pagesOf(b, out.String(), nights))
}

// BenchmarkSeasonOneByOne packs the same folder with a command for each job.
func BenchmarkSeasonOneByOne(b *testing.B) {
	names := season(b, nights)
	var out bytes.Buffer
	for b.Loop() {
		out.Reset()
		for _, name := range names {
			once(b, &out, []string{name})
		}
	}
	perSecond(b, nights, pagesOf(b, out.String(), nights))
}

// once runs one pack command. Some of the examples are held.
func once(b *testing.B, out *bytes.Buffer, names []string) {
	cmd := child("main", append([]string{"pack"}, names...)...)
	var errs strings.Builder
	cmd.Stdout, cmd.Stderr = out, &errs
	if err := cmd.Run(); err != nil && cmd.ProcessState.ExitCode() != exitHeld {
		b.Fatal(err, errs.String())
	}
	if errs.Len() > 0 {
		b.Fatal(errs.String())
	}
}
