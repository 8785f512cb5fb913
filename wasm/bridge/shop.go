package bridge

import (
	"fmt"
	"sync"
	"sync/atomic"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/report"
	"finwright/core/shop"
	"finwright/core/units"
)

// house is the shipped shop, which is read once.
var house = sync.OnceValue(shop.House)

// lately is the file read last. The answer depends on its text alone: this only
// spares reading the same file again with every move of a pull.
var lately atomic.Pointer[openedShop]

type openedShop struct {
	text string
	shop shop.Capability
}

// marked is the fingerprint of the file that was printed last, which hangs on its text alone too.
var marked atomic.Pointer[markedShop]

type markedShop struct{ text, mark string }

func markOf(text string, c *shop.Capability) string {
	if last := marked.Load(); last != nil && last.text == text {
		return last.mark
	}
	mark := c.Fingerprint()
	marked.Store(&markedShop{text, mark})
	return mark
}

// openShop reads a capability file, the shipped one if there is none.
func openShop(text string) (shop.Capability, error) {
	if text == "" {
		return house(), nil
	}
	if last := lately.Load(); last != nil && last.text == text {
		return last.shop, nil
	}
	c, faults := shop.Open([]byte(text))
	if err := refused(faults); err != nil {
		return c, err
	}
	lately.Store(&openedShop{text, c})
	return c, nil
}

// plan adds the making of a document in its shop to a result, and the shop's currency to its writer.
func plan(w *report.Writer, d document.Document, in field.Input, res *design.Result) design.Production {
	w.Currency = in.Shop.Currency
	m := planWhole(in, res.Heat)
	m.TryChanges(d)
	res.AddMaking(&m)
	return m
}

// addMaking adds to a result what every section says of the making: the verdict of the line, its price and its figures.
// The input must have a shop.
func addMaking(w *report.Writer, in field.Input, res *design.Result) design.Production {
	w.Currency = in.Shop.Currency
	m := design.Brief(in, res.Heat)
	res.AddMaking(&m)
	return m
}

// rated reads and rates a document for the shop that is to make it. Making needs one; elsewhere, of one that cannot be read, only
// what it says is missing.
func rated(d document.Document, section report.Section, text string) (field.Input, design.Heat, error) {
	c, fault := openShop(text)
	madeBy := &c
	if fault != nil {
		madeBy = nil
	}
	in, h, err := design.ReadAndRate(d, madeBy)
	if err == nil && section.Making {
		err = fault
	}
	return in, h, err
}

// refused turns faults into an error with one message a path, the first of them named with its place.
func refused(faults []shop.Fault) error {
	if len(faults) == 0 {
		return nil
	}
	w := writerIn(units.SI)
	said := w.Faults(faults)
	if faults[0].Path == "" {
		return told{Message: message.New("shop.file.fault", "why", said[0].Message), fields: said}
	}
	return told{Message: message.New("shop.file.faults", "place", w.Place(faults[0].Path), "why", said[0].Message), fields: said}
}

type shopArgs struct {
	Shop string `json:"shop"`
}

type shopReply struct {
	Shop    string             `json:"shop"`
	Form    report.ShopTables  `json:"form"`
	Lifted  []string           `json:"lifted"`  // what its owner is to confirm of a file that an earlier version saved
	Refused []report.ShopFault `json:"refused"` // of what was entered
}

// shopForm lays a capability file open for editing.
func shopForm(a shopArgs) (shopReply, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return shopReply{}, err
	}
	return answerShop(c, nil), nil
}

// answerShop gives a capability to the page, which is about to send it again.
func answerShop(c shop.Capability, refused []shop.Fault) shopReply {
	text := string(c.Save())
	lately.Store(&openedShop{text, c})
	w := writerIn(units.SI)
	return shopReply{text, w.ShopTables(c), w.Lifted(c), w.Faults(refused)}
}

// shopCommand is one change of a capability file. Op says which members count:
// enter Entries, add Path, copy and remove Path Index, begin none.
type shopCommand struct {
	Op      string         `json:"op"`
	Path    string         `json:"path,omitempty"`
	Index   int            `json:"index,omitempty"`
	Entries []shop.Entered `json:"entries,omitempty"`
}

type editShopArgs struct {
	Shop    string      `json:"shop"`
	Command shopCommand `json:"command"`
}

// editShop changes a capability file, or refuses and says at which path and why. Of many texts that are entered at once those
// that hold are taken, and the others are told.
func editShop(a editShopArgs) (shopReply, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return shopReply{}, err
	}
	w := writerIn(units.SI)
	var faults []shop.Fault
	switch command := a.Command; command.Op {
	case "enter":
		c, faults = c.Enter(w.ShopEntries(c, command.Entries))
		return answerShop(c, faults), nil
	case "add":
		c, faults = c.More(command.Path)
	case "copy":
		c, faults = c.Copy(command.Path, command.Index)
	case "remove":
		c, faults = c.Remove(command.Path, command.Index)
	case "begin":
		c = shop.Begin(texts().Text("shop.begun"))
	default:
		return shopReply{}, fmt.Errorf("bridge: shop command %q", command.Op)
	}
	if err := refused(faults); err != nil {
		return shopReply{}, err
	}
	return answerShop(c, nil), nil
}

type shopEffectArgs struct {
	Document document.Document `json:"document"`
	Shop     string            `json:"shop"`
	Before   *string           `json:"before"` // the shop before what was last entered; null: nothing was
	Path     string            `json:"path"`   // of the entry in focus
	Day      string            `json:"day"`    // the page's, as 2026-11-27, from which it is promised
}

// shopEffect says what was last entered does to an order, and what the number in focus would do if it were a tenth less or more.
func shopEffect(a shopEffectArgs) (report.ShopEffect, error) {
	if err := document.Check(a.Document); err != nil {
		return report.ShopEffect{}, err
	}
	c, err := openShop(a.Shop)
	if err != nil {
		return report.ShopEffect{}, err
	}
	w := writer(a.Document)
	w.Currency = c.Currency
	day, _ := shop.ParseDay(a.Day) // none is promised from a day that is none
	var list []report.ShopMade
	made := func(column string, c shop.Capability) error {
		in, h, err := design.ReadAndRate(a.Document, &c)
		if err == nil {
			made := design.Brief(in, h)
			made.Day = day
			list = append(list, report.ShopMade{Column: column, Made: made})
		}
		return err
	}
	if a.Before != nil {
		before := house()
		faults := []shop.Fault(nil)
		if *a.Before != "" {
			before, faults = shop.Open([]byte(*a.Before))
		}
		if faults == nil {
			if err := made("shop.effect.before", before); err != nil {
				return report.ShopEffect{}, err
			}
		}
	}
	inUse := len(list)
	if err := made("shop.effect.now", c); err != nil {
		return report.ShopEffect{}, err
	}
	less, more, number := report.Trials(c, a.Path)
	if number {
		for _, trial := range [][2]string{{"shop.effect.less", less}, {"shop.effect.more", more}} {
			next, faults := c.With(a.Path, trial[1])
			if faults != nil {
				continue // out of its range, or it would not go with the rest
			}
			if err := made(trial[0], next); err != nil {
				return report.ShopEffect{}, err
			}
		}
	}
	out := w.ShopEffect(list, inUse)
	if len(list) > inUse+1 && !moved(out, inUse+1) {
		out.Note = texts().Text("shop.effect.stays")
	}
	return out, nil
}

// moved reports whether anything in the columns from one on is other than by the shop in use.
func moved(e report.ShopEffect, from int) bool {
	for _, r := range e.Rows {
		for _, c := range r.Cells[from:] {
			if c.Moved {
				return true
			}
		}
	}
	return false
}
