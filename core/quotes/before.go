package quotes

import (
	"cmp"

	"finwright/core/numeric"
)

// mostNear is in how many entries a tube may differ that is near another. Of another fin type or on another diameter none is near.
const mostNear = 3

// MostFound is how many are told of tubes that are the same, and of those that are near.
const MostFound = 6

// Found is an earlier quote of a tube.
type Found struct {
	Record  *Record
	Quote   *Quote
	Differs []Difference // none: it is the same tube
}

// Before finds what was quoted before for the tube of an item, which is the first of its own list: of the same tube the latest first, then of
// those that are near the nearest. The record that the item is of is left out.
func Before(records []*Record, now *Record) (same, near []Found) {
	if len(now.Quotes) == 0 {
		return nil, nil
	}
	want := item{&now.Quoted, now.Units, &now.Quotes[0]}
	for _, r := range records {
		if r.ID == now.ID {
			continue
		}
		for i := range r.Quotes {
			q := &r.Quotes[i]
			if q.Price == nil {
				continue
			}
			differs := tubeDiffers(item{&r.Quoted, r.Units, q}, want, mostNear)
			switch {
			case len(differs) == 0:
				same = append(same, Found{r, q, nil})
			case len(differs) <= mostNear && isNear(differs):
				near = append(near, Found{r, q, differs})
			}
		}
	}
	latest := func(a, b *Found) int {
		return cmp.Or(cmp.Compare(len(a.Differs), len(b.Differs)), cmp.Compare(b.Record.Day, a.Record.Day), cmp.Compare(b.Record.Time, a.Record.Time))
	}
	return numeric.Sorted(same, latest), numeric.Sorted(near, latest)
}

func isNear(differs []Difference) bool {
	for _, d := range differs {
		if d.Field == "fin_type" || d.Field == "tube_od" {
			return false
		}
	}
	return true
}
