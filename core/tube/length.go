package tube

import "finwright/core/units"

// BareSpans returns the sum of the bare spans [m].
//
// Valid: spans that do not overlap.
// Source: addition.
func (t *Tube) BareSpans() units.Length {
	var sum units.Length
	for _, s := range t.Spans {
		sum += s.Width
	}
	return sum
}

// FinnedLength returns the overall length less plain ends and bare spans [m].
//
// Valid: spans between the plain ends.
// Source: addition.
func (t *Tube) FinnedLength() units.Length { return t.Length - t.PlainA - t.PlainB - t.BareSpans() }

// FinsPerTube returns the number of turns on one tube [-]; it need not be whole.
//
// Valid: as FinnedLength.
// Source: plane geometry.
func (t *Tube) FinsPerTube() float64 { return t.Fin.Count.PerMetre() * float64(t.FinnedLength()) }

// FinnedSurface returns the outside surface of the finned lengths of one tube [m2].
//
// Valid: as Areas and FinnedLength; no face is added where a finned length ends.
// Source: plane geometry.
func (t *Tube) FinnedSurface() units.Area {
	return units.Area(float64(t.Areas().Total()) * float64(t.FinnedLength()))
}

// PlainSurface returns the outside surface of ends and bare spans of one tube [m2].
//
// Valid: as FinnedLength.
// Source: plane geometry.
func (t *Tube) PlainSurface() units.Area {
	return units.Area(float64(t.Areas().Bare) * float64(t.Length-t.FinnedLength()))
}
