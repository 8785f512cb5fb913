package report

import (
	"cmp"
	"math"
	"strconv"

	"finwright/core/message"
	"finwright/core/numeric"
	"finwright/core/tolerance"
	"finwright/core/units"
)

// ShownBand is a band of tolerance with its entry, and what it does by itself to the figure that is asked for.
type ShownBand struct {
	ID     string  `json:"id"`
	Label  string  `json:"label"`
	Limit  string  `json:"limit"` // as it stands in its entry
	Unit   string  `json:"unit"`
	Wrong  string  `json:"wrong"` // why what was typed is not taken; the house's limit counts meanwhile
	Note   string  `json:"note"`  // over what it is averaged
	Low    string  `json:"low"`   // effect where it is at its limit, below and above
	High   string  `json:"high"`
	Left   float64 `json:"left"` // where its bar begins and ends, of the widest: -1 to 1, 0 as designed
	Right  float64 `json:"right"`
	Absent bool    `json:"absent"` // the figure cannot be found at a limit
}

// ShownWidth is a figure with the width of its draws.
type ShownWidth struct {
	ID    string `json:"id"`
	Label string `json:"label"`
	Unit  string `json:"unit"`
	As    string `json:"as"` // designed
	Low   string `json:"low"`
	Mid   string `json:"mid"`
	High  string `json:"high"`
}

// ShownSure is how sure a design is. Of one that cannot be rated Absent says why, and of its bands there are the entries alone.
type ShownSure struct {
	Absent  string        `json:"absent"`
	Draws   int           `json:"draws"` // how many are to be made
	Part    int           `json:"part"`  // and by how many at a time
	Bands   []ShownBand   `json:"bands"`
	Figures []NamedFigure `json:"figures"` // that may be asked for
	Widths  []ShownWidth  `json:"widths"`  // those of the draws, where there are any
	Meets   string        `json:"meets"`   // the share of the draws that carries the duty, in short
	Said    []string      `json:"said"`    // the same in full, and what was assumed
}

// NamedFigure is a figure and what it is called.
type NamedFigure struct {
	ID    string `json:"id"`
	Label string `json:"label"`
}

// Limits reads what was typed for the bands, by their IDs; what cannot be taken is told by ID, and the house's limit counts.
func (w Writer) Limits(typed map[string]string) (limits tolerance.Limits, wrong map[string]string) {
	limits, wrong = tolerance.House(), map[string]string{}
	for i, b := range tolerance.Bands {
		text, ok := typed[b.ID]
		if !ok {
			continue
		}
		p, err := units.Parse(units.Percent, text, w.System)
		switch {
		case err != nil:
			wrong[b.ID] = w.say(message.Unread(err.(*units.ParseError)))
		case p.SI < 0 || p.SI > b.Most:
			wrong[b.ID] = w.say(message.New("tolerance.range", "most", message.Of(units.Percent, b.Most)))
		default:
			limits[i] = p.SI
		}
	}
	return limits, wrong
}

// Sure lists the bands, those first that do most by themselves to a figure; b is nil where the design cannot be rated, for a reason.
func (w Writer) Sure(b *tolerance.Bench, absent message.Message, typed, wrong map[string]string, figure string) ShownSure {
	out := ShownSure{Draws: tolerance.Draws, Part: tolerance.Part, Bands: make([]ShownBand, len(tolerance.Bands)), Widths: []ShownWidth{}, Said: []string{}}
	if !absent.None() {
		out.Absent = w.say(absent)
	}
	for _, m := range tolerance.Measures {
		out.Figures = append(out.Figures, NamedFigure{m.ID, w.Texts.Text("figure." + m.ID)})
	}
	for i, band := range tolerance.Bands {
		shown := ShownBand{ID: band.ID, Label: w.Texts.Text("tolerance.band." + band.ID), Unit: units.Percent.Unit(w.System), Wrong: wrong[band.ID]}
		if text, ok := typed[band.ID]; ok {
			shown.Limit = text
		} else {
			shown.Limit = w.Texts.Numbers.Figure(units.Percent, band.Limit, w.System).Value
		}
		out.Bands[i] = shown
	}
	if b == nil {
		return out
	}
	at := tolerance.Place(figure)
	ends, widest := make([][2]float64, len(tolerance.Bands)), 0.0
	for i := range tolerance.Bands {
		for side, way := range [2]float64{-1, 1} {
			ends[i][side] = b.Alone(i, way)[at]/b.As[at] - 1
			if x := math.Abs(ends[i][side]); x > widest { // one that is no number stays out
				widest = x
			}
		}
	}
	for i := range out.Bands {
		shown, low, high := &out.Bands[i], ends[i][0], ends[i][1]
		if n := b.Averages(i); n > 1 {
			shown.Note = w.say(message.New("tolerance.averaged."+shown.ID, "count", n))
		}
		switch shown.Absent = math.IsNaN(low) || math.IsNaN(high); {
		case shown.Absent:
		case math.Max(math.Abs(low), math.Abs(high)) < noEffect:
			shown.Low = w.Texts.Text("tolerance.none")
		default:
			shown.Low, shown.High = w.off(low), w.off(high)
			shown.Left, shown.Right = min(low, high)/widest, max(low, high)/widest
		}
	}
	out.Bands = numeric.Sorted(out.Bands, func(x, y *ShownBand) int { return cmp.Compare(y.Right-y.Left, x.Right-x.Left) })
	return out
}

// noEffect is a share [-] so small that it is rounding.
const noEffect = 1e-9

// off writes by what share a figure is off.
func (w Writer) off(share float64) string {
	text := w.percent(math.Abs(share))
	switch {
	case share > 0 && text != w.percent(0):
		return w.say(message.New("tolerance.more", "by", text))
	case share < 0 && text != w.percent(0):
		return w.say(message.New("tolerance.less", "by", text))
	}
	return text
}

// Told adds what draws say together.
func (w Writer) Told(out *ShownSure, b *tolerance.Bench, told tolerance.Told, seed int) {
	for m, measure := range tolerance.Measures {
		width := told.Widths[m]
		if !width.Known {
			continue
		}
		value := func(si float64) string { return w.Texts.Numbers.Figure(measure.Kind, si, w.System).Value }
		shown := ShownWidth{
			ID: measure.ID, Label: w.Texts.Text("figure." + measure.ID), Unit: w.unitOf(measure.Kind),
			As: value(b.As[m]), Low: value(width.Low), Mid: value(width.Mid), High: value(width.High),
		}
		out.Widths = append(out.Widths, shown)
	}
	share := func(n int) string { return w.percent(float64(n) / float64(told.Draws)) }
	say := func(key string, pairs ...any) { out.Said = append(out.Said, w.say(message.New(key, pairs...))) }
	if b.Wanted > 0 {
		out.Meets = share(told.MeetDuty)
		say("tolerance.duty", "share", out.Meets, "draws", told.Draws, "duty", message.Of(units.Duty, b.Wanted))
	} else {
		out.Meets = w.Texts.Text("tolerance.none_wanted")
		say("tolerance.no_duty")
	}
	if b.Allows > 0 && told.Widths[tolerance.Drop].Known {
		say("tolerance.drop", "share", share(told.MeetDrop), "drop", message.Of(units.Drop, b.Allows), "both", share(told.MeetBoth))
	}
	if told.Unrated > 0 {
		say("tolerance.unrated", "count", told.Unrated)
	}
	say("tolerance.assumed", "seed", strconv.Itoa(seed))
}
