package main

import (
	"fmt"

	"hangpack/paperwork/sheets"
)

// version prints which hangpack this is, as the cover of a pack does.
func version(c *call) int {
	fmt.Fprintln(c.stdout, sheets.Version)
	return exitDone
}
