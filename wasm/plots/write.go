package plots

import (
	"math"
	"strconv"

	"finwright/core/report"
)

// shownDigits are those of a heat figure; a line drawn with them is off by less than a tenth of a pixel.
const shownDigits = 4

// markDigits place the names of lines.
const markDigits = 6

// appendNumber appends v with n significant digits. What is not finite has no place and leaves a gap.
func appendNumber(b []byte, v float64, n int) []byte {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return append(b, "null"...)
	}
	return strconv.AppendFloat(b, v, 'g', n, 64)
}

func appendPair(b []byte, x, y float64, n int) []byte {
	b = appendNumber(append(b, '['), x, n)
	b = appendNumber(append(b, ','), y, n)
	return append(b, ']')
}

// lineData is the data of a curve.
func lineData(l report.Curve) raw {
	b := make([]byte, 0, 16*len(l.X)+2)
	b = append(b, '[')
	for i := range l.X {
		if i > 0 {
			b = append(b, ',')
		}
		b = appendPair(b, l.X[i], l.Y[i], shownDigits)
	}
	return append(b, ']')
}

// contourData joins lines, parted by gaps, so that one series draws them all.
func contourData(contours []report.Contour) raw {
	b := raw("[")
	for i, c := range contours {
		if i > 0 {
			b = append(b, ",[null,null],"...)
		}
		for j, p := range c.Points {
			if j > 0 {
				b = append(b, ',')
			}
			b = appendPair(b, p[0], p[1], shownDigits)
		}
	}
	return append(b, ']')
}

// raw is data that is JSON already.
type raw []byte

// MarshalJSON returns the data itself.
func (r raw) MarshalJSON() ([]byte, error) { return r, nil }
