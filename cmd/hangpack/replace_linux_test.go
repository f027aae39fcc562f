package main

import (
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestKilled: a kill that nobody can catch leaves the old pack whole, or none.
func TestKilled(t *testing.T) {
	for _, old := range []string{"", "the old pack"} {
		t.Chdir(t.TempDir())
		if old != "" {
			require.NoError(t, os.WriteFile("x.pdf", []byte(old), 0o644))
		}
		cmd := child("half", "x.pdf")
		halted(t, cmd)
		require.NoError(t, cmd.Process.Kill())
		assert.Error(t, cmd.Wait())
		text, err := os.ReadFile("x.pdf")
		assert.Equal(t, old, string(text))
		assert.Equal(t, old == "", os.IsNotExist(err))
	}
}

// TestSignalled: a signal leaves no draft either, and hangpack dies of it as
// its parent expects.
func TestSignalled(t *testing.T) {
	for _, s := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		for _, old := range []map[string]string{{}, {"x.pdf": "the old pack"}} {
			t.Run(fmt.Sprint(s, len(old)), func(t *testing.T) {
				t.Chdir(t.TempDir())
				for name, text := range old {
					require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
				}
				cmd := child("half", "x.pdf")
				halted(t, cmd)
				entries, err := os.ReadDir(".")
				require.NoError(t, err)
				require.Len(t, entries, len(old)+1, "the draft is there")
				require.NoError(t, cmd.Process.Signal(s))
				assert.Error(t, cmd.Wait())
				status := cmd.ProcessState.Sys().(syscall.WaitStatus)
				assert.True(t, status.Signaled() && status.Signal() == s, "%v", cmd.ProcessState)
				holds(t, ".", old)
			})
		}
	}
}

// TestSignalledAmongSeveral: a signal leaves no draft of packs that are written
// side by side, whichever of them hears of it first.
func TestSignalledAmongSeveral(t *testing.T) {
	var outs []string
	old := map[string]string{}
	for i := range 12 {
		outs = append(outs, fmt.Sprintf("%d.pdf", i))
		if i%2 == 0 {
			old[outs[i]] = "the old pack"
		}
	}
	for range 5 {
		t.Chdir(t.TempDir())
		for name, text := range old {
			require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
		}
		cmd := child("half", outs...)
		halted(t, cmd)
		entries, err := os.ReadDir(".")
		require.NoError(t, err)
		require.Len(t, entries, len(old)+len(outs), "the drafts are there")
		require.NoError(t, cmd.Process.Signal(syscall.SIGINT))
		assert.Error(t, cmd.Wait())
		status := cmd.ProcessState.Sys().(syscall.WaitStatus)
		assert.True(t, status.Signaled() && status.Signal() == syscall.SIGINT, "%v", cmd.ProcessState)
		holds(t, ".", old)
	}
}

// TestSignalIgnored: what the shell had ignored stays so.
func TestSignalIgnored(t *testing.T) {
	t.Chdir(t.TempDir())
	cmd := exec.Command("sh", "-c", `trap "" INT; exec "$0" "$1"`, os.Args[0], "x.pdf")
	cmd.Env = append(os.Environ(), asChild+"=half")
	goOn := halted(t, cmd)
	require.NoError(t, cmd.Process.Signal(syscall.SIGINT))
	time.Sleep(50 * time.Millisecond) // for a wrong handler to act
	require.NoError(t, goOn.Close())
	assert.NoError(t, cmd.Wait())
	holds(t, ".", map[string]string{"x.pdf": "new one"})
}

// TestModes: an old file keeps its mode; a new one gets what any program's gets.
func TestModes(t *testing.T) {
	for _, mask := range []int{0o022, 0o027, 0o002} {
		t.Chdir(t.TempDir())
		before := syscall.Umask(mask)
		t.Cleanup(func() { syscall.Umask(before) })
		require.NoError(t, replace("new.pdf", filled("new")))
		info, err := os.Stat("new.pdf")
		require.NoError(t, err)
		assert.Equal(t, os.FileMode(0o666&^mask), info.Mode())
		for _, mode := range []os.FileMode{0o600, 0o640, 0o664, 0o755} {
			require.NoError(t, os.Chmod("new.pdf", mode))
			require.NoError(t, replace("new.pdf", filled("newer")))
			info, err := os.Stat("new.pdf")
			require.NoError(t, err)
			assert.Equal(t, mode, info.Mode())
		}
	}
}

// ordinary runs f with the rights of a user who is not root: permission bits
// do not bind root. Only the thread's rights are changed, and it ends with f.
func ordinary(f func()) {
	done := make(chan struct{})
	go func() {
		defer close(done)
		runtime.LockOSThread()
		if os.Getuid() == 0 {
			const nobody = 65534
			syscall.Setfsuid(nobody)
		}
		f()
	}()
	<-done
}

// TestPermissions: what may not be read or written is said, and stays.
func TestPermissions(t *testing.T) {
	copied(t)
	require.NoError(t, os.Chmod(".", 0o777))
	require.NoError(t, os.Mkdir("show", 0o777))
	require.NoError(t, os.WriteFile("show/x.pdf", []byte("the old pack"), 0o666))
	require.NoError(t, os.Chmod("show/x.pdf", 0o666))
	require.NoError(t, os.Chmod("show", 0o555))
	t.Cleanup(func() { os.Chmod("show", 0o777) })
	require.NoError(t, os.WriteFile("kept.pdf", []byte("the signed pack"), 0o444))
	require.NoError(t, os.WriteFile("secret.yaml", nil, 0o000))
	require.NoError(t, os.WriteFile("blind.pdf", nil, 0o222))
	require.NoError(t, os.Chmod("blind.pdf", 0o222))
	for line, says := range map[string]string{
		"pack examples/club.yaml -o show/x.pdf":   "cannot write show/x.pdf: permission denied",
		"pack examples/club.yaml -o show/new.pdf": "cannot write show/new.pdf: permission denied",
		"pack examples/club.yaml -o kept.pdf":     "cannot write kept.pdf: permission denied",
		"check secret.yaml":                       "cannot read secret.yaml: permission denied",
	} {
		ordinary(func() {
			out, errs, code := apart(t, "hangpack "+line)
			assert.Equal(t, exitFailed, code)
			assert.Empty(t, out)
			assert.Equal(t, "hangpack: "+says+"\n", errs)
		})
	}
	ordinary(func() {
		_, errs, code := apart(t, "hangpack pack examples/club.yaml -o blind.pdf")
		assert.Equal(t, exitWrong, code)
		assert.Equal(t, "hangpack: pack: what blind.pdf is cannot be read (permission denied); it is not written over: move it away, or name another file with -o\n", errs)
	})
	holds(t, "show", map[string]string{"x.pdf": "the old pack"})
	text, err := os.ReadFile("kept.pdf")
	require.NoError(t, err)
	assert.Equal(t, "the signed pack", string(text))
	ordinary(func() { // and what may be written is
		_, errs, code := apart(t, "hangpack pack examples/club.yaml -o mine.pdf")
		assert.Equal(t, exitDone, code, errs)
	})
	assert.FileExists(t, "mine.pdf")
}

// TestDevices: what is no file stays what it is. Renaming over a device would
// take it from the whole machine, so this is tried as a user who may not do that.
func TestDevices(t *testing.T) {
	copied(t)
	for out, says := range map[string]string{"/dev/null": "", "/dev/full": "hangpack: cannot write /dev/full: no space left on device\n"} {
		before, err := os.Stat(out)
		require.NoError(t, err)
		require.NotZero(t, before.Mode()&os.ModeCharDevice, "%s is not what it should be on this machine", out)
		ordinary(func() {
			_, errs, code := apart(t, "hangpack pack examples/club.yaml -o "+out)
			assert.Equal(t, says, errs)
			assert.Equal(t, says == "", code == exitDone)
		})
		after, err := os.Stat(out)
		require.NoError(t, err)
		assert.True(t, os.SameFile(before, after), "%s was replaced", out)
		assert.Equal(t, before.Mode(), after.Mode())
	}
}

// TestNoSpaceForDraft: nothing can be made in /proc, not even by root.
func TestNoSpaceForDraft(t *testing.T) {
	copied(t)
	_, errs, code := apart(t, "hangpack pack examples/club.yaml -o /proc/x.pdf")
	assert.Equal(t, exitFailed, code)
	assert.True(t, strings.HasPrefix(errs, "hangpack: cannot write /proc/x.pdf: "), errs)
	assert.NotContains(t, errs, ".hangpack-")
}

// TestPipes: a pipe is written into and stays one; as a job it is refused, and
// not waited for.
func TestPipes(t *testing.T) {
	copied(t)
	require.NoError(t, syscall.Mkfifo("pipe", 0o644))
	done := make(chan struct{})
	go func() {
		defer close(done)
		for _, file := range []string{"pipe", "/dev/zero"} {
			_, errs, code := apart(t, "hangpack check "+file)
			assert.Equal(t, exitFailed, code)
			assert.Equal(t, "hangpack: cannot read "+file+": it is no regular file\n", errs)
		}
	}()
	select {
	case <-done:
	case <-time.After(time.Minute):
		t.Fatal("waits for a pipe")
	}
	got := make(chan string)
	go func() {
		text, _ := os.ReadFile("pipe")
		got <- string(text)
	}()
	out, errs, code := apart(t, "hangpack pack examples/club.yaml -o pipe")
	assert.Equal(t, exitDone, code, errs)
	assert.Contains(t, out, "wrote pipe, ")
	text := <-got
	assert.True(t, strings.HasPrefix(text, "%PDF-") && strings.HasSuffix(text, "%%EOF\n"))
	info, err := os.Lstat("pipe")
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&os.ModeNamedPipe)
}

// TestReadFails: a disk that fails in the middle of a job is no fault of the
// job.
func TestReadFails(t *testing.T) {
	_, errs, code := apart(t, "hangpack check /proc/self/mem")
	assert.Equal(t, exitFailed, code)
	assert.Equal(t, "hangpack: cannot read /proc/self/mem: input/output error\n", errs)
}

// TestStandardOutputByName: the summary does not get into a pack that goes to
// standard output under another name. It is not named /dev/stdout here: a fault
// could put a file in the place of that link.
func TestStandardOutputByName(t *testing.T) {
	copied(t)
	for _, file := range []bool{false, true} {
		cmd := child("main", "pack", "examples/club.yaml", "-o", "/proc/self/fd/1")
		var errs strings.Builder
		cmd.Stderr = &errs
		var text []byte
		var err error
		if file {
			f, creating := os.Create("x.pdf")
			require.NoError(t, creating)
			cmd.Stdout = f
			require.NoError(t, cmd.Run())
			require.NoError(t, f.Close())
			text, err = os.ReadFile("x.pdf")
		} else {
			text, err = cmd.Output()
		}
		require.NoError(t, err)
		assert.True(t, strings.HasPrefix(string(text), "%PDF-") && strings.HasSuffix(string(text), "%%EOF\n"))
		assert.Contains(t, errs.String(), "wrote standard output, ")
	}
}

// every is a command line for each way in which something is printed.
var every = [][]string{
	{"help"}, {"help", "pack"}, {"version"}, {"--version"},
	{"check", "examples/club.yaml"}, {"check", "-json", "examples/held.yaml"}, {"check", "-json", "testdata/slips.yaml"},
	{"points", "examples/club.yaml"}, {"points", "-csv", "examples/arena.yaml"},
	{"pack", "examples/club.yaml"}, {"pack", "examples/club.yaml", "examples/held.yaml"}, {"pack", "-q", "-o", "-", "examples/club.yaml"}, {"pack", "-o", "-", "examples/held.yaml"},
}

// TestStandardOutputLost: a full disk and a reader that went away are failures
// that are said, whatever was printed.
func TestStandardOutputLost(t *testing.T) {
	copied(t)
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	require.NoError(t, err)
	defer full.Close()
	reader, broken, err := os.Pipe()
	require.NoError(t, err)
	require.NoError(t, reader.Close())
	defer broken.Close()
	for _, args := range every {
		for stdout, says := range map[*os.File]string{full: "no space left on device", broken: "broken pipe"} {
			cmd := child("main", args...)
			var errs strings.Builder
			cmd.Stdout, cmd.Stderr = stdout, &errs
			assert.Error(t, cmd.Run())
			assert.Equal(t, exitFailed, cmd.ProcessState.ExitCode(), "%v: %v", args, cmd.ProcessState)
			assert.Equal(t, "hangpack: cannot write standard output: "+says+"\n", errs.String(), args)
		}
	}
}

// TestOddNames: a name that holds anything does not break a line or work the
// terminal.
func TestOddNames(t *testing.T) {
	copied(t)
	const odd, shown = "a\nb\x1b[31m\u202e\x9b.yaml", `a\nb\x1b[31m\u202e\x9b.yaml`
	read := func(args ...string) string {
		var out strings.Builder
		run(args, &out, &out)
		return out.String()
	}
	assert.Equal(t, "hangpack: cannot read "+shown+": no such file or directory\n", read("check", odd))
	assert.Equal(t, "hangpack: "+shown+" is no command; write hangpack pack "+shown+"\n", read(odd))
	require.NoError(t, os.Rename("testdata/slips.yaml", odd))
	lines := strings.Split(read("check", odd), "\n")
	require.Len(t, lines, 6)
	for _, line := range lines[:4] {
		assert.True(t, strings.HasPrefix(line, shown+":"), line)
	}
	said := read("pack", "examples/club.yaml", "-o", odd+".pdf")
	assert.True(t, strings.HasPrefix(said, "wrote "+shown+".pdf, "), said)
	assert.FileExists(t, odd+".pdf")
	assert.NotContains(t, said, "\x1b")
}
