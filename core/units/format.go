package units

import (
	"math"
	"strconv"
	"strings"
)

// Text is a printed quantity: the number and its unit apart, so that a page can set them in two sizes.
type Text struct {
	Value string
	Unit  string
}

func (t Text) String() string {
	if t.Unit == "" || t.Unit == "°" {
		return t.Value + t.Unit
	}
	return t.Value + " " + t.Unit
}

// Figure prints a result: fixed or significant digits as the kind asks.
func (n *Style) Figure(k Kind, si float64, s System) Text { return n.figure(k, si, s, digit{}) }

func (n *Style) figure(k Kind, si float64, s System, d digit) Text {
	sh := k.shown(s)
	x := In(k, si, s)
	if math.Abs(x) >= astronomic {
		return Text{n.Write(strconv.FormatFloat(x, 'g', 6, 64)), k.Unit(s)}
	}
	if sh.feet {
		return n.feet(d, sh, x, sh.decimals, func(v string) string { return v })
	}
	return Text{n.grouped(d.write(sh, x, sh.decimals)), sh.unit}
}

// astronomic numbers are printed with an exponent: no one means them, and all their digits would fill the page.
const astronomic = 1e12

// Echo prints an input as documents hold it.
func Echo(k Kind, si float64, s System) string { return Plain.Echo(k, si, s) }

// Echo prints an input in the other system: short, no trailing noughts, fractions where the trade writes them.
func (n *Style) Echo(k Kind, si float64, s System) string {
	return n.echo(k, si, s, digit{}, echoed(k, k.shown(s)))
}

func (n *Style) echo(k Kind, si float64, s System, d digit, decimals int) string {
	sh := k.shown(s)
	x := In(k, si, s)
	if math.Abs(x) >= astronomic {
		return Text{n.Write(strconv.FormatFloat(x, 'g', 6, 64)), k.Unit(s)}.String()
	}
	if sh.feet {
		return n.feet(d, sh, x, decimals, trimmed).String()
	}
	if sh.fractions && d.more == 0 {
		if f, ok := inchFraction(x); ok && d.does(fraction(x), x) {
			return f + " in"
		}
	}
	return Text{n.Write(trimmed(d.write(sh, x, decimals))), sh.unit}.String()
}

// trimmed is a number without the noughts that it ends with.
func trimmed(v string) string {
	if strings.Contains(v, ".") && !strings.Contains(v, "e") {
		v = strings.TrimRight(strings.TrimRight(v, "0"), ".")
	}
	return v
}

// echoed returns how many decimals an input of kind k is echoed with.
func echoed(k Kind, sh shown) int {
	switch {
	case k == Count:
		return 0
	case sh.unit == "mm":
		return 3
	}
	return sh.decimals + 1
}

// Full prints every digit that the number holds, in the unit that system s shows.
func (n *Style) Full(k Kind, si float64, s System) string {
	return n.Write(strconv.FormatFloat(In(k, si, s), 'g', 15, 64))
}

// significant prints x to n significant digits without an exponent for everyday sizes.
func significant(x float64, n int) string {
	if x == 0 {
		return "0"
	}
	e := int(math.Floor(math.Log10(math.Abs(x))))
	if e < -6 || e > 8 {
		return strconv.FormatFloat(x, 'g', n, 64)
	}
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'e', n-1, 64), 64)
	e = int(math.Floor(math.Log10(math.Abs(rounded)) + 1e-12))
	return strconv.FormatFloat(rounded, 'f', max(0, n-1-e), 64)
}

// finest part of an inch that is written as a fraction.
const finest = 64

func fraction(x float64) float64 { return math.Round(x*finest) / finest }

// inchFraction writes x inches as a whole and a fraction in 1/64 or coarser, where that is exact.
func inchFraction(x float64) (string, bool) {
	n := math.Round(x * finest)
	if x <= 0 || math.Abs(fraction(x)-x) > 1e-7 {
		return "", false
	}
	whole, num, den := int(n)/finest, int(n)%finest, finest
	for num > 0 && num%2 == 0 {
		num, den = num/2, den/2
	}
	switch {
	case num == 0:
		return strconv.Itoa(whole), true
	case whole == 0:
		return strconv.Itoa(num) + "/" + strconv.Itoa(den), true
	}
	return strconv.Itoa(whole) + " " + strconv.Itoa(num) + "/" + strconv.Itoa(den), true
}

// feet writes x inches as feet and inches: in sixteenths where it is whole ones, else with decimals, so that a
// fraction is never a rounded one. finish is what becomes of a number with decimals.
func (n *Style) feet(d digit, sh shown, x float64, decimals int, finish func(string) string) Text {
	at, part := math.Round(x*16)/16, inSixteenths
	if d.more > 0 || Above(at, x) || Above(x, at) {
		at, _ = strconv.ParseFloat(d.write(sh, x, decimals), 64)
		part = func(in float64) string { return finish(strconv.FormatFloat(in, 'f', decimals+d.more, 64)) }
	}
	sign := ""
	if at < 0 {
		sign, at = "-", -at
	}
	feet := math.Floor(at / 12)
	in := n.Write(part(at - 12*feet))
	whole := n.grouped(strconv.Itoa(int(feet)))
	switch {
	case feet == 0:
		return Text{sign + in, "in"}
	case in == "0":
		return Text{sign + whole, "ft"}
	}
	return Text{sign + whole + " ft " + in, "in"}
}

func inSixteenths(in float64) string {
	if f, ok := inchFraction(in); ok {
		return f
	}
	return "0"
}
