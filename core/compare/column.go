package compare

import (
	"cmp"
	"errors"
	"math"

	"finwright/core/airside"
	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop"
)

// Column is one of the designs as it stands beside the base.
type Column struct {
	Document document.Document // as it is compared: with the method of the base, and what followed
	Moved    map[string]bool   // the entries that followed
	Followed []message.Message // how they did, in whole tubes
	Room     []design.Followed // amounts that nobody enters and that moved
	Row      design.Row        // with the cells of Figures
	Outside  []message.Message // where the method is out of its range here
	Refused  message.Message   // why there is no row
}

// base is what the others are made to hold.
type base struct {
	document document.Document
	in       field.Input
	rated    *rating.Thermal // nil where it could not be
	kept     rating.Kept
	held     Held
	varied   string           // the entry that is left alone; empty: none
	shop     *shop.Capability // nil: nobody is to make them
}

// newBase reads and rates the base. ok is false where its entries cannot be used: then nothing can be held.
func newBase(d document.Document, held Held, c *shop.Capability) (b base, ok bool) {
	in, err := design.Read(d)
	b = base{document: d, held: held, shop: c}
	if err != nil {
		return b, false
	}
	in.MadeBy(c)
	b.in = in
	b.in.Holds = held.holds()
	if t, hindered := rating.RateBriefly(&in.Input); hindered == nil {
		b.rated = &t
	}
	b.kept = b.in.Keep(b.rated)
	return b, true
}

// rate makes the row of a column whose document is complete.
func (c *Column) rate(made *shop.Capability) {
	in, err := design.Read(c.Document)
	if err == nil {
		in.MadeBy(made)
		var said []design.Notice
		if c.Row, said, err = design.BesideOf(in); err == nil {
			c.Outside = outside(said)
			return
		}
	}
	c.refuse(err)
}

// refuse says why there is no row: the first of what is wrong.
func (c *Column) refuse(err error) {
	var wrong design.FieldErrors
	if !errors.As(err, &wrong) {
		panic(err) // no other error is documented
	}
	c.Refused = wrong[0].Message
}

// outside are the remarks that the film or the drop in use is out of its range.
func outside(said []design.Notice) []message.Message {
	var out []message.Message
	for _, n := range said {
		if n.State == figure.Outside && (n.Figure == "film" || n.Figure == "air_drop") {
			out = append(out, n.Message)
		}
	}
	return out
}

// byTheMethod lets a document take film and drop of the base: what is given there is given here, and what follows there from fin
// type and layout by rule is named where the rule has another for this one. A base without a drop has none to name.
func (b *base) byTheMethod(c *Column) error {
	for _, id := range []string{"film_source", "film_coefficient", "film_method", "drop_method"} {
		c.Document.Fields[id] = b.document.Fields[id]
	}
	in, err := design.Read(c.Document)
	if err != nil {
		return err
	}
	base, here := b.in.Pair(), in.Pair()
	if base.Film != here.Film {
		c.enter("film_method", airside.FilmMethods[base.Film].ID)
	}
	if base.HasDrop() && base.Drop != here.Drop {
		c.enter("drop_method", airside.DropMethods[base.Drop].ID)
	}
	return nil
}

// against makes the column of a design: what is held is made to hold in it, and it is rated.
func (b *base) against(d document.Document) Column {
	c := Column{Document: copied(d, b.document), Moved: map[string]bool{}}
	if err := cmp.Or(b.byTheMethod(&c), b.follow(&c)); err != nil {
		c.refuse(err)
	}
	if c.Refused.None() {
		c.rate(b.shop)
	}
	if c.Refused.None() && b.held != Nothing {
		c.Room = design.Follow(b.document, c.Document)
	}
	return c
}

// follow enters what follows from what is held.
func (b *base) follow(c *Column) error {
	if b.held == Nothing {
		return nil
	}
	if err := b.place(c); err != nil || !c.Refused.None() {
		return err
	}
	in, err := design.Read(c.Document)
	if err != nil {
		return err
	}
	in.MadeBy(b.shop)
	b.kept.Follow(&in.Input, clearanceEntry)
	switch b.held {
	case Job:
		b.count(c, &in)
	case Length:
		b.stretch(c, &in)
	default:
		b.breathe(c, &in)
	}
	if !c.Refused.None() {
		return nil
	}
	b.order(c, &in)
	c.number("face_velocity", in.Air.Velocity)
	return nil
}

// breathe finds the face velocity at which the gas keeps what is held of it.
func (b *base) breathe(c *Column, in *field.Input) {
	if b.kept.Holds().Air != b.held.holds().Air { // of a base without a drop there is none to hold
		c.Refused = message.New("compare.base_lacks", "what", message.Key("choice.hold_air."+string(b.held.holds().Air)))
		return
	}
	if ok, hindered := b.kept.Hold(&in.Input); ok || hindered != nil {
		return // what hinders is told of the column when it is rated
	}
	low := field.Must("face_velocity")
	c.Refused = message.New("compare.no_velocity", "what", message.Key("choice.hold_air."+string(b.held.holds().Air)), "low", velocity(low.Low), "high", velocity(low.High))
}

// order lets the tubes ordered follow those of the bank, where the base orders as many as its bank takes.
func (b *base) order(c *Column, in *field.Input) {
	of := func(in *field.Input) int { return in.Bank.Rows * in.Bank.TubesPerRow * in.Job.Bundles }
	if q := b.in.Job.Quantity; q > 1 && q == of(&b.in) {
		c.whole("quantity", of(in))
	}
}

// duty [W] of a rated bank.
func duty(t *rating.Thermal) float64 { return math.Abs(t.Duty.Heat) }
