package main

import "io"

// points prints the venue's table of all points: for people, or as CSV.
func points(c *call) int {
	j, code, ok := c.open()
	if !ok {
		return code
	}
	if c.has("csv") {
		c.stdout.keep(j.PointsCSV(c.stdout))
	} else {
		io.WriteString(c.stdout, j.PointsReport())
	}
	return verdict(j)
}
