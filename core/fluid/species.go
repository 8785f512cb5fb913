package fluid

import "math"

// Species is one gas of a mixture.
type Species int

// Species of flue gas and of the air that it was burnt with.
const (
	CarbonDioxide Species = iota
	WaterVapour
	Nitrogen
	Oxygen
	SulphurDioxide
	Argon
	speciesCount
)

const gasConstant = 8.31451 // [J/(mol K)], to which the heat capacities were fitted

// blendHalf [K] is how far to either side of a fit's joint its two pieces are blended: they differ there by up to 0.6 %,
// and properties must not step.
const blendHalf = 50

// fit is a property in two pieces of one model.
type fit struct {
	joint     float64 // [K] where the pieces meet
	low, high []float64
}

// species holds what is published of a pure gas at low pressure.
type species struct {
	mass         float64 // [g/mol]
	heat         fit     // cp/R = a1/T^2 + a2/T + a3 + a4 T + a5 T^2 + a6 T^3 + a7 T^4
	viscosity    fit     // ln(mu/1e-7 Pa s) = A ln T + B/T + C/T^2 + D
	conductivity fit     // ln(k/1e-4 W/(m K)), likewise
}

// pure lists the gases by species.
//
// Source: McBride, Zehe and Gordon, NASA/TP-2002-211556 (heat capacity); Svehla, NASA TM-4647 (1995), transport;
// coefficients read in the data files of that agency's open equilibrium program. The fits begin at 200 K, those of sulphur
// dioxide and of pairs at 300 K: below, they are carried on. Transport of water vapour is that of dilute steam, IAPWS
// R12-08 and R15-11, good to 900 C and carried on above.
var pure = [speciesCount]species{
	CarbonDioxide: {
		44.0095,
		fit{
			1000,
			[]float64{4.943650540e4, -6.264116010e2, 5.301725240, 2.503813816e-3, -2.127308728e-7, -7.689988780e-10, 2.849677801e-13},
			[]float64{1.176962419e5, -1.788791477e3, 8.291523190, -9.223156780e-5, 4.863676880e-9, -1.891053312e-12, 6.330036590e-16},
		},
		fit{1000, []float64{0.51137258, -229.51321, 13710.678, 2.7075538}, []float64{0.63978285, -42.637076, -15522.605, 1.6628843}},
		fit{1000, []float64{0.48056568, -507.86720, 35088.811, 3.6747794}, []float64{0.69857277, -118.30477, -50688.859, 1.8650551}},
	},
	WaterVapour: {
		18.01528,
		fit{
			1000,
			[]float64{-3.947960830e4, 5.755731020e2, 0.9317826530, 7.222712860e-3, -7.342557370e-6, 4.955043490e-9, -1.336933246e-12},
			[]float64{1.034972096e6, -2.412698562e3, 4.646110780, 2.291998307e-3, -6.836830480e-7, 9.426468930e-11, -4.822380530e-15},
		},
		fit{},
		fit{}, // the properties of steam
	},
	Nitrogen: {
		28.0134,
		fit{
			1000,
			[]float64{2.210371497e4, -3.818461820e2, 6.082738360, -8.530914410e-3, 1.384646189e-5, -9.625793620e-9, 2.519705809e-12},
			[]float64{5.877124060e5, -2.239249073e3, 6.066949220, -6.139685500e-4, 1.491806679e-7, -1.923105485e-11, 1.061954386e-15},
		},
		fit{1000, []float64{0.62526577, -31.779652, -1640.7983, 1.7454992}, []float64{0.87395209, 561.52222, -173948.09, -0.39335958}},
		fit{1000, []float64{0.85439436, 105.73224, -12347.848, 0.47793128}, []float64{0.88407146, 133.57293, -11429.640, 0.24417019}},
	},
	Oxygen: {
		31.9988,
		fit{
			1000,
			[]float64{-3.425563420e4, 4.847000970e2, 1.119010961, 4.293889240e-3, -6.836300520e-7, -2.023372700e-9, 1.039040018e-12},
			[]float64{-1.037939022e6, 2.344830282e3, 1.819732036, 1.267847582e-3, -2.188067988e-7, 2.053719572e-11, -8.193467050e-16},
		},
		fit{1000, []float64{0.60916180, -52.244847, -599.74009, 2.0410801}, []float64{0.72216486, 175.50839, -57974.816, 1.0901044}},
		fit{1000, []float64{0.77229167, 6.8463210, -5893.3377, 1.2210365}, []float64{0.90917351, 291.24182, -79650.171, 0.064851631}},
	},
	SulphurDioxide: {
		64.0638,
		fit{
			1000,
			[]float64{-5.310842140e4, 9.090311670e2, -2.356891244, 2.204449885e-2, -2.510781471e-5, 1.446300484e-8, -3.369070940e-12},
			[]float64{-1.127640116e5, -8.252261380e2, 7.616178630, -1.999327610e-4, 5.655631430e-8, -5.454316610e-12, 2.918294102e-16},
		},
		fit{1000, []float64{0.53157084, -295.89873, 21224.840, 2.5975549}, []float64{0.60783098, -192.83581, 7823.2002, 1.9811072}},
		fit{1000, []float64{0.61476551, -564.09295, 49580.787, 2.3940064}, []float64{0.53617558, -694.13085, 75304.908, 3.0412002}},
	},
	Argon: {
		39.948,
		fit{
			1000,
			[]float64{0, 0, 2.5, 0, 0, 0, 0},
			[]float64{20.10538475, -0.05992661070, 2.500069401, -3.992141160e-8, 1.205272140e-11, -1.819015576e-15, 1.078576636e-19},
		},
		fit{1000, []float64{0.61205763, -67.714354, 190.40660, 2.1588272}, []float64{0.69357334, 70.953943, -28386.007, 1.4856447}},
		fit{1000, []float64{0.60968928, -70.892249, 584.20624, 1.9337152}, []float64{0.69075463, 62.676058, -25667.413, 1.2664189}},
	},
}

// pairs are viscosities of one gas among another, as a fit of pure has them, which say how they hinder each other's heat.
// For others Wilke's weight stands in.
//
// Source: Svehla, NASA TM-4647 (1995), read where pure was.
var pairs = []struct {
	a, b      Species
	viscosity fit
}{
	{CarbonDioxide, WaterVapour, fit{1000, []float64{0.56499100, -322.19550, 26301.733, 2.6351165}, []float64{0.68455483, -33.114757, -58456.473, 1.6048763}}},
	{CarbonDioxide, Nitrogen, fit{1000, []float64{0.68926185, -1.3796096, -4684.7568, 1.3060681}, []float64{0.69417954, -18.021840, 6095.0694, 1.2779603}}},
	{CarbonDioxide, Oxygen, fit{1000, []float64{0.55753165, -171.40020, 7259.4450, 2.4603725}, []float64{0.66011947, 25.362441, -39828.007, 1.6020458}}},
	{WaterVapour, Nitrogen, fit{1000, []float64{0.57304553, -148.53813, 3902.9324, 2.3462780}, []float64{0.64243064, 2.5018380, -36924.430, 1.7567700}}},
	{WaterVapour, Oxygen, fit{1000, []float64{0.64727375, -4.2110733, -4525.5490, 1.6510807}, []float64{0.65299406, -17.723412, 5090.6530, 1.6154623}}},
	{Nitrogen, Oxygen, fit{1000, []float64{0.70122551, 5.1717887, -1424.0838, 1.2895991}, []float64{0.66744478, -86.348036, 27445.341, 1.5855986}}},
}

// pairOf returns the viscosity of one gas among another, nil where there is none.
func pairOf(a, b Species) *fit {
	for i := range pairs {
		if p := &pairs[i]; p.a == a && p.b == b || p.a == b && p.b == a {
			return &p.viscosity
		}
	}
	return nil
}

// at evaluates the pieces by one formula, and blends them about the joint.
func (f *fit) at(t float64, of func(a []float64) float64) float64 {
	s := (t - f.joint + blendHalf) / (2 * blendHalf)
	switch {
	case s <= 0:
		return of(f.low)
	case s >= 1:
		return of(f.high)
	}
	w := s * s * (3 - 2*s)
	return (1-w)*of(f.low) + w*of(f.high)
}

// transport returns what a fit of the logarithm gives, in its own unit.
func (f *fit) transport(t, logT float64) float64 {
	return f.at(t, func(a []float64) float64 { return math.Exp(a[0]*logT + (a[1]+a[2]/t)/t + a[3]) })
}

// heatCapacity returns cp [J/(mol K)] of a gas.
func (s Species) heatCapacity(t float64) float64 {
	return gasConstant * pure[s].heat.at(t, func(a []float64) float64 {
		return (a[0]/t+a[1])/t + a[2] + t*(a[3]+t*(a[4]+t*(a[5]+t*a[6])))
	})
}

// transport returns viscosity [Pa s] and conductivity [W/(m K)] of the gas alone.
func (s Species) transport(t, logT float64) (mu, k float64) {
	if s == WaterVapour {
		return steamViscosity(t, 0), steamConductivity(t, 0)
	}
	return 1e-7 * pure[s].viscosity.transport(t, logT), 1e-4 * pure[s].conductivity.transport(t, logT)
}
