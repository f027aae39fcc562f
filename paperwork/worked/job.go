// Package worked works a whole job out: its stacks, checked, and its figures as data.
package worked

import (
	"fmt"
	"strings"

	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// Job is a job with all that has been worked out of it.
type Job struct {
	*job.Job
	File    string           // the path that it was read from
	Stacks  []*rules.Checked // in the order of the job
	Figures Figures
}

// Out works out a job that was read from a file, whose path is kept. An error is a fault
// of hangpack, since what cannot be worked out is refused by the reader.
func Out(file string, j *job.Job) (*Job, error) {
	w := &Job{Job: j, File: file}
	for i := range j.Stacks {
		h, err := rig.Hang(j, &j.Stacks[i])
		if err != nil {
			return nil, err
		}
		c, err := choose(h)
		if err != nil {
			return nil, err
		}
		w.Stacks = append(w.Stacks, c)
	}
	rules.CompareStacks(j, w.Stacks)
	w.Figures = FiguresOf(j, w.Stacks)
	return w, nil
}

// Stack returns the stack of an id, or nil where there is none.
func (j *Job) Stack(id string) *rules.Checked {
	for _, h := range j.Stacks {
		if h.ID == id {
			return h
		}
	}
	return nil
}

// Files returns the paths of the files that the job was read from: its own and
// those of its gear files.
func (j *Job) Files() []string { return append([]string{j.File}, j.GearFiles...) }

// Held reports whether any stack of the job is held.
func (j *Job) Held() bool { return len(j.held()) > 0 }

// held are the ids of the held stacks, in the order of the job.
func (j *Job) held() (ids []string) {
	for _, h := range j.Stacks {
		if h.Held() {
			ids = append(ids, h.ID)
		}
	}
	return ids
}

// Unit is the units of the paper and of the terminal.
func (j *Job) Unit() say.Units { return say.Units{Imperial: j.Imperial} }

// HeldWords says which stacks are held: '1 held: SR'; or that no hold was found.
func (j *Job) HeldWords() string {
	held := j.held()
	if len(held) == 0 {
		return rules.NoHold
	}
	return fmt.Sprintf("%d held: %s", len(held), strings.Join(held, ", "))
}

// IncludesHeld says that totals count held stacks too: 'includes 1 held stack', and ""
// where there are none.
func (j *Job) IncludesHeld() string {
	if !j.Held() {
		return ""
	}
	return "includes " + say.Count(len(j.held()), "held stack")
}

// HeldMark is the word that marks a held stack, and "" on others.
func HeldMark(h *rules.Checked) string {
	if h.Held() {
		return "HELD"
	}
	return ""
}
