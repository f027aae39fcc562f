package main

import (
	"cmp"
	"errors"
	"fmt"
	"os"
)

// refuseShared refuses jobs of one line that would write what another one writes or
// is read from. Jobs that are at fault already write nothing, and stand in nobody's
// way but as what is not to be written over.
func refuseShared(tasks []*task) {
	files := allRead(tasks)
	refused := make([]error, len(tasks))
	for i, t := range tasks {
		if t.code == exitDone {
			refused[i] = cmp.Or(t.writesOver(files), t.alsoWritten(tasks))
		}
	}
	for i, err := range refused {
		if err != nil {
			tasks[i].code = tasks[i].wrong(err)
		}
	}
}

// targets are the files that a job writes: the pack, then those of its stacks.
func (t *task) targets() []stackFile { return append([]stackFile{{outlet: t.out}}, t.stacks...) }

// alsoWritten says which file of a job another job of the line would write too.
func (t *task) alsoWritten(tasks []*task) error {
	for _, other := range tasks {
		if other == t || other.code != exitDone {
			continue
		}
		for _, mine := range t.targets() {
			for _, theirs := range other.targets() {
				if mine.sameAs(theirs.outlet) {
					return sharedBy(mine, theirs, t.operand() == other.operand(), other.operand())
				}
			}
		}
	}
	return nil
}

// sharedBy says that two jobs would write one file.
func sharedBy(mine, theirs stackFile, twice bool, other string) error {
	var as, since string
	switch {
	case twice:
		return errors.New("it is given twice; nothing of it is written")
	case theirs.name != mine.name:
		as = ", as " + theirs.name
	}
	if mine.id != "" || theirs.id != "" {
		since = ", since job.url has {stack}"
	}
	return fmt.Errorf("%s is also what %s would write%s%s; neither job is packed", mine.name, other, as, since)
}

// A readFile is a file that a job of the line is read from.
type readFile struct {
	name string
	info os.FileInfo
	job  string
}

// allRead are the files that the jobs of a line are read from, those at fault too.
// Gear files of a job at fault are not known.
func allRead(tasks []*task) (files []readFile) {
	for _, t := range tasks {
		names := t.operands
		if t.job != nil {
			names = t.job.Files()
		}
		for _, name := range names {
			if info, err := os.Stat(name); err == nil {
				files = append(files, readFile{name, info, t.operand()})
			}
		}
	}
	return files
}

// writesOver says which file that another job is read from would be written over.
func (t *task) writesOver(files []readFile) error {
	for _, mine := range t.targets() {
		for _, f := range files {
			if mine.info != nil && f.job != t.operand() && os.SameFile(mine.info, f.info) {
				return fmt.Errorf("%s is %s; it is not written over", mine.name, f.as(mine.name))
			}
		}
	}
	return nil
}

// as says what a file is to its job, and its name where it is known by another one.
func (f readFile) as(name string) string {
	what := "read for " + f.job
	if f.name == f.job {
		what = "a job of this line"
	}
	if name != f.name {
		return f.name + ", " + what
	}
	return what
}
