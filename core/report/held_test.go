package report

import (
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// What stands still is said of each plot that hangs on it, with the whole numbers that followed; over the face velocity neither
// bank nor gas are held.
func TestPlotsSayWhatIsHeld(t *testing.T) {
	w := Writer{Texts: message.English(), System: units.SI}
	held := func(entries ...string) map[string]string {
		d := document.New()
		for i := 0; i < len(entries); i += 2 {
			d.Fields[entries[i]] = document.Entry{Text: entries[i+1], Origin: document.Customer}
		}
		in, h, err := design.ReadAndRate(d, nil)
		if err != nil {
			t.Fatal(err)
		}
		out := map[string]string{}
		for _, c := range append(w.Curves(in, h), w.HeatCurves(in, h)...) {
			out[c.ID] = c.Held
		}
		out["map"], out["areas"] = w.MapFrame(in, h, rating.Efficiency).Held, w.MapFrame(in, h, rating.AreaRatio).Held
		return out
	}
	for _, c := range []struct {
		entries []string
		want    map[string]string
	}{
		{nil, map[string]string{
			"film": "Held: Flow and inlet", "yield_height": "Held: Face and tip clearance; Mass flow; Flow and inlet; 23 to 46 whole tubes in a row",
			"yield_pitch": "Held: Face and tip clearance; Mass flow; Flow and inlet", "height": "Held: Face and tip clearance; Mass flow; 23 to 58 whole tubes in a row",
			"map": "Held: Face and tip clearance; Mass flow; 23 to 53 whole tubes in a row", "areas": "",
		}},
		{[]string{"hold_space", "depth", "hold_air", "fan_power", "hold_process", "outlet", "passes", "1"}, map[string]string{
			"film": "Held: Inlet and outlet", "yield_height": "Held: Depth and tip clearance; Fan power; Inlet and outlet; 3 to 6 whole rows",
		}},
		{[]string{"inside_fluid", "steam", "inside_in", "130 °C"}, map[string]string{"film": "", "yield_pitch": "Held: Face and tip clearance; Mass flow"}},
		{[]string{"film_source", "given"}, map[string]string{"height": "", "map": ""}},
	} {
		got := held(c.entries...)
		for id, want := range c.want {
			if got[id] != want {
				t.Errorf("%v: %s says %q, want %q", c.entries, id, got[id], want)
			}
		}
	}
}
