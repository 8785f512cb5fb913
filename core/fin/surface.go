package fin

// SurfaceEfficiency returns the efficiency [-] of a whole finned surface, bare
// part and fins together, on totalArea.
//
//	eta_o = 1 - (finArea/totalArea)(1 - eta)
//
// finArea [m2] and totalArea [m2] may equally be per metre of tube; eta is the fin
// efficiency [-] on finArea.
// Valid: 0 <= finArea <= totalArea, totalArea > 0.
// Source: energy balance with one film coefficient on the whole surface.
func SurfaceEfficiency(finArea, totalArea, eta float64) float64 {
	return 1 - finArea/totalArea*(1-eta)
}
