package design

import (
	"fmt"
	"strings"

	"finwright/core/message"
)

// FieldError is a wrong entry: which field, and what to do about it.
type FieldError struct {
	Field   string
	Message message.Message
}

// FieldErrors is every wrong entry of a document at once.
type FieldErrors []FieldError

func (e FieldErrors) Error() string {
	var b strings.Builder
	b.WriteString("design:")
	for _, f := range e {
		fmt.Fprintf(&b, " %s: %s;", f.Field, f.Message.Key)
	}
	return b.String()
}

// Has reports whether field is among the wrong entries.
func (e FieldErrors) Has(field string) bool {
	for _, f := range e {
		if f.Field == field {
			return true
		}
	}
	return false
}

func (e *FieldErrors) add(field, key string, pairs ...any) {
	*e = append(*e, FieldError{field, message.New(key, pairs...)})
}
