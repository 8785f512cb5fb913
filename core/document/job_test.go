package document

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"runtime"
	"strings"
	"testing"

	"finwright/core/units"
)

// full is a job with all that one can hold.
func full(t *testing.T) Job {
	base := edited(t, New(), Command{Op: "add_span"})
	other := edited(t, base, Command{Op: "set", Values: []Value{{Field: "fin_height", Text: text("12 mm")}}})
	other = edited(t, other, Command{Op: "mark", Text: "E-101"})
	third := edited(t, other, Command{Op: "units", System: units.US})
	third = edited(t, third, Command{Op: "remove_span"})
	job := JobOf([]Document{base, other, third})
	job.Head = Head{"Enquiry 7", "B", "2026-11-27", "2026-12-01"}
	job.Items[1].ID = "a1b2"
	duty := 812e3
	job.By = []Basis{{"engine.a1", "5f", "Quillhaven", "2026-10-05", []string{"duty", "price"}}}
	job.Items[1].Shown = &Shown{0, "2026-11-27", []*float64{&duty, nil}}
	job.Items[1].Kept = []Kept{{"lower", third.From(base)}}
	return job
}

func TestJobRoundTrip(t *testing.T) {
	job := full(t)
	saved, err := SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	got, err := OpenFile(saved)
	if err != nil || !reflect.DeepEqual(got.Job, job) {
		t.Errorf("opened %v, %v", got, err)
	}
	saved = []byte(strings.Replace(string(saved), `"format"`, `"item": "a1b2", "pending": [], "format"`, 1))
	if got, err := OpenFile(saved); err != nil || got.Hand != 1 {
		t.Errorf("in hand is %d, %v", got.Hand, err)
	}
}

// An item holds what it says otherwise than the base, and no more: a thousand that are alike are small.
func TestItemsHoldDifferences(t *testing.T) {
	items := full(t).Items
	for i, want := range []string{
		`{"id":"1","design":{}}`,
		`{"id":"a1b2","design":{"mark":"E-101","fields":{"fin_height":{"text":"12 mm","origin":"assumed"}}}`,
		`{"id":"3","design":{"mark":"E-101","units":"us","fields":{"fin_height":{"text":"12 mm","origin":"assumed"}},"spans":[]}}`,
	} {
		got, err := json.Marshal(items[i])
		if err != nil || !strings.HasPrefix(string(got), want) {
			t.Errorf("item %d is %s, want %s", i, got, want)
		}
	}
}

// A job of one item needs no base of another kind than the item itself.
func TestJobOfOneIsSavedWhole(t *testing.T) {
	job := JobOf([]Document{New()})
	job.Items[0].Design = edited(t, New(), Command{Op: "title", Text: "Cooler"}).From(job.Base)
	saved, err := SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	got, err := OpenFile(saved)
	if err != nil || got.Job.Base.Title != "Cooler" || !reflect.DeepEqual(got.Job.Items[0].Design, Differences{}) {
		t.Errorf("saved as %+v, %v", got.Job.Items, err)
	}
	if job.Items[0].Design.Title == nil {
		t.Error("saving has changed the job")
	}
}

func TestJobsThatAreRefused(t *testing.T) {
	saved, err := SaveJob(full(t))
	if err != nil {
		t.Fatal(err)
	}
	good := string(saved)
	for name, bad := range map[string]string{
		"same id":      strings.Replace(good, `"a1b2"`, `"1"`, 1),
		"no id":        strings.Replace(good, `"a1b2"`, `""`, 1),
		"id of a path": strings.Replace(good, `"a1b2"`, `"a.b"`, 1),
		"unknown field": strings.Replace(good, `"fields": {
     "fin_height"`, `"fields": {
     "fin_depth"`, 1),
		"origin":         good[:strings.Index(good, `"items"`)] + strings.Replace(good[strings.Index(good, `"items"`):], `"assumed"`, `"rumour"`, 1),
		"day":            strings.Replace(good, `"2026-12-01"`, `"tomorrow"`, 1),
		"long reference": strings.Replace(good, `"Enquiry 7"`, `"`+strings.Repeat("x", 300)+`"`, 1),
		"kept":           strings.Replace(good, `"us"`, `"cgs"`, 1),
		"no basis":       strings.Replace(good, `"by": 0`, `"by": 1`, 1),
		"short row":      strings.Replace(good, `"duty",`, ``, 1),
		"day of a row":   strings.Replace(good, `"day": "2026-11-27"`, `"day": "today"`, 1),
		"extra":          strings.Replace(good, `"reference"`, `"price": 1, "reference"`, 1),
		"no base":        strings.Replace(good, `"base"`, `"bass"`, 1),
		"more":           fmt.Sprintf(`{"format":%q,"version":%d,"items":[%s{}]}`, Format, Version, strings.Repeat("{},", maxItems)),
	} {
		if bad == good {
			t.Errorf("%s: the same", name)
		}
		_, err := OpenFile([]byte(bad))
		var oe *OpenError
		if !errors.As(err, &oe) || oe.Key != "open.shape" && oe.Key != "open.count" {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// An item of an older version is lifted as the whole design that it stands for, and is differences again.
func TestItemsAreLiftedWhole(t *testing.T) {
	job := full(t)
	saved, err := SaveJob(job)
	if err != nil {
		t.Fatal(err)
	}
	next := func(raw map[string]any) { // what it adds hangs on a field that most items leave to their base
		fields := raw["fields"].(map[string]any)
		height := fields["fin_height"].(map[string]any)["text"].(string)
		fields["tube_od"] = map[string]any{"text": "twice " + height, "origin": "house"}
	}
	got, err := open(saved, Version+1, append(migrations[:Version-1:Version-1], next))
	if err != nil {
		t.Fatal(err)
	}
	for i, d := range got.Job.Designs() {
		if want := "twice " + d.Fields["fin_height"].Text; d.Fields["tube_od"].Text != want || d.Mark != job.Design(i).Mark {
			t.Errorf("item %d: %q, want %q", i, d.Fields["tube_od"].Text, want)
		}
	}
	if n := len(got.Job.Items[1].Design.Fields); n != 2 || got.Job.Items[1].ID != "a1b2" {
		t.Errorf("item %s differs in %d entries", got.Job.Items[1].ID, n)
	}
	kept := got.Job.Items[1].Kept[0]
	if d := got.Job.Base.With(kept.Design); d.Fields["tube_od"].Text != "twice 12 mm" || d.Units != units.US {
		t.Errorf("kept is %v", kept)
	}
}

// A design of a list that says nothing of bare spans has none, whatever those before it have.
func TestDesignWithoutSpansHasNone(t *testing.T) {
	saved, err := json.Marshal(map[string]any{"format": Format, "version": 3, "designs": []Document{edited(t, New(), Command{Op: "add_span"}), {Units: units.SI, Fields: New().Fields}}})
	if err != nil {
		t.Fatal(err)
	}
	designs, err := Open([]byte(strings.Replace(string(saved), `,"spans":null`, "", 1)))
	if err != nil {
		t.Fatal(err)
	}
	again, err := Save(designs)
	if err != nil {
		t.Fatal(err)
	}
	if got, err := Open(again); err != nil || len(got[0].Spans) != 1 || len(got[1].Spans) != 0 {
		t.Errorf("opened again: %v, %v", got, err)
	}
}

// A list of millions is refused by its length, not taken apart: it costs about as much memory as its text.
func TestHugeListIsNotTakenApart(t *testing.T) {
	text := []byte(fmt.Sprintf(`{"format":%q,"version":2,"designs":[%s9]}`, Format, strings.Repeat("9,", 1<<20)))
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, err := Open(text)
	runtime.ReadMemStats(&after)
	var oe *OpenError
	if !errors.As(err, &oe) || oe.Key != "open.count" || oe.Arg("count") != 1<<20+1 {
		t.Errorf("%v", err)
	}
	if took := after.TotalAlloc - before.TotalAlloc; took > uint64(2*len(text)) {
		t.Errorf("took %d bytes for a text of %d", took, len(text))
	}
}
