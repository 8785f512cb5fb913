package main

import (
	"fmt"
	"math"
	"time"

	"finwright/site/browser"
)

const (
	moves  = 80 // of a pull
	pace   = 16 * time.Millisecond
	reach  = 24.0 // px that a dimension is pulled to either side
	pulls  = 3    // of which the first warms up
	slower = 4    // times, of a page's thread that is held back
)

// parts are those of an answer that the page times by itself: the engine is asked and answers in a thread of its own, the others are the
// page's work. What is left of that is the browser's: to hear of the pointer, to lay out, and to paint.
var parts = []string{"engine", "figures", "drawing", "charts"}

// drag pulls the fin tip up and down on a page at rest, in each section, at a pointer's pace, and again with the page's thread held back.
// The page notes each answer that it shows, from the pointer event to the frame that has it.
func drag() ([]row, error) {
	return with(func(b *bench, chromium *browser.Browser) ([]row, error) {
		page := chromium.Page(b, browser.Desk)
		page.Open("")
		page.WaitMark("finwright:painted")
		browser.Eval[bool](page, `(document.documentElement.dataset.timed = "", true)`)
		time.Sleep(settleTime)
		var rows []row
		for _, at := range []struct{ times, least float64 }{{1, 20}, {slower, 1}} { // least: answers that say something of the rest
			times := at.times
			for _, section := range []struct {
				name         string
				work, engine float64 // budgets [ms] of the page's thread, and of the engine, for an answer
			}{{"surface", 6, 5}, {"heat", 10, 10}, {"making", 10, 10}} {
				page.Throttle(times)
				page.Click(`[data-testid="section-` + section.name + `"]`)
				time.Sleep(settleTime)
				all := pulled{parts: map[string]float64{}}
				for i := range pulls {
					if one := pull(page); i > 0 { // the first warms up
						all.add(one)
					}
				}
				page.Throttle(1)
				n := float64(len(all.steps))
				name := section.name
				if times > 1 {
					name += fmt.Sprintf(", %g times slower", times)
				}
				if n == 0 && times > 1 {
					rows = append(rows, row{name + ": no answer shown, of moves", moves * (pulls - 1), 2 * times, "moves"})
					continue
				}
				if n < at.least {
					b.Fatalf("%s: only %g answers of the pull were shown", name, n)
				}
				rows = append(rows, row{name + ": the page's work for an answer", all.work / n, section.work * times, "ms"})
				rows = append(rows, row{name + ": of that, styles and layout", all.layout / n, section.work * times, "ms"})
				for _, part := range parts {
					budget, of := section.work*times, ": of that, "
					if part == "engine" {
						budget, of = section.engine, ": round trip of the "
					}
					rows = append(rows, row{name + of + part, all.parts[part] / n, budget, "ms"})
				}
				rows = append(rows,
					row{name + ": moves to an answer shown", moves * (pulls - 1) / n, 2 * times, "moves"},
					row{name + ": event to frame, median", quantile(all.steps, 0.5), 33 * times, "ms"},
					row{name + ": event to frame, p95", quantile(all.steps, 0.95), 80 * times, "ms"},
				)
			}
		}
		return rows, nil
	})
}

// pulled is what a pull took: each answer [ms], and of the page's thread [ms] all its work, styles and layout, and each part.
type pulled struct {
	steps        []float64
	work, layout float64
	parts        map[string]float64
}

func (p *pulled) add(q pulled) {
	p.steps, p.work, p.layout = append(p.steps, q.steps...), p.work+q.work, p.layout+q.layout
	for part, took := range q.parts {
		p.parts[part] += took
	}
}

// pull takes hold of the tip, moves it there and back, and lets go where it began.
func pull(page *browser.Page) pulled {
	grip := page.Centre(`[data-testid="grip-tip"]`)
	path := make([]browser.Point, moves)
	for i := range path {
		path[i] = browser.Point{X: grip.X, Y: grip.Y - reach*math.Sin(2*math.Pi*float64(i+1)/moves)}
	}
	page.Grab(grip)
	browser.Eval[bool](page, `(performance.clearMeasures(), true)`)
	tasks, layout := page.Work()
	page.Sweep(path, pace)
	time.Sleep(settleTime / 10)
	tasksNow, layoutNow := page.Work()
	out := pulled{work: tasksNow - tasks, layout: layoutNow - layout, parts: map[string]float64{}}
	out.steps = browser.Eval[[]float64](page, `performance.getEntriesByName("finwright:drag").map((entry) => entry.duration)`)
	for _, part := range parts {
		out.parts[part] = browser.Eval[float64](page, `performance.getEntriesByName("finwright:part:`+part+`").reduce((sum, {duration}) => sum + duration, 0)`)
	}
	page.Drop(grip)
	time.Sleep(settleTime / 5)
	return out
}
