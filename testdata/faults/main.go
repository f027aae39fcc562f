// Faults plants faults in a package, one at a time, and says which of them its
// tests do not see.
//
//	go run ./testdata/faults [-budget 3m] [-seed N] [-list] [PACKAGE_DIR]
//
// A fault is one operator, constant, condition, argument or statement changed;
// the package is ./calc if none is named. No source is touched: each fault is built
// from an overlay, and tested by the package's own tests. With a budget a sample of
// the faults is tried, drawn by the seed. -list names the faults and tries none.
//
// It exits with 1 if a fault survives that equivalent.txt does not name, if that
// file names what is not there or what is caught, or if fewer than 95 of a hundred
// faults that build are caught.
package main

import (
	"flag"
	"fmt"
	"math/rand"
	"os"
	"path/filepath"
	"slices"
	"time"
)

func main() {
	budget := flag.Duration("budget", 0, "stop planting after so long; 0 plants all")
	seed := flag.Int64("seed", 1, "order in which a sample is drawn")
	list := flag.Bool("list", false, "name the faults and plant none")
	flag.Parse()
	dir := "./calc"
	if flag.NArg() > 0 {
		dir = flag.Arg(0)
	}
	ok, err := run(dir, *budget, *seed, *list)
	if err != nil {
		fmt.Fprintln(os.Stderr, "faults:", err)
	}
	if err != nil || !ok {
		os.Exit(1)
	}
}

func run(dir string, budget time.Duration, seed int64, list bool) (ok bool, err error) {
	all, err := faultsOf(dir)
	if err != nil {
		return false, err
	}
	named, err := readEquivalents(filepath.Join(filepath.Dir(sourceFile()), "equivalent.txt"))
	if err != nil {
		return false, err
	}
	stale := named.mark(all, dir)
	if list {
		for _, f := range all {
			fmt.Println(f)
		}
		return true, nil
	}
	if err := ownTests(dir); err != nil {
		return false, err
	}
	rand.New(rand.NewSource(seed)).Shuffle(len(all), func(i, k int) { all[i], all[k] = all[k], all[i] })
	tried, took, err := plantAll(dir, all, budget)
	if err != nil {
		return false, err
	}
	slices.SortFunc(tried, func(a, b *fault) int { return a.compare(b) })
	return report(os.Stdout, tried, len(all), seed, took, stale), nil
}
