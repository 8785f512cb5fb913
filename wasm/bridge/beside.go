package bridge

import (
	"fmt"

	"finwright/core/document"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/wasm/plots"
)

type besideArgs struct {
	Designs []document.Document `json:"designs"`
	Section string              `json:"section"`
	System  units.System        `json:"system"`         // of the plots, whatever the designs are in
	Shop    string              `json:"shop,omitempty"` // a capability file; empty: the one that ships
	Axes    []plots.Axes        `json:"axes,omitempty"` // those in sight
}

type standing struct {
	Plots []plots.BesidePlot `json:"plots"`
}

// beside says where designs stand in the plots of a section, and their own curves there. One that cannot be rated has neither.
func beside(a besideArgs) (standing, error) {
	section, err := report.SectionOf(a.Section)
	if err != nil {
		return standing{}, err
	}
	if len(a.Designs) > document.MostKept || a.System != units.SI && a.System != units.US {
		return standing{}, fmt.Errorf("bridge: %d designs, system %q", len(a.Designs), a.System)
	}
	out := standing{[]plots.BesidePlot{}}
	if section.Curves == nil {
		return out, nil
	}
	w := writerIn(a.System)
	w.Along = plots.Sight(a.Axes, a.System)
	for _, d := range a.Designs {
		if err := document.Check(d); err != nil {
			return standing{}, err
		}
		in, h, err := rated(d, section, a.Shop)
		if err != nil {
			continue
		}
		out.Plots = plots.Beside(out.Plots, section.Curves(w, in, h))
		for _, c := range section.Marks(w, in, h) {
			if c.ID == "map" {
				out.Plots = plots.Beside(out.Plots, []report.Curves{c})
			}
		}
	}
	return out, nil
}
