package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
)

//go:embed starter.yaml
var starter []byte

// newJob writes a job to start from, where there is no file yet.
func newJob(c *call) int {
	if err := create(c.operand(), starter); err != nil {
		say(c.stderr, "cannot write %s: %v", c.operand(), err)
		return exitFailed
	}
	if !c.has("q") {
		fmt.Fprintf(c.stdout, "wrote %s; change it to your show, then hangpack pack %s\n", plain(c.operand()), plain(c.operand()))
	}
	return exitDone
}

// create writes a new file, and leaves nothing where that fails.
func create(name string, text []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	switch {
	case errors.Is(err, fs.ErrExist):
		return errors.New("it is there already; name a file that is not")
	case errors.Is(err, fs.ErrNotExist):
		return errors.New("there is no such folder")
	case err != nil:
		return reason(err)
	}
	_, err = f.Write(text)
	if err = finish(f, err); err != nil {
		os.Remove(name)
	}
	return err
}
