package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A script is a text that reads as a session at a terminal: '$ ' and a command,
// then what it prints on standard output, then what it says on standard error,
// each line after '2> ', then 'exit N' where that is not 0. A line of … alone
// stands for any lines of its stream. How many pages a pack has is … too: that is
// for TestPagesSaid. '? FILE' and '! FILE' say that a file is there or is not. Files of
// its own follow, each after '-- NAME --'.
//
// UPDATE_GOLDEN=1 writes what is printed now in place of what a script wants.

// update says that the scripts and README are to be written, not held.
var update = os.Getenv("UPDATE_GOLDEN") != ""

// session runs a script in the folder it is called from, and returns it with what
// its commands print now.
func session(t *testing.T, script string) string {
	t.Helper()
	steps := strings.Split("\n"+script, "\n$ ")
	for i, one := range steps[1:] {
		steps[i+1] = step(t, one)
	}
	return strings.Join(steps, "\n$ ")[1:]
}

// step runs one command of a script and returns it with what it prints now.
func step(t *testing.T, text string) string {
	t.Helper()
	command, rest, _ := strings.Cut(text, "\n")
	out, errs, code := apart(t, command)
	out, errs = uncounted(out), uncounted(errs)
	var wantOut, wantErrs, others []string
	wantCode := exitDone
	for _, line := range lines(rest) {
		switch {
		case exitLine.MatchString(line):
			wantCode = int(line[len("exit ")] - '0')
		case strings.HasPrefix(line, "? "):
			assert.FileExists(t, line[2:])
			others = append(others, line)
		case strings.HasPrefix(line, "! "):
			assert.NoFileExists(t, line[2:])
			others = append(others, line)
		case strings.HasPrefix(line, "#"):
			others = append(others, line)
		case strings.HasPrefix(line, "2> "):
			wantErrs = append(wantErrs, line[3:])
		default:
			wantOut = append(wantOut, line)
		}
	}
	now := append([]string{command}, held(t, "$ "+command+"\nprinted", wantOut, lines(out))...)
	for _, line := range held(t, "$ "+command+"\nsaid", wantErrs, lines(errs)) {
		now = append(now, "2> "+line)
	}
	if !update {
		assert.Equal(t, wantCode, code, "exit of $ %s", command)
	}
	if code != exitDone {
		now = append(now, fmt.Sprint("exit ", code))
	}
	return strings.Join(append(now, others...), "\n")
}

var totals = regexp.MustCompile(`[1-9][0-9]* pages`)

// uncounted is what was printed without totals of pages, which every new sheet moves.
func uncounted(printed string) string { return totals.ReplaceAllString(printed, "… pages") }

// lines are the lines that a stream printed.
func lines(printed string) []string {
	if printed == "" {
		return nil
	}
	return strings.Split(strings.TrimSuffix(printed, "\n"), "\n")
}

// held holds lines to those that are wanted, or if update is set returns what is
// to be wanted.
func held(t *testing.T, what string, want, got []string) []string {
	t.Helper()
	if matches(want, got) {
		return want
	}
	if !update {
		t.Errorf("%s\n%s\nwanted\n%s\nUPDATE_GOLDEN=1 go test ./cmd/hangpack writes it anew", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	return renewed(want, got)
}

// renewed returns what to want of lines that are no longer as wanted: all of them,
// or where some were left out, as many at the start and at the end as before, and
// between them those that still stand, with … for the rest.
func renewed(want, got []string) (now []string) {
	first := slices.Index(want, "…")
	last := len(want) - 1
	for last >= 0 && want[last] != "…" {
		last--
	}
	end := len(got) - (len(want) - 1 - last)
	if first < 0 || first > end {
		return got
	}
	now = slices.Clone(got[:first])
	between := got[first:end]
	for _, line := range want[first:last] {
		if at := slices.Index(between, line); at >= 0 {
			now, between = append(now, left(between[:at])...), between[at+1:]
			now = append(now, line)
		}
	}
	return append(append(now, left(between)...), got[end:]...)
}

// left stands for lines that are left out.
func left(lines []string) []string {
	if len(lines) == 0 {
		return nil
	}
	return []string{"…"}
}

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
	if len(want) == 0 {
		return len(got) == 0
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
	return matches(want[1:], got[1:])
}

// copied makes a folder with copies of examples and of the job with slips, and
// goes there.
func copied(t *testing.T) {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.CopyFS(filepath.Join(dir, "examples"), os.DirFS("../../examples")))
	edited(t, "../../testdata/slips.yaml", filepath.Join(dir, "testdata", "slips.yaml"))
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
			file, err := filepath.Abs(file)
			require.NoError(t, err)
			copied(t)
			script := unpacked(t, string(text))
			if now := session(t, strings.TrimSuffix(script, "\n")) + "\n"; update {
				inFile(t, file, script, now)
			}
		})
	}
}

// TestRenewed: what of a script stays when what is printed changes.
func TestRenewed(t *testing.T) {
	for _, tt := range []struct{ want, got, now string }{
		{"a b", "a c", "a c"},
		{"", "a", "a"},
		{"a", "", ""},
		{"a …", "b c d", "b …"},
		{"… z", "a b", "… b"},
		{"a … m … z", "b c m y", "b … m y"},
		{"a … m n … z", "a c m o z", "a … m … z"},
		{"a … m … z", "a c z", "a … z"},
		{"a b … z", "x y", "x y"},
	} {
		now := renewed(strings.Fields(tt.want), strings.Fields(tt.got))
		assert.Equal(t, strings.Fields(tt.now), append([]string{}, now...), "%s is now %s", tt.want, tt.got)
		assert.True(t, matches(now, strings.Fields(tt.got)), tt.want)
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
	console = regexp.MustCompile("(?s)(```console\n)(.*?)(```)")
	yamlJob = regexp.MustCompile("(?s)```yaml\n(.*?)```")
)

// TestReadmeCommands runs every command that README shows and holds it to what
// README says that it prints. 'go test' is what runs this test.
func TestReadmeCommands(t *testing.T) {
	file, err := filepath.Abs("../../README.md")
	require.NoError(t, err)
	readme, err := os.ReadFile(file)
	require.NoError(t, err)
	copied(t)
	ran := 0
	for _, block := range console.FindAllString(string(readme), -1) {
		steps := strings.Split(strings.TrimSuffix(block, "\n```"), "\n$ ")
		for i, one := range steps[1:] {
			command, want, _ := strings.Cut(one, "\n")
			if command == "go test ./..." {
				continue
			}
			printed, code := shell(t, command)
			now := held(t, "$ "+command+"\nprinted", lines(want), lines(printed))
			assert.Equal(t, wantedExit(command), code, command)
			steps[i+1] = strings.Join(append([]string{command}, now...), "\n")
			ran++
		}
		if update {
			inFile(t, file, block, strings.Join(steps, "\n$ ")+"\n```")
		}
	}
	assert.GreaterOrEqual(t, ran, 4)
}

// inFile puts a text in the place of another in a file, which the tests of other
// packages write to as well.
func inFile(t *testing.T, file, before, after string) {
	t.Helper()
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	if before != after {
		require.NoError(t, os.WriteFile(file, bytes.Replace(text, []byte(before), []byte(after), 1), 0o644))
	}
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
