// Package filled makes documents for tests.
package filled

import (
	"testing"

	"finwright/core/document"
)

// Document returns a new document with fields set from name, text pairs.
func Document(t testing.TB, pairs ...string) document.Document {
	t.Helper()
	d := document.New()
	for i := 0; i < len(pairs); i += 2 {
		var err error
		d, err = document.Edit(d, document.Command{Op: "set", Values: []document.Value{{Field: pairs[i], Text: &pairs[i+1]}}})
		if err != nil {
			t.Fatal(err)
		}
	}
	return d
}
