// Package filled makes documents for tests.
package filled

import (
	"testing"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/units"
)

// Document returns a new document with fields set from name, text pairs. Numbers alone are in the metric unit of their field.
func Document(t testing.TB, pairs ...string) document.Document {
	t.Helper()
	d := document.New()
	for i := 0; i < len(pairs); i += 2 {
		id, text := pairs[i], pairs[i+1]
		f, ok := field.Find(id)
		if !ok {
			t.Fatalf("there is no field %s", id)
		}
		if p, err := units.Parse(f.KindOf(text), text, d.Units); err == nil && f.IsNumber() {
			text = p.Text
		}
		d.Fields[id] = document.Entry{Text: text, Origin: document.Assumed}
	}
	return d
}
