// Package airside computes the film coefficient and the pressure drop of a gas
// crossing a bank of finned tubes, by several published correlations, each with
// its range. One file holds one correlation.
//
// Everything is bare SI float64. Reynolds and Nusselt numbers are on the tube OD and
// the mass velocity in the least free area; film coefficients are on the whole
// outside surface, fin efficiency not yet applied; gas properties are at the bulk
// mean. Where a correlation holds the gap or thickness of the fins, they are those
// at the root, the strip as bought, as the handbooks' worked examples have it; the
// free area is that left by the metal really there.
package airside

import (
	"math"

	"finwright/core/fluid"
)

// Layout says how the rows follow one another.
type Layout int

const (
	// Staggered rows are shifted by half a transverse pitch.
	Staggered Layout = iota
	// InLine rows stand behind one another.
	InLine
)

// Bank is a block of like finned tubes.
//
// Valid: OD < FinOD < TransversePitch is for the caller to check, and a positive
// FreeRatio; RootThickness and MeanThickness below FinPitch; Rows and TubesPerRow
// from 1.
type Bank struct {
	Layout          Layout
	OD              float64 // [m] where the fin springs from
	FinOD           float64 // [m]
	FinPitch        float64 // [m]
	RootThickness   float64 // [m] of the fin at the tube: strip as bought
	MeanThickness   float64 // [m] of the fin over its height
	AreaRatio       float64 // [-] whole outside area over that of the bare tube
	TransversePitch float64 // [m] across the flow
	RowPitch        float64 // [m] from row to row along the flow
	Rows            int
	TubesPerRow     int
	// EdgePitches [-] is the width, in transverse pitches, that the face area counts
	// beside TubesPerRow pitches and that corbels keep the gas out of: 0 where none,
	// 0.5 or 1 in books. It moves pressure drop by 5 to 12 %, so state it.
	EdgePitches float64
}

// FinHeight returns the height of the fin [m].
//
// Valid: as Bank.
// Source: plane geometry.
func (b Bank) FinHeight() float64 { return (b.FinOD - b.OD) / 2 }

// Gap returns the clear gap between fins at the tube [m].
//
// Valid: as Bank.
// Source: plane geometry.
func (b Bank) Gap() float64 { return b.FinPitch - b.RootThickness }

// DiagonalPitch returns the distance between tubes of neighbouring staggered rows [m].
//
// Valid: Staggered.
// Source: plane geometry.
func (b Bank) DiagonalPitch() float64 {
	return math.Sqrt(b.RowPitch*b.RowPitch + b.TransversePitch*b.TransversePitch/4)
}

// Obstruction returns the width that a tube blocks, per length of tube [m]:
// d + 2 hf tm/p.
//
// Valid: as Bank.
// Source: plane geometry.
func (b Bank) Obstruction() float64 { return b.OD + 2*b.FinHeight()*b.MeanThickness/b.FinPitch }

// FreeRatio returns the least free area over the face area [-].
//
//	sigma = min(PT - a, 2 (PD - a))/PT x N/(N + edge);  in line: PT - a
//
// Valid: fins of neighbouring tubes may interleave but not touch.
// Source: plane geometry; the face area of the GPSA data book has edge = 0, the
// open library fluids has 0.5 or 1.
func (b Bank) FreeRatio() float64 {
	blocked := b.Obstruction()
	free := b.TransversePitch - blocked
	if b.Layout == Staggered {
		free = min(free, 2*(b.DiagonalPitch()-blocked))
	}
	if b.EdgePitches == 0 {
		return free / b.TransversePitch
	}
	n := float64(b.TubesPerRow)
	return free / b.TransversePitch * n / (n + b.EdgePitches)
}

// Flow is the gas that meets the bank.
type Flow struct {
	fluid.Properties
	FaceMassVelocity float64 // [kg/(m2 s)] mass flow over face area
	WallPrandtl      float64 // [-] at the wall; 0 leaves the property correction out
	TemperatureRatio float64 // [-] absolute, gas over mean fin; 0 leaves the correction out
}

// Crossing is a gas that crosses a bank, with what the correlations need of both, found once for all of them.
type Crossing struct {
	Bank
	Flow
	Free                    float64 // [-] as FreeRatio
	MassVelocity            float64 // [kg/(m2 s)] in the least free area
	Reynolds                float64 // [-] on the tube OD, in the least free area
	logReynolds, logPrandtl float64
}

// Cross returns a Crossing: sigma [-], G = face mass velocity/sigma [kg/(m2 s)], Re = G d/mu [-].
//
// Valid: as Bank and fluid.Properties.
// Source: definitions.
func Cross(b Bank, f Flow) Crossing {
	free := b.FreeRatio()
	g := f.FaceMassVelocity / free
	re := g * b.OD / f.Viscosity
	return Crossing{b, f, free, g, re, math.Log(re), math.Log(f.Prandtl())}
}

// temperatureRatio returns the absolute temperature ratio [-] in force.
func (f *Flow) temperatureRatio() float64 {
	if f.TemperatureRatio == 0 {
		return 1
	}
	return f.TemperatureRatio
}

// Film is the answer of a film correlation.
type Film struct {
	Coefficient float64 // [W/(m2 K)] on the whole outside area
	Nusselt     float64 // [-] on tube OD
	Reynolds    float64 // [-] on tube OD, in the least free area
}

// film makes the answer from a Nusselt number [-].
func film(x *Crossing, nu float64) Film {
	return Film{Coefficient: nu * x.Conductivity / x.OD, Nusselt: nu, Reynolds: x.Reynolds}
}

// Drop is the answer of a pressure drop correlation.
type Drop struct {
	Total    float64 // [Pa] of the whole bank
	PerRow   float64 // [Pa] friction of one row
	Entry    float64 // [Pa] entering and leaving the bank, once; 0 where not part of the correlation
	Friction float64 // [-] as the correlation defines it
	Reynolds float64 // [-] on tube OD, in the least free area
}

// fanning makes the answer from a Fanning friction factor [-]: dp = 4 f N G^2/(2 rho).
func fanning(x *Crossing, friction float64) Drop {
	row := 2 * friction * x.MassVelocity * x.MassVelocity / x.Density
	return Drop{Total: row * float64(x.Rows), PerRow: row, Friction: friction, Reynolds: x.Reynolds}
}
