package compare

import (
	"math"
	"strconv"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/units"
)

// clearanceEntry is left alone by what is held of a bank: pitch and clearance are entered here, as place has them.
const clearanceEntry = "tip_clearance"

// place enters where the tubes stand and how many: what is held of the bank's room.
func (b *base) place(c *Column) error {
	if b.held == Tubes {
		if err := b.pitch(c, b.in.TubePitch()); err != nil {
			return err
		}
		for _, id := range []string{"tubes_per_row", "rows", "tube_length"} {
			if id != b.varied {
				c.take(id, b.document)
			}
		}
		return b.share(c)
	}
	if err := b.spread(c); err != nil {
		return err
	}
	if b.held == Length {
		for _, id := range []string{"tubes_per_row", "rows"} {
			if id != b.varied {
				c.take(id, b.document)
			}
		}
		return b.share(c)
	}
	in, err := design.Read(c.Document)
	if err != nil || !b.held.fills() {
		return err
	}
	c.take("tube_length", b.document)
	room := b.kept.Fill(&in.Input)
	if b.varied == "rows" {
		room.Rows, room.RowsOf = in.Bank.Rows, float64(b.in.Bank.Rows)
	}
	if room.Tubes < 1 || room.Rows < in.Bank.Passes {
		c.Refused = message.New("compare.no_room", "width", distance(b.kept.Width()), "depth", distance(b.kept.Depth()), "passes", in.Bank.Passes)
		return nil
	}
	c.whole("tubes_per_row", room.Tubes)
	c.whole("rows", room.Rows)
	c.fits("compare.fits_tubes", room.Tubes, b.in.Bank.TubesPerRow, room.TubesOf, room.Beside)
	c.fits("compare.fits_rows", room.Rows, b.in.Bank.Rows, room.RowsOf, room.Behind)
	return nil
}

// share spreads as many tubes as stand over rows that are stepped.
func (b *base) share(c *Column) error {
	if b.varied != "rows" {
		return nil
	}
	in, err := design.Read(c.Document)
	if err == nil {
		c.whole("tubes_per_row", max(1, int(math.Round(float64(b.in.Bank.Rows*b.in.Bank.TubesPerRow)/float64(in.Bank.Rows)))))
	}
	return err
}

// fits says how many whole ones go in where that is not as in the base, for how many there would be room to a tenth, and what stays
// unused [m].
func (c *Column) fits(key string, count, base int, of, unused float64) {
	if units.Above(of, float64(base)) || units.Above(float64(base), of) {
		tenths := math.Floor(of*10+1e-6) / 10
		c.Followed = append(c.Followed, message.New(key, "count", count, "of", message.Amount{Kind: units.Number, SI: tenths}, "unused", distance(unused)))
	}
}

// spread keeps the clearance of the base between the tips, unless the design names one or a pitch of its own.
func (b *base) spread(c *Column) error {
	for _, id := range []string{"tip_clearance", "tube_pitch"} {
		if c.Document.Fields[id].Text != b.document.Fields[id].Text {
			return nil
		}
	}
	in, err := design.Read(c.Document)
	if err != nil {
		return err
	}
	return b.pitch(c, in.Tube.FinOD()+b.in.TubePitch()-b.in.Tube.FinOD())
}

// pitch enters that of the tubes, unless it is theirs already.
func (b *base) pitch(c *Column, pitch units.Length) error {
	in, err := design.Read(c.Document)
	if err == nil && (units.Above(float64(in.TubePitch()), float64(pitch)) || units.Above(float64(pitch), float64(in.TubePitch()))) {
		c.number("tube_pitch", float64(pitch))
	}
	return err
}

// copied is a design under title and mark of the base, so that it can be changed. Its units stay: a number alone is in them.
func copied(d, base document.Document) document.Document {
	d = d.With(document.Differences{})
	d.Title, d.Mark = base.Title, base.Mark
	return d
}

// enter puts a text into the column and says whether it is another.
func (c *Column) enter(id, text string) bool {
	if c.Document.Fields[id].Text == text {
		return false
	}
	c.Document.Fields[id] = document.Entry{Text: text, Origin: document.Assumed}
	c.Moved[id] = true
	return true
}

// take enters what another design has.
func (c *Column) take(id string, from document.Document) {
	if c.enter(id, from.Fields[id].Text) {
		c.Document.Fields[id] = from.Fields[id]
	}
}

// whole enters a count.
func (c *Column) whole(id string, n int) bool {
	if p, err := units.Parse(units.Count, c.Document.Fields[id].Text, c.Document.Units); err == nil && int(p.SI) == n {
		return false
	}
	return c.enter(id, strconv.Itoa(n))
}

// digits of a number that is entered: so many that what is held is held.
const digits = 6

// number enters a number [SI], unless it is what stands there already.
func (c *Column) number(id string, si float64) {
	f, s := field.Must(id), c.Document.Units
	if p, err := units.Parse(f.Kind, c.Document.Fields[id].Text, s); err == nil && !units.Above(p.SI, si*(1+settled)) && !units.Above(si, p.SI*(1+settled)) {
		return
	}
	c.enter(id, strconv.FormatFloat(units.In(f.Kind, si, s), 'g', digits, 64)+" "+f.Kind.Unit(s))
}

// settled [-] is how near to what is held a search comes.
const settled = 1e-7

func distance(metres float64) message.Amount { return message.Amount{Kind: units.Distance, SI: metres} }

func velocity(si float64) message.Amount { return message.Amount{Kind: units.Velocity, SI: si} }
