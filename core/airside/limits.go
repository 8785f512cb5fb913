package airside

import (
	"math"

	"finwright/core/figure"
	"finwright/core/units"
)

// Bounds that a source prints in decimals are judged by the digits that it prints, those in fractions of an inch and
// Reynolds numbers as they stand.

const inch = 0.0254 // [m]

var unbounded = math.Inf(1)

func number(variable string, value, low, high float64) figure.Limit {
	return figure.Limit{Variable: variable, Kind: units.Factor, Value: value, Low: low, High: high}
}

func reynoldsLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "reynolds", Kind: units.Count, Value: x.Reynolds, Low: low, High: high}
}

// staggeredOnly is kept by staggered banks: the value is the Layout.
func staggeredOnly(x *Crossing) figure.Limit {
	return figure.Limit{Variable: "in_line", Kind: units.Count, Value: float64(x.Layout)}
}

func rowsLimit(x *Crossing, low float64) figure.Limit {
	return figure.Limit{Variable: "rows", Kind: units.Count, Value: float64(x.Rows), Low: low, High: unbounded}
}

func odLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "tube_od", Kind: units.Diameter, Value: x.OD, Low: low, High: high}
}

func heightLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_height", Kind: units.Height, Value: x.FinHeight(), Low: low, High: high}
}

func thicknessLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_thickness", Kind: units.Thickness, Value: x.RootThickness, Low: low, High: high}
}

func pitchLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_pitch", Kind: units.Gap, Value: x.FinPitch, Low: low, High: high}
}

// countLimit takes fins per inch.
func countLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_count", Kind: units.FinCount, Value: 1 / x.FinPitch, Low: low / inch, High: high / inch}
}

func transverseLimit(x *Crossing, low, high float64) figure.Limit {
	return figure.Limit{Variable: "transverse_pitch", Kind: units.Diameter, Value: x.TransversePitch, Low: low, High: high}
}

func diameterRatioLimit(x *Crossing, low, high float64) figure.Limit {
	return number("diameter_ratio", x.FinOD/x.OD, low, high)
}
