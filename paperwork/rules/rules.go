// Package rules holds a worked stack against what gear, practice and heights allow:
// what stops it from flying, and what the crew or the venue must know. Each rule
// stands in a file of its own, and in the table of table.go.
package rules

import "hangpack/paperwork/rig"

// A Severity is what findings of a rule may be.
type Severity int

// A hold stops the stack; a caution has to be known; Either is a rule whose findings
// are the one or the other, as its file says.
const (
	Hold Severity = iota + 1
	Caution
	Either
)

// A Rule is one thing that may be wrong with a stack, or that has to be known of it.
// Its file has its row, its check and its words.
type Rule struct {
	ID       string // as data has it
	Title    string // begins its sentences on paper; "" where they need no beginning
	Severity Severity

	states func(c *check, s *rig.State) // of the finished stack and of every lift; nil for none
	stack  func(c *check)               // of the stack as a whole; nil for none
}
