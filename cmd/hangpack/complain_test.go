package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hangpack/paperwork/job"
)

// complained returns so many complaints, one a line.
func complained(n int) (all job.Complaints) {
	for i := range n {
		all = append(all, job.Complaint{File: "a.yaml", Line: i + 1, Col: 3, Key: "gear", Message: "no", Text: "  x: y"})
	}
	return all
}

// TestComplainInFull: as many as a person mends at once are printed, the rest
// are counted, and the last line counts all.
func TestComplainInFull(t *testing.T) {
	for n, want := range map[int]struct {
		shown     int
		more, all string
	}{
		1:  {1, "", "1 complaint; nothing written"},
		2:  {2, "", "2 complaints; nothing written"},
		20: {20, "", "20 complaints; nothing written"},
		21: {20, "and 1 more", "21 complaints; nothing written"},
		33: {20, "and 13 more", "33 complaints; nothing written"},

		job.ComplaintsMost - 1: {20, "and 9979 more", "9999 complaints; nothing written"},
		job.ComplaintsMost:     {20, "and 9980 more", "10000 complaints or more; nothing written"},
	} {
		var errs bytes.Buffer
		c := call{stdout: newStream(&bytes.Buffer{}), stderr: newStream(&errs)}
		c.complain(complained(n))
		var lines []string
		for i := range want.shown {
			lines = append(lines, fmt.Sprintf("a.yaml:%d:3: no", i+1))
		}
		if want.more != "" {
			lines = append(lines, want.more)
		}
		assert.Equal(t, strings.Join(append(lines, want.all), "\n")+"\n", errs.String())
	}
}

// TestComplainAsData: all of them, and nothing on the other stream.
func TestComplainAsData(t *testing.T) {
	var out, errs bytes.Buffer
	stderr := newStream(&errs)
	stderr.terminal = true
	c := call{flags: map[string]string{"json": ""}, stdout: newStream(&out), stderr: stderr}
	all := complained(33)
	all[4] = job.Complaint{File: "b\n\"<c>.yaml", Line: 7, Col: 9, Message: "a & b"}
	c.complain(all)
	assert.Empty(t, errs.String())
	var got struct {
		Complaints []map[string]any
	}
	require.NoError(t, json.Unmarshal(out.Bytes(), &got))
	require.Len(t, got.Complaints, 33)
	assert.Equal(t, map[string]any{"file": "a.yaml", "line": 33.0, "column": 3.0, "key": "gear", "message": "no"}, got.Complaints[32])
	assert.Equal(t, map[string]any{"file": "b\n\"<c>.yaml", "line": 7.0, "column": 9.0, "key": "", "message": "a & b"}, got.Complaints[4])
	assert.Contains(t, out.String(), `"key": ""`)
}

// TestComplainOnTerminal: on a terminal each complaint shows its line, and only
// there.
func TestComplainOnTerminal(t *testing.T) {
	copied(t)
	var errs bytes.Buffer
	stderr := newStream(&errs)
	stderr.terminal = true
	code := answer([]string{"check", "testdata/slips.yaml"}, newStream(&bytes.Buffer{}), stderr)
	assert.Equal(t, exitWrong, code)
	assert.Equal(t, `testdata/slips.yaml:2:48: "2027-02-30" is no day of the calendar; write it like 2027-06-12
    job: {title: Slips, venue: Nowhere Hall, date: 2027-02-30, revision: A}
                                                   ^
testdata/slips.yaml:7:13: 32.5 has no unit; write 32.5 kg or 32.5 lb
          mass: 32.5
                ^
testdata/slips.yaml:11:7: unknown key "back_hieght" under big-cabinet; did you mean "back_height"?
          back_hieght: 225 mm
          ^
testdata/slips.yaml:27:53: big-cabinet has no hole for 2.5 here; the nearest are 2 and 3
          - {type: big-cabinet, count: 4, splay: [0, 1, 2.5, 3]}
                                                        ^
4 complaints; nothing written
`, errs.String())
}

// TestExcerpt: the caret stands under the character that is complained of.
// Dots stand for blanks and → for tabs, so that they can be seen here.
func TestExcerpt(t *testing.T) {
	long := strings.Repeat("0123456789", 20)
	for name, tt := range map[string]struct {
		text  string
		col   int
		near  bool
		shown string
		caret string
	}{
		"first":                   {"a: b", 1, false, "a: b", "^"},
		"last":                    {"a: b", 4, false, "a: b", "...^"},
		"no column":               {"a: b", 1, true, "a: b", ""},
		"beyond":                  {"a: b", 5, false, "a: b", ""},
		"far beyond":              {"a: b", 999, false, "a: b", ""},
		"before":                  {"a: b", 0, false, "a: b", ""},
		"nothing to show":         {"", 1, false, "", ""},
		"tabs":                    {"\ta:\tb", 5, false, "\ta:\tb", "→..→^"},
		"after a terminal escape": {"\x1b[31m: b", 8, false, "?[31m: b", ".......^"},
		"on a control":            {"a\x07b", 2, false, "a?b", ".^"},
		"other terminal escapes":  {"\u009b2J\u202e\u200d\ufeff\x7fx", 8, false, "?2J????x", ".......^"},
		"not UTF-8":               {"a\xff\xfeb", 4, false, "a??b", "...^"},
		"a carriage return":       {"a\rb", 3, false, "a?b", "..^"},
		"wide":                    {"舞台: b", 5, false, "舞台: b", "......^"},
		"on a wide one":           {"舞台: b", 2, false, "舞台: b", "..^"},
		"picture":                 {"🎤 b", 3, false, "🎤 b", "...^"},
		"accent of its own":       {"u\u0308: b", 5, false, "u\u0308: b", "...^"},
		"umlaut":                  {"Bühne: b", 8, false, "Bühne: b", ".......^"},
		"as long as fits":         {long[:74], 74, false, long[:74], strings.Repeat(".", 73) + "^"},
		"long, at its start":      {long, 1, false, long[:74] + "…", "^"},
		"long, at its end":        {long, 200, false, "…" + long[126:], strings.Repeat(".", 74) + "^"},
		"long, in the middle":     {long, 101, false, "…" + long[63:137] + "…", strings.Repeat(".", 38) + "^"},
		"long, no column":         {long, 150, true, long[:74] + "…", ""},
		"long and wide":           {strings.Repeat("舞", 100), 51, false, "…" + strings.Repeat("舞", 37) + "…", strings.Repeat(".", 1+2*18) + "^"},
		"long and tabs":           {strings.Repeat("\t", 20) + "x", 21, false, "…" + strings.Repeat("\t", 9) + "x", "." + strings.Repeat("→", 9) + "^"},
		"many accents":            {"a" + strings.Repeat("\u0308", 500), 1, false, "a" + strings.Repeat("\u0308", 73) + "…", "^"},
	} {
		want := ""
		if tt.shown != "" {
			want = "    " + tt.shown + "\n"
		}
		if tt.caret != "" {
			want += "    " + strings.NewReplacer(".", " ", "→", "\t").Replace(tt.caret) + "\n"
		}
		assert.Equal(t, want, excerpt(job.Complaint{Text: tt.text, Col: tt.col, Near: tt.near}), name)
	}
}
