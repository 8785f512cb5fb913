package browser

import (
	"context"
	"strconv"
	"strings"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// Point is a place in the window [CSS px from its top left corner].
type Point struct{ X, Y float64 }

// quote makes a JavaScript string literal.
func quote(text string) string { return strconv.Quote(text) }

// element is a JavaScript expression for the first element of a CSS selector.
func element(selector string) string { return "document.querySelector(" + quote(selector) + ")" }

// Text returns the visible text of an element, once it is there.
func (p *Page) Text(selector string) string {
	p.tb.Helper()
	p.Wait(element(selector))
	return strings.TrimSpace(Eval[string](p, element(selector)+`.innerText ?? `+element(selector)+`.textContent`))
}

// Value returns the value of a form field.
func (p *Page) Value(selector string) string {
	p.tb.Helper()
	p.Wait(element(selector))
	return Eval[string](p, element(selector)+".value")
}

// WaitText waits until an element's text is want.
func (p *Page) WaitText(selector, want string) {
	p.tb.Helper()
	p.Wait(element(selector) + "?.textContent.trim() === " + quote(want))
}

// Centre scrolls an element into view and returns the middle of what it covers, once that has stood still for a frame: a
// menu is put in its place after it has opened.
func (p *Page) Centre(selector string) Point {
	p.tb.Helper()
	p.Wait(element(selector))
	return Eval[Point](p, `(async () => {
		const element = `+element(selector)+`;
		for (let last = null; ; ) {
			element.scrollIntoView({block: "nearest", inline: "nearest", behavior: "instant"}); // each time: what is above it may grow
			const box = element.getBoundingClientRect();
			if (!element.checkVisibility({visibilityProperty: true})) box.x = NaN; // it has not come to its place
			if (last && box.x === last.x && box.y === last.y && box.width === last.width && box.height === last.height) {
				return {X: box.x + box.width / 2, Y: box.y + box.height / 2};
			}
			last = box;
			await new Promise(requestAnimationFrame);
		}
	})()`)
}

// Click presses and releases the left button on the middle of an element.
func (p *Page) Click(selector string) {
	p.tb.Helper()
	p.ClickAt(p.Centre(selector))
}

// ClickAt presses and releases the left button at a place.
func (p *Page) ClickAt(at Point) {
	p.tb.Helper()
	p.do(chromedp.MouseClickXY(at.X, at.Y))
}

// Type replaces the text of a form field by typing, and leaves the field with Enter, as people do.
func (p *Page) Type(selector, text string) {
	p.tb.Helper()
	p.Focus(selector)
	p.do(chromedp.Evaluate[chromedp.Void](element(selector)+".select()"), chromedp.KeyEvent(text), chromedp.KeyEvent("\r"))
}

// Focus puts the keyboard on an element, as soon as no dialog bars the way. One that lies folded is found as by the browser's search.
func (p *Page) Focus(selector string) {
	p.tb.Helper()
	p.Wait("((e) => e && (" + found + ", e.focus(), document.activeElement === e))(" + element(selector) + ")")
}

// found opens what the element e lies folded in.
const found = `e.closest("[hidden=until-found]")?.dispatchEvent(new Event("beforematch", {bubbles: true}))`

// Press presses keys one after another; package kb names those that print nothing, such as kb.ArrowUp.
func (p *Page) Press(keys string, modifiers ...chromedp.Modifier) {
	p.tb.Helper()
	p.do(chromedp.KeyEvent(keys, chromedp.KeyModifiers(modifiers...)))
}

// Drag pulls with the left button from one place to another in equal steps.
func (p *Page) Drag(from, to Point, steps int) {
	p.tb.Helper()
	p.Grab(from)
	p.Pull(from, to, steps)
	p.Drop(to)
}

// Hover moves the pointer to a place.
func (p *Page) Hover(at Point) {
	p.tb.Helper()
	p.mouse(chromedp.MouseMoved, at, input.MouseButtonNone, 0)
}

// Grab presses the left button at a place and holds it.
func (p *Page) Grab(at Point) {
	p.tb.Helper()
	p.mouse(chromedp.MouseMoved, at, input.MouseButtonNone, 0)
	p.mouse(chromedp.MousePressed, at, input.MouseButtonLeft, 1)
}

// Pull moves what Grab holds from one place to another in equal steps.
func (p *Page) Pull(from, to Point, steps int) {
	p.tb.Helper()
	for _, at := range between(from, to, steps) {
		p.mouse(chromedp.MouseMoved, at, input.MouseButtonLeft, 1)
	}
}

// Drop lets go of what Grab holds.
func (p *Page) Drop(at Point) {
	p.tb.Helper()
	p.mouse(chromedp.MouseReleased, at, input.MouseButtonLeft, 0)
}

func (p *Page) mouse(kind input.DispatchMouseEventType, at Point, button input.MouseButton, buttons int64) {
	p.tb.Helper()
	p.do(chromedp.MouseEvent(kind, at.X, at.Y, func(event *input.DispatchMouseEventParams) {
		event.Button, event.Buttons, event.ClickCount = button, buttons, 1
	}))
}

// Swipe pulls with one finger.
func (p *Page) Swipe(from, to Point, steps int) {
	p.tb.Helper()
	p.Touch(from, to, steps)
	p.Lift()
}

// Touch puts a finger on a place and moves it to another one, where it stays until Lift.
func (p *Page) Touch(from, to Point, steps int) {
	p.tb.Helper()
	p.touch(input.DispatchTouchEventTypeTouchStart, from)
	for _, at := range between(from, to, steps) {
		p.touch(input.DispatchTouchEventTypeTouchMove, at)
	}
}

// Lift takes the finger of Touch away.
func (p *Page) Lift() {
	p.tb.Helper()
	p.touch(input.DispatchTouchEventTypeTouchEnd)
}

// Pinch moves two fingers apart, or together, along a level line through the middle: each from and to is a distance from it.
func (p *Page) Pinch(middle Point, from, to float64, steps int) {
	p.tb.Helper()
	fingers := func(apart float64) []Point {
		return []Point{{middle.X - apart, middle.Y}, {middle.X + apart, middle.Y}}
	}
	p.touch(input.DispatchTouchEventTypeTouchStart, fingers(from)...)
	for _, at := range between(Point{from, 0}, Point{to, 0}, steps) {
		p.touch(input.DispatchTouchEventTypeTouchMove, fingers(at.X)...)
	}
	p.touch(input.DispatchTouchEventTypeTouchEnd)
}

func (p *Page) touch(kind input.DispatchTouchEventType, fingers ...Point) {
	p.tb.Helper()
	points := []*input.TouchPoint{}
	for i, at := range fingers {
		id := float64(i)
		points = append(points, &input.TouchPoint{X: at.X, Y: at.Y, ID: &id})
	}
	p.do(chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
		return err
	}))
}

// Wheel turns the mouse wheel at a place; down is positive [CSS px].
func (p *Page) Wheel(at Point, down float64) {
	p.tb.Helper()
	p.do(chromedp.MouseEvent(chromedp.MouseWheel, at.X, at.Y, func(event *input.DispatchMouseEventParams) { event.DeltaY = down }))
}

// between returns steps places on the way, the last one at its end.
func between(from, to Point, steps int) []Point {
	var places []Point
	for i := 1; i <= steps; i++ {
		part := float64(i) / float64(steps)
		places = append(places, Point{from.X + part*(to.X-from.X), from.Y + part*(to.Y-from.Y)})
	}
	return places
}
