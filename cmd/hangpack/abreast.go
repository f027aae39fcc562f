package main

import (
	"bytes"
	"sync/atomic"
	"time"
)

// abreast does n pieces of work, so many at once, and has then called for each of them
// in their order, as soon as it and all before it are done. then and tick are called
// by the caller's goroutine alone.
func abreast(n, atOnce int, work, then func(int), ticks <-chan time.Time, tick func()) {
	var next atomic.Int64
	done := make(chan int)
	for range min(n, atOnce) {
		go func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				work(i)
				done <- i
			}
		}()
	}
	early := make([]bool, n)
	for first := 0; first < n; {
		select {
		case i := <-done:
			early[i] = true
		case <-ticks:
			tick()
		}
		for ; first < n && early[first]; first++ {
			then(first)
		}
	}
}

// notes are what is said of a job before its turn, piece by piece for the stream that
// it is for.
type notes []note

type note struct {
	to   *stream
	text []byte
}

// stream is one that keeps for another.
func (n *notes) stream(to *stream) *stream {
	return &stream{w: keeper{n, to}, terminal: to.terminal, info: to.info}
}

// print prints them in the order in which they were said.
func (n *notes) print() {
	for _, piece := range *n {
		piece.to.Write(piece.text)
	}
	*n = nil
}

type keeper struct {
	notes *notes
	to    *stream
}

func (k keeper) Write(p []byte) (int, error) {
	*k.notes = append(*k.notes, note{k.to, bytes.Clone(p)})
	return len(p), nil
}
