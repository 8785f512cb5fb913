package steps

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"finwright/core/airside"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/material"
	"finwright/core/proof"
	"finwright/core/tube"
)

// beside is how far from an edge the designs on either side of it stand [-].
const beside = 1e-9

// edge is a limit, the edge of a regime or a threshold that core holds as data: where a quantity of a design, moved by one
// field, comes to a number.
type edge struct {
	name   string
	design []string // of pairs of field and text, over the house's
	field  string
	of     func(*answer) float64
	at     float64
}

// welded is what Weierman's correlations are for.
var welded = []string{"fin_type", "welded", "fin_metal", "cs1010", "strip_thickness", "1.27 mm", "fin_pitch", "5 fpi"}

// moves names the field that brings a variable of a correlation's range to its ends.
var moves = map[string]string{
	"reynolds": "face_velocity", "area_ratio": "fin_height", "diameter_ratio": "fin_height", "fin_height": "fin_height",
	"fin_thickness": "strip_thickness", "fin_pitch": "fin_pitch", "fin_count": "fin_pitch", "tube_od": "tube_od",
	"transverse_pitch": "tube_pitch", "pitch_ratio": "row_pitch",
}

// roomFor changes a design so that a variable can come to its lower (0) or upper (1) end.
var roomFor = map[string][]string{
	"reynolds 1":         {"tube_od", "50 mm", "fin_height", "8 mm"},
	"transverse_pitch 0": {"tube_od", "15.9 mm", "fin_height", "3 mm", "tip_clearance", "0.5 mm"},
	"pitch_ratio 0":      {"tube_pitch", "80 mm"},
	"pitch_ratio 1":      {"tube_pitch", "80 mm"},
}

// still are the variables that are whole numbers or choices: nothing lies beside their ends.
var still = map[string]bool{"rows": true, "in_line": true}

// ofMethods lists the ends of the ranges of correlations, each in use by name.
func ofMethods[A airside.Answer](entry string, methods []airside.Method[A], estimates func(*answer) []airside.Estimate[A]) (out []edge) {
	for i, m := range methods {
		design := []string{entry, m.ID}
		if m.FromMemory && m.ID[:3] == "wei" {
			design = append(design, welded...)
		}
		for j, l := range estimates(ask(of(design)))[i].Limits {
			if still[l.Variable] {
				continue
			}
			value := func(a *answer) float64 { return estimates(a)[i].Limits[j].Value }
			for side, end := range []float64{l.Low - l.Digit/2, l.High + l.Digit/2} {
				if !math.IsInf(end, 0) {
					on := slices.Concat(design, roomFor[fmt.Sprint(l.Variable, " ", side)])
					out = append(out, edge{name: fmt.Sprintf("%s %s %d", m.ID, l.Variable, side), design: on, field: moves[l.Variable], of: value, at: end})
				}
			}
		}
	}
	return out
}

// edges lists them all.
func edges() []edge {
	value := func(id string) func(*answer) float64 {
		return func(a *answer) float64 {
			si, ok := a.of(id)
			if !ok {
				return math.NaN()
			}
			return si
		}
	}
	between := func(a, b string) func(*answer) float64 {
		return func(w *answer) float64 { return value(a)(w) - value(b)(w) }
	}
	out := ofMethods("film_method", airside.FilmMethods, func(a *answer) []airside.Estimate[airside.Film] { return a.heat.Thermal.Films })
	out = append(out, ofMethods("drop_method", airside.DropMethods, func(a *answer) []airside.Estimate[airside.Drop] { return a.heat.Thermal.Drops })...)
	gap := func(a *answer) float64 { return a.heat.Thermal.Joint.Gap }
	inside := func(a *answer) float64 { return a.heat.Thermal.Inside.Reynolds }
	oil := []string{"inside_fluid", "own"}
	out = append(out,
		edge{name: "laminar flow ends", design: oil, field: "inside_flow", of: inside, at: 2300},
		edge{name: "turbulent flow begins", design: oil, field: "inside_flow", of: inside, at: 4000},
		edge{name: "the diagonal gap governs", design: []string{"tube_pitch", "120 mm"}, field: "row_pitch", at: 0, of: func(a *answer) float64 {
			p := a.in.Pitches()
			return p.TransversePitch - p.Obstruction() - 2*(p.DiagonalPitch()-p.Obstruction())
		}},
		edge{name: "fin efficiency is remarked on", field: "fin_height", of: value("fin_efficiency"), at: 0.70},
		edge{name: "the gap is remarked on", field: "fin_pitch", of: value("gap"), at: 0.001},
		edge{name: "the spread is told", field: "face_velocity", at: 0.10, of: func(a *answer) float64 {
			return between("film_high", "film_low")(a) / value("film")(a)
		}},
		edge{name: "duty wanted", field: "duty_wanted", at: 1 - 5e-4, of: func(a *answer) float64 { return value("duty")(a) / a.in.Bank.DutyWanted }},
		edge{name: "drop allowed", field: "drop_allowed", at: 1 + 5e-4, of: func(a *answer) float64 { return a.in.DropJudged(&a.heat.Thermal) / a.in.Bank.DropAllowed }},
		edge{name: "the bond opens", design: []string{"inside_pressure", "15000 kPa"}, field: "inside_in", of: between("hottest_root", "bond_loss"), at: 0},
		edge{name: "an upset opens the bond", field: "upset", of: gap, at: 0},
		edge{name: "hot gas opens the bond", design: []string{"gas", "dry_air", "inside_in", "40 °C", "fouling_inside", "0.002 m²K/W", "air_in", "60 °C"}, field: "air_upset", of: gap, at: 0},
		edge{name: "start-up and upset open the bond alike", design: []string{"start_up", "200 °C"}, field: "upset", at: 200, of: func(a *answer) float64 { return a.in.Beyond.Upset.SI }},
		edge{name: "start-up below the air", field: "start_up", of: func(a *answer) float64 { return a.in.Beyond.StartUp.SI - float64(a.in.Air.In) }, at: 0},
	)
	for _, f := range tube.Fixings {
		for _, limit := range []material.Value{f.Limits.Standard, f.Limits.House} {
			if limit.Known() {
				out = append(out, edge{
					name: string(f.Type) + " limit", design: []string{"fin_type", string(f.Type), "tube_wall", "3 mm"}, field: "upset", at: limit.SI,
					of: func(a *answer) float64 { return a.in.Beyond.Upset.SI },
				})
			}
		}
	}
	for _, m := range material.FinMetals {
		low, high := m.Conductivity.Range()
		for _, end := range []float64{float64(low), float64(high)} {
			out = append(out, edge{
				name: m.ID + " conductivity", design: []string{"fin_metal", m.ID}, field: "metal_temperature", at: end,
				of: func(a *answer) float64 { return a.in.Air.Metal.SI },
			})
		}
	}
	return out
}

// unreached are edges that no design of the house's comes to, each with its reason.
var unreached = map[string]string{
	"weierman_1976 fin_count 0":      "the field of the fin count ends at 20 to the metre",
	"weierman_1976_drop fin_count 0": "as its film",
}

// of makes a design of the house's and pairs of field and text.
func of(pairs []string) document.Document {
	d := document.New()
	for i := 0; i < len(pairs); i += 2 {
		d.Fields[pairs[i]] = document.Entry{Text: pairs[i+1], Origin: document.Customer}
	}
	return d
}

// TestNothingStepsAtAnEdge places designs at each edge and a billionth to either side.
func TestNothingStepsAtAnEdge(t *testing.T) {
	all := edges()
	proof.Proof{Share: 8, Full: len(all), Seed: 21}.Run(t, func(c *proof.Case) {
		e := all[(c.Index*53+7)%len(all)]
		c.In(e.name)
		f := field.Must(e.field)
		d := of(e.design)
		at := func(x float64) *answer {
			put(d, f, x)
			return ask(d)
		}
		x, ok := e.find(f, at)
		if !ok {
			if unreached[e.name] == "" {
				c.Errorf("no design comes to %g by %s", e.at, e.field)
			}
			return
		}
		here := at(x)
		for _, side := range []float64{-beside, beside} {
			there := at(x + side*math.Abs(x))
			if there == nil {
				continue // what is refused has no figures
			}
			for id := range here.places {
				a, ok := here.of(id)
				b, also := there.of(id)
				if !ok || !also {
					continue
				}
				by := differ(here, id, a, b)
				if may := excepted(id); by > allowed && (may == nil || !may.seen(here, there)) {
					c.Errorf("%s steps from %.12g to %.12g (%.2g of its scale) at %s = %.12g", id, a, b, by, e.field, x)
				}
			}
		}
	})
}

// find returns the number of the field at which the quantity comes to the edge.
func (e *edge) find(f *field.Field, at func(float64) *answer) (float64, bool) {
	const steps = 80
	over := func(x float64) (bool, bool) {
		a := at(x)
		if a == nil {
			return false, false
		}
		v := e.of(a)
		return v > e.at, !math.IsNaN(v)
	}
	low, high := max(f.Low, 1e-4*f.High), f.High
	if f.Low < 0 || f.Kind == "temp" {
		low = f.Low
	}
	place := func(i int) float64 {
		share := float64(i) / steps
		if low > 0 && f.Kind != "temp" {
			return low * math.Pow(high/low, share)
		}
		return low + (high-low)*share
	}
	was, known := over(place(0))
	for i := 1; i <= steps; i++ {
		now, ok := over(place(i))
		if ok && known && now != was {
			from, to := place(i-1), place(i)
			for range 60 {
				mid := from + (to-from)/2
				if m, ok := over(mid); !ok {
					return 0, false
				} else if m == was {
					from = mid
				} else {
					to = mid
				}
			}
			return to, true
		}
		was, known = now, ok
	}
	return 0, false
}
