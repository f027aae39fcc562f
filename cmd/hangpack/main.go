// Hangpack turns a job file into the paper that a crew flies loudspeakers by.
//
// See README.md for what it reads and prints.
package main

import (
	"fmt"
	"io"
	"os"
	"os/signal"
	"runtime/debug"
	"syscall"
)

func main() {
	// A pack is soon done and its memory given back: collecting it on the way only
	// costs time.
	debug.SetGCPercent(400)
	// A reader that goes away is a failed write like any other: it is said, and
	// the exit code is ours.
	signal.Ignore(syscall.SIGPIPE)
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}

// run runs one command line.
func run(args []string, stdout, stderr io.Writer) int {
	return answer(args, newStream(stdout), newStream(stderr))
}

// answer runs one command line. Whatever could not be printed makes it a
// failure, since a figure that nobody saw was not given.
func answer(args []string, stdout, stderr *stream) int {
	code := obey(takeApart(args), stdout, stderr)
	switch {
	case stdout.err != nil:
		say(stderr, "cannot write standard output: %v", reason(stdout.err))
		return exitFailed
	case stderr.err != nil && code != exitWrong:
		return exitFailed
	}
	return code
}

// obey does what a command line asks for.
func obey(l *line, stdout, stderr *stream) int {
	switch {
	case l.help:
		fmt.Fprint(stdout, l.helpText())
		return exitDone
	case l.version:
		return version(&call{stdout: stdout})
	case l.empty():
		fmt.Fprint(stderr, shortUsage())
		return exitWrong
	}
	c, err := l.call()
	if err != nil {
		say(stderr, "%v", err)
		return exitWrong
	}
	c.stdout, c.stderr = stdout, stderr
	return c.command.run(c)
}
