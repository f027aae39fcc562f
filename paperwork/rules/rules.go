package rules

import (
	"fmt"

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

// A check is one rule being held against one stack.
type check struct {
	*Checked
	rule *Rule
}

// hold adds a hold of the rule. The caller may set Of and By of what it returns, until
// the next finding is added.
func (c *check) hold(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Holds, at, fmt.Sprintf(format, args...))
}

// caution adds a caution as hold does a hold.
func (c *check) caution(at rig.Where, format string, args ...any) *Finding {
	return c.add(&c.Cautions, at, fmt.Sprintf(format, args...))
}

func (c *check) add(to *[]Finding, at rig.Where, says string) *Finding {
	*to = append(*to, Finding{Rule: c.rule.ID, Title: c.rule.Title, Where: at, Says: says})
	return &(*to)[len(*to)-1]
}

// rated holds a load against its limit, both in newtons with all factors in them, and
// keeps the most used part of its kind.
func (c *check) rated(part string, load, limit float64, says Wording) {
	c.Uses.take(Use{part, load / limit, says})
	if load > limit+rig.Alike {
		at, worked, most := says()
		c.hold(at, "%s is more than %s", worked, most).By = load / limit
	}
}

// measured keeps the closest of a kind of measure.
func (c *check) measured(of string, spare float64, says Wording) {
	c.Measures.take(Measure{of, spare, says})
}
