package design

import (
	"math"

	"finwright/core/figure"
	"finwright/core/tube"
	"finwright/core/units"
)

func (b *builder) turn() figure.Arg { return arg("d_n", units.Diameter, float64(b.t.TurnOD())) }
func (b *builder) run() figure.Arg  { return arg("ℓ", units.RunPerMetre, b.t.StripPerMetre()) }
func (b *builder) finMass() figure.Arg {
	return arg("m_f", units.WeightPerMetre, float64(b.t.FinMass()))
}

func (b *builder) tubeMass() figure.Arg {
	return arg("m_t", units.WeightPerMetre, float64(b.t.TubeMass()))
}

// strip lists what must be bought to wind a metre. An extruded fin has no strip.
func (b *builder) strip() []figure.Figure {
	t := b.t
	if !t.Fin.Type.Wound() {
		return []figure.Figure{
			absent("strip_width", units.Width, "", "absent.not_wound"),
			absent("strip_per_metre", units.RunPerMetre, figure.FinnedMetre, "absent.not_wound"),
		}
	}
	list := []figure.Figure{b.width(), fig("strip_per_metre", units.RunPerMetre, t.StripPerMetre(), figure.FinnedMetre, "strip_run", b.n(), b.turn())}
	if t.Fin.Type.FootLayers() > 0 {
		reach, formula := float64(t.FootReach()), "foot_reach"
		if t.Fin.Foot.By == tube.NeutralFibre {
			formula = "foot_reach_given"
		}
		list = append(list, fig("foot_reach", units.Gap, reach, "", formula, b.n(), arg("lap", units.Gap, reach-float64(t.Pitch()))))
	}
	return list
}

func (b *builder) width() figure.Figure {
	w := float64(b.t.StripWidth())
	switch {
	case b.t.Fin.Type.FootLayers() > 0:
		args := []figure.Arg{arg("b", units.Gap, float64(b.t.FootReach())), b.hf(), b.strp()}
		if foot := b.t.Fin.Foot; foot.By == tube.NeutralFibre {
			return fig("strip_width", units.Width, w, "", "width_fibre", append(args, arg("k_b", units.Factor, foot.Bend))...)
		}
		return fig("strip_width", units.Width, w, "", "width_foot", args...)
	case b.t.Fin.Type.Grooved():
		return fig("strip_width", units.Width, w, "", "width_groove", b.hf(), arg("g", units.Height, float64(b.t.Fin.Groove)))
	}
	return fig("strip_width", units.Width, w, "", "width_edge", b.hf())
}

func (b *builder) masses() []figure.Figure {
	t, m := b.t, units.WeightPerMetre
	list := []figure.Figure{b.finMassFigure()}
	if t.Fin.Type.Wound() && t.TurnOD() > t.OD {
		share := float64(t.OD / t.TurnOD())
		list = append(list, fig("fin_mass_least", m, float64(t.FinMass())*share, figure.FinnedMetre, "fin_mass", b.n(), arg("d_n", units.Diameter, float64(t.OD)), arg("w", units.Width, float64(t.StripWidth())), b.strp(), arg("ρ_f", units.Dense, float64(t.Fin.Density))))
	}
	return append(list,
		fig("tube_mass", m, float64(t.TubeMass()), figure.TubeMetre, "tube_mass", b.d(), arg("w_m", units.Wall, float64(t.MeanWall())), arg("ρ_t", units.Dense, float64(t.Density))),
		fig("metre_mass", m, float64(t.TubeMass()+t.FinMass()), figure.FinnedMetre, "metre_mass", b.tubeMass(), b.finMass()))
}

func (b *builder) finMassFigure() figure.Figure {
	t, m := b.t, float64(b.t.FinMass())
	rho := arg("ρ_f", units.Dense, float64(t.Fin.Density))
	if t.Fin.Type.Wound() {
		return fig("fin_mass", units.WeightPerMetre, m, figure.FinnedMetre, "fin_mass", b.n(), b.turn(), arg("w", units.Width, float64(t.StripWidth())), b.strp(), rho)
	}
	// Volumes in m3, and m3 per metre for the muff.
	d, root := float64(t.OD), float64(t.RootOD())
	return fig("fin_mass", units.WeightPerMetre, m, figure.FinnedMetre, "muff_mass",
		arg("V_muff", units.Factor, math.Pi/4*(root*root-d*d)), b.n(), arg("V_fin", units.Factor, t.FinVolume()), rho)
}

func (b *builder) perTube() []figure.Figure {
	t := b.t
	spans := arg("b_s", units.Distance, float64(t.BareSpans()))
	surface := t.FinnedSurface() + t.PlainSurface()
	list := []figure.Figure{
		fig("finned_length", units.Distance, float64(t.FinnedLength()), figure.PerTube, "finned_length", b.length(), arg("e_A", units.Distance, float64(t.PlainA)), arg("e_B", units.Distance, float64(t.PlainB)), spans),
		fig("fins_per_tube", units.Count, t.FinsPerTube(), figure.PerTube, "fins_per_tube", b.n(), b.finned()),
		fig("finned_surface", units.SurfacePerTube, float64(t.FinnedSurface()), figure.PerTube, "finned_surface", b.total(), b.finned()),
		fig("plain_surface", units.SurfacePerTube, float64(t.PlainSurface()), figure.PerTube, "plain_surface", b.bare(), b.length(), b.finned()),
		fig("tube_surface", units.SurfacePerTube, float64(surface), figure.PerTube, "tube_surface", arg("A_Lf", units.SurfacePerTube, float64(t.FinnedSurface())), arg("A_pl", units.SurfacePerTube, float64(t.PlainSurface()))),
	}
	if t.Fin.Type.Wound() {
		list = append(list, fig("strip_per_tube", units.Run, t.StripPerMetre()*float64(t.FinnedLength()), figure.PerTube, "strip_per_tube", b.run(), b.finned()))
	}
	return append(list, fig("tube_weight", units.Weight, float64(t.Weight()), figure.PerTube, "tube_weight", b.tubeMass(), b.length(), b.finMass(), b.finned()))
}

// order multiplies by the quantity asked for. Scrap and spares are the shop's
// business and come in where the making is planned.
func (b *builder) order() []figure.Figure {
	t, q := b.t, float64(b.in.Job.Quantity)
	times := func(id string, k units.Kind, one float64) figure.Figure {
		return fig(id, k, one*q, figure.WholeOrder, "times_quantity", arg("x", k, one), arg("q", units.Count, q))
	}
	list := []figure.Figure{times("order_surface", units.SurfacePerTube, float64(t.FinnedSurface()+t.PlainSurface()))}
	if t.Fin.Type.Wound() {
		list = append(list,
			times("order_strip", units.Run, t.StripPerMetre()*float64(t.FinnedLength())),
			times("order_strip_mass", units.Weight, float64(t.FinMass())*float64(t.FinnedLength())))
	}
	return append(list, times("order_weight", units.Weight, float64(t.Weight())))
}
