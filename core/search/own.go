package search

import (
	"fmt"
	"slices"

	"finwright/core/field"
	"finwright/core/shop"
	"finwright/core/units"
)

// Gauges that stand for the walls of a shop that has no tubes of its own: what mills keep.
//
// Source: common practice, no source.
const (
	thickestGauge = 10
	thinnestGauge = 16
)

// Own returns what may vary, each over the shop's own list: what its lines make, have tooling and tubes for. What no shop has a list of
// goes in steps about the design. The texts are those of a reader of a system.
func Own(in *field.Input, c *shop.Capability, system units.System) []Axis {
	var tubeMetals, finMetals, types []string
	var ods, walls, strips, heights []float64
	counts := shop.Range[units.PerLength]{}
	for i := range c.Lines {
		l := &c.Lines[i]
		for _, od := range l.Sizes {
			ods = append(ods, float64(od))
		}
		for j := range l.Types {
			m := &l.Types[j]
			types, tubeMetals, finMetals = append(types, string(m.Type)), append(tubeMetals, m.TubeMetals...), append(finMetals, m.FinMetals...)
			for _, t := range m.Tools {
				heights, strips = append(heights, float64(t.Height)), append(strips, float64(t.Strip))
			}
			if m.Type == in.Tube.Fin.Type {
				counts = m.Count
			}
		}
	}
	for i := range c.Buying.OnHand {
		walls = append(walls, float64(c.Buying.OnHand[i].Wall))
	}
	for i := range c.Buying.Quotes {
		walls = append(walls, float64(c.Buying.Quotes[i].Wall))
	}
	axes := []Axis{
		chosen("tube_metal", tubeMetals), chosen("fin_metal", finMetals), chosen("fin_type", types),
		listed("tube_od", ods, system), listed("tube_wall", walls, system), listed("strip_thickness", strips, system), listed("fin_height", heights, system),
		stepped(in, "tube_pitch", system, 0.05, 4), stepped(in, "face_velocity", system, 0.1, 4), whole(in, "rows", 2, 8), whole(in, "passes", 1, 4),
		whole(in, "tubes_per_row", in.Bank.TubesPerRow/2, 2*in.Bank.TubesPerRow), stepped(in, "tube_length", system, 0.1, 4),
	}
	wall := &axes[4]
	for n := thickestGauge; n <= thinnestGauge; n++ {
		si, _ := units.BWG(n)
		if text := fmt.Sprintf("%d BWG", n); !slices.Contains(walls, float64(si)) {
			wall.Texts = append(wall.Texts, text)
		}
	}
	if counts.High > 0 {
		const perInch = 1 / 0.0254
		axes = append(axes, Axis{Field: "fin_pitch", Low: fmt.Sprintf("%.0f fpi", float64(counts.Low)/perInch), High: fmt.Sprintf("%.0f fpi", float64(counts.High)/perInch), Step: "1 fpi"})
	}
	return slices.DeleteFunc(axes, func(a Axis) bool { return a.Step == "" && len(a.Texts) == 0 })
}

// chosen is an axis of choices that the field has, each once, in the field's order.
func chosen(id string, from []string) Axis {
	a := Axis{Field: id}
	for _, choice := range field.Must(id).Choices() {
		if slices.Contains(from, choice) {
			a.Texts = append(a.Texts, choice)
		}
	}
	return a
}

// listed is an axis of lengths, each once, from the least on.
func listed(id string, si []float64, system units.System) Axis {
	a, f := Axis{Field: id}, field.Must(id)
	slices.Sort(si)
	for _, x := range si {
		if text := units.Echo(f.Kind, x, system); f.Within(x) && !slices.Contains(a.Texts, text) {
			a.Texts = append(a.Texts, text)
		}
	}
	return a
}

// stepped is an axis of so many steps to either side of the design, each a share of what it has.
func stepped(in *field.Input, id string, system units.System, share float64, steps int) Axis {
	f := field.Must(id)
	now := f.Get(in)
	if f.StandIn != nil {
		if si, ok := f.StandIn(in); ok {
			now = si
		}
	}
	step := units.Snap(f.Kind, share*now, system)
	middle := units.Snap(f.Kind, now, system)
	text := func(n int) string { return units.Echo(f.Kind, middle+float64(n)*step, system) }
	return Axis{Field: id, Low: text(-steps), High: text(steps), Step: units.Echo(f.Kind, step, system)}
}

// whole is an axis of whole numbers.
func whole(in *field.Input, id string, low, high int) Axis {
	f := field.Must(id)
	return Axis{Field: id, Low: fmt.Sprint(max(low, int(f.Low))), High: fmt.Sprint(min(high, int(f.High))), Step: "1"}
}
