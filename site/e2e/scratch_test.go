//go:build browser

package e2e

import (
	"encoding/json"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
	"finwright/site/browser"
)

// described is the shop that the test describes: nothing in it but what the keys of the file ask for, with some of it changed.
func described(t *testing.T) shop.Capability {
	t.Helper()
	c := shop.Begin("Works by the river")
	more := func(lists ...string) {
		for _, list := range lists {
			var faults []shop.Fault
			if c, faults = c.More(list); faults != nil {
				t.Fatalf("%s: %v", list, faults)
			}
		}
	}
	more("lines/0/types", "lines/0/types", "lines/0/coils", "forming", "forming", "rates/tube_metals", "rates/fin_metals", "rates/fin_metals", "measured", "buying/quotes")
	more("lines/0/types/0/tools", "lines/0/types/0/tools", "lines/0/types/1/tools", "lines/0/types/1/fin_height_by_od")
	var list []shop.Entered
	for path, text := range map[string]string{
		"currency": "CHF", "lines/0/name": "Old line", "lines/0/tube_od/low": "62 mm", "lines/0/tube_od/high": "90 mm", "lines/0/strip_speed": "7 ft/s", "lines/0/first_off": "3",
		"lines/0/tube_sizes/0": "63 mm", "lines/0/tube_sizes/1": "70 mm", "lines/0/types/0/spindle": "650 rpm", "lines/0/types/0/oiler": "false", "lines/0/types/0/knurl": "0.3 mm",
		"lines/0/types/0/fin_metals/=al1060": "true", "lines/0/types/1/fin_metals/=c12200": "true", "lines/0/types/0/tube_metals/=cs": "true",
		"lines/0/types/0/tools/1/height": "7/8 in", "lines/0/coils/1/form": "traverse", "lines/0/coils/1/width": "310 mm", "forming/1/metal": "copper", "forming/1/stretch": "2.05",
		"cutting/stock/0": "11 m", "cutting/kerf": "3 mm", "buying/coil_used": "first", "rates/line": "71 /h", "rates/breaks/0": "7", "rates/breaks/1": "70",
		"rates/fin_metals/1/metal": "c12200", "rates/fin_metals/1/price": "13 /kg", "measured/0/cut": "6.1 m", "measured/0/finished": "6.108 m", "measured/0/finned": "6 m", "buying/quotes/0/quoted": "31 each",
	} {
		list = append(list, shop.Entered{Path: path, Text: text})
	}
	c, faults := c.Enter(list)
	if faults != nil {
		t.Fatal(faults)
	}
	return c
}

// keyboard works in the room by keys alone.
type keyboard struct {
	*browser.Page
	t *testing.T
}

// at is the place of the cell in hand.
func (k keyboard) at() (row, column int) {
	k.t.Helper()
	place := browser.Eval[string](k.Page, `document.getElementById("shop-grid").getAttribute("aria-activedescendant").slice("shop-grid-".length)`)
	a, b, _ := strings.Cut(place, "-")
	row, _ = strconv.Atoi(a)
	column, _ = strconv.Atoi(b)
	return row, column
}

func (k keyboard) times(key string, n int) {
	if n > 0 {
		k.Press(strings.Repeat(key, n))
	}
}

// goTo moves to a cell.
func (k keyboard) goTo(row, column int) {
	k.t.Helper()
	r, c := k.at()
	k.times(kb.ArrowDown, row-r)
	k.times(kb.ArrowUp, r-row)
	k.times(kb.ArrowRight, column-c)
	k.times(kb.ArrowLeft, c-column)
	if r, c = k.at(); r != row || c != column {
		k.t.Fatalf("at %d, %d and not at %d, %d", r, c, row, column)
	}
}

// turnTo turns to a subject and goes into its table.
func (k keyboard) turnTo(table string) {
	k.t.Helper()
	const chosen = `document.querySelector('#shop-tabs [aria-selected="true"]')`
	for browser.Eval[bool](k.Page, `!document.activeElement.matches('#shop-tabs [role="tab"]')`) {
		k.Press(kb.Tab, chromedp.ModifierShift)
	}
	k.Press(kb.Home)
	for browser.Eval[string](k.Page, chosen+".dataset.table") != table {
		k.Press(kb.ArrowDown)
	}
	k.Press(kb.Tab)
	k.Wait(`document.activeElement.id === "shop-grid"`)
}

// enter types a text into the cell in hand, or chooses it.
func (k keyboard) enter(cell report.ShopCell, choices []report.Choice) {
	k.t.Helper()
	if len(choices) == 2 {
		k.Press(" ")
		return
	}
	if cell.Text == "" {
		k.Press(kb.Delete)
		return
	}
	text := cell.Text
	for _, c := range choices {
		if c.ID == text {
			text = c.Text
		}
	}
	k.Press(text)
	k.Press(kb.Enter)
}

// settled waits until what was entered has been answered.
func (k keyboard) settled() {
	k.t.Helper()
	k.Wait(`document.querySelector("#shop-grid").dataset.waiting === "0"`)
}

// A shop is described from nothing by the keyboard alone, saved as a file, and the file opened again is that shop.
func TestShopIsDescribedByKeyboard(t *testing.T) {
	want := described(t)
	tables := report.Writer{Texts: message.English(), System: units.SI}.ShopTables(want).Tables
	page := opened(t, browser.Desk, "")
	openShop(page)
	k := keyboard{page, t}
	page.Focus(id("shop-begin"))
	page.Press(kb.Enter)
	page.Wait(`document.querySelector("#shop-title").textContent === "New shop"`)

	// As many of each thing as there are to be; what is part of one comes after it.
	for _, table := range tables {
		wanted := map[string]int{}
		for _, column := range table.Columns {
			if r := column.Record; r != nil && !r.New {
				wanted[r.List]++
			}
		}
		for _, row := range table.Rows {
			if r := row.Record; r != nil && !r.New {
				wanted[r.List]++
			}
		}
		for _, list := range slices.Sorted(maps.Keys(wanted)) {
			items := fmt.Sprintf(`%s.split("/").reduce((node, step) => node[step], JSON.parse(JSON.parse(localStorage.getItem("finwright.shop")).shop)).length`, js(list))
			for n := browser.Eval[int](page, items); n < wanted[list]; n++ {
				k.turnTo(table.ID)
				var row, column int
				place := browser.Eval[string](page, fmt.Sprintf(`document.querySelector('#shop-grid [data-key^="%s/"]').id.slice("shop-grid-".length)`, list))
				fmt.Sscanf(place, "%d-%d", &row, &column)
				k.goTo(row, column)
				page.Press(kb.Enter, chromedp.ModifierCtrl)
				page.Wait(fmt.Sprintf("%s === %d", items, n+1))
			}
		}
	}

	// Each value that is not as it is to be.
	for _, table := range tables {
		k.turnTo(table.ID)
		for r, row := range table.Rows {
			for c, cell := range row.Cells {
				shown := fmt.Sprintf(`document.getElementById("shop-grid-%d-%d")?.firstElementChild.textContent ?? "?"`, r, c)
				if browser.Eval[string](page, shown) == inWords(table, cell) {
					continue
				}
				k.goTo(r, c)
				if browser.Eval[string](page, shown) != inWords(table, cell) {
					k.enter(cell, table.Sorts[cell.Sort].Choices)
					k.settled()
				}
			}
		}
	}

	browser.Eval[bool](page, `(globalThis.saved = [], HTMLAnchorElement.prototype.click = function () {}, URL.createObjectURL = ((make) => (file) => (file.text().then((text) => saved.push(text)), make(file)))(URL.createObjectURL), true)`)
	page.Focus(id("shop-save"))
	page.Press(kb.Enter)
	page.Wait("saved.length === 1")
	saved := browser.Eval[string](page, "saved[0]")
	var got, wanted any
	if json.Unmarshal([]byte(saved), &got) != nil || json.Unmarshal(want.Save(), &wanted) != nil {
		t.Fatalf("not a file: %.300s", saved)
	}
	if !reflect.DeepEqual(got, wanted) {
		t.Fatalf("described is\n%s\nnot\n%s", saved, want.Save())
	}

	page.Focus(id("shop-reset"))
	page.Press(kb.Enter)
	page.Wait(`document.querySelector("#shop-title").textContent === ` + js(shop.House().Name))
	openShopFile(page, saved, "works.json")
	page.Wait(`document.querySelector("#shop-title").textContent === "Works by the river"`)
	page.Wait(`JSON.parse(localStorage.getItem("finwright.shop")).shop === ` + js(saved))
	quiet(t, page)
}

// inWords is what a cell shows.
func inWords(table report.ShopTable, cell report.ShopCell) string {
	for _, c := range table.Sorts[cell.Sort].Choices {
		if c.ID == cell.Text {
			return c.Text
		}
	}
	return cell.Text
}

func openShopFile(page *browser.Page, text, name string) {
	browser.Eval[bool](page, fmt.Sprintf(`(() => {
		const files = new DataTransfer();
		files.items.add(new File([%s], %s));
		const input = document.getElementById("shop-input");
		input.files = files.files;
		return input.dispatchEvent(new Event("change"));
	})()`, js(text), js(name)))
}

// A file that is no shop's, or is wrong, is refused by its name with all that is wrong and where, and the shop stays.
func TestWrongShopFileIsRefusedByNameAndPlace(t *testing.T) {
	page := opened(t, browser.Desk, "")
	openShop(page)
	before := page.Text("#shop-title")
	wrong := strings.Replace(strings.Replace(string(shop.House().Save()), `"65 /h"`, `"dear"`, 1), `"people": 2`, `"people": 2.5`, 1)
	openShopFile(page, wrong, "works.json")
	page.Wait(element(id("shop-said")) + `.textContent.includes("works.json")`)
	said := page.Text(id("shop-said"))
	for _, part := range []string{"Rates, Line per hour: ", "dear", "Crew, People: "} {
		if !strings.Contains(said, part) {
			t.Errorf("%q is not in %q", part, said)
		}
	}
	openShopFile(page, "{}", "letter.json")
	page.Wait(element(id("shop-said")) + `.textContent.includes("letter.json") && ` + element(id("shop-said")) + `.textContent.includes("not a capability file")`)
	if got := page.Text("#shop-title"); got != before {
		t.Errorf("the shop is %q", got)
	}
}
