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
func (n *Style) Figure(k Kind, si float64, s System) Text {
	sh := k.shown(s)
	x := In(k, si, s)
	if math.Abs(x) >= astronomic {
		return Text{n.Write(strconv.FormatFloat(x, 'g', 6, 64)), k.Unit(s)}
	}
	if sh.feet {
		return n.feet(x)
	}
	if sh.significant > 0 {
		return Text{n.grouped(significant(x, sh.significant)), sh.unit}
	}
	return Text{n.grouped(strconv.FormatFloat(x, 'f', sh.decimals, 64)), sh.unit}
}

// astronomic numbers are printed with an exponent: no one means them, and all their digits would fill the page.
const astronomic = 1e12

// Echo prints an input as documents hold it.
func Echo(k Kind, si float64, s System) string { return Plain.Echo(k, si, s) }

// Echo prints an input in the other system: short, no trailing noughts, fractions where the trade writes them.
func (n *Style) Echo(k Kind, si float64, s System) string {
	sh := k.shown(s)
	x := In(k, si, s)
	if math.Abs(x) >= astronomic {
		return Text{n.Write(strconv.FormatFloat(x, 'g', 6, 64)), k.Unit(s)}.String()
	}
	if sh.feet {
		return n.feet(x).String()
	}
	if sh.fractions {
		if f, ok := inchFraction(x); ok {
			return f + " in"
		}
	}
	decimals := sh.decimals + 1
	if sh.unit == "mm" {
		decimals = 3
	}
	if k == Count {
		decimals = 0
	}
	v := strconv.FormatFloat(x, 'f', decimals, 64)
	if sh.significant > 0 {
		v = significant(x, sh.significant)
	}
	if strings.Contains(v, ".") && !strings.Contains(v, "e") {
		v = strings.TrimRight(strings.TrimRight(v, "0"), ".")
	}
	return Text{n.Write(v), sh.unit}.String()
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

// inchFraction writes x inches as a whole and a fraction in 1/64 or coarser, where that is exact.
func inchFraction(x float64) (string, bool) {
	const finest = 64
	n := math.Round(x * finest)
	if x <= 0 || math.Abs(n/finest-x) > 1e-7 {
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

// feet writes x inches as feet and inches to the nearest 1/16 in.
func (n *Style) feet(x float64) Text {
	sign := ""
	if x < 0 {
		sign, x = "-", -x
	}
	x = math.Round(x*16) / 16
	feet := math.Floor(x / 12)
	in := x - 12*feet
	f, ok := inchFraction(in)
	switch {
	case in == 0 && feet > 0:
		return Text{sign + n.grouped(strconv.Itoa(int(feet))), "ft"}
	case !ok:
		return Text{"0", "in"}
	case feet == 0:
		return Text{sign + f, "in"}
	}
	return Text{sign + n.grouped(strconv.Itoa(int(feet))) + " ft " + f, "in"}
}
