package units

import (
	"math"
	"regexp"
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
	Part   string // the piece at fault, where there is one
}

func (e *ParseError) Error() string {
	return "units: " + string(e.Reason) + ": " + strconv.Quote(e.Text)
}

// Parsed is a text that was read.
type Parsed struct {
	SI   float64 // the value in SI
	Text string  // the text as typed, with the unit of the reader's system added where none was typed
}

var (
	glyphFractions = strings.NewReplacer("½", " 1/2", "¼", " 1/4", "¾", " 3/4", "⅛", " 1/8", "⅜", " 3/8",
		"⅝", " 5/8", "⅞", " 7/8", "−", "-", "⁄", "/")
	thinSpace = regexp.MustCompile(`(\d)[\x{2009}\x{202f}\x{a0}](\d)`)
	// A space may group thousands, unless it parts a whole number from a fraction.
	wideSpace = regexp.MustCompile(`^([-+]?\d{1,3}) (\d{3})([^\d/]|$)`)
	mixed     = regexp.MustCompile(`^([-+]?\d+)[ -]+(\d+)/(\d+)`)
	fraction  = regexp.MustCompile(`^([-+]?)(\d+)/(\d+)`)
	decimal   = regexp.MustCompile(`^[-+]?(\d+[.,]?\d*|[.,]\d+)([eE][-+]?\d+)?`)
	// Up to three digits, a comma and exactly three more can mean two things; a leading nought settles it.
	ambiguous = regexp.MustCompile(`^[-+]?[1-9]\d{0,2},\d{3}$`)
	bwg       = regexp.MustCompile(`(?i)^(\d+) *(bwg|ga|gauge|gage)$|^(?:bwg|#) *(\d+)$`)
)

func parse(k Kind, text string, s System) (Parsed, error) {
	fail := func(r Reason, part string) (Parsed, error) {
		return Parsed{}, &ParseError{Kind: k, Text: text, Reason: r, Part: part}
	}
	t := strings.TrimSpace(glyphFractions.Replace(text))
	t = thinSpace.ReplaceAllString(thinSpace.ReplaceAllString(t, "$1$2"), "$1$2")
	t = strings.TrimSpace(wideSpace.ReplaceAllString(strings.Join(strings.Fields(t), " "), "$1$2$3"))
	if t == "" {
		return fail(Empty, "")
	}
	dim := specs[k].dim
	if m := bwg.FindStringSubmatch(t); m != nil && dim == dimLength {
		n, _ := strconv.Atoi(m[1] + m[3])
		wall, ok := BWG(n)
		if !ok {
			return fail(NoSuchGauge, m[1]+m[3])
		}
		return Parsed{float64(wall), text}, nil
	}
	x, rest, why := number(t)
	if why != "" {
		return fail(why, t)
	}
	rest = strings.TrimSpace(rest)
	if k == FinCount {
		rest = strings.TrimSpace(strings.TrimSuffix(strings.ToLower(rest), "pitch"))
	}
	if feet, inch, ok := feetAndInches(x, rest); ok && dim == dimLength {
		if inch == "" {
			return Parsed{feet * foot, text}, nil
		}
		y, unit, why := number(inch)
		if why != "" {
			return fail(why, inch)
		}
		if u := fold(unit); u != "" && u != "in" && u != `"` {
			return fail(UnknownUnit, unit)
		}
		return Parsed{feet*foot + math.Copysign(y, feet)*0.0254, text}, nil
	}
	typed := strings.TrimSpace(text)
	if rest == "" {
		rest = k.Unit(s)
		if rest != "" {
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
	if math.IsInf(si, 0) {
		return fail(NotANumber, t)
	}
	if k == Count && si != math.Trunc(si) {
		return fail(NotWhole, t)
	}
	return Parsed{si, typed}, nil
}

// number reads a decimal, a fraction or a whole number and fraction from the front of t.
func number(t string) (x float64, rest string, why Reason) {
	whole, num, den := "0", "", ""
	sign := 1.0
	if m := mixed.FindStringSubmatch(t); m != nil {
		whole, num, den, rest = m[1], m[2], m[3], t[len(m[0]):]
	} else if m := fraction.FindStringSubmatch(t); m != nil {
		num, den, rest = m[2], m[3], t[len(m[0]):]
		if m[1] == "-" {
			sign = -1
		}
	} else if m := decimal.FindString(t); m != "" {
		rest = t[len(m):]
		if ambiguous.MatchString(m) {
			return 0, "", TwoWays
		}
		x, err := strconv.ParseFloat(strings.Replace(m, ",", ".", 1), 64)
		if err != nil || math.IsInf(x, 0) || strings.HasPrefix(rest, ",") || strings.HasPrefix(rest, ".") {
			return 0, "", NotANumber
		}
		return x, rest, ""
	} else {
		return 0, "", NotANumber
	}
	w, err1 := strconv.ParseFloat(whole, 64)
	n, err2 := strconv.ParseFloat(num, 64)
	d, err3 := strconv.ParseFloat(den, 64)
	if err1 != nil || err2 != nil || err3 != nil {
		return 0, "", NotANumber
	}
	if d == 0 {
		return 0, "", DividesByNil
	}
	if strings.HasPrefix(whole, "-") {
		sign = -1
	}
	return sign * (math.Abs(w) + n/d), rest, ""
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
	u, ok := byName[fold(k.Unit(s))]
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
	us := customary.MatchString(text)
	return us == (s == US) || specs[k].si.unit == specs[k].us.unit
}

// customary finds a US customary unit; Parse has read the text, so that no other word can hold these.
var customary = regexp.MustCompile(`(?i)["″'′’]|\d *(bwg|ga|gauge|gage|mils?|thou|in|inch|inches|ft|feet|foot)\b|bwg|#|fpi|/ *(in|ft|inch)\b|per inch|per in\b|btu|lb|hp\b|ksi|°? *f\b|½|¼|¾|⅛|⅜|⅝|⅞`)
