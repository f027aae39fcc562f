package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"
)

// asChild names what the test binary does in place of running tests: 'main' is
// hangpack itself, 'half' stops in the middle of writing files, 'whole' in the middle of
// the last of those that are written together.
const asChild = "HANGPACK_TEST_CHILD"

func TestMain(m *testing.M) {
	switch os.Getenv(asChild) {
	case "main":
		main()
	case "half":
		os.Exit(half(os.Args[1:]))
	case "whole":
		os.Exit(allTogether(os.Args[1:]))
	}
	os.Exit(m.Run())
}

// half replaces files by 'new one', all at once, and stops after 'new' until its
// standard input ends.
func half(outs []string) int {
	var begun, done sync.WaitGroup
	var failed atomic.Bool
	begun.Add(len(outs))
	for _, out := range outs {
		done.Go(func() {
			err := replace(out, func(w io.Writer) error {
				io.WriteString(w, "new")
				begun.Done()
				io.Copy(io.Discard, os.Stdin)
				_, err := io.WriteString(w, " one")
				return err
			})
			failed.CompareAndSwap(false, err != nil)
		})
	}
	begun.Wait()
	fmt.Println("half")
	done.Wait()
	if failed.Load() {
		return exitFailed
	}
	return exitDone
}

// allTogether replaces files by 'new one', together, and stops in the last of them until
// its standard input ends.
func allTogether(outs []string) int {
	var files []fresh
	for i, out := range outs {
		files = append(files, fresh{out, func(w io.Writer) error {
			if i == len(outs)-1 {
				fmt.Println("half")
				io.Copy(io.Discard, os.Stdin)
			}
			_, err := io.WriteString(w, "new one")
			return err
		}})
	}
	if _, err := together(files...); err != nil {
		return exitFailed
	}
	return exitDone
}

// child is a process of the test binary.
func child(does string, args ...string) *exec.Cmd {
	cmd := exec.Command(os.Args[0], args...)
	cmd.Env = append(os.Environ(), asChild+"="+does)
	return cmd
}

// halted starts a process, waits until it has written half, and returns what
// lets it go on.
func halted(t *testing.T, cmd *exec.Cmd) (goOn io.Closer) {
	t.Helper()
	stdin, err := cmd.StdinPipe()
	require.NoError(t, err)
	stdout, err := cmd.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, cmd.Start())
	t.Cleanup(func() { cmd.Process.Kill() })
	line, err := bufio.NewReader(stdout).ReadString('\n')
	require.NoError(t, err)
	require.Equal(t, "half\n", line)
	return stdin
}
