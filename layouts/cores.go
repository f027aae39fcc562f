package layouts

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// onAllCores works through n pieces of work, numbered from 0, as many at once as
// there are cores. It returns when all are done.
func onAllCores(n int, work func(i int)) {
	var next atomic.Int64
	var all sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		all.Go(func() {
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				work(i)
			}
		})
	}
	all.Wait()
}
