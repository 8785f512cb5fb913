package report

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/message"
)

// kept is how exactly a saved row holds its figures, relative to them: six digits.
const kept = 1e-5

// Changed says what a design answers otherwise than the row that was saved of it: its cells are those of figures, and none
// where it was refused. now is its row, or wrong what is wrong with its entries. What is the same in the printed digits is no
// difference, nor is a figure that one of the two programs does not know.
func (w Writer) Changed(figures []string, saved []*float64, now design.Row, wrong design.FieldErrors) []string {
	switch refused := len(saved) == 0; {
	case refused && wrong != nil:
		return nil
	case refused:
		return []string{w.say(message.New("changed.answered"))}
	case wrong != nil:
		return []string{w.say(message.New("changed.refused", "why", wrong[0].Message))}
	}
	var lines []string
	for i := range design.RowFigures {
		column, cell := &design.RowFigures[i], now.Cells[i]
		at := slices.Index(figures, column.ID)
		if at < 0 {
			continue
		}
		name, was := message.Key("figure."+column.ID), saved[at]
		switch {
		case was == nil && cell.Absent.None():
			lines = append(lines, w.say(message.New("changed.came", "name", name, "now", w.printed(column, cell.SI))))
		case was != nil && !cell.Absent.None():
			lines = append(lines, w.say(message.New("changed.gone", "name", name, "was", w.printed(column, *was), "why", cell.Absent)))
		case was != nil && w.differ(column, *was, cell.SI):
			lines = append(lines, w.say(message.New("changed.figure", "name", name, "now", w.printed(column, cell.SI), "was", w.printed(column, *was))))
		}
	}
	return lines
}

// differ reports whether two values differ as they are printed, and not only by what a saved row leaves away.
func (w Writer) differ(column *design.RowFigure, was, now float64) bool {
	return math.Abs(was-now) > kept*max(math.Abs(was), math.Abs(now)) && w.printed(column, was) != w.printed(column, now)
}

func (w Writer) printed(column *design.RowFigure, si float64) string {
	text := w.Texts.Numbers.Figure(column.Kind, si, w.System)
	if column.Kind.Money() {
		text.Unit = strings.TrimSpace(w.Currency + " " + text.Unit)
	}
	return text.String()
}

// Cause says why the same entries are answered otherwise: one basis or both of its parts are others.
func (w Writer) Cause(was, now document.Basis) string {
	switch {
	case was.Shop == now.Shop:
		return w.say(message.New("changed.by_program"))
	case was.Build == now.Build:
		return w.say(message.New("changed.by_shop")) + w.whosePrices(was, now)
	}
	return w.say(message.New("changed.by_both")) + w.whosePrices(was, now)
}

// whosePrices says of which shop and day the prices were that were saved, and whose stand here now; nothing where an earlier version saved them, or both say the same of themselves.
func (w Writer) whosePrices(was, now document.Basis) string {
	switch {
	case was.Named == "", was.Named == now.Named && was.Dated == now.Dated:
		return ""
	case was.Dated == "":
		return " " + w.say(message.New("changed.whose", "was", was.Named, "now", now.Named))
	}
	return " " + w.say(message.New("changed.whose_dated", "was", was.Named, "dated", was.Dated, "now", now.Named))
}

// ItemName is what an item is called in a list: its mark and its name.
func (w Writer) ItemName(d document.Document) string {
	title := cmp.Or(d.Title, w.Texts.Text("page.design_untitled"))
	return strings.TrimSpace(d.Mark + " " + title)
}
