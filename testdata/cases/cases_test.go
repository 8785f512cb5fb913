package cases

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"finwright/core/document"
)

var update = flag.Bool("update", false, "save the examples in this version of the document")

// The examples are of this version: the first is read before the page shows a figure, and to lift it would take as long again.
func TestExamplesAreOfThisVersion(t *testing.T) {
	for _, c := range List() {
		text, err := document.Save([]document.Document{c.Document()})
		if err != nil {
			t.Fatal(err)
		}
		if *update {
			if err := os.WriteFile(c.ID+".json", text, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		if !bytes.Equal(text, c.text) {
			t.Errorf("%s is saved otherwise in version %d: make golden", c.ID, document.Version)
		}
	}
}
