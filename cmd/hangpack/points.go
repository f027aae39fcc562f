package main

import (
	"io"

	"hangpack/paperwork/report"
)

// points prints the venue's table of all points: for people, or as CSV.
func points(c *call) int {
	j, code, ok := c.open()
	if !ok {
		return code
	}
	if c.has("csv") {
		c.stdout.keep(report.PointsCSV(j, c.stdout))
	} else {
		io.WriteString(c.stdout, report.Points(j))
	}
	return verdict(j)
}
