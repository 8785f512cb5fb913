package shop

import (
	"fmt"
	"os"
	"testing"
)

// A shop that was saved by any version opens. Samples are frozen: a new version adds one.
func TestSamplesOfEveryVersionOpen(t *testing.T) {
	for version := 1; version <= Version; version++ {
		text, err := os.ReadFile(fmt.Sprintf("../../testdata/samples/shop-%d.json", version))
		if err != nil {
			t.Fatal(err)
		}
		if _, faults := Open(text); faults != nil {
			t.Errorf("version %d: %+v", version, faults)
		}
	}
}
