package main

// A command is one thing that hangpack does. To add one, write its run in a
// file of its own and its entry in commands.
type command struct {
	name    string
	operand string // what stands after the name, as in JOB, JOB... or OLD NEW; "" where nothing does
	about   string // what the operand is
	flags   []option
	means   string // one line
	example string
	notes   string // what else is to be known of it; "" where nothing
	exits   string
	run     func(*call) int
}

// An option is a flag of a command.
type option struct {
	name  string
	value string // what stands after it, as in FILE; "" of a flag that is given or not
	means string
}

// A call is a command with what its line gives, and where it prints.
type call struct {
	command        *command
	operands       []string          // as many as the command wants, or takes
	flags          map[string]string // those given, with their values
	stdout, stderr *stream
}

// operand is the operand of a command that wants one.
func (c *call) operand() string { return c.operands[0] }

// has reports whether a flag is given.
func (c *call) has(flag string) bool {
	_, given := c.flags[flag]
	return given
}

// option returns the flag of a name, or nil where the command has none.
func (c *command) option(name string) *option {
	for i := range c.flags {
		if c.flags[i].name == name {
			return &c.flags[i]
		}
	}
	return nil
}

// flagNames are the names of the command's flags.
func (c *command) flagNames() (all []string) {
	for _, o := range c.flags {
		all = append(all, o.name)
	}
	return all
}
