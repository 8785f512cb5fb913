package quotes

import (
	"errors"
	"reflect"
	"slices"
	"strings"
	"testing"

	"finwright/core/document"
	"finwright/core/enquiry"
	"finwright/core/field"
	"finwright/core/proof"
	"finwright/core/units"
)

// price of a quote.
func price(x float64) *float64 { return &x }

// record is an enquiry of items, each of its mark and entries as "field=text".
func record(id, day string, state State, items ...[]string) Record {
	r := Record{
		ID: id, Of: id, Time: day + "T10:00:00Z", Letterhead: Letterhead{Customer: "Northmoor Coolers", Reference: "NC-" + id, State: state}, Units: units.SI, Text: "Item\tQty\n",
		Quoted: Quoted{Day: day, Shop: "Works A", Currency: "EUR", Base: BaseOf(document.New()), Quotes: []Quote{}},
	}
	for i, list := range items {
		q := Quote{Mark: list[0], Entries: map[string]string{}, Tubes: 10, Price: price(float64(100 * (i + 1)))}
		for _, entry := range list[1:] {
			name, text, _ := strings.Cut(entry, "=")
			q.Entries[name] = text
		}
		r.Quotes = append(r.Quotes, q)
	}
	return r
}

// whole is a record that says something in each of its members.
func whole() Record {
	r := record("a1", "2026-11-02", Won, []string{"A", "tube_od=25.4 mm", "quantity=10"}, []string{"B", "tube_od=1 1/4 in"})
	r.Letterhead = Letterhead{"Northmoor Coolers", "NC-7", "B", "2026-11-20", Won}
	r.Columns = []enquiry.HeadColumn{{Head: "Qty", Column: enquiry.Column{Field: "quantity", Unit: "off", Side: "tube", Basis: "minimum"}, Examples: []string{"10"}, Guessed: true, Skipped: true}}
	r.Decided = []enquiry.Decision{{Items: []int{0, 1}, Field: "tube_wall", Kind: "gauge", Second: true, Text: "2.03 mm"}}
	r.Edits = []enquiry.Edit{{Item: 1, Field: "quantity", Text: "12"}}
	r.Quotes[0].Bare = []Bare{{"3 m", "60 mm"}}
	r.Quotes[1].Provisional, r.Quotes[1].Price = true, nil
	return r
}

func TestRoundTrip(t *testing.T) {
	want := []Record{whole(), record("b2", "2026-11-03", Asked)}
	// Every member says something, so that none can be lost unnoticed.
	for _, part := range []any{want[0], want[0].Letterhead, want[0].Quoted, want[0].Columns[0], want[0].Decided[0], want[0].Edits[0]} {
		v := reflect.ValueOf(part)
		for i := range v.NumField() {
			if v.Field(i).IsZero() {
				t.Errorf("%T: %s says nothing", part, v.Type().Field(i).Name)
			}
		}
	}
	text, err := Save(want)
	if err != nil {
		t.Fatal(err)
	}
	got, err := Open(text)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("%+v\nwant %+v", got, want)
	}
	again, err := Save(got)
	if err != nil || string(again) != string(text) {
		t.Errorf("written again it is %s", again)
	}
}

func TestRefuses(t *testing.T) {
	good, err := Save([]Record{whole()})
	if err != nil {
		t.Fatal(err)
	}
	swap := func(old, with string) string {
		if strings.Count(string(good), old) == 0 {
			t.Fatalf("there is no %s", old)
		}
		return strings.Replace(string(good), old, with, 1)
	}
	for text, key := range map[string]string{
		"":                             "quoted.not_json",
		"Item\tQty":                    "quoted.not_json",
		string(good[:len(good)/2]):     "quoted.not_json",
		strings.Repeat("[", 1_000_000): "quoted.not_json",
		"{}":                           "quoted.not_enquiries",
		`{"format":"finwright-design","version":6}`: "quoted.is_other",
		swap(`"version":1`, `"version":2`):          "quoted.newer",
		swap(`"fields":6`, `"fields":7`):            "quoted.newer",
		`{"format":"finwright-enquiries","version":1,"fields":6,"enquiries":[` + strings.Repeat("{},", 20_001) + "{}]}": "quoted.count",
		swap(`"customer"`, `"costumer"`):                    "quoted.shape",
		swap(`"state":"won"`, `"state":"best"`):             "quoted.shape",
		swap(`"id":"a1"`, `"id":"../a"`):                    "quoted.shape",
		swap(`"day":"2026-11-02"`, `"day":"2026-13-02"`):    "quoted.shape",
		swap(`"tube_od":"25.4 mm"`, `"tube_odd":"25.4 mm"`): "quoted.shape",
		swap(`"price":100`, `"price":-1`):                   "quoted.shape",
		swap(`"price":100`, `"price":1e999`):                "quoted.shape",
		swap(`Northmoor Coolers`, strings.Repeat("x", 500)): "quoted.shape",
	} {
		_, err := Open([]byte(text))
		var why *OpenError
		if !errors.As(err, &why) || why.Key != key {
			t.Errorf("%.60q is refused by %v, want %s", text, err, key)
		}
	}
}

// The same item in other units is no change; a number that shifts with one that came is none either.
func TestCompare(t *testing.T) {
	before := record("a", "2026-11-02", Offered, []string{"1", "tube_od=25.4 mm", "quantity=10"}, []string{"2", "tube_od=31.75 mm", "quantity=20"}, []string{"3", "tube_od=38.1 mm"})
	after := record("b", "2026-11-09", Priced, []string{"1", "tube_od=50.8 mm"}, []string{"2", "tube_od=1 in", "quantity=10"}, []string{"3", "tube_od=1 1/4 in", "quantity=25", "inside_in=120 °C"})
	after.Quotes[1].Price, after.Quotes[2].Price = price(100), price(210)
	changes := Compare(&before, &after)
	if len(changes) != 4 {
		t.Fatalf("%d changes: %+v", len(changes), changes)
	}
	if c := changes[0]; c.Before != nil || c.After != &after.Quotes[0] {
		t.Errorf("what came first is %+v", c)
	}
	if c := changes[1]; c.Before != &before.Quotes[0] || !slices.Equal(c.Cells, []Difference{{"mark", "1", "2"}}) {
		t.Errorf("of what shifted it is said %+v", c.Cells)
	}
	if c := changes[2]; c.Before != &before.Quotes[1] || !slices.Equal(c.Cells, []Difference{{"mark", "2", "3"}, {"quantity", "20", "25"}, {"inside_in", field.Fields[slices.IndexFunc(field.Fields, func(f field.Field) bool { return f.ID == "inside_in" })].House, "120 °C"}}) {
		t.Errorf("of what changed it is said %+v", c.Cells)
	}
	if c := changes[3]; c.After != nil || c.Before != &before.Quotes[2] {
		t.Errorf("what went is %+v", c)
	}
	if same := Compare(&before, &before); len(same) != 0 {
		t.Errorf("a revision differs from itself: %+v", same)
	}
	// The customer's own names count before what they are names of.
	named := record("c", "2026-11-02", Offered, []string{"A", "tube_od=25.4 mm"}, []string{"B", "tube_od=31.75 mm"})
	other := record("d", "2026-11-02", Offered, []string{"B", "tube_od=25.4 mm"}, []string{"A", "tube_od=31.75 mm"})
	changes = Compare(&named, &other)
	if len(changes) != 2 || changes[0].Before != &named.Quotes[1] || !slices.Equal(changes[0].Cells, []Difference{{"tube_od", "31.75 mm", "25.4 mm"}}) {
		t.Errorf("of names that stay it is said %+v", changes)
	}
	dearer := record("e", "2026-11-09", Offered, []string{"1", "tube_od=25.4 mm", "quantity=10"})
	alone := record("f", "2026-11-02", Offered, []string{"1", "tube_od=1 in", "quantity=10"})
	dearer.Quotes[0].Price = price(120)
	if changes = Compare(&alone, &dearer); len(changes) != 1 || !changes[0].Repriced() {
		t.Errorf("of another price alone it is said %+v", changes)
	}
}

func TestBefore(t *testing.T) {
	now := record("now", "2026-11-20", Asked, []string{"7", "tube_od=1 in", "tube_wall=14 BWG", "fin_pitch=10 fpi", "quantity=500", "tube_length=20 ft"})
	list := []Record{
		record("old", "2025-03-01", Won, []string{"A", "tube_od=25.4 mm", "tube_wall=2.11 mm", "fin_pitch=394 /m", "tube_length=6096 mm"}),
		record("late", "2026-02-01", Lost, []string{"A", "tube_od=25.4 mm", "tube_wall=2.108 mm", "fin_pitch=393.7 /m", "tube_length=6.096 m", "duty_wanted=1 MW"}),
		record("near", "2026-10-01", Won, []string{"A", "tube_od=25.4 mm", "tube_length=6.1 m"}, []string{"B", "fin_height=1/2 in", "tube_length=20 ft", "tube_od=1 in"}),
		record("far", "2026-10-02", Won, []string{"A", "tube_od=31.75 mm", "tube_length=20 ft"}, []string{"B", "fin_type=embedded", "fin_height=1/2 in", "tube_length=20 ft"}),
		record("unpriced", "2026-10-03", Asked, []string{"A", "tube_od=1 in", "tube_length=20 ft"}),
	}
	list[4].Quotes[0].Price = nil
	records := make([]*Record, 0, len(list)+1)
	for i := range list {
		records = append(records, &list[i])
	}
	same, near := Before(append(records, &now), &now)
	var got []string
	for _, f := range slices.Concat(same, near) {
		text := f.Record.ID + " " + f.Quote.Mark
		for _, d := range f.Differs {
			text += " " + d.Field + " " + d.Before + "|" + d.After
		}
		got = append(got, text)
	}
	want := []string{"late A", "old A", "near A tube_length 6.1 m|20 ft", "near B fin_height 1/2 in|5/8 in"}
	if !slices.Equal(got, want) {
		t.Errorf("found before are %q, want %q", got, want)
	}
	bare := whole()
	bare.ID = "other"
	bare.Quotes = bare.Quotes[:1]
	straight := whole()
	straight.Quotes = straight.Quotes[:1]
	straight.Quotes[0].Bare = nil
	if same, near = Before([]*Record{&bare}, &straight); len(same) != 0 || len(near) != 1 || near[0].Differs[0].Field != "" {
		t.Errorf("a tube that is bare at a support is found as %v %v", same, near)
	}
}

// Every field says either what the tube is, or what is done with it: a new group is placed.
func TestWhatSaysTheTube(t *testing.T) {
	others := []string{"job", "film", "air", "gas", "air_detail", "fan", "bank", "bank_detail", "holds", "inside", "stream", "inside_detail", "cases", "making", "tolerances", "asked"}
	for _, g := range field.Groups {
		if slices.Contains(ofTube, g.ID) == slices.Contains(others, g.ID) {
			t.Errorf("is %s of the tube?", g.ID)
		}
	}
}

func TestMerge(t *testing.T) {
	kept := []Record{record("a", "2026-11-02", Offered, []string{"1"}), record("b", "2026-11-02", Asked)}
	won := record("a", "2026-11-02", Won, []string{"1"})
	fresh := record("c", "2026-11-03", Lost)
	come := []Record{kept[1], won, fresh}
	m := Merge(kept, come)
	if m.Equal != 1 || m.Both != 1 || len(m.Added) != 2 || m.Added[0].ID == "a" || m.Added[0].State != Won || m.Added[0].Of != "a" || m.Added[1].ID != "c" {
		t.Fatalf("brought together it is %+v", m)
	}
	all := append(slices.Clone(kept), m.Added...)
	if again := Merge(all, come); again.Equal != 3 || len(again.Added) != 0 {
		t.Errorf("brought again it adds %+v", again.Added)
	}
	all[2].Customer = "Another" // the one that was kept besides has been worked on
	if again := Merge(all, come); len(again.Added) != 1 || again.Both != 1 || slices.ContainsFunc(all, func(r Record) bool { return r.ID == again.Added[0].ID }) {
		t.Errorf("beside what was worked on it adds %+v", again)
	}
	for _, r := range m.Added {
		if err := r.Check(); err != nil {
			t.Error(err)
		}
	}
}

func TestSearch(t *testing.T) {
	r := record("a", "2026-11-02", Offered, []string{"HX-12", "tube_od=1 in", "fin_height=15.9 mm", "fin_pitch=10 fpi", "tube_wall=14 BWG"})
	r.Text = "Item\tQty\tMaterial\nHX-12\t450\tSA-179 seamless\n"
	l := r.Summary()
	for text, want := range map[string]bool{
		"": true, "northmoor": true, "NC-a": true, "hx-12 sa-179": true, "SEAMLESS moor": true, "25.4 mm": true, "25.4mm": true, "1 in northmoor": true, "northmoor 5/8 in": false, "15.9 mm 10 fpi": true, "394 /m": true, "14 BWG": true, "2.11 mm": true,
		"copper": false, "26 mm": false, "11 fpi": false, "northmoor 2 in": false, "25.4": true, "25.9": false,
	} {
		if got := SearchFor(text, units.SI).Finds(&l); got != want {
			t.Errorf("%q is found: %v", text, got)
		}
	}
}

func TestSame(t *testing.T) {
	a, b := whole(), whole()
	b.Time, b.Day = "2027-01-01T10:00:00Z", "2027-01-01"
	if !a.Same(&b) {
		t.Error("another day alone is another enquiry")
	}
	b.Quotes[0].Price = price(101)
	if a.Same(&b) {
		t.Error("another price is none")
	}
	b = whole()
	b.Day = ""
	if a.Same(&b) {
		t.Error("prices are none")
	}
}

func TestNextRevision(t *testing.T) {
	for text, want := range map[string]string{"": "1", "0": "1", "2": "3", "9": "10", "A": "B", "rev b": "rev c", "R1": "R2", "Z": "Z 2", "final": "final 2"} {
		if got := NextRevision(text); got != want {
			t.Errorf("after %q comes %q, want %q", text, got, want)
		}
	}
}

func TestLatest(t *testing.T) {
	list := []Summary{{ID: "a", Of: "a", Time: "1"}, {ID: "b", Of: "b", Time: "3"}, {ID: "c", Of: "a", Time: "4"}, {ID: "d", Of: "d", Time: "2"}}
	var got []string
	for _, l := range Latest(list) {
		got = append(got, l.ID)
	}
	if !slices.Equal(got, []string{"c", "a", "b", "d"}) {
		t.Errorf("they stand as %v", got)
	}
}

// FuzzOpen: what is taken is written and read again as it was; all else is refused in words.
func FuzzOpen(f *testing.F) {
	good, err := Save([]Record{whole(), record("b2", "2026-11-03", Asked, []string{"1"})})
	if err != nil {
		f.Fatal(err)
	}
	f.Add(good)
	f.Add([]byte(`{"format":"finwright-enquiries","version":1,"fields":6,"enquiries":null}`))
	f.Add([]byte(`{"format":"finwright-enquiries","version":1,"fields":1,"enquiries":[{"id":"a","of":"a","state":"asked","units":"us"}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		list, err := Open(text)
		if err != nil {
			if why := (*OpenError)(nil); !errors.As(err, &why) {
				t.Errorf("it is refused without a word: %v", err)
			}
			return
		}
		saved, err := Save(list)
		if err != nil {
			t.Fatal(err)
		}
		again, err := Open(saved)
		if err != nil || !reflect.DeepEqual(again, list) && len(list) > 0 {
			t.Errorf("%s is read again as %+v, %v", saved, again, err)
		}
		if m := Merge(again, list); m.Equal != len(list) {
			t.Errorf("%d of %d are equal to themselves", m.Equal, len(list))
		}
		for i := range list {
			l := list[i].Summary()
			SearchFor(string(text[:min(len(text), 40)]), units.US).Finds(&l)
			Compare(&list[0], &list[i])
			Before([]*Record{&list[0]}, &list[i])
		}
	})
}

// Files that were changed by chance or on purpose are refused in words, or hold what can be written and read again.
func TestDamagedFiles(t *testing.T) {
	good, err := Save([]Record{whole(), record("b2", "2026-11-03", Asked, []string{"1", "tube_od=1 in"})})
	if err != nil {
		t.Fatal(err)
	}
	proof.Proof{Share: 400, Full: 400_000, Seed: 7}.Run(t, func(c *proof.Case) {
		list, err := Open([]byte(proof.Text(c.Rand, string(good), `{"format":"finwright-enquiries","version":1,"fields":6,"enquiries":[{"id":"a","of":"a","state":"lost","units":"us"}]}`)))
		if why := (*OpenError)(nil); err != nil && !errors.As(err, &why) {
			c.Fatalf("it is refused without a word: %v", err)
		}
		saved, err := Save(list)
		if err != nil {
			c.Fatal(err)
		}
		if again, err := Open(saved); err != nil || len(again) != len(list) || Merge(again, list).Equal != len(list) {
			c.Errorf("%s is read again as %+v, %v", saved, again, err)
		}
	})
}
