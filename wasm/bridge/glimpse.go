package bridge

import (
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/fin/temperature"
	"finwright/core/report"
	"finwright/wasm/plots"
)

// glimpse shows of d what moves under a hand that pulls: figures, the drawing, and where the design stands in the plots. Where
// an entry is wrong it is a whole answer. before is the design that is pulled.
func glimpse(before, d document.Document, area drawingArea, want wanted) (reply, error) {
	section, err := report.SectionOf(want.Section)
	if err != nil {
		return reply{}, err
	}
	if section.Making && inPart() {
		return reply{}, errElsewhere
	}
	in, h, err := rated(d, section, want.Shop)
	if err != nil {
		return show(d, &area, want)
	}
	w := writer(d)
	w.Section, w.Headline = section, want.Headline
	res := design.Evaluate(in, h)
	res.AddCarried(d)
	var metal *temperature.Distribution
	if section.Heated {
		metal = res.AddField(&in)
	}
	if section.Making {
		w.Currency = in.Shop.Currency
		m := planWhole(in, h)
		res.AddMaking(&m)
	} else if in.Shop != nil {
		addMaking(&w, in, &res)
	}
	scene := compose(in, h, d.Units, area, metal)
	out := page{View: w.Glimpse(before, d, &res, want.Lists), Scene: &scene}
	if want.ruled {
		out.View.Ruling = w.Ruling(&res)
	}
	if section.Marks != nil {
		for _, c := range section.Marks(w, in, h) {
			out.Rings = append(out.Rings, plots.Move(c))
		}
	}
	return reply{Document: d, View: out}, nil
}
