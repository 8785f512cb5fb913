package report

import (
	"cmp"
	"strconv"
	"strings"

	"finwright/core/document"
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

// MarkedAll says of a fingerprint that it is of all items of a job, if it is.
func (w Writer) MarkedAll(text string, all paper.Mark) (said string, ok bool) {
	m, read := paper.ReadMark(text)
	if !read || m.Design != all.Design {
		return "", false
	}
	return w.differs("paper.mark.all", m, all), true
}

// MarkedItem says of a fingerprint that it is of an item of some work, if it is: by the item's mark or name, or its place.
func (w Writer) MarkedItem(text string, one paper.Mark, d document.Document, place int) (said string, ok bool) {
	m, read := paper.ReadMark(text)
	if !read || m.Design != one.Design {
		return "", false
	}
	name := cmp.Or(d.Mark, d.Title, strconv.Itoa(place+1))
	return w.say(message.New("paper.of_item", "item", name, "text", w.differs("paper.mark.found", m, one))), true
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
