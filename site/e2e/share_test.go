//go:build browser

package e2e

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"strings"
	"sync"
	"time"
)

// A browser test mostly waits. So where all are asked for they are shared out: processes take a few at a time, each with browsers of its
// own, so that tests of one process still follow one another.

const (
	processes = 2
	few       = 8 // tests that a process takes at a time: it starts two browsers for them
)

// portion tells a process that it has got its own.
const portion = "FINWRIGHT_PORTION"

// shared reports whether this process is to share tests out: none is picked by name.
func shared() bool {
	named := slices.ContainsFunc([]string{"run", "skip", "list", "bench"}, func(name string) bool { return flag.Lookup("test."+name).Value.String() != "" })
	return !named && os.Getenv(portion) == ""
}

// share runs all tests and returns the code to exit with. What fails is printed, with -v all.
func share() int {
	listed, err := exec.Command(os.Args[0], "-test.list", "^Test").Output()
	if err != nil {
		fmt.Fprintln(os.Stderr, "e2e:", err)
		return 1
	}
	names := strings.Fields(string(listed))
	slices.SortStableFunc(names, func(a, b string) int { return longer(b) - longer(a) })
	verbose := flag.Lookup("test.v").Value.String() == "true"
	var (
		group sync.WaitGroup
		mutex sync.Mutex
		code  int
	)
	take := func() (some []string) {
		mutex.Lock()
		defer mutex.Unlock()
		n := min(few, len(names))
		if n > 0 && longer(names[0]) > 0 {
			n = 1
		}
		some, names = names[:n], names[n:]
		return some
	}
	for range processes {
		group.Go(func() {
			for some := take(); len(some) > 0; some = take() {
				began := time.Now()
				one := exec.Command(os.Args[0], append(slices.Clone(os.Args[1:]), "-test.run", "^("+strings.Join(some, "|")+")$")...)
				one.Env = append(os.Environ(), portion+"=1")
				var said bytes.Buffer
				one.Stdout, one.Stderr = &said, &said
				err := one.Run()
				mutex.Lock()
				if err != nil {
					code = 1
				}
				if err != nil || verbose {
					fmt.Printf("%s\n%s (%.0f s)\n", bytes.TrimSpace(said.Bytes()), strings.Join(some, " "), time.Since(began).Seconds())
				}
				mutex.Unlock()
			}
		})
	}
	group.Wait()
	return code
}

// long are tests that take so long [s] that they are begun first, each by itself.
var long = map[string]int{"TestDayOfFaults": 100, "TestOneBuildToTheNext": 70, "TestRoomIsAccessible": 55, "TestLabelsKeepApartInTheBrowser": 40}

func longer(name string) int { return long[name] }
