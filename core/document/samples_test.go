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
func TestSamplesOfAWorkingCopyOpen(t *testing.T) {
	for _, c := range []struct {
		file, title, mark string
		items, hand       int
	}{
		{"working-copy-3.json", "Second of two, changed", "", 2, 1},
		{"working-copy-4.json", "Second of two, changed", "E-101 A", 2, 1},
		{"working-copy-5.json", "Second of two, changed", "E-101 A", 2, 1},
		{"working-copy-6.json", "Second of two, changed", "E-101 A", 2, 1},
	} {
		f, err := OpenFile(sample(t, c.file))
		if err != nil || len(f.Job.Items) != c.items || f.Hand != c.hand {
			t.Fatalf("%s: %d items, %d in hand, %v", c.file, len(f.Job.Items), f.Hand, err)
		}
		if d := f.Job.Design(f.Hand); d.Title != c.title || d.Mark != c.mark {
			t.Errorf("%s: in hand is %q, %q", c.file, d.Title, d.Mark)
		}
	}
}

// What the first job that was saved says of itself and of its items is still there.
func TestSampleOfAJobIsWhole(t *testing.T) {
	f, err := OpenFile(sample(t, "design-4.json"))
	if err != nil {
		t.Fatal(err)
	}
	item := f.Job.Items[len(f.Job.Items)-1]
	if f.Job.Head != (Head{"Enquiry 7, cooler bays", "B", "2026-11-20", "2026-12-04"}) || item.ID != "k3-a1b2" || len(item.Kept) != 1 ||
		item.Kept[0].Name != "shorter fin" || f.Job.Base.With(item.Kept[0].Design).Text("fin_height") != "12 mm" ||
		item.Shown == nil || item.Shown.Day != "2026-11-27" || *item.Shown.Cells[0] != 812e3 {
		t.Errorf("head %+v, item %+v", f.Job.Head, item)
	}
}
