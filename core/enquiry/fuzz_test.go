package enquiry

import (
	"slices"
	"testing"
	"unicode/utf8"
)

// sound reports what is wrong with a reading, whatever the text: a span that is none, an entry without words, or a word that is neither read
// nor kept.
func sound(read *Read) string {
	within := func(s Span) bool {
		return 0 <= s.From && s.From < s.To && s.To <= len(read.Text) && utf8.RuneStart(read.Text[s.From])
	}
	for _, x := range read.Readings {
		if len(x.From) == 0 || slices.ContainsFunc(x.From, func(s Span) bool { return !within(s) }) || x.Text == "" {
			return "a reading without words: " + x.Field
		}
	}
	if slices.ContainsFunc(read.Unread, func(s Span) bool { return !within(s) }) {
		return "a span outside the text"
	}
	return ""
}

func FuzzLine(f *testing.F) {
	for _, text := range []string{"450 off 1 in x 14 BWG avg SA-179 x 20 ft, 5/8 x 10 fpi Al L", "25.4/57/2.5", "½\" 1-1/2' 3/4-", "\x00\xff;;||x 1,2.3,4", "外径 25.4 mm 壁厚"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) {
			return // what comes in is JSON, or was decoded
		}
		read := Line(text)
		if why := sound(&read); why != "" {
			t.Errorf("%q: %s", text, why)
		}
		cell := Cell("Fin height", text)
		if why := sound(&cell); why != "" {
			t.Errorf("cell %q: %s", text, why)
		}
	})
}

func TestEveryNumberIsReadOrKept(t *testing.T) {
	for _, e := range examples(t, "lines.tsv", "short.tsv", "ambiguous.tsv", "not_made.tsv") {
		read := Line(e.text)
		if why := sound(&read); why != "" {
			t.Errorf("%s:%d: %s", e.file, e.line, why)
		}
		for _, token := range tokens(e.text) {
			if token.sort != aNumber && token.sort != unknown {
				continue
			}
			holds := func(s Span) bool { return s.From <= token.From && token.To <= s.To }
			found := slices.ContainsFunc(read.Unread, holds)
			for _, x := range read.Readings {
				found = found || slices.ContainsFunc(x.From, func(s Span) bool { return s.From < token.To && token.From < s.To })
			}
			if !found {
				t.Errorf("%s:%d %q: %q is neither read nor kept", e.file, e.line, e.text, e.text[token.From:token.To])
			}
		}
	}
}
