// Package links proves that the page unpacks whatever a link carries.
package links

import (
	"encoding/json"
	"os/exec"
	"strconv"
	"testing"
	"time"

	"finwright/core/proof"
)

const seed = 11

// Any fragment gives a text within bounds, a good one the text that was packed.
func TestLinksUnpack(t *testing.T) {
	count := 200
	if proof.Long() {
		count = 200_000
	}
	began := time.Now()
	output, err := exec.Command("node", "unpack.mjs", strconv.Itoa(seed), "0", strconv.Itoa(count)).Output()
	if err != nil {
		t.Fatalf("node: %v\n%s", err, output)
	}
	var got struct {
		Count, Failures int
		Told            []string
	}
	if err := json.Unmarshal(output, &got); err != nil {
		t.Fatalf("%v in %s", err, output)
	}
	for _, why := range got.Told {
		t.Error(why)
	}
	if got.Count != count || got.Failures > 0 {
		t.Errorf("%d of %d cases failed", got.Failures, got.Count)
	}
	if proof.Long() {
		proof.Report(t.Name(), count, seed, got.Failures, time.Since(began))
	}
}
