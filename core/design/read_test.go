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

// A day is read as it is written in files and links, and told where it is none or lies before what a design may name.
func TestDaysAreRead(t *testing.T) {
	for text, why := range map[string]string{
		" 2026-11-27 ": "", "2000-01-01": "", "": "", "27.11.2026": "error.day", "2026-02-30": "error.day", "1999-12-31": "error.day", "2026-1-5": "error.day", "soon": "error.day",
	} {
		d := document.New()
		d.Fields["ordered"] = document.Entry{Text: text}
		in, err := Read(d)
		var errs FieldErrors
		errors.As(err, &errs)
		told := ""
		if len(errs) > 0 {
			told = errs[0].Message.Key
		}
		if told != why || len(errs) > 1 || len(errs) == 1 && errs[0].Field != "ordered" {
			t.Errorf("%q: %v, want %q", text, err, why)
		}
		if text == " 2026-11-27 " && in.Wish.Ordered.String() != "2026-11-27" || text == "" && in.Wish.Ordered != 0 {
			t.Errorf("%q is read as %s", text, in.Wish.Ordered)
		}
	}
}
