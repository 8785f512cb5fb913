package report

import (
	"cmp"
	"fmt"
	"strings"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/sheet"
	"finwright/core/drawing/svg"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/shop"
	"finwright/core/units"
)

// MethodsOf is the day of the methods by which all figures are found. Whoever changes a formula, a correlation or a metal gives it
// anew; a test holds it to them.
const MethodsOf = "2026-11-28"

// Papers is what papers are made of, and who writes them. Of a design whose entries cannot be used In, Result and Made are nil.
type Papers struct {
	Writer
	Document document.Document
	Kept     []document.Document // beside it
	Shop     *shop.Capability
	In       *field.Input
	Result   *design.Result
	Made     *design.Production
	Wrong    error             // design.FieldErrors
	Answers  map[string]string // by the question
	Day      string            // the page's, as 2026-11-27
	Program  string            // its version
	Mark     paper.Mark
	Stale    bool                                    // what is shown does not belong to what is entered
	Tube     func(width, height float64) sheet.Scene // the tube in section [CSS px]
	Sides    func(money bool) Comparison             // of the design and what is kept beside it
	Items    []func() *Papers                        // of a paper of several items, each of them; nil: it is of one design

	unpriced bool // none of the items has a price, a provisional one either
}

// build makes the blocks of a paper. No table of builders: it would come with every program that has this package.
func (p *papering) build() {
	if p.Items != nil {
		p.ofSeveral()
		return
	}
	switch p.Kind {
	case paper.Datasheet:
		p.datasheet()
	case paper.Traveller:
		p.traveller()
	case paper.Offer:
		p.offer()
	case paper.Note:
		p.note()
	case paper.Inspection:
		p.inspection()
	case paper.Packing:
		p.packing()
	case paper.Sides:
		p.sides()
	case paper.Accepted:
		p.accepted()
	case paper.Record:
		p.record()
	}
}

// papering is a paper in the making.
type papering struct {
	*Papers
	paper.Paper
}

// Paper makes one. What it tells of the design is printed by what prints the page.
func (w *Papers) Paper(kind paper.Kind) paper.Paper {
	p := papering{w, paper.Paper{Kind: kind, Title: w.title(kind), Head: []paper.Pair{}, Blocks: []paper.Block{}}}
	p.head()
	if w.Result == nil && w.Items == nil {
		p.Caution(p.unusable()...)
	} else {
		p.build()
	}
	p.Across = p.across()
	p.made()
	return p.Paper
}

// title is the name of a paper, of an offer that of its form.
func (w *Papers) title(kind paper.Kind) string {
	if form := w.answer("form"); kind == paper.Offer && form != string(paper.Offer) {
		return w.Texts.Text("paper.form." + form)
	}
	return w.Texts.Text("paper.kind." + string(kind))
}

// answer is what was answered, of a choice the first where nothing was.
func (w *Papers) answer(id string) string {
	text := strings.TrimSpace(w.Answers[id])
	for _, q := range paper.Questions {
		if q.ID == id && q.Choices != nil && text == "" {
			return q.Choices[0]
		}
	}
	if id == "date" {
		return cmp.Or(text, w.Day)
	}
	return text
}

// lines are those of an answer.
func (w *Papers) lines(id string) []string {
	var out []string
	for line := range strings.Lines(w.answer(id)) {
		if line = strings.TrimSpace(line); line != "" {
			out = append(out, line)
		}
	}
	return out
}

// ask is the label of a question.
func (w *Papers) ask(id string) string { return w.Texts.Text("paper.ask." + id) }

func (w *Papers) t(key string) string { return w.Texts.Text(key) }

// answered adds pairs of those questions that have an answer.
func (w *Papers) answered(ids ...string) []paper.Pair {
	var out []paper.Pair
	for _, id := range ids {
		if text := w.answer(id); text != "" {
			out = append(out, paper.Pair{Label: w.ask(id), Value: text})
		}
	}
	return out
}

// head says whose and which paper it is.
func (p *papering) head() {
	p.Status = p.t("paper.status." + p.answer("status"))
	for _, id := range []string{"number", "revision", "date", "customer", "reference"} {
		p.Say(p.ask(id), p.answer(id))
	}
	p.Say(p.ask("item"), p.itemName())
	for _, id := range []string{"prepared", "checked", "approved"} {
		p.Say(p.ask(id), p.answer(id))
	}
	p.Foot = strings.Join(present(p.Title, p.answer("number"), p.answer("revision"), p.itemName(), p.Status), " · ")
}

// itemName is what the item is called: by its answer, by its mark or by its title.
func (w *Papers) itemName() string {
	if w.Items != nil {
		return cmp.Or(w.answer("item"), w.say(message.New("paper.items", "count", len(w.Items))))
	}
	return cmp.Or(w.answer("item"), w.Document.Mark, w.Document.Title)
}

func present(texts ...string) []string {
	var out []string
	for _, text := range texts {
		if text != "" {
			out = append(out, text)
		}
	}
	return out
}

// across says what keeps a paper from being used, the gravest first.
func (w *Papers) across() string {
	switch {
	case w.answer("status") == paper.Void:
		return w.t("paper.across.void")
	case w.Items != nil && !w.unpriced:
		return ""
	case w.Items != nil:
		return w.t("paper.across.refused")
	case w.Result == nil:
		return w.t("paper.across.unusable")
	case w.Stale:
		return w.t("paper.across.stale")
	case w.refused():
		return w.t("paper.across.refused")
	}
	return ""
}

func (w *Papers) refused() bool { return w.Result == nil || w.Result.Verdict().State == figure.No }

// unusable says why there are no figures.
func (p *papering) unusable() []string {
	out := []string{p.t("paper.unusable")}
	if wrong, ok := p.Wrong.(design.FieldErrors); ok {
		for _, e := range wrong {
			out = append(out, p.say(e.Message))
		}
	}
	return out
}

// made says by what and from what the figures are.
func (p *papering) made() {
	p.Heading(p.t("paper.made"))
	list := []paper.Pair{
		{Label: p.t("paper.program"), Value: p.Program},
		{Label: p.t("paper.fingerprint"), Value: p.Mark.String()},
		{Label: p.t("paper.methods_of"), Value: MethodsOf},
		{Label: p.t("paper.units"), Value: p.t("paper.units." + string(p.System))},
	}
	if p.Shop != nil {
		if dated := p.Shop.PricesOf(); dated != "" {
			list = append(list, paper.Pair{Label: p.t("paper.shop_of"), Value: dated})
		}
	}
	p.Pairs(list...)
}

// refusal says why a design is refused, where it is.
func (p *papering) refusal() {
	if p.refused() {
		p.Caution(p.whyRefused())
	}
}

// whyRefused is the verdict, on what leaves the house without what is the shop's.
func (p *papering) whyRefused() string {
	if p.Kind.House() {
		return p.Ruling(p.Result).Text
	}
	return p.say(message.New("paper.line.refused", "why", strings.Join(p.Refusals(p.Result), " ")))
}

// figures are pairs of those figures that the design has, each as the page prints it.
func (p *papering) figures(ids ...string) []paper.Pair {
	var out []paper.Pair
	for _, id := range ids {
		if f, ok := p.Result.Find(id); ok {
			out = append(out, p.pair(p.Figure(f)))
		}
	}
	return out
}

// pair is a printed figure, with what it refers to and how it is judged.
func (p *papering) pair(f ShownFigure) paper.Pair {
	note := present(f.Basis, f.Beside)
	if passed(f.State) || f.State == figure.Kept {
		note = append(note, f.Mark)
	}
	return paper.Pair{Label: f.Label, Value: cmp.Or(f.Absent, units.Text{Value: f.Value, Unit: f.Unit}.String()), Note: strings.Join(note, "; "), Figure: f.ID}
}

// value prints one figure without a label; empty where the design has it not.
func (p *papering) value(id string) string {
	f, ok := p.Result.Find(id)
	if !ok || !f.Absent.None() {
		return ""
	}
	s := p.Figure(f)
	return units.Text{Value: s.Value, Unit: s.Unit}.String()
}

// entries are pairs of those entries that the design uses and that say something, or have something that stands in for them.
func (p *papering) entries(ids ...string) []paper.Pair {
	var out []paper.Pair
	for _, id := range ids {
		f := field.Must(id)
		if text := p.entry(f); text != "" {
			out = append(out, paper.Pair{Label: p.Texts.Text(f.Label()), Value: text})
		}
	}
	return out
}

// entry is what an entry says, or what stands in for it; empty where neither does.
func (p *papering) entry(f *field.Field) string {
	if !f.Used(p.Document.Text) {
		return ""
	}
	if text := p.shownEntry(f, p.Document); text != "" {
		return text
	}
	if q, ok := p.Result.Auto[f.ID]; ok {
		return p.Texts.Numbers.Echo(q.Kind, q.SI, p.System)
	}
	return ""
}

// print is an amount as the page prints it.
func (p *papering) print(k units.Kind, si float64) string {
	return p.Texts.Numbers.Figure(k, si, p.System).String()
}

// spansSaid are the bare spans of a tube, each from the datum.
func (p *papering) spansSaid() []paper.Pair {
	var out []paper.Pair
	for i, s := range p.spans(p.Document, nil) {
		out = append(out, paper.Pair{
			Label: p.say(message.New("paper.span", "number", i+1)),
			Value: p.say(message.New("paper.span_at", "centre", s.Centre.Text, "width", s.Width.Text)),
		})
	}
	return out
}

// tubeDrawing adds the tube in section, with what must be known of it.
func (p *papering) tubeDrawing(width, height float64) {
	if p.Tube != nil {
		p.Draw(svg.Write(p.Tube(width, height), svg.Style{}), p.t("paper.not_for_pressure"))
	}
}

// remarks are what the page remarks, the gravest first.
func (p *papering) remarks() []string {
	var out []string
	for _, n := range p.View(p.Document, nil, p.Result).Notices {
		out = append(out, p.say(message.New("paper.remark", "mark", n.Mark, "text", n.Text)))
	}
	return out
}

// columns are those of a table by the keys of their heads; behind a colon n says that it holds numbers, o that a hand fills it, f
// that it holds formulas.
func (p *papering) columns(keys ...string) []paper.Column {
	var out []paper.Column
	for _, key := range keys {
		key, how, _ := strings.Cut(key, ":")
		out = append(out, paper.Column{Label: p.t("paper.column." + key), Number: how == "n", Open: how == "o", Formula: how == "f"})
	}
	return out
}

// tubeLine says a tube in one line: what it is of, and its sizes.
func (p *papering) tubeLine() string {
	of := func(id string) string { return p.entry(field.Must(id)) }
	made := p.say(message.New("paper.tube_of", "type", of("fin_type"), "fin", of("fin_metal"), "tube", of("tube_metal"), "length", of("tube_length")))
	return strings.Join(present(p.answer("tube_standard"), made, p.Card(*p.In, p.Result.Heat).Line), " · ")
}

// number prints a whole number.
func whole(n int) string { return fmt.Sprint(n) }
