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

var velocityAxis = axis{"velocity", "face_velocity", 0.5, 1.5, 5, 1}

// heatSamples is how many points a curve of the whole bank has: each is a calculation of its own.
const heatSamples = 19

// heatSweep is the plots of the bank at work over one input, which is swept once for all of them.
type heatSweep struct {
	axis  axis
	plots []heatPlot
}

type heatPlot struct {
	id     string
	panels []rating.Quantity
}

var heatSweeps = []heatSweep{
	{velocityAxis, []heatPlot{{"film", []rating.Quantity{rating.Film, rating.AirDrop}}, {"work", []rating.Quantity{rating.UBare, rating.Duty}}}},
	{heightAxis, []heatPlot{{"yield_height", yields}}},
	{pitchAxis, []heatPlot{{"yield_pitch", yields}}},
}

var yields = []rating.Quantity{rating.PerWeight, rating.PerFace}

// HeatCurves returns the plots of a bank at work: film, drop, U and duty
// against face velocity, and what a kilogram of fin and a face earn against
// height and pitch along what is held.
func (w Writer) HeatCurves(in field.Input, h design.Heat) []Curves {
	if !h.Absent.None() {
		return nil
	}
	var out []Curves
	for _, s := range heatSweeps {
		out = append(out, w.heatCurves(in, h, s)...)
	}
	return out
}

// HeatMarks returns the plots of HeatCurves with the design's place alone.
func (w Writer) HeatMarks(in field.Input, h design.Heat) []Curves {
	if !h.Absent.None() {
		return nil
	}
	now := rating.Answers(&in.Input, &h.Thermal)
	var out []Curves
	for _, s := range heatSweeps {
		for _, p := range s.plots {
			out = append(out, Curves{ID: p.id, Panels: w.heatPanels(&in, now, s.axis, p)})
		}
	}
	return out
}

// heatPanels are those of a plot against an axis, with the design's place where it has such a quantity.
func (w Writer) heatPanels(in *field.Input, now map[rating.Quantity]rating.Answer, a axis, p heatPlot) []Panel {
	out := make([]Panel, len(p.panels))
	for i, q := range p.panels {
		out[i] = Panel{Figure: string(q), Kind: q.Kind(), Unit: q.Kind().Unit(w.System), Label: w.Texts.Text("figure." + string(q))}
		if !math.IsNaN(now[q].Value) {
			out[i].Mark = &Point{units.In(a.kind(), a.at(in), w.System), units.In(q.Kind(), now[q].Value, w.System)}
		}
	}
	return out
}

func (w Writer) heatCurves(in field.Input, h design.Heat, s heatSweep) []Curves {
	at := s.axis.at(&in)
	span := w.span(s.axis, at, 1) // a bank of tubes without fins is no bank of ours
	shown := span.at(heatSamples)
	now := rating.Answers(&in.Input, &h.Thermal)
	out := make([]Curves, len(s.plots))
	for i, p := range s.plots {
		out[i] = Curves{
			ID: p.id, X: w.stood(span.Axis, at), Numbers: w.Texts.Numbers, Panels: w.heatPanels(&in, now, s.axis, p),
			Wide: span.To > w.unseen().span(s.axis, at, 1).To,
		}
		for j := range out[i].Panels {
			out[i].Panels[j].Lines = []Curve{{Main: true, X: shown}}
		}
	}
	si := make([]float64, len(shown))
	for i, x := range shown {
		si[i] = units.Out(s.axis.kind(), x, w.System)
	}
	kept := in.Keep(&h.Thermal)
	counts := design.SweepBank(in, &kept, s.axis.field, si, s.spreads(), func(_ int, answers map[rating.Quantity]rating.Answer) {
		for i, p := range s.plots {
			for j, q := range p.panels {
				w.extend(&out[i].Panels[j], q, answers)
			}
		}
	})
	quantity := func(q rating.Quantity) any {
		if math.IsNaN(now[q].Value) {
			return message.New("plot.not_computed")
		}
		return message.Amount{Kind: q.Kind(), SI: now[q].Value}
	}
	for i, p := range s.plots {
		first, second := quantity(p.panels[0]), quantity(p.panels[1])
		out[i].Title = w.say(message.New("plot."+p.id+".title", "first", first, "second", second, "best", w.best(out[i], 0), "best_second", w.best(out[i], 1)))
		out[i].Alt = w.say(message.New("plot."+p.id+".alt", "first", first, "second", second))
		out[i].Held = w.held(&in.Input, &kept, s.axis.field, true, counts)
	}
	return out
}

// spreads reports whether any panel shows the lowest and highest of a quantity.
func (s heatSweep) spreads() bool {
	return slices.ContainsFunc(s.plots, func(p heatPlot) bool { return slices.ContainsFunc(p.panels, rating.Quantity.Spread) })
}

// extend adds a point of the sweep to a panel; without answers it is empty.
func (w Writer) extend(panel *Panel, q rating.Quantity, answers map[rating.Quantity]rating.Answer) {
	a, ok := answers[q]
	value, low, high := math.NaN(), math.NaN(), math.NaN()
	if ok {
		value, low, high = units.In(q.Kind(), a.Value, w.System), units.In(q.Kind(), a.Low, w.System), units.In(q.Kind(), a.High, w.System)
	}
	line := &panel.Lines[0]
	line.Y, line.Beyond = append(line.Y, value), append(line.Beyond, ok && !a.InRange)
	if q.Spread() {
		panel.Low, panel.High = append(panel.Low, low), append(panel.High, high)
	}
}

// level is the share of its highest value by which a curve may fall and still be called level: what whole tubes and rows make of it is no finding.
const level = 0.1

// best says where a panel's curve is highest.
func (w Writer) best(c Curves, panel int) message.Message {
	line := c.Panels[panel].Lines[0]
	top := 0
	for i, y := range line.Y {
		if y > line.Y[top] || math.IsNaN(line.Y[top]) {
			top = i
		}
	}
	last := len(line.Y) - 1
	for last > 0 && math.IsNaN(line.Y[last]) {
		last--
	}
	least := line.Y[top]
	for _, y := range line.Y {
		if !math.IsNaN(y) {
			least = min(least, y)
		}
	}
	switch {
	case math.IsNaN(line.Y[top]):
		return message.New("plot.nowhere")
	case least > (1-level)*line.Y[top]:
		return message.New("plot.level")
	case top == 0 || math.IsNaN(line.Y[max(top-1, 0)]):
		return message.New("plot." + c.ID + ".lowest")
	case top >= last:
		return message.New("plot." + c.ID + ".highest")
	}
	x := units.Snap(c.X.Kind, units.Out(c.X.Kind, line.X[top], w.System), w.System)
	return message.New("plot.peak", "at", message.Amount{Kind: c.X.Kind, SI: x})
}
