package bridge

import (
	"errors"

	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/message"
	"finwright/core/quotes"
	"finwright/core/report"
	"finwright/core/units"
)

// enquiryKeepArgs is an enquiry as it stands in the page, with what its items cost now.
type enquiryKeepArgs struct {
	ID   string `json:"id"`
	Of   string `json:"of"`
	Time string `json:"time"`
	quotes.Letterhead
	Units   units.System         `json:"units"`
	Text    string               `json:"text"`
	Columns []enquiry.HeadColumn `json:"columns,omitempty"`
	Decided []enquiry.Decision   `json:"decided,omitempty"`
	Edits   []enquiry.Edit       `json:"edits,omitempty"`

	Base    document.Document     `json:"base"`
	Entries []report.EnquiryEntry `json:"entries"` // of all designs, each once
	Designs []enquiryDesign       `json:"designs"`
	Items   []quotedItem          `json:"items"`
	Day     string                `json:"day"` // the page's, of the prices; empty: there are none yet
	Shop    string                `json:"shop,omitempty"`
	Was     string                `json:"was,omitempty"` // as it was kept before
}

// quotedItem is what an item costs now.
type quotedItem struct {
	Mark        string   `json:"mark"`
	Design      int      `json:"design"` // its place
	Tubes       int      `json:"tubes"`
	Price       *float64 `json:"price,omitempty"` // [money]
	Provisional bool     `json:"provisional,omitempty"`
}

// quotes are the items at their prices of now.
func (a *enquiryKeepArgs) quotes() (quotes.Quoted, error) {
	out := quotes.Quoted{Day: a.Day, Base: quotes.BaseOf(a.Base), Quotes: make([]quotes.Quote, len(a.Items))}
	c, err := openShop(a.Shop)
	if err != nil {
		return out, err
	}
	out.Shop, out.Currency = c.Name, c.Currency
	designs, err := (&enquiryRowsArgs{Entries: a.Entries, Designs: a.Designs}).differences()
	if err != nil {
		return out, err
	}
	for i, x := range a.Items {
		if x.Design < 0 || x.Design >= len(designs) {
			return out, errors.New("bridge: an item without its design")
		}
		q := quotes.QuoteOf(x.Mark, designs[x.Design])
		q.Tubes, q.Price, q.Provisional = x.Tubes, x.Price, x.Provisional
		out.Quotes[i] = q
	}
	return out, nil
}

// keptText is an enquiry as it is kept, and what a list needs of it.
type keptText struct {
	Text    string         `json:"text"`
	Summary quotes.Summary `json:"summary"`
	Told    string         `json:"told"` // what is to be known of it
	Same    bool           `json:"same"` // it says what was kept before, which is its text then
}

// keepEnquiry writes an enquiry. What the customer was told stays as he was told it.
func keepEnquiry(a enquiryKeepArgs) (keptText, error) {
	now, err := a.quotes()
	if err != nil {
		return keptText{}, err
	}
	r := quotes.Record{ID: a.ID, Of: a.Of, Time: a.Time, Letterhead: a.Letterhead, Units: a.Units, Text: a.Text, Columns: a.Columns, Decided: a.Decided, Edits: a.Edits, Quoted: now}
	out := keptText{}
	was, err := quotes.Open([]byte(a.Was))
	before := err == nil && len(was) == 1 && was[0].ID == a.ID
	if before && was[0].Day != "" && (was[0].State.Told() && a.State.Told() || a.Day == "") {
		r.Quoted = was[0].Quoted
		then, at := quotes.Record{Quoted: r.Quoted, Units: was[0].Units}, quotes.Record{Quoted: now, Units: a.Units}
		if a.Day != "" && len(quotes.Compare(&then, &at)) > 0 {
			out.Told = texts().Render(message.New("quoted.stays", "state", message.Key("quoted.state."+string(a.State)), "day", r.Day), a.Units)
		}
	}
	if err := r.Check(); err != nil {
		return out, refusedKept(err)
	}
	if before && r.Same(&was[0]) {
		out.Text, out.Summary, out.Same = a.Was, was[0].Summary(), true
		return out, nil
	}
	out.Text, out.Summary, err = written(r)
	return out, err
}

func written(r quotes.Record) (string, quotes.Summary, error) {
	text, err := quotes.Save([]quotes.Record{r})
	return string(text), r.Summary(), err
}

// refusedKept tells the user why a text of enquiries is not taken.
func refusedKept(err error) error {
	if refused := (*quotes.OpenError)(nil); errors.As(err, &refused) {
		return told{Message: refused.Message}
	}
	return err
}

type enquiryKeptArgs struct {
	Text string `json:"text"`
}

// keptEnquiry is an enquiry to be opened as it was left.
type keptEnquiry struct {
	ID   string `json:"id"`
	Of   string `json:"of"`
	Time string `json:"time"`
	quotes.Letterhead
	Units   units.System         `json:"units"`
	Text    string               `json:"text"`
	Columns []enquiry.HeadColumn `json:"columns,omitempty"`
	Decided []enquiry.Decision   `json:"decided,omitempty"`
	Edits   []enquiry.Edit       `json:"edits,omitempty"`
}

func openKept(a enquiryKeptArgs) (keptEnquiry, error) {
	list, err := quotes.Open([]byte(a.Text))
	if err != nil {
		return keptEnquiry{}, refusedKept(err)
	}
	if len(list) != 1 {
		return keptEnquiry{}, errors.New("bridge: not one enquiry")
	}
	r := &list[0]
	return keptEnquiry{r.ID, r.Of, r.Time, r.Letterhead, r.Units, r.Text, r.Columns, r.Decided, r.Edits}, nil
}

type enquiryNextArgs struct {
	quotes.Letterhead
	Copy bool `json:"copy"` // for another enquiry; else the next revision of the same
}

// nextEnquiry is the head of what follows upon an enquiry.
func nextEnquiry(a enquiryNextArgs) (quotes.Letterhead, error) {
	if a.Copy {
		return quotes.Letterhead{Customer: a.Customer, State: quotes.Asked}, nil
	}
	h := a.Letterhead
	h.State, h.Revision = quotes.Asked, quotes.NextRevision(h.Revision)
	return h, nil
}

type enquiryListArgs struct {
	Heads []quotes.Summary `json:"heads"`
	Find  string           `json:"find"`
	Units units.System     `json:"units"`
}

// enquiryList is the enquiries that are found, in their order.
type enquiryList struct {
	Rows []report.ShownListed `json:"rows"`
	Said string               `json:"said"`
}

func listEnquiries(a enquiryListArgs) (enquiryList, error) {
	search := quotes.SearchFor(texts().Numbers.Typed(a.Find), a.Units)
	var found []quotes.Summary
	for i := range a.Heads {
		if search.Finds(&a.Heads[i]) {
			found = append(found, a.Heads[i])
		}
	}
	w := writerIn(a.Units)
	out := enquiryList{Rows: w.Listed(quotes.Latest(found))}
	switch {
	case len(a.Heads) == 0:
		out.Said = w.Texts.Text("quoted.none")
	case len(found) < len(a.Heads):
		out.Said = w.Texts.Render(message.New("quoted.some", "shown", len(found), "all", len(a.Heads)), a.Units)
	}
	return out, nil
}

type enquiryCompareArgs struct {
	Before string       `json:"before"`
	After  string       `json:"after"`
	Units  units.System `json:"units"`
}

func compareEnquiries(a enquiryCompareArgs) (report.ShownComparison, error) {
	var list []quotes.Record
	for _, text := range []string{a.Before, a.After} {
		one, err := quotes.Open([]byte(text))
		if err != nil {
			return report.ShownComparison{}, refusedKept(err)
		}
		if len(one) != 1 {
			return report.ShownComparison{}, errors.New("bridge: not one enquiry")
		}
		list = append(list, one[0])
	}
	return writerIn(a.Units).Revisions(&list[0], &list[1]), nil
}

// enquiryBeforeArgs is an item, the first of the items, and the enquiries that are kept.
type enquiryBeforeArgs struct {
	Now  enquiryKeepArgs `json:"now"`
	Kept []string        `json:"kept"`
}

// quotedBefore says what was quoted before for the tube of an item. What is kept and cannot be read is left out.
func quotedBefore(a enquiryBeforeArgs) (report.ShownQuotes, error) {
	now, err := a.Now.quotes()
	if err != nil {
		return report.ShownQuotes{}, err
	}
	if len(now.Quotes) != 1 {
		return report.ShownQuotes{}, errors.New("bridge: not one item")
	}
	r := quotes.Record{ID: a.Now.ID, Of: a.Now.Of, Time: a.Now.Time, Letterhead: a.Now.Letterhead, Units: a.Now.Units, Quoted: now}
	return writerIn(a.Now.Units).Before(recordsOf(a.Kept), &r), nil
}

// recordsOf reads enquiries that are kept, as far as they can be read.
func recordsOf(kept []string) (out []*quotes.Record) {
	for _, text := range kept {
		list, err := quotes.Open([]byte(text))
		if err != nil {
			continue
		}
		for i := range list {
			out = append(out, &list[i])
		}
	}
	return out
}

type enquiryExportArgs struct {
	Kept []string `json:"kept"`
}

// exportEnquiries is all that is kept in one text. What cannot be read is not lost by that: it stays where it is kept.
func exportEnquiries(a enquiryExportArgs) (saved, error) {
	list := []quotes.Record{}
	for _, r := range recordsOf(a.Kept) {
		list = append(list, *r)
	}
	text, err := quotes.Save(list)
	return saved{string(text) + "\n"}, err
}

type enquiryImportArgs struct {
	Text  string       `json:"text"`
	Kept  []string     `json:"kept"`
	Units units.System `json:"units"`
}

// enquiryImport is what is to be kept besides.
type enquiryImport struct {
	Added []keptText `json:"added"`
	Said  string     `json:"said"`
}

func importEnquiries(a enquiryImportArgs) (enquiryImport, error) {
	come, err := quotes.Open([]byte(a.Text))
	if err != nil {
		return enquiryImport{}, refusedKept(err)
	}
	var kept []quotes.Record
	for _, r := range recordsOf(a.Kept) {
		kept = append(kept, *r)
	}
	m := quotes.Merge(kept, come)
	w := writerIn(a.Units)
	out := enquiryImport{Added: []keptText{}, Said: w.Came(&m)}
	for _, r := range m.Added {
		text, summary, err := written(r)
		if err != nil {
			return out, err
		}
		out.Added = append(out.Added, keptText{Text: text, Summary: summary})
	}
	return out, nil
}
