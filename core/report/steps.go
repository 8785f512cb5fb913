package report

import (
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// Steps are the values of an entry that a slider stops at.
type Steps struct {
	ID    string   `json:"id"`
	Label string   `json:"label"`
	Texts []string `json:"texts"` // as they are typed
	Shown []string `json:"shown"` // as they read
	At    int      `json:"at"`    // the place of the design's own; -1: it has none
}

// Steps prints the values of an entry of a design, of which at is its own.
func (w Writer) Steps(f *field.Field, d document.Document, texts []string, at int) Steps {
	out := Steps{ID: f.ID, Label: w.Texts.Text(f.Label()), Texts: []string{}, Shown: []string{}, At: at}
	one := d.With(document.Differences{})
	for _, text := range texts {
		one.Fields[f.ID] = document.Entry{Text: text, Origin: document.Assumed}
		out.Texts = append(out.Texts, w.typed(f.KindOf(text), text))
		out.Shown = append(out.Shown, w.stepShown(f, one))
	}
	return out
}

// gauge is how a wall is typed that is of a wire gauge.
const gauge = " BWG"

// stepShown is an entry as it reads; a wall of a gauge has that beside, by which the trade knows it.
func (w Writer) stepShown(f *field.Field, d document.Document) string {
	shown := w.shownEntry(f, d)
	if typed := d.Text(f.ID); f.Kind == units.Wall && strings.HasSuffix(typed, gauge) && typed != shown {
		return w.say(message.New("show.gauge", "gauge", typed, "wall", shown))
	}
	return shown
}
