package design

import (
	"math"
	"slices"
	"strings"

	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
	"finwright/core/units"
)

const makingSection = "making"

// groups builds the figures of the plan. What a plan lacks is absent with its reason.
func (m *Production) groups() []FigureGroup {
	p := &m.Plan
	k := maker{m, p}
	if m.Lines == nil { // Brief
		return []FigureGroup{
			{"hours", makingSection, k.part(making.TheStrip, p.Winding != nil, "line_hours", units.Hours, func() []figure.Figure { return []figure.Figure{k.lineHours()} })},
			{"cost", makingSection, k.part(making.TheCost, p.Cost != nil, "price_tube", units.Cost, k.prices)},
		}
	}
	return []FigureGroup{
		{"buy", makingSection, k.part(making.TheStrip, p.Ledger != nil, "strip_bought", units.Run, k.buy)},
		{"coil", makingSection, k.part(making.TheStrip, p.Ledger != nil, "coil_length", units.Run, k.coil)},
		{"cutting", makingSection, k.part(making.TheProgramme, p.Programme != nil, "cut_length", units.Distance, k.cutting)},
		{"tubes", makingSection, k.part(making.TheStrip, p.Ledger != nil, "mill_tubes", units.Count, k.tubes)},
		{"speeds", makingSection, k.part(making.TheProgramme, p.Speeds != nil, "spindle", units.Spin, k.speeds)},
		{"hours", makingSection, k.part(making.TheStrip, p.Winding != nil, "line_hours", units.Hours, k.hours)},
		{"packing", makingSection, append(k.part(making.TheBundle, p.Bundle != nil, "bundle_tubes", units.Count, k.bundle),
			k.part(making.ThePacking, p.Packing != nil, "per_crate", units.Count, k.packing)...)},
		{"cost", makingSection, k.part(making.TheCost, p.Cost != nil, "price_tube", units.Cost, k.cost)},
	}
}

// maker makes figures from a plan.
type maker struct {
	*Production
	p *making.Plan
}

// part returns a part's figures, or its main one with the reason why there is none.
func (k maker) part(part making.Part, there bool, main string, kind units.Kind, list func() []figure.Figure) []figure.Figure {
	if there {
		return list()
	}
	return []figure.Figure{{ID: main, Kind: kind, State: figure.Plain, Absent: k.why(part)}}
}

// Why says why a part of the plan is absent.
func (m *Production) Why(part making.Part) message.Message { return maker{m, &m.Plan}.why(part) }

// why says why a part is absent: by its own reason, or by that of the part it waits for.
func (k maker) why(part making.Part) message.Message {
	for _, p := range []making.Part{part, making.TheProgramme, making.TheStrip} {
		if why, ok := k.p.Absent[p]; ok {
			return why
		}
	}
	return message.New("making.not_planned")
}

func run(symbol string, l units.Length) figure.Arg   { return arg(symbol, units.Run, float64(l)) }
func along(symbol string, l units.Length) figure.Arg { return arg(symbol, units.Distance, float64(l)) }
func number(symbol string, n int) figure.Arg         { return arg(symbol, units.Count, float64(n)) }
func share(symbol string, x float64) figure.Arg      { return arg(symbol, units.Percent, x) }
func took(symbol string, t units.Duration) figure.Arg {
	return arg(symbol, units.Time, float64(t))
}

// The strip as ordered.
func (k maker) slit() figure.Arg { return arg("w_s", units.Width, float64(k.p.Winding.Strip.Slit)) }

func (k maker) thick() figure.Arg {
	return arg("t", units.Thickness, float64(k.p.Winding.Strip.Thickness))
}

func (k maker) density() figure.Arg {
	return arg("ρ_f", units.Dense, float64(k.p.Winding.Strip.Density))
}
func (k maker) perTube() figure.Arg { return run("ℓ_T", k.p.Winding.Strip.PerTube()) }
func (k maker) coilRun() figure.Arg { return run("L_c", k.p.Winding.Coil.Length) }
func (k maker) starts() figure.Arg  { return run("a_s", k.p.Winding.Losses.CoilStart) }
func (k maker) ends() figure.Arg    { return run("a_e", k.p.Winding.Losses.CoilEnd) }

// made are the tubes that are made; of what is bought in, those that ship.
func (k maker) made() figure.Arg {
	if k.p.Winding == nil {
		return number("N_m", k.Order.Quantity)
	}
	return number("N_m", k.p.Winding.Made())
}

func (k maker) asked() figure.Arg { return number("q", k.Order.Quantity) }

func (k maker) turn() figure.Arg {
	return arg("d_n", units.Diameter, float64(k.Order.Tube.TurnOD()))
}
func (k maker) od() figure.Arg { return arg("d", units.Diameter, float64(k.Order.Tube.OD)) }

func (k maker) weight() figure.Arg { return arg("M_T", units.Weight, float64(k.Order.Tube.Weight())) }

func (k maker) buy() []figure.Figure {
	l, w := k.p.Ledger, k.p.Winding
	s := &w.Strip
	turns := func(symbol string, n float64) figure.Arg { return arg(symbol, units.Count, n) }
	scrap := l.Scrap()
	slit := fig("slit_width", units.Width, float64(s.Slit), "", "slit", arg("w", units.Width, float64(s.Width)), arg("δ_s", units.Width, float64(making.SlitStep)))
	slit.Why = []message.Message{message.New("making.slit", "exact", message.Of(units.Gap, s.Width), "step", message.Of(units.Gap, making.SlitStep))}
	balance := []figure.Arg{run("L_b", l.Bought), run("L_z", l.Drawn), run("L_g", l.OnGood), run("S", scrap), run("L_r", l.Remainder), run("L_y", l.Returned)}
	list := []figure.Figure{
		slit,
		fig("strip_wound", units.Run, float64(s.PerTube()), figure.PerTube, "strip_wound", turns("N_k", k.p.Programme.Turns()), turns("N_l", k.p.Programme.LostTurns()),
			k.turn(), arg("r_s", units.Factor, k.p.Practice.StripRatio)),
		fig("tubes_made", units.Count, float64(w.Made()), figure.WholeOrder, "tubes_made", k.asked(), number("N_f", w.FirstOff), number("N_j", w.Rejected)),
		fig("strip_bought", units.Run, float64(l.Bought), figure.WholeOrder, "strip_bought", number("X_c", l.ToBuy()), k.coilRun()),
		fig("strip_bought_mass", units.Weight, float64(s.Mass(l.Bought)), figure.WholeOrder, "strip_bought_mass", run("L_b", l.Bought), k.slit(), k.thick(), k.density()),
		fig("strip_good", units.Run, float64(l.OnGood), figure.WholeOrder, "strip_good", k.asked(), run("ℓ_k", s.Kept)),
		fig("strip_scrap", units.Run, float64(scrap), figure.WholeOrder, "strip_scrap", run("S_1", l.RunDown), run("S_2", l.FirstOff), run("S_3", l.Rejected),
			run("S_4", l.CoilEnds), run("S_5", l.Joints), run("S_6", l.Stranded), run("S_7", l.Left), run("S_8", l.CutBack)),
		fig("scrap_share", units.Percent, float64(scrap/l.Used()), figure.WholeOrder, "scrap_share", run("S", scrap), run("L_b", l.Bought), run("L_z", l.Drawn), run("L_r", l.Remainder), run("L_y", l.Returned)),
		fig("strip_remainder", units.Run, float64(l.Remainder), figure.WholeOrder, "strip_remainder", without(balance, 4)...),
	}
	if l.Cut > 0 {
		list = append(list,
			fig("coils_cut", units.Count, float64(l.Cut), figure.WholeOrder, "coils_cut", run("S_8", l.CutBack), run("s_c", l.CutBack/units.Length(l.Cut))),
			fig("strip_cut_back", units.Run, float64(l.CutBack), figure.WholeOrder, "strip_cut_back", number("n_b", l.Cut), run("s_c", l.CutBack/units.Length(l.Cut))))
	}
	if l.Hand > 0 {
		list = append(list,
			fig("strip_drawn", units.Run, float64(l.Drawn), figure.WholeOrder, "strip_drawn", arg("m_z", units.Weight, float64(s.Mass(l.Drawn))), k.slit(), k.thick(), k.density()),
			fig("strip_returned", units.Run, float64(l.Returned), figure.WholeOrder, "strip_returned", without(balance, 5)...))
	}
	return list
}

// without returns a list less one.
func without(list []figure.Arg, n int) []figure.Arg { return slices.Delete(slices.Clone(list), n, n+1) }

func (k maker) coil() []figure.Figure {
	l, w := k.p.Ledger, k.p.Winding
	f := w.Coil
	whole, stranded := w.WholeTubes()
	length := k.coilLength()
	length.Why = []message.Message{message.New("making.coil", "form", message.Key("shop.coil."+string(f.Form)))}
	list := []figure.Figure{
		length,
		fig("coil_mass", units.Weight, float64(f.Mass), "", "coil_mass", k.coilRun(), k.slit(), k.thick(), k.density()),
		fig("coils", units.Count, float64(l.ToBuy()), figure.WholeOrder, "coils", run("L_g", l.OnGood), run("S", l.Scrap()), run("L_r", l.Remainder), run("L_y", l.Returned), run("L_z", l.Drawn), k.coilRun()),
		fig("coil_tubes", units.Factor, w.TubesPerCoil(), "", "coil_tubes", k.coilRun(), k.starts(), k.ends(), k.perTube()),
		fig("joints_tube", units.Factor, l.JointsPerTube(w.Made()), figure.PerTube, "joints_tube", number("J", l.Jointed), k.made()),
		fig("whole_tubes", units.Count, float64(whole), "", "whole_tubes", k.coilRun(), k.starts(), k.ends(), k.perTube()),
		fig("stranded", units.Run, float64(stranded), "", "stranded", k.coilRun(), k.starts(), k.ends(), number("n_w", whole), k.perTube()),
	}
	if length, ok := w.StrandlessCoil(); ok {
		list = append(list, fig("coil_to_order", units.Run, float64(length), "", "coil_to_order", number("n_w", whole), k.perTube(), k.starts(), k.ends()))
	}
	if other, ok := k.otherCoil(); ok {
		list = append(list, fig("coil_replaces", units.Factor, f.Replaces(other.Winding.Coil), "", "coil_replaces", k.coilRun(), run("L_x", other.Winding.Coil.Length)),
			against("changes_other", units.Count, number("X_x", other.Ledger.Changes), number("X", l.Changes)),
			against("joints_other", units.Count, number("J_x", other.Ledger.Jointed), number("J", l.Jointed)),
			against("hours_other", units.Hours, took("H_x", other.Time.Clock), took("H", k.p.Time.Clock)))
	}
	return list
}

// against compares what the other coil takes with what the one in use does: what is saved, or what it takes more.
func against(id string, k units.Kind, other, used figure.Arg) figure.Figure {
	if other.SI >= used.SI {
		return fig(id, k, other.SI-used.SI, figure.WholeOrder, id, other, used)
	}
	f := fig(id, k, used.SI-other.SI, figure.WholeOrder, strings.TrimSuffix(id, "other")+"more", used, other)
	f.Label = strings.TrimSuffix(id, "other") + "more"
	return f
}

// otherCoil returns the first possible coil beside the one in use.
func (k maker) otherCoil() (*making.CoilOption, bool) {
	for i := range k.p.Coils {
		if other := &k.p.Coils[i]; other.Possible && &other.Winding != k.p.Winding {
			return other, true
		}
	}
	return nil, false
}

func (k maker) coilLength() figure.Figure {
	w := k.p.Winding
	length := float64(w.Coil.Length)
	if w.Coil.ByMass {
		return fig("coil_length", units.Run, length, "", "coil_by_mass", arg("m_c", units.Weight, float64(w.Coil.Mass)), k.slit(), k.thick(), k.density())
	}
	for _, c := range k.p.Line.Coils {
		if c.Form == w.Coil.Form && c.OD == w.Coil.OD {
			return fig("coil_length", units.Run, length, "", "coil_by_size", arg("ϕ", units.Factor, c.Fill), arg("D_o", units.Diameter, float64(c.OD)),
				arg("D_i", units.Diameter, float64(c.ID)), arg("W", units.Diameter, float64(w.Coil.Width)), k.slit(), k.thick())
		}
	}
	panic("design: a coil that the line does not take")
}

func (k maker) cutting() []figure.Figure {
	g := k.p.Programme
	t := &k.Order.Tube
	wound := g.Finned() + units.Length(g.LostTurns())*t.Pitch()
	if g.Growth.Share > 0 {
		wound = g.Grown * units.Length((1+g.Growth.Share)/g.Growth.Share)
	}
	growth := fig("growth", units.Percent, g.Growth.Share, "", "growth", share("g_L", g.Growth.Share))
	growth.Why = []message.Message{g.Growth.Note}
	scatter := fig("growth_scatter", units.Percent, g.Growth.Scatter, "", "scatter", share("g_s", g.Growth.Scatter))
	scatter.Why = []message.Message{message.New("making.edge_off", "off", message.Of(units.Gap, making.EdgeOff(g.Growth.Scatter, g.Reach)), "allowed", message.Of(units.Gap, k.Shop.Placing.Tolerance))}
	list := []figure.Figure{
		growth,
		fig("grown", units.Gap, float64(g.Grown), figure.PerTube, "grown", along("L_w", wound), share("g_L", g.Growth.Share)),
		fig("cut_length", units.Distance, float64(g.CutLength), figure.PerTube, "cut_length", along("L", t.Length), along("b_A", g.TrimA), along("b_B", g.TrimB),
			arg("ΔL", units.Gap, float64(g.Grown))),
		scatter,
		fig("tolerable", units.Percent, g.Tolerable, "", "tolerable", along("δ", k.Shop.Placing.Tolerance), along("L_e", g.Reach)),
	}
	for _, z := range g.Zones {
		if z.Kind == making.Finned {
			list = append(list, fig("strip_back", units.Distance, float64(z.Stripped.Length()), "", "strip_back", arg("N_d", units.Count, z.Run.RunDown), arg("n", units.FinCount, float64(t.Fin.Count))))
			break
		}
	}
	return list
}

// tubes are how many tubes are had and where their length goes.
func (k maker) tubes() []figure.Figure {
	w, g := k.p.Winding, k.p.Programme
	firstOff, rejected := number("N_f", w.FirstOff), number("N_j", w.Rejected)
	if k.Order.FreeIssue {
		return []figure.Figure{
			fig("tubes_to_send", units.Count, float64(w.Made()), figure.WholeOrder, "tubes_made", k.asked(), firstOff, rejected),
			{ID: "mill_tubes", Kind: units.Count, State: figure.Plain, Absent: k.why(making.TheSupply)},
		}
	}
	s := k.p.Supply
	if s == nil {
		return []figure.Figure{{ID: "mill_tubes", Kind: units.Count, State: figure.Plain, Absent: k.why(making.TheSupply)}}
	}
	drawn := k.p.DrawnSums()
	cutFrom := number("N_g", s.Pieces)
	cut, allowed := along("L_cut", s.Cut), along("δ_L", s.Allowed)
	bought, each, kerf := number("N_b", s.Tubes), along("L_st", s.Stock), run("k_f", s.Kerf)
	length := fig("mill_length", units.Distance, float64(s.Stock), "", "mill_length", cut, cutFrom)
	if s.Way == shop.CutToLength {
		length = fig("mill_length", units.Distance, float64(s.Stock), "", "ordered_length", cut, allowed)
	}
	ends := []figure.Arg{along("b_A", g.TrimA), along("b_B", g.TrimB)}
	list := []figure.Figure{
		length,
		fig("mill_tubes", units.Count, float64(s.Tubes), figure.WholeOrder, "mill_tubes", cutFrom, number("n_p", s.PerTube)),
		fig("tube_bought", units.Run, float64(s.Bought()), figure.WholeOrder, "tube_bought", bought, each),
		fig("tube_used", units.Run, float64(s.Used), figure.WholeOrder, "tube_used", append(ends, k.asked(), cut)...),
		fig("tube_trim", units.Run, float64(s.Trim), figure.WholeOrder, "tube_trim", append(ends, k.asked(), run("k_f", s.Kerf+drawn.Kerf), cutFrom, allowed)...),
		fig("tube_spoilt", units.Run, float64(s.Spoilt), figure.WholeOrder, "tube_spoilt", firstOff, rejected, cut),
	}
	if s.Way == shop.StockLengths {
		list = append(list, fig("offcut", units.Run, float64(s.Offcut), figure.WholeOrder, "offcut", bought, each, cutFrom, cut, kerf))
	}
	if drawn.Pieces > 0 {
		list = append(list, fig("tubes_drawn", units.Count, float64(drawn.Pieces), figure.WholeOrder, "tubes_drawn", k.made(), cutFrom))
	}
	return append(list, k.otherWay()...)
}

// otherWay says by how much dearer the tubes would be if they were bought the other way.
func (k maker) otherWay() []figure.Figure {
	s, o := k.p.Supply, k.p.Other
	if o == nil || !s.Priced || !o.Priced {
		return nil
	}
	return []figure.Figure{fig(string(o.Way)+"_instead", units.Cost, float64(o.Cost()-s.Cost()), figure.WholeOrder, "other_way", money("K_y", o.Cost()), money("K_z", s.Cost()))}
}

// speedSymbol names each limit of the spindle in its formula.
var speedSymbol = map[string]string{"spindle": "Ω_1", "strip_speed": "Ω_2", "drive": "Ω_3", "weld_edge": "Ω_4", "generator": "Ω_5"}

func (k maker) speeds() []figure.Figure {
	s := k.p.Speeds
	var limits []figure.Arg
	for _, l := range s.Limits {
		limits = append(limits, arg(speedSymbol[l.ID], units.Spin, float64(l.Spindle)))
	}
	turning := arg("Ω", units.Spin, float64(s.Spindle))
	formula, welds := "spindle", len(s.Limits) == 4
	switch {
	case welds:
		formula = "spindle_welded"
	case s.Power == nil:
		formula = "spindle_undriven" // what the drive allows is not known
	}
	spindle := fig("spindle", units.Spin, float64(s.Spindle), "", formula, limits...)
	spindle.Why = []message.Message{message.New("making.bound", "limit", message.Key("shop.speed."+s.Binding))}
	list := []figure.Figure{
		spindle,
		fig("feed", units.Feed, float64(s.Feed), "", "feed", turning, arg("n", units.FinCount, float64(k.Order.Tube.Fin.Count))),
		fig("strip_run_speed", units.Running, float64(s.Strip), "", "strip_run_speed", turning, k.turn()),
	}
	if w := &k.p.Practice.Weld; welds {
		edge := float64(s.Spindle) * float64(shop.WeldTurn(k.Order.Tube.OD))
		list = append(list,
			fig("weld_speed", units.Running, edge, "", "weld_speed", turning, k.od()),
			fig("weld_power", units.Drive, float64(w.Heat)*float64(k.Order.Tube.Fin.Strip)*edge, "", "weld_power",
				arg("q_w", units.WeldHeat, float64(w.Heat)), k.thick(), arg("v_e", units.Running, edge)))
	}
	if s.Power == nil {
		return append(list, figure.Figure{ID: "rolling_power", Kind: units.Drive, State: figure.Plain, Absent: s.Note})
	}
	return append(list, fig("rolling_power", units.Drive, float64(*s.Power), "", "rolling_power",
		arg("P_0", units.Drive, float64(k.p.Line.Idle)), arg("P_r", units.Drive, float64(*s.Power-k.p.Line.Idle))))
}

func (k maker) lineHours() figure.Figure {
	o := k.p.Time
	return fig("line_hours", units.Hours, float64(o.Clock), figure.WholeOrder, "line_hours", took("τ_u", o.OnLine.Of(making.SettingUp)), took("τ_c", o.OnLine.Of(making.Checking)),
		took("τ_f", o.OnLine.Of(making.Finning)), took("τ_x", o.OnLine.Of(making.CoilChange)), took("τ_r", o.OnLine.Of(making.RackChange)), share("ε", k.Shop.Crew.Efficiency))
}

// lasting is the kind of a time that may be of minutes or of a day.
func lasting(t units.Duration) units.Kind {
	if t < 3*3600 {
		return units.Time
	}
	return units.Hours
}

func (k maker) hours() []figure.Figure {
	o, w, crew := k.p.Time, k.p.Winding, &k.Shop.Crew
	productive := share("ε", crew.Efficiency)
	clock := took("H", o.Clock)
	running := o.Productive() - o.OnLine.Of(making.SettingUp) - o.OnLine.Of(making.Checking)
	list := []figure.Figure{
		fig("tube_time", units.Time, float64(o.Tube.Total()), figure.PerTube, "tube_time", took("τ_w", o.Tube.Wind), took("τ_j", o.Tube.Jog), took("τ_s", o.Tube.Secure), took("τ_l", o.Tube.Load), took("τ_ph", o.Tube.Preheat)),
		fig("set_up_time", units.Time, float64(o.OnLine.Of(making.SettingUp)+o.OnLine.Of(making.Checking)), figure.WholeOrder, "set_up_time", took("τ_u", o.OnLine.Of(making.SettingUp)), took("τ_c", o.OnLine.Of(making.Checking))),
		fig("coil_interval", lasting(o.PerCoil), float64(o.PerCoil), "", "coil_interval", took("τ_T", o.Tube.Total()), arg("n_c", units.Factor, w.TubesPerCoil()), took("τ_x", w.Coil.Change), productive),
		k.lineHours(),
		fig("shifts", units.Factor, o.Shifts, figure.WholeOrder, "shifts", clock, took("H_s", crew.Shift)),
		fig("tubes_shift", units.Factor, o.PerShift, "", "tubes_shift", k.made(), took("H_s", crew.Shift), productive, took("τ_R", running)),
		fig("saw_hours", units.Hours, float64(o.Saw), figure.WholeOrder, "saw_hours", arg("n_cut", units.Count, math.Round(float64(o.Saw/k.Shop.Cutting.Time))), took("τ_1", k.Shop.Cutting.Time)),
	}
	if o.Steps > 0 {
		s := k.p.StepSums()
		list = append(list, fig("step_hours", units.Hours, float64(o.Steps), figure.WholeOrder, "step_hours", k.made(), took("τ_b", s.Before), k.asked(), took("τ_a", s.After), took("τ_o", s.Order)))
	}
	if p, why := k.p.Promise(k.Shop, 0); why.None() {
		list = append(list, fig("work_days", units.Count, float64(p.Work), figure.WholeOrder, "work_days", clock, took("τ_saw", o.Saw), took("τ_g", o.Steps), took("τ_p", o.Pack), productive,
			number("n_s", k.Shop.Calendar.Shifts), took("H_s", crew.Shift)))
	}
	return append(list, fig("crew_hours", units.Hours, float64(o.Person), figure.WholeOrder, "crew_hours", clock, number("n_crew", crew.People), took("τ_saw", o.Saw), took("τ_p", o.Pack),
		took("τ_g", o.Steps), productive))
}

func (k maker) bundle() []figure.Figure {
	b := k.p.Bundle
	rings := number("k_r", b.Across/2)
	return []figure.Figure{
		fig("bundle_tubes", units.Count, float64(b.Tubes), "", "bundle_tubes", rings),
		fig("bundle_width", units.Diameter, float64(b.Width), "", "bundle_width", rings, k.od()),
		fig("bundle_height", units.Diameter, float64(b.Height), "", "bundle_height", rings, k.od()),
	}
}

func (k maker) packing() []figure.Figure {
	p, c := k.p.Packing, &k.Shop.Crate
	t := &k.Order.Tube
	each, crates := number("n_k", p.PerCrate), number("N_c", p.Crates)
	tare := share("x_t", c.Tare)
	one := arg("M_1", units.Weight, float64(p.One))
	gross := arg("M_k", units.Weight, float64(p.Gross))
	wall := arg("w_h", units.Thickness, float64(t.HeaviestWall()))
	return append([]figure.Figure{
		fig("per_crate", units.Count, float64(p.PerCrate), "", "per_crate", k.asked(), crates),
		fig("layers", units.Count, float64(len(p.Layers)), "", "layers", each),
		fig("crates", units.Count, float64(p.Crates), figure.WholeOrder, "crates", k.asked(), number("room", p.Room), arg("M_max", units.Weight, float64(c.Heaviest())), one, tare),
		fig("tube_heaviest", units.Weight, float64(p.One), figure.PerTube, "tube_heaviest", k.od(), wall, arg("ρ_t", units.Dense, float64(t.Density)), along("L", t.Length),
			share("x_h", tube.StripOver), arg("m_f", units.WeightPerMetre, float64(t.FinMass())), along("L_f", t.FinnedLength())),
		fig("crate_mass", units.Weight, float64(p.Gross), "", "crate_mass", each, one, tare),
		fig("order_gross", units.Weight, float64(p.Order), figure.WholeOrder, "order_gross", k.asked(), one, tare),
		k.trucks(crates, gross),
	}, k.lifting()...)
}

func (k maker) trucks(crates, gross figure.Arg) figure.Figure {
	p, payload := k.p.Packing, arg("M_p", units.Weight, float64(k.Shop.Crate.Payload))
	switch {
	case !p.NoTruck.None():
		return figure.Figure{ID: "trucks", Kind: units.Count, State: figure.Plain, Absent: p.NoTruck}
	case p.OnBed > 0:
		return fig("trucks", units.Count, float64(p.Trucks), figure.WholeOrder, "trucks_bed", crates, payload, gross, number("N_v", p.OnBed))
	}
	return fig("trucks", units.Count, float64(p.Trucks), figure.WholeOrder, "trucks", crates, payload, gross)
}

// lifting is how a crate stands and hangs.
func (k maker) lifting() []figure.Figure {
	p, c := k.p.Packing, &k.Shop.Crate
	t, l := &k.Order.Tube, &p.Lifting
	length := along("L_k", p.Length)
	gross := arg("M_k", units.Weight, float64(p.Gross))
	lean := arg("ψ", units.Lead, making.Flattest)
	legs := fig("leg_load", units.Weight, float64(l.PerLeg), "", "leg_upright", gross)
	list := []figure.Figure{
		fig("crate_length", units.Distance, float64(p.Length), "", "crate_length", along("L", t.Length), along("c_k", c.Clearance)),
		fig("bearers", units.Count, float64(l.Bearers), "", "bearers", length, along("a_b", making.BearersApart)),
		fig("bearer_spacing", units.Distance, float64(l.Spacing), "", "bearer_spacing", length, number("N_u", l.Bearers)),
		fig("balance_point", units.Distance, float64(l.Balance), "", "balance_point", arg("m_t", units.WeightPerMetre, float64(t.TubeMass())), along("L", t.Length),
			arg("m_f", units.WeightPerMetre, float64(t.FinMass())), along("L_f", t.FinnedLength()), along("x_f", t.FinsAt()), k.weight()),
		fig("sling_from", units.Distance, float64(l.Slings.From), "", "sling", share("x_s", c.Slings.Low), length),
		fig("sling_to", units.Distance, float64(l.Slings.To), "", "sling", share("x_s", c.Slings.High), length),
	}
	if !l.Spreader {
		list = append(list, fig("sling_leg", units.Distance, float64(l.Leg), "", "sling_leg", length, along("s_1", l.Slings.From), lean))
		legs = fig("leg_load", units.Weight, float64(l.PerLeg), "", "leg_leaning", gross, lean)
	}
	return append(list, legs)
}
