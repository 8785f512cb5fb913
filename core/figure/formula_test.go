package figure

import (
	"slices"
	"testing"

	"finwright/core/message"
)

func TestFillPutsNumbersIn(t *testing.T) {
	f := Formulas["side_area"]
	got := f.Fill(func(s string) (string, bool) {
		v, ok := map[string]string{"n": "393.7", "D_f": "0.05715", "D_r": "0.0254"}[s]
		return v, ok
	})
	if want := "393.7 π/2 (0.05715² − 0.0254²)"; got != want {
		t.Errorf("Fill = %q, want %q", got, want)
	}
}

func TestSymbolsKeepTheirIndex(t *testing.T) {
	got := Formula{Expression: "2√r_o [I_{2/3}(z_e) − b′_2 a_{ _"}.Symbols()
	if want := []string{"r_o", "I_{2/3}", "z_e", "b′_2", "a"}; !slices.Equal(got, want) {
		t.Errorf("Symbols = %q, want %q", got, want)
	}
}

func TestEveryFormulaHasSourceAndRange(t *testing.T) {
	for id, f := range Formulas {
		for _, key := range []string{f.Source, f.Valid} {
			if !message.English().Has(key) {
				t.Errorf("%s: no text for %s", id, key)
			}
		}
	}
}
