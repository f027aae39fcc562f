package main

import (
	"cmp"
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"

	"hangpack/paperwork/job"
)

// several stands after the name of an operand that there may be several of.
const several = "..."

// A line is a command line taken apart. Flags may stand anywhere in it, also
// before the command.
type line struct {
	words         []string // the command and its operands
	flags         map[string]string
	given         []string // names of all flags given, known or not, in their order
	wrong         error    // the first thing wrong with the value of a flag
	help, version bool
}

// takeApart tells flags from words. Package flag is not used: it stops at the
// first word, and speaks of flags in words of its own.
func takeApart(args []string) *line {
	l := &line{flags: map[string]string{}}
	for len(args) > 0 {
		word := args[0]
		args = args[1:]
		switch {
		case word == "--":
			l.words = append(l.words, args...)
			return l
		case word == "help":
			l.help = true
		case isFlag(word):
			args = l.flag(word, args)
		default:
			l.words = append(l.words, word)
		}
	}
	return l
}

// isFlag tells a flag from a word; - alone is a word.
func isFlag(word string) bool { return len(word) > 1 && word[0] == '-' }

// flag takes one flag, with a value from the arguments after it where it wants
// one, and returns those that are left.
func (l *line) flag(word string, after []string) []string {
	name, value, joined := strings.Cut(strings.TrimPrefix(word[1:], "-"), "=")
	switch name {
	case "help", "h":
		l.help = true
		return after
	case "version":
		l.version = true
		return after
	}
	o := optionOf(name)
	if o != nil && o.value != "" && !joined && len(after) > 0 && !isFlag(after[0]) {
		value, after = after[0], after[1:]
	}
	l.wrong = cmp.Or(l.wrong, l.wrongly(name, o, value, joined))
	l.given = append(l.given, name)
	l.flags[name] = value
	return after
}

// wrongly says what is wrong with how a flag is given, if anything is. o is nil
// where there is no such flag, which is for its command to say.
func (l *line) wrongly(name string, o *option, value string, joined bool) error {
	switch {
	case o == nil:
	case slices.Contains(l.given, name):
		return fmt.Errorf("-%s is given twice", name)
	case o.value == "" && joined:
		return fmt.Errorf("-%s takes no value", name)
	case o.value != "" && value == "":
		return fmt.Errorf("-%s wants a value; write -%s %s", name, name, o.value)
	}
	return nil
}

func (l *line) empty() bool { return len(l.words)+len(l.given) == 0 }

// call returns the command that the line asks for, or what is wrong with it.
func (l *line) call() (*call, error) {
	if len(l.words) == 0 {
		return nil, fmt.Errorf("no command is given; write one of %s", strings.Join(names(), ", "))
	}
	c := commandOf(l.words[0])
	if c == nil {
		return nil, noCommand(l.words[0])
	}
	for _, name := range l.given {
		if err := c.belongs(name); err != nil {
			return nil, err
		}
	}
	if l.wrong != nil {
		return nil, fmt.Errorf("%s: %w", c.name, l.wrong)
	}
	operands, err := c.operands(l.words[1:])
	return &call{command: c, operands: operands, flags: l.flags}, err
}

// noCommand says what was perhaps meant by a word that is no command.
func noCommand(word string) error {
	info, err := os.Stat(word)
	if err == nil && !info.IsDir() || err != nil && strings.ContainsAny(word, `./\`) {
		return fmt.Errorf("%s is no command; write hangpack pack %s", word, word)
	}
	if meant := job.Near(word, names()); meant != "" {
		return fmt.Errorf("there is no command %s; did you mean %s?", word, meant)
	}
	return fmt.Errorf("there is no command %s; write one of %s", word, strings.Join(names(), ", "))
}

// belongs says what is wrong with a flag that is not the command's.
func (c *command) belongs(name string) error {
	if c.option(name) != nil {
		return nil
	}
	takes := c.name + " takes no flags"
	if len(c.flags) > 0 {
		takes = c.name + " takes -" + strings.Join(c.flagNames(), ", -")
	}
	if optionOf(name) != nil {
		return fmt.Errorf("-%s does not belong to %s; %s", name, c.name, takes)
	}
	if meant := job.Near(name, append(c.flagNames(), "help", "version")); meant != "" {
		return fmt.Errorf("there is no flag -%s; did you mean -%s?", name, meant)
	}
	return fmt.Errorf("there is no flag -%s; %s", name, takes)
}

// operands returns what stands after a command, as many as it wants: of the last one
// as many as there are, where its name ends in dots.
func (c *command) operands(words []string) ([]string, error) {
	want := strings.Fields(strings.TrimSuffix(c.operand, several))
	many := strings.HasSuffix(c.operand, several) && len(words) > len(want)
	switch {
	case len(want) == 0 && len(words) > 0:
		return nil, fmt.Errorf("%s takes nothing after it; write hangpack %s", c.name, c.name)
	case len(words) != len(want) && !many:
		return nil, fmt.Errorf("%s wants %s, and got %d; write hangpack %s", c.name, c.wants(want), len(words), c.use())
	}
	if i := slices.Index(words, ""); i >= 0 {
		return nil, errors.New(c.name + " got an empty name for " + want[min(i, len(want)-1)])
	}
	return words, nil
}

// wants says how many operands a command wants, and what they are.
func (c *command) wants(names []string) string {
	switch {
	case strings.HasSuffix(c.operand, several):
		return fmt.Sprintf("one %s or more, each %s", names[0], c.about)
	case len(names) == 1:
		return fmt.Sprintf("one %s, %s", names[0], c.about)
	}
	return strings.Join(names, " and ") + ", " + c.about
}
