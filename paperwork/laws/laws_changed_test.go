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
			h, took := t.Stacks[i], t.Figures.Stacks[i].Picks[0].Hole
			twin := s.at("twin_of").Node != nil
			if h.Picks[0].Hole != job.Auto || twin && h.Twin != nil && h.Twin.Holes[0] == h.Holes[0] {
				continue
			}
			if twin { // it took another hole than its twin did
				n.inFull(s)
			}
			s.hangFrom(took)
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
