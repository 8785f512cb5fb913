package shop

import (
	"errors"
	"math"
	"strconv"
	"unicode/utf8"

	"finwright/core/message"
	"finwright/core/units"
)

// limits are what a number may be, both ends included [SI].
type limits struct {
	kind      units.Kind
	low, high float64
	zero      bool // zero is allowed besides
}

// longestFile bounds a file as a whole, against pasted floods: a shop of twenty lines takes most of it [bytes].
const longestFile = 256 << 10

// longestText bounds a text that states no other bound, longestRemark a remark [letters].
const (
	longestText   = 100
	longestRemark = 2000
)

// amounts reads a list of quantities.
func amounts[T ~float64](o *object, key string, to *[]T, most int, k units.Kind, low, high float64) {
	items, path := o.items(key, most)
	*to = make([]T, len(items))
	for i, item := range items {
		(*to)[i] = T(o.quantity(item, key, nth(path, i), limits{k, low, high, false}))
	}
	o.next(path, key, len(items), k)
}

// texts reads a list of texts.
func texts[T ~string](o *object, key string, to *[]T, most int) {
	items, path := o.items(key, most)
	*to = make([]T, len(items))
	for i, item := range items {
		(*to)[i] = T(o.words(item, key, nth(path, i), longestText))
	}
	o.next(path, key, len(items), "")
}

// amount reads a quantity.
func amount[T ~float64](o *object, key string, to *T, k units.Kind, low, high float64) {
	bounded(o, key, to, limits{k, low, high, false})
}

func bounded[T ~float64](o *object, key string, to *T, l limits) {
	if node, path, ok := o.take(key); ok {
		*to = T(o.quantity(node, key, path, l))
	} else {
		o.offer(path, key, l.kind, false)
	}
}

// span reads a range; its low end may be zero.
func span[T ~float64](o *object, key string, to *Range[T], k units.Kind, low, high float64) {
	o.inner(key, keysOf(func(o *object) { ends(o, &to.Low, &to.High, k, low, high) }))
}

// byOD reads a table of ranges by diameter.
func byOD[T ~float64](o *object, key string, to *[]ByOD[T], most int, k units.Kind, low, high float64) {
	items, path := o.items(key, most)
	*to = make([]ByOD[T], len(items))
	keys := func(row *ByOD[T]) keyed {
		return keysOf(func(o *object) {
			amount(o, "od", &row.OD, units.Diameter, mm, 2)
			ends(o, &row.Low, &row.High, k, low, high)
		})
	}
	for i, item := range items {
		o.read(item, nth(path, i), keys(&(*to)[i]))
	}
	if len(items) == 0 {
		o.begins(path, keys(new(ByOD[T])))
	}
}

func ends[T ~float64](o *object, from, to *T, k units.Kind, low, high float64) {
	bounded(o, "low", from, limits{k, low, high, true})
	bounded(o, "high", to, limits{k, low, high, false})
	if *from > *to {
		o.fault(join(o.path, "high"), "shop.file.range")
	}
}

// text reads a text of at most so many letters.
func text[T ~string](o *object, key string, to *T, most int) {
	if node, path, ok := o.take(key); ok {
		*to = T(o.words(node, key, path, most))
	} else {
		o.offer(path, key, "", false)
	}
}

// whole reads a count.
func (o *object) whole(key string, to *int, low, high float64) {
	if node, path, ok := o.take(key); ok {
		*to = o.count(node, key, path, limits{units.Count, low, high, false})
	} else {
		o.offer(path, key, units.Count, false)
	}
}

// wholes reads a list of counts.
func (o *object) wholes(key string, to *[]int, most int, low, high float64) {
	items, path := o.items(key, most)
	*to = make([]int, len(items))
	for i, item := range items {
		(*to)[i] = o.count(item, key, nth(path, i), limits{units.Count, low, high, false})
	}
	o.next(path, key, len(items), units.Count)
}

// priced reads a price by mass, by length or of a piece, as its unit says.
func (o *object) priced(key string, to *float64, per *units.Kind, low, high float64) {
	node, path, ok := o.take(key)
	if !ok {
		o.offer(path, key, units.CostPerWeight, false)
		return
	}
	text, _ := node.(string)
	for _, *per = range []units.Kind{units.CostPerWeight, units.CostPerRun, units.CostEach} { // a bare number is by mass
		if _, err := units.Parse(*per, text, units.SI); err == nil {
			*to = o.quantity(node, key, path, limits{*per, low, high, false})
			return
		}
	}
	o.fault(path, "shop.file.price")
}

// yesNo reads a yes or no.
func (o *object) yesNo(key string, to *bool) {
	node, path, ok := o.take(key)
	if !ok {
		o.offer(path, key, "", true)
		return
	}
	if *to, ok = node.(bool); !ok {
		o.fault(path, "shop.file.yes_no")
		return
	}
	o.leaf(path, key, "", strconv.FormatBool(*to))
	if o.lists {
		o.leaves[len(o.leaves)-1].YesNo = true
	}
}

// count returns a whole number, zero if it cannot be read.
func (r *reader) count(node any, key, path string, l limits) int {
	x, ok := node.(float64)
	switch {
	case !ok || x != math.Trunc(x):
		r.fault(path, "shop.file.whole")
	case !l.hold(x):
		r.faults = append(r.faults, Fault{Path: path, Why: l.outside(plain(x))})
	default:
		r.leaf(path, key, units.Count, strconv.Itoa(int(x)))
		return int(x)
	}
	return 0
}

// words returns a text, an empty one if it cannot be read.
func (r *reader) words(node any, key, path string, most int) string {
	text, ok := node.(string)
	switch {
	case !ok || text == "":
		r.fault(path, "shop.file.text")
	case tooLong(text, most):
		r.fault(path, "shop.file.text_long", "most", most)
	default:
		r.leaf(path, key, "", text)
		return text
	}
	return ""
}

// quantity returns a quantity [SI], zero if it cannot be read.
func (r *reader) quantity(node any, key, path string, l limits) float64 {
	text, ok := node.(string)
	switch {
	case !ok:
		r.fault(path, "shop.file.quantity", "accepts", message.Accepts(l.kind))
		return 0
	case tooLong(text, longestText):
		r.fault(path, "shop.file.text_long", "most", longestText)
		return 0
	}
	p, err := units.Parse(l.kind, text, units.SI)
	var bad *units.ParseError
	switch {
	case errors.As(err, &bad):
		r.faults = append(r.faults, Fault{Path: path, Why: message.Unread(bad)})
		return 0
	case !l.hold(p.SI):
		r.faults = append(r.faults, Fault{Path: path, Why: l.outside(text), System: typedIn(l.kind, text)})
		return 0
	}
	r.leaf(path, key, l.kind, text)
	return p.SI
}

// hold reports whether a number lies within the limits.
func (l limits) hold(x float64) bool {
	return x >= l.low*(1-Slack) && x <= l.high*(1+Slack) || l.zero && x == 0
}

// outside says what is allowed of a number that does not.
func (l limits) outside(typed string) message.Message {
	return message.New("error.range", "value", message.Typed(typed), "low", message.Least(message.Of(l.kind, l.low)), "high", message.Most(message.Of(l.kind, l.high)))
}

// tooLong reports whether a text has more letters than allowed.
func tooLong(text string, most int) bool { return utf8.RuneCountInString(text) > most }

// typedIn returns the system of a text's unit.
func typedIn(k units.Kind, text string) units.System {
	if units.WrittenIn(k, text, units.SI) {
		return units.SI
	}
	return units.US
}

// plain writes a number of the file without an exponent where it has room.
func plain(x float64) string {
	if math.Abs(x) < 1e15 {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	return strconv.FormatFloat(x, 'g', -1, 64)
}
