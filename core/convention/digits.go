package convention

import (
	"math"
	"strconv"
	"strings"

	"finwright/core/units"
)

// ReadPrinted reads a figure as it was printed, "1.70 m2/m": what its last digit stands for says how near a match must be. A number
// alone is of the unit that a system shows.
//
// Valid: decimal numbers; of a fraction every digit counts.
// Source: half a unit of the last place.
func (q *Quantity) ReadPrinted(text string, s units.System) (Printed, error) {
	p, err := units.Parse(q.Kind, text, s)
	if err != nil {
		return Printed{}, err
	}
	number, half := lastPlace(text)
	if number == 0 {
		return Printed{SI: p.SI, Half: 1e-6 * math.Abs(p.SI), Factor: math.Inf(1)}, nil
	}
	factor := p.SI / number
	return Printed{SI: p.SI, Half: half * factor, Factor: factor}, nil
}

// lastPlace returns the decimal number that a text begins with and half a unit of its last place; nought for a fraction.
func lastPlace(text string) (number, half float64) {
	text = strings.TrimSpace(text)
	end := strings.IndexFunc(text, func(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != ',' })
	if end < 0 {
		end = len(text)
	}
	digits, rest := text[:end], strings.TrimSpace(text[end:])
	if strings.ContainsAny(rest, "½¼¾⅛⅜⅝⅞⁄") || rest != "" && (rest[0] == '/' || rest[0] >= '0' && rest[0] <= '9') {
		return 0, 0
	}
	at := strings.LastIndexAny(digits, ".,")
	decimals := len(digits) - at - 1
	if at < 0 || strings.Count(digits, digits[at:at+1]) > 1 { // whole, or grouped in thousands
		decimals = 0
	}
	plain := strings.NewReplacer(".", "", ",", "").Replace(digits)
	whole, err := strconv.ParseFloat(plain, 64)
	if err != nil {
		return 0, 0
	}
	place := math.Pow10(-decimals)
	return whole * place, place / 2
}
