package laws

import (
	"fmt"
	"io"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/worked"
	"hangpack/testdata/trials"
)

// changed works the job out as a law has changed it.
func (t *trial) changed(change func(n tree)) *worked.Job {
	n := t.tree.copied()
	change(n)
	return t.opened(n.text())
}

// changedInPlace reads the job as changed, with every pick hole that was left to the
// figures fixed to the one they took: they pass over holes that would be held.
func (t *trial) changedInPlace(change func(n tree)) *worked.Job {
	return t.changed(func(n tree) {
		for i, s := range n.at("stacks").items() {
			if h := t.Stacks[i]; s.at("twin_of").Node == nil && h.Picks[0].Hole == job.Auto {
				s.hangFrom(t.Figures.Stacks[i].Picks[0].Hole)
			}
		}
		change(n)
	})
}

// opened reads a job that may have no complaint; nil where it has one.
func (t *trial) opened(text string) *worked.Job { return t.openedWith(text, "") }

// openedWith reads it beside one gear file.
func (t *trial) openedWith(text, gear string) *worked.Job {
	j, complaints, err := trials.Try(text, func(string) (io.ReadCloser, error) {
		return io.NopCloser(strings.NewReader(gear)), nil
	})
	if err != nil || len(complaints) > 0 {
		t.fault("the job as changed: %v %s", err, fmt.Sprint(complaints))
		return nil
	}
	return j
}
