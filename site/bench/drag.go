package main

import (
	"math"
	"time"

	"finwright/site/browser"
)

// drag pulls the fin tip up and down on a page at rest. The page measures each step itself, from the pointer event to the
// last redraw.
func drag() ([]row, error) {
	return with(func(b *bench, chromium *browser.Browser) ([]row, error) {
		page := chromium.Page(b, browser.Desk)
		page.Open("")
		page.WaitMark("finwright:painted")
		time.Sleep(settleTime)
		grip := page.Centre(`[data-testid="grip-tip"]`)
		for i := range 10 {
			away := browser.Point{X: grip.X, Y: grip.Y - 20*math.Pow(-1, float64(i))}
			page.Drag(grip, away, 20)
			grip = page.Centre(`[data-testid="grip-tip"]`)
		}
		steps := browser.Eval[[]float64](page, `performance.getEntriesByName("finwright:drag").map((entry) => entry.duration)`)
		if len(steps) < 20 {
			b.Fatalf("only %d steps of the drag were measured", len(steps))
		}
		return []row{
			{"a dragged dimension, event to redrawn, median", quantile(steps, 0.5), 33, "ms"},
			{"a dragged dimension, event to redrawn, p95", quantile(steps, 0.95), 33, "ms"},
		}, nil
	})
}
