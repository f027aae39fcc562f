package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
)

// check prints the figures of a job: for people, or as JSON.
func check(args []string, stdout, stderr io.Writer) int {
	fs := flag.NewFlagSet("check", flag.ContinueOnError)
	asJSON := fs.Bool("json", false, "")
	_, j, code, ok := worked(fs, args, stdout, stderr)
	if !ok {
		return code
	}
	if err := printFigures(stdout, j.Figures, j.Report, *asJSON); err != nil {
		fmt.Fprintf(stderr, "hangpack: %v\n", err)
		return exitFailed
	}
	return verdict(j)
}

func printFigures(w io.Writer, figures any, report func() string, asJSON bool) error {
	if asJSON {
		enc := json.NewEncoder(w)
		enc.SetEscapeHTML(false)
		enc.SetIndent("", " ")
		return enc.Encode(figures)
	}
	_, err := io.WriteString(w, report())
	return err
}
