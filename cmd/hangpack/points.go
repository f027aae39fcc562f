package main

import (
	"flag"
	"fmt"
	"io"
)

// points prints the venue's table of all points: for people, or as CSV.
func points(args []string, stdout, stderr io.Writer) int {
	fs := flag.NewFlagSet("points", flag.ContinueOnError)
	asCSV := fs.Bool("csv", false, "")
	_, j, code, ok := worked(fs, args, stdout, stderr)
	if !ok {
		return code
	}
	var err error
	if *asCSV {
		err = j.PointsCSV(stdout)
	} else {
		_, err = io.WriteString(stdout, j.PointsReport())
	}
	if err != nil {
		fmt.Fprintf(stderr, "hangpack: %v\n", err)
		return exitFailed
	}
	return verdict(j)
}
