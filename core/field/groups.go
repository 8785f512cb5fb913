package field

// FormGroup is some fields under one title of the form, "group.<id>". It can be folded: what is rarely changed is, until somebody opens it.
type FormGroup struct {
	ID      string
	Section string   // of the page that it is shown with; empty: with all
	Open    []string // the sections in which it is not folded
}

// Groups lists the groups of fields in the order of the form.
var Groups = []FormGroup{
	{ID: "job", Open: []string{"making", "enquiry", "papers"}},
	{ID: "tube", Open: []string{"surface", "heat", "making", "options", "enquiry", "papers"}},
	{ID: "fin", Open: []string{"surface", "heat", "making", "options", "enquiry", "papers"}},
	{ID: "fin_detail"},
	{ID: "lengths", Open: []string{"surface", "making", "enquiry"}},
	{ID: "film", Open: []string{"surface"}},
	{ID: "air", Section: "heat", Open: []string{"heat"}},
	{ID: "gas", Section: "heat"},
	{ID: "air_detail", Section: "heat"},
	{ID: "fan", Section: "heat"},
	{ID: "bank", Section: "heat", Open: []string{"heat"}},
	{ID: "bank_detail", Section: "heat"},
	{ID: "holds", Section: "heat"},
	{ID: "inside", Section: "heat", Open: []string{"heat"}},
	{ID: "stream", Section: "heat"},
	{ID: "inside_detail", Section: "heat"},
	{ID: "cases", Section: "heat"},
	{ID: "making", Section: "making", Open: []string{"making"}},
	{ID: "tolerances", Section: "making"},
	{ID: "asked", Section: "making"},
}

// OfHeat reports whether a field says something of the bank and its streams.
func (f *Field) OfHeat() bool {
	for i := range Groups {
		if Groups[i].ID == f.Group {
			return Groups[i].Section == "heat"
		}
	}
	return false
}
