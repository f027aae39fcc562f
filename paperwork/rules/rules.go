// Package rules holds a worked stack against what gear, practice and heights allow:
// what stops it from flying, and what the crew or the venue must know. Each rule
// stands in a file of its own, and in the table of rules.go.
package rules

import (
	"slices"

	"hangpack/paperwork/rig"
)

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

// table is every rule, in the order of their findings: those of the finished stack
// rule by rule, of each lift, then of the stack as a whole.
var table = []Rule{
	aimMissed, hoist, bar, pickHole, hingePin, linkPin, linkPushed, most, barTilt, lightPick, tipsOver,
	headroom, chainReach, belowFloor, dolly, liftTilt, hingeTurns, oneHoist, oneHoistGear, backsMeet,
	mixedArms, onePickTurns, notChecked, twinDiffers,
}

// All returns every rule, in the order of their findings: a slice of the caller's own.
func All() []Rule { return slices.Clone(table) }
