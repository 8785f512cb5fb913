package main

import (
	"math"
	"time"

	"finwright/site/browser"
)

const (
	moves = 80 // of a pull
	pace  = 16 * time.Millisecond
	reach = 24.0 // px that a dimension is pulled to either side
	pulls = 3    // of which the first warms up
)

// drag pulls the fin tip up and down on a page at rest, in each section, at a pointer's pace. The page notes each answer that
// it shows, from the pointer event to the frame that has it.
func drag() ([]row, error) {
	return with(func(b *bench, chromium *browser.Browser) ([]row, error) {
		page := chromium.Page(b, browser.Desk)
		page.Open("")
		page.WaitMark("finwright:painted")
		time.Sleep(settleTime)
		var rows []row
		for _, section := range []struct {
			name string
			work float64 // budget [ms] of the page's thread for an answer
		}{{"surface", 6}, {"heat", 10}, {"making", 10}} {
			page.Click(`[data-testid="section-` + section.name + `"]`)
			time.Sleep(settleTime)
			var steps []float64
			var work, layout float64
			for i := range pulls {
				took, tasks, laying := pull(page)
				if i == 0 {
					continue
				}
				steps, work, layout = append(steps, took...), work+tasks, layout+laying
			}
			n := float64(len(steps))
			if n < 20 {
				b.Fatalf("only %g answers of the pull were shown", n)
			}
			rows = append(rows,
				row{section.name + ": the page's work for an answer", work / n, section.work, "ms"},
				row{section.name + ": of that, styles and layout", layout / n, section.work, "ms"},
				row{section.name + ": moves to an answer shown", moves * (pulls - 1) / n, 2, "moves"},
				row{section.name + ": event to frame, median", quantile(steps, 0.5), 33, "ms"},
				row{section.name + ": event to frame, p95", quantile(steps, 0.95), 80, "ms"},
			)
		}
		return rows, nil
	})
}

// pull takes hold of the tip, moves it there and back, and lets go where it began. It returns how long each answer took [ms],
// and what the page's thread did meanwhile [ms].
func pull(page *browser.Page) (steps []float64, tasks, layout float64) {
	grip := page.Centre(`[data-testid="grip-tip"]`)
	path := make([]browser.Point, moves)
	for i := range path {
		path[i] = browser.Point{X: grip.X, Y: grip.Y - reach*math.Sin(2*math.Pi*float64(i+1)/moves)}
	}
	page.Grab(grip)
	browser.Eval[bool](page, `(performance.clearMeasures("finwright:drag"), true)`)
	tasks, layout = page.Work()
	page.Sweep(path, pace)
	time.Sleep(settleTime / 10)
	tasksNow, layoutNow := page.Work()
	steps = browser.Eval[[]float64](page, `performance.getEntriesByName("finwright:drag").map((entry) => entry.duration)`)
	page.Drop(grip)
	time.Sleep(settleTime / 5)
	return steps, tasksNow - tasks, layoutNow - layout
}
