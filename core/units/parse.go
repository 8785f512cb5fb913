package units

import (
	"math"
	"strconv"
	"strings"
)

// Reason says why a text could not be read; each has a message in the catalogue.
type Reason string

// Reasons.
const (
	Empty        Reason = "empty"
	NotANumber   Reason = "not_a_number"
	UnknownUnit  Reason = "unknown_unit"
	WrongUnit    Reason = "wrong_unit"
	TwoWays      Reason = "two_ways" // 2,108 is 2.108 to one reader and 2108 to another
	NoSuchGauge  Reason = "no_such_gauge"
	NotWhole     Reason = "not_whole"
	DividesByNil Reason = "divides_by_nil"
)

// ParseError is a text that could not be read as kind.
type ParseError struct {
	Kind   Kind
	Text   string
	Reason Reason
	Part   string // the piece at fault, where there is one; of TwoWays the number
}

func (e *ParseError) Error() string {
	return "units: " + string(e.Reason) + ": " + strconv.Quote(e.Text)
}

// Parsed is a text that was read.
type Parsed struct {
	SI   float64 // the value in SI
	Text string  // the text as typed, with the unit of the reader's system added where none was typed
	Unit string  // of Text, as a number alone may be given it; empty where that has none or several, as feet and inches

	Alone bool // no unit was typed where one belongs
}

var glyphFractions = strings.NewReplacer("½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8",
	"⅝", " 5/8", "⅞", " 7/8", "−", "-", "⁄", "/")

// greatest is a number beyond any quantity: from it on, one system's would no longer be a number in another.
const greatest = 1e60

func parse(k Kind, text string, s System) (Parsed, error) {
	p, err := quantity(k, text, s)
	if err == nil && !(math.Abs(p.SI) <= greatest) {
		return Parsed{}, &ParseError{Kind: k, Text: text, Reason: NotANumber, Part: text}
	}
	return p, err
}

func quantity(k Kind, text string, s System) (Parsed, error) {
	fail := func(r Reason, part string) (Parsed, error) {
		if r == TwoWays {
			part, _ = cutDecimal(part)
		}
		return Parsed{}, &ParseError{Kind: k, Text: text, Reason: r, Part: part}
	}
	t := dropThinSpaces(glyphFractions.Replace(text))
	t = dropWideSpace(strings.Join(strings.Fields(t), " "))
	if t == "" {
		return fail(Empty, "")
	}
	dim := specs[k].dim
	if digits, ok := gaugeNumber(t); ok && dim == dimLength {
		n, _ := strconv.Atoi(digits)
		wall, ok := BWG(n)
		if !ok {
			return fail(NoSuchGauge, digits)
		}
		return Parsed{SI: float64(wall), Text: text, Unit: gaugeMark}, nil
	}
	x, rest, why := number(t)
	if why != "" {
		return fail(why, t)
	}
	rest = strings.TrimSpace(rest)
	typed := strings.TrimSpace(text)
	if k == FinCount {
		var named bool
		if rest, named = strings.CutSuffix(strings.ToLower(rest), "pitch"); named {
			rest = strings.TrimSpace(rest)
			typed = strings.TrimSpace(typed[:len(typed)-len("pitch")])
		}
	}
	if feet, inch, ok := feetAndInches(x, rest); ok && dim == dimLength {
		if inch == "" {
			return Parsed{SI: feet * foot, Text: text, Unit: "ft"}, nil
		}
		y, unit, why := number(inch)
		if why != "" {
			return fail(why, inch)
		}
		if u := fold(unit); u != "" && u != "in" && u != `"` {
			return fail(UnknownUnit, unit)
		}
		return Parsed{SI: feet*foot + math.Copysign(y, feet)*0.0254, Text: text}, nil
	}
	alone := false
	if rest == "" {
		rest = k.Unit(s)
		if alone = rest != ""; alone {
			typed += " " + rest
		}
	}
	u, ok := byName[fold(rest)]
	if rest == "" {
		u, ok = unit{dimNone, 1, 0}, true
	}
	switch {
	case !ok:
		return fail(UnknownUnit, rest)
	case u.dim != dim && !(u.dim == dimLength && k == FinCount):
		return fail(WrongUnit, rest)
	}
	si := x*u.factor + u.offset
	if u.dim == dimLength && k == FinCount {
		if x == 0 {
			return fail(DividesByNil, rest)
		}
		si = 1 / si
	}
	if k == Count && si != math.Trunc(si) {
		return fail(NotWhole, t)
	}
	if fold(rest) == `"` {
		rest = "in"
	}
	return Parsed{si, typed, rest, alone}, nil
}

// number reads a decimal, a fraction or a whole number and fraction from the front of t.
func number(t string) (x float64, rest string, why Reason) {
	if sign, whole, num, den, rest, ok := cutFraction(t); ok {
		x, why := quotient(whole, num, den)
		if sign == "-" {
			x = -x
		}
		return x, rest, why
	}
	decimal, rest := cutDecimal(dropGroups(t))
	switch {
	case decimal == "" || strings.HasPrefix(rest, ",") || strings.HasPrefix(rest, "."):
		return 0, "", NotANumber
	case twoWays(decimal):
		return 0, "", TwoWays
	}
	x, err := strconv.ParseFloat(strings.Replace(decimal, ",", ".", 1), 64)
	if err != nil || math.IsInf(x, 0) {
		return 0, "", NotANumber
	}
	return x, rest, ""
}

// quotient returns whole + num/den; whole may be empty.
func quotient(whole, num, den string) (x float64, why Reason) {
	w, err1 := strconv.ParseFloat("0"+whole, 64)
	n, err2 := strconv.ParseFloat(num, 64)
	d, err3 := strconv.ParseFloat(den, 64)
	switch {
	case err1 != nil || err2 != nil || err3 != nil:
		return 0, NotANumber
	case d == 0:
		return 0, DividesByNil
	}
	return w + n/d, ""
}

// feetAndInches splits what follows a number into feet and a rest in inches.
func feetAndInches(x float64, rest string) (feet float64, inch string, ok bool) {
	for _, mark := range []string{"feet", "foot", "ft", "'", "′", "’"} {
		if len(rest) >= len(mark) && strings.EqualFold(rest[:len(mark)], mark) {
			tail := strings.TrimLeft(rest[len(mark):], " -")
			if tail == "" {
				return x, "", true
			}
			if tail[0] >= '0' && tail[0] <= '9' || tail[0] == '.' {
				return x, tail, true
			}
			return 0, "", false
		}
	}
	return 0, "", false
}

// Is reports whether text names a unit of kind k's.
func Is(k Kind, text string) bool {
	r := remember(k, text, SI)
	return r.err == nil && strings.TrimSpace(r.parsed.Text) == strings.TrimSpace(text)
}

// From converts x in the named unit to SI for kind k: what a grip or a plot axis sends.
func From(k Kind, x float64, name string) (float64, bool) {
	u, ok := byName[fold(name)]
	switch {
	case name == "" && specs[k].dim == dimNone:
		return x, true
	case !ok || math.IsNaN(x) || math.IsInf(x, 0):
		return 0, false
	case u.dim == dimLength && k == FinCount && x != 0:
		return 1 / (x * u.factor), true
	}
	return x*u.factor + u.offset, u.dim == specs[k].dim
}

// In converts an SI value of kind k to the unit that system s shows.
func In(k Kind, si float64, s System) float64 {
	u, ok := k.in(s)
	if !ok {
		return si
	}
	return (si - u.offset) / u.factor
}

// WrittenIn reports whether text, read as kind k, is written in a unit of
// system s. A text that cannot be read counts as written in any, so that it is
// shown as it stands; so does one whose unit belongs to both.
func WrittenIn(k Kind, text string, s System) bool { return remember(k, text, s).native }

func writtenIn(k Kind, text string, s System) bool {
	if _, err := parse(k, text, s); err != nil {
		return true
	}
	return customary(text) == (s == US) || specs[k].si.unit == specs[k].us.unit
}
