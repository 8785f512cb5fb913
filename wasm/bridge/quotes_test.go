package bridge

import (
	"slices"
	"strings"
	"testing"

	"finwright/core/report"
)

// keepOf is what the page asks to have an enquiry kept: all its items, at the prices that they are rated at.
func keepOf(t *testing.T, id, text, state string) map[string]any {
	t.Helper()
	var e report.ShownEnquiry
	if why := ask(t, "enquiry_read", enquiryArgs{Text: text, Units: "si"}, &e); why != "" {
		t.Fatal(why)
	}
	var all []int
	for i := range e.Items {
		all = append(all, i)
	}
	rows := rowsOf(&e, all...)
	var rated enquiryRows
	if why := ask(t, "enquiry_rows", rows, &rated); why != "" {
		t.Fatal(why)
	}
	var items []map[string]any
	for i := range e.Items {
		items = append(items, map[string]any{"mark": e.Items[i].Mark, "design": i, "tubes": rated.Tallies[i].Tubes, "price": rated.Rows[i].Price})
	}
	return map[string]any{
		"id": id, "of": "family", "time": "2026-11-02T10:00:00Z", "customer": "Northmoor", "reference": "N-1", "revision": id, "due": "", "state": state,
		"units": "si", "text": text, "base": rows.Base, "entries": rows.Entries, "designs": rows.Designs, "items": items, "day": "2026-11-02",
	}
}

func kept(t *testing.T, args map[string]any) (out keptText) {
	t.Helper()
	if why := ask(t, "enquiry_keep", args, &out); why != "" {
		t.Fatal(why)
	}
	return out
}

const sheetOfThree = sheetOfTwo + "C\t60\t31.75\t2.77\tSA-179\t7000\tG\tAl\t15.8\t11\n"

func TestEnquiriesAreKept(t *testing.T) {
	args := keepOf(t, "a", sheetOfTwo, "offered")
	first := kept(t, args)
	if first.Same || first.Summary.Items != 2 || first.Summary.Price <= 0 || first.Summary.Currency != "EUR" || first.Told != "" {
		t.Errorf("a list is told %+v", first.Summary)
	}

	// What did not change is not written again, on whatever day; what was offered stays as it was offered.
	args["was"], args["time"], args["day"] = first.Text, "2026-12-02T10:00:00Z", "2026-12-02"
	if again := kept(t, args); !again.Same || again.Text != first.Text {
		t.Errorf("kept again it is %s", again.Text)
	}
	items := args["items"].([]map[string]any)
	price := items[0]["price"]
	items[0]["price"] = 1.0
	stays := kept(t, args)
	if stays.Told == "" || stays.Summary.Price != first.Summary.Price || stays.Summary.Day != "2026-11-02" {
		t.Errorf("an offer at another price is kept as %+v, and it is told %q", stays.Summary, stays.Told)
	}
	args["state"] = "priced"
	if now := kept(t, args); now.Summary.Price >= first.Summary.Price || now.Summary.Day != "2026-12-02" || now.Told != "" {
		t.Errorf("what is not offered any more is kept as %+v", now.Summary)
	}
	items[0]["price"] = price

	var opened keptEnquiry
	if why := ask(t, "enquiry_kept", map[string]any{"text": first.Text}, &opened); why != "" || opened.Text != sheetOfTwo || opened.Customer != "Northmoor" || opened.State != "offered" {
		t.Errorf("opened it is %+v, %s", opened, why)
	}
	if why := ask(t, "enquiry_kept", map[string]any{"text": `{"format":"finwright-design"}`}, &opened); !strings.Contains(why, "design") {
		t.Errorf("a design is refused by %q", why)
	}
	var next struct{ Revision, State, Reference, Customer string }
	if why := ask(t, "enquiry_next", map[string]any{"customer": "N", "reference": "R", "revision": "A", "due": "", "state": "won", "copy": false}, &next); why != "" || next.Revision != "B" || next.State != "asked" || next.Reference != "R" {
		t.Errorf("the next revision is %+v, %s", next, why)
	}

	later := kept(t, keepOf(t, "b", strings.Replace(sheetOfThree, "A\t40", "A\t50", 1), "asked"))
	var c report.ShownComparison
	if why := ask(t, "enquiry_compare", map[string]any{"before": first.Text, "after": later.Text, "units": "si"}, &c); why != "" {
		t.Fatal(why)
	}
	if !strings.HasPrefix(c.Said, "1 item says something else, 1 is new, 0 are gone; of 0 only the price is another") || len(c.Rows) != 3 {
		t.Errorf("compared it is said %s %+v", c.Said, c.Rows)
	}
	if r := c.Rows[0]; r.Item != "A" || r.Before != "40" || r.After != "50" || r.Quantity != "+10" || !strings.HasPrefix(r.Price, "+") || !strings.HasSuffix(r.Price, " EUR") {
		t.Errorf("of another quantity it is said %+v", r)
	}
	if r := c.Rows[2]; r.Kind != "total" || !strings.HasPrefix(r.Before, "100 tubes, ") || r.Quantity != "+70" || !strings.HasPrefix(r.Price, "+") {
		t.Errorf("of all it is said %+v", r)
	}

	// The first tube of another customer, in other units.
	now := keepOf(t, "c", "1) 500 off 1 in OD x 2.11 mm avg wall SA-179 x 6 m, L fins Al 15.8 mm x 10 fpi", "asked")
	delete(now, "time")
	now["time"] = ""
	var q report.ShownQuotes
	if why := ask(t, "enquiry_before", map[string]any{"now": now, "kept": []string{first.Text, "{", later.Text}}, &q); why != "" {
		t.Fatal(why)
	}
	var kinds []string
	for _, r := range q.Rows {
		kinds = append(kinds, r.Kind)
	}
	if !slices.Equal(kinds, []string{"now", "same", "same"}) || q.Rows[1].Each == "" || q.Rows[1].Day != "2026-11-02" || q.Rows[0].Quantity != "500" {
		t.Errorf("of earlier quotes it is said %+v", q)
	}

	var file saved
	if why := ask(t, "enquiry_export", map[string]any{"kept": []string{first.Text, later.Text}}, &file); why != "" {
		t.Fatal(why)
	}
	var came enquiryImport
	if why := ask(t, "enquiry_import", map[string]any{"text": file.Text, "kept": []string{later.Text}, "units": "si"}, &came); why != "" || len(came.Added) != 1 || came.Added[0].Text != first.Text {
		t.Errorf("from the file comes %+v, %s", came, why)
	}
	if why := ask(t, "enquiry_import", map[string]any{"text": file.Text[:len(file.Text)/2], "kept": []string{}, "units": "si"}, &came); !strings.Contains(why, "Nothing that is kept here was changed") {
		t.Errorf("half a file is refused by %q", why)
	}
	var list enquiryList
	if why := ask(t, "enquiry_list", map[string]any{"heads": []any{first.Summary, later.Summary}, "find": "northmoor 1.25 in", "units": "si"}, &list); why != "" || len(list.Rows) != 2 || list.Rows[0].Price == "" {
		t.Errorf("found are %+v, %s", list, why)
	}
}
