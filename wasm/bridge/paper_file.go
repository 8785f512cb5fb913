package bridge

import (
	"errors"
	"fmt"

	"finwright/core/document"
	"finwright/core/issued"
	"finwright/core/paper"
)

// issuedPaper is a paper that was issued, with all that it was made of, as the page keeps it.
type issuedPaper struct {
	Item     string            `json:"item"`
	Kind     paper.Kind        `json:"kind"`
	Name     string            `json:"name"`
	Time     string            `json:"time"`
	Mark     string            `json:"mark"`
	Program  string            `json:"program"`
	Paper    paper.Paper       `json:"paper"`
	Document document.Document `json:"document"`
	Several  *severalArgs      `json:"several,omitempty"` // of which it is, in the place of the document alone
	Shop     string            `json:"shop"`              // a capability file; empty: the one that ships
	Answers  map[string]string `json:"answers"`
}

// paperSaveArgs ask for one as a file.
type paperSaveArgs struct {
	Issued issuedPaper `json:"issued"`
	Day    string      `json:"day"` // the page's
}

// paperSaved is the file.
type paperSaved struct {
	Name string `json:"name"`
	Text string `json:"text"`
}

// savePaper writes an issued paper as a file.
func savePaper(a paperSaveArgs) (paperSaved, error) {
	x := a.Issued
	name, ok := document.FileName(x.Name, texts().Text("file.design"), a.Day, ".paper.json")
	if !ok {
		return paperSaved{}, fmt.Errorf("bridge: day %q", a.Day)
	}
	r := issued.Record{Item: x.Item, Name: x.Name, Time: x.Time, Mark: x.Mark, Program: x.Program, Answers: x.Answers, Shop: x.Shop, Paper: x.Paper, Job: document.JobOf([]document.Document{x.Document})}
	if x.Several != nil {
		r.Job, r.Each = x.Several.job(), []map[string]string{}
		for _, one := range x.Several.Items {
			r.Each = append(r.Each, one.Answers)
		}
	}
	if r.Shop == "" {
		c := house()
		r.Shop = string(c.Save()) // a later program may ship another
	}
	text, err := issued.Save(r)
	return paperSaved{name, string(text)}, err
}

// paperOpenArgs are the text of a file.
type paperOpenArgs struct {
	Text string `json:"text"`
}

// openPaper reads an issued paper from a file.
func openPaper(a paperOpenArgs) (issuedPaper, error) {
	r, err := issued.Open([]byte(a.Text))
	if oe := (*document.OpenError)(nil); errors.As(err, &oe) {
		return issuedPaper{}, told{Message: oe.Message}
	}
	if err != nil {
		return issuedPaper{}, err
	}
	out := issuedPaper{Item: r.Item, Kind: r.Paper.Kind, Name: r.Name, Time: r.Time, Mark: r.Mark, Program: r.Program, Paper: r.Paper, Document: r.Job.Design(0), Shop: r.Shop, Answers: r.Answers}
	if r.Each != nil {
		out.Several = &severalArgs{Base: r.Job.Base}
		for i, item := range r.Job.Items {
			out.Several.Items = append(out.Several.Items, paperItem{Design: item.Design, Kept: item.Kept, Answers: r.Each[i]})
		}
	}
	return out, nil
}
