// Package exchanger puts the films, the wall and the bond of a finned tube
// together to an overall coefficient, and tubes to a bank: its duty, its
// temperatures and whether its fins survive them.
//
// Everything is bare SI float64; temperatures are degrees Celsius. Areas: bare is
// pi d L as if there were no fins, total is the whole outside surface.
package exchanger

import "math"

// Path is what heat passes between the fluid in the tube and the air.
type Path struct {
	OD float64 // [m]
	ID float64 // [m]

	InsideFilm       float64 // [W/(m2 K)] on the inside area
	InsideFouling    float64 // [m2 K/W] on the inside area
	WallConductivity float64 // [W/(m K)]
	Bond             float64 // [m2 K/W] on the bare area
	OutsideFilm      float64 // [W/(m2 K)] on the total area
	OutsideFouling   float64 // [m2 K/W] on the total area

	AreaRatio         float64 // [-] total over bare
	SurfaceEfficiency float64 // [-] of the total area
}

// Layer names one resistance on the path.
type Layer string

// Layers, from the inside fluid outwards; each has a text "layer.<id>".
const (
	InsideFilm     Layer = "inside_film"
	InsideFouling  Layer = "inside_fouling"
	TubeWall       Layer = "wall"
	Joint          Layer = "bond"
	OutsideFouling Layer = "outside_fouling"
	OutsideFilm    Layer = "outside_film"
)

// Resistance is one layer's part.
type Resistance struct {
	Layer  Layer
	OnBare float64 // [m2 K/W] on the bare area
	Share  float64 // [-] of the sum
}

// Overall is the coefficient of a path, with what holds the heat back.
type Overall struct {
	OnBare      float64       // [W/(m2 K)] on the bare area
	OnTotal     float64       // [W/(m2 K)] on the total area
	OnInside    float64       // [W/(m2 K)] on the inside area
	Resistances [6]Resistance // from the inside fluid outwards
}

// OverallU returns the overall coefficient [W/(m2 K)] on each area, and the layers' resistances [m2 K/W].
//
//	1/U = (1/hi + Ri) d/di + d ln(d/di)/(2 kw) + Rb + (Ro + 1/ho)/(AR eta_o)
//
// Valid: every film, conductivity, AR and eta_o positive; d > di; foulings and bond not negative.
// Source: resistances in series, referred to the bare area; Kern & Kraus, Extended
// Surface Heat Transfer (1972), from memory.
func OverallU(p Path) Overall {
	inward := p.OD / p.ID
	used := p.AreaRatio * p.SurfaceEfficiency
	parts := [...]Resistance{
		{Layer: InsideFilm, OnBare: inward / p.InsideFilm},
		{Layer: InsideFouling, OnBare: inward * p.InsideFouling},
		{Layer: TubeWall, OnBare: p.OD * math.Log(inward) / (2 * p.WallConductivity)},
		{Layer: Joint, OnBare: p.Bond},
		{Layer: OutsideFouling, OnBare: p.OutsideFouling / used},
		{Layer: OutsideFilm, OnBare: 1 / (p.OutsideFilm * used)},
	}
	sum := 0.0
	for _, r := range parts {
		sum += r.OnBare
	}
	for i := range parts {
		parts[i].Share = parts[i].OnBare / sum
	}
	return Overall{OnBare: 1 / sum, OnTotal: 1 / (sum * p.AreaRatio), OnInside: inward / sum, Resistances: parts}
}

// UpTo returns the resistance [m2 K/W] on the bare area between the inside fluid and the outer end of a layer.
//
// Valid: a Layer.
// Source: resistances in series.
func (u Overall) UpTo(last Layer) float64 {
	sum := 0.0
	for _, r := range u.Resistances {
		sum += r.OnBare
		if r.Layer == last {
			return sum
		}
	}
	panic("exchanger: no layer " + string(last))
}

// shareUpTo returns the part of the resistance between the inside fluid and the
// outer end of a layer [-].
func (u Overall) shareUpTo(last Layer) float64 { return u.UpTo(last) * u.OnBare }
