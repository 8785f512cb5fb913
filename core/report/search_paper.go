package report

import (
	"cmp"
	"strings"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/search"
	"finwright/core/units"
)

// PrintedSearch is a search that goes on paper.
type PrintedSearch struct {
	*search.Search
	Problem  *search.Problem
	Part     *search.Part
	Thinned  float64
	Document document.Document
	Shop     string // its name
	Older    bool   // something has changed since
}

// mostListed designs are listed on paper: with the question and the picture they take two sheets.
const mostListed = 60

// SearchPaper tells a search: what was asked, what was left out by what, and the best. Its picture is that of the page.
func (w Writer) SearchPaper(q PrintedSearch) paper.Paper {
	t := w.Texts.Text
	p := paper.Paper{Kind: "search", Title: t("search.paper.title"), Head: []paper.Pair{}, Blocks: []paper.Block{}}
	if q.Older {
		p.Status = t("search.paper.older")
	}
	p.Say(t("search.paper.design"), cmp.Or(q.Document.Mark, q.Document.Title))
	p.Say(t("search.paper.day"), q.Problem.Day)
	p.Say(t("search.paper.shop"), q.Shop)
	p.Say(t("search.paper.wanted"), strings.Join(w.wanted(q.Problem), ", "))
	p.Foot = strings.Join(present(p.Title, q.Document.Mark, q.Document.Title), " · ")

	p.Heading(t("search.paper.varies"))
	p.Pairs(w.varies(&q)...)
	p.Heading(t("search.paper.holds"))
	p.Pairs(w.mustHold(q.Problem)...)
	p.Heading(t("search.paper.found"))
	for _, line := range w.foundSaid(q.Search, &search.Part{Seen: q.Part.Seen, Passed: q.Part.Passed, Front: q.Part.Front}, q.Thinned) {
		p.Text(line)
	}
	p.Table("", w.heads("search.paper.left", "search.paper.designs:n", "search.paper.share:n"), w.cutRows(q.Part))
	if len(q.Part.Best) > 0 {
		p.Draw("", t("search.paper.picture")) // the page's stands there
		w.listBest(&p, &q)
	}
	return p
}

// heads are those of a table by their texts; behind a colon n says that a column holds numbers.
func (w Writer) heads(keys ...string) (out []paper.Column) {
	for _, key := range keys {
		key, _, number := strings.Cut(key, ":")
		out = append(out, paper.Column{Label: w.Texts.Text(key), Number: number})
	}
	return out
}

func (w Writer) wanted(q *search.Problem) (out []string) {
	for _, m := range q.Wanted {
		out = append(out, w.Texts.Text("search.measure."+string(m)))
	}
	return out
}

// varies says of each entry that varies what was tried, as it was asked.
func (w Writer) varies(q *PrintedSearch) (out []paper.Pair) {
	for i, id := range q.Varied() {
		said, values := "", q.Values(i)
		for _, a := range q.Problem.Axes {
			if a.Field == id {
				said = cmp.Or(a.Typed, a.Said())
			}
		}
		if field.Must(id).Choice != nil {
			named := make([]string, len(values))
			for j, text := range values {
				named[j] = w.entryText(id, text)
			}
			said = strings.Join(named, ", ")
		}
		out = append(out, paper.Pair{Label: w.Texts.Text("field." + id), Value: said, Note: w.say(message.New("search.paper.values", "count", len(values)))})
	}
	return append(out, paper.Pair{Label: w.Texts.Text("search.paper.count"), Value: w.Texts.Numbers.Write(whole(q.Count()))})
}

// mustHold says what had to, in the words and the order of the form.
func (w Writer) mustHold(q *search.Problem) (out []paper.Pair) {
	for _, m := range w.SearchForm(nil, document.New()).Musts {
		text := q.Must[m.ID]
		if text == "" {
			continue
		}
		for _, c := range m.Choices {
			if c.ID == text {
				text = c.Label
			}
		}
		out = append(out, paper.Pair{Label: m.Label, Value: text})
	}
	outside := "search.paper.outside_out"
	if q.Outside {
		outside = "search.paper.outside_in"
	}
	return append(out, paper.Pair{Label: w.Texts.Text("search.paper.outside"), Value: w.Texts.Text(outside)})
}

func (w Writer) cutRows(p *search.Part) (rows [][]string) {
	for _, c := range p.CutsByCount() {
		share := w.Texts.Numbers.Figure(units.Percent, float64(c.Count)/float64(p.Seen), w.System).Value + " " + units.Percent.Unit(w.System)
		rows = append(rows, []string{w.Texts.Text(string(c.Cut.Name())), w.Texts.Numbers.Write(whole(c.Count)), share})
	}
	return rows
}

// listBest lists the best, as many as two sheets hold.
func (w Writer) listBest(p *paper.Paper, q *PrintedSearch) {
	best, _ := w.foundRows(q.Search, q.Part)
	columns := []paper.Column{{Label: w.Texts.Text("search.paper.order")}}
	for _, id := range q.Varied() {
		columns = append(columns, paper.Column{Label: w.Texts.Text("field." + id)})
	}
	for _, at := range q.Asked() {
		m := search.Measures[at]
		label := w.Texts.Text("search.measure." + string(m.ID))
		if unit := w.unitOf(m.Kind); unit != "" {
			label += ", " + unit
		}
		columns = append(columns, paper.Column{Label: label, Number: true})
	}
	listed := min(len(best), mostListed)
	rows := make([][]string, listed)
	for i := range rows {
		rows[i] = append([]string{best[i].Name}, best[i].Cells...)
		if best[i].Outside != "" {
			rows[i][0] += " " + w.Texts.Text("page.find_out")
		}
	}
	p.Heading(w.say(message.New("search.paper.listed", "count", listed, "all", q.Part.Passed, "what", message.Key("search.measure."+string(q.Problem.Wanted[0])))))
	p.Table("", columns, rows)
}
