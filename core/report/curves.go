package report

import (
	"math"
	"slices"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// axis describes an input that plots vary: how far beyond the design it reaches.
type axis struct {
	id    string // of the plot
	field string
	floor float64 // SI, the least shown
	reach float64 // the plot reaches at least reach times the design's value
	least float64 // SI, and at least this far
	hair  float64 // steps from nought at which the curves of the surface start
}

// kind and at are what the field's row says of its number, and what that is in a design [SI].
func (a axis) kind() units.Kind           { return field.Must(a.field).Kind }
func (a axis) at(in *field.Input) float64 { return field.Must(a.field).Get(in) }

var (
	heightAxis = axis{"height", "fin_height", 0.002, 1.5, 0.020, hair}
	pitchAxis  = axis{"pitch", "fin_pitch", 80, 1.3, 480, 1} // fewer fins are hardly a finned tube, and the film of so few is beyond every correlation
)

// samples is how many points a curve has: smooth at a page's width.
const samples = 49

// thicknesses of the family, as multiples of the design's strip; the design's own is the main one.
var thicknesses = []float64{0.75, 1, 1.5}

// panels are the quantities of each plot, from the top.
var panels = []rating.Quantity{rating.AreaRatio, rating.Efficiency}

// Curves returns the plots of a checked design: area ratio and efficiency
// against fin height, and against fins per length. h is in as rated.
func (w Writer) Curves(in field.Input, h design.Heat) []Curves {
	return []Curves{
		w.curves(in, h, heightAxis),
		w.curves(in, h, pitchAxis),
	}
}

// axisOf prepares an axis in the reader's units.
func (w Writer) axisOf(a axis) Axis {
	return Axis{
		Field: a.field, Kind: a.kind(), Unit: a.kind().Unit(w.System),
		Label: w.Texts.Text("field." + a.field), Nudge: units.StepSize(a.kind(), w.System),
	}
}

// stood says on an axis where the design stands [SI].
func (w Writer) stood(a Axis, at float64) Axis {
	a.Said = a.Label + " " + w.Texts.Numbers.Figure(a.Kind, at, w.System).String()
	return a
}

// span returns the axis from its floor to a round value beyond the design. One that would start at nought starts
// at a hair of a step above it, where a design still exists.
func (w Writer) span(a axis, at, hair float64) SampledAxis {
	if r, ok := w.Along[a.field]; ok && r.holds(units.In(a.kind(), at, w.System), units.In(a.kind(), mostSight*field.Must(a.field).High, w.System)) {
		return SampledAxis{w.axisOf(a), r.Low, r.High}
	}
	low := units.In(a.kind(), a.floor, w.System)
	high := units.In(a.kind(), math.Max(a.least, a.reach*at), w.System)
	s := NiceRange(low, high, 8)
	return SampledAxis{w.axisOf(a), math.Max(s.Low, hair*s.Step), s.High}
}

// mostSight is how far beyond the limit of its entry an axis may have come to reach.
const mostSight = 2

// holds tells whether a place, and an axis that goes no further than most, is within.
func (r Range) holds(at, most float64) bool {
	return 0 < r.Low && r.Low < r.High && r.High <= most && r.Low <= at && at <= r.High
}

// unseen is the same reader, who has nothing in sight yet.
func (w Writer) unseen() Writer {
	w.Along = nil
	return w
}

// fromFins is a side of the map: it begins where fins begin, or with a design that has less.
func (w Writer) fromFins(a axis, at float64) SampledAxis {
	s := w.span(a, at, hair)
	s.From = units.In(a.kind(), min(a.floor, at), w.System)
	return s
}

// hair lets a curve start where there is no fin at all.
const hair = 1e-3

// Marks returns the plots of Curves, and the map where there is one, with the design's place alone.
func (w Writer) Marks(in field.Input, h design.Heat) []Curves {
	solved := in.Surface(&h.Thermal)
	var out []Curves
	for _, a := range []axis{heightAxis, pitchAxis} {
		out = append(out, Curves{ID: a.id, Panels: w.panels(&in, &solved, a)})
	}
	ring := Point{units.In(units.Height, heightAxis.at(&in), w.System), units.In(units.FinCount, pitchAxis.at(&in), w.System)}
	return append(out, Curves{ID: "map", Panels: []Panel{{Mark: &ring}}})
}

// panels are those of a plot against an axis, with the design's place.
func (w Writer) panels(in *field.Input, solved *rating.Surface, a axis) []Panel {
	out := make([]Panel, len(panels))
	for i, q := range panels {
		out[i] = Panel{
			Figure: string(q), Kind: q.Kind(), Unit: q.Kind().Unit(w.System), Label: w.Texts.Text("figure." + string(q)),
			Mark: &Point{units.In(a.kind(), a.at(in), w.System), q.Of(solved)},
		}
		if q == rating.Efficiency {
			out[i].From = w.from(out[i].Label)
		}
	}
	return out
}

// from names an axis with where it begins.
func (w Writer) from(axis string) func(string) string {
	return func(low string) string { return w.say(message.New("plot.axis_from", "axis", axis, "low", low)) }
}

func (w Writer) curves(in field.Input, h design.Heat, a axis) Curves {
	at := a.at(&in)
	span := w.span(a, at, a.hair)
	if units.In(a.kind(), at, w.System) < span.From {
		span = w.span(a, at, hair)
	}
	shown := span.at(samples)
	si := make([]float64, len(shown))
	for i, x := range shown {
		si[i] = units.Out(a.kind(), x, w.System)
	}
	solved, kept := in.Surface(&h.Thermal), in.Keep(&h.Thermal)
	out := Curves{ID: a.id, X: w.stood(span.Axis, at), Numbers: w.Texts.Numbers, Panels: w.panels(&in, &solved, a), Wide: span.To > w.unseen().span(a, at, a.hair).To}
	for _, times := range thicknesses {
		strip := float64(in.Tube.Fin.Strip) * times
		family, _ := design.Vary(in, "strip_thickness", strip)
		ys := make([][]float64, len(panels))
		counts := design.Sweep(family, &kept, &h.Thermal, a.field, si, func(_ int, s rating.Surface, ok bool) {
			for p, q := range panels {
				y := math.NaN()
				if ok {
					y = q.Of(&s)
				}
				ys[p] = append(ys[p], y)
			}
		})
		if times == 1 && !in.Air.FilmGiven {
			out.Held = w.held(&in.Input, &kept, a.field, false, counts)
		}
		for p := range panels {
			out.Panels[p].Lines = append(out.Panels[p].Lines, Curve{
				Label: w.say(message.New("plot.strip", "thickness", message.Amount{Kind: units.Thickness, SI: strip})), Main: times == 1, X: shown, Y: ys[p],
			})
		}
	}
	out.Title, out.Alt = w.answer(in, h, &solved, a, out)
	return out
}

// answer says in words what the plot shows of this design.
func (w Writer) answer(in field.Input, h design.Heat, s *rating.Surface, a axis, c Curves) (title, alt string) {
	finding := message.Message{}
	if a == heightAxis {
		finding = w.crossing(in, h, a, c)
	} else {
		finding = usedAsCloser(c)
	}
	title = w.say(message.New("plot."+a.id+".title", "finding", finding))
	return title, w.say(message.New("plot."+a.id+".alt",
		"eta", message.Amount{Kind: units.Factor, SI: s.Fin.Efficiency},
		"ratio", message.Amount{Kind: units.Factor, SI: s.Areas.Ratio()}))
}

// alike is how far an efficiency may change along a plot and still be called the same.
const alike = 0.005

// usedAsCloser says how the surface is used as fins stand closer: of one fin alone the film changes that.
func usedAsCloser(c Curves) message.Message {
	for _, line := range c.Panels[len(c.Panels)-1].Lines {
		if !line.Main {
			continue
		}
		y := slices.DeleteFunc(slices.Clone(line.Y), math.IsNaN)
		if len(y) == 0 {
			break
		}
		switch by := y[len(y)-1] - y[0]; {
		case by > alike:
			return message.New("plot.used_better")
		case by < -alike:
			return message.New("plot.used_worse")
		}
	}
	return message.New("plot.used_alike")
}

// crossing says where the design's own efficiency falls below design.GoodEfficiency: at the least number on the grid of steps at which the
// design, entered with it and rated anew, has less. The curve, whose stream is held, only says where to look.
func (w Writer) crossing(in field.Input, h design.Heat, a axis, c Curves) message.Message {
	for _, line := range c.Panels[len(c.Panels)-1].Lines {
		if !line.Main {
			continue
		}
		for i := 1; i < len(line.Y); i++ {
			if line.Y[i-1] >= design.GoodEfficiency && line.Y[i] < design.GoodEfficiency {
				f := (line.Y[i-1] - design.GoodEfficiency) / (line.Y[i-1] - line.Y[i])
				x := line.X[i-1] + f*(line.X[i]-line.X[i-1])
				at := w.firstBelow(in, h, a, units.Out(a.kind(), x, w.System))
				return message.New("plot.falls", "at", message.Amount{Kind: a.kind(), SI: at})
			}
		}
		if len(line.Y) == 0 {
			break
		}
		if line.Y[0] < design.GoodEfficiency {
			return message.New("plot.below")
		}
		// A curve that ends a little above may stand for a design that does not.
		end := units.Out(a.kind(), line.X[len(line.X)-1], w.System)
		if eta, ok := design.EfficiencyAt(in, &h, a.field, end); ok && design.Idle(eta) {
			return message.New("plot.falls", "at", message.Amount{Kind: a.kind(), SI: w.firstBelow(in, h, a, end)})
		}
	}
	return message.New("plot.above")
}

// mostSteps bounds the search from a curve to the designs that it stands for.
const mostSteps = 64

// firstBelow returns the least number on the grid of steps near x [SI] at which the design has less than design.GoodEfficiency.
func (w Writer) firstBelow(in field.Input, h design.Heat, a axis, x float64) float64 {
	at := units.Snap(a.kind(), x, w.System)
	below := func(x float64) bool {
		eta, ok := design.EfficiencyAt(in, &h, a.field, x)
		return ok && design.Idle(eta)
	}
	way := 1
	if below(at) {
		way = -1
	}
	for range mostSteps {
		next := units.Step(a.kind(), at, way, w.System)
		switch now := below(next); {
		case way > 0 && now:
			return next
		case way < 0 && !now:
			return at
		}
		at = next
	}
	return at
}

// mapCells is the map's resolution each way.
const mapCells = 200

// MapFrame returns the map of quantity q over fin height and fins per length
// without what fills it: its axes, its words and the design's place.
func (w Writer) MapFrame(in field.Input, h design.Heat, q rating.Quantity) Map {
	height, count := heightAxis.at(&in), pitchAxis.at(&in)
	solved := in.Surface(&h.Thermal)
	value := message.Amount{Kind: q.Kind(), SI: q.Of(&solved)}
	x, y, held := w.fromFins(heightAxis, height), w.fromFins(pitchAxis, count), ""
	x.Axis, y.Axis = w.stood(x.Axis, height), w.stood(y.Axis, count)
	if kept := in.Keep(&h.Thermal); !in.Air.FilmGiven && q != rating.AreaRatio {
		counts := design.CountsAt(in, &kept, heightAxis.field, toSI(x, samples, w.System))
		held = w.held(&in.Input, &kept, heightAxis.field, false, counts)
	}
	return Map{
		Numbers: w.Texts.Numbers,
		ID:      "map", X: x, Y: y, Quantity: string(q), Columns: mapCells, Rows: mapCells,
		Ring:  Point{units.In(units.Height, height, w.System), units.In(units.FinCount, count, w.System)},
		Title: w.say(message.New("map."+string(q)+".title", "value", value)),
		Alt:   w.say(message.New("map."+string(q)+".alt", "value", value)),
		Held:  held,
	}
}

// Map returns the whole map.
func (w Writer) Map(in field.Input, h design.Heat, q rating.Quantity) Map {
	f := w.MapFrame(in, h, q)
	values := design.Grid(in, &h.Thermal, heightAxis.field, toSI(f.X, mapCells, w.System), pitchAxis.field, toSI(f.Y, mapCells, w.System), q)
	for i, v := range values {
		values[i] = units.In(q.Kind(), v, w.System)
	}
	f.Fill(values, w.level)
	return f
}

func toSI(s SampledAxis, n int, sys units.System) []float64 {
	out := s.at(n)
	for i, v := range out {
		out[i] = units.Out(s.Kind, v, sys)
	}
	return out
}

// level prints a level of a contour: it is round, so that four digits say all.
func (w Writer) level(level float64) string {
	return w.Texts.Numbers.Echo(units.Factor, level, units.SI)
}
