// Command table reads the output of `go test -v` and ends it with a table of the proofs in it. Of the rest it shows
// what failed and what is done. It exits with 1 if anything failed.
package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"strings"
	"text/tabwriter"

	"finwright/core/proof"
)

func main() {
	if !gather(os.Stdin, os.Stdout) {
		os.Exit(1)
	}
}

// noise starts the lines that say nothing when all is well.
var noise = []string{"=== ", "PASS", "?", "--- PASS"}

// gather reports whether all passed and there was a proof among them.
func gather(in io.Reader, out io.Writer) bool {
	var proofs [][]string
	placed := 0 // proofs whose package's last line has come
	passed := true
	lines := bufio.NewScanner(in)
	lines.Buffer(nil, 1<<24)
	for lines.Scan() {
		line := lines.Text()
		if rest, found := strings.CutPrefix(line, proof.Mark+"\t"); found {
			row := strings.Split(rest, "\t")
			proofs = append(proofs, row)
			passed = passed && len(row) == 5 && row[3] == "0"
			continue
		}
		if words := strings.Fields(line); len(words) > 1 && (words[0] == "ok" || words[0] == "FAIL") {
			for ; placed < len(proofs); placed++ {
				proofs[placed][0] = strings.TrimPrefix(words[1], "finwright/") + " " + proofs[placed][0]
			}
		}
		passed = passed && !strings.HasPrefix(line, "FAIL") && !strings.HasPrefix(line, "--- FAIL")
		if !starts(strings.TrimSpace(line), noise) {
			fmt.Fprintln(out, line)
		}
	}
	table := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(table, "\ntest\tcount\tseed\tfailures\tseconds")
	for _, row := range proofs {
		fmt.Fprintln(table, strings.Join(row, "\t"))
	}
	table.Flush()
	return passed && lines.Err() == nil && len(proofs) > 0
}

func starts(line string, with []string) bool {
	for _, w := range with {
		if strings.HasPrefix(line, w) {
			return true
		}
	}
	return false
}
