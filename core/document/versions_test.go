package document

import (
	"fmt"
	"reflect"
	"slices"
	"testing"

	"finwright/core/field"
)

// lastListed is the last version whose lift has a list of its own.
const lastListed = 5

// Each field that a version added is filled by the migration to it, and no other: older designs open without one, and a
// later table changes nothing of what an old migration does.
func TestMigrationsFillWhatTheirVersionAdded(t *testing.T) {
	for version := 2; version <= Version; version++ {
		raw := map[string]any{"fields": map[string]any{}}
		migrations[version-2](raw)
		var filled, added []string
		for id := range raw["fields"].(map[string]any) {
			filled = append(filled, id)
		}
		for _, f := range field.Fields {
			if f.Since == version {
				added = append(added, f.ID)
			}
		}
		slices.Sort(filled)
		slices.Sort(added)
		if !slices.Equal(filled, added) {
			t.Errorf("the migration to version %d fills %v, the table says that it added %v", version, filled, added)
		}
	}
	for _, f := range field.Fields {
		if f.Since <= lastListed && f.Before != "" {
			t.Errorf("%s: what designs before version %d say is in a list of the lift to it", f.ID, f.Since)
		}
		if f.Since < 1 || f.Since > Version {
			t.Errorf("%s: since version %d of %d", f.ID, f.Since, Version)
		}
	}
}

// A field of the next version is a row: designs of every version before it say what the row says of them, not what the house
// says today, and one of its own version says what it says.
func TestNextVersionIsLiftedByItsRows(t *testing.T) {
	const next = Version + 1
	listed := field.Fields
	defer func() { field.Fields = listed }()
	for version := 1; version < next; version++ {
		field.Fields = listed
		text := sample(t, fmt.Sprintf("design-%d.json", version))
		old, err := Open(text)
		if err != nil {
			t.Fatal(err)
		}
		field.Fields = append(slices.Clone(listed), field.Field{ID: "invented", Since: next, Before: "2 m", House: "3 m"})
		got, err := open(text, next, migrationsTo(next))
		if err != nil {
			t.Fatalf("version %d: %v", version, err)
		}
		for i, d := range got.Job.Designs() {
			if want := (Entry{"2 m", House}); d.Fields["invented"] != want {
				t.Errorf("version %d, design %d: %v, want %v", version, i, d.Fields["invented"], want)
			}
			delete(d.Fields, "invented")
			if !reflect.DeepEqual(d, old[i]) {
				t.Errorf("version %d, design %d: another design", version, i)
			}
		}
	}
	raw := map[string]any{"fields": map[string]any{"invented": map[string]any{"text": "4 m"}}}
	migrationsTo(next)[next-2](raw)
	if text := raw["fields"].(map[string]any)["invented"].(map[string]any)["text"]; text != "4 m" {
		t.Errorf("what a design says became %v", text)
	}
}
