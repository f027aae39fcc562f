package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// asNobody has a process run without the rights of root, whom permission bits do not
// bind.
func asNobody(cmd *exec.Cmd) *exec.Cmd {
	if os.Getuid() == 0 {
		const nobody = 65534
		cmd.Path = "/proc/self/exe" // the folder that the test binary is in is root's
		cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody}}
	}
	return cmd
}

// TestSeveralUnwritable: a folder that may not be written, a disk that is full, a pack
// that is kept and one that is a folder fail their own jobs; the others are packed and
// nothing is half written.
func TestSeveralUnwritable(t *testing.T) {
	copied(t)
	require.NoError(t, os.Chmod(".", 0o777))
	edited(t, "examples/club.yaml", "locked/a.yaml")
	for _, name := range []string{"b.yaml", "full.yaml", "kept.yaml", "folder.yaml", "secret.yaml", "z.yaml"} {
		edited(t, "examples/club.yaml", name)
	}
	edited(t, "examples/concert.yaml", "half.yaml", "lantern-quay.pdf", "{stack}.pdf")
	require.NoError(t, os.Chmod("locked", 0o555))
	t.Cleanup(func() { os.Chmod("locked", 0o777) })
	require.NoError(t, os.Symlink("/dev/full", "full.pdf"))
	require.NoError(t, os.WriteFile("kept.pdf", []byte("the signed pack"), 0o444))
	require.NoError(t, os.WriteFile("SR.pdf", []byte("the signed pack"), 0o444))
	require.NoError(t, os.Mkdir("folder.pdf", 0o777))
	require.NoError(t, os.Chmod("secret.yaml", 0o000))
	cmd := asNobody(child("main", "pack", "locked/a.yaml", "b.yaml", "full.yaml", "kept.yaml", "half.yaml", "folder.yaml", "secret.yaml", "z.yaml"))
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	assert.Error(t, cmd.Run())
	assert.Equal(t, exitFailed, cmd.ProcessState.ExitCode(), "%v", cmd.ProcessState)
	assert.Equal(t, []string{
		"hangpack: cannot write locked/a.pdf: permission denied",
		"hangpack: cannot write full.pdf: no space left on device",
		"hangpack: cannot write kept.pdf: permission denied",
		"hangpack: cannot write SR.pdf: permission denied; no file is changed",
		"hangpack: cannot write folder.pdf: it is a folder; name a file in it",
		"hangpack: cannot read secret.yaml: permission denied",
	}, lines(errs.String()))
	said := lines(out.String())
	require.Len(t, said, 4, out.String())
	for i, start := range []string{"wrote b.pdf, ", "wrote z.pdf, "} {
		assert.True(t, strings.HasPrefix(said[i], start), said[i])
	}
	assert.Equal(t, "not packed: locked/a.yaml, full.yaml, kept.yaml, half.yaml, folder.yaml, secret.yaml", said[2])
	assert.Equal(t, "packed 2 of 8 jobs, … pages; 6 not packed", uncounted(said[3]))
	found := pdfs(t)
	for _, kept := range []string{"kept.pdf", "SR.pdf"} {
		assert.Equal(t, "the signed pack", found[kept])
		delete(found, kept)
	}
	assert.Len(t, found, 2)
	for name, text := range found {
		assert.True(t, whole(text), name)
	}
}

// whole reports whether a PDF is there from its start to its end.
func whole(text string) bool {
	return strings.HasPrefix(text, "%PDF-") && strings.HasSuffix(text, "%%EOF\n")
}

// TestSeveralInterrupted: a signal in the middle of many jobs leaves whole packs and no
// drafts, and hangpack dies of it.
func TestSeveralInterrupted(t *testing.T) {
	copied(t)
	args := []string{"pack"}
	for i := range 100 {
		args = append(args, fmt.Sprintf("job%d.yaml", i))
		edited(t, "examples/concert.yaml", args[i+1])
	}
	for _, s := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM} {
		cmd := child("main", args...)
		stdout, err := cmd.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, cmd.Start())
		_, err = stdout.Read(make([]byte, 1)) // the first job is packed
		require.NoError(t, err)
		require.NoError(t, cmd.Process.Signal(s))
		assert.Error(t, cmd.Wait())
		status := cmd.ProcessState.Sys().(syscall.WaitStatus)
		assert.True(t, status.Signaled() && status.Signal() == s, "%v", cmd.ProcessState)
		packs := pdfs(t)
		assert.NotEmpty(t, packs)
		for name, text := range packs {
			assert.True(t, whole(text), name)
		}
	}
	drafts, err := os.ReadDir(".")
	require.NoError(t, err)
	assert.Len(t, drafts, len(args)-1+2, "the jobs, examples and testdata")
}

// TestSeveralOntoStandardOutput: what is said does not get into a pack that standard
// output goes to.
func TestSeveralOntoStandardOutput(t *testing.T) {
	copied(t)
	f, err := os.Create("examples/club.pdf")
	require.NoError(t, err)
	cmd := child("main", "pack", "examples/club.yaml", "examples/concert.yaml")
	var errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = f, &errs
	assert.Error(t, cmd.Run())
	require.NoError(t, f.Close())
	assert.Equal(t, exitWrong, cmd.ProcessState.ExitCode())
	assert.Equal(t, "hangpack: pack: examples/club.yaml: its pack would go to the file that standard output goes to; send that elsewhere\n", errs.String())
	packs := pdfs(t)
	assert.Len(t, packs, 2)
	assert.True(t, whole(packs["examples/concert.pdf"]))
	assert.True(t, strings.HasPrefix(packs["examples/club.pdf"], "wrote examples/concert.pdf, "))
}

// TestProgressOnTerminal: the line comes while a job takes long, here because its pack
// is a pipe that nobody reads yet, and is gone at the end. A run that is quiet shows
// none.
func TestProgressOnTerminal(t *testing.T) {
	copied(t)
	edited(t, "examples/club.yaml", "a.yaml")
	edited(t, "examples/club.yaml", "b.yaml")
	require.NoError(t, syscall.Mkfifo("b.pdf", 0o644))
	master, terminal := pty(t)
	cmd := child("main", "pack", "a.yaml", "b.yaml")
	cmd.Env = append(cmd.Env, "TERM=xterm")
	cmd.Stdout, cmd.Stderr = terminal, terminal
	require.NoError(t, cmd.Start())
	t.Cleanup(func() { cmd.Process.Kill() })
	var text []byte
	until := func(want string) {
		require.NoError(t, master.SetReadDeadline(time.Now().Add(time.Minute)))
		for !bytes.Contains(text, []byte(want)) {
			piece := make([]byte, 1<<12)
			n, err := master.Read(piece)
			require.NoError(t, err, "%q", text)
			text = append(text, piece[:n]...)
		}
	}
	until("packing 2 of 2: b.yaml")
	pack, err := os.ReadFile("b.pdf")
	require.NoError(t, err)
	assert.True(t, whole(string(pack)))
	until(" pages\r\n")
	assert.NoError(t, cmd.Wait())
	shown := screen(strings.ReplaceAll(string(text), "\r\n", "\n"))
	require.Len(t, shown, 4, "%q", text)
	assert.True(t, strings.HasPrefix(shown[0], "wrote a.pdf, "), shown)
	assert.True(t, strings.HasPrefix(shown[1], "wrote b.pdf, "), shown)
	assert.Equal(t, []string{"packed 2 of 2 jobs, … pages", ""}, []string{uncounted(shown[2]), shown[3]})
}
