package bridge

import (
	"errors"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/testdata/cases"
)

type startArgs struct {
	Saved string `json:"saved"` // the browser's own copy, an envelope, or empty
	Link  string `json:"link"`  // the envelope that a link carries, or empty
	Sheet *sheet `json:"sheet"`
	wanted
}

type started struct {
	reply
	Saved  *document.Document `json:"saved"`  // the saved design, when a link was opened over it
	Notice string             `json:"notice"` // what could not be read, if anything
}

// start opens the link if there is one, else the saved design, else the first example.
func start(a startArgs) (any, error) {
	out := started{}
	d, err := openOne([]byte(a.Saved))
	if err != nil {
		d = cases.First()
		if a.Saved != "" {
			out.Notice = said(err)
		}
	}
	if a.Link != "" {
		if linked, err := openOne([]byte(a.Link)); err != nil {
			out.Notice = said(cut(err))
		} else {
			saved := d
			d, out.Saved = linked, &saved
		}
	}
	out.reply, err = show(d, a.Sheet, a.wanted)
	return out, err
}

// cut names a link's own trouble: what does not even read as a file was damaged on the way.
func cut(err error) error {
	var oe *document.OpenError
	if errors.As(err, &oe) && oe.Key == "open.not_json" {
		return &document.OpenError{Key: "open.bad_link"}
	}
	return err
}

func said(err error) string {
	var oe *document.OpenError
	if errors.As(err, &oe) {
		return message.English().Render(openMessage(oe), "si")
	}
	return message.English().Render(message.New("error.fault", "detail", err.Error()), "si")
}

func openMessage(e *document.OpenError) message.Message {
	return message.New(e.Key, "detail", e.Detail)
}

func openOne(text []byte) (document.Document, error) {
	designs, err := document.Open(text)
	if err != nil {
		return document.Document{}, err
	}
	return designs[0], nil
}

type saveArgs struct {
	Documents []document.Document `json:"documents"`
}

func save(a saveArgs) (any, error) {
	for _, d := range a.Documents {
		if err := document.Check(d); err != nil {
			return nil, err
		}
	}
	text, err := document.Save(a.Documents)
	if err != nil {
		return nil, err
	}
	return map[string]string{"text": string(text) + "\n", "filename": message.English().Text("file.name")}, nil
}

type openArgs struct {
	Text  string `json:"text"`
	Sheet *sheet `json:"sheet"`
	wanted
}

func open(a openArgs) (any, error) {
	d, err := openOne([]byte(a.Text))
	var oe *document.OpenError
	if errors.As(err, &oe) {
		return nil, told{Message: openMessage(oe)}
	}
	if err != nil {
		return nil, err
	}
	return show(d, a.Sheet, a.wanted)
}

type exampleArgs struct {
	ID    string `json:"id"`
	Sheet *sheet `json:"sheet"`
	wanted
}

func example(a exampleArgs) (any, error) {
	d, ok := cases.Find(a.ID)
	if !ok {
		return nil, told{Message: message.New("error.no_example", "id", a.ID)}
	}
	return show(d, a.Sheet, a.wanted)
}
