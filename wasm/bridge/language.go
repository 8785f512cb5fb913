package bridge

import (
	"errors"
	"sync/atomic"

	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/units"
)

// spoken is the language of the page where that is not English. It is set before the first call, if at all, and then stays.
var spoken atomic.Pointer[message.Catalogue]

// Speak takes the file of another language.
func Speak(file string) error {
	c, err := message.Load(file)
	if err == nil {
		spoken.Store(&c)
	}
	return err
}

// texts is the catalogue of the page's language.
func texts() message.Catalogue {
	if c := spoken.Load(); c != nil {
		return *c
	}
	return message.English()
}

// writerIn writes for the page in one system of units.
func writerIn(s units.System) report.Writer { return report.Writer{Texts: texts(), System: s} }

// entered is a document changed by a command of the page, whose numbers are written in its language.
func entered(d document.Document, c document.Command) (document.Document, error) {
	c.Write(texts().Numbers.Typed)
	d, err := document.Edit(d, c)
	if refused := (*document.OpenError)(nil); errors.As(err, &refused) {
		return d, told{Message: refused.Message}
	}
	if asked := (*document.AskError)(nil); errors.As(err, &asked) {
		return d, inUnits(asked)
	}
	return d, err
}

// inUnits asks in which unit a number alone is meant, in the page's language.
func inUnits(asked *document.AskError) error {
	t := told{Message: message.New("error.which_unit", "text", message.Typed(asked.Text), "read", message.Typed(asked.Readings[0]))}
	for _, text := range asked.Readings {
		t.readings = append(t.readings, texts().Numbers.Typed(text))
	}
	return t
}
