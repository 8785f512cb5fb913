package bridge

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/finned"
	"finwright/core/drawing/ink"
	"finwright/core/drawing/sheet"
	"finwright/core/drawing/svg"
	"finwright/core/field"
	"finwright/core/fin/temperature"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/wasm/plots"
)

// drawingArea is where the page draws, in CSS px, with the scales to keep while a grip is held. A page that shows neither drawing
// nor plots yet gives none.
type drawingArea struct {
	Width   float64        `json:"width"`
	Height  float64        `json:"height"`
	Letters float64        `json:"letters,omitempty"` // how large the page's texts are, of the usual
	Hold    *sheet.Scales  `json:"hold,omitempty"`
	Ghosts  []finned.Ghost `json:"ghosts,omitempty"` // outlines of what is kept beside it, as outlines has them
	Traced  *tracedOn      `json:"traced,omitempty"` // it is pulled: shown as a few paths and painted when it rests
}

// tracedOn is what a pulled drawing is shown on: how it is zoomed and panned, as in ink.Transform, the screen's pixels to a CSS pixel, and whether paper is dark.
type tracedOn struct {
	K     float64 `json:"k"`
	X     float64 `json:"x"`
	Y     float64 `json:"y"`
	Ratio float64 `json:"ratio"`
	Dark  bool    `json:"dark"`
}

// Zoom, pixels and shift [CSS px] that a screen could have.
const (
	mostZoom  = 20
	mostRatio = 8
	mostShift = 1e5
)

func (t tracedOn) screen(width, height float64) *ink.Screen {
	s := ink.Screen{Ratio: min(max(t.Ratio, 0.1), mostRatio)}
	s.Transform = ink.Transform{K: min(max(t.K, 1), mostZoom), X: min(max(t.X, -mostShift), mostShift), Y: min(max(t.Y, -mostShift), mostShift)}
	s.Width, s.Height = min(width, mostShift)*s.Ratio, min(height, mostShift)*s.Ratio
	s.Theme.Warm(t.Dark)
	return &s
}

// page is what the page shows of one document.
type page struct {
	report.View
	Whose string         `json:"whose,omitempty"` // prices are shown, for paper
	Scene *sheet.Scene   `json:"scene"`
	Plots []plots.Update `json:"plots,omitzero"`
	Rings []plots.Rings  `json:"rings,omitzero"` // of a glimpse: where the design stands in the plots
}

// reply pairs a document with its view.
type reply struct {
	Document document.Document   `json:"document"`
	Steps    []document.Document `json:"steps,omitempty"` // what each of several commands but the last gave
	View     page                `json:"view"`
}

// wanted says what the page shows: one section, with the quantity of its map
// where it has one, and for making the shop and the room for its pictures.
type wanted struct {
	Section  string          `json:"section,omitempty"`
	Quantity rating.Quantity `json:"quantity,omitempty"`
	Shop     string          `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Room     report.Room     `json:"room,omitzero"`
	Day      string          `json:"day,omitempty"`      // the page's, as 2026-11-27, for what is promised and how old prices are
	First    bool            `json:"first,omitempty"`    // another question follows at once: this answer comes sooner without the line
	Headline []string        `json:"headline,omitempty"` // the figures that the user chose to decide by; empty: the house's
	Glimpse  bool            `json:"glimpse,omitempty"`  // something is pulled: this answer has only what moves under the hand
	Axes     []plots.Axes    `json:"axes,omitempty"`     // those in sight, which hold
	Lists    bool            `json:"lists,omitempty"`    // and of a glimpse the figures that do not decide, which else come faster than they could be read
	ruled    bool            // and the verdict
}

// show evaluates d, with the contents of one section.
func show(d document.Document, area *drawingArea, want wanted) (reply, error) {
	section, err := report.SectionOf(want.Section)
	if err != nil {
		return reply{}, err
	}
	if section.Making && inPart() {
		return reply{}, errElsewhere
	}
	w := writer(d)
	w.Section, w.Headline, w.Along = section, want.Headline, plots.Sight(want.Axes, d.Units)
	in, h, err := rated(d, section, want.Shop)
	if wrong := design.FieldErrors(nil); errors.As(err, &wrong) {
		return reply{Document: d, View: page{View: w.View(d, err, nil)}}, nil
	} else if err != nil {
		return reply{}, err
	}
	res := design.Evaluate(in, h)
	res.AddCarried(d)
	var metal *temperature.Distribution
	if area != nil && section.Heated {
		metal = res.AddField(&in)
	}
	var planned *report.MakingSection
	var survivors []report.ShownSurvivor
	switch {
	case section.Making:
		m := plan(&w, d, in, &res)
		m.Day, _ = shop.ParseDay(want.Day)
		shown := drawPlan(&w, &m, want.Room)
		planned, survivors = &shown, w.Survivors(m.Survivors(d))
		res.TryRemarks(&m, d)
	case want.First:
	case in.Shop != nil:
		m := addMaking(&w, in, &res)
		survivors = w.Survivors(m.Survivors(d))
		res.TryRemarks(&m, d)
	default:
		m := design.Unmade(in, h)
		res.TryRemarks(&m, d)
	}
	out := reply{Document: d, View: page{View: w.View(d, nil, &res)}}
	out.View.Making, out.View.Survivors = planned, survivors
	if in.Shop != nil && !want.First {
		out.View.Whose = w.Whose(in.Shop, markOf(want.Shop, in.Shop))
	}
	if area == nil {
		return out, nil
	}
	if section.Cases {
		out.View.Cases = w.Cases(in, h)
	}
	scene := compose(in, h, d.Units, *area, metal)
	out.View.Scene, out.View.Plots = &scene, []plots.Update{}
	if section.Curves != nil {
		for _, c := range section.Curves(w, in, h) {
			out.View.Plots = append(out.View.Plots, plots.Patch(c, want.Axes, d.Units))
		}
	}
	if want.Quantity != "" && section.Map {
		out.View.Plots = append(out.View.Plots, plots.MoveRing(w.MapFrame(in, h, want.Quantity)))
	}
	return out, nil
}

func writer(d document.Document) report.Writer { return writerIn(d.Units) }

// compose draws the tube, with the temperature of its metal where there is one.
func compose(in field.Input, h design.Heat, s units.System, area drawingArea, metal *temperature.Distribution) sheet.Scene {
	o := finned.Options{
		System: s, WidthPx: area.Width, HeightPx: area.Height, Letters: area.Letters, Text: texts(),
		Tube:  finned.HatchingOf(string(in.TubeMetal.Family), false),
		Fin:   finned.HatchingOf(string(in.FinMetal.Family), true),
		Alarm: writerIn(s).Alarm(h), Ghosts: ghosts(area.Ghosts),
	}
	if area.Hold != nil {
		o.Hold = *area.Hold
	}
	if area.Traced != nil {
		o.Traced = area.Traced.screen(area.Width, area.Height)
	}
	if metal != nil {
		o.Heat = metalHeat(metal)
	}
	return finned.Compose(in.Tube, o)
}

// metalHeat hands the field to the drawing, which knows no physics.
func metalHeat(f *temperature.Distribution) *finned.Temperatures {
	heat := &finned.Temperatures{Quads: f.Quads, Low: f.Coldest, High: f.Hottest, Nodes: make([]finned.HeatNode, len(f.Nodes))}
	for i, n := range f.Nodes {
		heat.Nodes[i] = finned.HeatNode{R: n.R, X: n.X, T: n.T}
	}
	return heat
}

type editArgs struct {
	Document document.Document  `json:"document"`
	Commands []document.Command `json:"commands"` // one after the other; none shows the document again
	Sheet    *drawingArea       `json:"sheet"`
	wanted
}

// edit shows what the last command gives, so that many at once cost one answer, and says what each before it gave, so that
// each can be undone.
func edit(a editArgs) (reply, error) {
	if err := document.Check(a.Document); err != nil {
		return reply{}, err
	}
	d := a.Document
	var steps []document.Document
	for i, c := range a.Commands {
		if i > 0 {
			steps = append(steps, d)
		}
		var err error
		if d, err = entered(d, c); err != nil {
			return reply{}, err
		}
	}
	if a.Glimpse && a.Sheet != nil {
		return glimpse(a.Document, d, *a.Sheet, a.wanted)
	}
	out, err := show(d, a.Sheet, a.wanted)
	out.Steps = steps
	if len(a.Commands) > 0 && out.View.Valid {
		out.View.Followed = writer(d).Followed(design.Follow(a.Document, d))
	}
	return out, err
}

type mapArgs struct {
	Document document.Document `json:"document"`
	Quantity rating.Quantity   `json:"quantity"`
	Shop     string            `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Axes     []plots.Axes      `json:"axes,omitempty"` // those in sight, which hold
}

func fieldMap(a mapArgs) (plots.Map, error) {
	if !slices.Contains(rating.OfSurface, a.Quantity) {
		return plots.Map{}, fmt.Errorf("bridge: quantity %q", a.Quantity)
	}
	in, h, err := rated(a.Document, report.Section{}, a.Shop)
	if err != nil {
		return plots.Map{}, err
	}
	w := writer(a.Document)
	w.Along = plots.Sight(a.Axes, a.Document.Units)
	return plots.NewMap(w.Map(in, h, a.Quantity)), nil
}

type workingArgs struct {
	Document document.Document `json:"document"`
	Figure   string            `json:"figure"`
	wanted
}

func working(a workingArgs) (report.Working, error) {
	f, err := found(a.Document, a.wanted)
	if err != nil {
		return report.Working{}, err
	}
	if a.Figure == report.LineFigure {
		return f.LineWorking(&f.res), nil
	}
	one, ok := f.res.Find(a.Figure)
	if !ok {
		return report.Working{}, noFigure(a.Figure)
	}
	return f.Working(one), nil
}

func noFigure(id string) error { return told{Message: message.New("error.no_figure", "id", id)} }

// findings are the figures of a document, whatever the page shows of them, and what writes them.
type findings struct {
	report.Writer
	in  field.Input
	res design.Result
}

func found(d document.Document, want wanted) (findings, error) {
	section, err := report.SectionOf(want.Section)
	if err != nil {
		return findings{}, err
	}
	in, h, err := rated(d, section, want.Shop)
	if err != nil {
		return findings{}, err
	}
	f := findings{writer(d), in, design.Evaluate(in, h)}
	if section.Heated {
		f.res.AddField(&in)
	}
	if section.Making {
		plan(&f.Writer, d, in, &f.res)
	} else if in.Shop != nil {
		addMaking(&f.Writer, in, &f.res)
	}
	return f, nil
}

type lineArgs struct {
	Document document.Document `json:"document"`
	Figure   string            `json:"figure,omitempty"`
	Sentence string            `json:"sentence,omitempty"` // as it is shown, where no figure is asked for
	wanted
}

type line struct {
	Line string `json:"line"`
}

// longest sentence that is put in a line [bytes]: what the page shows has fewer.
const longest = 2000

// inOneLine says a figure, or a sentence that was found, as one line of plain text.
func inOneLine(a lineArgs) (line, error) {
	if err := document.Check(a.Document); err != nil {
		return line{}, err
	}
	f, err := found(a.Document, a.wanted)
	if err != nil {
		return line{}, err
	}
	if a.Figure == "" {
		return line{f.SentenceLine(strings.ToValidUTF8(a.Sentence[:min(len(a.Sentence), longest)], ""), &f.in, a.Section)}, nil
	}
	text := f.FigureLine(a.Figure, &f.in, &f.res)
	if text == "" {
		return line{}, noFigure(a.Figure)
	}
	return line{text}, nil
}

type svgArgs struct {
	Document document.Document `json:"document"`
	Section  string            `json:"section,omitempty"`
	Sheet    drawingArea       `json:"sheet"`
	Dark     bool              `json:"dark,omitempty"`  // the paper is dark
	Alone    bool              `json:"alone,omitempty"` // it is for other programs: with colours and letters of its own, on white
	Shop     string            `json:"shop,omitempty"`  // a capability file; empty: the one that ships
}

type drawn struct {
	SVG string `json:"svg"`
}

func picture(a svgArgs) (drawn, error) {
	section, err := report.SectionOf(a.Section)
	if err != nil {
		return drawn{}, err
	}
	in, h, err := rated(a.Document, report.Section{}, a.Shop)
	if err != nil {
		return drawn{}, err
	}
	var metal *temperature.Distribution
	if section.Heated {
		res := design.Result{Heat: h}
		metal = res.AddField(&in)
	}
	style := svg.Style{Dark: a.Dark}
	if a.Alone {
		style = svg.Alone
	}
	return drawn{svg.Write(compose(in, h, a.Document.Units, a.Sheet, metal), style)}, nil
}
