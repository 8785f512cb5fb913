//go:build browser

package e2e

import (
	_ "embed"
	"fmt"
	"maps"
	"net/http"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/chromedp/chromedp/kb"

	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/proof"
	"finwright/core/units"
	"finwright/site/browser"
	"finwright/testdata/cases"
)

//go:embed faults.js
var faults string

var days = proof.Proof{Share: 5, Full: 200, Seed: 8}

// A day of editing while worker, network, storage, painter, clock and tabs fail at random moments. After each step what is
// in sight is what a fresh evaluation of the entries gives, or is marked; nothing that was entered is lost from the page,
// and after a reload nothing is lost but what was told as not kept.
func TestDayOfFaults(t *testing.T) {
	days.Run(t, func(c *proof.Case) {
		d := &day{Case: c, typed: map[string]string{}}
		d.address = host(c.TB, func(http.ResponseWriter, *http.Request) bool {
			if d.offline.Load() {
				hangUp()
			}
			return false
		})
		where := plain
		if c.Index%paintedDays == 0 {
			where = chromium
		}
		d.tab = where.Page(d, browser.Desk)
		defer d.tab.Close()
		d.tab.Before(faults)
		d.tab.Go(d.address)
		d.tab.WaitMark("finwright:drawn")
		d.check()
		for range stepsOfDay {
			d.step()
		}
	})
}

const (
	stepsOfDay  = 20
	paintedDays = 4 // one in so many is of a page with a painter, which costs as much as all else
)

// day is one such day. What fails tells the steps that led there.
type day struct {
	*proof.Case
	address string
	offline atomic.Bool
	tab     *browser.Page
	typed   map[string]string // what was typed and not replaced since, by key
	took    map[string]string // that, when storage last took it
	steps   []string
}

// Fatalf implements browser.TB.
func (d *day) Fatalf(format string, args ...any) {
	d.Case.Fatalf("%s\nafter: %s", fmt.Sprintf(format, args...), strings.Join(d.steps, "; "))
}

func (d *day) note(format string, args ...any) {
	d.steps = append(d.steps, fmt.Sprintf(format, args...))
}

func pick[T any](d *day, list ...T) T { return list[d.Rand.IntN(len(list))] }

// texts are what people type, by field; the last of each is out of its range.
var texts = map[string][]string{
	"tube_od":         {"1 in", "30 mm", "1 1/4", "38,1", "31.75 mm", "900 m"},
	"tube_wall":       {"14 BWG", "2.11 mm", "0.109 in", "300 mm"},
	"fin_height":      {"5/8 in", "12 mm", "13", "0,4 in", "7/16\"", "4 m"},
	"fin_pitch":       {"10 fpi", "3 mm", "2.5 mm", "8 fpi", "11", "9000 fpi"},
	"strip_thickness": {"0.4 mm", "0.016 in", "0.5 mm", "90 mm"},
	"tube_length":     {"20 ft", "6 m", "5500 mm", "12' 6\"", "9 km"},
	"plain_end_a":     {"40 mm", "1 1/2 in", "0 mm", "800 m"},
	"quantity":        {"1", "24", "300", "-4"},
	"air_in":          {"30 °C", "20 °C", "95 °F", "-9000 °C"},
	"face_velocity":   {"3 m/s", "2.5 m/s", "600 ft/min", "9000 m/s"},
	"inside_flow":     {"15 kg/s", "9 kg/s", "40000 lb/h", "-1 kg/s"},
	"rows":            {"4", "5", "6", "900"},
	"own_tube_name":   {"Alloy 7", "Ünusual <b>", "x"},
}

var (
	junk       = []string{"high", "1 2 3 mm", "1e999", "NaN", "∞ mm", "<b>1</b>", "12 parsec", "--3", "5/0 in"}
	choices    = []string{"fin_type", "fin_type", "fin_metal", "tube_metal", "layout", "inside_fluid", "film_source", "fin_profile"}
	shopValues = map[string][]string{"name": {"Some shop", "Other shop"}, "currency": {"EUR", "USD"}, "lines/0/strip_speed": {"2.5 m/s", "2 m/s", "fast"}, "lines/0/run_up": {"2 s", "3 s", "-9 s"}}
)

// fault draws what fails and when, from the step's beginning on.
func (d *day) fault() {
	for range pick(d, 0, 1, 1, 2) {
		after := pick(d, 0, 5, 20, 60, 120, 200, 400) * d.Rand.IntN(2)
		kind := pick(d, "close", "throw", "hang", "full", "barred", "mend", "mend", "unframe", "context", "ahead", "back", "hide", "sleep", "network", "network")
		d.note("[%s in %d ms]", kind, after)
		if kind == "network" {
			time.AfterFunc(time.Duration(after)*time.Millisecond, func() { d.offline.Store(!d.offline.Load()) })
			continue
		}
		d.later(kind, after)
		switch kind { // these pass
		case "hide":
			d.later("show", after+100+d.Rand.IntN(500))
		case "sleep":
			d.later("wake", after+100+d.Rand.IntN(500))
		}
	}
}

func (d *day) later(kind string, ms int) {
	browser.Eval[bool](d.tab, fmt.Sprintf("(day.later(%s, %d), true)", js(kind), ms))
}

// step does one thing while others fail, and checks what came of it.
func (d *day) step() {
	acts := []struct {
		weight int
		do     func()
	}{
		{6, d.enter},
		{2, d.halfType},
		{2, d.choose},
		{2, d.hold},
		{1, d.pull},
		{3, d.undo},
		{2, d.section},
		{2, d.units},
		{1, d.example},
		{1, d.addSpan},
		{1, d.span},
		{1, d.removeSpan},
		{1, d.title},
		{1, d.shop},
		{2, d.reload},
		{1, d.another},
		{2, d.stopEngine},
	}
	total := 0
	for _, a := range acts {
		total += a.weight
	}
	n := d.Rand.IntN(total)
	for _, a := range acts {
		if n -= a.weight; n < 0 {
			d.fault()
			a.do()
			break
		}
	}
	d.check()
}

func (d *day) enter() {
	field := d.field()
	text := pick(d, texts[field]...)
	if d.Rand.IntN(4) == 0 {
		text = pick(d, junk...)
	}
	d.note("%s: %s", field, text)
	d.typed[field] = text
	d.tab.Type(entry(field), text)
}

// field is one that is in sight and takes a text.
func (d *day) field() string {
	n := d.Rand.IntN(1 << 20)
	shown := browser.Eval[[]string](d.tab, `[...document.querySelectorAll("#entries input.moves[name]")].filter((input) => input.checkVisibility()).map(({name}) => name)`)
	shown = slices.DeleteFunc(shown, func(field string) bool { return texts[field] == nil })
	return shown[n%len(shown)]
}

func (d *day) halfType() {
	field := d.field()
	whole := pick(d, texts[field]...)
	text := whole[:1+d.Rand.IntN(len(whole))]
	for !utf8.ValidString(text) {
		text = whole[:len(text)+1]
	}
	d.note("%s: %s without Enter", field, text)
	d.typed[field] = text
	d.tab.Focus(entry(field))
	browser.Eval[bool](d.tab, "("+element(entry(field))+".select(), true)")
	d.tab.Press(text)
}

func (d *day) choose() {
	id := pick(d, choices...)
	value := pick(d, field.Must(id).Choices()...)
	if !d.there(entry(id)) {
		return
	}
	d.note("%s: %s", id, value)
	d.typed[id] = value
	d.tab.Focus(entry(id))
	choose(d.tab, entry(id), value)
}

func (d *day) hold() {
	field, times := d.field(), 1+d.Rand.IntN(30)
	d.note("%s: %d steps", field, times)
	delete(d.typed, field)
	d.tab.Focus(entry(field))
	d.tab.Press(strings.Repeat(pick(d, kb.ArrowUp, kb.ArrowDown), times))
}

func (d *day) pull() {
	grips := []string{"tip", "tube", "wall", "pitch", "strip"}
	name := pick(d, grips...)
	x, y := float64(d.Rand.IntN(41)-20), float64(d.Rand.IntN(41)-20)
	if !d.there(grip(name)) {
		return
	}
	d.note("grip %s by %g, %g", name, x, y)
	at := d.tab.Centre(grip(name))
	d.tab.Drag(at, moved(at, x, y), 1+d.Rand.IntN(6))
	delete(d.typed, map[string]string{"tip": "fin_height", "tube": "tube_od", "wall": "tube_wall", "pitch": "fin_pitch", "strip": "strip_thickness"}[name])
}

func (d *day) there(selector string) bool {
	return browser.Eval[bool](d.tab, element(selector)+"?.checkVisibility() ?? false")
}

func (d *day) press(name string) {
	d.note("%s", name)
	d.tab.Click(id(name))
}

func (d *day) undo() {
	d.press(pick(d, "undo", "undo", "redo"))
	clear(d.typed)
}

func (d *day) section() { d.press(pick(d, "section-surface", "section-heat", "section-making")) }

func (d *day) units() { d.press(pick(d, "units-si", "units-us")) }

func (d *day) addSpan() {
	if d.there(id("add-span")) { // its group is not folded
		d.press("add-span")
	}
}

func (d *day) example() {
	d.press("examples")
	d.press("example-" + pick(d, cases.List()...).ID)
	clear(d.typed)
}

func (d *day) span() {
	part, text := pick(d, "centre", "width"), pick(d, "1 m", "60 mm", "3 ft", "wide", "90 m")
	if !d.there(id("span-0-" + part)) {
		return
	}
	d.note("%s: %s", spanKey(0, part), text)
	d.typed[spanKey(0, part)] = text
	d.tab.Type(id("span-0-"+part), text)
}

func (d *day) removeSpan() {
	if !d.there(id("span-0-remove")) {
		return
	}
	d.press("span-0-remove")
	delete(d.typed, spanKey(0, "centre"))
	delete(d.typed, spanKey(0, "width"))
}

func (d *day) title() {
	d.typed["title"] = pick(d, "Cooler", "Ünusual <b>tube</b>", "7")
	d.note("title: %s", d.typed["title"])
	d.tab.Type(id("design-title"), d.typed["title"])
}

// shop edits a value of the shop's file in its dialog.
func (d *day) shop() {
	path := pick(d, slices.Sorted(maps.Keys(shopValues))...)
	value := pick(d, shopValues[path]...)
	d.note("shop %s: %s", path, value)
	browser.Eval[bool](d.tab, "("+element(id("shop-open"))+".click(), true)")
	d.rest()
	if browser.Eval[bool](d.tab, element("#shop")+".open && "+inRoom("room.find("+js(path)+") !== null")) {
		enterInShop(d.tab, path, value)
		d.typed["shop "+path] = value
		d.fault()
		d.rest()
	}
	browser.Eval[bool](d.tab, "("+element(id("shop-close"))+".click(), true)")
}

// inShop is what stands in the room of the shop at a path.
func (d *day) inShop(path string) string {
	return browser.Eval[string](d.tab, `(() => {
		`+roomScript+`;
		document.getElementById("shop-open").click();
		const text = room.value(`+js(path)+`) ?? "";
		document.getElementById("shop-close").click();
		return text;
	})()`)
}

// stopEngine types what the engine never gets over.
func (d *day) stopEngine() {
	d.note("the engine stops at 13.13")
	browser.Eval[bool](d.tab, `(day.deafTo = "13.13", true)`)
	d.typed["fin_height"] = "13.13 mm"
	d.tab.Type(entry("fin_height"), "13.13 mm")
}

// another tab with the same storage, which edits too.
func (d *day) another() {
	d.offline.Store(false)
	d.note("another tab")
	first, typed, took := d.tab, d.typed, d.took
	d.tab, d.typed = first.Beside(), map[string]string{}
	d.tab.Before(faults)
	d.tab.Go(d.address)
	d.rest()
	if trouble := d.tab.Text("#trouble"); trouble != "" {
		d.Fatalf("another tab does not load: %s", trouble)
	}
	for range 2 {
		pick(d, d.enter, d.enter, d.title, d.units)()
		d.check()
	}
	d.tab.Close()
	d.note("back")
	d.tab, d.typed, d.took = first, typed, took
}

// reload goes on with what storage holds, at rest or right behind an entry.
func (d *day) reload() {
	if d.Rand.IntN(2) == 0 {
		d.enter()
	} else {
		d.rest()
	}
	d.note("reload")
	state := browser.Eval[struct {
		Saved, Storage string
		Controlled     bool
	}](d.tab, `(() => {
		const state = {Saved: day.saved, Storage: day.storage, Controlled: navigator.serviceWorker.controller !== null};
		day.old = true;
		return state;
	})()`)
	if !state.Controlled {
		d.offline.Store(false) // or there is no page
	}
	browser.Eval[bool](d.tab, "(location.reload(), true)")
	d.tab.Wait("globalThis.day && !day.old && document.readyState === 'complete'")
	for key := range d.typed {
		if state.Storage == "barred" || state.Saved == "" && d.typed[key] != d.took[key] || strings.HasPrefix(key, "shop ") {
			delete(d.typed, key)
		}
	}
}

// rest waits until nothing is on its way.
func (d *day) rest() { d.tab.Wait("globalThis.day?.rest()") }

// check waits until the page is at rest and judges what is in sight.
func (d *day) check() {
	d.rest()
	s := browser.Eval[sight](d.tab, "day.sight")
	wrong := judge(d.tab, s, d.typed)
	for key, text := range d.typed {
		if path, ofShop := strings.CutPrefix(key, "shop "); ofShop {
			if got := d.inShop(path); got != text {
				wrong = append(wrong, fmt.Sprintf("%s: %q is gone, %q is there", key, text, got))
			}
		} else if !s.holds(key, text) {
			wrong = append(wrong, fmt.Sprintf("%s: %q is gone", key, text))
		}
	}
	if s.Saved != "" {
		d.took = maps.Clone(d.typed)
	} else if !slices.ContainsFunc(s.Notes, notKept) {
		wrong = append(wrong, fmt.Sprintf("it was not told that nothing is kept, only %q", s.Notes))
	}
	if len(wrong) > 0 {
		d.Fatalf("%s: %s\nnotes: %q, status: %s", s.State, strings.Join(wrong, "\n"), s.Notes, s.Status)
	}
}

func notKept(told string) bool {
	return told == text("page.not_kept") || told == text("page.storage_full")
}

// holds reports whether what was typed is on the page, as it was typed.
func (s sight) holds(key, text string) bool {
	if key == "title" {
		return s.Title == text
	}
	for i, span := range s.Spans {
		for part, e := range map[string]entryInSight{"centre": span.Centre, "width": span.Width} {
			if key == spanKey(i, part) {
				return e.shows(document.Command{Op: "span", Part: part}, text)
			}
		}
	}
	for _, f := range s.Fields {
		if f.ID == key {
			return entryInSight{f.Value, f.Typed, f.Error}.shows(document.Command{Op: "set", Values: []document.Value{{Field: key}}}, text)
		}
	}
	return false
}

// shows reports whether the entry holds text, or what a field makes of it: with the unit that was in sight behind a number alone.
func (e entryInSight) shows(command document.Command, text string) bool {
	if e.Value == text || e.Typed == text || strings.HasPrefix(e.Typed, text+" ") {
		return true
	}
	command.Text = text
	for i := range command.Values {
		command.Values[i].Text = &text
	}
	return slices.ContainsFunc([]units.System{units.SI, units.US}, func(system units.System) bool {
		d := document.New()
		d.Units, d.Spans = system, make([]document.Span, 1)
		d, err := document.Edit(d, command)
		made := d.Spans[0].Centre.Text + d.Spans[0].Width.Text
		for _, v := range command.Values {
			made = d.Fields[v.Field].Text
		}
		return err == nil && made == e.Typed
	})
}
