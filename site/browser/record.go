package browser

import (
	"context"
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
	workers    map[target.ID]bool
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
		if event.Entry.Level == log.EntryLevelError || event.Entry.Level == log.EntryLevelWarning {
			r.complain("log:", string(event.Entry.Level), event.Entry.Text, event.Entry.URL)
		}
	case *target.EventAttachedToTarget:
		if info := event.TargetInfo; strings.HasSuffix(info.Type, "worker") && !r.workers[info.TargetID] {
			if r.workers == nil {
				r.workers = map[target.ID]bool{}
			}
			r.workers[info.TargetID] = true
			go r.listen(tab, info.TargetID)
		}
	}
}

// listen attaches to a worker. One that ends first has nothing more to say.
func (r *record) listen(tab context.Context, id target.ID) {
	worker, _ := chromedp.NewContext(tab, chromedp.WithTargetID(id), chromedp.WithDetachOnCancel(),
		chromedp.WithListener(func(event any) { r.note(tab, event) }))
	if err := chromedp.Do(worker); err != nil {
		return
	}
}
