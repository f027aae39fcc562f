package rig

import (
	"encoding/json"
	"fmt"
	"strings"
)

// End is an end of the bar: Front or Rear of two picks, "" where there is one pick.
type End string

// The ends of the bar.
const (
	Front End = "front"
	Rear  End = "rear"
)

// Where is a place in a stack: the zero Where is the finished stack as a whole.
type Where struct {
	Lift  int // counted from 1; 0 is the finished stack
	Joint int // counted from 1; 0 for no one joint
	End   End
	Set   int    // counted from 1; 0 for no one set
	Gear  string // key of an entry; "" for none
}

// String writes the place as data has it, like 'lift 2, joint 3', and "" for the
// finished stack.
func (w Where) String() string { return strings.Join(w.parts(), ", ") }

// MarshalJSON writes the place as String does.
func (w Where) MarshalJSON() ([]byte, error) { return json.Marshal(w.String()) }

// Part is the place without its lift, as String writes its last part, and "" where it
// names nothing else.
func (w Where) Part() string {
	w.Lift = 0
	parts := w.parts()
	if len(parts) == 0 {
		return ""
	}
	return parts[len(parts)-1]
}

// parts are the place in words, from the lift to the gear.
func (w Where) parts() (parts []string) {
	if w.Lift > 0 {
		parts = append(parts, fmt.Sprintf("lift %d", w.Lift))
	}
	if w.Joint > 0 {
		parts = append(parts, fmt.Sprintf("joint %d", w.Joint))
	}
	if w.End != "" {
		parts = append(parts, string(w.End))
	}
	if w.Set > 0 {
		parts = append(parts, fmt.Sprintf("set %d", w.Set))
	}
	if w.Gear != "" {
		parts = append(parts, w.Gear)
	}
	return parts
}

// End is the end of the bar that pick i is at, front first; "" where there is one pick.
func (h *Hung) End(i int) End {
	if len(h.Picks) == 1 {
		return ""
	}
	return [...]End{Front, Rear}[i]
}
