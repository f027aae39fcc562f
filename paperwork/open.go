package paperwork

import (
	"io"

	"hangpack/layouts"
	"hangpack/paperwork/job"
	"hangpack/paperwork/rig"
	"hangpack/paperwork/rules"
	"hangpack/paperwork/say"
)

// Job is a job read and worked out.
type Job struct {
	file    string
	job     *job.Job
	stacks  []*rules.Checked
	Figures Figures
}

// Open reads a job file and the gear files that it names, which open opens, and
// works it out. file is its path, and the name that complaints give. A job that
// is at fault gives complaints and no Job; any other error is a fault of
// hangpack.
func Open(file string, src io.Reader, open job.Opener) (*Job, job.Complaints, error) {
	j, complaints := job.Read(file, src, open, layouts.Prints)
	if len(complaints) > 0 {
		return nil, complaints, nil
	}
	worked := &Job{job: j, file: file}
	for i := range j.Stacks {
		h, err := rig.Hang(j, &j.Stacks[i])
		if err != nil {
			return nil, nil, err
		}
		worked.stacks = append(worked.stacks, rules.Check(h))
	}
	rules.CompareTwins(worked.stacks)
	worked.Figures = figures(j, worked.stacks)
	return worked, nil, nil
}

// Files returns the paths of the files that the job was read from: its own and
// those of its gear files.
func (j *Job) Files() []string { return append([]string{j.file}, j.job.GearFiles...) }

// Held reports whether any stack of the job is held.
func (j *Job) Held() bool {
	for _, s := range j.Figures.Stacks {
		if s.Held {
			return true
		}
	}
	return false
}

func (j *Job) unit() say.Units { return say.Units{Imperial: j.job.Imperial} }
