package main

import (
	"bytes"
	"errors"
	"io"
	"os"

	"hangpack/paperwork"
	"hangpack/paperwork/job"
	"hangpack/paperwork/worked"
)

// readMost is more than any job that is not refused for its length.
const readMost = 2 << 20

// open reads and works out the job of a call. ok is false when that ends the
// command, with code.
func (c *call) open() (j *worked.Job, code int, ok bool) {
	j, complaints, ok := c.read(c.operand())
	switch {
	case !ok:
		return nil, exitFailed, false
	case len(complaints) > 0:
		c.complain(complaints)
		return nil, exitWrong, false
	}
	return j, exitDone, true
}

// read reads and works out a job, or says why it cannot and returns false.
func (c *call) read(file string) (j *worked.Job, complaints job.Complaints, ok bool) {
	text, err := contents(file)
	if err != nil {
		say(c.stderr, "cannot read %s: %v", file, err)
		return nil, nil, false
	}
	j, complaints, err = paperwork.Open(file, bytes.NewReader(text), opened)
	if err != nil {
		say(c.stderr, "%s: %v", file, err)
	}
	return j, complaints, err == nil
}

// opened opens a gear file.
func opened(path string) (io.ReadCloser, error) {
	text, err := contents(path)
	return io.NopCloser(bytes.NewReader(text)), err
}

// contents reads a file. Only a regular file is opened: a pipe or a device
// might never end, and opening one may do something.
func contents(file string) ([]byte, error) {
	info, err := os.Stat(file)
	switch {
	case err != nil:
		return nil, reason(err)
	case info.IsDir():
		return nil, errors.New("it is a folder")
	case !info.Mode().IsRegular():
		return nil, errors.New("it is no regular file")
	}
	f, err := os.Open(file)
	if err != nil {
		return nil, reason(err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, readMost))
	if err != nil {
		return nil, reason(err)
	}
	return text, nil
}

// verdict is the exit code of a job that was worked out.
func verdict(j *worked.Job) int {
	if j.Held() {
		return exitHeld
	}
	return exitDone
}
