package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
)

// A fresh file is one to be written: its name, as the user gave it, and what fills it.
type fresh struct {
	name string
	fill func(io.Writer) error
}

// together puts files at their places, all of them or none: all are written down to
// drafts first, then what is no regular file is written into, and then the drafts are
// renamed one after the other, no signal between. Where one cannot be, those before it
// are put back as they were. failed is the file that an error is of. Only a kill that
// nobody can catch, or a power cut, between two renames leaves files of both; what was
// there before then still stands beside its place as .hangpack-….
func together(files ...fresh) (failed string, err error) {
	var set []*draft
	defer func() {
		for _, d := range set {
			d.drop()
		}
	}()
	for _, f := range files {
		d, err := begin(f)
		set = append(set, d)
		if err == nil && d.f != nil {
			err = finish(d.f, written(d.f, d.old, f.fill))
		}
		if err != nil {
			return f.name, asBefore(err, len(files))
		}
	}
	for _, d := range set {
		if err := d.into(); err != nil {
			return d.name, asBefore(err, len(files))
		}
	}
	return drafts.put(set)
}

// asBefore says with what went wrong with one of several files that none is changed.
func asBefore(err error, files int) error {
	if files == 1 {
		return err
	}
	return fmt.Errorf("%w; no file is changed", err)
}

// into writes into what is no regular file, and does nothing else.
func (d *draft) into() error {
	if d.f != nil {
		return nil
	}
	f, err := os.OpenFile(d.name, os.O_WRONLY, 0)
	if err != nil {
		return reason(err)
	}
	return finish(f, d.fill(f))
}

// put puts drafts in their places, all or none.
func (d *draftList) put(set []*draft) (failed string, err error) {
	d.Lock()
	defer d.Unlock()
	for i, one := range set {
		if err := one.put(i < len(set)-1); err != nil {
			if left := putBack(set[:i+1]); left != "" {
				return one.name, fmt.Errorf("%w%s", reason(err), left)
			}
			return one.name, asBefore(reason(err), len(set))
		}
	}
	for _, one := range set {
		if one.kept != "" {
			os.Remove(one.kept)
		}
	}
	return "", nil
}

// put renames a draft to its place. What stands there is kept beside it if it may have
// to be put back: by a hard link, or by a rename on a disk that has none.
func (d *draft) put(keep bool) error {
	if d.f == nil {
		return nil
	}
	if info, err := os.Lstat(d.place); keep && err == nil && info.Mode().IsRegular() {
		dir, _ := filepath.Split(d.place)
		kept := dir + draftName()
		if os.Link(d.place, kept) != nil {
			err = os.Rename(d.place, kept)
		}
		if err != nil {
			return err
		}
		d.kept = kept
	}
	err := os.Rename(d.f.Name(), d.place)
	d.there = err == nil
	return err
}

// putBack puts back what stood in the places of drafts. It says which files could not
// be, and where that is which they were; "" where all are as before.
func putBack(set []*draft) (left string) {
	for i := len(set) - 1; i >= 0; i-- {
		switch d := set[i]; {
		case d.kept != "" && os.Rename(d.kept, d.place) != nil:
			left += fmt.Sprintf("; %s could not be put back: it was what is now %s", d.name, d.kept)
		case d.kept != "":
			os.Remove(d.kept) // which a rename onto another name of the same file leaves
		case d.there && os.Remove(d.place) != nil:
			left += fmt.Sprintf("; %s is new and could not be taken away", d.name)
		}
	}
	return left
}
