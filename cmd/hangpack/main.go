// Hangpack turns a job file into the paper that a crew flies loudspeakers by.
//
// See README.md for what it reads and prints.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"

	"hangpack/paperwork"
	"hangpack/paperwork/job"
)

// Exit codes. Scripts depend on them: add, never renumber.
const (
	exitDone   = 0
	exitFailed = 1 // something could not be read or written
	exitWrong  = 2 // the command line or the job is wrong; nothing is written
	exitHeld   = 3 // done, but at least one stack is held
)

const usage = `hangpack turns a job file into the paper that a crew flies loudspeakers by.

  hangpack pack examples/concert.yaml

commands:
  pack JOB [-o FILE] [-q]   write the pack; by default beside the job, as .pdf
  check JOB [-json]         print the figures
  points JOB [-csv]         print what each point of the roof carries

exit codes: 0 done, 1 could not read or write, 2 command line or job wrong,
3 done but at least one stack is held
`

func main() {
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}

// run runs one command line.
func run(args []string, stdout, stderr io.Writer) int {
	if len(args) == 0 {
		fmt.Fprint(stderr, usage)
		return exitWrong
	}
	switch args[0] {
	case "pack":
		return pack(args[1:], stdout, stderr)
	case "check":
		return check(args[1:], stdout, stderr)
	case "points":
		return points(args[1:], stdout, stderr)
	case "help", "-h", "-help", "--help":
		fmt.Fprint(stdout, usage)
		return exitDone
	}
	fmt.Fprintf(stderr, "hangpack: there is no command %q; write pack, check or points\n", args[0])
	return exitWrong
}

// jobFile reads flags wherever they stand, and the one job file that a command
// takes. ok is false when the command ends here, with code.
func jobFile(fs *flag.FlagSet, args []string, stdout, stderr io.Writer) (file string, code int, ok bool) {
	fs.SetOutput(io.Discard)
	var files []string
	for {
		if err := fs.Parse(args); errors.Is(err, flag.ErrHelp) {
			fmt.Fprint(stdout, usage)
			return "", exitDone, false
		} else if err != nil {
			fmt.Fprintf(stderr, "hangpack %s: %v\n", fs.Name(), err)
			return "", exitWrong, false
		}
		if fs.NArg() == 0 {
			break
		}
		files, args = append(files, fs.Arg(0)), fs.Args()[1:]
	}
	if len(files) != 1 {
		fmt.Fprintf(stderr, "hangpack %s: wants one job file, got %d; write hangpack %s JOB.yaml\n", fs.Name(), len(files), fs.Name())
		return "", exitWrong, false
	}
	return files[0], exitDone, true
}

// worked reads the command line of a command that takes one job, and works the
// job out. ok is false when the command ends here, with code.
func worked(fs *flag.FlagSet, args []string, stdout, stderr io.Writer) (file string, j *paperwork.Job, code int, ok bool) {
	file, code, ok = jobFile(fs, args, stdout, stderr)
	if !ok {
		return "", nil, code, false
	}
	j, code, ok = open(file, stderr)
	return file, j, code, ok
}

// open reads and works out a job. ok is false when that ends the command.
func open(file string, stderr io.Writer) (j *paperwork.Job, code int, ok bool) {
	f, err := os.Open(file)
	if err != nil {
		fmt.Fprintf(stderr, "hangpack: %v\n", err)
		return nil, exitFailed, false
	}
	defer f.Close()
	if info, err := f.Stat(); err != nil || info.IsDir() {
		fmt.Fprintf(stderr, "hangpack: %s is a folder; name a job file\n", file)
		return nil, exitFailed, false
	}
	j, complaints, err := paperwork.Open(file, f, opened)
	if err != nil {
		fmt.Fprintf(stderr, "hangpack: %s: %v\n", file, err)
		return nil, exitFailed, false
	}
	if len(complaints) > 0 {
		complain(stderr, complaints)
		return nil, exitWrong, false
	}
	return j, exitDone, true
}

// opened opens a gear file.
func opened(path string) (io.ReadCloser, error) {
	f, err := os.Open(path)
	if err != nil {
		return nil, errors.Unwrap(err)
	}
	return f, nil
}

// complain prints complaints, one a line, and how many there are.
func complain(stderr io.Writer, complaints job.Complaints) {
	for _, c := range complaints {
		fmt.Fprintln(stderr, c.Error())
	}
	if n := len(complaints); n == 1 {
		fmt.Fprintln(stderr, "1 complaint; nothing written")
	} else {
		fmt.Fprintf(stderr, "%d complaints; nothing written\n", n)
	}
}

// verdict is the exit code of a job that was worked out.
func verdict(j *paperwork.Job) int {
	if j.Held() {
		return exitHeld
	}
	return exitDone
}
