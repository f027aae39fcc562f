package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestCommandsTable: each command has a name and an example of its own, which
// works as it stands, and a flag has one form in all commands.
func TestCommandsTable(t *testing.T) {
	copied(t)
	seen := map[string]bool{}
	for _, c := range commands {
		assert.False(t, seen[c.name], c.name)
		seen[c.name] = true
		assert.True(t, strings.HasPrefix(c.example+" ", "hangpack "+c.name+" "), c.example)
		_, errs, code := apart(t, c.example)
		assert.Equal(t, exitDone, code, "%s: %s", c.example, errs)
		assert.Equal(t, c.operand == "", c.about == "", c.name)
		for _, o := range c.flags {
			assert.Equal(t, o.value, optionOf(o.name).value, "-%s of %s", o.name, c.name)
			assert.NotContains(t, []string{"help", "h", "version"}, o.name)
		}
		help, errs, code := apart(t, "hangpack help "+c.name)
		assert.Equal(t, exitDone, code)
		assert.Empty(t, errs)
		assert.True(t, strings.HasPrefix(help, "  "+c.example+"\n"), help)
		for _, o := range c.flags {
			assert.Contains(t, help, "  "+o.synopsis())
		}
	}
}

// TestFlagsAnywhere: a line means the same wherever its flags stand.
func TestFlagsAnywhere(t *testing.T) {
	copied(t)
	want, _, _ := apart(t, "hangpack check -json examples/club.yaml")
	assert.True(t, strings.HasPrefix(want, "{"))
	for _, line := range []string{
		"-json check examples/club.yaml", "--json check examples/club.yaml",
		"check --json examples/club.yaml", "check examples/club.yaml -json", "check examples/club.yaml --json",
		"-json -- check examples/club.yaml", "check -json -- examples/club.yaml",
	} {
		got, errs, code := apart(t, "hangpack "+line)
		assert.Equal(t, exitDone, code, "%s: %s", line, errs)
		assert.Equal(t, want, got, line)
	}
}

// TestEmptyWords: what a script's unset variable leaves is not taken for a name.
func TestEmptyWords(t *testing.T) {
	for says, args := range map[string][]string{
		"check got an empty name for JOB":                                                       {"check", ""},
		"changes got an empty name for OLD":                                                     {"changes", "", "b.yaml"},
		"changes got an empty name for NEW":                                                     {"changes", "a.yaml", ""},
		"pack: -o wants a value; write -o FILE":                                                 {"pack", "a.yaml", "-o", ""},
		"there is no command ; write one of pack, check, points, changes, new, schema, version": {""},
	} {
		var out, errs strings.Builder
		assert.Equal(t, exitWrong, run(args, &out, &errs))
		assert.Equal(t, "hangpack: "+says+"\n", errs.String())
		assert.Empty(t, out.String())
	}
}
