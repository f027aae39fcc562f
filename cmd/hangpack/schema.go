package main

import "hangpack/paperwork/job"

// schema prints what a job may say, for editors.
func schema(c *call) int {
	c.stdout.Write(job.Schema())
	return exitDone
}
