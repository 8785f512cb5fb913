package document

import (
	"bytes"
	"unicode/utf8"

	"finwright/core/message"
)

// OpenError says why a text is not a design file, or not what a command reads.
type OpenError struct{ message.Message }

func (e *OpenError) Error() string { return "document: " + e.Key }

// AskError says that a number was typed alone and may be meant in several units. Nothing was taken.
type AskError struct {
	Text     string   // as typed
	Readings []string // with each unit that may be meant, the one in sight first
}

func (e *AskError) Error() string { return "document: alone: " + e.Text }

func refuse(key string, pairs ...any) error { return &OpenError{message.New(key, pairs...)} }

// damaged says what is wrong with a file that is a design's otherwise: "open.what.<id>".
func damaged(id string, pairs ...any) error {
	return refuse("open.shape", "what", message.New("open.what."+id, pairs...))
}

// marks are how files of other kinds begin.
var marks = []struct{ mark, id string }{
	{"PK\x03\x04", "archive"},
	{"\x1f\x8b", "archive"},
	{"\xd0\xcf\x11\xe0", "archive"},
	{"%PDF", "pdf"},
	{"\x89PNG", "picture"},
	{"\xff\xd8\xff", "picture"},
	{"GIF8", "picture"},
	{"RIFF", "picture"},
	{"<", "page"},
	{"{", "broken"},
	{"[", "broken"},
}

// whatIs names what a text is that is no JSON.
func whatIs(text []byte) message.Key {
	start := bytes.TrimLeft(bytes.TrimPrefix(text, []byte("\ufeff")), " \t\r\n")
	if len(start) == 0 {
		return "open.what.empty"
	}
	for _, m := range marks {
		if bytes.HasPrefix(start, []byte(m.mark)) {
			return message.Key("open.what." + m.id)
		}
	}
	if !utf8.Valid(start) {
		return "open.what.broken"
	}
	return "open.what.text"
}
