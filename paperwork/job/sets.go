package job

import "fmt"

// Sets are how many cabinets travel together on each dolly, from the top.
type Sets []int

// First returns the index of the first cabinet of set k, both counted from 0.
func (s Sets) First(k int) int {
	n := 0
	for _, size := range s[:k] {
		n += size
	}
	return n
}

// Of returns the set, counted from 0, that cabinet n travels with, counted from 1.
// It panics where no set has that cabinet.
func (s Sets) Of(n int) int {
	for k, size := range s {
		if n -= size; n <= 0 {
			return k
		}
	}
	panic(fmt.Sprintf("cabinet is %d below the last set", n))
}
