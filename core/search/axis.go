package search

import (
	"math"
	"slices"
	"strconv"

	"finwright/core/design"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// Axis is an entry that may vary, over texts as typed, or from a low to a high text in steps; or all of it in one text, see AxisOf.
type Axis struct {
	Field string   `json:"field"`
	Typed string   `json:"typed,omitempty"`
	Texts []string `json:"texts,omitempty"`
	Low   string   `json:"low,omitempty"`
	High  string   `json:"high,omitempty"`
	Step  string   `json:"step,omitempty"`
}

// level is how much of a design an entry changes: a search computes what belongs to a level when an entry of it or of one before changes.
type level int

// Levels. A bank's reach hangs on no entry of ofBank.
const (
	ofMetal level = iota // metals and fin type: choices, with which the document is read
	ofTube
	ofAir
	ofBank
	levels
)

// entries lists what may vary, in the order of the grid: places run through the last the fastest.
var entries = [...]struct {
	field string
	level level
}{
	{"tube_metal", ofMetal},
	{"fin_metal", ofMetal},
	{"fin_type", ofMetal},
	{"tube_od", ofTube},
	{"tube_wall", ofTube},
	{"strip_thickness", ofTube},
	{"fin_height", ofTube},
	{"fin_pitch", ofTube},
	{"tube_pitch", ofAir},
	{"face_velocity", ofAir},
	{"rows", ofAir},
	{"passes", ofBank},
	{"tubes_per_row", ofBank},
	{lengthField, ofBank},
}

// lengthField is the last entry.
const lengthField = "tube_length"

// mostSteps bounds the values of an axis.
const mostSteps = 1000

// axis is an Axis, read.
type axis struct {
	*field.Field
	level  level
	texts  []string
	values []float64 // [SI], of a number
}

// readAxes returns the axes in the order of the grid; what cannot be read is told at the field.
func (p *Problem) readAxes(system units.System) (axes []axis, errs design.FieldErrors) {
	for _, e := range entries {
		at := slices.IndexFunc(p.Axes, func(a Axis) bool { return a.Field == e.field })
		if at < 0 {
			continue
		}
		a := axis{Field: field.Must(e.field), level: e.level}
		from := p.Axes[at]
		if from.Typed != "" {
			from = AxisOf(e.field, from.Typed)
		}
		if why := a.read(&from, system); !why.None() {
			errs = append(errs, design.FieldError{Field: e.field, Message: why})
		} else if e.field == lengthField && from.Step != "" {
			a.tryTo(p.Must[string(Length)], system)
		}
		axes = append(axes, a)
	}
	if len(errs) == 0 && len(axes) != len(p.Axes) {
		errs = append(errs, design.FieldError{Field: "axes", Message: message.New("search.no_axis")})
	}
	return axes, errs
}

// read takes the texts and reads them, each into another value.
func (a *axis) read(from *Axis, system units.System) (why message.Message) {
	a.texts = from.Texts
	if from.Step != "" {
		if a.texts, why = a.steps(from, system); !why.None() {
			return why
		}
	}
	if len(a.texts) == 0 || len(a.texts) > mostSteps {
		return message.New("search.axis_count", "most", mostSteps)
	}
	for i, text := range a.texts {
		if a.Choice != nil {
			if !slices.Contains(a.Choices(), text) || slices.Contains(a.texts[:i], text) {
				return message.New("search.axis_value", "text", text)
			}
			continue
		}
		p, err := units.Parse(a.Kind, text, system)
		switch {
		case err != nil:
			return message.Unread(err.(*units.ParseError))
		case !a.Within(p.SI) || a.Whole != nil && p.SI != math.Trunc(p.SI) || slices.Contains(a.values, p.SI):
			return message.New("search.axis_value", "text", text)
		}
		a.values = append(a.values, p.SI)
	}
	return why
}

// tryTo adds to a row of values what may be the most, where that lies between two of them: nobody who may go as far as that means to stop short of it.
func (a *axis) tryTo(most string, system units.System) {
	p, err := units.Parse(a.Kind, most, system)
	if err != nil || slices.ContainsFunc(a.values, func(si float64) bool { return math.Abs(si-p.SI) <= readBack*si }) {
		return
	}
	if at := slices.IndexFunc(a.values, func(si float64) bool { return si > p.SI }); at > 0 {
		a.texts, a.values = slices.Insert(slices.Clone(a.texts), at, most), slices.Insert(a.values, at, p.SI)
	}
}

// steps writes the texts from a low to a high one, in the unit of the low one.
func (a *axis) steps(from *Axis, system units.System) (texts []string, why message.Message) {
	if a.Choice != nil {
		return nil, message.New("search.axis_steps")
	}
	var ends [3]units.Parsed
	for i, text := range []string{from.Low, from.High, from.Step} {
		p, err := units.Parse(a.Kind, text, system)
		if err != nil {
			return nil, message.Unread(err.(*units.ParseError))
		}
		ends[i] = p
	}
	low, high, step := ends[0].SI, ends[1].SI, ends[2].SI
	if !(step > 0) || !(high >= low) || (high-low)/step > mostSteps {
		return nil, message.New("search.axis_steps")
	}
	unit := ends[0].Unit
	one, ok := units.From(a.Kind, 1, unit)
	for i := 0; low+float64(i)*step <= high*(1+endSlack); i++ {
		si := low + float64(i)*step
		text := units.Echo(a.Kind, si, system)
		if ok && unit != "" {
			text = strconv.FormatFloat(si/one, 'g', 6, 64) + " " + unit
		}
		if p, err := units.Parse(a.Kind, text, system); err != nil || math.Abs(p.SI-si) > readBack*si {
			return nil, message.New("search.axis_steps") // a spacing has no even steps in counts
		}
		texts = append(texts, text)
	}
	return texts, why
}

// endSlack is by what share the last step may lie beyond the high end: steps of tenths do not add up.
const endSlack = 1e-9

// readBack is by what share a step that was written may read otherwise.
const readBack = 1e-3

// set puts the i-th value into an input.
func (a *axis) set(in *field.Input, i int) { a.Set(in, a.values[i]) }
