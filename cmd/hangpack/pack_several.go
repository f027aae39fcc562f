package main

import (
	"fmt"
	"runtime"
	"slices"
	"strings"
	"time"

	"hangpack/paperwork"
	"hangpack/paperwork/worked"
)

// packSeveral packs jobs side by side. Each fails alone, and is spoken of in the order
// of the line whatever is done first. All are read before any is written, since two may
// want the same file.
func packSeveral(c *call) int {
	if err := c.refusesSeveral(); err != nil {
		say(c.stderr, "pack: %v", err)
		return exitWrong
	}
	tasks, said := c.tasks()
	line := newProgress(c)
	line.each("reading", tasks, (*task).settle, func(int) {})
	refuseShared(tasks)
	line.each("packing", tasks, (*task).write, func(i int) {
		said[i].print()
		tasks[i].job = nil // 200 of them are let go one by one
	})
	c.tell(outlet{}, total(tasks))
	return worst(tasks)
}

// refusesSeveral says what is wrong with a line of several jobs whatever is in them.
// The kinds of sheets are the same in all, and said once.
func (c *call) refusesSeveral() error {
	if c.has("o") {
		return fmt.Errorf("-o names one file, and there are %d jobs; leave it out, or pack them one by one", len(c.operands))
	}
	_, err := paperwork.Choose(new(worked.Job), c.flags["only"], "")
	return err
}

// tasks are the jobs of a call, each with what is said of it until its turn.
func (c *call) tasks() (tasks []*task, said []*notes) {
	for _, file := range c.operands {
		one, n := *c, new(notes)
		one.operands = []string{file}
		one.stdout, one.stderr = n.stream(c.stdout), n.stream(c.stderr)
		tasks, said = append(tasks, &task{call: &one, among: true}), append(said, n)
	}
	return tasks, said
}

// each does one step of all tasks that are not done with, and has then called for each
// of them in their order.
func (p *progress) each(does string, tasks []*task, step func(*task) int, then func(int)) {
	p.begin(does)
	ticks := time.NewTicker(time.Second)
	defer ticks.Stop()
	work := func(i int) {
		p.begun.Add(1)
		tasks[i].take(step)
	}
	abreast(len(tasks), runtime.GOMAXPROCS(0), work, func(i int) { p.around(func() { then(i) }) }, ticks.C, p.show)
	p.clear()
}

// take takes a step of a task that is not done with. A fault of hangpack ends this task
// alone.
func (t *task) take(step func(*task) int) {
	defer func() {
		if fault := recover(); fault != nil {
			say(t.stderr, "%s: hangpack itself is at fault: %v; pack this job alone to see where", t.operand(), fault)
			t.code = exitFailed
		}
	}()
	if t.code == exitDone {
		t.code = step(t)
	}
}

// worst is the exit code of several jobs.
func worst(tasks []*task) int {
	for _, code := range []int{exitFailed, exitWrong, exitHeld} {
		if slices.ContainsFunc(tasks, func(t *task) bool { return t.code == code }) {
			return code
		}
	}
	return exitDone
}

// total says how many jobs were packed, and which were not or have a held stack.
func total(tasks []*task) string {
	var packed, pages int
	var held, not []string
	for _, t := range tasks {
		switch name := plain(t.operand()); t.code {
		case exitHeld:
			held = append(held, name)
			fallthrough
		case exitDone:
			packed++
			pages += t.pages
		default:
			not = append(not, name)
		}
	}
	const hold, miss = "with a held stack", "not packed"
	all := fmt.Sprintf("packed %d of %d jobs, %s", packed, len(tasks), countPages(pages))
	return listed(hold, held) + listed(miss, not) + all + counted(hold, held) + counted(miss, not) + "\n"
}

// listed names some jobs on a line, as many as a person looks after at once.
func listed(what string, names []string) string {
	if len(names) == 0 {
		return ""
	}
	more := ""
	if n := len(names); n > shownMost {
		names, more = names[:shownMost], fmt.Sprintf(" and %d more", n-shownMost)
	}
	return what + ": " + strings.Join(names, ", ") + more + "\n"
}

func counted(what string, names []string) string {
	if len(names) == 0 {
		return ""
	}
	return fmt.Sprintf("; %d %s", len(names), what)
}

func countPages(n int) string {
	if n == 1 {
		return "1 page"
	}
	return fmt.Sprintf("%d pages", n)
}
