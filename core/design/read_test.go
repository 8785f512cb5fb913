package design

import (
	"errors"
	"testing"

	"finwright/core/document"
	"finwright/core/field"
)

// Each entry that cannot be used is told once, at its own field, and hidden ones not at all.
func TestEachWrongEntryIsToldOnce(t *testing.T) {
	for i := range field.Fields {
		f := &field.Fields[i]
		if f.Text != nil {
			continue
		}
		d := document.New()
		d.Fields[f.ID] = document.Entry{Text: "[[[["}
		_, err := Read(d)
		var errs FieldErrors
		errors.As(err, &errs)
		if used := f.Used(document.New().Text); used && (len(errs) != 1 || errs[0].Field != f.ID) || !used && err != nil {
			t.Errorf("%s, used %v: %v", f.ID, used, err)
		}
	}
}
