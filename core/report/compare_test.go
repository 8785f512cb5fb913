package report

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/compare"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/units"
)

// shownBeside compares changes of the house's design with it.
func shownBeside(t *testing.T, system units.System, held compare.Held, changes ...[]string) Comparison {
	t.Helper()
	designs, names := []document.Document{document.New()}, make([]string, len(changes)+1)
	designs[0].Units = system
	for _, pairs := range changes {
		d := designs[0].With(document.Differences{})
		for i := 0; i < len(pairs); i += 2 {
			d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
		}
		designs = append(designs, d)
	}
	c := shop.House()
	table := compare.Of(designs, 0, held, "", &c)
	w := Writer{Texts: message.English(), System: system, Currency: c.Currency}
	return w.Comparison(&table, names, true)
}

// figure is the line of one.
func (c Comparison) figure(t *testing.T, id string) ComparedLine {
	t.Helper()
	i := slices.IndexFunc(c.Figures, func(l ComparedLine) bool { return l.ID == id })
	if i < 0 {
		t.Fatalf("no %s", id)
	}
	return c.Figures[i]
}

// The core says in a sentence what a change does, and in another what it does in the place of the base.
func TestComparisonIsSaid(t *testing.T) {
	c := shownBeside(t, units.SI, compare.Box, []string{"fin_pitch", "11 fpi"}, []string{"fin_height", "10 mm"}, []string{"upset", "500 °C"}, []string{"fin_pitch", "what"}, nil)
	for i, want := range []string{
		"",
		"11 fpi against 10 fpi: 2.5 % more duty, 5.5 % more pressure drop, 2.8 % heavier, about the same price; both by the same method: the difference is surer than either value.",
		"Fin height 10 mm against 15.875 mm: 144 tubes for 120, about the same duty, 28 % more pressure drop, 11 % lighter, ",
		"Process at upset 500 °C against not stated: ",
		"what is refused: ",
		"As the base against the base: about the same duty, about the same pressure drop, about as heavy, about the same price; ",
	} {
		if got := c.Columns[i].Said; !strings.HasPrefix(got, want) || i > 0 && got == "" {
			t.Errorf("%d: %q, want %q", i, got, want)
		}
	}
	if got := c.Columns[1].Instead; got != "11 fpi 0.4 mm for 10 fpi 0.4 mm: U × A up 4.6 % (same box and mass flow of the gas)." {
		t.Errorf("%q", got)
	}
	if got := c.Columns[2].Followed; len(got) < 2 || got[0] != "36 of 36.8 tubes in a row, 42 mm of the width unused" {
		t.Errorf("%q", got)
	}
	// What is refused is not named with a price, and leaves with its reason.
	refused := c.Columns[3]
	if strings.Contains(refused.Said, "per tube") || !strings.Contains(refused.Said, "It is refused: 500 °C") || !strings.Contains(refused.Instead, "500 °C at upset") {
		t.Errorf("%q, %q", refused.Said, refused.Instead)
	}
	if price := c.figure(t, "price").Cells; !price[3].Refused || price[3].Best || price[1].Refused {
		t.Errorf("the price of what is refused is not marked: %+v", price)
	}
	if none := c.Columns[4]; none.Refused == "" || none.Instead != "" || c.figure(t, "price").Cells[4].Value != "" {
		t.Errorf("%+v", none)
	}
}

// A cell says what it is against the base, in the reader's degrees where it is a temperature.
func TestComparedCells(t *testing.T) {
	for system, want := range map[units.System][2]string{units.SI: {"+0.8 K", "EUR"}, units.US: {"+1.4 °F", "EUR"}} {
		c := shownBeside(t, system, compare.Box, []string{"fin_pitch", "11 fpi"})
		if got := c.figure(t, "air_out").Cells[1].Against; got != want[0] {
			t.Errorf("%s: %q, want %q", system, got, want[0])
		}
		if duty := c.figure(t, "duty"); duty.Cells[1].Against != "+2.5 %" || !duty.Cells[1].Best || duty.Cells[0].Against != "" || duty.Cells[0].Best || duty.Same {
			t.Errorf("%+v", duty)
		}
		if price := c.figure(t, "price_tube"); price.Unit != want[1] {
			t.Errorf("%+v", price)
		}
		if !c.figure(t, "bank_tubes").Same {
			t.Error("tubes are not the same")
		}
		if len(c.Entries) != 1 || c.Entries[0].ID != "fin_pitch" {
			t.Errorf("%+v", c.Entries)
		}
	}
}

// What followed is marked, and reads in the digits of a figure; what has no name of its own has that of what it says otherwise.
func TestComparedEntries(t *testing.T) {
	c := shownBeside(t, units.SI, compare.Fan, []string{"fin_pitch", "11 fpi"}, []string{"fin_metal", "c11000"})
	i := slices.IndexFunc(c.Entries, func(l ComparedLine) bool { return l.ID == "face_velocity" })
	if i < 0 || !c.Entries[i].Cells[1].Moved || c.Entries[i].Cells[1].Value != "2.943 m/s" || c.Entries[i].Cells[0].Moved {
		t.Errorf("%+v", c.Entries)
	}
	if c.Columns[0].Name != "10 fpi" || c.Columns[1].Name != "11 fpi" || !strings.Contains(c.Columns[2].Name, "Copper") {
		t.Errorf("%q, %q, %q", c.Columns[0].Name, c.Columns[1].Name, c.Columns[2].Name)
	}
}
