package main

import (
	"strings"

	"hangpack/paperwork"
)

const (
	aJob     = "a job file"
	exitsJob = `0 done, nothing held
1 something could not be read or written
2 the command line or the job is wrong; nothing is written
3 done, but at least one stack is held`
	exitsPlain = `0 done
1 something could not be written
2 the command line is wrong`
)

var commands = []command{{
	name: "pack", operand: "JOB...", about: aJob,
	flags: []option{
		{"o", "FILE", "write it to FILE, by default beside JOB as .pdf; - is standard output"},
		{"only", "KINDS", "these kinds of sheets alone: " + strings.Join(paperwork.Kinds(), ",")},
		{"stack", "IDS", "the sheets of these stacks alone"},
		{"q", "", "do not say what was written"},
	},
	means:   "write the pack and say what it wrote",
	example: "hangpack pack examples/concert.yaml -o concert.pdf",
	notes: `Chosen sheets keep the page numbers and codes of the whole pack, and stand beside it
as JOB-pins-SL.pdf unless -o says otherwise. A held stack's one sheet is written where
any sheet of that stack is wanted. Where job.url has {stack}, the whole pack also writes a PDF of each stack beside it, named by its id: SL.pdf; all of them are replaced, or none.
No job and no gear file is written over, nor a PDF of hangpack's but the same job's own: title,
venue and date tell which job it is, whatever its revision. Over a pack of the same
revision that says something else, standard error says so: raise the revision.

Several jobs, without -o, are packed side by side, and each fails alone. What is said
of them stands in their order, with a line for each job and each held stack, then how
many were packed. Jobs that would write the same file, or over one that another job is
read from, are not packed. The exit code is the worst of them: 1, then 2, then 3.`,
	exits: exitsJob,
	run:   pack,
}, {
	name: "check", operand: "JOB", about: aJob,
	flags:   []option{{"json", "", "print them, or the complaints of a job at fault, as JSON"}},
	means:   "print the figures",
	example: "hangpack check examples/concert.yaml",
	exits:   exitsJob,
	run:     check,
}, {
	name: "points", operand: "JOB", about: aJob,
	flags:   []option{{"csv", "", "print them as comma-separated values"}},
	means:   "print what each point of the roof carries",
	example: "hangpack points examples/concert.yaml",
	exits:   exitsJob,
	run:     points,
}, {
	name: "changes", operand: "OLD NEW", about: "two revisions of a job",
	flags: []option{
		{"o", "FILE", "also write them as a sheet, a PDF, to FILE"},
		{"json", "", "print them, or the complaints of a job at fault, as JSON"},
	},
	means:   "print what moves from one revision to the next",
	example: "hangpack changes examples/concert.yaml examples/concert-c.yaml",
	notes: `Holes of a stack that is held in either revision are not listed. The sheet is written over
no job or gear file, nor over any PDF of hangpack's but the sheet of changes of the same job.`,
	exits: `0 done, whether anything changes or not
1 something could not be read or written
2 the command line or a job is wrong; nothing is written`,
	run: changesOf,
}, {
	name: "new", operand: "FILE", about: "the job to write; what is there already is never written over",
	flags:   []option{{"q", "", "do not say what was written"}},
	means:   "write a job to start from, with comments, that packs as it is",
	example: "hangpack new show.yaml",
	exits:   exitsPlain,
	run:     newJob,
}, {
	name:    "schema",
	means:   "print the keys of a job as a JSON Schema, for your editor",
	example: "hangpack schema",
	exits:   exitsPlain,
	run:     schema,
}, {
	name:    "version",
	means:   "print the version",
	example: "hangpack version",
	exits:   exitsPlain,
	run:     version,
}}

// names are the names of all commands.
func names() (all []string) {
	for _, c := range commands {
		all = append(all, c.name)
	}
	return all
}

// commandOf returns the command of a name, or nil.
func commandOf(name string) *command {
	for i := range commands {
		if commands[i].name == name {
			return &commands[i]
		}
	}
	return nil
}

// optionOf returns the flag of a name, whichever command it belongs to, or
// nil. It has the same form in every command that has it.
func optionOf(name string) *option {
	for i := range commands {
		if o := commands[i].option(name); o != nil {
			return o
		}
	}
	return nil
}
