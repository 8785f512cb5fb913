package workings

import (
	"fmt"
	"math"
	"math/big"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"
)

// function is a named function of an expression.
type function func(args []*big.Float) (*big.Float, error)

// notation reads an expression as the page prints it, from left to right, and works it out on the way: names that stand
// beside one another multiply, a bar divides what came before it by the next factor alone.
type notation struct {
	rest      string
	bars      int // open signs of the absolute value
	bits      uint
	numbers   map[string]*big.Float
	functions map[string]function
}

// fault ends a reading.
type fault struct{ error }

// evaluate works an expression out, in numbers of so many bits.
func evaluate(expression string, bits uint, numbers map[string]float64, functions map[string]function) (value float64, err error) {
	n := notation{rest: expression, bits: bits, numbers: map[string]*big.Float{"π": new(big.Float).SetPrec(bits)}, functions: functions}
	n.numbers["π"].SetString("3.14159265358979323846264338327950288419716939937510582097494459")
	for symbol, x := range numbers {
		if math.IsNaN(x) {
			return 0, fmt.Errorf("%s is no number", symbol)
		}
		n.numbers[symbol] = n.number(x)
	}
	defer func() {
		switch r := recover().(type) {
		case nil:
		case fault:
			err = r
		case big.ErrNaN:
			err = r
		default:
			panic(r)
		}
	}()
	x := n.sum()
	if n.rest != "" {
		n.fail("%q is left over", n.rest)
	}
	value, _ = x.Float64()
	return value, nil
}

func (n *notation) fail(format string, args ...any) { panic(fault{fmt.Errorf(format, args...)}) }

func (n *notation) number(x float64) *big.Float { return new(big.Float).SetPrec(n.bits).SetFloat64(x) }

func (n *notation) zero() *big.Float { return new(big.Float).SetPrec(n.bits) }

// skip takes a mark from the front, spaces before it not minded.
func (n *notation) skip(mark string) bool {
	rest, ok := strings.CutPrefix(strings.TrimLeft(n.rest, " "), mark)
	if ok {
		n.rest = rest
	}
	return ok
}

func (n *notation) close(mark string) {
	if !n.skip(mark) {
		n.fail("no %s at %q", mark, n.rest)
	}
}

func (n *notation) sum() *big.Float {
	var x *big.Float
	if n.skip("−") {
		x = n.zero().Neg(n.product())
	} else {
		x = n.product()
	}
	for {
		switch {
		case n.skip("+"):
			x.Add(x, n.product())
		case n.skip("−"):
			x.Sub(x, n.product())
		default:
			return x
		}
	}
}

func (n *notation) product() *big.Float {
	x := n.zero().Set(n.power())
	for {
		switch {
		case n.skip("·"):
			x.Mul(x, n.power())
		case n.skip("/"):
			x.Quo(x, n.power())
		case n.factorFollows():
			x.Mul(x, n.power())
		default:
			return x
		}
	}
}

func (n *notation) factorFollows() bool {
	first, _ := utf8.DecodeRuneInString(strings.TrimLeft(n.rest, " "))
	return unicode.IsLetter(first) || unicode.IsDigit(first) || strings.ContainsRune("([√⌊⌈", first) || first == '|' && n.bars == 0
}

func (n *notation) power() *big.Float {
	x := n.atom()
	switch {
	case n.skip("²"):
		return n.zero().Mul(x, x)
	case n.skip("³"):
		return n.zero().Mul(x, n.zero().Mul(x, x))
	case n.skip("^"):
		minus := n.skip("−")
		exponent := plain(n.atom())
		if minus {
			exponent = -exponent
		}
		return n.number(math.Pow(plain(x), exponent))
	}
	return x
}

func (n *notation) atom() *big.Float {
	for open, closing := range map[string]string{"(": ")", "[": "]", "⌊": "⌋", "⌈": "⌉"} {
		if !n.skip(open) {
			continue
		}
		x := n.sum()
		n.close(closing)
		switch open {
		case "⌊":
			return n.number(math.Floor(plain(x) + nearlyWhole))
		case "⌈":
			return n.number(math.Ceil(plain(x) - nearlyWhole))
		}
		return x
	}
	switch {
	case n.skip("|"):
		n.bars++
		x := n.sum()
		n.close("|")
		n.bars--
		return n.zero().Abs(x)
	case n.skip("√"):
		return n.zero().Sqrt(n.atom())
	}
	n.rest = strings.TrimLeft(n.rest, " ")
	if end := strings.IndexFunc(n.rest+" ", func(r rune) bool { return !unicode.IsDigit(r) && r != '.' }); end > 0 {
		x, ok := n.zero().SetString(n.rest[:end])
		if !ok {
			n.fail("%q is no number", n.rest[:end])
		}
		n.rest = n.rest[end:]
		return x
	}
	return n.named()
}

// nearlyWhole is how near to a whole number counts as reaching it: a length that fits exactly must fit whatever the last bit.
const nearlyWhole = 1e-9

// named reads a symbol, or a function with its arguments in brackets right behind it.
func (n *notation) named() *big.Float {
	name := symbol(n.rest)
	if name == "" {
		n.fail("no number, symbol or bracket at %q", n.rest)
	}
	n.rest = n.rest[len(name):]
	if x, ok := n.numbers[name]; ok {
		return x
	}
	f, ok := n.functions[name]
	if !ok || !strings.HasPrefix(n.rest, "(") {
		n.fail("no number for %s", name)
	}
	n.close("(")
	args := []*big.Float{n.sum()}
	for n.skip(",") {
		args = append(args, n.sum())
	}
	n.close(")")
	x, err := f(args)
	if err != nil {
		n.fail("%s: %w", name, err)
	}
	return x
}

// symbol returns the name that text starts with, its index included: D_f, I_{2/3}.
func symbol(text string) string {
	letters := func(t string) int {
		return len(t) - len(strings.TrimLeftFunc(t, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }))
	}
	end := letters(text)
	if index := text[end:]; strings.HasPrefix(index, "_{") {
		end += strings.Index(index, "}") + 1
	} else if strings.HasPrefix(index, "_") {
		end += 1 + letters(index[1:])
	}
	return text[:end]
}

func plain(x *big.Float) float64 {
	f, _ := x.Float64()
	return f
}

// The reader itself, on sums done by hand.
func TestNotation(t *testing.T) {
	numbers := map[string]float64{"a": 2, "b_0": 3, "D_f": 5, "η": 0.5, "ΔT_lm": 7}
	double := func(args []*big.Float) (*big.Float, error) {
		return new(big.Float).Add(args[0], args[len(args)-1]), nil
	}
	for expression, want := range map[string]float64{
		"a + 2 b_0":                  8,
		"1 / (a b_0)":                1.0 / 6,
		"1 / a b_0":                  1.5,
		"a/4 (D_f² − b_0²)":          8,
		"−a b_0":                     -6,
		"2√a a":                      4 * math.Sqrt2,
		"√(2 a) (D_f − b_0) / 2":     2,
		"a^0.5 b_0^−1":               math.Sqrt2 / 3,
		"8^(1/3) a³":                 16,
		"a |b_0 − D_f| / (η ΔT_lm)":  4 / 3.5,
		"⌈D_f / a⌉ ⌊D_f / a⌋":        6,
		"⌊(0.3 − 0.1) / 0.1⌋":        2,
		"f_{−2/3}(a·b_0, a) [a + 1]": 24,
		"π/2 a":                      math.Pi,
	} {
		got, err := evaluate(expression, 64, numbers, map[string]function{"f_{−2/3}": double})
		if err != nil || math.Abs(got-want) > 1e-15*math.Abs(want) {
			t.Errorf("%s = %.17g (%v), want %.17g", expression, got, err, want)
		}
	}
	for _, wrong := range []string{"a +", "c", "(a", "a)", "f(a)", "|a", "1.2.3", ""} {
		if got, err := evaluate(wrong, 64, numbers, nil); err == nil {
			t.Errorf("%q gives %g", wrong, got)
		}
	}
}
