package bridge

import (
	"slices"
	"testing"

	"finwright/testdata/cases"
)

// Each example is calm, or is there to show what is remarked.
func TestExamplesRemarkWhatTheyAreToShow(t *testing.T) {
	wanted := map[string][]string{
		"1-oil-cooler": {},
		// Grooves lengthen the tube: bare spans end up elsewhere by more than they may. And tubes supplied by the customer must
		// cover first-off and rejects. What pressure needs below the groove, the customer has not said.
		"2-gas-cooler": {"watch least_wall", "watch position_tolerance", "watch spares"},
		// Hot flue gas asks for a welded fin. Its tall fin has the efficiency that such fins have.
		"3-heat-recovery": {"watch fin_height"},
	}
	for _, c := range cases.List() {
		var got reply
		if e := ask(t, "edit", map[string]any{"document": c.Document(), "commands": []any{}, "section": "making", "sheet": area}, &got); e != "" {
			t.Fatal(e)
		}
		remarks := []string{}
		for _, n := range got.View.Notices {
			remarks = append(remarks, string(n.State)+" "+n.Field)
		}
		if !slices.Equal(remarks, wanted[c.ID]) {
			t.Errorf("%s: %v, want %v", c.ID, remarks, wanted[c.ID])
		}
	}
}
