package document_test

import (
	"encoding/json"
	"maps"
	"testing"

	"finwright/core/document"
	"finwright/core/proof"
	"finwright/core/strict"
	"finwright/testdata/cases"
)

// Entries read by hand are those that the library reads, whatever became of their text on the way: a letter changed, doubled or lost, or one
// that JSON writes in another way.
func TestFieldsAreReadAsTheLibraryReadsThem(t *testing.T) {
	var list []document.Document
	for _, c := range cases.List() {
		d, _ := cases.Find(c.ID)
		list = append(list, d)
	}
	awkward := []string{`\u00b0`, "\xff", "°", " ", `"`, `\`, "{", "}", ":", ",", "null", "\n", "½", `{"text":"a"}`, `"TEXT"`, `"other":"",`}
	proof.Proof{Share: 1000, Full: 100_000, Seed: 14}.Run(t, func(t *proof.Case) {
		r := t.Rand
		d := list[r.IntN(len(list))]
		some := document.Fields{}
		for id, entry := range d.Fields {
			if r.IntN(12) == 0 {
				some[id] = entry
			}
		}
		text, err := json.Marshal(some)
		if err != nil {
			t.Fatal(err)
		}
		for range r.IntN(3) {
			at := r.IntN(len(text))
			put := awkward[r.IntN(len(awkward))]
			text = append(text[:at:at], append([]byte(put), text[min(len(text), at+r.IntN(2)):]...)...)
		}
		var want map[string]document.Entry
		wrong := strict.Decode(text, &want)
		var got document.Fields
		err = strict.Decode(text, &got)
		if (err == nil) != (wrong == nil) || err == nil && !maps.Equal(got, want) {
			t.Errorf("%s\n%v, %v\n%v, %v", text, got, err, want, wrong)
		}
	})
}
