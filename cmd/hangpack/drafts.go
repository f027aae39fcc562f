package main

import (
	"os"
	"sync"
)

// A draftList is the drafts that are there. Its lock keeps a signal from coming
// between a step and its clearing up.
type draftList struct {
	sync.Mutex
	names map[string]bool
}

// drafts are those of the process: a signal ends it, and has to find every draft
// of packs that are written side by side.
var drafts = draftList{names: map[string]bool{}}

// begin makes a draft. What it returns besides lets signals be again, also where
// there is an error. A new file gets its mode from the system, which knows the
// umask.
func (d *draftList) begin(name string) (f *os.File, stop func(), err error) {
	d.Lock()
	defer d.Unlock()
	stop = onSignal(d.clear)
	f, err = os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err == nil {
		d.names[name] = true
	}
	return f, stop, err
}

// drop removes a draft, if it is there still.
func (d *draftList) drop(name string) {
	d.Lock()
	defer d.Unlock()
	os.Remove(name)
	delete(d.names, name)
}

// clear removes all drafts. It keeps the lock, so that there are no more of them
// until the process has ended.
func (d *draftList) clear() {
	d.Lock()
	for name := range d.names {
		os.Remove(name)
	}
}
