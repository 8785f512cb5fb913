package charts

import (
	"encoding/json"

	"finwright/core/design"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/report"
	"finwright/core/units"
	"finwright/testdata/cases"
	"finwright/wasm/plots"
)

// JSON returns the options of all charts in one language, by system of units.
func JSON(texts message.Catalogue) ([]byte, error) {
	in, h, err := design.ReadAndRate(cases.First(), nil) // any design does: all have the same lines
	if err != nil {
		return nil, err
	}
	all := map[units.System][]Plot{}
	for _, system := range []units.System{units.SI, units.US} {
		w := report.Writer{Texts: texts, System: system}
		for _, c := range append(w.Curves(in, h), w.HeatCurves(in, h)...) {
			all[system] = append(all[system], Plot{c.ID, curveOption(c, plots.Light), curveOption(c, plots.Dark), printed})
		}
		f := w.MapFrame(in, h, rating.AreaRatio)
		all[system] = append(all[system], Plot{f.ID, fieldOption(f, plots.Light), fieldOption(f, plots.Dark), printed})
	}
	return json.Marshal(all)
}
