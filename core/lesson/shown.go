package lesson

import (
	"finwright/core/document"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/units"
)

// ShownLesson is an exercise as the page shows it. What it keeps back is asked for when its time has come.
type ShownLesson struct {
	ID       string   `json:"id"`
	Section  string   `json:"section"`
	Title    string   `json:"title"`
	Question string   `json:"question"`
	Guess    string   `json:"guess"`
	Choices  []string `json:"choices"`
	Task     string   `json:"task"`
	Asked    string   `json:"asked"` // of the number that is typed; empty: none is
	Unit     string   `json:"unit"`  // that it has where none is typed
	Hints    []string `json:"hints"`
}

// ToldGuess tells what is true.
type ToldGuess struct {
	How   string `json:"how"` // hit, near or far
	Said  string `json:"said"`
	Place int    `json:"place"`
	Told  string `json:"told"`
}

// ToldTry tells what became of a try.
type ToldTry struct {
	Solved bool        `json:"solved"`
	Lines  []TriedLine `json:"lines"`
	Film   string      `json:"film"` // whether it is held or computed; empty where there is none
}

// TriedLine is one thing that was asked.
type TriedLine struct {
	Holds bool   `json:"holds"`
	Text  string `json:"text"`
	Found string `json:"found"`
}

// WorkedAnswer is the worked answer.
type WorkedAnswer struct {
	Text     string            `json:"text"`
	Document document.Document `json:"document"` // the tube that solves it
	Number   string            `json:"number"`   // that was to be typed; empty: none was
	Workings []WorkedLine      `json:"workings"`
}

// WorkedLine is one line of it: a figure with how it is found, in numbers.
type WorkedLine struct {
	Figure  string `json:"figure"`
	Label   string `json:"label"`
	Symbols string `json:"symbols"`
	Numbers string `json:"numbers"`
	Result  string `json:"result"`
}

// Show shows all exercises.
func Show(w report.Writer) []ShownLesson {
	out := make([]ShownLesson, len(Exercises))
	for i, x := range Exercises {
		say := func(part string) string { return w.Texts.Render(x.say(part), w.System) }
		out[i] = ShownLesson{
			ID: x.ID, Section: x.Section, Title: say("title"), Question: say("question"), Guess: say("guess"), Choices: x.choices(w), Task: say("task"),
			Hints: []string{say("hint_1"), say("hint_2")},
		}
		if x.Asked.Of != nil {
			out[i].Unit = x.Asked.Kind.Unit(w.System)
			out[i].Asked = say("asked")
		}
	}
	return out
}

// Title is what an exercise and its tube are called.
func (x *Exercise) Title(w report.Writer) string { return w.Texts.Text(x.text("title")) }

// choices says what a guess chooses among.
func (x *Exercise) choices(w report.Writer) (out []string) {
	g := &x.Guess
	for _, word := range g.Words {
		out = append(out, w.Texts.Text(x.text("word."+word)))
	}
	for i := range len(g.Bands) {
		if i == 0 {
			out = append(out, w.Texts.Render(message.New("lesson.band.under", "high", amount(g.Kind, g.Bands[0])), w.System))
		} else {
			out = append(out, w.Texts.Render(message.New("lesson.band.between", "low", amount(g.Kind, g.Bands[i-1]), "high", amount(g.Kind, g.Bands[i])), w.System))
		}
	}
	if n := len(g.Bands); n > 0 {
		out = append(out, w.Texts.Render(message.New("lesson.band.over", "low", amount(g.Kind, g.Bands[n-1])), w.System))
	}
	return out
}

// ShowScore says how a guess came out.
func ShowScore(w report.Writer, s Score) ToldGuess {
	return ToldGuess{s.How, w.Texts.Text("lesson.how." + s.How), s.Place, w.Texts.Render(s.Told, w.System)}
}

// ShowVerdict says what became of a try on a tube.
func ShowVerdict(w report.Writer, v Verdict, now *Reading) ToldTry {
	out := ToldTry{Solved: v.Solved, Lines: make([]TriedLine, len(v.Lines))}
	for i, l := range v.Lines {
		out.Lines[i] = TriedLine{l.Holds, w.Texts.Render(l.Text, w.System), w.Texts.Render(l.Found, w.System)}
	}
	if film, ok := now.Figure("film"); ok {
		said := message.New("lesson.film_held", "film", amount(units.Film, film))
		if !now.In.Air.FilmGiven {
			said = message.New("lesson.film_computed", "film", amount(units.Film, film), "method", message.Key("airside."+now.Heat.Thermal.UsedFilm.ID))
		}
		out.Film = w.Texts.Render(said, w.System)
	}
	return out
}

// ShowAnswer works an exercise out on the tube that solves it.
func (x *Exercise) ShowAnswer(w report.Writer, c *Case) WorkedAnswer {
	out := WorkedAnswer{Text: w.Texts.Render(x.say("answer"), w.System), Document: c.Now.Document, Workings: []WorkedLine{}}
	if x.Asked.Of != nil {
		if si, ok := x.Asked.Of(c); ok {
			out.Number = w.Texts.Numbers.Figure(x.Asked.Kind, si, w.System).String()
		}
	}
	for _, id := range x.Workings {
		f, ok := c.Now.Result.Find(id)
		if !ok || !f.Absent.None() {
			continue
		}
		k := w.Working(f)
		out.Workings = append(out.Workings, WorkedLine{id, k.Title, k.Symbols, k.Numbers, k.Result})
	}
	return out
}
