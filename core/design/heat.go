package design

import (
	"finwright/core/airside"
	"finwright/core/document"
	"finwright/core/exchanger"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/material"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// ListedMethod is one correlation's answer beside its range, for the list of all that were asked.
type ListedMethod struct {
	ID      string
	Kind    units.Kind
	SI      float64
	InRange bool
	Used    bool
	Field   string            // where it is chosen
	Why     []message.Message // limits passed
}

// Heat is everything said of the bank at work. Where it cannot be computed, Absent says why, and Field which entry hinders.
type Heat struct {
	Thermal  rating.Thermal
	Absent   message.Message
	Field    string
	Methods  []ListedMethod // films, then pressure drops
	Spread   rating.Spread
	Loosened *rating.Loosened // the bank with other joints; nil where the joint is closed
	Limits   tube.Limits      // of the joint, with the house's as it was entered
	Findings []exchanger.Finding
	Case     Hottest
}

// Rate rates the bank of a read Input. A bank that cannot be rated is an error of the field that hinders, FieldErrors, where
// the film hangs on it; with a film of the user's own the surface stands, and Absent says what hinders.
func Rate(in field.Input) (Heat, error) {
	h, err := rated(&in, rating.Rate)
	if t := &h.Thermal; err == nil && h.Absent.None() {
		h.Methods = append(methods(units.Film, t.Films, t.Film, in.Air.FilmGiven), methods(units.Drop, t.Drops, t.Drop, false)...)
		h.Spread = in.Spread(t)
		if other, open := in.Loosened(t); open {
			h.Loosened = &other
		}
	}
	return h, err
}

// RateBriefly is Rate for one of many: only the correlations in use are asked and listed.
func RateBriefly(in *field.Input) (Heat, error) {
	h, err := rated(in, rating.RateBriefly)
	if err == nil && h.Absent.None() {
		films, drops := [...]airside.Estimate[airside.Film]{h.Thermal.UsedFilm}, [...]airside.Estimate[airside.Drop]{h.Thermal.UsedDrop}
		h.Methods = methods(units.Film, films[:], 0, in.Air.FilmGiven)
		if h.Thermal.HasDrop() {
			h.Methods = append(h.Methods, methods(units.Drop, drops[:], 0, false)...)
		}
	}
	return h, err
}

// rated is Rate without the list of methods.
func rated(in *field.Input, rate func(*rating.Input) (rating.Thermal, *rating.Hindrance)) (Heat, error) {
	if in.Air.FilmGiven {
		if found := pitchFindings(in); len(found) > 0 {
			return Heat{Absent: found[0].Why, Field: closestPitch(in)}, nil
		}
	}
	t, hindrance := rate(&in.Input)
	if hindrance != nil {
		e := hindered(in, hindrance)
		if !in.Air.FilmGiven {
			return Heat{}, FieldErrors{e}
		}
		return Heat{Absent: e.Message, Field: e.Field}, nil
	}
	h := Heat{Thermal: t, Limits: limitsOf(in), Case: hottestOf(in, &t)}
	h.Findings = judgeCases(in, h.Limits, h.Case)
	return h, nil
}

// limitsOf are the limits of the joint, with the house's as it was entered.
func limitsOf(in *field.Input) tube.Limits {
	l := in.Tube.Fin.Type.Fixing().Limits
	if in.Limits.House.Stated {
		l.House = entered(in.Limits.House)
	}
	return l
}

// entered is a limit as the user stated it, unknown where he did not.
func entered(limit rating.Optional) material.Value {
	if !limit.Stated {
		return material.Value{}
	}
	return material.Value{SI: limit.SI, Source: houseLimit}
}

// ReadAndRate is Read and then Rate, of a design that the shop c is to make; nil: nobody.
func ReadAndRate(d document.Document, c *shop.Capability) (field.Input, Heat, error) {
	in, err := Read(d)
	if err != nil {
		return in, Heat{}, err
	}
	in.MadeBy(c)
	h, err := Rate(in)
	return in, h, err
}

func methods[A airside.Answer](k units.Kind, estimates []airside.Estimate[A], used int, given bool) []ListedMethod {
	out, at := make([]ListedMethod, len(estimates)), "film_method"
	if k == units.Drop {
		at = "drop_method"
	}
	for i, v := range estimates {
		out[i] = ListedMethod{ID: v.ID, Kind: k, SI: v.Answer.Measure(), InRange: v.InRange, Used: i == used && !given, Field: at}
		for _, l := range v.Limits {
			if !l.In() {
				out[i].Why = append(out[i].Why, l.Message())
			}
		}
	}
	return out
}

// heatNotices remarks on wishes not met, on temperatures and on correlations outside their range.
func heatNotices(in *field.Input, h *Heat) []Notice {
	if !h.Absent.None() {
		return []Notice{{State: figure.Watch, Field: h.Field, Figure: "duty", Message: h.Absent}}
	}
	out := append(wishNotices(in, &h.Thermal), insideNotices(in, &h.Thermal)...)
	out = append(append(out, closingNotices(in)...), fanNotices(in, &h.Thermal)...)
	out = append(append(out, retubeNotices(in, &h.Thermal)...), holdNotices(in, &h.Thermal)...)
	for _, f := range h.Findings {
		if f.State == figure.No || f.State == figure.Watch {
			out = append(out, Notice{State: f.State, Field: caseField(in, f.Case), Figure: h.figureOf(f), Message: f.Why})
		}
	}
	if h.Thermal.Wet {
		out = append(out, Notice{State: figure.Watch, Field: "inside_in", Figure: "coldest_metal", Message: message.New("notice.wet")})
	}
	if f := &h.Thermal.Inside; !f.InRange() {
		out = append(out, Notice{
			State: figure.Outside, Field: "inside_flow", Figure: "inside_film",
			Message: message.New("notice.out_of_range", "method", message.Key("inside."+f.Method), "why", passed(f.Limits)[0]),
		})
	}
	out = append(out, bondNotices(in, h)...)
	out = append(out, gasNotices(in, &h.Thermal)...)
	out = append(out, heldNotices(in, h)...)
	return append(out, h.beyond()...)
}
