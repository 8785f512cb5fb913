package browser

import (
	"context"
	"maps"
	"slices"
	"strings"
	"sync"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/cdproto/target"
	"github.com/chromedp/chromedp"
)

// record keeps what a tab, its frames and its workers ask for and complain of.
type record struct {
	mutex      sync.Mutex
	requests   []string
	complaints []string
	workers    map[target.ID]context.Context
}

// Requests lists the addresses asked for, in order.
func (r *record) Requests() []string {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	return slices.Clone(r.requests)
}

// Complaints lists the warnings and errors on the console, and exceptions that nothing caught.
func (r *record) Complaints() []string {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	return slices.Clone(r.complaints)
}

// Forget drops what has been asked for and complained of so far.
func (r *record) Forget() {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	r.requests, r.complaints = nil, nil
}

func (r *record) complain(words ...string) {
	r.complaints = append(r.complaints, strings.Join(words, " "))
}

// note takes one event of the tab or of a worker. A new worker is a target of its own and gets listened to as well.
func (r *record) note(tab context.Context, event any) {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	switch event := event.(type) {
	case *network.EventRequestWillBeSent:
		r.requests = append(r.requests, event.Request.URL)
	case *runtime.EventExceptionThrown:
		details := event.ExceptionDetails
		words := []string{"exception:", details.Text, details.URL}
		if details.Exception != nil {
			words = append(words, details.Exception.Description)
		}
		r.complain(words...)
	case *runtime.EventConsoleAPICalled:
		if event.Type == runtime.ConsoleAPICalledTypeError || event.Type == runtime.ConsoleAPICalledTypeWarning || event.Type == runtime.ConsoleAPICalledTypeAssert {
			words := []string{"console:", string(event.Type)}
			for _, argument := range event.Args {
				words = append(words, string(argument.Value), argument.Description)
			}
			r.complain(words...)
		}
	case *log.EventEntryAdded:
		// What was fetched ahead is wanted some seconds later on a busy machine: a remark on the machine, not on the page.
		late := strings.Contains(event.Entry.Text, "preloaded using link preload but not used within a few seconds")
		if event.Entry.Level == log.EntryLevelError || event.Entry.Level == log.EntryLevelWarning && !late {
			r.complain("log:", string(event.Entry.Level), event.Entry.Text, event.Entry.URL)
		}
	case *target.EventAttachedToTarget:
		if info := event.TargetInfo; strings.HasSuffix(info.Type, "worker") && r.workers[info.TargetID] == nil {
			worker, _ := chromedp.NewContext(tab, chromedp.WithTargetID(info.TargetID), chromedp.WithDetachOnCancel(),
				chromedp.WithListener(func(event any) { r.note(tab, event) }))
			if r.workers == nil {
				r.workers = map[target.ID]context.Context{}
			}
			r.workers[info.TargetID] = worker
			// Attaching takes commands, which this loop must not wait for. A worker that ends first has nothing more to say.
			go chromedp.Do(worker)
		}
	}
}

// InWorkers evaluates a JavaScript expression in every worker that still runs, and returns their number.
func (p *Page) InWorkers(expression string) int {
	p.mutex.Lock()
	workers := slices.Collect(maps.Values(p.workers))
	p.mutex.Unlock()
	reached := 0
	for _, worker := range workers {
		if _, err := run(worker, chromedp.Evaluate[chromedp.Void](expression)); err == nil {
			reached++
		}
	}
	return reached
}
