package workings

import (
	"math"

	"finwright/core/airside"
	"finwright/core/fluid"
	"finwright/core/internal/correlation"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/tube"
)

// takenBack finds anew, by figure and symbol, the arguments that the code works out from the figure itself or hands on
// without a working of their own.
var takenBack = map[string]func(d *made, numbers map[string]float64) float64{
	"root_od t_foot":      func(d *made, _ map[string]float64) float64 { return d.foot() },
	"foot_reach lap":      func(d *made, _ map[string]float64) float64 { return d.lap() },
	"nusselt C":           (*made).filmFactor,
	"nusselt j":           (*made).filmFactor,
	"air_drop f":          (*made).dropFactor,
	"inside_film k_i":     func(d *made, _ map[string]float64) float64 { return d.stream().Conductivity },
	"inside_velocity ρ_i": func(d *made, _ map[string]float64) float64 { return d.stream().Density * d.thinned() },
	"inside_flow c_i":     (*made).halfWay,
	"wanted_duty c_i":     (*made).halfWay,
	"wanted_out c_i":      (*made).halfWay,
	"saw_hours n_cut": func(d *made, _ map[string]float64) float64 {
		cuts := 2 * d.in.Job.Quantity // both trims of what ships
		if d.making.Shop.Buying.Tubes == shop.StockLengths {
			cuts += d.making.Plan.Winding.Made()
		} else {
			cuts += d.making.Plan.DrawnSums().Pieces
		}
		return float64(cuts)
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
	if knurled := fin.Type == tube.KnurledFooted || fin.Type == tube.KnurledOverlap; fin.Foot.By == tube.NeutralFibre {
		if knurled {
			given = float64(fin.Foot.Knurl)
		}
		switch {
		case feet[fin.Type] < 2:
			return given
		case fin.Lap > 0:
			return given + float64(fin.Lap)
		}
		return given + float64(fin.Foot.Lap)
	}
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

// bank returns the bank in its stream, of which film or pressure drop found a Reynolds number.
func (d *made) bank(reynolds float64) correlation.Bank {
	t := &d.in.Tube
	b := correlation.Bank{
		Root: float64(t.OD) + 2*d.foot(), Tip: float64(t.OD) + 2*float64(t.Fin.Height), Rows: float64(d.in.Bank.Rows),
		Across: d.res.Auto["tube_pitch"].SI, Along: d.res.Auto["row_pitch"].SI, InLine: d.in.Bank.Layout == airside.InLine,
		Reynolds: reynolds, TemperatureRatio: d.res.Heat.Thermal.Flow.TemperatureRatio,
	}
	b.Height = (b.Tip - b.Root) / 2
	strip := float64(t.Fin.Strip)
	if t.Profile() == tube.Rolled {
		strip *= float64(t.OD) / b.Root
	}
	b.Gap = 1/float64(t.Fin.Count) - strip
	area, _ := d.res.Find("total_area")
	b.AreaRatio = area.SI / (math.Pi * float64(t.OD))
	return b
}

// filmFactor and dropFactor return the factor of the correlation in use [-] that has no working of its own.

func (d *made) filmFactor(numbers map[string]float64) float64 {
	return factor(correlation.Films[airside.FilmMethods[d.res.Heat.Thermal.Film].ID], d.bank(numbers["Re"]))
}

func (d *made) dropFactor(map[string]float64) float64 {
	v := d.res.Heat.Thermal.Drops[d.res.Heat.Thermal.Drop]
	return factor(correlation.Drops[v.ID], d.bank(v.Answer.Reynolds))
}

func factor(want correlation.Want, b correlation.Bank) float64 {
	if want.Factor == nil {
		return math.NaN()
	}
	return want.Factor(b)
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
