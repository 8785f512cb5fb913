package document

import (
	"encoding/json"
	"fmt"
	"os"
	"testing"
)

// sample reads a file as a version of the page wrote it. Samples are frozen: a new version adds one.
func sample(t *testing.T, name string) []byte {
	t.Helper()
	text, err := os.ReadFile("../../testdata/samples/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// What was saved by any version opens, and each entry that it holds still says what it said.
func TestSamplesOfEveryVersionOpen(t *testing.T) {
	for version := 1; version <= Version; version++ {
		text := sample(t, fmt.Sprintf("design-%d.json", version))
		var frozen struct {
			Version int
			Designs []Document // of the versions that held a list
			Base    Document
			Items   []Item
		}
		if err := json.Unmarshal(text, &frozen); err != nil {
			t.Fatal(err)
		}
		if frozen.Version != version {
			t.Errorf("the sample of version %d is of version %d", version, frozen.Version)
		}
		if version >= itemsSince {
			frozen.Designs = Job{Base: frozen.Base, Items: frozen.Items}.Designs()
		}
		got, err := Open(text)
		if err != nil {
			t.Errorf("version %d: %v", version, err)
			continue
		}
		if len(got) != len(frozen.Designs) || len(got) == 0 {
			t.Fatalf("version %d: %d designs of %d", version, len(got), len(frozen.Designs))
		}
		for i, d := range got {
			was := frozen.Designs[i]
			if d.Title != was.Title || d.Units != was.Units || len(d.Spans) != len(was.Spans) {
				t.Errorf("version %d, design %d: %q in %s with %d spans", version, i, d.Title, d.Units, len(d.Spans))
			}
			for id, f := range was.Fields {
				if d.Fields[id] != f {
					t.Errorf("version %d, design %d: %s was %v and is %v", version, i, id, f, d.Fields[id])
				}
			}
		}
	}
}

// A browser's working copy is an envelope with members beside the designs.
func TestSampleOfAWorkingCopyOpens(t *testing.T) {
	f, err := OpenFile(sample(t, "working-copy-3.json"))
	if err != nil || len(f.Job.Items) != 2 || f.Hand != 1 {
		t.Fatalf("%d designs, %d in hand, %v", len(f.Job.Items), f.Hand, err)
	}
	if title := f.Job.Design(f.Hand).Title; title != "Second of two, changed" {
		t.Errorf("in hand is %q", title)
	}
}
