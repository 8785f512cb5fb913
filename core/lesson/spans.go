package lesson

import (
	"strconv"
	"strings"

	"finwright/core/document"
)

// SpanEntry names the centre or the width of a bare span, counted from 0, among entries.
func SpanEntry(part string, at int) string { return spanMark + part + " " + strconv.Itoa(at) }

const spanMark = "span "

// spanPart reads such a name; part is empty where it names another entry.
func spanPart(name string) (part string, at int) {
	rest, ok := strings.CutPrefix(name, spanMark)
	if !ok {
		return "", 0
	}
	part, number, _ := strings.Cut(rest, " ")
	at, _ = strconv.Atoi(number)
	return part, at
}

// typeSpan types into a bare span, of which there may be one more than there are.
func typeSpan(d *document.Document, part string, at int, text string) {
	if at == len(d.Spans) {
		d.Spans = append(d.Spans, document.Span{})
	}
	e := document.Entry{Text: text, Origin: document.Customer}
	if part == "width" {
		d.Spans[at].Width = e
	} else {
		d.Spans[at].Centre = e
	}
}
