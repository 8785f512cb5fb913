package bridge

import (
	"testing"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/tube"
)

// Every kind of tube at every kind of work, also where its bank cannot be rated or does not do what it should: each section, the
// working of each of its figures, and the picture have all their texts. A text that is missing is a fault of the engine here.
func TestEveryAnswerHasItsTexts(t *testing.T) {
	sections := []string{"surface", "heat", "making"}
	sources, fluids, gases := []string{"computed", "given"}, []string{"water", "steam", "own"}, []string{"air", "own"}
	work := [][]string{
		nil,
		{"inside_in", "140 °C", "start_up", "150 °C", "upset", "20 °C", "duty_wanted", "9 MW", "drop_allowed", "20 Pa"},
		{"inside_in", "600 °C"},
		{"inside_in", "-50 °C"},
		{"tube_pitch", "20 mm"},
		{"air_in", "390 °C", "inside_flow", "0.001 kg/s"},
		{"air_in", "60 °C", "inside_in", "5 °C", "air_humidity", "100 %"},
	}
	count := len(tube.FinTypes()) * len(sections) * len(sources) * len(fluids) * len(gases) * len(work)
	proof.Proof{Share: 12, Full: count}.Run(t, func(c *proof.Case) {
		at := c.Index * 1009 % count // spreads a share
		pick := func(n int) int { defer func() { at /= n }(); return at % n }
		section := sections[pick(len(sections))]
		d := document.New()
		pairs := append([]string{
			"fin_type", string(tube.FinTypes()[pick(len(tube.FinTypes()))]), "film_source", sources[pick(2)],
			"inside_fluid", fluids[pick(3)], "gas", gases[pick(2)], "quantity", "40",
		}, work[pick(len(work))]...)
		for i := 0; i < len(pairs); i += 2 {
			d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
		}
		about := map[string]any{"document": d, "section": section, "room": map[string]any{"wide": 900, "card": 300}}
		with := func(key string, value any) map[string]any {
			args := map[string]any{"document": d, "section": section}
			args[key] = value
			return args
		}
		answerable(c, "svg", with("sheet", area))
		about["sheet"], about["commands"] = area, nil
		answerable(c, "edit", about)
		var got struct {
			View struct {
				Valid    bool
				Headline []struct{ ID string }
				Groups   []struct{ Figures []struct{ ID string } }
			}
		}
		if e := ask(c, "edit", about, &got); e != "" {
			c.Fatal(e)
		}
		if got.View.Valid != (len(got.View.Headline) > 0) {
			c.Errorf("%v: valid %v with %d figures that decide", pairs, got.View.Valid, len(got.View.Headline))
		}
		shown := got.View.Headline
		for _, g := range got.View.Groups {
			shown = append(shown, g.Figures...)
		}
		for _, f := range shown {
			answerable(c, "working", with("figure", f.ID))
		}
	})
}

// A text that is not there shows its key and stops nothing.
func TestMissingTextStopsNothing(t *testing.T) {
	old := message.Missing
	defer func() { message.Missing = old }()
	missed := 0
	message.Missing = func(string) { missed++ }
	methods["untold"] = with[struct{}, drawn](func(struct{}) (drawn, error) { return drawn{message.English().Text("never.said")}, nil })
	defer delete(methods, "untold")
	if got := string(Call("untold", []byte("{}"))); got != `{"data":{"svg":"never.said"}}` || missed != 1 {
		t.Errorf("%s after %d reports", got, missed)
	}
}
