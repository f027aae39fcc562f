package main

import (
	"fmt"
	"strings"
)

// Help opens with an example, since that is what most people look for.

// helpText is the help of the command that a line names, or of all.
func (l *line) helpText() string {
	for _, word := range l.words {
		if c := commandOf(word); c != nil {
			return c.help()
		}
	}
	return help()
}

func help() string {
	var b strings.Builder
	fmt.Fprintf(&b, "  %s\n\n", commands[0].example)
	b.WriteString("turns a job file into the paper that a crew flies loudspeakers by.\n\ncommands:\n")
	width := 0
	for _, c := range commands {
		width = max(width, len(c.use()))
	}
	for _, c := range commands {
		fmt.Fprintf(&b, "  %-*s   %s\n", width, c.use(), c.means)
	}
	b.WriteString("\nFlags may stand anywhere; -- ends them.\nhangpack help COMMAND says more of one.\n\n")
	b.WriteString(exitCodes(exitsJob))
	return b.String()
}

// help is the help of one command.
func (c *command) help() string {
	var b strings.Builder
	fmt.Fprintf(&b, "  %s\n\nhangpack %s: %s.\n\n", c.example, c.synopsis(), c.means)
	width, rows := 8, c.parts()
	for _, r := range rows {
		width = max(width, len(r[0]))
	}
	for _, r := range rows {
		fmt.Fprintf(&b, "  %-*s  %s\n", width, r[0], r[1])
	}
	b.WriteString("\n")
	if c.notes != "" {
		b.WriteString(c.notes + "\n\n")
	}
	b.WriteString(exitCodes(c.exits))
	return b.String()
}

// parts are what may stand after a command, each with what it means.
func (c *command) parts() (rows [][2]string) {
	if c.operand != "" {
		rows = append(rows, [2]string{c.operand, c.about})
	}
	for _, o := range c.flags {
		rows = append(rows, [2]string{o.synopsis(), o.means})
	}
	return append(rows, [2]string{"-help", "print this"})
}

func exitCodes(lines string) string {
	return "exit codes:\n  " + strings.ReplaceAll(lines, "\n", "\n  ") + "\n"
}

// use is a command with what stands after it: pack JOB.
func (c *command) use() string { return strings.TrimSpace(c.name + " " + c.operand) }

// synopsis is how a command is written: pack JOB [-o FILE] [-q].
func (c *command) synopsis() string {
	s := c.use()
	for _, o := range c.flags {
		s += " [" + o.synopsis() + "]"
	}
	return s
}

func (o option) synopsis() string {
	if o.value == "" {
		return "-" + o.name
	}
	return "-" + o.name + " " + o.value
}

// shortUsage is for who writes nothing after hangpack.
func shortUsage() string {
	return "  " + commands[0].example + "\n\ncommands: " + strings.Join(names(), ", ") + "\nhangpack help says more\n"
}
