package main

// Exit codes. Scripts depend on them: add, never renumber.
const (
	exitDone   = 0
	exitFailed = 1 // something could not be read or written
	exitWrong  = 2 // the command line or the job is wrong; nothing is written
	exitHeld   = 3 // done, but at least one stack is held
)
