package main

import (
	"fmt"

	"hangpack/paperwork/job"
)

// shownMost is how many complaints are printed in full: more than a person
// mends before the next run.
const shownMost = 20

// complain prints what is wrong with a job, and how much: as JSON where the
// call asks for that. Nothing is coloured here or elsewhere, so that no
// terminal, pipe or setting has to be asked whether it may be.
func (c *call) complain(complaints job.Complaints) {
	if c.has("json") {
		printJSON(c.stdout, complaintsData(complaints))
		return
	}
	for i, one := range complaints {
		if i == shownMost {
			fmt.Fprintf(c.stderr, "and %d more\n", len(complaints)-i)
			break
		}
		fmt.Fprintln(c.stderr, plain(one.Error()))
		if c.stderr.terminal {
			fmt.Fprint(c.stderr, excerpt(one))
		}
	}
	fmt.Fprintln(c.stderr, howMany(len(complaints))+"; nothing written")
}

// howMany counts complaints, of which no more than a certain number are kept.
func howMany(n int) string {
	switch {
	case n == 1:
		return "1 complaint"
	case n >= job.ComplaintsMost:
		return fmt.Sprintf("%d complaints or more", n)
	}
	return fmt.Sprintf("%d complaints", n)
}

// complaintData is a complaint as data. Keys may be added, never renamed.
type complaintData struct {
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Key     string `json:"key"`
	Message string `json:"message"`
}

func complaintsData(complaints job.Complaints) map[string][]complaintData {
	all := []complaintData{}
	for _, c := range complaints {
		all = append(all, complaintData{c.File, c.Line, c.Col, c.Key, c.Message})
	}
	return map[string][]complaintData{"complaints": all}
}
