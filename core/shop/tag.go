package shop

import (
	"reflect"
	"strconv"
	"strings"
	"sync"
	"unicode/utf8"

	"finwright/core/message"
	"finwright/core/units"
)

// longestFile bounds a file as a whole, against pasted floods: a shop of twenty lines takes most of it [bytes].
const longestFile = 256 << 10

// longestText bounds a text that states no other bound, a remark too [letters].
const (
	longestText   = 100
	longestRemark = 2000
)

// tag is what a struct's field says of its key in the file.
type tag struct {
	key      string
	kind     units.Kind
	optional bool
	inherit  bool    // kind and range are those of the field around it
	zero     bool    // nought is allowed besides the range
	low      float64 // the range of a number, both ends included [SI]
	high     float64
	most     int // letters of a text, items of a list
}

// tags holds the tags of every struct of the file, in the order of its fields; a field without a tag has no key.
var tags = sync.OnceValue(func() map[reflect.Type][]tag {
	return tagsOf(map[reflect.Type][]tag{}, reflect.TypeFor[Capability]())
})

func tagsOf(all map[reflect.Type][]tag, typ reflect.Type) map[reflect.Type][]tag {
	for typ.Kind() == reflect.Slice {
		typ = typ.Elem()
	}
	if typ.Kind() != reflect.Struct || all[typ] != nil {
		return all
	}
	list := make([]tag, typ.NumField())
	for i := range list {
		list[i] = tagOf(typ.Field(i))
		tagsOf(all, typ.Field(i).Type)
	}
	all[typ] = list
	return all
}

func tagOf(f reflect.StructField) tag {
	parts := strings.Split(f.Tag.Get("file"), ",")
	t := tag{key: parts[0], most: longestText}
	if f.Type.Kind() == reflect.Int {
		t.kind = units.Count
	}
	for _, p := range parts[1:] {
		switch p {
		case "optional":
			t.optional = true
		case "zero":
			t.zero = true
		case "inherit":
			t.inherit = true
		default:
			t.kind = units.Kind(p)
		}
	}
	if low, high, ok := strings.Cut(f.Tag.Get("range"), ".."); ok {
		t.low, t.high = bound(t.kind, low), bound(t.kind, high)
	}
	if most, ok := f.Tag.Lookup("most"); ok {
		t.most, _ = strconv.Atoi(most)
	}
	return t
}

func bound(k units.Kind, text string) float64 {
	p, err := units.Parse(k, text, units.SI)
	if err != nil {
		panic("shop: " + err.Error())
	}
	return p.SI
}

// within returns the tag as it stands inside a field of another tag.
func (t tag) within(around tag) tag {
	if t.inherit {
		t.kind, t.low, t.high = around.kind, around.low, around.high
	}
	return t
}

// holds reports whether a number lies in the range.
func (t tag) holds(x float64) bool {
	return x >= t.low*(1-Slack) && x <= t.high*(1+Slack) || t.zero && x == 0
}

// outside says what is allowed of a number that the range does not hold.
func (t tag) outside(typed string) message.Message {
	return message.New("error.range", "value", message.Typed(typed), "low", message.Of(t.kind, t.low), "high", message.Of(t.kind, t.high))
}

// tooLong reports whether a text has more letters than allowed.
func tooLong(text string, most int) bool { return utf8.RuneCountInString(text) > most }
