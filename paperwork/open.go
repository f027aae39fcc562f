package paperwork

import (
	"io"

	"hangpack/layouts/paper"
	"hangpack/paperwork/job"
	"hangpack/paperwork/worked"
)

// Open reads a job from src and the gear files that it names, which open opens, and
// works it out. file is the job's path, and the name that complaints give it. A job that
// is at fault gives complaints and no Job; an error is a fault of hangpack.
func Open(file string, src io.Reader, open job.Opener) (*worked.Job, job.Complaints, error) {
	j, complaints := job.Read(file, src, open, paper.Prints)
	if len(complaints) > 0 {
		return nil, complaints, nil
	}
	w, err := worked.Out(file, j)
	return w, nil, err
}
