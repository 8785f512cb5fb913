package inside

// qualities is the number of places over the quality at which a condensing film is asked.
const qualities = 16

// gauss holds the first half of the places from 0 to 1 and their weights [-]; the other half is its mirror image.
//
// Source: rule of Gauss and Legendre of 16 points, worked out to 17 digits as the roots of the polynomial, brought from -1..1
// to 0..1.
var gauss = [qualities / 2]struct{ x, weight float64 }{
	{0.00529953250417503, 0.01357622970587705},
	{0.02771248846338371, 0.03112676196932395},
	{0.06718439880608412, 0.04757925584124639},
	{0.12229779582249849, 0.06231448562776694},
	{0.19106187779867811, 0.07479799440828837},
	{0.27099161117138632, 0.08457825969750127},
	{0.35919822461037054, 0.09130170752246179},
	{0.45249374508118129, 0.09472530522753425},
}

// quality returns the i-th place [-].
func quality(i int) float64 {
	if i < len(gauss) {
		return gauss[i].x
	}
	return 1 - gauss[qualities-1-i].x
}

// weight returns the i-th weight [-]; all add up to one.
func weight(i int) float64 { return gauss[min(i, qualities-1-i)].weight }
