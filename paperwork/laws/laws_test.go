package laws

import (
	"fmt"
	"math"
	"math/rand"
	"os"
	"runtime"
	"runtime/debug"
	"strconv"
	"strings"
	"sync"
	"testing"

	"hangpack/paperwork/worked"
	"hangpack/testdata/deep"
	"hangpack/testdata/plausible"
	"hangpack/testdata/proof"
	"hangpack/testdata/trials"
)

// Laws hold for every job, whatever its numbers: they need no source and no
// expected value. Each looks at the figures of a random job, or changes the job and
// says what has to become of its figures; what it does not name has to stay.
//
//	go test ./paperwork/laws -run TestLaws                          the same jobs each time
//	HANGPACK_SEEDS=5000 go test ./paperwork/laws -run TestLaws      5000 others
//	HANGPACK_SEED=N go test ./paperwork/laws -run TestLaws/NAME     one job, as a failure says

// rounding is what figures may differ by: of the figure, or of one of its unit
// where it is less than that.
const rounding = 1e-8

// A law is tried on one job after another.
type law struct {
	name  string
	why   string // why it has to hold
	keys  string // figures that it holds, by their names in check -json
	holds func(*trial)
}

// A base is a random job as it is written and worked out, shared by all laws: none
// of them changes it.
type base struct {
	*worked.Job
	seed int64
	yaml string
	tree tree
}

// A trial is a law tried on one job. Cases are what it found to hold the law
// against: the job as a whole, or each of its stacks, joints or lifts.
type trial struct {
	*base
	*rand.Rand // the same for the same job and law
	cases      int
	worst      float64 // difference, as rounding is measured
	faults     []string
}

// near holds a figure to what it has to be.
func (t *trial) near(of string, want, got float64) {
	off := math.Abs(want-got) / math.Max(1, math.Abs(want))
	if !(off <= rounding) {
		t.fault("%s: %v, has to be %v", of, got, want)
		return
	}
	t.worst = math.Max(t.worst, math.Max(off, proof.Untold))
}

// atLeast holds a figure to the least that it may be.
func (t *trial) atLeast(of string, least, got float64) {
	if !(got >= least-rounding*math.Max(1, math.Abs(least))) {
		t.fault("%s: %v, has to be at least %v", of, got, least)
	}
}

func (t *trial) must(holds bool, format string, args ...any) {
	if !holds {
		t.fault(format, args...)
	}
}

func (t *trial) fault(format string, args ...any) {
	t.faults = append(t.faults, fmt.Sprintf(format, args...))
}

// bases are the jobs of this run, each worked out once.
var bases = sync.OnceValue(func() []*base {
	seeds := seedsOfRun()
	all := make([]*base, len(seeds))
	onAllCores(len(seeds), func(i int) {
		yaml := plausible.Job(seeds[i], seeds[i]%4 == 3)
		j, complaints, err := trials.Try(yaml, trials.GearFile)
		if err != nil || len(complaints) > 0 {
			panic(fmt.Sprintf("seed %d: %v %v", seeds[i], err, complaints))
		}
		all[i] = &base{Job: j, seed: seeds[i], yaml: yaml, tree: asTree(yaml)}
	})
	return all
})

// seedsOfRun are the seeds that the environment asks for, else always the same.
func seedsOfRun() (seeds []int64) {
	if n, err := strconv.ParseInt(os.Getenv("HANGPACK_SEED"), 10, 64); err == nil {
		return []int64{n}
	}
	from, count := int64(100_000), int64(deep.Of(100, 1000))
	if n, err := strconv.ParseInt(os.Getenv("HANGPACK_SEEDS"), 10, 64); err == nil {
		from, count = 1_000_000, n
	}
	for i := range count {
		seeds = append(seeds, from+i)
	}
	return seeds
}

// onAllCores does n things, those of one core one after the other.
func onAllCores(n int, do func(i int)) {
	var wait sync.WaitGroup
	cores := runtime.GOMAXPROCS(0)
	for core := range cores {
		wait.Go(func() {
			for i := core; i < n; i += cores {
				do(i)
			}
		})
	}
	wait.Wait()
}

// A tried law is what came of it over all jobs of this run.
type tried struct {
	cases  int
	worst  float64
	faults []string // of the first job that breaks it
	broken int      // jobs
	seed   int64    // of that first job
}

// try tries a law on every job, once in a run, whoever asks.
func (l *law) try() tried {
	triedLock.Lock()
	defer triedLock.Unlock()
	if r, ok := triedLaws[l.name]; ok {
		return r
	}
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // it makes and drops many small jobs
	jobs := bases()
	trials := make([]*trial, len(jobs))
	onAllCores(len(jobs), func(i int) {
		trials[i] = &trial{base: jobs[i], Rand: rand.New(rand.NewSource(jobs[i].seed))}
		l.holds(trials[i])
	})
	r := gathered(trials)
	triedLaws[l.name] = r
	return r
}

var (
	triedLock sync.Mutex
	triedLaws = map[string]tried{}
)

func gathered(trials []*trial) (r tried) {
	for _, t := range trials {
		r.cases, r.worst = r.cases+t.cases, math.Max(r.worst, t.worst)
		if len(t.faults) > 0 {
			if r.broken++; r.broken == 1 {
				r.faults, r.seed = t.faults, t.seed
			}
		}
	}
	return r
}

// TestLaws tries every law on every job of the run.
func TestLaws(t *testing.T) {
	for i := range laws {
		t.Run(laws[i].name, func(t *testing.T) { laws[i].held(t) })
	}
}

// held fails the test where the law is broken, and returns what came of it.
func (l *law) held(t *testing.T) (cases int, worst float64) {
	t.Helper()
	r := l.try()
	t.Logf("%d cases, worst difference %.1e", r.cases, r.worst)
	if r.broken > 0 {
		t.Errorf("%s\n%d jobs break it; of seed %d:\n  %s\nHANGPACK_SEED=%d go test ./paperwork/laws -run 'TestLaws/%s' tries that one again",
			l.why, r.broken, r.seed, strings.Join(r.faults[:min(len(r.faults), 8)], "\n  "), r.seed, l.name)
	}
	if r.cases == 0 && os.Getenv("HANGPACK_SEED") == "" {
		t.Error("the law found nothing that it is about")
	}
	return r.cases, r.worst
}
