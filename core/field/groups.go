package field

// FormGroup is some fields under one title of the form, "group.<id>".
type FormGroup struct {
	ID      string
	Section string // of the page that it is shown with; empty: with all
}

// Groups lists the groups of fields in the order of the form.
var Groups = []FormGroup{
	{"job", ""},
	{"tube", ""},
	{"fin", ""},
	{"lengths", ""},
	{"film", ""},
	{"air", "heat"},
	{"fan", "heat"},
	{"bank", "heat"},
	{"holds", "heat"},
	{"inside", "heat"},
	{"cases", "heat"},
	{"making", "making"},
}
