package main

import (
	"fmt"
	"os"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestTogetherWithoutPermission: a folder that may no longer be written when its file is
// to be put in its place has the files before it put back.
func TestTogetherWithoutPermission(t *testing.T) {
	for _, name := range []string{"b.pdf", "c.pdf"} {
		inFolder(t, olds[3])
		require.NoError(t, os.Mkdir("locked", 0o777))
		for _, open := range []string{".", "locked"} {
			require.NoError(t, os.Chmod(open, 0o777))
		}
		require.NoError(t, os.WriteFile("locked/x.pdf", []byte("old x"), 0o666))
		for _, mine := range []string{"locked/x.pdf", "a.pdf", "b.pdf"} {
			require.NoError(t, os.Chmod(mine, 0o666))
		}
		if os.Getuid() == 0 { // who may then change its mode
			require.NoError(t, os.Chown("locked", 65534, -1))
		}
		os.Remove(name)
		require.NoError(t, os.Symlink("locked/x.pdf", name))
		var failed string
		var err error
		ordinary(func() {
			failed, err = together(threeFiles(func() { require.NoError(t, os.Chmod("locked", 0o555)) })...)
		})
		require.NoError(t, os.Chmod("locked", 0o777))
		assert.Equal(t, name, failed)
		assert.EqualError(t, err, "permission denied; no file is changed")
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		assert.Equal(t, "old x", string(text))
		text, err = os.ReadFile("a.pdf")
		require.NoError(t, err)
		assert.Equal(t, "old a", string(text))
	}
}

// TestTogetherWithoutHardLinks: where the system refuses a hard link, here to a file that
// the user may not read, the old one is put back all the same.
func TestTogetherWithoutHardLinks(t *testing.T) {
	for _, fails := range []bool{false, true} {
		inFolder(t, olds[3])
		for mine, mode := range map[string]os.FileMode{".": 0o777, "a.pdf": 0o222, "b.pdf": 0o222} {
			require.NoError(t, os.Chmod(mine, mode))
		}
		want := map[string]string{"a.pdf": "new a", "b.pdf": "new b", "c.pdf": "new c"}
		ordinary(func() {
			_, err := together(threeFiles(func() {
				if fails {
					want = olds[3]
					require.NoError(t, os.MkdirAll("c.pdf/in the way", 0o755))
				}
			})...)
			assert.Equal(t, fails, err != nil)
		})
		if fails {
			require.NoError(t, os.RemoveAll("c.pdf"))
		}
		holds(t, ".", want)
	}
}

// TestTogetherNotPutBack: what cannot be put back is named, with the place where it is.
func TestTogetherNotPutBack(t *testing.T) {
	inFolder(t, nil)
	require.NoError(t, os.WriteFile("old", []byte("old a"), 0o644))
	left := putBack([]*draft{
		{fresh: fresh{name: "a.pdf"}, place: "gone/a.pdf", kept: "old", there: true},
		{fresh: fresh{name: "b.pdf"}, place: "gone/b.pdf", there: true},
	})
	assert.Equal(t, "; b.pdf is new and could not be taken away; a.pdf could not be put back: it was what is now old", left)
	holds(t, ".", map[string]string{"old": "old a"})
}

// TestSignalledBetweenRenames: a signal that comes while files are put in their places
// waits until all of them are.
func TestSignalledBetweenRenames(t *testing.T) {
	const n = 200
	var outs []string
	want := map[string]string{}
	for i := range n {
		outs = append(outs, fmt.Sprintf("%03d.pdf", i))
		want[outs[i]] = "new one"
	}
	between := 0
	for range 50 {
		t.Chdir(t.TempDir())
		for _, name := range outs {
			require.NoError(t, os.WriteFile(name, []byte("the old pack"), 0o644))
		}
		cmd := child("whole", outs...)
		goOn := halted(t, cmd)
		require.NoError(t, goOn.Close())
		for start := time.Now(); ; {
			text, err := os.ReadFile(outs[0])
			require.NoError(t, err)
			if string(text) == "new one" {
				break
			}
			require.Less(t, time.Since(start), time.Minute)
		}
		require.NoError(t, cmd.Process.Signal(syscall.SIGSTOP))
		stopped(t, cmd.Process.Pid)
		text, err := os.ReadFile(outs[n-1])
		require.NoError(t, err)
		if string(text) == "the old pack" {
			between++
		}
		require.NoError(t, cmd.Process.Signal(syscall.SIGTERM))
		require.NoError(t, cmd.Process.Signal(syscall.SIGCONT))
		cmd.Wait()
		holds(t, ".", want)
		if between == 3 || t.Failed() {
			return
		}
	}
	assert.NotZero(t, between, "no signal came between two renames")
}

// stopped waits until a process stands still.
func stopped(t *testing.T, pid int) {
	t.Helper()
	for range 10_000 {
		stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
		require.NoError(t, err)
		_, state, _ := strings.Cut(string(stat), ") ")
		if state[0] == 'T' || state[0] == 'Z' {
			return
		}
		time.Sleep(100 * time.Microsecond)
	}
	t.Fatal("does not stop")
}
