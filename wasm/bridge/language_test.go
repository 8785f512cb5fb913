package bridge

import (
	"testing"

	"finwright/testdata/cases"
)

// speak has the engine speak another language for one test.
func speak(t testing.TB, file string) {
	t.Helper()
	if err := Speak(file); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { spoken.Store(nil) })
}

// Documents are the same in every language: what is typed with a comma there is held with a point, and shown with a comma.
func TestNumbersAreTypedInTheLanguage(t *testing.T) {
	speak(t, "language.number.long 12.345,6\nlanguage.number.short 1.234,5\n")
	set := func(field, text string) any {
		return map[string]any{"op": "set", "values": []any{map[string]any{"field": field, "text": text}}}
	}
	shown := func(got answered, field string) (text, fault string) {
		for _, f := range got.View.Fields {
			if f.ID == field {
				return f.Text, f.Error
			}
		}
		return "", ""
	}
	for _, c := range []struct{ typed, held, fault string }{
		{"2,108 mm", "2.108 mm", ""},
		{"2,4 mm", "2.4 mm", ""},
		{"2.108 mm", "2,108 mm", "“2.108 mm” can be read two ways. Write 2,108 with a point, or 2108 without a mark."},
		{"2,4,1", "2.4.1", "“2,4,1” cannot be read. Write a wall such as 2.11 mm, 0.083 in or 14 BWG."},
	} {
		var got answered
		args := map[string]any{"document": cases.First(), "commands": []any{map[string]any{"op": "all", "commands": []any{set("tube_wall", c.typed)}}}}
		if e := ask(t, "edit", args, &got); e != "" {
			t.Fatal(e)
		}
		text, fault := shown(got, "tube_wall")
		if got.Document.Fields["tube_wall"].Text != c.held || text != c.typed || fault != c.fault {
			t.Errorf("%s is held as %s, shown as %s: %s", c.typed, got.Document.Fields["tube_wall"].Text, text, fault)
		}
	}
}
