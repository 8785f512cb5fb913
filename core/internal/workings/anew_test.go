package workings

import (
	"math"

	"finwright/core/airside"
	"finwright/core/fluid"
	"finwright/core/rating"
	"finwright/core/shop/making"
	"finwright/core/tube"
)

// takenBack finds anew, by figure and symbol, the arguments that the code works out from the figure itself or hands on
// without a working of their own.
var takenBack = map[string]func(d *made, numbers map[string]float64) float64{
	"root_od t_foot":      func(d *made, _ map[string]float64) float64 { return d.foot() },
	"foot_reach lap":      func(d *made, _ map[string]float64) float64 { return d.lap() },
	"nusselt C":           (*made).layoutFactor,
	"nusselt j":           (*made).colburn,
	"air_drop f":          (*made).friction,
	"inside_film k_i":     func(d *made, _ map[string]float64) float64 { return d.stream().Conductivity },
	"inside_velocity ρ_i": func(d *made, _ map[string]float64) float64 { return d.stream().Density * d.thinned() },
	"inside_flow c_i":     (*made).halfWay,
	"wanted_duty c_i":     (*made).halfWay,
	"wanted_out c_i":      (*made).halfWay,
	"saw_hours n_cut": func(d *made, _ map[string]float64) float64 {
		w := d.making.Plan.Winding
		return float64(w.Made() + 2*d.in.Job.Quantity) // from stock, and both trims of what ships
	},
	"grown L_w": func(d *made, _ map[string]float64) float64 { return d.wound() },
	"rolling_power P_r": func(d *made, _ map[string]float64) float64 {
		for _, f := range d.making.Shop.Forming {
			if f.Metal == d.in.FinMetal.Family {
				t := &d.in.Tube
				return float64(f.Work) * float64(t.StripWidth()) * float64(t.Fin.Strip) * float64(d.making.Plan.Speeds.Spindle) * math.Pi * float64(t.OD)
			}
		}
		return math.NaN()
	},
}

// layers of strip on the tube, by type.
var feet = map[tube.FinType]float64{tube.Footed: 1, tube.KnurledFooted: 1, tube.OverlapFooted: 2, tube.KnurledOverlap: 2}

// foot returns what lies on the tube below the diameter from which the fin is counted [m].
func (d *made) foot() float64 {
	switch fin := &d.in.Tube.Fin; {
	case fin.Type == tube.Extruded:
		return float64(fin.Sleeve)
	case fin.Root == tube.FromFoot:
		return feet[fin.Type] * float64(fin.Strip)
	}
	return 0
}

// lap returns what the foot reaches beyond the pitch [m]: the lap as given, and for a knurl, or a lap by rule, what one
// fin per inch fewer each makes.
func (d *made) lap() float64 {
	fin := &d.in.Tube.Fin
	given := 0.0
	fewer := map[tube.FinType]float64{tube.KnurledFooted: 1, tube.OverlapFooted: 1, tube.KnurledOverlap: 2}[fin.Type]
	if fin.Lap > 0 && feet[fin.Type] == 2 {
		given = float64(fin.Lap)
		fewer--
	}
	perInch := float64(fin.Count) * 0.0254
	return given + 0.0254/(perInch-fewer) - 0.0254/perInch
}

// stream returns the stream in the tubes at its mean temperature, condensate where it condenses.
func (d *made) stream() fluid.Properties {
	const zero = 273.15
	in := &d.in.Process
	var p fluid.Properties
	var err error
	switch in.Fluid {
	case rating.OwnFluid:
		return d.oil((float64(in.In) + d.res.Heat.Thermal.Duty.ProcessOut) / 2)
	case rating.Ethylene:
		p, err = fluid.EthyleneGlycol.At((float64(in.In)+d.res.Heat.Thermal.Duty.ProcessOut)/2+zero, in.Glycol)
	case rating.Propylene:
		p, err = fluid.PropyleneGlycol.At((float64(in.In)+d.res.Heat.Thermal.Duty.ProcessOut)/2+zero, in.Glycol)
	case rating.Steam:
		var s fluid.Saturated
		s, err = fluid.SaturatedWater(float64(in.In) + zero)
		p = s.Liquid
	default:
		p, err = fluid.Water((float64(in.In)+d.res.Heat.Thermal.Duty.ProcessOut)/2+zero, d.in.StreamPressure())
	}
	if err != nil {
		panic(err)
	}
	return p
}

// halfWay returns the heat capacity of the stream half-way between its inlet and the outlet wanted [J/(kg K)].
func (d *made) halfWay(_ map[string]float64) float64 {
	p := &d.in.Process
	at := (float64(p.In) + p.Out.SI) / 2
	var now fluid.Properties
	var err error
	switch p.Fluid {
	case rating.OwnFluid:
		now = d.oil(at)
	case rating.Ethylene:
		now, err = fluid.EthyleneGlycol.At(at+273.15, p.Glycol)
	case rating.Propylene:
		now, err = fluid.PropyleneGlycol.At(at+273.15, p.Glycol)
	default:
		now, err = fluid.Water(at+273.15, d.in.StreamPressure())
	}
	if err != nil {
		panic(err)
	}
	return now.HeatCapacity
}

// oil reads the own fluid off a straight line through its points [C], and its viscosity off none.
func (d *made) oil(at float64) fluid.Properties {
	p := &d.in.Process
	out, low := p.Own, p.OwnAt
	for _, next := range p.More[:p.Points-1] { // drawn in the order of temperature
		along := min(1, max(0, (at-float64(low))/float64(next.At-low)))
		if at >= float64(low) {
			out.Density += along * (next.Density - out.Density)
			out.HeatCapacity += along * (next.HeatCapacity - out.HeatCapacity)
			out.Conductivity += along * (next.Conductivity - out.Conductivity)
		}
		low = next.At
	}
	return out
}

// thinned returns the mean pressure of a gas in the tubes over that where it enters, at which its density is stated [-].
func (d *made) thinned() float64 {
	if p := &d.in.Process; p.Fluid == rating.OwnFluid && p.Gas && p.Pressure.Stated {
		return 1 - d.res.Heat.Thermal.InsideLoss.Total/2/p.Pressure.SI
	}
	return 1
}

// geometry of the bank [m] and [-].
type geometry struct {
	d, df, gap, height, across, along, ratio float64
	rows                                     float64
}

func (d *made) geometry() geometry {
	t := &d.in.Tube
	g := geometry{
		d: float64(t.OD) + 2*d.foot(), df: float64(t.OD) + 2*float64(t.Fin.Height), rows: float64(d.in.Bank.Rows),
		across: d.res.Auto["tube_pitch"].SI, along: d.res.Auto["row_pitch"].SI,
	}
	g.height = (g.df - g.d) / 2
	strip := float64(t.Fin.Strip)
	if t.Profile() == tube.Rolled {
		strip *= float64(t.OD) / g.d
	}
	g.gap = 1/float64(t.Fin.Count) - strip
	area, _ := d.res.Find("total_area")
	g.ratio = area.SI / (math.Pi * float64(t.OD))
	return g
}

// layoutFactor returns the factor of the correlation in use [-] that hangs on how the rows stand.
func (d *made) layoutFactor(map[string]float64) float64 {
	if airside.FilmMethods[d.res.Heat.Thermal.Film].ID != "schmidt_1963" {
		return d.ganguli()
	}
	if d.in.Bank.Layout == airside.InLine {
		return 0.30
	}
	return 0.45
}

// ganguli returns the constant of Ganguli, Tung and Taborek for layout and rows [-].
func (d *made) ganguli() float64 {
	rows := min(d.in.Bank.Rows, 4)
	if d.in.Bank.Layout == airside.InLine {
		return [5]float64{0, 0.20, 0.20, 0.20, 0.22}[rows]
	}
	return [5]float64{0, 0.20, 0.33, 0.36, 0.38}[rows]
}

// fading is what Weierman's factors have of the rows, and of the pitches [-].
func (g geometry) fading() (rows, pitches float64) {
	return math.Exp(-0.15 * g.rows * g.rows), g.along / g.across
}

// colburn returns Weierman's factor of heat transfer [-].
func (d *made) colburn(numbers map[string]float64) float64 {
	g := d.geometry()
	few, pitches := g.fading()
	return 0.091 * math.Pow(numbers["Re"], -0.25) * (0.35 + 0.65*math.Exp(-0.17*g.height/g.gap)) *
		(0.7 + (0.7-0.8*few)*math.Exp(-pitches)) * math.Pow(g.df/g.d, 0.5) * math.Pow(d.res.Heat.Thermal.Flow.TemperatureRatio, 0.25)
}

// friction returns the friction factor of the correlation in use [-].
func (d *made) friction(_ map[string]float64) float64 {
	g, v := d.geometry(), d.res.Heat.Thermal.Drops[d.res.Heat.Thermal.Drop]
	re := v.Answer.Reynolds
	switch v.ID {
	case "esdu_86022_drop":
		return 4.567 * math.Pow(re, -0.242) * math.Pow(g.ratio, 0.504) * math.Pow(g.across/g.d, -0.376) * math.Pow(g.along/g.d, -0.546)
	case "robinson_briggs_1966":
		return 9.465 * math.Pow(re, -0.316) * math.Pow(g.across/g.d, -0.927) * math.Pow(g.across/math.Hypot(g.along, g.across/2), 0.515)
	case "ganguli_1985_drop":
		a, e := (g.across-g.df)/g.d, re*g.gap/g.height
		return (1 + 2*math.Exp(-a/4)/(1+a)) * (0.021 + 27.2/e + 0.29/math.Pow(e, 0.2))
	case "weierman_1976_drop":
		few, pitches := g.fading()
		return (0.075 + 1.85/math.Pow(re, 0.3)) * 0.11 * math.Pow(0.05*g.across/g.d, -0.7*math.Pow(g.height/g.gap, 0.2)) *
			(1.1 + (1.8-2.1*few)*math.Exp(-2*pitches) - (0.7-0.8*few)*math.Exp(-0.6*pitches)) *
			math.Pow(g.df/g.d, 0.5) * math.Pow(d.res.Heat.Thermal.Flow.TemperatureRatio, -0.25)
	}
	return math.NaN()
}

// wound returns the finished length on which strip is wound [m], run-downs that are stripped again included: laid from
// each finned zone on, and no farther than the tube.
func (d *made) wound() float64 {
	sum, covered := 0.0, math.Inf(-1)
	end := float64(d.in.Tube.Length + d.making.Shop.Cutting.TrimB)
	for _, z := range d.making.Plan.Programme.Zones {
		if z.Kind != making.Finned {
			continue
		}
		from, to := max(float64(z.Finished.From), covered), min(end, float64(z.Finished.To)+z.Run.RunDown/float64(d.in.Tube.Fin.Count))
		sum += max(0, to-from)
		covered = max(covered, to)
	}
	return sum
}
