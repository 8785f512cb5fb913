package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/verdict"
	"finwright/core/tube"
	"finwright/core/units"
)

// FigureGroup is a list of figures under one title, "figures.<id>".
type FigureGroup struct {
	ID      string
	Section string // the question that it helps to answer: "surface", "heat"
	Figures []figure.Figure
}

// Result is everything the page and the papers say of a design.
type Result struct {
	Surface rating.Surface
	Heat    Heat
	Auto    map[string]message.Amount // what stands in for empty entries

	Supports  int          // bare spans that make sense, evenly spaced; 0: not known
	SpanWidth units.Length // of each
	Line      string       // and for that of the line; empty till AddMaking
	BoughtIn  bool         // finned: no line winds it
	Groups    []FigureGroup
	Pairs     []Asked // found and wanted
	Notices   []Notice
	Making    []Notice // of them, those of the making
	Parts     []Part   // what surface, heat and making say; making only where AddMaking has been
}

// Notice is a remark on the design, tied to the field that causes it and the figure that shows it.
type Notice struct {
	State   figure.State
	Field   string
	Figure  string
	Message message.Message
	Change  []verdict.Setting   // what would mend it; nil where nothing is proposed
	Others  [][]verdict.Setting // what would mend it too, farther ones later
	Offer   *Offer              // what of them holds, after TryRemarks; nil where nothing does
}

// Evaluate computes every figure of a read input, which was rated as h.
func Evaluate(in field.Input, h Heat) Result {
	s := in.Surface(&h.Thermal)
	judged := judgeShape(&in)
	b := builder{in: &in, t: &in.Tube, s: &s, clean: cleaned(&in, &h)}
	r := Result{Surface: s, Heat: h, Auto: Auto(&in)}
	r.remark(surfacePart, figure.Good, notices(&in, &s, judged))
	r.remark(heatPart, h.kept(), heatNotices(&in, &h))
	r.Groups = []FigureGroup{
		{"efficiency", "surface", b.efficiency()},
		{"areas", "surface", b.areas()},
		{"shape", "surface", b.shape()},
		{"strip", "surface", b.strip()},
		{"masses", "surface", b.masses()},
		{"per_tube", "surface", b.perTube()},
		{"order", "surface", b.order()},
	}
	r.takes(&in)
	r.Groups = append(append(r.Groups, b.heat(h)...), FigureGroup{"bank", "heat", b.bank()})
	beside := besides(&in, &h)
	for g := range r.Groups {
		for i := range r.Groups[g].Figures {
			f := &r.Groups[g].Figures[i]
			f.Beside = beside[f.ID]
			test(f, &in, h, judged)
			mark(f, r.Notices)
		}
	}
	if h.Absent.None() {
		r.Pairs = pairs(&in, &h.Thermal, b.clean, &r)
	}
	return r
}

// Find returns the figure with the given id.
func (r Result) Find(id string) (figure.Figure, bool) {
	for _, g := range r.Groups {
		for _, f := range g.Figures {
			if f.ID == id {
				return f, true
			}
		}
	}
	return figure.Figure{}, false
}

// builder makes figures from one solved design.
type builder struct {
	in    *field.Input
	t     *tube.Tube
	s     *rating.Surface
	clean *rating.Thermal // the bank without its dirt, where it has some and a duty is wanted
}

func arg(symbol string, k units.Kind, si float64) figure.Arg {
	return figure.Arg{Symbol: symbol, Kind: k, SI: si}
}

func fig(id string, k units.Kind, si float64, basis figure.Basis, formula string, args ...figure.Arg) figure.Figure {
	return figure.Figure{ID: id, Kind: k, SI: si, Basis: basis, Formula: formula, Args: args, State: figure.Plain}
}

// stated gives f the formula that stands beside the method which computed it.
func stated(formula *figure.Formula, f figure.Figure) figure.Figure {
	f.Stated = formula
	return f
}

func absent(id string, k units.Kind, basis figure.Basis, why string) figure.Figure {
	return figure.Figure{ID: id, Kind: k, Basis: basis, State: figure.Plain, Absent: message.New(why)}
}

// Arguments that many formulas share.
func (b *builder) d() figure.Arg    { return arg("d", units.Diameter, float64(b.t.OD)) }
func (b *builder) root() figure.Arg { return arg("D_r", units.Diameter, float64(b.t.RootOD())) }
func (b *builder) tip() figure.Arg  { return arg("D_f", units.Diameter, float64(b.t.FinOD())) }
func (b *builder) hf() figure.Arg   { return arg("h_f", units.Height, float64(b.t.Fin.Height)) }
func (b *builder) strp() figure.Arg { return arg("t", units.Thickness, float64(b.t.Fin.Strip)) }
func (b *builder) n() figure.Arg    { return arg("n", units.FinCount, float64(b.t.Fin.Count)) }
func (b *builder) tt() figure.Arg   { return arg("t_t", units.Thickness, float64(b.t.TipThickness())) }
func (b *builder) film() figure.Arg { return arg("h", units.Film, float64(b.s.Film)) }
func (b *builder) k() figure.Arg    { return arg("k", units.Conduct, float64(b.s.Conductivity)) }
func (b *builder) total() figure.Arg {
	return arg("A", units.SurfacePerMetre, float64(b.s.Areas.Total()))
}

func (b *builder) bare() figure.Arg {
	return arg("A_b0", units.SurfacePerMetre, float64(b.s.Areas.Bare))
}
func (b *builder) eta() figure.Arg { return arg("η", units.Factor, b.s.Fin.Efficiency) }
func (b *builder) finned() figure.Arg {
	return arg("L_f", units.Distance, float64(b.t.FinnedLength()))
}
func (b *builder) length() figure.Arg { return arg("L", units.Distance, float64(b.t.Length)) }

func (b *builder) shape() []figure.Figure {
	t := b.t
	return []figure.Figure{
		fig("fin_od", units.Diameter, float64(t.FinOD()), "", "fin_od", b.d(), b.hf()),
		fig("root_od", units.Diameter, float64(t.RootOD()), "", "root_od", b.d(), arg("t_foot", units.Thickness, float64(t.RootOD()-t.OD)/2)),
		fig("pitch", units.Gap, float64(t.Pitch()), "", "pitch", b.n()),
		fig("gap", units.Gap, float64(t.Gap()), figure.StripAtTheRoot, "gap", b.n(), b.strp()),
		b.tipThickness(),
		fig("stretch", units.Factor, t.Stretch(), "", "stretch", b.tip(), b.d()),
		fig("helix", units.Lead, float64(t.HelixAngle()), figure.StripAtTheRoot, "helix", b.n(), b.d()),
		fig("obstruction", units.Gap, float64(t.Obstruction()), "", "obstruction", b.root(), b.n(), b.tip(), arg("t_m", units.Thickness, float64(t.MeanThickness()))),
	}
}

func (b *builder) tipThickness() figure.Figure {
	tt := float64(b.t.TipThickness())
	switch b.t.Profile() {
	case tube.Rolled:
		return fig("tip_thickness", units.Thickness, tt, "", "tip_rolled", b.strp(), b.d(), b.tip())
	case tube.Linear:
		return fig("tip_thickness", units.Thickness, tt, "", "tip_linear", arg("t_given", units.Thickness, tt))
	}
	return fig("tip_thickness", units.Thickness, tt, "", "tip_uniform", b.strp())
}

func (b *builder) areas() []figure.Figure {
	a, m := b.s.Areas, units.SurfacePerMetre
	return []figure.Figure{
		fig("total_area", m, float64(a.Total()), figure.FinnedMetre, "total_area", arg("A_side", m, float64(a.Side)), arg("A_tip", m, float64(a.Tip)), arg("A_prime", m, float64(a.Between))),
		fig("area_ratio", units.Factor, a.Ratio(), figure.BareArea, "area_ratio", b.total(), b.bare()),
		fig("bare_area", m, float64(a.Bare), figure.TubeMetre, "bare_area", b.d()),
		fig("side_area", m, float64(a.Side), figure.FinnedMetre, "side_area", b.n(), b.tip(), b.root()),
		fig("tip_area", m, float64(a.Tip), figure.FinnedMetre, "tip_area", b.n(), b.tip(), b.tt()),
		fig("between_area", m, float64(a.Between), figure.FinnedMetre, "between_area", b.root(), b.n(), b.strp()),
		fig("inside_area", m, float64(b.t.InsideArea()), figure.TubeMetre, "inside_area", b.d(), arg("w_m", units.Wall, float64(b.t.MeanWall()))),
	}
}

func (b *builder) efficiency() []figure.Figure {
	s := b.s
	list := []figure.Figure{
		b.finEfficiency(),
		fig("surface_efficiency", units.Factor, s.SurfaceEta, figure.TotalArea, "surface_eta", arg("A_fin", units.SurfacePerMetre, float64(s.Areas.Fin())), b.total(), b.eta()),
		fig("used_area", units.SurfacePerMetre, float64(s.Used), figure.FinnedMetre, "used_area", b.total(), arg("η_o", units.Factor, s.SurfaceEta)),
		fig("tip_ratio", units.Factor, s.Fin.TipRatio, "", tipFormula[b.t.Profile()], append(b.finArgs(), b.tt())...),
		fig("fin_parameter", units.Factor, s.Fin.ML, "", "fin_parameter", b.film(), b.k(), b.rootThickness(), b.tip(), b.root()),
		fig("conductivity", units.Conduct, float64(s.Conductivity), "", "conductivity", arg("T", units.Temp, float64(s.FinAt))),
		b.taperCost(),
	}
	if dirt := b.in.Air.Fouling; dirt > 0 {
		list = append(list, fig("film_dirty", units.Film, float64(s.Film), figure.TotalArea, "film_dirty", arg("h", units.Film, 1/(1/float64(s.Film)-dirt)), arg("R_o", units.Resist, dirt)))
	}
	return list
}

func (b *builder) rootThickness() figure.Arg {
	return arg("t", units.Thickness, float64(b.t.Thickness(b.t.RootOD()/2)))
}

// finArgs are what the heat in a fin depends on.
func (b *builder) finArgs() []figure.Arg {
	return []figure.Arg{
		b.film(), b.k(), b.rootThickness(), arg("r_o", units.Diameter, float64(b.t.RootOD())/2), arg("r_e", units.Diameter, float64(b.t.FinOD())/2),
	}
}

// tipFormula says along which taper the tip's temperature is found.
var tipFormula = map[tube.Profile]string{tube.Rolled: "ratio_rolled", tube.Uniform: "ratio_uniform", tube.Linear: "ratio_linear"}

// finEfficiency shows the closed form of the profile in force with its own intermediate numbers.
func (b *builder) finEfficiency() figure.Figure {
	disc := rating.Disc(b.t, float64(b.s.Conductivity))
	h, k := float64(b.s.Film), disc.Conductivity
	formula, args := "eta_uniform", b.finArgs()
	switch b.t.Profile() {
	case tube.Rolled:
		formula = "eta_rolled"
		beta := math.Sqrt(2 * h / (k * disc.RootThickness * disc.RootRadius))
		z := func(r float64) float64 { return 2.0 / 3 * beta * r * math.Sqrt(r) }
		args = append(args, arg("β", units.Factor, beta), arg("z_o", units.Factor, z(disc.RootRadius)), arg("z_e", units.Factor, z(disc.TipRadius)))
	case tube.Linear:
		formula = "eta_linear"
		args = append(args, b.tt())
	default:
		args = append(args, arg("m", units.Factor, math.Sqrt(2*h/(k*disc.RootThickness))))
	}
	return fig("fin_efficiency", units.Factor, b.s.Fin.Efficiency, figure.FacesOnly, formula, args...)
}

func (b *builder) taperCost() figure.Figure {
	if b.t.Profile() == tube.Uniform {
		return absent("taper_cost", units.Percent, "", "absent.no_taper")
	}
	uniform := b.s.UniformEta(b.t)
	return fig("taper_cost", units.Percent, uniform/b.s.Fin.Efficiency-1, "", "taper_cost", arg("η_uniform", units.Factor, uniform), b.eta())
}
