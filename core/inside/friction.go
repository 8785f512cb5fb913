package inside

import "math"

// TurbulentFrom is the Reynolds number [-] from which flow is turbulent: there the film hangs on no length.
//
// Source: as SinglePhase.
const TurbulentFrom = 4000

const (
	laminarEnd   = 2300 // [-] Reynolds number up to which flow is laminar
	circleToDrag = 64   // [-] Darcy friction factor times Reynolds number, laminar, round tube
)

// Petukhov1970 returns the Darcy friction factor [-] of a smooth tube at Reynolds number re [-].
//
//	f = (0.79 ln Re - 1.64)^-2
//
// Valid: 3e3 <= Re <= 5e6.
// Source: Petukhov, Adv. Heat Transfer 6 (1970) 503, from memory; as the open library
// ht carries it.
func Petukhov1970(re float64) float64 {
	x := 0.79*math.Log(re) - 1.64
	return 1 / (x * x)
}

// Colebrook1939 returns the Darcy friction factor [-] of a tube of relative roughness
// e [-] at Reynolds number re [-], solved to rounding.
//
//	1/sqrt(f) = -2 log10(e/3.7 + 2.51/(Re sqrt(f)))
//
// Valid: 4e3 <= Re <= 1e8, 0 <= e <= 0.05.
// Source: Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, from memory; as the open library
// fluids carries it.
func Colebrook1939(re, e float64) float64 {
	// Newton on x = 1/sqrt(f), from the smooth law; it converges quadratically.
	x := 0.79*math.Log(re) - 1.64
	for range 8 {
		inner := e/3.7 + 2.51*x/re
		residual := x + 2*math.Log10(inner)
		x -= residual / (1 + 2/math.Ln10*2.51/(re*inner))
	}
	return 1 / (x * x)
}

// Friction returns the Darcy friction factor [-]: 64/Re in laminar flow, Petukhov1970 in a
// smooth and Colebrook1939 in a rough tube in turbulent flow, and a straight line in
// Reynolds number between.
//
// re is the Reynolds number [-], e the relative roughness [-].
// Valid: 0 < Re <= 5e6, 0 <= e <= 0.05. Flow between 2300 and 4000 may be either.
// Source: Hagen and Poiseuille; as named; the straight line is engineering judgement.
func Friction(re, e float64) float64 {
	if re <= laminarEnd {
		return circleToDrag / re
	}
	turbulent := Petukhov1970
	if e > 0 {
		turbulent = func(re float64) float64 { return Colebrook1939(re, e) }
	}
	if re >= TurbulentFrom {
		return turbulent(re)
	}
	x := (re - laminarEnd) / (TurbulentFrom - laminarEnd)
	return (1-x)*circleToDrag/laminarEnd + x*turbulent(TurbulentFrom)
}

// DefaultTurnLoss is the velocity heads [-] lost a pass in entering, leaving and turning.
//
// Source: 1.5 to 2.5 a pass, from memory; the middle is engineering judgement, editable.
const DefaultTurnLoss = 2.0

// Drop is the pressure drop of the stream through its passes.
type Drop struct {
	Total    float64 // [Pa]
	Straight float64 // [Pa] friction in the tubes
	Turns    float64 // [Pa] entering, leaving and turning
	Friction float64 // [-] Darcy
	Velocity float64 // [m/s] mean
}

// PressureDrop returns the loss of a stream of one phase through passes tubes one after
// another.
//
//	dp = passes (f L/di + K) G^2/(2 rho)
//
// turnLoss is K, the velocity heads lost a pass [-]. Rise, acceleration and the
// nozzles are not part of it, nor is the change of friction with wall temperature.
// Valid: as Friction.
// Source: Darcy and Weisbach.
func PressureDrop(t Tube, f Flow, passes int, turnLoss float64) Drop {
	friction := Friction(f.Reynolds(t), t.Roughness/t.Bore)
	head := float64(passes) * f.MassVelocity * f.MassVelocity / (2 * f.Density)
	straight, turns := head*friction*t.Length/t.Bore, head*turnLoss
	return Drop{
		Total: straight + turns, Straight: straight, Turns: turns,
		Friction: friction, Velocity: f.MassVelocity / f.Density,
	}
}

// Expanding returns the loss d of a gas, which was found at its density where it enters at a pressure [Pa], at the mean of
// the densities where it enters and leaves; ok is false where no pressure would be left.
//
//	dp (p - dp/2) = dp0 p
//
// Valid: ideal gas, of one temperature; the little that goes into its speed is not counted.
// Source: Darcy and Weisbach at mean density; arithmetic.
func (d Drop) Expanding(pressure float64) (expanded Drop, ok bool) {
	left := 1 - 2*d.Total/pressure
	if left < 0 {
		return d, false
	}
	by := 2 / (1 + math.Sqrt(left)) // pressure where it enters over the mean
	return Drop{
		Total: by * d.Total, Straight: by * d.Straight, Turns: by * d.Turns,
		Friction: d.Friction, Velocity: by * d.Velocity,
	}, true
}
