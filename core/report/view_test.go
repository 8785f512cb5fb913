package report

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/figure"
	"finwright/core/internal/filled"
	"finwright/core/message"
	"finwright/core/proof"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

func edited(t testing.TB, pairs ...string) document.Document { return filled.Document(t, pairs...) }

func view(t *testing.T, d document.Document) View {
	t.Helper()
	w := Writer{Texts: message.English(), System: d.Units}
	in, h, err := design.ReadAndRate(d, nil)
	if err != nil {
		return w.View(d, err, nil)
	}
	res := design.Evaluate(in, h)
	return w.View(d, nil, &res)
}

func TestUnitsNeverMix(t *testing.T) {
	d := edited(t, "tube_od", "1 1/4 in", "tube_wall", "2.77 mm")
	for _, sys := range []units.System{units.SI, units.US} {
		d.Units = sys
		v := view(t, d)
		for _, f := range v.Fields {
			inch := strings.Contains(f.Text, "in") || strings.Contains(f.Text, "BWG")
			if f.ID == "tube_od" && inch != (sys == units.US) || f.ID == "tube_wall" && inch != (sys == units.US) {
				t.Errorf("%s shows %s as %q", sys, f.ID, f.Text)
			}
		}
		for _, f := range v.Headline {
			if strings.Contains(f.Unit, "mm") == (sys == units.US) && f.ID == "fin_od" {
				t.Errorf("%s shows fin OD in %s", sys, f.Unit)
			}
		}
	}
	if got := view(t, d).Fields; fieldOf(got, "tube_od").Typed != "1 1/4 in" {
		t.Error("what was typed is lost")
	}
}

func fieldOf(fields []FormField, id string) FormField {
	for _, f := range fields {
		if f.ID == id {
			return f
		}
	}
	return FormField{}
}

// Of a bare span, too, what was typed stays to be seen in the other units.
func TestSpanKeepsWhatWasTyped(t *testing.T) {
	d := document.New()
	d.Spans = []document.Span{{Centre: document.Entry{Text: "2.5 m"}, Width: document.Entry{Text: "60 mm"}}}
	d.Units = units.US
	got := view(t, d).Spans[0]
	if got.Centre.Typed != "2.5 m" || got.Centre.Text == "2.5 m" || got.Width.Typed != "60 mm" {
		t.Errorf("%+v", got)
	}
}

func TestWrongFieldShowsWhatIsAccepted(t *testing.T) {
	v := view(t, edited(t, "tube_od", "about an inch"))
	f := fieldOf(v.Fields, "tube_od")
	if v.Valid || f.Text != "about an inch" || !strings.Contains(f.Error, "25.4 mm") {
		t.Errorf("valid %v, text %q, error %q", v.Valid, f.Text, f.Error)
	}
	if v.Headline != nil || v.Groups != nil {
		t.Error("figures beside a wrong entry: they would be partial")
	}
	d := edited(t, "fin_height", "900 mm")
	d.Units = units.US
	if e := fieldOf(view(t, d).Fields, "fin_height").Error; !strings.Contains(e, "in") || strings.Contains(e, "mm") {
		t.Errorf("a user of inches is told %q", e)
	}
}

// Every figure of every fin type and profile, and of designs that take other ways to
// their figures, opens its working.
func TestEveryFigureShowsItsWorking(t *testing.T) {
	var designs [][]string
	for _, typ := range tube.FinTypes() {
		for _, profile := range []tube.Profile{tube.AsMade, tube.Uniform, tube.Linear} {
			designs = append(designs, []string{"fin_type", string(typ), "fin_profile", string(profile)})
		}
	}
	designs = append(designs,
		[]string{"inside_fluid", "steam", "inside_in", "120 °C", "start_up", "125 °C", "upset", "10 °C"},
		[]string{"gas", "own", "air_in", "340 °C", "inside_in", "105 °C", "inside_pressure", "15000 kPa", "fin_type", "welded", "fin_metal", "cs1010", "start_up", "105 °C"},
		[]string{"film_source", "given", "duty_wanted", "1 MW", "drop_allowed", "90 Pa"},
		[]string{"layout", "in_line"}, []string{"rows", "6", "face_velocity", "3 m/s"}, []string{"fin_pitch", "5 fpi", "fin_type", "welded", "fin_metal", "cs1010"},
		[]string{"face_velocity", "0.5 m/s"}, []string{"inside_fluid", "own"}, []string{"inside_flow", "1 kg/s"},
		[]string{"fin_metal", "c12200"}, []string{"quantity", "3"},
	)
	proof.Proof{Share: 5, Full: len(designs)}.Run(t, func(c *proof.Case) {
		pairs := designs[c.Index*11%len(designs)] // spreads a share
		house := shop.House()
		in, h, err := design.ReadAndRate(edited(c, pairs...), &house)
		if err != nil {
			c.Fatal(err)
		}
		res := design.Evaluate(in, h)
		making := design.Make(in, res.Heat)
		res.AddMaking(&making)
		for _, g := range res.Groups {
			for _, f := range g.Figures {
				if fault := workingFault(Writer{Texts: message.English(), System: units.US}, f); fault != "" {
					c.Errorf("%v: %s: %s", pairs, f.ID, fault)
				}
			}
		}
	})
}

// What is solved by rows says so, in the symbols and in the numbers.
func TestWorkingTellsASolutionInWords(t *testing.T) {
	in, h, err := design.ReadAndRate(document.New(), nil)
	if err != nil {
		t.Fatal(err)
	}
	f, _ := design.Evaluate(in, h).Find("effectiveness")
	work := Writer{Texts: message.English(), System: units.SI}.Working(f)
	if work.Symbols != "P = solved row by row from (NTU, R_c, N_r, N_p)" || !strings.HasPrefix(work.Numbers, "P = solved row by row from (0.") || !strings.HasSuffix(work.Numbers, ", 4, 2)") {
		t.Errorf("%q, %q", work.Symbols, work.Numbers)
	}
}

// standard functions need no words.
var standard = []string{"min", "max", "round", "exp", "arctan", "sin", "cos", "I_{2/3}", "I_{1/3}", "I_{−2/3}", "I_{−1/3}", "I_0", "I_1", "K_0", "K_1"}

// workingFault says what a working leaves open: each symbol of the formula, and of the
// names of its symbols, must have a number, each number must be asked for and printed
// with its digits, and a figure must not be explained by itself.
func workingFault(w Writer, f figure.Figure) string {
	work := w.Working(f)
	switch {
	case work.Absent != "":
		return ""
	case work.Source == "" || work.Valid == "" || work.Meaning == "":
		return fmt.Sprintf("source %q, valid %q, meaning %q", work.Source, work.Valid, work.Meaning)
	}
	form := f.Law()
	asked := map[string]bool{"π": true}
	ask := func(expression string) {
		for _, s := range (figure.Formula{Expression: expression}).Symbols() {
			function := regexp.MustCompile(`(^|[^\pL\pN_])` + regexp.QuoteMeta(s) + `\(`).MatchString(expression)
			asked[s] = asked[s] || !function
		}
	}
	ask(form.Expression)
	for s, value := range asked {
		if !value && !slices.Contains(standard, s) && (s == form.Result || !w.Texts.Has("function."+s)) {
			return fmt.Sprintf("%q has no words for %s", form.Expression, s)
		}
	}
	if asked[form.Result] {
		return work.Symbols + " says nothing"
	}
	for _, a := range work.Where {
		if name, _, _ := strings.Cut(a.Name, ","); strings.ContainsAny(name, "√^") {
			ask(name)
		}
	}
	given := map[string]bool{"π": true}
	for i, a := range work.Where {
		given[a.Symbol] = true
		if !asked[a.Symbol] {
			return fmt.Sprintf("%s is not in %q", a.Symbol, work.Symbols)
		}
		if si := f.Args[i].SI; math.IsNaN(si) || math.IsInf(si, 0) || si != 0 && !strings.ContainsAny(a.Value, "123456789") {
			return fmt.Sprintf("%s prints as %q for %g", a.Symbol, a.Value, si)
		}
	}
	for s, value := range asked {
		if value && !given[s] {
			return fmt.Sprintf("%q has no number for %s", work.Symbols, s)
		}
	}
	return ""
}

func TestEmptyEntriesSayWhatStandsIn(t *testing.T) {
	v := view(t, document.New())
	if got := fieldOf(v.Fields, "tube_pitch"); got.Text != "" || got.Auto != "63.5 mm" {
		t.Errorf("tube pitch shows %q for %q, want 63.5 mm: 57.15 and a clearance of 6.35", got.Auto, got.Text)
	}
	if got := fieldOf(v.Fields, "house_limit"); got.Auto != "" {
		t.Errorf("beside the standard's limit no house limit decides, and %q is shown", got.Auto)
	}
	if got := fieldOf(view(t, edited(t, "fin_type", "overlap_footed")).Fields, "house_limit"); got.Auto != "165 °C" {
		t.Errorf("house limit of the lapped foot shows %q", got.Auto)
	}
}

// The line of the status has room for one remark: the gravest.
func TestWhatHindersIsSaidFirst(t *testing.T) {
	v := view(t, edited(t, "fin_height", "19 mm", "duty_wanted", "900 MW"))
	if len(v.Notices) < 2 || v.Notices[0].State != figure.No || v.Notices[0].Field != "duty_wanted" {
		t.Errorf("%+v", v.Notices)
	}
	if f := fieldOf(v.Fields, "duty_wanted"); f.Watch != v.Notices[0].Text {
		t.Errorf("the field says %q", f.Watch)
	}
}

func TestDutySaysWhichWayItGoes(t *testing.T) {
	for want, pairs := range map[string][]string{"Duty to gas 1": nil, "Duty to tubes 5": {"inside_in", "5 °C", "air_in", "35 °C"}} {
		if s := view(t, edited(t, pairs...)).Summary; !strings.Contains(s, want) {
			t.Errorf("no %q in %q", want, s)
		}
	}
}

func TestSummarySpeaks(t *testing.T) {
	if s := view(t, document.New()).Summary; !strings.Contains(s, "Fin efficiency 0.8") {
		t.Errorf("summary %q", s)
	}
	if s := view(t, edited(t, "tube_od", "x", "fin_height", "y")).Summary; !strings.Contains(s, "2") {
		t.Errorf("summary %q", s)
	}
}

func TestCurvesMarkTheDesign(t *testing.T) {
	in, h, err := design.ReadAndRate(document.New(), nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, sys := range []units.System{units.SI, units.US} {
		for _, c := range (Writer{Texts: message.English(), System: sys}).Curves(in, h) {
			for _, p := range c.Panels {
				if len(p.Lines) != 3 || p.Mark == nil {
					t.Fatalf("%s/%s: %d lines, mark %v", c.ID, p.Figure, len(p.Lines), p.Mark)
				}
				main := p.Lines[1]
				if !main.Main || p.Mark.X < main.X[0] || p.Mark.X > main.X[len(main.X)-1] {
					t.Errorf("%s/%s: the design lies outside its plot", c.ID, p.Figure)
				}
				if y := between(main, p.Mark.X); y/p.Mark.Y > 1.001 || y/p.Mark.Y < 0.999 {
					t.Errorf("%s/%s: curve passes %g at the design, figure is %g", c.ID, p.Figure, y, p.Mark.Y)
				}
			}
		}
	}
}

func between(l Curve, x float64) float64 {
	for i := 1; i < len(l.X); i++ {
		if x <= l.X[i] {
			return l.Y[i-1] + (l.Y[i]-l.Y[i-1])*(x-l.X[i-1])/(l.X[i]-l.X[i-1])
		}
	}
	return l.Y[len(l.Y)-1]
}

func TestMapRingLiesInItsBand(t *testing.T) {
	in, h, err := design.ReadAndRate(document.New(), nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, q := range []rating.Quantity{rating.AreaRatio, rating.Efficiency, rating.UsedArea} {
		f := (Writer{Texts: message.English(), System: units.SI}).Map(in, h, q)
		solved := in.Surface(&h.Thermal)
		col := int((f.Ring.X - f.X.From) / (f.X.To - f.X.From) * float64(f.Columns-1))
		row := int((f.Ring.Y - f.Y.From) / (f.Y.To - f.Y.From) * float64(f.Rows-1))
		want := BandIndex(f.Levels, units.In(q.Kind(), q.Of(&solved), units.SI))
		near := map[byte]bool{}
		for _, at := range []int{row*f.Columns + col, row*f.Columns + col + 1, (row+1)*f.Columns + col, (row+1)*f.Columns + col + 1} {
			near[f.Bands[at]] = true
		}
		if !near[want] || len(f.Levels) == 0 || len(f.Levels) >= MaxBands {
			t.Errorf("%s: band %d is not near the ring, levels %v", q, want, f.Levels)
		}
	}
}

func BenchmarkViewAndCurves(b *testing.B) {
	in, h, err := design.ReadAndRate(document.New(), nil)
	if err != nil {
		b.Fatal(err)
	}
	w := Writer{Texts: message.English(), System: units.SI}
	for b.Loop() {
		res := design.Evaluate(in, h)
		w.View(document.New(), nil, &res)
		w.Curves(in, h)
	}
}

func BenchmarkMap(b *testing.B) {
	in, h, err := design.ReadAndRate(document.New(), nil)
	if err != nil {
		b.Fatal(err)
	}
	w := Writer{Texts: message.English(), System: units.SI}
	for b.Loop() {
		w.Map(in, h, rating.UsedArea)
	}
}

// A volume flow and a pressure over that of the air are shown as what they are in either system of units.
func TestOtherWaysOfWritingAreShown(t *testing.T) {
	d := edited(t, "inside_flow", "50 m3/h", "inside_pressure", "100 psig")
	fields := view(t, d).Fields
	if got := fieldOf(fields, "inside_flow"); got.Text != "50 m3/h" {
		t.Errorf("%+v", got)
	}
	if got := fieldOf(fields, "inside_pressure").Text; got != "689.5 kPa(g)" {
		t.Errorf("a gauge pressure in SI is shown as %q", got)
	}
	d.Units = units.US
	if got := fieldOf(view(t, d).Fields, "inside_flow").Text; got != "220.1 gpm" {
		t.Errorf("a volume flow in US units is shown as %q", got)
	}
}
