package making

import (
	"math"
	"testing"

	"finwright/core/shop"
	"finwright/core/units"
)

// Hand calculation: OD 1000, ID 400, strip 18 x 0.4 mm aluminium of 2705 kg/m3
// gives 1649 m and 32.1 kg, which is 52.5 m of 10-fpi tube of 1 in.
func TestPancakeByHand(t *testing.T) {
	k := shop.Coil{Form: shop.Pancake, OD: 1, ID: 0.4, Mass: 1000, Fill: 1}
	f := FillCoil(&k, 0.018, 0.0004, 2705)
	near(t, "length", float64(f.Length), 1649, 0.5/1649)
	near(t, "mass", float64(f.Mass), 32.1, 0.05/32.1)
	o := footed()
	near(t, "tube", float64(f.Length)/o.Tube.StripPerMetre(), 52.5, 0.05/52.5)
	near(t, "length back from mass", float64(MassLength(f.Mass, 0.018, 0.0004, 2705)), float64(f.Length), 1e-12)
	if f.ByMass {
		t.Error("mass does not bind here")
	}
	k.Mass = 20
	if f := FillCoil(&k, 0.018, 0.0004, 2705); !f.ByMass || math.Abs(float64(f.Mass)-20) > 1e-9 {
		t.Errorf("mass binds at 20 kg: %+v", f)
	}
}

// Common practice, no source: one traverse-wound coil of 1200 lb and 36 in OD on
// a 12 in core replaces about 19 aluminium, 6 copper (18 mm) or 7 steel (16.2 mm)
// pancakes of its diameter; the shop's rule of thumb, about 8, lies among them.
func TestTraverseReplacesPancakes(t *testing.T) {
	flat := shop.Coil{Form: shop.Pancake, OD: 36 * units.Inch, ID: 12 * units.Inch, Mass: 1e4, Fill: 1}
	level := shop.Coil{Form: shop.Traverse, OD: 36 * units.Inch, ID: 12 * units.Inch, Width: 30 * units.Inch, Mass: 1200 * 0.45359237, Fill: 1}
	for _, c := range []struct {
		metal string
		width units.Length
		rho   units.Density
		want  float64
	}{{"aluminium", 0.018, 2705, 19}, {"copper", 0.018, 8910, 6}, {"steel", 0.0162, 7870, 7}} {
		traverse := FillCoil(&level, c.width, 0.0004, c.rho)
		n := traverse.Replaces(FillCoil(&flat, c.width, 0.0004, c.rho))
		if math.Round(n) != c.want || !traverse.ByMass {
			t.Errorf("%s: replaces %.2f pancakes, want about %g", c.metal, n, c.want)
		}
		if thick := FillCoil(&level, c.width, 0.0005, c.rho).Replaces(FillCoil(&flat, c.width, 0.0005, c.rho)); math.Abs(thick-n) > 1e-9 {
			t.Errorf("%s: the count depends on thickness", c.metal)
		}
	}
}
