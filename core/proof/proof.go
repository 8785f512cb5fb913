// Package proof runs property tests: a small share of the cases on every run of the unit tests, all of them for `make
// long`, which gathers one line of each into a table.
//
//	var banks = proof.Proof{Share: 40, Full: 10000, Seed: 5}
//
//	func TestRandomBanks(t *testing.T) {
//		banks.Run(t, func(c *proof.Case) {
//			od := 0.01 + 0.02*c.Rand.Float64()
//			if area(od) <= 0 {
//				c.Errorf("no area at %g", od)
//			}
//		})
//	}
package proof

import (
	"fmt"
	"math/rand/v2"
	"os"
	"runtime"
	"runtime/debug"
	"strconv"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// The environment: all cases, a part of them, or the one with a given index.
const (
	longVariable = "FINWRIGHT_LONG"
	partVariable = "FINWRIGHT_PART"
	caseVariable = "FINWRIGHT_CASE"
)

// Mark starts the line of a proof: name, count, seed, failures and seconds follow, each after a tab.
const Mark = "proof:"

// shown failures are told in full, the rest counted.
const shown = 5

// Proof is how often a property is tried.
type Proof struct {
	Share int    // cases of every run of the unit tests
	Full  int    // cases of make long
	Seed  uint64 // of the random numbers
	Alone bool   // one case after the other, where something of the whole program is measured
}

// Case is one case of a proof. It depends on seed and index alone, so that it comes out the same whatever ran before.
// It stands in for the test: its Error and Fatal count the case as failed and say how to have it again.
type Case struct {
	testing.TB
	Rand  *rand.Rand
	Index int

	what string
	told []string
}

// stop is what Fatal ends a case with.
type stop struct{}

// Error implements testing.TB.
func (c *Case) Error(args ...any) { c.told = append(c.told, fmt.Sprint(args...)) }

// Errorf implements testing.TB.
func (c *Case) Errorf(format string, args ...any) {
	c.told = append(c.told, fmt.Sprintf(format, args...))
}

// Fatal implements testing.TB.
func (c *Case) Fatal(args ...any) { c.Error(args...); panic(stop{}) }

// Fatalf implements testing.TB.
func (c *Case) Fatalf(format string, args ...any) { c.Errorf(format, args...); panic(stop{}) }

// In says what the case is of, where its index does not.
func (c *Case) In(what string) { c.what = what + ": " }

// Long reports whether all cases were asked for.
func Long() bool { return os.Getenv(longVariable) != "" }

// Run tries the property on all cores and returns the number of cases. A panic in body is a failure of its case.
func (p Proof) Run(t *testing.T, body func(*Case)) int {
	t.Helper()
	first, count := p.cases()
	if Long() {
		defer debug.SetGCPercent(debug.SetGCPercent(400)) // a case leaves much behind, and little of it lives
	}
	began := time.Now()
	var next, failures atomic.Int64
	var each sync.WaitGroup
	cores := runtime.GOMAXPROCS(0)
	if p.Alone {
		cores = 1
	}
	for range cores {
		each.Go(func() {
			for i := int(next.Add(1)) - 1; i < count; i = int(next.Add(1)) - 1 {
				c := Case{TB: t, Rand: rand.New(rand.NewPCG(p.Seed, uint64(first+i))), Index: first + i}
				c.try(body)
				if len(c.told) == 0 {
					continue
				}
				if failures.Add(1) <= shown {
					for _, text := range c.told {
						t.Errorf("seed %d, %s=%d: %s%s", p.Seed, caseVariable, c.Index, c.what, text)
					}
				}
			}
		})
	}
	each.Wait()
	if n := failures.Load(); n > 0 {
		t.Errorf("%d of %d cases failed", n, count)
	}
	if Long() {
		Report(t.Name(), count, p.Seed, int(failures.Load()), time.Since(began))
	}
	return count
}

// cases is what to run: a share, all, the k-th of n parts of all ("k/n"), or one.
func (p Proof) cases() (first, count int) {
	if i, err := strconv.Atoi(os.Getenv(caseVariable)); err == nil {
		return i, 1
	}
	if !Long() {
		return 0, p.Share
	}
	k, n := 1, 1
	if _, err := fmt.Sscanf(os.Getenv(partVariable), "%d/%d", &k, &n); err != nil || k < 1 || k > n {
		return 0, p.Full
	}
	first = p.Full * (k - 1) / n
	return first, p.Full*k/n - first
}

func (c *Case) try(body func(*Case)) {
	defer func() {
		switch r := recover().(type) {
		case nil, stop:
		default:
			c.Errorf("panic: %v\n%s", r, debug.Stack())
		}
	}()
	body(c)
}

// Report writes a proof's line for the table of make long; Run does so by itself.
func Report(name string, count int, seed uint64, failures int, took time.Duration) {
	fmt.Printf("%s\t%s\t%d\t%d\t%d\t%.1f\n", Mark, name, count, seed, failures, took.Seconds())
}
