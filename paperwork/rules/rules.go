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

// A Gravity is how grave it is where a rule finds something, 1 the gravest: people are
// told of it in this order, which is hangpack's own.
type Gravity int

// What may come of it.
const (
	ComesDown Gravity = iota + 1 // a part gives way, or the stack tips: all of it may fall
	Lurches                      // it moves at once or hangs as nobody expects, with hands beside it
	Strikes                      // it meets floor, roof or another stack on its way
	NoFit                        // it does not go together or does not reach: the work stops below the hook
	Differs                      // it hangs, and not as it was wanted
	Unknown                      // nobody has said what it may be held against
)

// A Rule is one thing that may be wrong with a stack, or that has to be known of it.
// Its file has its row, its check and its words.
type Rule struct {
	ID       string // as data has it
	Title    string // begins its sentences on paper; "" where they need no beginning
	Severity Severity
	Grave    Gravity

	worstLift bool // of its cautions of lifts only the worst is given

	states func(c *check, s *rig.State) // of the finished stack and of every lift; nil for none
	stack  func(c *check)               // of the stack as a whole; nil for none
}
