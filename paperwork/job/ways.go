package job

import (
	"fmt"
	"regexp"
	"strings"
)

// ways are the two directions that an angle may go, the positive one first,
// and the word for neither, if there is one.
type ways struct{ plus, minus, level, what string }

var (
	aimWays = ways{"down", "up", "level", "aim"}
	panWays = ways{"stage_left", "stage_right", "", "pan"}
)

var turns = regexp.MustCompile(`^(-?` + plainDecimal + `)(?: *(deg))?(?: +([a-z_]+))?$`)

// towards reads an angle that says which way it goes, in radians.
func towards(s string, w ways) (float64, string) {
	if w.level != "" && s == w.level {
		return 0, ""
	}
	if small := strings.ToLower(s); small != s {
		if _, wrong := towards(small, w); wrong == "" {
			return 0, fmt.Sprintf("%q is no %s; did you mean %q?", s, w.what, small)
		}
	}
	p := turns.FindStringSubmatch(s)
	if n := written.FindStringSubmatch(s); p == nil && n != nil && !number.MatchString(n[1]) {
		return 0, notPlain(n[1], "write it like "+w.example("1.5"))
	}
	if p == nil {
		return 0, fmt.Sprintf("%q is no %s; write it like %s", s, w.what, w.example("1.5"))
	}
	x := float(p[1]) * degree
	switch {
	case p[2] != "" && p[3] == w.plus:
		return x, ""
	case p[2] != "" && p[3] == w.minus:
		return -x, ""
	case x == 0 && p[3] == "":
		return 0, ""
	}
	if p[3] == "" {
		return 0, fmt.Sprintf("%s does not say which way; write %s", s, w.example(strings.TrimPrefix(p[1], "-")))
	}
	return 0, fmt.Sprintf("%q is no %s; write it like %s", s, w.what, w.example(strings.TrimPrefix(p[1], "-")))
}

func (w ways) example(x string) string {
	both := []string{x + " deg " + w.plus, x + " deg " + w.minus}
	if w.level != "" {
		both = append(both, w.level)
	}
	return orList(both)
}
