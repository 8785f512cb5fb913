package design

import (
	"math"

	"finwright/core/airside"
	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/inside"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
)

var houseLimit = material.Source{Key: "limit.source.judged", Status: material.Judgement}

// heat builds the figures of the bank at work, or says of each why it is absent.
func (b *builder) heat(h Heat) []FigureGroup {
	if !h.Absent.None() {
		none := func(id string, k units.Kind, basis figure.Basis) []figure.Figure {
			return []figure.Figure{{ID: id, Kind: k, Basis: basis, State: figure.Plain, Absent: h.Absent}}
		}
		return []FigureGroup{
			{"duty", "heat", none("duty", units.Duty, figure.WholeBank)},
			{"overall", "heat", none("u_bare", units.Film, figure.BareArea)},
			{"stream", "heat", none("air_drop", units.Drop, figure.WholeBank)},
			{"metal", "heat", none("hottest_root", units.Temp, figure.NoBasis)},
		}
	}
	return []FigureGroup{
		{"duty", "heat", b.duty(h)},
		{"film", "heat", b.filmFigures(h)},
		{"overall", "heat", b.overall(h)},
		{"stream", "heat", b.stream(h)},
		{"fan", "heat", b.fan(h)},
		{"metal", "heat", b.metal(h)},
	}
}

func (b *builder) filmFigures(h Heat) []figure.Figure {
	t := &h.Thermal
	bank := b.in.Pitches()
	v, used := t.UsedFilm, &airside.FilmMethods[t.Film]
	crossing := airside.Cross(bank, t.Flow)
	g := t.Flow.FaceMassVelocity
	film := fig("film", units.Film, v.Answer.Coefficient, figure.TotalArea, "film", arg("Nu", units.Factor, v.Answer.Nusselt), arg("k_g", units.Conduct, t.Gas.Conductivity), b.root())
	if b.in.Air.FilmGiven {
		film = fig("film", units.Film, float64(b.in.Air.Film), figure.TotalArea, "film_given", arg("h_given", units.Film, float64(b.in.Air.Film)))
	}
	list := []figure.Figure{film}
	if low, high, n := airside.Spread(t.Films); n > 1 {
		list = append(list, fig("film_low", units.Film, low, figure.TotalArea, "spread_low", arg("n_in", units.Count, float64(n))),
			fig("film_high", units.Film, high, figure.TotalArea, "spread_high", arg("n_in", units.Count, float64(n))))
	}
	return append(list,
		stated(&used.Formula, fig("nusselt", units.Factor, v.Answer.Nusselt, "", "", used.Args(&crossing, v.Answer)...)),
		fig("reynolds", units.Count, v.Answer.Reynolds, "", "reynolds", arg("G", units.MassFlux, g), arg("σ", units.Factor, crossing.Free), b.root(), arg("μ", units.Viscous, t.Gas.Viscosity)),
		freeRatio(bank),
		b.still(t),
		fig("prandtl", units.Factor, t.Gas.Prandtl(), "", "prandtl", arg("c_p", units.SpecificHeat, t.Gas.HeatCapacity), arg("μ", units.Viscous, t.Gas.Viscosity), arg("k_g", units.Conduct, t.Gas.Conductivity)),
	)
}

// freeRatio tells of staggered rows the gap of the diagonal too, which governs where rows stand close.
func freeRatio(bank airside.Bank) figure.Figure {
	args := []figure.Arg{arg("P_T", units.Diameter, bank.TransversePitch), arg("a_o", units.Gap, bank.Obstruction())}
	formula := "free_in_line"
	var why []message.Message
	if bank.Layout == airside.Staggered {
		formula, args = "free_staggered", append(args, arg("P_D", units.Diameter, bank.DiagonalPitch()))
		across, diagonal := bank.TransversePitch-bank.Obstruction(), 2*(bank.DiagonalPitch()-bank.Obstruction())
		key := "notice.free_across"
		if diagonal < across {
			key = "notice.free_diagonal"
		}
		why = append(why, message.New(key, "across", message.Amount{Kind: units.Gap, SI: across}, "diagonal", message.Amount{Kind: units.Gap, SI: diagonal}))
	}
	f := fig("free_ratio", units.Factor, bank.FreeRatio(), "", formula, args...)
	f.Why = why
	return f
}

// still is the film about one tube without a fan, for what it is worth.
func (b *builder) still(t *rating.Thermal) figure.Figure {
	s, warmed := t.Still(&b.in.Input)
	if !warmed {
		return absent("film_still", units.Film, figure.TotalArea, "absent.still")
	}
	h, limits := airside.EdwardsChaddock1963(s)
	f := stated(&airside.StillFormula, fig("film_still", units.Film, h, figure.TotalArea, "", s.Args()...))
	if !figure.AllIn(limits) {
		f.State, f.Why = figure.Outside, passed(limits)
	}
	return f
}

func passed(limits []figure.Limit) []message.Message {
	var out []message.Message
	for _, l := range limits {
		if !l.In() {
			out = append(out, l.Message())
		}
	}
	return out
}

// layerSymbol names each resistance in the formula of U.
var layerSymbol = map[exchanger.Layer]string{
	exchanger.InsideFilm: "R_1", exchanger.InsideFouling: "R_2", exchanger.TubeWall: "R_3",
	exchanger.Joint: "R_4", exchanger.OutsideFouling: "R_5", exchanger.OutsideFilm: "R_6",
}

// uBare is the coefficient of a path on the bare area.
func uBare(id string, u exchanger.Overall) figure.Figure {
	var args []figure.Arg
	for _, r := range u.Resistances {
		args = append(args, arg(layerSymbol[r.Layer], units.Resist, r.OnBare))
	}
	return fig(id, units.Film, u.OnBare, figure.BareArea, "u_bare", args...)
}

func (b *builder) overall(h Heat) []figure.Figure {
	u := h.Thermal.Overall
	bare := arg("U_b", units.Film, u.OnBare)
	list := []figure.Figure{
		uBare("u_bare", u),
		fig("ua", units.Transfer, UA(&h.Thermal), figure.WholeBank, "ua", bare, arg("d", units.Diameter, float64(b.t.OD)), arg("L_f", units.Distance, h.Thermal.Bank.FinnedLength),
			arg("N", units.Count, float64(h.Thermal.Bank.Tubes()))),
		fig("u_total", units.Film, u.OnTotal, figure.TotalArea, "u_total", bare, arg("AR", units.Factor, b.s.Areas.Ratio())),
	}
	list = append(list, b.closed(h)...)
	for _, r := range u.Resistances {
		list = append(list, fig("share_"+string(r.Layer), units.Percent, r.Share, figure.BareArea, "share", arg("R_x", units.Resist, r.OnBare), bare))
	}
	return append(list, b.insideFilm(h)...)
}

// insideFilm tells of a film that condenses what else there is to say.
func (b *builder) insideFilm(h Heat) []figure.Figure {
	f := h.Thermal.Inside
	bore := float64(b.t.InsideOD())
	number := f.Coefficient / f.Nusselt // k/d
	film := func(id string, h float64, formula string) figure.Figure {
		return fig(id, units.Film, h, figure.InsideArea, formula,
			arg("Nu", units.Factor, h/number), arg("k_i", units.Conduct, number*bore), arg("d_i", units.Diameter, bore))
	}
	used := film("inside_film", f.Coefficient, f.Method)
	if !f.InRange() {
		used.Why = passed(f.Limits)[1:] // of the first the notice tells
	}
	if h.Thermal.Condensed == 0 {
		return []figure.Figure{used}
	}
	v := h.Thermal.Vapour
	velocity := fig("vapour_velocity", units.Factor, v.VapourVelocity(1), "", "vapour_velocity", arg("G_i", units.MassFlux, v.MassVelocity),
		arg("d_i", units.Diameter, bore), arg("ρ_v", units.Dense, v.Vapour.Density), arg("ρ_l", units.Dense, v.Liquid.Density))
	velocity.Label = "vapour_" + string(v.Regime())
	return []figure.Figure{used, film("inside_film_second", inside.Breber1980(v), "breber_1980"), velocity}
}

func (b *builder) duty(h Heat) []figure.Figure {
	t := &h.Thermal
	d := t.Duty
	air, process := float64(b.in.Air.In), float64(b.in.Process.In)
	capacity := t.Flow.FaceMassVelocity * t.Bank.FaceArea() * t.Gas.HeatCapacity
	perKilogram, perFace := t.Yield(b.t)
	heat := math.Abs(d.Heat)
	q := arg("Q", units.Duty, heat)
	p, ta, tp := arg("P", units.Factor, d.Effectiveness), arg("T_a", units.Temp, air), arg("T_p", units.Temp, process)
	ntu, ratio := arg("NTU", units.Factor, d.TransferUnits), arg("R_c", units.Factor, d.Ratio)
	rows := arg("N_r", units.Count, float64(b.in.Bank.Rows))
	list := []figure.Figure{
		fig("duty", units.Duty, heat, figure.WholeBank, "duty", arg("C_air", units.Factor, capacity), p, tp, ta),
		fig("effectiveness", units.Factor, d.Effectiveness, "", "effectiveness", ntu, ratio, rows, arg("N_p", units.Count, float64(b.in.Bank.Passes))),
		fig("air_out", units.Temp, d.AirOut, "", "air_out", ta, p, tp),
		fig("process_out", units.Temp, d.ProcessOut, "", "process_out", tp, p, ratio, ta),
		b.factor(d, p, tp, ta, ntu),
		fig("duty_per_weight", units.DutyPerWeight, perKilogram, figure.FinMetalMass, "duty_per_weight", q, arg("m_fins", units.Weight, t.FinMetal(b.t))),
		fig("duty_per_face", units.DutyPerArea, perFace, figure.FaceArea, "duty_per_face", q, arg("A_face", units.SurfacePerTube, t.Bank.FaceArea())),
		fig("bank_tubes", units.Count, float64(t.Bank.Tubes()), figure.WholeBank, "bank_tubes", rows, arg("N_t", units.Count, float64(b.in.Bank.TubesPerRow))),
	}
	if t.Condensed > 0 {
		steam := fig("condensed", units.MassRate, t.Condensed, figure.WholeBank, "condensed", q, arg("h_fg", units.Factor, t.Vapour.LatentHeat))
		if b.in.Bank.Rows > b.in.Bank.Passes {
			steam.Why = []message.Message{message.New("notice.rows_condense")}
		}
		list = append(list, steam)
	}
	switch {
	case d.Heat > 0:
		list[0].Label = "duty_out"
	case d.Heat < 0:
		list[0].Label = "duty_in"
	}
	if kind := b.in.Air.Kind; kind == rating.FlueGas || kind == rating.OwnGas {
		list[1].Label, list[2].Label = "effectiveness_gas", "gas_out"
	}
	if b.in.Bank.DutyWanted > 0 {
		list[0].State = figure.Good // until a notice says otherwise
	}
	list = append(list, b.otherDuties(h)...)
	return append(append(list, b.wanted(t)...), b.inverse(t)...)
}

func (b *builder) factor(d exchanger.Duty, args ...figure.Arg) figure.Figure {
	if d.Spent {
		return absent("factor", units.Factor, "", "absent.spent")
	}
	return fig("factor", units.Factor, d.Factor, "", "factor", append(args, arg("ΔT_lm", units.Factor, d.Counterflow))...)
}

func (b *builder) stream(h Heat) []figure.Figure {
	t := &h.Thermal
	list := b.drop(t)
	list = append(list,
		fig("face_area", units.SurfacePerTube, t.Bank.FaceArea(), figure.WholeBank, "face_area", arg("N_t", units.Count, float64(b.in.Bank.TubesPerRow)), arg("P_T", units.Diameter, float64(b.in.TubePitch())), b.finned()),
		fig("tube_pitch", units.Diameter, float64(b.in.TubePitch()), "", "tube_pitch", b.tip(), arg("c", units.Height, float64(b.in.TubePitch()-b.t.FinOD()))),
	)
	return append(list, b.inside(t)...)
}

// drop is the pressure drop of the bank, with its spread.
func (b *builder) drop(t *rating.Thermal) []figure.Figure {
	if !t.HasDrop() {
		return []figure.Figure{absent("air_drop", units.Drop, figure.WholeBank, "absent.no_drop")}
	}
	v, used := t.UsedDrop, &airside.DropMethods[t.Drop]
	crossing := airside.Cross(b.in.Pitches(), t.Flow)
	list := []figure.Figure{stated(&used.Formula, fig("air_drop", units.Drop, v.Answer.Total, figure.WholeBank, "", used.Args(&crossing, v.Answer)...))}
	if other, ok := b.in.DropOnOther(t); ok {
		list = append(list, b.otherDrop(t, other))
	}
	if low, high, n := airside.Spread(t.Drops); n > 1 {
		list = append(list, fig("drop_low", units.Drop, low, figure.WholeBank, "spread_low", arg("n_in", units.Count, float64(n))),
			fig("drop_high", units.Drop, high, figure.WholeBank, "spread_high", arg("n_in", units.Count, float64(n))))
	}
	return list
}

// otherDrop is the pressure drop with the root counted at the other of bare tube and foot.
func (b *builder) otherDrop(t *rating.Thermal, pascal float64) figure.Figure {
	other := *b.in
	id := "air_drop_foot"
	other.Tube.Fin.Root = tube.FromFoot
	if b.in.Tube.Fin.Root == tube.FromFoot {
		other.Tube.Fin.Root, id = tube.FromTube, "air_drop_tube"
	}
	method, crossing := &airside.DropMethods[t.Drop], airside.Cross(other.Pitches(), t.Flow)
	return stated(&method.Formula, fig(id, units.Drop, pascal, figure.WholeBank, "", method.Args(&crossing, method.Compute(&crossing))...))
}

// cornerArgs are the numbers of the rows' solution that a metal temperature follows from.
func cornerArgs(c exchanger.Corner) []figure.Arg {
	return []figure.Arg{arg("T_i", units.Temp, c.Process), arg("T_g", units.Temp, c.Air), arg("x_i", units.Factor, c.Share)}
}

// tested are the temperatures that the limits of joint and tube metal are held against, a case each. Their marks test these
// and not the roots, which may be much colder.
func (b *builder) tested(h Heat) []figure.Figure {
	list := make([]figure.Figure, 0, len(exchanger.Cases))
	for _, c := range exchanger.Cases {
		ends, stated := h.Case.Ends[c]
		switch {
		case !stated && c == exchanger.FlowLost:
			continue
		case !stated:
			list = append(list, figure.Figure{ID: testedID(c), Kind: units.Temp, State: figure.Plain, Absent: message.New("limit.not_stated", "case", message.Key("case."+string(c)))})
			continue
		}
		formula, args := "tested", []figure.Arg{arg("T_case", units.Temp, ends.Process), arg("T_r", units.Temp, h.Case.Root[c])}
		if b.t.Fin.Type.Fixing().Tension {
			formula, args = "tested_mean", append(args, arg("T_m", units.Temp, h.Case.mean[c]))
		}
		f := fig(testedID(c), units.Temp, h.Case.joint[c], "", formula, args...)
		f.Tests = h.limitTests()
		if h.Limits.Standard.Known() || h.Limits.House.Known() {
			f.State = h.kept()
		}
		list = append(list, f)
	}
	return list
}

func (b *builder) metal(h Heat) []figure.Figure {
	d, in := h.Thermal.Duty, b.in
	root := h.Case.Root[exchanger.Normal]
	list := append(b.tested(h), fig("hottest_root", units.Temp, root, "", "hottest_root", cornerArgs(d.HottestRoot)...))
	for _, c := range exchanger.Cases[1:] {
		ends, stated := h.Case.Ends[c]
		if !stated {
			continue
		}
		args := []figure.Arg{arg("T_a", units.Temp, ends.Gas), arg("T_case", units.Temp, ends.Process), arg("x_c", units.Factor, h.Thermal.PartsAt(&in.Input, ends).Root)}
		list = append(list, fig(rootOf(c), units.Temp, h.Case.Root[c], "", "root_case", args...))
	}
	list = append(list,
		fig("hottest_tip", units.Temp, h.Thermal.Tip(), "", "hottest_tip", arg("T_g", units.Temp, d.HottestRoot.Air), arg("T_r", units.Temp, root), arg("ϑ_r", units.Factor, h.Thermal.TipRatio)),
		fig("coldest_metal", units.Temp, d.Coldest.Celsius, "", "coldest_metal", cornerArgs(d.Coldest)...))
	list = append(list, b.dewPoints()...)
	return append(list, b.bond(h)...)
}
