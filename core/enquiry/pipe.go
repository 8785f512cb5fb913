package enquiry

import "finwright/core/units"

// pipe is a nominal pipe size: outside diameter and walls, in inches; a wall of 0 is not listed.
//
// Source: ASME B36.10M and B36.19M, from memory: verify.
type pipe struct {
	name  string // the size as it is written, in inches
	dn    int    // its metric name
	od    float64
	metre float64            // outside diameter [mm] of the metric pipe of that name, ISO 4200 series 1, from memory
	walls map[string]float64 // by schedule
}

var pipes = []pipe{
	{"1/2", 15, 0.840, 21.3, map[string]float64{"10": 0.083, "40": 0.109, "80": 0.147, "160": 0.188}},
	{"3/4", 20, 1.050, 26.9, map[string]float64{"10": 0.083, "40": 0.113, "80": 0.154, "160": 0.219}},
	{"1", 25, 1.315, 33.7, map[string]float64{"10": 0.109, "40": 0.133, "80": 0.179, "160": 0.250}},
	{"1 1/4", 32, 1.660, 42.4, map[string]float64{"10": 0.109, "40": 0.140, "80": 0.191, "160": 0.250}},
	{"1 1/2", 40, 1.900, 48.3, map[string]float64{"10": 0.109, "40": 0.145, "80": 0.200, "160": 0.281}},
	{"2", 50, 2.375, 60.3, map[string]float64{"10": 0.109, "40": 0.154, "80": 0.218, "160": 0.344}},
	{"2 1/2", 65, 2.875, 76.1, map[string]float64{"10": 0.120, "40": 0.203, "80": 0.276, "160": 0.375}},
	{"3", 80, 3.500, 88.9, map[string]float64{"10": 0.120, "40": 0.216, "80": 0.300, "160": 0.438}},
	{"4", 100, 4.500, 114.3, map[string]float64{"10": 0.120, "40": 0.237, "80": 0.337, "160": 0.531}},
	{"6", 150, 6.625, 168.3, map[string]float64{"10": 0.134, "40": 0.280, "80": 0.432, "160": 0.719}},
	{"8", 200, 8.625, 219.1, map[string]float64{"10": 0.148, "40": 0.322, "80": 0.500, "160": 0.906}},
}

// pipeOf returns the pipe whose nominal size is so many inches.
func pipeOf(inches float64) (p *pipe, ok bool) {
	for i := range pipes {
		p, err := units.Parse(units.Diameter, pipes[i].name+" in", units.US)
		if err == nil && !units.Above(p.SI, inches*0.0254) && !units.Above(inches*0.0254, p.SI) {
			return &pipes[i], true
		}
	}
	return nil, false
}

// pipeOfDN returns the pipe of a metric name.
func pipeOfDN(dn float64) (p *pipe, ok bool) {
	for i := range pipes {
		if float64(pipes[i].dn) == dn {
			return &pipes[i], true
		}
	}
	return nil, false
}

// standardGauge is the imperial standard wire gauge in inches, which some mean by a bare gauge number.
//
// Source: the gauge's table, from memory: verify.
var standardGauge = map[int]float64{
	8: 0.160, 9: 0.144, 10: 0.128, 11: 0.116, 12: 0.104, 13: 0.092, 14: 0.080, 15: 0.072, 16: 0.064, 17: 0.056, 18: 0.048, 19: 0.040, 20: 0.036, 21: 0.032, 22: 0.028,
}
