package shop

// StripDemand is what strip must be like when it is ordered. Its name is the text "shop.demand.<demand>".
type StripDemand string

// Demands of strip.
//
// Source: common practice, no source; certificates: EN 10204, from memory.
const (
	SoftTemper       StripDemand = "soft"
	HalfHard         StripDemand = "half_hard"
	Degreased        StripDemand = "degreased"
	StripReport      StripDemand = "test_report"
	StripCertificate StripDemand = "certificate"
)

// StripDemands lists them.
var StripDemands = []StripDemand{SoftTemper, HalfHard, Degreased, StripReport, StripCertificate}
