package design

import (
	"math"

	"finwright/core/airside"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// wideSpread is how far correlations in range lie apart [-] when a figure that decides shows it.
//
// Source: engineering judgement.
const wideSpread = 0.10

// beyond remarks on correlations in use that are outside their range, with the change to one that is not.
func (h *Heat) beyond() []Notice {
	var out []Notice
	for _, m := range h.Methods {
		if !m.Used || m.InRange {
			continue
		}
		fig := "film"
		if m.Kind == units.Drop {
			fig = "air_drop"
		}
		n := Notice{State: figure.Outside, Field: m.Field, Figure: fig, Message: message.New("notice.out_of_range", "method", message.Key("airside."+m.ID), "why", m.Why[0])}
		for _, other := range h.Methods {
			switch {
			case other.Kind != m.Kind || !other.InRange:
			case n.Change == nil:
				n.Change = other.Take()
			default:
				n.Others = append(n.Others, other.Take())
			}
		}
		out = append(out, n)
	}
	return out
}

// Take returns the setting that puts the method in use.
func (m *ListedMethod) Take() []verdict.Setting {
	return []verdict.Setting{{Field: m.Field, Choice: m.ID}}
}

// besides returns what stands beside the figures that rest on a correlation, by their ids.
func besides(in *field.Input, h *Heat) map[string][]message.Message {
	out := map[string][]message.Message{"pitch": {message.New("beside.fins", "count", message.Fins(in.Tube.Fin.Count))}}
	if !h.Absent.None() {
		return out
	}
	t := &h.Thermal
	if !in.Air.FilmGiven {
		low, high := &h.Spread.Low, &h.Spread.High
		method := &airside.FilmMethods[t.Film]
		for _, one := range []struct {
			id             string
			kind           units.Kind
			has, low, high float64
		}{
			{"film", units.Film, t.OutsideFilm, low.OutsideFilm, high.OutsideFilm},
			{"u_bare", units.Film, t.Overall.OnBare, low.Overall.OnBare, high.Overall.OnBare},
			{"duty", units.Duty, math.Abs(t.Duty.Heat), math.Abs(low.Duty.Heat), math.Abs(high.Duty.Heat)},
		} {
			out[one.id] = beside(one.kind, one.has, one.low, one.high, h.Spread.Count, t.UsedFilm.InRange, method.FromMemory)
		}
	}
	besidesBond(h, out)
	if t.HasDrop() {
		low, high, n := airside.Spread(t.Drops)
		out["air_drop"] = beside(units.Drop, t.UsedDrop.Answer.Total, low, high, n, t.UsedDrop.InRange, airside.DropMethods[t.Drop].FromMemory)
	}
	return out
}

// beside tells of a figure how far count correlations in range lie apart, whether the one in use is among them and whether
// its constants are confirmed.
func beside(k units.Kind, has, low, high float64, count int, inRange, fromMemory bool) []message.Message {
	var out []message.Message
	others := message.Span{Kind: k, Low: low, High: high}
	switch {
	case count == 0:
		out = append(out, message.New("beside.none"))
	case !inRange && count == 1:
		out = append(out, message.New("beside.out_of_range_one", "low", message.Amount{Kind: k, SI: low}))
	case !inRange:
		out = append(out, message.New("beside.out_of_range", "others", others))
	case high-low > wideSpread*has:
		out = append(out, message.New("beside.spread", "others", others))
	}
	if fromMemory {
		out = append(out, message.New("beside.from_memory"))
	}
	return out
}
