package fin

import "testing"

// inch is the common fin: 5/8 in high aluminium on a 1 in tube.
var inch = Fin{RootRadius: 0.0127, TipRadius: 0.028575, RootThickness: 0.0004, TipThickness: 0.0002, Conductivity: 215}

func BenchmarkSolve(b *testing.B) {
	for _, c := range []struct {
		name    string
		profile Profile
		tip     Tip
		h       float64
	}{
		{"uniform", Uniform, Adiabatic, 50},
		{"uniform_convective_tip", Uniform, Convective, 50},
		{"rolled_taper", RolledTaper, Adiabatic, 50},
		{"rolled_taper_h_500", RolledTaper, Adiabatic, 500},
		{"linear_taper", LinearTaper, Adiabatic, 50},
	} {
		b.Run(c.name, func(b *testing.B) {
			f := inch
			f.Profile, f.Tip = c.profile, c.tip
			b.ReportAllocs()
			for b.Loop() {
				Solve(f, c.h)
			}
		})
	}
	b.Run("schmidt", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Schmidt1949(inch, 50)
		}
	})
}
