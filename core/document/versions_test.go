package document

import (
	"slices"
	"testing"

	"finwright/core/field"
)

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
		if f.Since < 1 || f.Since > Version {
			t.Errorf("%s: since version %d of %d", f.ID, f.Since, Version)
		}
	}
}
