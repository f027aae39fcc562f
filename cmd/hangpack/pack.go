package main

import (
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
)

// pack writes the pack of a job and says what it wrote.
func pack(args []string, stdout, stderr io.Writer) int {
	fs := flag.NewFlagSet("pack", flag.ContinueOnError)
	out := fs.String("o", "", "")
	quiet := fs.Bool("q", false, "")
	file, j, code, ok := worked(fs, args, stdout, stderr)
	if !ok {
		return code
	}
	if *out == "" {
		*out = strings.TrimSuffix(file, filepath.Ext(file)) + ".pdf"
	}
	paper, err := j.Draw()
	if err == nil {
		err = write(*out, file, paper.PDF)
	}
	if err != nil {
		fmt.Fprintf(stderr, "hangpack: %s: %v\n", file, err)
		return exitFailed
	}
	if !*quiet {
		fmt.Fprint(stdout, j.Summary(*out, paper.Pages))
	}
	return verdict(j)
}

// write writes a pack beside its place and renames it, so that no half pack is
// ever left where a whole one belongs. The job itself is never overwritten.
func write(out, job string, pdf []byte) error {
	if a, err := os.Stat(out); err == nil {
		if b, err := os.Stat(job); err == nil && os.SameFile(a, b) {
			return fmt.Errorf("%s is the job itself; name another file", out)
		}
	}
	f, err := os.CreateTemp(filepath.Dir(out), ".hangpack-*")
	if err != nil {
		return err
	}
	defer os.Remove(f.Name())
	_, err = f.Write(pdf)
	if closing := f.Close(); err == nil {
		err = closing
	}
	if err == nil {
		err = os.Chmod(f.Name(), 0o644)
	}
	if err == nil {
		err = os.Rename(f.Name(), out)
	}
	return err
}
