package main

import (
	"bytes"
	"fmt"
	"os"
	"strings"
	"syscall"
	"testing"
	"time"
	"unsafe"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pty returns the two ends of a terminal: what is written to the second is
// read from the first.
func pty(t *testing.T) (screen, terminal *os.File) {
	t.Helper()
	screen, err := os.OpenFile("/dev/ptmx", os.O_RDWR|syscall.O_NOCTTY, 0)
	require.NoError(t, err)
	t.Cleanup(func() { screen.Close() })
	var number, locked uint32
	for request, at := range map[uintptr]*uint32{syscall.TIOCGPTN: &number, syscall.TIOCSPTLCK: &locked} {
		_, _, errno := syscall.Syscall(syscall.SYS_IOCTL, screen.Fd(), request, uintptr(unsafe.Pointer(at)))
		require.Zero(t, errno)
	}
	terminal, err = os.OpenFile(fmt.Sprintf("/dev/pts/%d", number), os.O_RDWR|syscall.O_NOCTTY, 0)
	require.NoError(t, err)
	t.Cleanup(func() { terminal.Close() })
	return screen, terminal
}

// TestTerminalGetsNoPDF: no way of naming a terminal sends a PDF to it.
func TestTerminalGetsNoPDF(t *testing.T) {
	copied(t)
	_, terminal := pty(t)
	for _, out := range []string{"-", "/proc/self/fd/1", terminal.Name()} {
		cmd := child("main", "pack", "examples/club.yaml", "-o", out)
		var errs bytes.Buffer
		cmd.Stdout, cmd.Stderr = terminal, &errs
		assert.Error(t, cmd.Run())
		assert.Equal(t, exitWrong, cmd.ProcessState.ExitCode(), out)
		assert.Equal(t, "hangpack: pack: a PDF is not for a terminal; name a file with -o, or send it on with > or |\n", errs.String(), out)
	}
	// Nor where the terminal is not the standard output.
	cmd := child("main", "pack", "examples/club.yaml", "-o", terminal.Name())
	assert.Error(t, cmd.Run())
	assert.Equal(t, exitWrong, cmd.ProcessState.ExitCode())
}

// TestTerminalGetsExcerpts: a terminal shows the line and the caret, which a
// pipe does not.
func TestTerminalGetsExcerpts(t *testing.T) {
	copied(t)
	screen, terminal := pty(t)
	cmd := child("main", "check", "testdata/slips.yaml")
	cmd.Stderr = terminal
	assert.Error(t, cmd.Run())
	const want = "testdata/slips.yaml:7:13: 32.5 has no unit; write 32.5 kg or 32.5 lb\n          mass: 32.5\n                ^\n"
	require.NoError(t, screen.SetReadDeadline(time.Now().Add(time.Minute)))
	for shown := ""; !strings.Contains(strings.ReplaceAll(shown, "\r\n", "\n"), want); { // it comes in pieces
		piece := make([]byte, 1<<12)
		n, err := screen.Read(piece)
		require.NoError(t, err, "%q", shown)
		shown += string(piece[:n])
	}
}
