package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A script is a text that reads as a session at a terminal: '$ ' and a command,
// then what it prints on standard output, then what it says on standard error,
// each line after '2> ', then 'exit N' where that is not 0. A line of … alone
// stands for any lines of its stream. '? FILE' and '! FILE' say that a file is
// there or is not. Files of its own follow, each after '-- NAME --'.

// session runs a script in the folder it is called from.
func session(t *testing.T, script string) {
	t.Helper()
	var command, out, errs string
	var wantOut, wantErrs []string
	code := 0
	check := func() {
		if command == "" {
			return
		}
		assert.True(t, matches(wantOut, lines(out)), "$ %s\nprinted\n%s\nwanted\n%s", command, out, strings.Join(wantOut, "\n"))
		assert.True(t, matches(wantErrs, lines(errs)), "$ %s\nsaid\n%s\nwanted\n%s", command, errs, strings.Join(wantErrs, "\n"))
		assert.Zero(t, code, "exit of $ %s", command)
		command, wantOut, wantErrs = "", nil, nil
	}
	for _, line := range strings.Split(strings.TrimSpace(script), "\n") {
		switch {
		case strings.HasPrefix(line, "$ "):
			check()
			command = strings.TrimPrefix(line, "$ ")
			out, errs, code = apart(t, command)
		case exitLine.MatchString(line):
			assert.Equal(t, strings.TrimPrefix(line, "exit "), fmt.Sprint(code), "exit of $ %s", command)
			code = 0
		case strings.HasPrefix(line, "? "):
			assert.FileExists(t, line[2:])
		case strings.HasPrefix(line, "! "):
			assert.NoFileExists(t, line[2:])
		case strings.HasPrefix(line, "#"):
		case strings.HasPrefix(line, "2> "):
			wantErrs = append(wantErrs, line[3:])
		default:
			wantOut = append(wantOut, line)
		}
	}
	check()
}

// lines are the lines that a stream printed.
func lines(printed string) []string { return strings.Split(strings.TrimSuffix(printed, "\n"), "\n") }

// apart runs one command line and keeps its streams apart.
func apart(t *testing.T, line string) (out, errs string, code int) {
	t.Helper()
	var stdout, stderr bytes.Buffer
	code = run(words(t, line), &stdout, &stderr)
	return stdout.String(), stderr.String(), code
}

// shell runs one command line as a terminal shows it, both streams in one.
func shell(t *testing.T, line string) (printed string, code int) {
	t.Helper()
	var out bytes.Buffer
	code = run(words(t, line), &out, &out)
	return out.String(), code
}

// words are the arguments of a command line; only hangpack is known.
func words(t *testing.T, line string) []string {
	t.Helper()
	words := strings.Fields(strings.Replace(line, "go run ./cmd/hangpack", "hangpack", 1))
	require.Equal(t, "hangpack", words[0], line)
	return words[1:]
}

// matches compares lines, … standing for any number of them.
func matches(want, got []string) bool {
	if len(want) == 0 || len(want) == 1 && want[0] == "" {
		return len(got) == 0 || len(got) == 1 && got[0] == ""
	}
	if want[0] == "…" {
		for i := 0; i <= len(got); i++ {
			if len(want) == 1 || matches(want[1:], got[i:]) {
				return true
			}
		}
		return false
	}
	if len(got) == 0 || want[0] != got[0] {
		return false
	}
	return len(want) == 1 && len(got) == 1 || matches(want[1:], got[1:])
}

// copied makes a folder with copies of examples and testdata, and goes there.
func copied(t *testing.T) {
	t.Helper()
	dir := t.TempDir()
	for _, folder := range []string{"examples", "testdata"} {
		require.NoError(t, os.CopyFS(filepath.Join(dir, folder), os.DirFS(filepath.Join("..", "..", folder))))
	}
	packs, err := filepath.Glob(filepath.Join(dir, "examples", "*.pdf"))
	require.NoError(t, err)
	for _, made := range packs { // by README's first command, beside the examples
		require.NoError(t, os.Remove(made))
	}
	t.Chdir(dir)
}

func TestScripts(t *testing.T) {
	scripts, err := filepath.Glob("../../testdata/scripts/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, scripts)
	for _, file := range scripts {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		t.Run(filepath.Base(file), func(t *testing.T) {
			copied(t)
			session(t, unpacked(t, string(text)))
		})
	}
}

var exitLine = regexp.MustCompile(`^exit \d$`)

var fileHead = regexp.MustCompile(`(?m)^-- (\S+) --\n`)

// unpacked writes a script's own files and returns the rest of it.
func unpacked(t *testing.T, text string) string {
	t.Helper()
	heads := fileHead.FindAllStringSubmatchIndex(text, -1)
	for i, h := range heads {
		end := len(text)
		if i+1 < len(heads) {
			end = heads[i+1][0]
		}
		require.NoError(t, os.WriteFile(text[h[2]:h[3]], []byte(text[h[1]:end]), 0o644))
	}
	if len(heads) > 0 {
		text = text[:heads[0][0]]
	}
	return text
}

var (
	console = regexp.MustCompile("(?s)```console\n(.*?)```")
	yamlJob = regexp.MustCompile("(?s)```yaml\n(.*?)```")
)

// TestReadmeCommands runs every command that README shows and holds it to what
// README says that it prints. 'go test' is what runs this test.
func TestReadmeCommands(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	copied(t)
	ran := 0
	for _, block := range console.FindAllStringSubmatch(string(readme), -1) {
		if strings.HasPrefix(block[1], "$ go test ./...") {
			continue
		}
		for _, one := range strings.Split("\n"+block[1], "\n$ ")[1:] {
			line, want, _ := strings.Cut(one, "\n")
			printed, code := shell(t, line)
			assert.True(t, matches(strings.Split(strings.TrimSuffix(want, "\n"), "\n"), strings.Split(strings.TrimSuffix(printed, "\n"), "\n")), "$ %s\nprinted\n%s", line, printed)
			assert.Equal(t, wantedExit(line), code, line)
			ran++
		}
	}
	assert.GreaterOrEqual(t, ran, 4)
}

// wantedExit is the exit code that README's text gives for a command.
func wantedExit(line string) int {
	switch {
	case strings.Contains(line, "held.yaml"):
		return exitHeld
	case strings.Contains(line, "slips.yaml"):
		return exitWrong
	}
	return exitDone
}

// TestReadmeJob: the job that README shows packs as it stands.
func TestReadmeJob(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	job := yamlJob.FindStringSubmatch(string(readme))
	require.NotNil(t, job)
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("small.yaml", []byte(job[1]), 0o644))
	printed, code := shell(t, "hangpack pack small.yaml")
	assert.Equal(t, exitDone, code, printed)
}
