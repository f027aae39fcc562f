package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
)

// replace puts at a place what fill writes, whole or not at all: it is written
// to a draft beside the place and then renamed, so that whatever happens on the
// way leaves the old file or none. A link stays a link and its target is
// replaced; what is no regular file, as a device, is written into and stays
// what it is. Errors do not name a file: only the user's name for it is of use.
func replace(out string, fill func(io.Writer) error) error {
	_, err := together(fresh{out, fill})
	return err
}

// followed returns what a link leads to in the end, also where nothing is
// there yet. Paths are put together as they stand: after a linked folder '..'
// is not what it looks like.
func followed(out string) string {
	const linksMost = 40 // as many as Linux follows
	for range linksMost {
		to, err := os.Readlink(out)
		if err != nil {
			break
		}
		if !filepath.IsAbs(to) {
			dir, _ := filepath.Split(out)
			to = dir + to
		}
		out = to
	}
	return out
}

// A draft is a fresh file on its way to its place.
type draft struct {
	fresh
	place string      // links followed
	old   os.FileInfo // of what is there; nil where nothing is
	f     *os.File    // nil where what is there is no regular file
	stop  func()      // lets signals be; nil before

	there bool   // in its place
	kept  string // the old file, until all are in place; "" where there was none
}

// begin looks at the place of a file and begins its draft there. A signal is waited for
// while the draft is there.
func begin(file fresh) (*draft, error) {
	d := &draft{fresh: file, place: followed(file.name)}
	old, err := os.Stat(file.name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return d, d.open()
	case err != nil:
		return d, reason(err)
	case old.IsDir():
		return d, errors.New("it is a folder; name a file in it")
	case !old.Mode().IsRegular():
		return d, nil
	}
	// Opening it shows whether it may be written, which a rename would not ask.
	f, err := os.OpenFile(file.name, os.O_WRONLY, 0)
	if err != nil {
		return d, reason(err)
	}
	f.Close()
	d.old = old
	return d, d.open()
}

// open makes the draft's file.
func (d *draft) open() (err error) {
	dir, _ := filepath.Split(d.place)
	d.f, d.stop, err = drafts.begin(dir + draftName())
	if errors.Is(err, fs.ErrNotExist) {
		return errors.New("there is no such folder")
	}
	return reason(err)
}

// draftName is one that no other file has.
func draftName() string { return fmt.Sprintf(".hangpack-%016x", rand.Uint64()) }

// drop removes a draft, in vain once it is renamed.
func (d *draft) drop() {
	if d.f != nil {
		drafts.drop(d.f.Name())
	}
	if d.stop != nil {
		d.stop()
	}
}

// written writes the draft down to the disk, with the mode of what it replaces.
func written(f *os.File, old os.FileInfo, fill func(io.Writer) error) error {
	if err := fill(f); err != nil {
		return err
	}
	if err := keepMode(f, old); err != nil {
		return err
	}
	return f.Sync()
}

// keepMode gives a file the mode of an old one, if there is one and it differs:
// not every disk knows modes.
func keepMode(f *os.File, old os.FileInfo) error {
	if old == nil {
		return nil
	}
	now, err := f.Stat()
	if err != nil || now.Mode().Perm() == old.Mode().Perm() {
		return err
	}
	return f.Chmod(old.Mode().Perm())
}

// finish closes a file and returns what went wrong first: some disks say only
// then that they are full.
func finish(f *os.File, err error) error {
	if closing := f.Close(); err == nil {
		err = closing
	}
	return reason(err)
}
