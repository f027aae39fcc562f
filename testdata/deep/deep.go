// Package deep says how far tests go. `go test ./...` is for every day and takes
// two minutes; with HANGPACK_DEEP=1 the same tests draw many more cases, for
// faults that are rarer than a day's work has room for. .ci/run sets it.
package deep

import "os"

// On reports whether tests are to go deep.
func On() bool { return os.Getenv("HANGPACK_DEEP") != "" }

// Of is how many cases a test takes: so many each day, or so many when it goes
// deep.
func Of(day, deep int) int {
	if On() {
		return deep
	}
	return day
}
