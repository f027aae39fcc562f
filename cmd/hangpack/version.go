package main

import (
	"fmt"

	"hangpack/paperwork"
)

// version prints which hangpack this is, as the cover of a pack does.
func version(c *call) int {
	fmt.Fprintln(c.stdout, paperwork.Version)
	return exitDone
}
