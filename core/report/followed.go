package report

import (
	"strings"

	"finwright/core/design"
	"finwright/core/message"
)

// Followed says in a line what a change of entries took along, in the digits in which it moved; empty where nothing did.
func (w Writer) Followed(list []design.Followed) string {
	var said []string
	for _, f := range list {
		was, now := w.Texts.Numbers.Figure(f.Kind, f.Was, w.System), w.Texts.Numbers.Figure(f.Kind, f.Now, w.System)
		if was != now {
			said = append(said, w.say(message.New("followed.figure", "name", f.Name, "was", was.Value, "now", now.String())))
		}
	}
	return strings.Join(said, "; ")
}
