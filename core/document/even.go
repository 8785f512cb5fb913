package document

import (
	"strconv"
	"strings"

	"finwright/core/units"
)

// DefaultSpan is the bare width at a support [m]. Engineering judgement, editable.
const DefaultSpan = 0.060

// evenSpans reads "6 x 60 mm" as so many bare spans of that width, as far from one another as the first and the last are from the
// ends of the tube; "6" takes the default width.
func evenSpans(d Document, text string) ([]Span, error) {
	text = strings.TrimSpace(text)
	width := Entry{units.Echo(units.Distance, DefaultSpan, d.Units), House}
	digits := len(text) - len(strings.TrimLeft(text, "0123456789"))
	n, err := strconv.Atoi(text[:digits])
	rest := strings.TrimLeft(text[digits:], " \u202f\u00a0xX×*")
	if rest != "" && err == nil {
		width = Entry{withUnit(units.Distance, rest, d.Units), Assumed}
		_, err = units.Parse(units.Distance, rest, d.Units)
	}
	if err != nil || n < 1 || n > maxSpans {
		return nil, refuse("error.even_spans", "most", maxSpans)
	}
	length, err := units.Parse(units.Distance, d.Fields["tube_length"].Text, d.Units)
	if err != nil {
		length.SI = 6
	}
	spans := make([]Span, n)
	for i := range spans {
		spans[i] = Span{Centre: Entry{units.Echo(units.Distance, length.SI*float64(i+1)/float64(n+1), d.Units), Assumed}, Width: width}
	}
	return spans, nil
}

// MostSpans is how many bare spans a document holds at the most.
const MostSpans = maxSpans

// withUnit writes the unit of the system in force behind a bare number, so that
// the text keeps its meaning when the system changes.
func withUnit(k units.Kind, text string, s units.System) string {
	if p, err := units.Parse(k, text, s); err == nil && len(p.Text) <= maxText {
		return p.Text
	}
	return text
}
