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
	old, err := os.Stat(out)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return redraft(followed(out), nil, fill)
	case err != nil:
		return reason(err)
	case old.IsDir():
		return errors.New("it is a folder; name a file in it")
	}
	// Opening it shows whether it may be written, which a rename would not ask.
	f, err := os.OpenFile(out, os.O_WRONLY, 0)
	if err != nil {
		return reason(err)
	}
	if !old.Mode().IsRegular() {
		return finish(f, fill(f))
	}
	f.Close()
	return redraft(followed(out), old, fill)
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

// redraft writes a draft and puts it in place. A signal is waited for while the
// draft is there.
func redraft(place string, old os.FileInfo, fill func(io.Writer) error) error {
	dir, _ := filepath.Split(place)
	f, stop, err := drafts.begin(dir + fmt.Sprintf(".hangpack-%016x", rand.Uint64()))
	defer stop()
	if errors.Is(err, fs.ErrNotExist) {
		return errors.New("there is no such folder")
	}
	if err != nil {
		return reason(err)
	}
	defer drafts.drop(f.Name()) // in vain once it is renamed
	if err := finish(f, written(f, old, fill)); err != nil {
		return err
	}
	return reason(drafts.put(f.Name(), place))
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
