package enquiry

import (
	"math"
	"strconv"

	"finwright/core/fluid"
	"finwright/core/tube"
	"finwright/core/units"
)

// Ask is something to ask the customer of an item.
type Ask struct {
	Kind   string   // with the text "enquiry.ask.<kind>"
	Field  string   // that it is about
	Words  string   // the customer's
	First  string   // what stands for now, as a reading's text
	Second string   // what else may be meant
	Other  string   // the field of Second, where that is another
	With   []string // further texts of its own kind
}

// Needed are the fields that an enquiry must say something of, in the order in which they are asked.
var Needed = []string{"quantity", "tube_metal", "tube_od", "tube_wall", "tube_length", "fin_type", "fin_metal", "fin_height", "strip_thickness", "fin_pitch", "plain_end_a"}

// Asks lists what is doubtful, contradictory, missing or not understood in an item, and what of it is not made here.
func (x *Entry) Asks() (out []Ask) {
	for _, p := range x.Parts {
		for _, n := range p.NotMade {
			out = append(out, Ask{Kind: "not_made", Words: p.Text[n.From.From:n.From.To], First: n.ID})
		}
	}
	if x.Unknown {
		out = append(out, Ask{Kind: "no_such_item", Words: x.As})
	}
	for i := range x.Whole {
		r := &x.Whole[i]
		for _, d := range r.Doubts {
			out = append(out, Ask{Kind: d.Kind, Field: r.Field, Words: x.words(r), First: r.Text, Second: d.Text, Other: d.Field})
		}
	}
	out = append(out, x.contradictions()...)
	for _, name := range Needed {
		if !x.tells(name) {
			out = append(out, Ask{Kind: "missing", Field: name})
		}
	}
	for _, p := range x.Parts {
		for _, s := range p.Unread {
			out = append(out, Ask{Kind: "unread", Words: p.Text[s.From:s.To]})
		}
	}
	return out
}

// tells reports whether an item says something from which a field follows.
func (x *Entry) tells(name string) bool {
	if _, ok := x.Find(name); ok {
		return true
	}
	for _, from := range follows {
		if from.field != name {
			continue
		}
		if _, ok := x.Find(from.other); ok {
			return true
		}
	}
	return false
}

// follows lists what a field follows from, where it is not told itself.
var follows = []struct{ field, other string }{
	{"fin_height", FinOD}, {"fin_pitch", FinGap}, {"tube_length", FinnedLength}, {"tube_length", BetweenFaces}, {"plain_end_a", "plain_end_b"}, {"plain_end_a", FinnedLength},
}

// words are those that a reading came from.
func (x *Entry) words(r *Reading) string {
	for _, p := range x.Parts {
		for _, was := range p.Readings {
			if was.Field == r.Field && len(was.From) > 0 && was.From[0].To <= len(p.Text) {
				return p.Text[was.From[0].From:was.From[0].To]
			}
		}
	}
	return r.Text
}

// sizes of an item that are held against one another [SI], each there or not.
type sizes struct{ x *Entry }

func (s sizes) of(names ...string) (out []float64, ok bool) {
	for _, name := range names {
		r, found := s.x.Find(name)
		if !found {
			return nil, false
		}
		v, possible, _ := si(name, r.Text)
		if !possible {
			return nil, false
		}
		out = append(out, v)
	}
	return out, true
}

func (s sizes) text(name string) string {
	if r, ok := s.x.Find(name); ok {
		return r.Text
	}
	return ""
}

// off reports whether two sizes differ by more than a share.
func off(a, b, share float64) bool { return math.Abs(a-b) > share*max(math.Abs(a), math.Abs(b)) }

// contradictions finds what cannot be true together.
func (x *Entry) contradictions() (out []Ask) {
	s := sizes{x}
	add := func(kind, field string, with ...string) { out = append(out, Ask{Kind: kind, Field: field, With: with}) }
	if v, ok := s.of("tube_od", "fin_height", FinOD); ok && off(v[2], v[0]+2*v[1], 0.02) {
		add("over_fins", FinOD, s.text(FinOD), s.text("tube_od"), s.text("fin_height"))
	}
	if v, ok := s.of("tube_od", FinOD); ok && v[1] <= v[0] {
		add("fin_inside", FinOD, s.text(FinOD), s.text("tube_od"))
	}
	if v, ok := s.of("tube_length", FinnedLength, "plain_end_a", "plain_end_b"); ok && math.Abs(v[0]-v[1]-v[2]-v[3]) > 0.006 {
		add("lengths", "tube_length", s.text("tube_length"), s.text(FinnedLength), s.text("plain_end_a"), s.text("plain_end_b"))
	}
	if v, ok := s.of("tube_length", FinnedLength); ok && v[1] > v[0] {
		add("finned_longer", FinnedLength, s.text(FinnedLength), s.text("tube_length"))
	}
	if v, ok := s.of("tube_length", "plain_end_a", "plain_end_b"); ok && v[1]+v[2] >= v[0] {
		add("all_bare", "plain_end_a", s.text("tube_length"), s.text("plain_end_a"), s.text("plain_end_b"))
	}
	if v, ok := s.of("tube_od", "tube_wall"); ok && 2*v[1] >= v[0] {
		add("wall_thick", "tube_wall", s.text("tube_wall"), s.text("tube_od"))
	}
	if v, ok := s.of("fin_pitch", "strip_thickness"); ok && v[0]*v[1] >= 1 {
		add("no_gap", "fin_pitch", s.text("fin_pitch"), s.text("strip_thickness"))
	}
	x.metals(add)
	x.heats(s, add)
	if rows, ok := s.of("rows", "tubes_per_row", "quantity"); ok {
		bundles := 1.0
		if b, ok := s.of("bundles"); ok {
			bundles = b[0]
		}
		if rows[0]*rows[1]*bundles != rows[2] {
			add("bank", "quantity", s.text("quantity"), s.text("rows"), s.text("tubes_per_row"), strconv.FormatFloat(bundles, 'f', -1, 64))
		}
	}
	return out
}

// metals holds fin type and metal against one another: steel is too hard for a foot.
//
// Source: common practice, no source.
func (x *Entry) metals(add func(kind, field string, with ...string)) {
	kind, ok1 := x.Find("fin_type")
	metal, ok2 := x.Find("fin_metal")
	if !ok1 || !ok2 {
		return
	}
	hard := metal.Text == "cs1010" || metal.Text == "ss304" || metal.Text == "ss409"
	if hard && tube.FinType(kind.Text).FootLayers() > 0 || !hard && kind.Text == string(tube.Welded) || kind.Text == string(tube.Extruded) && hard {
		add("type_metal", "fin_metal")
	}
}

// kelvin is the ice point [K].
const kelvin = 273.15

// heats holds temperatures, pressures and duty against one another.
func (x *Entry) heats(s sizes, add func(kind, field string, with ...string)) {
	kind, typed := x.Find("fin_type")
	in, hot := s.of("inside_in")
	if hot && typed {
		if limit := tube.FinType(kind.Text).Fixing().Limits.Standard; limit.Known() && in[0] > limit.SI {
			add("too_hot", "inside_in", s.text("inside_in"))
		}
	}
	if fluidText := s.text("inside_fluid"); hot && fluidText == "steam" {
		if pressure, ok := x.Find("inside_pressure"); ok {
			if p, ok := absolute(pressure.Text); ok {
				if t, err := fluid.SaturationTemperature(p); err == nil && math.Abs(t-kelvin-in[0]) > 3 {
					add("steam", "inside_in", s.text("inside_in"), pressure.Text)
				}
			}
		}
	}
	if v, ok := s.of("inside_in", "inside_out", "duty_wanted", "inside_flow"); ok && s.text("inside_fluid") == "water" && units.Is(units.MassRate, s.text("inside_flow")) {
		if p, err := fluid.Water((v[0]+v[1])/2+kelvin, 1e6); err == nil && off(v[2], v[3]*p.HeatCapacity*math.Abs(v[0]-v[1]), 0.05) {
			add("duty", "duty_wanted", s.text("duty_wanted"), s.text("inside_flow"), s.text("inside_in"), s.text("inside_out"))
		}
	}
	if v, ok := s.of("inside_in", "air_in"); ok && v[0] == v[1] {
		add("no_difference", "inside_in", s.text("inside_in"), s.text("air_in"))
	}
}

// absolute reads a pressure [Pa] that may be written over that of the air.
func absolute(text string) (float64, bool) {
	if p, err := units.Parse(units.Gauge, text, units.SI); err == nil {
		return p.SI + 101325, true
	}
	p, err := units.Parse(units.Pressure, text, units.SI)
	return p.SI, err == nil
}
