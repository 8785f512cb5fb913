package quotes

import (
	"encoding/json"
	"hash/fnv"
	"slices"
	"strconv"
	"strings"

	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/strict"
	"finwright/core/units"
)

// Format marks, with the version, what is kept of enquiries: in the browser one, in a file as many as there are.
const (
	Format  = "finwright-enquiries"
	Version = 1
)

// Limits on what a file holds, against floods.
const (
	mostRecords = 20_000
	mostText    = 20_000_000 // bytes of what a customer sent
	mostEntry   = 400        // bytes of what is typed
	mostLines   = 400_000    // decisions, edits
	mostID      = 32         // bytes
	mostBare    = 200
)

// envelope is what a text holds.
type envelope struct {
	Format    string   `json:"format"`
	Version   int      `json:"version"`
	Fields    int      `json:"fields"` // the version of the designs whose entries are named
	Enquiries []Record `json:"enquiries"`
}

// OpenError says why a text is not taken.
type OpenError struct{ message.Message }

func (e *OpenError) Error() string { return "quotes: " + e.Key }

func refuse(key string, pairs ...any) error { return &OpenError{message.New(key, pairs...)} }

// damaged says what is wrong with a file that is of enquiries otherwise: "quoted.what.<id>".
func damaged(id string) error {
	return refuse("quoted.shape", "what", message.Key("quoted.what."+id))
}

// Save writes records.
func Save(list []Record) ([]byte, error) {
	return json.Marshal(envelope{Format, Version, field.Version, list})
}

// rawFile is an envelope of any version.
type rawFile struct {
	Format    string          `json:"format"`
	Version   int             `json:"version"`
	Fields    int             `json:"fields"`
	Enquiries json.RawMessage `json:"enquiries"`
}

// Open reads records. What is not known is an error and not a guess.
func Open(text []byte) ([]Record, error) {
	var raw rawFile
	err := strict.Unmarshal(text, &raw)
	switch {
	case err != nil:
		return nil, refuse("quoted.not_json")
	case raw.Format == document.Format || raw.Format == shop.Format:
		return nil, refuse("quoted.is_other")
	case raw.Format != Format || raw.Version < 1 || raw.Fields < 1:
		return nil, refuse("quoted.not_enquiries")
	case raw.Version > Version || raw.Fields > field.Version:
		return nil, refuse("quoted.newer")
	case strict.Count(raw.Enquiries) > mostRecords:
		return nil, refuse("quoted.count", "most", mostRecords)
	}
	var list []Record
	if strict.Decode(raw.Enquiries, &list) != nil {
		return nil, damaged("built")
	}
	seen := map[string]bool{}
	for i := range list {
		r := &list[i]
		if seen[r.ID] {
			return nil, damaged("names")
		}
		seen[r.ID] = true
		if err := r.Check(); err != nil {
			return nil, err
		}
		r.even()
	}
	return list, nil
}

// even puts lists where there are none, so that what is written and read again is the same.
func (r *Record) even() {
	if r.Base == nil {
		r.Base = map[string]string{}
	}
	if r.Quotes == nil {
		r.Quotes = []Quote{}
	}
	for i := range r.Quotes {
		if r.Quotes[i].Entries == nil {
			r.Quotes[i].Entries = map[string]string{}
		}
	}
}

// Check reports whether all that a record holds is known, and nothing outsized.
func (r *Record) Check() error {
	if !isID(r.ID) || !isID(r.Of) {
		return damaged("names")
	}
	for _, day := range []string{r.Due, r.Day} {
		if _, ok := shop.ParseDay(day); day != "" && !ok {
			return damaged("day")
		}
	}
	long := false
	for _, text := range []string{r.Customer, r.Reference, r.Revision, r.Time, r.Shop, r.Currency} {
		long = long || len(text) > mostEntry
	}
	switch {
	case long || len(r.Text) > mostText:
		return damaged("long")
	case !slices.Contains(States, r.State) || r.Units != units.SI && r.Units != units.US:
		return damaged("state")
	case len(r.Columns) > enquiry.MostColumns || len(r.Decided) > mostLines || len(r.Edits) > mostLines || len(r.Quotes) > enquiry.MostRows:
		return damaged("long")
	}
	if err := checkEntries(r.Base); err != nil {
		return err
	}
	for i := range r.Quotes {
		if err := r.Quotes[i].check(); err != nil {
			return err
		}
	}
	return nil
}

func (q *Quote) check() error {
	if len(q.Mark) > mostText || len(q.Bare) > mostBare || q.Tubes < 0 || q.Price != nil && *q.Price < 0 {
		return damaged("built")
	}
	for _, b := range q.Bare {
		if len(b.Centre) > mostEntry || len(b.Width) > mostEntry {
			return damaged("long")
		}
	}
	return checkEntries(q.Entries)
}

// checkEntries: an entry bears what a design's does.
func checkEntries(list map[string]string) error {
	for id, text := range list {
		if _, ok := field.Find(id); !ok {
			return damaged("built")
		}
		if len(text) > 5*mostEntry {
			return damaged("long")
		}
	}
	return nil
}

// isID: letters, digits and dashes, since a record is found by it in the browser's store.
func isID(id string) bool {
	const known = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ-"
	return id != "" && len(id) <= mostID && strings.Trim(id, known) == ""
}

// Merged is what comes of records that are brought to those that are kept.
type Merged struct {
	Added []Record // that are to be kept besides, those kept both among them
	Equal int      // that are there already
	Both  int      // that were there otherwise: both are kept
}

// Merge says what is to be kept of records that come from elsewhere. Nothing that is kept is written over: one that says something else
// under the name of one that is kept gets a name of its own, which is the same when it comes again.
func Merge(kept, come []Record) Merged {
	texts := map[string]string{}
	for i := range kept {
		texts[kept[i].ID] = kept[i].says()
	}
	var out Merged
	for _, r := range come {
		was, there := texts[r.ID]
		clash := there
		for there && was != r.says() {
			r.ID = r.apart()
			was, there = texts[r.ID]
		}
		switch {
		case there:
			out.Equal++
			continue
		case clash:
			out.Both++
		}
		texts[r.ID] = r.says()
		out.Added = append(out.Added, r)
	}
	return out
}

// says is all that a record holds, as text; its name aside, by which it is found.
func (r Record) says() string {
	r.ID = ""
	r.even()
	text, err := json.Marshal(r)
	if err != nil {
		return "" // no number of a record that was read is without an end
	}
	return string(text)
}

// apart is a name for a record that cannot have its own.
func (r *Record) apart() string {
	h := fnv.New64a()
	_, _ = h.Write([]byte(r.ID + "\x00" + r.says())) // a hash takes all
	return strconv.FormatUint(h.Sum64(), 16)
}

// NextRevision is what the revision after one is called: 1 after none, 3 after 2, C after B.
func NextRevision(text string) string {
	text = strings.TrimSpace(text)
	front := strings.TrimRight(text, "0123456789")
	if n, err := strconv.Atoi(text[len(front):]); err == nil && n < 1e9 {
		return front + strconv.Itoa(n+1)
	}
	if text == "" {
		return "1"
	}
	alone := len(text) == 1 || text[len(text)-2] == ' '
	if last := text[len(text)-1]; alone && (last >= 'A' && last < 'Z' || last >= 'a' && last < 'z') {
		return text[:len(text)-1] + string(last+1)
	}
	return text + " 2"
}
