package report

import (
	"strconv"
	"strings"
	"unicode"

	"finwright/core/figure"
	"finwright/core/units"
)

// Working is a figure laid open: the formula in symbols and in numbers, what
// the symbols mean, where it comes from and how far it holds.
type Working struct {
	Title   string   `json:"title"`
	Symbols string   `json:"symbols"` // "A = A_side + A_tip + A_prime"
	Numbers string   `json:"numbers"` // the same with SI numbers put in
	Result  string   `json:"result"`
	Meaning string   `json:"meaning"`
	Basis   string   `json:"basis"`
	Where   []Where  `json:"where,omitzero"`
	Source  string   `json:"source"`
	Valid   string   `json:"valid"`
	Remarks []string `json:"remarks,omitzero"`
	Absent  string   `json:"absent"`
}

// Where is one symbol of it.
type Where struct {
	Symbol string `json:"symbol"`
	Name   string `json:"name"`
	Value  string `json:"value"`
	SI     string `json:"si"`
}

// Working renders the record of f and nothing else.
func (w Writer) Working(f figure.Figure) Working {
	shown := w.Figure(f)
	out := Working{Title: shown.Label, Meaning: w.Texts.Text("meaning." + f.ID), Basis: shown.Basis, Absent: shown.Absent}
	if shown.Absent != "" {
		return out
	}
	form := f.Law()
	numbers := map[string]string{}
	for _, a := range f.Args {
		si := plain(a.SI)
		numbers[a.Symbol] = si
		out.Where = append(out.Where, Where{
			Symbol: a.Symbol, Name: w.Texts.Text("symbol." + a.Symbol),
			Value: w.Texts.Numbers.Figure(a.Kind, a.SI, w.System).String(), SI: w.Texts.Numbers.Write(si),
		})
	}
	// A function that has no name in mathematics is told in words.
	words := func(s string) (string, bool) {
		key := "function." + s
		if !w.Texts.Has(key) {
			return "", false
		}
		return w.Texts.Text(key) + " ", true
	}
	out.Symbols = w.Texts.Numbers.Write(form.Result + " = " + form.Fill(words))
	out.Numbers = w.Texts.Numbers.Write(form.Result + " = " + multiplied(form.Fill(func(s string) (string, bool) {
		if n, ok := numbers[s]; ok {
			return n, true
		}
		return words(s)
	})))
	out.Result = form.Result + " = " + units.Text{Value: shown.Value, Unit: shown.Unit}.String()
	out.Source, out.Valid = w.Texts.Text(form.Source), w.Texts.Text(form.Valid)
	if shown.Tests != "" {
		out.Remarks = append(out.Remarks, shown.Tests)
	}
	for _, m := range f.Why {
		out.Remarks = append(out.Remarks, w.say(m))
	}
	return out
}

// multiplied puts a sign between factors, which in numbers do not stand apart by themselves: before a number, a bracket or a function,
// after a number or a bracket.
func multiplied(s string) string {
	var out strings.Builder
	last := ' '
	for i, r := range s {
		if r == ' ' && (unicode.IsDigit(last) || last == ')' || last == 'π') && factor(s[i+1:]) {
			out.WriteString(" ×")
		}
		out.WriteRune(r)
		last = r
	}
	return out.String()
}

// factor reports whether a formula goes on with a number, a bracket or a function.
func factor(rest string) bool {
	name := strings.IndexFunc(rest, func(r rune) bool { return !unicode.IsLetter(r) || r == 'π' })
	return name >= 0 && (rest[name] == '(' || name == 0 && (strings.HasPrefix(rest, "π") || unicode.IsDigit(rune(rest[0]))))
}

// plain prints an SI number as it goes into a formula: six digits are enough to
// follow the sum by hand.
func plain(si float64) string { return strconv.FormatFloat(si, 'g', 6, 64) }
