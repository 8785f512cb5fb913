package inside

// Usual are the velocities [m/s] at which a kind of stream usually runs in tubes, and those beyond which a remark is due.
//
// Valid: Slow <= Low <= High <= Fast.
type Usual struct {
	Low, High  float64 // [m/s] usual
	Slow, Fast float64 // [m/s] below it dirt settles, above it metal wears or the drop is wasted
}

// UsualLiquid and UsualGas are the velocities [m/s] of liquids and of gases.
//
// Source: 0.9 to 1.8 and 10 to 30 m/s, and 2.5 m/s as most for water in carbon steel, from memory; the slowest of a liquid
// is engineering judgement.
var (
	UsualLiquid = Usual{Low: 0.9, High: 1.8, Slow: 0.5, Fast: 2.5}
	UsualGas    = Usual{Low: 10, High: 30, Slow: 0, Fast: 30}
)

// Holds reports whether a velocity [m/s] is a usual one.
func (u Usual) Holds(v float64) bool { return v >= u.Low && v <= u.High }
