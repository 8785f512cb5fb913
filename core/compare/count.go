package compare

import (
	"math"

	"finwright/core/field"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/units"
)

// enough [-] of the duty lets pass what carries it but for the last digits of a search.
const enough = 1e-4

// all [-] is enough where the number that follows is no whole one: a millimetre of tube carries more than that.
const all = 1e-5

// near rates a column as it stands, from where on what follows is looked for; ok is false where there is no duty to carry, or none is found: that
// is told of the column when it is rated.
func (b *base) near(c *Column, in *field.Input) (near rating.Thermal, ok bool) {
	if b.rated == nil || duty(b.rated) == 0 {
		c.Refused = message.New("compare.base_lacks", "what", message.Key("figure.duty"))
		return near, false
	}
	near, hindered := rating.RateBriefly(&in.Input)
	if hindered != nil {
		return near, false
	}
	in.Holds = b.held.holds()
	return near, true
}

// count finds how many tubes carry the duty of the base: in a row, or if none do, in more rows.
func (b *base) count(c *Column, in *field.Input) {
	near, ok := b.near(c, in)
	if !ok {
		return
	}
	kept, want := in.Keep(&near), duty(b.rated)*(1-enough)
	n, why, _ := in.TubesFor(want, &near)
	if n > 0 && why.None() {
		b.counted(c, in, &kept, &tubesInRow, n)
		return
	}
	if b.varied != "rows" {
		n, why, _ = in.RowsFor(want, &near)
	}
	if n > 0 && why.None() {
		b.counted(c, in, &kept, &rowsBehind, n)
		return
	}
	c.Refused = message.New("compare.no_count", "duty", watts(duty(b.rated)))
}

// varied is the number that follows a duty.
type varied struct {
	id             string // of its entry
	carries, least string // keys of what is said of it
	of             func(*rating.Bank) *int
	fewest         func(*rating.Bank) int
}

var (
	tubesInRow = varied{
		"tubes_per_row", "compare.carries_tubes", "compare.least_tubes",
		func(b *rating.Bank) *int { return &b.TubesPerRow }, func(*rating.Bank) int { return 1 },
	}
	rowsBehind = varied{
		"rows", "compare.carries_rows", "compare.least_rows",
		func(b *rating.Bank) *int { return &b.Rows }, func(b *rating.Bank) int { return b.Passes },
	}
)

// counted enters a number of tubes or rows, and says what one less would carry.
func (b *base) counted(c *Column, in *field.Input, kept *rating.Kept, v *varied, n int) {
	less := *in
	at := func(in *field.Input, n int) {
		*v.of(&in.Bank) = n
		kept.Follow(&in.Input, v.id)
	}
	at(in, n)
	c.whole(v.id, n)
	if n > v.fewest(&in.Bank) {
		at(&less, n-1)
		if t, hindered := rating.RateBriefly(&less.Input); hindered == nil {
			c.Followed = append(c.Followed, message.New(v.carries, "count", n, "less", n-1,
				"share", message.Most{Kind: units.Percent, SI: duty(&t) / duty(b.rated)}))
			return
		}
	}
	c.Followed = append(c.Followed, message.New(v.least, "count", n))
}

// stretch finds how long the tubes have to be for the duty of the base, in whole millimetres, as they are cut. As many stand in as many rows.
func (b *base) stretch(c *Column, in *field.Input) {
	near, ok := b.near(c, in)
	if !ok {
		return
	}
	kept := in.Keep(&near)
	long, found := in.LengthFor(duty(b.rated)*(1-all), &kept, &near)
	if !found {
		c.Refused = message.New("compare.no_length", "duty", watts(duty(b.rated)), "most", distance(rating.LongestTube))
		return
	}
	if math.Abs(long-float64(in.Tube.Length)) < rating.CutTo {
		return // it is as long as that, in other units
	}
	in.Tube.Length = units.Length(long)
	kept.Follow(&in.Input, "tube_length")
	c.number("tube_length", long)
	c.Followed = append(c.Followed, message.New("compare.length_for", "long", distance(long), "of", distance(float64(b.in.Tube.Length))))
}

func watts(si float64) message.Amount { return message.Amount{Kind: units.Duty, SI: si} }
