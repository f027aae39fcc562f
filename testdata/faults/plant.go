package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"time"
)

// Limits of one trial: how long tests may take until a fault counts as caught,
// and how much memory, in KiB, so that a loop without end takes no more.
const (
	mostTime   = "20s"
	mostMemory = 6 << 20
	atOnce     = 2
)

// goTest runs the package's tests with some files overlaid, with pages that are
// made by tests left as they are: what catches a fault has to be a check.
func goTest(dir string, args ...string) (output string, err error) {
	args = append(append([]string{"test", "-vet=off", "-ldflags=-s", "-failfast", "-count=1", "-timeout", mostTime}, args...), "./"+filepath.ToSlash(filepath.Clean(dir)))
	limited := append([]string{"-c", fmt.Sprintf(`ulimit -v %d; exec go "$@"`, mostMemory), "go"}, args...)
	cmd := exec.Command("sh", limited...)
	cmd.Env = append(os.Environ(), "HANGPACK_FAULTS=1")
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// ownTests says what is wrong if the tests fail without a fault.
func ownTests(dir string) error {
	if out, err := goTest(dir); err != nil {
		return fmt.Errorf("the tests of %s fail without a fault:\n%s", dir, out)
	}
	return nil
}

// plant tries one fault in a folder of its own.
func plant(dir, room string, f *fault) error {
	path, err := filepath.Abs(f.file)
	if err != nil {
		return err
	}
	file, overlay := filepath.Join(room, "planted.go"), filepath.Join(room, "overlay.json")
	replace, err := json.Marshal(map[string]map[string]string{"Replace": {path: file}})
	if err := errors.Join(err, os.WriteFile(file, f.planted(), 0o644), os.WriteFile(overlay, replace, 0o644)); err != nil {
		return err
	}
	out, err := goTest(dir, "-overlay", overlay)
	switch {
	case err == nil:
		f.outcome = survived
	case strings.Contains(out, "[build failed]") || strings.Contains(out, "[setup failed]"):
		f.outcome = unbuilt
	case strings.Contains("\n"+out, "\nFAIL\t"):
		f.outcome = caught
	default:
		return fmt.Errorf("%s: neither built nor tested: %w\n%s", f, err, out)
	}
	return nil
}

// plantAll tries faults until the budget is used, and returns those it tried. A
// budget of nought is no budget.
func plantAll(dir string, all []*fault, budget time.Duration) (tried []*fault, took time.Duration, err error) {
	start, next, done := time.Now(), make(chan *fault), make(chan *fault)
	go func() {
		defer close(next)
		for _, f := range all {
			if budget > 0 && time.Since(start) > budget {
				return
			}
			next <- f
		}
	}()
	var crew sync.WaitGroup
	for range atOnce {
		crew.Go(func() { plantEach(dir, next, done) })
	}
	go func() { crew.Wait(); close(done) }()
	for f := range done {
		tried, err = append(tried, f), errors.Join(err, f.err)
	}
	return tried, time.Since(start), err
}

func plantEach(dir string, next <-chan *fault, done chan<- *fault) {
	room, err := os.MkdirTemp("", "faults")
	defer os.RemoveAll(room)
	for f := range next {
		if f.err = err; err == nil {
			f.err = plant(dir, room, f)
		}
		done <- f
	}
}
