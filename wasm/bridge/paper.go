package bridge

import (
	"errors"
	"fmt"
	"maps"
	"strconv"
	"strings"

	"finwright/core/compare"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/sheet"
	"finwright/core/message"
	"finwright/core/paper"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/shop/floor"
	"finwright/core/units"
)

// paperArgs ask for a paper of a design, in units that are its own.
type paperArgs struct {
	Document document.Document   `json:"document"`
	Kind     paper.Kind          `json:"kind"`
	Units    units.System        `json:"units"`
	Answers  map[string]string   `json:"answers"` // by the question; none where a question is not answered
	Day      string              `json:"day"`     // the page's, as 2026-11-27
	Program  string              `json:"program"` // the version of the program
	Stale    bool                `json:"stale,omitempty"`
	Beside   []document.Document `json:"beside"`            // what is kept beside it
	Names    []string            `json:"names"`             // of these, in their order; empty: by what they say otherwise
	Several  *severalArgs        `json:"several,omitempty"` // items of a job, of which it is in the place of the design
	Shop     string              `json:"shop,omitempty"`
}

// severalArgs are the items of a job that are on one paper.
type severalArgs struct {
	Base  document.Document `json:"base"`
	Items []paperItem       `json:"items"`
}

// paperItem is one of them.
type paperItem struct {
	Design  document.Differences `json:"design"`
	Kept    []document.Kept      `json:"kept"`    // beside it
	Answers map[string]string    `json:"answers"` // of its own
	Stale   bool                 `json:"stale,omitempty"`
}

// papered is a paper with what it asks for.
type papered struct {
	Paper paper.Paper            `json:"paper"`
	Asks  []report.ShownQuestion `json:"asks"`
	Mark  string                 `json:"mark"`

	NotYet string `json:"not_yet,omitempty"` // why it cannot be issued as it stands

	Proposals []report.ShownProposal `json:"proposals,omitempty"` // what the shop may learn of what came back from the floor
}

// makePaper makes a paper.
func makePaper(a paperArgs) (papered, error) {
	w, err := a.papers()
	if err != nil {
		return papered{}, err
	}
	out := papered{Paper: w.Paper(a.Kind), Asks: w.Asks(a.Kind), Mark: w.Mark.String(), NotYet: w.NotYet()}
	if a.Kind == paper.Record {
		out.Proposals = w.Proposals()
	}
	return out, nil
}

// learnArgs accept a proposal.
type learnArgs struct {
	paperArgs
	Thing floor.Thing `json:"thing"`
}

// learned is the shop's file with it.
type learned struct {
	Shop string `json:"shop"`
}

// learn makes the change of the shop's file that was proposed.
func learn(a learnArgs) (learned, error) {
	w, err := a.papers()
	if err != nil {
		return learned{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return learned{}, err
	}
	next, why := w.Learn(a.Thing, c)
	if !why.None() {
		return learned{}, told{Message: why}
	}
	return learned{string(next.Save())}, nil
}

func (a *paperArgs) check() error {
	if !a.Kind.Known() || a.Units != units.SI && a.Units != units.US || len(a.Beside) >= mostCompared || len(a.Names) != len(a.Beside) {
		return fmt.Errorf("bridge: paper %q in %q beside %d, %d names", a.Kind, a.Units, len(a.Beside), len(a.Names))
	}
	for id, text := range a.Answers {
		if len(text) > paper.Longest {
			return fmt.Errorf("bridge: answer %q has %d bytes", id, len(text))
		}
	}
	if a.Several != nil {
		return a.checkSeveral()
	}
	for _, d := range append([]document.Document{a.Document}, a.Beside...) {
		if err := document.Check(d); err != nil {
			return err
		}
	}
	return nil
}

// checkSeveral checks the items of a paper.
func (a *paperArgs) checkSeveral() error {
	s := a.Several
	switch n := len(s.Items); {
	case !a.Kind.Several() || n == 0:
		return fmt.Errorf("bridge: %q of %d items", a.Kind, n)
	case n > report.MostItems:
		return told{Message: message.New("paper.too_many", "most", report.MostItems)}
	}
	for i, x := range s.Items {
		for id, text := range x.Answers {
			if len(text) > paper.Longest {
				return fmt.Errorf("bridge: answer %q of item %d has %d bytes", id, i+1, len(text))
			}
		}
	}
	return document.CheckJob(s.job())
}

// job is the items, named by their places.
func (s *severalArgs) job() document.Job {
	job := document.Job{Base: s.Base}
	for i, x := range s.Items {
		job.Items = append(job.Items, document.Item{ID: strconv.Itoa(i + 1), Design: x.Design, Kept: x.Kept})
	}
	return job
}

// papersOfSeveral are those of a job, whose items are rated one after the other as they are asked for. Of each nothing is planned but what an
// offer tells.
func (a *paperArgs) papersOfSeveral(c *shop.Capability) *report.Papers {
	s := a.Several
	w := &report.Papers{Writer: writerIn(a.Units), Shop: c, Answers: cleaned(a.Answers), Day: a.Day, Program: a.Program}
	w.Currency = c.Currency
	designs := make([]document.Document, len(s.Items))
	for i := range s.Items {
		designs[i] = s.Base.With(s.Items[i].Design)
		w.Items = append(w.Items, func() *report.Papers {
			Done(float64(i) / float64(len(s.Items)))
			return a.papersOfItem(w, designs[i], &s.Items[i])
		})
	}
	w.Mark = paper.MarkOf(document.FingerprintOf(designs), markOf(a.Shop, c), a.Program)
	return w
}

// papersOfItem rates and plans an item; what was answered of all papers of the job holds for it too.
func (a *paperArgs) papersOfItem(all *report.Papers, d document.Document, x *paperItem) *report.Papers {
	answers := cleaned(a.Answers)
	delete(answers, "item")
	maps.Copy(answers, cleaned(x.Answers))
	w := &report.Papers{Writer: all.Writer, Shop: all.Shop, Answers: answers, Day: a.Day, Program: a.Program, Stale: x.Stale}
	for _, k := range x.Kept {
		w.Kept = append(w.Kept, a.Several.Base.With(k.Design))
	}
	w.Document = d
	if other, err := document.Edit(d, document.Command{Op: "units", System: a.Units}); err == nil {
		w.Document = other
	}
	in, h, err := design.ReadAndRate(w.Document, all.Shop)
	if err != nil {
		w.Wrong = err
		return w
	}
	res := design.Evaluate(in, h)
	res.AddCarried(w.Document)
	m := design.Brief(in, h)
	m.Day, _ = shop.ParseDay(a.Day)
	if a.Kind == paper.Offer {
		m.AddBreaks()
	}
	res.AddMaking(&m)
	w.In, w.Result, w.Made = &in, &res, &m
	return w
}

// cleaned are answers in whole letters.
func cleaned(answers map[string]string) map[string]string {
	out := map[string]string{}
	for id, text := range answers {
		out[id] = strings.ToValidUTF8(text, "")
	}
	return out
}

// papers rates and plans the design for its papers.
func (a *paperArgs) papers() (*report.Papers, error) {
	if err := a.check(); err != nil {
		return nil, err
	}
	if a.Several != nil {
		c, err := openShop(a.Shop)
		if err != nil {
			return nil, err
		}
		return a.papersOfSeveral(&c), nil
	}
	d, err := document.Edit(a.Document, document.Command{Op: "units", System: a.Units})
	if err != nil {
		return nil, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return nil, err
	}
	w := &report.Papers{
		Writer: writerIn(a.Units), Document: d, Kept: a.Beside, Shop: &c, Answers: cleaned(a.Answers), Day: a.Day, Program: a.Program, Stale: a.Stale,
		Mark: paper.MarkOf(a.Document.Fingerprint(), markOf(a.Shop, &c), a.Program),
	}
	w.Currency = c.Currency
	w.Sides = func(money bool) report.Comparison {
		t := compare.Of(append([]document.Document{d}, a.Beside...), 0, compare.Helds[0], "", &c)
		return w.Comparison(&t, append([]string{""}, a.Names...), money)
	}
	in, h, err := rated(d, report.Section{Making: true}, a.Shop)
	if wrong := design.FieldErrors(nil); errors.As(err, &wrong) {
		w.Wrong = wrong
		return w, nil
	} else if err != nil {
		return nil, err
	}
	res := design.Evaluate(in, h)
	res.AddCarried(d)
	m := plan(&w.Writer, d, in, &res)
	m.Day, _ = shop.ParseDay(a.Day)
	w.In, w.Result, w.Made = &in, &res, &m
	w.Tube = func(width, height float64) sheet.Scene {
		return compose(in, h, a.Units, drawingArea{Width: width, Height: height}, nil)
	}
	return w, nil
}

// tableArgs ask for a table of a paper as a file.
type tableArgs struct {
	paperArgs
	Table  int          `json:"table"`            // which of its tables
	Format string       `json:"format,omitempty"` // "xlsx", or empty: CSV
	Issued *paper.Paper `json:"issued,omitempty"` // in whose place it is, as it was issued
}

// tabled is a table as a file that spreadsheets open: CSV, or what a workbook is made of.
type tabled struct {
	Name  string               `json:"name"`
	CSV   string               `json:"csv"`
	Sheet *report.EnquiryTable `json:"sheet,omitempty"`
}

// paperTable writes a table of a paper.
func paperTable(a tableArgs) (tabled, error) {
	made := a.Issued
	if made == nil {
		w, err := a.papers()
		if err != nil {
			return tabled{}, err
		}
		p := w.Paper(a.Kind)
		made = &p
	}
	tables := made.Tables()
	if a.Table < 0 || a.Table >= len(tables) || !tables[a.Table].Whole() {
		return tabled{}, fmt.Errorf("bridge: table %d of %d", a.Table, len(tables))
	}
	ending := ".csv"
	if a.Format != "" {
		ending = "." + a.Format
	}
	name, ok := document.FileName(made.Title+" "+tables[a.Table].Text, texts().Text("file.design"), a.Day, ending)
	if !ok || ending != ".csv" && ending != ".xlsx" {
		return tabled{}, fmt.Errorf("bridge: day %q, format %q", a.Day, a.Format)
	}
	if a.Format == "" {
		return tabled{Name: name, CSV: tables[a.Table].Table.CSV()}, nil
	}
	sheet := writerIn(a.Units).Sheet(tables[a.Table].Table)
	return tabled{Name: name, Sheet: &sheet}, nil
}

// drawingOut is a drawing as a file.
type drawingOut struct {
	Name string `json:"name"`
	Text string `json:"text"`
}

// drawingArgs ask for the tube as a file.
type drawingArgs struct {
	paperArgs
	Format string `json:"format"` // "dxf", in true size for other programs, or "svg", as the page draws it
}

// drawOut writes the tube.
func drawOut(a drawingArgs) (drawingOut, error) {
	w, err := a.papers()
	if err != nil {
		return drawingOut{}, err
	}
	if w.Result == nil {
		return drawingOut{}, told{Message: message.New("paper.unusable")}
	}
	write, known := map[string]func() string{"dxf": w.Exchange, "svg": w.Drawing}[a.Format]
	name, dated := document.FileName(a.Document.Title, texts().Text("file.design"), a.Day, "."+a.Format)
	if !known || !dated {
		return drawingOut{}, fmt.Errorf("bridge: %q of %q", a.Format, a.Day)
	}
	return drawingOut{name, write()}, nil
}

// markArgs ask which of some designs a fingerprint is of.
type markArgs struct {
	Text    string              `json:"text"`    // as it was pasted
	Designs []document.Document `json:"designs"` // the one in hand first
	Program string              `json:"program"`
	Shop    string              `json:"shop,omitempty"`
}

// markedAt is where it was found; -1: nowhere.
type markedAt struct {
	At    int    `json:"at"`
	Said  string `json:"said"`
	Found bool   `json:"found,omitempty"` // of one of the designs, or of all
	Read  bool   `json:"read,omitempty"`  // it is a fingerprint
}

// findMark finds a fingerprint among designs.
func findMark(a markArgs) (markedAt, error) {
	of, all, err := a.marks(a.Designs)
	if err != nil {
		return markedAt{}, err
	}
	w := writerIn(units.SI)
	at, said := w.Marked(a.Text, of)
	_, read := paper.ReadMark(a.Text)
	out := markedAt{At: at, Said: said, Found: at >= 0, Read: read}
	if together, ok := w.MarkedAll(a.Text, all); at < 0 && len(of) > 1 && ok {
		out.Said, out.Found = together, true
	}
	return out, nil
}

// marks are those of designs, and that of all of them on one paper.
func (a *markArgs) marks(designs []document.Document) (of []paper.Mark, all paper.Mark, err error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return nil, all, err
	}
	for _, d := range designs {
		if err := document.Check(d); err != nil {
			return nil, all, err
		}
		of = append(of, paper.MarkOf(d.Fingerprint(), markOf(a.Shop, &c), a.Program))
	}
	return of, paper.MarkOf(document.FingerprintOf(designs), markOf(a.Shop, &c), a.Program), nil
}

// earlierMarkArgs ask whether a fingerprint is of a piece of earlier work.
type earlierMarkArgs struct {
	Text    string `json:"text"` // as it was pasted
	Work    string `json:"work"` // as it is kept
	Program string `json:"program"`
	Shop    string `json:"shop,omitempty"`
}

// findEarlier finds a fingerprint in earlier work. One that cannot be read has none.
func findEarlier(a earlierMarkArgs) (markedAt, error) {
	f, err := document.OpenFile([]byte(a.Work))
	if err != nil {
		return markedAt{At: -1}, nil
	}
	designs := f.Job.Designs()
	m := markArgs{Text: a.Text, Program: a.Program, Shop: a.Shop}
	of, all, err := m.marks(designs)
	if err != nil {
		return markedAt{}, err
	}
	w := writerIn(units.SI)
	for i := range of {
		if said, ok := w.MarkedItem(a.Text, of[i], designs[i], i); ok {
			return markedAt{At: i, Said: said, Found: true, Read: true}, nil
		}
	}
	if said, ok := w.MarkedAll(a.Text, all); ok {
		return markedAt{At: -1, Said: said, Found: true, Read: true}, nil
	}
	return markedAt{At: -1}, nil
}
