package units

import (
	"math"
	"strconv"
	"strings"
)

// same is the share by which two quantities may differ and still be one: sizes converted from inches are no others.
const same = 1e-9

// Above reports whether a is more than b, by more than the noise of a conversion.
func Above(a, b float64) bool { return a-b > same*max(math.Abs(a), math.Abs(b)) }

// Side is the side of a quantity to which it is printed.
type Side int

// Sides. What is to be typed in as a least or a most is printed to the side on which it does.
const (
	Nearest Side = 0
	Up      Side = 1
	Down    Side = -1
)

// Beside says how a quantity is printed beside others [SI] that it is held against: with so many digits that it does not read
// like one of them unless it is the same, and to a side.
type Beside struct {
	Others []float64
	Side   Side
}

// FigureBeside is Figure of a quantity that is held against others of its kind.
func (n *Style) FigureBeside(k Kind, si float64, b Beside, s System) Text {
	sh := k.shown(s)
	return n.figure(k, si, s, b.digit(k, si, s, sh.decimals))
}

// SayBeside prints a quantity in a sentence, where it is held against others of its kind: with the digits that a person would type.
func (n *Style) SayBeside(k Kind, si float64, b Beside, s System) string {
	decimals := said(k.shown(s), In(k, si, s), echoed(k, k.shown(s)), enough)
	return n.echo(k, si, s, b.digit(k, si, s, decimals), decimals)
}

// Entry prints an entry that was typed in a unit of the other system: what is round in both with all its digits, anything else with four, so
// that 40 mm are 1.575 in.
func (n *Style) Entry(k Kind, si float64, s System) string {
	const inEntry = 4
	return n.echo(k, si, s, digit{}, said(k.shown(s), In(k, si, s), echoed(k, k.shown(s)), inEntry))
}

// enough digits of a number in a sentence that was typed in another unit.
const enough = 3

// said returns how many decimals, of the most that are echoed, x has in a sentence: as many as it was typed with in the unit shown, or those of a
// figure where it comes from another unit, so that 5 mm are 0.1969 in and not 0.19685. These make at least so many digits as are enough.
func said(sh shown, x float64, most, enough int) int {
	whole := math.Pow(10, float64(most))
	if as := math.Round(x*whole) / whole; x == 0 || !Above(as, x) && !Above(x, as) {
		return most
	}
	digits := int(math.Floor(math.Log10(math.Abs(x)))) + 1
	return min(most, max(sh.decimals, enough-digits))
}

// mostMore bounds the digits that are added: they tell what differs by as little as Above does.
const mostMore = 10

// digit returns the least digits by which si is told from the others.
func (b Beside) digit(k Kind, si float64, s System, decimals int) digit {
	d := digit{side: b.Side}
	x := In(k, si, s)
	for ; d.more < mostMore; d.more++ {
		alike := false
		for _, other := range b.Others {
			alike = alike || (Above(si, other) || Above(other, si)) && d.reads(k.shown(s), x, decimals) == digit{more: d.more}.reads(k.shown(s), In(k, other, s), decimals)
		}
		if !alike {
			break
		}
	}
	return d
}

// digit is how a number is written otherwise than its kind asks.
type digit struct {
	more int // digits
	side Side
}

// reads is what a number in the unit shown reads as: a plain decimal.
func (d digit) reads(sh shown, x float64, decimals int) string {
	return d.write(sh, x, decimals)
}

// write prints x, in the unit shown, with decimals or as many significant digits as its kind asks.
func (d digit) write(sh shown, x float64, decimals int) string {
	v := strconv.FormatFloat(x, 'f', decimals+d.more, 64)
	if sh.significant > 0 {
		v = significant(x, sh.significant+d.more)
	}
	at, err := strconv.ParseFloat(v, 64)
	if err != nil || d.does(at, x) {
		return v
	}
	if strings.Contains(v, "e") { // the next number of as many digits
		last := math.Pow(10, math.Floor(math.Log10(math.Abs(at)))+1-float64(sh.significant+d.more))
		return strconv.FormatFloat(at+float64(d.side)*last, 'g', sh.significant+d.more, 64)
	}
	_, parts, _ := strings.Cut(v, ".")
	unit := math.Pow(10, float64(len(parts)))
	if d.side == Up {
		return strconv.FormatFloat(math.Ceil(x*unit)/unit, 'f', len(parts), 64)
	}
	return strconv.FormatFloat(math.Floor(x*unit)/unit, 'f', len(parts), 64)
}

// does reports whether a number printed for x stands on the side asked for.
func (d digit) does(printed, x float64) bool {
	return d.side == Nearest || d.side == Up && !Above(x, printed) || d.side == Down && !Above(printed, x)
}
