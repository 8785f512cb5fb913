package field

import (
	"strings"

	"finwright/core/units"
)

// Range is from one number to another [SI]; the zero Range is none.
type Range struct{ Low, High float64 }

func (r Range) holds(si float64) bool { return r.Low <= si && si <= r.High }

// Alone returns the unit that a number alone is taken in where the field holds a text, in system s: the one in sight there. It is
// empty where there is none.
func (f *Field) Alone(held string, s units.System) string {
	kind := f.KindOf(held)
	if p, err := units.Parse(kind, held, s); err == nil && p.Unit != "" && units.WrittenIn(kind, held, s) {
		return p.Unit
	}
	return kind.Unit(s)
}

// Typed returns the text that a number's field holds once text was typed over what it held, in system s. A number alone gets the unit in sight.
// Where that makes nothing usual and another unit does, nothing is taken: the texts of all readings come instead, the one in sight first.
func (f *Field) Typed(text, held string, s units.System) (taken string, asked []string) {
	if f.same(text, held, s) {
		return held, nil
	}
	p, err := units.Parse(f.KindOf(text), text, s)
	switch {
	case err != nil:
		return text, nil
	case !p.Alone:
		return p.Text, nil
	}
	kind := f.KindOf(held)
	texts, si := units.Readings(kind, text, f.Alone(held, s), s)
	if len(texts) == 0 {
		return text, nil
	}
	if kind == f.Kind && f.Usual != (Range{}) && !f.Usual.holds(si[0]) {
		for i, x := range si {
			if i == 0 || f.Usual.holds(x) {
				asked = append(asked, texts[i])
			}
		}
	}
	if len(asked) < 2 {
		return texts[0], nil
	}
	return "", asked
}

// same reports whether text, in system s, is what is shown there of a text that was typed in the other system.
func (f *Field) same(text, held string, s units.System) bool {
	kind := f.KindOf(held)
	if units.WrittenIn(kind, held, s) {
		return false
	}
	was, err := units.Parse(kind, held, s)
	shown, unshown := units.Parse(kind, units.Plain.Entry(kind, was.SI, s), s)
	typed, unread := units.Parse(kind, text, s)
	words := func(text string) string { return strings.Join(strings.Fields(text), " ") }
	return err == nil && unshown == nil && unread == nil && words(typed.Text) == words(shown.Text)
}
