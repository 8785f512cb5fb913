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
	m := design.Make(in, res.Heat)
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
		return told{message.New("shop.file.fault", "why", said[0].Message), said}
	}
	return told{message.New("shop.file.faults", "place", w.Place(faults[0].Path), "why", said[0].Message), said}
}

type shopArgs struct {
	Shop string `json:"shop"`
}

type shopReply struct {
	Shop   string          `json:"shop"`
	Form   report.ShopForm `json:"form"`
	Lifted []string        `json:"lifted"` // what its owner is to confirm of a file that an earlier version saved
}

// shopForm lays a capability file open for editing.
func shopForm(a shopArgs) (shopReply, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return shopReply{}, err
	}
	return answerShop(c), nil
}

// answerShop gives a capability to the page, which is about to send it again.
func answerShop(c shop.Capability) shopReply {
	text := string(c.Save())
	lately.Store(&openedShop{text, c})
	w := writerIn(units.SI)
	return shopReply{text, w.ShopForm(c), w.Lifted(c)}
}

// shopCommand is one change of a capability file. Op says which members count:
// set Path Text, add Path, remove Path Index.
type shopCommand struct {
	Op    string `json:"op"`
	Path  string `json:"path"`
	Text  string `json:"text,omitempty"`
	Index int    `json:"index,omitempty"`
}

type editShopArgs struct {
	Shop    string      `json:"shop"`
	Command shopCommand `json:"command"`
}

// editShop changes a capability file, or refuses and says at which path and why.
func editShop(a editShopArgs) (shopReply, error) {
	c, err := openShop(a.Shop)
	if err != nil {
		return shopReply{}, err
	}
	var faults []shop.Fault
	switch a.Command.Op {
	case "set":
		c, faults = c.With(a.Command.Path, typedAt(c, a.Command.Path, a.Command.Text))
	case "add":
		c, faults = c.More(a.Command.Path)
	case "remove":
		c, faults = c.Remove(a.Command.Path, a.Command.Index)
	default:
		return shopReply{}, fmt.Errorf("bridge: shop command %q", a.Command.Op)
	}
	if err := refused(faults); err != nil {
		return shopReply{}, err
	}
	return answerShop(c), nil
}

// typedAt is a text as the file holds it, which was typed at path in the page's language.
func typedAt(c shop.Capability, path, text string) string {
	leaves, _ := c.Contents()
	for _, f := range leaves {
		if f.Path == path && f.Kind != "" {
			return texts().Numbers.Typed(text)
		}
	}
	return text
}
