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

func reynoldsLimit(b *Bank, f *Flow, low, high float64) figure.Limit {
	_, re := throat(b, f)
	return figure.Limit{Variable: "reynolds", Kind: units.Count, Value: re, Low: low, High: high}
}

// staggeredOnly is kept by staggered banks: the value is the Layout.
func staggeredOnly(b *Bank) figure.Limit {
	return figure.Limit{Variable: "in_line", Kind: units.Count, Value: float64(b.Layout)}
}

func rowsLimit(b *Bank, low float64) figure.Limit {
	return figure.Limit{Variable: "rows", Kind: units.Count, Value: float64(b.Rows), Low: low, High: unbounded}
}

func odLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "tube_od", Kind: units.Diameter, Value: b.OD, Low: low, High: high}
}

func heightLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_height", Kind: units.Height, Value: b.FinHeight(), Low: low, High: high}
}

func thicknessLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_thickness", Kind: units.Thickness, Value: b.RootThickness, Low: low, High: high}
}

func pitchLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_pitch", Kind: units.Gap, Value: b.FinPitch, Low: low, High: high}
}

// countLimit takes fins per inch.
func countLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "fin_count", Kind: units.FinCount, Value: 1 / b.FinPitch, Low: low / inch, High: high / inch}
}

func transverseLimit(b *Bank, low, high float64) figure.Limit {
	return figure.Limit{Variable: "transverse_pitch", Kind: units.Diameter, Value: b.TransversePitch, Low: low, High: high}
}

func diameterRatioLimit(b *Bank, low, high float64) figure.Limit {
	return number("diameter_ratio", b.FinOD/b.OD, low, high)
}
