package browser

import (
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"
)

// Work is the processor time of the page's own thread so far [ms]: tasks of every kind, and of those layout with styles.
func (p *Page) Work() (tasks, layout float64) {
	p.tb.Helper()
	if _, err := chromedp.Call(p.context, performance.Enable, performance.EnableParams{TimeDomain: performance.EnableTimeDomainThreadTicks}); err != nil {
		p.tb.Fatalf("work: %v", err)
	}
	got, err := chromedp.Call(p.context, performance.GetMetrics, cdp.Empty{})
	if err != nil {
		p.tb.Fatalf("work: %v", err)
	}
	for _, m := range got.Metrics {
		switch m.Name {
		case "TaskDuration":
			tasks = 1000 * m.Value
		case "LayoutDuration", "RecalcStyleDuration":
			layout += 1000 * m.Value
		}
	}
	return tasks, layout
}

// Throttle makes the processor of the page's own thread so many times slower; 1 is as it is.
func (p *Page) Throttle(times float64) {
	p.tb.Helper()
	if _, err := chromedp.Call(p.context, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: times}); err != nil {
		p.tb.Fatalf("throttle: %v", err)
	}
}

// Sweep moves what Grab holds along a path at a pointer's pace, whether the page keeps up or not.
func (p *Page) Sweep(path []Point, pace time.Duration) {
	p.tb.Helper()
	done := make(chan error, len(path))
	for _, at := range path {
		go func() {
			_, err := run(p.context, chromedp.MouseEvent(chromedp.MouseMoved, at.X, at.Y, func(event *input.DispatchMouseEventParams) {
				event.Button, event.Buttons = input.MouseButtonLeft, 1
			}))
			done <- err
		}()
		time.Sleep(pace)
	}
	for range path {
		if err := <-done; err != nil {
			p.tb.Fatalf("sweep: %v", err)
		}
	}
}
