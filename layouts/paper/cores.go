package paper

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// onAllCores works through n pieces of work, numbered from 0, as many at once as
// there are cores. It returns when all are done. A panic of one becomes the caller's,
// who can catch it: on a core of its own it would end the process.
func onAllCores(n int, work func(i int)) {
	var next atomic.Int64
	var all sync.WaitGroup
	var fault atomic.Pointer[any]
	for range min(n, runtime.GOMAXPROCS(0)) {
		all.Go(func() {
			defer keepFault(&fault)
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				work(i)
			}
		})
	}
	all.Wait()
	if f := fault.Load(); f != nil {
		panic(*f)
	}
}

// keepFault keeps the first panic.
func keepFault(fault *atomic.Pointer[any]) {
	if r := recover(); r != nil {
		fault.CompareAndSwap(nil, &r)
	}
}
