package bridge

import (
	"encoding/json"
	"slices"
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
		{"2,208 mm", "2.208 mm", ""},
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

// What a number alone may be meant as is asked in the language of the page, and each reading is taken as it stands.
func TestReadingsAreInTheLanguage(t *testing.T) {
	speak(t, "language.number.long 12.345,6\nlanguage.number.short 1.234,5\n")
	args := func(text string) map[string]any {
		return map[string]any{"document": cases.First(), "commands": []any{map[string]any{"op": "set", "values": []any{map[string]any{"field": "fin_pitch", "text": text}}}}}
	}
	sent, err := json.Marshal(args("10,5"))
	if err != nil {
		t.Fatal(err)
	}
	var asked struct{ Error *refusal }
	if err := json.Unmarshal(Call("edit", sent), &asked); err != nil || asked.Error == nil {
		t.Fatalf("10,5 is not asked about: %v", err)
	}
	if want := []string{"10,5 fins/m", "10,5 fpi"}; !slices.Equal(asked.Error.Readings, want) || asked.Error.Key != "error.which_unit" ||
		asked.Error.Message != "“10,5” alone would be 10,5 fins/m, which is not usual here. Which is meant?" {
		t.Errorf("asked %+v, want the readings %q", asked.Error, want)
	}
	var got answered
	if e := ask(t, "edit", args(asked.Error.Readings[1]), &got); e != "" || got.Document.Fields["fin_pitch"].Text != "10.5 fpi" {
		t.Errorf("the answer makes %q: %s", got.Document.Fields["fin_pitch"].Text, e)
	}
	for _, f := range got.View.Fields {
		if f.ID == "fin_pitch" && (f.Text != "413,4 fins/m" || f.Beside != "10,5 fpi" || f.Unit != "fins/m") {
			t.Errorf("shown as %+v", f)
		}
	}
}
