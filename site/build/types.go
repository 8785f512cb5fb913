package main

import (
	"html/template"

	"finwright/core/drawing/finned"
	"finwright/core/drawing/svg"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// typeHelp is a fin type as the help of its entry shows it: its root to scale, and when it is used.
type typeHelp struct {
	ID, Name, When string
	Picture        template.HTML
}

func typeHelps(texts message.Catalogue) []typeHelp {
	list := make([]typeHelp, len(tube.Fixings))
	for i, f := range tube.Fixings {
		id := string(f.Type)
		picture := svg.Write(finned.Root(usual(f.Type)), svg.Style{})
		list[i] = typeHelp{id, texts.Text("choice.fin_type." + id), texts.Text("when." + id), template.HTML(picture)}
	}
	return list
}

// usual is a tube of 1 in with fins as they are wound, welded or raised on it. Common practice, no source.
func usual(typ tube.FinType) tube.Tube {
	t := tube.Tube{OD: units.Inch, Wall: 2.5 * units.Millimetre, Length: 6, Fin: tube.Fin{
		Type: typ, Height: 15 * units.Millimetre, Strip: 0.4 * units.Millimetre, Count: 9 / 0.0254,
		Profile: tube.AsMade, Groove: 0.25 * units.Millimetre, Sleeve: 0.5 * units.Millimetre, Root: tube.FromTube,
	}}
	if typ == tube.Welded {
		t.Fin.Strip, t.Fin.Count = units.Millimetre, 6/0.0254
	}
	return t
}
