package bridge

import (
	"errors"
	"fmt"

	"finwright/core/document"
	"finwright/core/lesson"
	"finwright/core/shop"
	"finwright/core/units"
)

type lessonsArgs struct {
	Units units.System `json:"units"`
}

// lessons are all exercises, without what they keep back.
type lessons struct {
	Lessons []lesson.ShownLesson `json:"lessons"`
}

func listLessons(a lessonsArgs) (lessons, error) {
	if err := known(a.Units); err != nil {
		return lessons{}, err
	}
	return lessons{lesson.Show(writerIn(a.Units))}, nil
}

// lessonArgs name an exercise, in the units and for the shop of the page.
type lessonArgs struct {
	Lesson string       `json:"lesson"`
	Units  units.System `json:"units"`
	Shop   string       `json:"shop,omitempty"` // a capability file; empty: the one that ships
}

// read finds the exercise and the shop.
func (a *lessonArgs) read() (*lesson.Exercise, *shop.Capability, error) {
	if err := known(a.Units); err != nil {
		return nil, nil, err
	}
	x, ok := lesson.Find(a.Lesson)
	if !ok {
		return nil, nil, fmt.Errorf("bridge: no lesson %q", a.Lesson)
	}
	c, err := openShop(a.Shop)
	return x, &c, err
}

func known(s units.System) error {
	if s != units.SI && s != units.US {
		return errors.New("bridge: no such units")
	}
	return nil
}

// lessonBeginArgs ask for the tube that an exercise starts with, or for the one that solves it.
type lessonBeginArgs struct {
	Lesson string       `json:"lesson"`
	Units  units.System `json:"units"`
	Solved bool         `json:"solved,omitempty"`
	Sheet  *drawingArea `json:"sheet"`
	wanted
}

func beginLesson(a lessonBeginArgs) (reply, error) {
	asked := lessonArgs{a.Lesson, a.Units, a.Shop}
	x, _, err := asked.read()
	if err != nil {
		return reply{}, err
	}
	d := x.Document(x.Title(writerIn(a.Units)), a.Units)
	if a.Solved {
		d = x.Solved(d.Title, a.Units)
	}
	return show(d, a.Sheet, a.wanted)
}

// lessonGuessArgs are a guess, by its place among the choices.
type lessonGuessArgs struct {
	lessonArgs
	Guess int `json:"guess"`
}

func guessLesson(a lessonGuessArgs) (lesson.ToldGuess, error) {
	x, c, err := a.read()
	if err != nil {
		return lesson.ToldGuess{}, err
	}
	start := lesson.Read(x.Document("", a.Units), c)
	return lesson.ShowScore(writerIn(a.Units), x.Score(start, a.Guess)), nil
}

// lessonCheckArgs are a try: the tube in hand, and the number that was typed.
type lessonCheckArgs struct {
	Lesson   string            `json:"lesson"`
	Document document.Document `json:"document"`
	Typed    string            `json:"typed,omitempty"`
	Shop     string            `json:"shop,omitempty"`
}

func checkLesson(a lessonCheckArgs) (lesson.ToldTry, error) {
	if err := document.Check(a.Document); err != nil {
		return lesson.ToldTry{}, err
	}
	asked := lessonArgs{a.Lesson, a.Document.Units, a.Shop}
	x, c, err := asked.read()
	if err != nil {
		return lesson.ToldTry{}, err
	}
	typed := a.Typed[:min(len(a.Typed), longest)]
	now := &lesson.Case{Start: lesson.Read(x.Document("", a.Document.Units), c), Now: lesson.Read(a.Document, c)}
	return lesson.ShowVerdict(writer(a.Document), x.Check(now, texts().Numbers.Typed(typed)), now.Now), nil
}

func answerLesson(a lessonArgs) (lesson.WorkedAnswer, error) {
	x, c, err := a.read()
	if err != nil {
		return lesson.WorkedAnswer{}, err
	}
	w := writerIn(a.Units)
	w.Currency = c.Currency
	title := x.Title(w)
	return x.ShowAnswer(w, &lesson.Case{Start: lesson.Read(x.Document(title, a.Units), c), Now: lesson.Read(x.Solved(title, a.Units), c)}), nil
}

// storiesArgs ask for the explanations that move, of which one is told on the tube in hand.
type storiesArgs struct {
	Document document.Document `json:"document"`
	Story    string            `json:"story,omitempty"`
	Shop     string            `json:"shop,omitempty"`
}

type stories struct {
	Stories []lesson.ShownStory `json:"stories"`
}

func tellStory(a storiesArgs) (stories, error) {
	if err := document.Check(a.Document); err != nil {
		return stories{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return stories{}, err
	}
	return stories{lesson.ShowStories(writer(a.Document), a.Story, lesson.ReadBriefly(a.Document, &c))}, nil
}
