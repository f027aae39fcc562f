package main

import (
	"os"
	"os/signal"
	"syscall"
	"time"
)

// onSignal has a signal that would end hangpack call tidy first. What it
// returns lets signals be again.
func onSignal(tidy func()) (stop func()) {
	caught := make(chan os.Signal, 1)
	for _, s := range []os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP} {
		// What a shell had us ignore, as for a job in the background, stays so.
		if !signal.Ignored(s) {
			signal.Notify(caught, s)
		}
	}
	go func() {
		if s, ok := <-caught; ok {
			tidy()
			die(s)
		}
	}()
	return func() {
		signal.Stop(caught)
		close(caught)
	}
}

// die ends hangpack by a signal, as if it had not been caught: whoever started
// it can tell that from a failure. Where a process cannot signal itself, or is
// not ended by it, it fails.
func die(s os.Signal) {
	signal.Reset(s)
	if self, err := os.FindProcess(os.Getpid()); err == nil && self.Signal(s) == nil {
		time.Sleep(time.Second)
	}
	os.Exit(exitFailed)
}
