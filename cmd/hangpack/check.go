package main

import (
	"io"

	"hangpack/paperwork/report"
)

// check prints the figures of a job: for people, or as JSON.
func check(c *call) int {
	j, code, ok := c.open()
	if !ok {
		return code
	}
	if c.has("json") {
		printJSON(c.stdout, j.Figures)
	} else {
		io.WriteString(c.stdout, report.Check(j))
	}
	return verdict(j)
}
