package report

import (
	"fmt"
	"math"
	"strings"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Card says a tube in both systems of units, and in one line of the reader's own; and what is asked for on the telephone: weight and
// area of a tube and of the order, in another line.
type Card struct {
	Rows   []CardRow `json:"rows"`
	Line   string    `json:"line"`
	Totals []CardRow `json:"totals"`
	Told   string    `json:"told"` // the totals
}

// CardRow is one quantity: SI and US as the two systems print it, Gauge where a wall is that of a wire gauge.
type CardRow struct {
	Label string `json:"label"`
	SI    string `json:"si"`
	US    string `json:"us"`
	Gauge string `json:"gauge,omitempty"`
}

// gaugeSlack is how far a wall may lie from that of a gauge and still be it [m]: tables print it to a hundredth of a millimetre.
const gaugeSlack = 0.5e-5

// Card tells of a design that has been rated.
func (w Writer) Card(in field.Input, h design.Heat) Card {
	t := in.Tube
	surface := in.Surface(&h.Thermal)
	areas := surface.Areas
	values := []struct {
		label string
		kind  units.Kind
		si    float64
	}{
		{"field.tube_od", units.Diameter, float64(t.OD)},
		{"field.tube_wall", units.Wall, float64(t.Wall)},
		{"figure.fin_od", units.Diameter, float64(t.FinOD())},
		{"field.fin_height", units.Height, float64(t.Fin.Height)},
		{"field.strip_thickness", units.Thickness, float64(t.Fin.Strip)},
		{"field.fin_pitch", units.FinCount, float64(t.Fin.Count)},
		{"figure.pitch", units.Gap, float64(t.Pitch())},
		{"field.tube_length", units.Distance, float64(t.Length)},
		{"figure.total_area", units.SurfacePerMetre, float64(areas.Total())},
		{"figure.bare_area", units.SurfacePerMetre, float64(areas.Bare)},
		{"figure.inside_area", units.SurfacePerMetre, float64(t.InsideArea())},
		{"figure.fin_mass", units.WeightPerMetre, float64(t.FinMass())},
		{"figure.metre_mass", units.WeightPerMetre, float64(t.TubeMass() + t.FinMass())},
	}
	var out Card
	args := make([]any, 0, 2*len(values))
	for i, v := range values {
		print := func(s units.System) string {
			if strings.HasPrefix(v.label, "field.") {
				return w.Texts.Numbers.Echo(v.kind, v.si, s) // as it could be typed
			}
			return w.Texts.Numbers.Figure(v.kind, v.si, s).String()
		}
		row := CardRow{Label: w.Texts.Text(v.label), SI: print(units.SI), US: print(units.US)}
		if v.kind == units.Wall {
			row.Gauge = gaugeOf(t)
		}
		out.Rows = append(out.Rows, row)
		args = append(args, fmt.Sprintf("v%d", i), print(w.System))
	}
	out.Line = w.say(message.New("card.line", args...))
	out.Totals, out.Told = w.totals(in)
	return out
}

// totals are mass and outside surface, bare ends among it, of one tube and, where it orders more, of all that are ordered.
func (w Writer) totals(in field.Input) (rows []CardRow, said string) {
	t, n := in.Tube, in.Job.Quantity
	weight, area := float64(t.Weight()), float64(t.FinnedSurface()+t.PlainSurface())
	all := float64(n)
	args := []any{"count", n, "length", message.Amount{Kind: units.Distance, SI: float64(t.Length)}}
	for _, v := range []struct {
		key  string
		kind units.Kind
		si   float64
	}{
		{"tube_mass", units.Weight, weight},
		{"tube_area", units.SurfacePerTube, area},
		{"order_mass", units.Weight, weight * all},
		{"order_area", units.SurfacePerTube, area * all},
	} {
		print := func(s units.System) string { return w.Texts.Numbers.Figure(v.kind, v.si, s).String() }
		args = append(args, v.key, print(w.System))
		rows = append(rows, CardRow{Label: w.say(message.New("card."+v.key, "count", n)), SI: print(units.SI), US: print(units.US)})
	}
	if n == 1 {
		return rows[:2], w.say(message.New("card.told_one", args...))
	}
	return rows, w.say(message.New("card.told", args...))
}

// gaugeOf names the wire gauge that the wall is, if it is one.
func gaugeOf(t tube.Tube) string {
	for n := 1; ; n++ {
		wall, ok := units.BWG(n)
		if !ok {
			return ""
		}
		if math.Abs(float64(wall)-float64(t.Wall)) < gaugeSlack {
			return fmt.Sprintf("%d BWG", n)
		}
	}
}
