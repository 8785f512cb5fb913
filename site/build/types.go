package main

import (
	"html/template"

	"finwright/core/drawing/finned"
	"finwright/core/drawing/svg"
	"finwright/core/glossary"
	"finwright/core/message"
	"finwright/core/tube"
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
		picture := svg.Write(finned.Root(glossary.Usual(f.Type)), svg.Style{})
		list[i] = typeHelp{id, texts.Text("choice.fin_type." + id), texts.Text("when." + id), template.HTML(picture)}
	}
	return list
}
