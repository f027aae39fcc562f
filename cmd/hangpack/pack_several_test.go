package main

import (
	"bytes"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// pdfs takes all PDFs out of the folder it is called from and those below, and returns
// them by their paths. Links stay.
func pdfs(t *testing.T) map[string]string {
	t.Helper()
	found := map[string]string{}
	require.NoError(t, filepath.WalkDir(".", func(path string, d os.DirEntry, err error) error {
		require.NoError(t, err)
		assert.NotContains(t, path, ".hangpack-")
		if d.Type().IsRegular() && filepath.Ext(path) == ".pdf" {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			found[path] = string(text)
			require.NoError(t, os.Remove(path))
		}
		return nil
	}))
	return found
}

// edited copies a job with some words changed.
func edited(t *testing.T, from, to string, oldNew ...string) {
	t.Helper()
	text, err := os.ReadFile(from)
	require.NoError(t, err)
	after := strings.NewReplacer(oldNew...).Replace(string(text))
	require.True(t, len(oldNew) == 0 || after != string(text))
	require.NoError(t, os.MkdirAll(filepath.Dir(to), 0o755))
	require.NoError(t, os.WriteFile(to, []byte(after), 0o644))
}

// TestSeveralAsAlone: side by side each job gets the bytes that it gets alone, as many
// files as that, however many run at once.
func TestSeveralAsAlone(t *testing.T) {
	copied(t)
	jobs := []string{"examples/arena.yaml", "examples/club.yaml", "examples/concert.yaml", "examples/concert-c.yaml", "examples/held.yaml", "first/job.yaml", "second/job.yaml"}
	edited(t, "examples/concert.yaml", "first/job.yaml", "lantern-quay.pdf", "{stack}.pdf")
	edited(t, "examples/concert.yaml", "second/job.yaml", "lantern-quay.pdf", "second/{stack}.pdf")
	for _, flags := range []string{"-q", "-q -only cover,dollies"} {
		alone, codes := map[string]string{}, map[int]bool{}
		for _, job := range jobs {
			_, errs, code := apart(t, "hangpack pack "+job+" "+flags)
			require.Empty(t, errs)
			maps.Copy(alone, pdfs(t))
			codes[code] = true
		}
		require.Equal(t, map[int]bool{exitDone: true, exitHeld: true}, codes)
		require.GreaterOrEqual(t, len(alone), len(jobs))
		for _, processors := range []int{1, 16} {
			before := runtime.GOMAXPROCS(processors)
			_, errs, code := apart(t, "hangpack pack "+strings.Join(jobs, " ")+" "+flags)
			runtime.GOMAXPROCS(before)
			assert.Empty(t, errs)
			assert.Equal(t, exitHeld, code)
			together := pdfs(t)
			assert.Len(t, together, len(alone))
			for name, text := range alone {
				assert.True(t, together[name] == text, "%s differs, %s on %d", name, flags, processors)
			}
		}
	}
}

// TestAbreast: work is handed on in its order, whatever is done first; here all else is
// done before the first is.
func TestAbreast(t *testing.T) {
	const n = 50
	var others sync.WaitGroup
	others.Add(n - 1)
	var order, done []int
	var lock sync.Mutex
	work := func(i int) {
		if i == 0 {
			others.Wait()
		} else {
			defer others.Done()
		}
		lock.Lock()
		defer lock.Unlock()
		done = append(done, i)
	}
	abreast(n, 2, work, func(i int) { order = append(order, i) }, nil, nil)
	require.Len(t, done, n)
	assert.Zero(t, done[n-1])
	for i := range n {
		assert.Equal(t, i, order[i])
	}
}

// TestAbreastAtOnce: as many at once as may be, and no more.
func TestAbreastAtOnce(t *testing.T) {
	for _, atOnce := range []int{1, 2, 7} {
		var now, most atomic.Int64
		full := make(chan struct{})
		work := func(i int) {
			if n := now.Add(1); n > most.Load() {
				most.Store(n)
				if int(n) == atOnce {
					time.Sleep(20 * time.Millisecond) // for one too many to come
					close(full)
				}
			}
			<-full // until all places are taken once
			now.Add(-1)
		}
		count := 0
		abreast(40, atOnce, work, func(int) { count++ }, nil, nil)
		assert.Equal(t, 40, count)
		assert.LessOrEqual(t, int(most.Load()), atOnce)
	}
	abreast(0, 4, nil, nil, nil, nil)
}

// TestComplaintsStayTogether: what is said of each of many jobs stands in one piece and
// in the order of the line, in each run alike.
func TestComplaintsStayTogether(t *testing.T) {
	copied(t)
	var line, wantOut, wantErrs, missed strings.Builder
	line.WriteString("hangpack pack")
	for i := range 24 {
		name := fmt.Sprintf("job%d.yaml", i)
		line.WriteString(" " + name)
		switch i % 3 {
		case 0: // slow, so that what follows is done before it
			edited(t, "examples/concert.yaml", name)
			out, _, code := apart(t, "hangpack pack "+name)
			require.Equal(t, exitDone, code)
			first, _, _ := strings.Cut(out, "\n")
			wantOut.WriteString(first + "; 2 cautions; 1 not checked\n")
			continue
		case 1:
			edited(t, "testdata/slips.yaml", name)
			_, errs, _ := apart(t, "hangpack pack "+name)
			require.Len(t, lines(errs), 5)
			wantErrs.WriteString(errs)
		case 2:
			fmt.Fprintf(&wantErrs, "hangpack: cannot read %s: no such file or directory\n", name)
		}
		missed.WriteString(", " + name)
	}
	wantOut.WriteString("not packed: " + missed.String()[2:] + "\npacked 8 of 24 jobs, … pages; 16 not packed\n")
	before := runtime.GOMAXPROCS(4)
	defer runtime.GOMAXPROCS(before)
	for range 3 {
		out, errs, code := apart(t, line.String())
		assert.Equal(t, exitFailed, code)
		assert.Equal(t, uncounted(wantOut.String()), uncounted(out))
		assert.Equal(t, wantErrs.String(), errs)
	}
}

// TestFaultOfOne: a panic ends its own job, is said in one line, and leaves the others.
func TestFaultOfOne(t *testing.T) {
	var out, errs bytes.Buffer
	c := &call{operands: []string{"a.yaml", "b.yaml", "c.yaml"}, stdout: newStream(&out), stderr: newStream(&errs)}
	tasks, said := c.tasks()
	step := func(t *task) int {
		if t.operand() == "b.yaml" {
			var none []int
			return none[len(t.operands)]
		}
		t.tell(t.out, "did "+t.operand()+"\n")
		return exitDone
	}
	newProgress(c).each("packing", tasks, step, func(i int) { said[i].print() })
	assert.Equal(t, "did a.yaml\ndid c.yaml\n", out.String())
	assert.Equal(t, "hangpack: b.yaml: hangpack itself is at fault: runtime error: index out of range [1] with length 0; pack this job alone to see where\n", errs.String())
	assert.Equal(t, exitFailed, worst(tasks))
	// Nothing more is done for it.
	newProgress(c).each("packing", tasks, func(one *task) int {
		assert.NotEqual(t, "b.yaml", one.operand())
		return exitDone
	}, func(int) {})
}

// TestWorst: what could not be read or written is worse than what is wrong, and that
// worse than a hold.
func TestWorst(t *testing.T) {
	for want, codes := range map[int][]int{
		exitDone:   {0, 0},
		exitHeld:   {0, 3, 0},
		exitWrong:  {3, 2, 0},
		exitFailed: {2, 3, 1, 0},
	} {
		var tasks []*task
		for _, code := range codes {
			tasks = append(tasks, &task{code: code})
		}
		assert.Equal(t, want, worst(tasks), codes)
	}
}

// TestManyNamed: of many jobs that were not packed the first are named, and all
// counted.
func TestManyNamed(t *testing.T) {
	var tasks []*task
	for i := range 25 {
		tasks = append(tasks, &task{call: &call{operands: []string{fmt.Sprintf("%d\n.yaml", i)}}, code: exitWrong})
	}
	tasks = append(tasks, &task{call: &call{operands: []string{"held.yaml"}}, code: exitHeld, pages: 1})
	said := lines(total(tasks))
	require.Len(t, said, 3)
	assert.Equal(t, "with a held stack: held.yaml", said[0])
	assert.True(t, strings.HasPrefix(said[1], `not packed: 0\n.yaml, 1\n.yaml, `), said[1])
	assert.True(t, strings.HasSuffix(said[1], `, 19\n.yaml and 5 more`), said[1])
	assert.Equal(t, "packed 1 of 26 jobs, 1 page; 1 with a held stack; 25 not packed", said[2])
}
