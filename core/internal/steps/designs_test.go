package steps

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/shop"
	"finwright/core/units"
)

// span is from where to where a number is drawn and walked [SI].
type span struct{ low, high float64 }

// plausible are the ranges of an order as shops have them. A number that is not listed keeps the house's value, and is walked
// over all that its field takes.
var plausible = map[string]span{
	"tube_od":             {0.0159, 0.0508},
	"tube_wall":           {0.0015, 0.0035},
	"fin_height":          {0.005, 0.019},
	"strip_thickness":     {0.0003, 0.0015},
	"fin_pitch":           {120, 430},
	"tip_thickness":       {0.0001, 0.0003},
	"groove_depth":        {0.0002, 0.0004},
	"foot_lap":            {0.0005, 0.0015},
	"sleeve_thickness":    {0.0003, 0.0015},
	"tube_length":         {2, 14},
	"plain_end_a":         {0.02, 0.2},
	"plain_end_b":         {0.02, 0.2},
	"film_coefficient":    {20, 120},
	"metal_temperature":   {30, 250},
	"air_in":              {-10, 55},
	"air_humidity":        {0.05, 0.9},
	"altitude":            {0, 2500},
	"face_velocity":       {1.2, 6},
	"fouling_outside":     {0, 5e-4},
	"fan_efficiency":      {0.4, 0.8},
	"tip_clearance":       {0.002, 0.02},
	"tube_pitch":          {0.05, 0.12},
	"row_pitch":           {0.05, 0.12},
	"duty_wanted":         {5e4, 2e6},
	"drop_allowed":        {40, 300},
	"inside_in":           {60, 180},
	"inside_flow":         {3, 60},
	"inside_pressure":     {1.5e6, 5e6},
	"fouling_inside":      {0, 5e-4},
	"bond_resistance":     {0, 2e-4},
	"start_up":            {60, 250},
	"upset":               {60, 300},
	"house_limit":         {80, 300},
	"own_fluid_density":   {600, 1100},
	"own_fluid_heat":      {1500, 4200},
	"own_fluid_viscosity": {3e-4, 2e-2},
	"rows":                {1, 8},
	"tubes_per_row":       {8, 60},
	"quantity":            {1, 400},
	"margin":              {0, 0.5},
}

// spanOf returns where a number is walked.
func spanOf(f *field.Field) span {
	if s, ok := plausible[f.ID]; ok {
		return s
	}
	return span{f.Low, f.High}
}

// walked lists the fields that hold a continuous number.
func walked() []*field.Field {
	var out []*field.Field
	for i := range field.Fields {
		if f := &field.Fields[i]; f.Sweeps() && f.Whole == nil {
			out = append(out, f)
		}
	}
	return out
}

// put sets a number of a document, to the last bit.
func put(d document.Document, f *field.Field, si float64) {
	text := strconv.FormatFloat(units.In(f.Kind, si, units.SI), 'g', 17, 64) + " " + f.Kind.Unit(units.SI)
	d.Fields[f.ID] = document.Entry{Text: text, Origin: document.Customer}
}

// draw returns the n-th design, which can be rated.
func draw(n int) document.Document {
	r := rand.New(rand.NewPCG(20, uint64(n)))
	for {
		d := document.New()
		for i := range field.Fields {
			f := &field.Fields[i]
			s, listed := plausible[f.ID]
			switch {
			case f.Choice != nil && r.IntN(2) == 0:
				choices := f.Choices()
				d.Fields[f.ID] = document.Entry{Text: choices[r.IntN(len(choices))], Origin: document.Customer}
			case !listed, f.MayBeEmpty() && r.IntN(3) > 0:
			case f.Whole != nil:
				d.Fields[f.ID] = document.Entry{Text: strconv.Itoa(int(s.low) + r.IntN(int(s.high-s.low)+1)), Origin: document.Customer}
			default:
				put(d, f, s.low+(s.high-s.low)*r.Float64())
			}
		}
		if a := ask(d); a != nil && a.rated {
			return d
		}
	}
}

// answer is all that is said of a design.
type answer struct {
	figures []figure.Figure
	places  map[string]int // of the figures, by id
	words   string         // what is said of it beside numbers: remarks, marks, methods, the line
	in      field.Input
	heat    design.Heat
	rated   bool // the bank, too
}

// ask answers a design; nil where its entries do not go together.
func ask(d document.Document) *answer {
	in, err := design.Read(d)
	if err != nil {
		return nil
	}
	house := shop.House()
	in.MadeBy(&house)
	h, err := design.Rate(in)
	if err != nil {
		return nil
	}
	r := design.Evaluate(in, h)
	plan := design.Make(in, r.Heat)
	r.AddMaking(&plan)
	a := &answer{places: map[string]int{}, rated: h.Absent.None(), in: in, heat: h}
	for _, g := range r.Groups {
		for _, f := range g.Figures {
			a.places[f.ID] = len(a.figures)
			a.figures = append(a.figures, f)
			a.words += f.ID + string(f.State)
		}
	}
	for _, n := range r.Notices {
		a.words += n.Message.Key
	}
	a.words += r.Line + h.Thermal.Inside.Method
	if w := plan.Plan.Winding; w != nil {
		a.words += string(w.Coil.Form)
	}
	if b := plan.Plan.BoughtIn; b != nil {
		a.words += fmt.Sprint(b.OD) // the row of the price list, which the line's answer names
	}
	for _, m := range h.Methods {
		a.words += strconv.FormatBool(m.InRange)
	}
	return a
}

// of returns a figure's value [SI]; ok is false where there is none.
func (a *answer) of(id string) (si float64, ok bool) {
	if a == nil {
		return 0, false
	}
	i, there := a.places[id]
	if !there || !a.figures[i].Absent.None() {
		return 0, false
	}
	return a.figures[i].SI, true
}

// floors are the least scales of figures, by kind [SI]: what one would not tell apart on the page.
var floors = map[units.Kind]float64{
	units.Temp: 1, units.Cost: 1, units.Factor: 0.01, units.Percent: 0.01, units.Count: 1,
	units.Film: 1, units.Duty: 1e3, units.Drop: 1, units.Loss: 100, units.Resist: 1e-6, units.Drive: 10, units.Velocity: 0.01,
	units.Weight: 0.1, units.WeightPerMetre: 0.01, units.Run: 0.1, units.Distance: 1e-3, units.Diameter: 1e-4, units.Gap: 1e-5, units.Thickness: 1e-6, units.Crack: 1e-7,
}

// differ returns how much two values of a figure of a differ [-]: measured by its size, or by the floor of its kind; a
// temperature by a kelvin.
func differ(a *answer, id string, x, y float64) float64 {
	k := a.figures[a.places[id]].Kind
	scale := max(floors[k], 1e-12)
	if k != units.Temp {
		scale = max(math.Abs(x), math.Abs(y), scale)
	}
	return math.Abs(x-y) / scale
}
