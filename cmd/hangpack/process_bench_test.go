package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

// built builds a program of the project.
func built(b *testing.B, dir string) string {
	b.Helper()
	program := filepath.Join(b.TempDir(), "program")
	if out, err := exec.Command("go", "build", "-o", program, dir).CombinedOutput(); err != nil {
		b.Fatalf("%v: %s", err, out)
	}
	return program
}

// ran runs a program and returns how long it took and what it used of all cores.
func ran(b *testing.B, program string, args ...string) (wall, cpu time.Duration) {
	b.Helper()
	c := exec.Command(program, args...)
	var said bytes.Buffer
	c.Stderr = &said
	from := time.Now()
	if err := c.Run(); err != nil && c.ProcessState.ExitCode() != exitHeld {
		b.Fatalf("%v: %s", err, said.String())
	}
	wall = time.Since(from)
	return wall, c.ProcessState.UserTime() + c.ProcessState.SystemTime()
}

// recorded packs a job and writes down how its pages are drawn.
func recorded(b *testing.B, hangpack, job string) string {
	b.Helper()
	pdf, record := filepath.Join(b.TempDir(), "pack.pdf"), filepath.Join(b.TempDir(), "record")
	ran(b, hangpack, "pack", "-q", "-o", pdf, job)
	out, err := exec.Command(built(b, "../../testdata/bare/record"), pdf).Output()
	if err != nil {
		b.Fatal(err)
	}
	if err := os.WriteFile(record, out, 0o644); err != nil {
		b.Fatal(err)
	}
	return record
}

func median(d []time.Duration) time.Duration {
	slices.Sort(d)
	return d[len(d)/2]
}

// BenchmarkWholeProcess packs the arena example, 58 pages, as a whole process, in turn
// with a bare program that draws the same pages with the PDF library alone: median
// wall times and their ratio.
func BenchmarkWholeProcess(b *testing.B) {
	hangpack, bare := built(b, "."), built(b, "../../testdata/bare")
	record, out := recorded(b, hangpack, "../../examples/arena.yaml"), filepath.Join(b.TempDir(), "out.pdf")
	var ours, theirs, cpu, theirCPU []time.Duration
	for b.Loop() {
		wall, used := ran(b, hangpack, "pack", "-q", "-o", out, "../../examples/arena.yaml")
		ours, cpu = append(ours, wall), append(cpu, used)
		wall, used = ran(b, bare, record, out)
		theirs, theirCPU = append(theirs, wall), append(theirCPU, used)
	}
	ms := func(d time.Duration) float64 { return float64(d.Microseconds()) / 1000 }
	b.ReportMetric(ms(median(ours)), "ms")
	b.ReportMetric(ms(median(cpu)), "cpu-ms")
	b.ReportMetric(ms(median(theirs)), "bare-ms")
	b.ReportMetric(ms(median(theirCPU)), "bare-cpu-ms")
	b.ReportMetric(ms(median(ours))/ms(median(theirs)), "ms/bare-ms")
}
