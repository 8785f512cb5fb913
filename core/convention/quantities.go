package convention

import (
	"math"

	"finwright/core/exchanger"
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Questions that several quantities ask.
var (
	tipAsk    = question{"tip", []string{"counted", "left_out"}}
	perAsk    = question{"per", []string{"finned", "overall"}}
	wallAsk   = question{"wall", []string{"as_stated", "tenth_more"}}
	finByAsk  = question{"fin_by", []string{"strip", "disc"}}
	dirtAsk   = question{"dirt", []string{"as_entered", "clean"}}
	bondAsk   = question{"bond", []string{"as_entered", "left_out"}}
	surfaceOf = question{"surface", []string{"all", "fins"}}
)

// shapes are the questions of a fin's shape.
func shapes(d *Design) []question {
	asks := []question{tipAsk}
	if d.Tube.Profile() == tube.Rolled {
		asks = append(asks, question{"thickness", []string{"rolled", "uniform"}})
	}
	if d.Tube.Fin.Type.Wound() && d.Tube.FootThickness() > 0 {
		roots := []string{"tube", "foot"}
		if d.Tube.Fin.Root == tube.FromFoot {
			roots = []string{"foot", "tube"}
		}
		asks = append(asks, question{"root", roots})
	}
	return asks
}

// areas are those of a fin of the shape that was answered, with its tip or without.
func areas(d *Design, answer func(string) string) tube.Areas {
	t := d.Tube
	if answer("thickness") == "uniform" {
		t.Fin.Profile = tube.Uniform
	}
	switch answer("root") {
	case "tube":
		t.Fin.Root = tube.FromTube
	case "foot":
		t.Fin.Root = tube.FromFoot
	}
	a := t.Areas()
	if answer("tip") == "left_out" {
		a.Tip = 0
	}
	return a
}

// counted is the surface that was answered [m2/m].
func counted(a tube.Areas, answer func(string) string) float64 {
	if answer("surface") == "fins" {
		return float64(a.Fin())
	}
	return float64(a.Total())
}

// perLength spreads what a finned metre has over the length that was answered.
func perLength(d *Design, answer func(string) string, x float64) float64 {
	if answer("per") == "overall" {
		return x * float64(d.Tube.FinnedLength()/d.Tube.Length)
	}
	return x
}

var surface = Quantity{
	ID: "surface", Kind: units.SurfacePerMetre, Units: []string{"m2/m", "ft2/ft"},
	asks: func(d *Design) []question { return append(shapes(d), surfaceOf, perAsk) },
	of: func(d *Design, answer func(string) string) float64 {
		a := areas(d, answer)
		x := perLength(d, answer, counted(a, answer))
		if answer("per") == "overall" && answer("surface") != "fins" { // the plain ends count with what they are
			x += float64(a.Bare) * (1 - float64(d.Tube.FinnedLength()/d.Tube.Length))
		}
		return x
	},
}

var ratio = Quantity{
	ID: "ratio", Kind: units.Factor,
	asks: func(d *Design) []question {
		return append(shapes(d), surfaceOf, question{"to", []string{"bare", "inside", "root"}})
	},
	of: func(d *Design, answer func(string) string) float64 {
		x := counted(areas(d, answer), answer)
		switch answer("to") {
		case "inside":
			return x / float64(d.Tube.InsideArea())
		case "root":
			t := d.Tube
			t.Fin.Root = tube.FromFoot
			return x / (math.Pi * float64(t.RootOD()))
		}
		return x / (math.Pi * float64(d.Tube.OD))
	},
}

// Densities [kg/m3] that others count with, beside the metal's own.
//
// Source: common practice, no source.
var densities = map[material.Family][]string{
	material.Aluminium:   {"2700", "2710"},
	material.CarbonSteel: {"7850"},
}

var rounded = map[string]float64{"2700": 2700, "2710": 2710, "7850": 7850}

var mass = Quantity{
	ID: "mass", Kind: units.WeightPerMetre, Units: []string{"kg/m", "lb/ft"},
	asks: func(d *Design) []question {
		asks := []question{{"mass", []string{"all", "fins", "tube"}}, wallAsk, perAsk}
		if d.Tube.Fin.Type.Wound() {
			asks = append(asks, finByAsk)
		}
		if others := densities[d.FinMetal.Family]; others != nil {
			asks = append(asks, question{"density", append([]string{"own"}, others...)})
		}
		return asks
	},
	of: func(d *Design, answer func(string) string) float64 {
		t := d.Tube
		if rho, ok := rounded[answer("density")]; ok {
			t.Fin.Density = units.Density(rho)
		}
		fins := float64(t.FinMass())
		if answer("fin_by") == "disc" {
			tip, d := float64(t.FinOD()), float64(t.OD)
			fins = t.Fin.Count.PerMetre() * math.Pi / 4 * (tip*tip - d*d) * float64(t.Fin.Strip) * float64(t.Fin.Density)
		}
		if answer("wall") == "tenth_more" {
			t.Wall *= 1.1
		}
		fins = perLength(d, answer, fins)
		switch answer("mass") {
		case "fins":
			return fins
		case "tube":
			return float64(t.TubeMass())
		}
		return fins + float64(t.TubeMass())
	},
}

var overall = Quantity{
	ID: "overall", Kind: units.Film, Units: []string{"W/m2K", "Btu/h ft2 F", "kcal/h m2 C"},
	asks: func(*Design) []question {
		return []question{{"on", []string{"bare", "total", "inside"}}, dirtAsk, bondAsk}
	},
	of: func(d *Design, answer func(string) string) float64 {
		resistance := 0.0
		for _, r := range d.Thermal.Overall.Resistances {
			switch r.Layer {
			case exchanger.InsideFouling, exchanger.OutsideFouling:
				if answer("dirt") == "clean" {
					continue
				}
			case exchanger.Joint:
				if answer("bond") == "left_out" {
					continue
				}
			}
			resistance += r.OnBare
		}
		switch answer("on") {
		case "total":
			return 1 / (resistance * d.Tube.Areas().Ratio())
		case "inside":
			return float64(d.Tube.OD/d.Tube.InsideOD()) / resistance
		}
		return 1 / resistance
	},
}
