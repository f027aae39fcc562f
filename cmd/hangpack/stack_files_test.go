package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestStackFiles: an address with {stack} gives each stack a PDF of its own beside
// the pack, and only with the whole pack in a file.
func TestStackFiles(t *testing.T) {
	text, err := os.ReadFile("../../examples/concert.yaml")
	require.NoError(t, err)
	job := strings.Replace(string(text), "lantern-quay.pdf", "{stack}.pdf", 1)
	in := func(line string) (out, errs string, code int, files []string) {
		t.Helper()
		t.Chdir(t.TempDir())
		require.NoError(t, os.WriteFile("job.yaml", []byte(job), 0o644))
		require.NoError(t, os.Mkdir("to", 0o755))
		out, errs, code = apart(t, line)
		found, err := filepath.Glob("*.pdf")
		require.NoError(t, err)
		below, err := filepath.Glob("to/*.pdf")
		require.NoError(t, err)
		return out, errs, code, append(found, below...)
	}

	out, errs, code, files := in("hangpack pack job.yaml")
	assert.Equal(t, exitDone, code)
	assert.Empty(t, errs)
	assert.Equal(t, []string{"SL.pdf", "SR.pdf", "job.pdf"}, files)
	assert.Regexp(t, `wrote SL.pdf, [0-9]+ of [0-9]+ pages\nwrote SR.pdf, [0-9]+ of [0-9]+ pages\n`, out)

	_, _, code, files = in("hangpack pack -q job.yaml -o to/here.pdf")
	assert.Equal(t, exitDone, code)
	assert.Equal(t, []string{"to/SL.pdf", "to/SR.pdf", "to/here.pdf"}, files)

	_, _, _, files = in("hangpack pack job.yaml -stack SL -o some.pdf")
	assert.Equal(t, []string{"some.pdf"}, files, "chosen sheets are written alone")

	_, errs, code, files = in("hangpack pack job.yaml -o -")
	assert.Equal(t, exitDone, code)
	assert.Empty(t, files)
	assert.Contains(t, errs, "no PDF per stack is written beside standard output")

	_, errs, code, files = in("hangpack pack job.yaml -o sr.pdf")
	assert.Equal(t, exitWrong, code)
	assert.Empty(t, files, "nothing is written")
	assert.Contains(t, errs, "sr.pdf is also the file of stack SR")
}

// TestStackFileIsNotTheJob: a job that is called like a stack's PDF is not written
// over.
func TestStackFileIsNotTheJob(t *testing.T) {
	text, err := os.ReadFile("../../examples/concert.yaml")
	require.NoError(t, err)
	t.Chdir(t.TempDir())
	job := strings.Replace(string(text), "lantern-quay.pdf", "{stack}.pdf", 1)
	require.NoError(t, os.WriteFile("SL.pdf", []byte(job), 0o644))
	_, errs, code := apart(t, "hangpack pack SL.pdf -o pack.pdf")
	assert.Equal(t, exitWrong, code)
	assert.Contains(t, errs, "SL.pdf is the job itself")
	assert.NoFileExists(t, "pack.pdf")
	got, err := os.ReadFile("SL.pdf")
	require.NoError(t, err)
	assert.Equal(t, job, string(got))
}
