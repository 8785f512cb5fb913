package report

import (
	"strings"

	"finwright/core/message"
	"finwright/core/paper"
)

// Marked says of a fingerprint, as somebody typed it, which of some designs it is of, the first of which is in hand; at is -1 where it
// is of none, and then what differs from the one in hand.
func (w Writer) Marked(text string, of []paper.Mark) (at int, said string) {
	m, ok := paper.ReadMark(text)
	if !ok {
		return -1, w.Texts.Text("paper.mark.unread")
	}
	for i, one := range of {
		if one.Design == m.Design {
			return i, w.differs("paper.mark.found", m, one)
		}
	}
	if len(of) == 0 {
		return -1, w.Texts.Text("paper.mark.none")
	}
	return -1, w.differs("paper.mark.other", m, of[0])
}

// differs names what differs, where anything does.
func (w Writer) differs(key string, m, other paper.Mark) string {
	var names []string
	for _, part := range m.Differs(other) {
		names = append(names, w.Texts.Text("paper.differs."+part))
	}
	if names == nil {
		return w.Texts.Text(key + "_same")
	}
	return w.say(message.New(key, "what", strings.Join(names, ", ")))
}
