package bridge

import (
	"errors"
	"fmt"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/testdata/cases"
)

// opened is a job and the answer for its item in hand, which alone is whole.
type opened struct {
	reply
	Job  document.Job `json:"job"`
	Item string       `json:"item"`
}

type startArgs struct {
	Saved   string             `json:"saved"`   // the browser's own copy, an envelope, or empty
	Pending []document.Command `json:"pending"` // what was entered since and not answered
	Sheet   *drawingArea       `json:"sheet"`
	wanted
}

type started struct {
	opened
	Notice string `json:"notice"` // what could not be read, if anything
}

// start opens the saved design, else the first example.
func start(a startArgs) (started, error) {
	f, err := document.OpenFile([]byte(a.Saved))
	out := started{}
	if err != nil {
		f = document.File{Job: document.JobOf([]document.Document{cases.First()})}
	}
	if err != nil && a.Saved != "" {
		a.Pending = nil // they were meant for the saved one
		out.Notice = said(err)
	}
	out.opened, err = showFile(f, a.Pending, a.Sheet, a.wanted)
	return out, err
}

// showFile shows the item in hand of a file, changed by the commands that its page was still waiting with.
func showFile(f document.File, pending []document.Command, area *drawingArea, want wanted) (opened, error) {
	d := f.Job.Design(f.Hand)
	for _, c := range pending {
		var err error
		if d, err = entered(d, c); err != nil {
			return opened{}, err
		}
	}
	r, err := show(d, area, want)
	return opened{r, f.Job, f.Job.Items[f.Hand].ID}, err
}

// cut names a link's own trouble: what does not even read as a file was damaged on the way.
func cut(err error) error {
	var oe *document.OpenError
	if errors.As(err, &oe) && oe.Key == "open.not_json" {
		return &document.OpenError{Message: message.New("open.bad_link")}
	}
	return err
}

func said(err error) string {
	var oe *document.OpenError
	if errors.As(err, &oe) {
		return texts().Render(oe.Message, "si")
	}
	return texts().Render(message.New("error.fault", "detail", err.Error()), "si")
}

type saveArgs struct {
	Job document.Job `json:"job"`
}

type saved struct {
	Text string `json:"text"`
}

func save(a saveArgs) (saved, error) {
	if err := document.CheckJob(a.Job); err != nil {
		return saved{}, err
	}
	text, err := document.SaveJob(a.Job)
	if err != nil {
		return saved{}, err
	}
	return saved{string(text) + "\n"}, nil
}

type filenameArgs struct {
	Kind string `json:"kind"` // "design", "shop" or "page"
	Name string `json:"name"`
	Date string `json:"date"` // the page's day, as 2026-11-27
}

type named struct {
	Filename string `json:"filename"`
}

// filename names what is saved as a file.
func filename(a filenameArgs) (named, error) {
	other := "file." + a.Kind
	if !texts().Has(other) {
		return named{}, fmt.Errorf("bridge: files of %q", a.Kind)
	}
	ending := "." + a.Kind + ".json"
	if a.Kind == "page" {
		ending = ".html"
	}
	name, ok := document.FileName(a.Name, texts().Text(other), a.Date, ending)
	if !ok {
		return named{}, fmt.Errorf("bridge: date %q", a.Date)
	}
	return named{name}, nil
}

type openArgs struct {
	Text    string             `json:"text"`
	Pending []document.Command `json:"pending,omitempty"`
	Link    bool               `json:"link,omitempty"` // the text came by a link
	Sheet   *drawingArea       `json:"sheet"`
	wanted
}

func open(a openArgs) (opened, error) {
	f, err := document.OpenFile([]byte(a.Text))
	if a.Link {
		err = cut(err)
	}
	var oe *document.OpenError
	if errors.As(err, &oe) {
		return opened{}, told{Message: oe.Message}
	}
	if err != nil {
		return opened{}, err
	}
	return showFile(f, a.Pending, a.Sheet, a.wanted)
}

type exampleArgs struct {
	ID    string       `json:"id"`
	Sheet *drawingArea `json:"sheet"`
	wanted
}

func example(a exampleArgs) (reply, error) {
	d, ok := cases.Find(a.ID)
	if !ok {
		return reply{}, told{Message: message.New("error.no_example", "id", a.ID)}
	}
	return show(d, a.Sheet, a.wanted)
}
