package finned

import (
	"testing"

	"finwright/core/drawing/ink"
	"finwright/core/drawing/svg"
	"finwright/core/internal/sample"
	"finwright/core/tube"
	"finwright/core/units"
)

// Each fin type shows its own root, within its sheet: no two are alike, a weld has its beads, a lap more metal than a foot.
func TestRootsAreTold(t *testing.T) {
	seen := map[string]tube.FinType{}
	for _, typ := range tube.FinTypes() {
		tb := sample.Footed()
		tb.Fin.Type, tb.Fin.Groove, tb.Fin.Sleeve = typ, 0.25*units.Millimetre, 0.5*units.Millimetre
		s := Root(tb)
		welds := 0
		for _, shape := range s.Shapes {
			if shape.Class == ink.WeldMetal {
				welds++
			}
			for _, loop := range shape.Loops {
				for _, p := range loop {
					if p.X < -1e-9 || p.X > s.Width+1e-9 || p.Y < -1e-9 || p.Y > s.Height+1e-9 {
						t.Errorf("%s: %v is off the sheet", typ, p)
					}
				}
			}
		}
		if (welds > 0) != (typ == tube.Welded) {
			t.Errorf("%s has %d beads of weld", typ, welds)
		}
		text := svg.Write(s, svg.Style{})
		if other, ok := seen[text]; ok {
			t.Errorf("%s looks like %s", typ, other)
		}
		seen[text] = typ
	}
}
