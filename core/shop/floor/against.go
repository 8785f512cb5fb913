package floor

import (
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Band is what a value may be [SI]: what is wanted, and by how much it may be less or more. One without is not judged.
type Band struct {
	Want, Less, More float64
	Judged           bool
}

// Holds reports whether a value is within its band, to the digits in which it is measured.
func (b Band) Holds(v Value) bool {
	const digit = 1e-9 // of a tolerance: what was computed may be off in its last bit
	return v.Known && v.SI >= b.Want-b.Less-digit && v.SI <= b.Want+b.More+digit
}

// Bands says what each value of a tube may be: by the checks of the shop, which the traveller names too. The time that a tube takes has no
// tolerance.
func Bands(c *shop.Capability, p *making.Plan) [len(Columns)]Band {
	var out [len(Columns)]Band
	t, g := &p.Order.Tube, p.Programme
	out[Fins].Want = float64(t.Fin.Count) * float64(units.Metre)
	out[FinOD].Want = float64(t.FinOD())
	out[Cut].Want = float64(g.CutLength)
	out[Finished].Want = float64(t.Length + g.TrimA + g.TrimB)
	if p.Time != nil {
		out[Took].Want = float64(p.Time.Tube.Total())
	}
	for _, one := range p.Checks(c) {
		off := float64(one.Check.Off)
		switch one.Check.Kind {
		case shop.CountLong:
			out[Fins] = Band{out[Fins].Want, one.Check.Fins, one.Check.Fins, true}
		case shop.FinODCheck:
			out[FinOD] = Band{out[FinOD].Want, off, 0, true}
		case shop.GrowthCheck:
			off = float64(making.EdgeOff(g.Growth.Scatter, g.Reach))
			out[Finished] = Band{out[Finished].Want, off, off, true}
		}
	}
	return out
}
