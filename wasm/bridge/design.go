package bridge

import (
	"fmt"
	"slices"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/wasm/plots"
)

// sheet is the drawing area in CSS px, with the scales to keep while a grip is held.
type sheet struct {
	Width  float64         `json:"width"`
	Height float64         `json:"height"`
	Hold   *drawing.Scales `json:"hold,omitempty"`
}

// page is what the page shows of one document.
type page struct {
	report.View
	Scene *drawing.Scene `json:"scene"`
	Plots []plots.Update `json:"plots"`
}

// reply pairs a document with its view.
type reply struct {
	Document document.Document `json:"document"`
	View     page              `json:"view"`
}

func curves(w report.Writer, in design.Input, h design.Heat, section string) []report.Curves {
	if section == report.HeatSection {
		return w.HeatCurves(in, h)
	}
	return w.Curves(in)
}

// show evaluates d, with the plots of one section. With a quantity the map's ring moves too.
func show(d document.Document, area sheet, section string, q design.Quantity) reply {
	w := writer(d)
	w.Section = section
	in, err := design.Read(d)
	if err != nil {
		return reply{d, page{View: w.View(d, err, nil)}}
	}
	res := design.Evaluate(in)
	scene := compose(in, res.Heat, d.Units, area, section)
	out := reply{d, page{View: w.View(d, nil, &res), Scene: &scene}}
	for _, c := range curves(w, in, res.Heat, section) {
		out.View.Plots = append(out.View.Plots, plots.Patch(c))
	}
	if q != "" && section != report.HeatSection {
		out.View.Plots = append(out.View.Plots, plots.MoveRing(w.MapFrame(in, q)))
	}
	return out
}

func writer(d document.Document) report.Writer {
	return report.Writer{Texts: message.English, System: d.Units}
}

// compose draws the tube; in the section Heat with the temperature of its metal.
func compose(in design.Input, h design.Heat, s units.System, area sheet, section string) drawing.Scene {
	o := drawing.Options{
		System: s, WidthPx: area.Width, HeightPx: area.Height, Text: message.English,
		Tube:  drawing.HatchingOf(string(in.TubeMetal.Kind), false),
		Fin:   drawing.HatchingOf(string(in.FinMetal.Kind), true),
		Alarm: report.Writer{Texts: message.English, System: s}.Alarm(h),
	}
	if area.Hold != nil {
		o.Hold = *area.Hold
	}
	if section == report.HeatSection && h.Absent.None() {
		o.Heat = metalHeat(in, h.Thermal)
	}
	return drawing.Compose(in.Tube, o)
}

// metalHeat hands the field to the drawing, which knows no physics; nil where there is none.
func metalHeat(in design.Input, t design.Thermal) *drawing.Heat {
	f, err := design.MetalField(in, t)
	if err != nil {
		return nil
	}
	heat := &drawing.Heat{Quads: f.Quads, Low: f.Coldest, High: f.Hottest, Nodes: make([]drawing.HeatNode, len(f.Nodes))}
	for i, n := range f.Nodes {
		heat.Nodes[i] = drawing.HeatNode{R: n.R, X: n.X, T: n.T}
	}
	return heat
}

type editArgs struct {
	Document document.Document `json:"document"`
	Command  *document.Command `json:"command"`
	Sheet    sheet             `json:"sheet"`
	Section  string            `json:"section,omitempty"`  // whose plots are wanted
	Quantity design.Quantity   `json:"quantity,omitempty"` // of the map that is shown, if one is
}

func edit(a editArgs) (any, error) {
	if err := document.Check(a.Document); err != nil {
		return nil, err
	}
	d := a.Document
	if a.Command != nil {
		var err error
		if d, err = document.Edit(d, *a.Command); err != nil {
			return nil, err
		}
	}
	return show(d, a.Sheet, a.Section, a.Quantity), nil
}

type plotArgs struct {
	Document document.Document `json:"document"`
	Section  string            `json:"section,omitempty"`
	Quantity design.Quantity   `json:"quantity"`
}

// allPlots gives every chart's full option, the map's without its bands.
func allPlots(a plotArgs) (any, error) {
	in, err := a.read()
	if err != nil {
		return nil, err
	}
	w := writer(a.Document)
	list := plots.Options(curves(w, in, design.Rate(in), a.Section)...)
	if a.Section != report.HeatSection {
		list = append(list, plots.MapOption(w.MapFrame(in, a.Quantity)))
	}
	return map[string]any{"plots": list}, nil
}

func fieldMap(a plotArgs) (any, error) {
	in, err := a.read()
	if err != nil {
		return nil, err
	}
	return plots.NewMap(writer(a.Document).Map(in, a.Quantity)), nil
}

func (a plotArgs) read() (design.Input, error) {
	if !slices.Contains(design.Quantities, a.Quantity) {
		return design.Input{}, fmt.Errorf("bridge: quantity %q", a.Quantity)
	}
	return design.Read(a.Document)
}

type workingArgs struct {
	Document document.Document `json:"document"`
	Figure   string            `json:"figure"`
}

func working(a workingArgs) (any, error) {
	in, err := design.Read(a.Document)
	if err != nil {
		return nil, err
	}
	f, ok := design.Evaluate(in).Find(a.Figure)
	if !ok {
		return nil, told{message.New("error.no_figure", "id", a.Figure)}
	}
	return writer(a.Document).Working(f), nil
}

type svgArgs struct {
	Document document.Document `json:"document"`
	Section  string            `json:"section,omitempty"`
	Sheet    sheet             `json:"sheet"`
}

func svg(a svgArgs) (any, error) {
	in, err := design.Read(a.Document)
	if err != nil {
		return nil, err
	}
	return map[string]string{"svg": drawing.SVG(compose(in, design.Rate(in), a.Document.Units, a.Sheet, a.Section), drawing.Style{})}, nil
}
