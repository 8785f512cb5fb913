package design

// limit is the range that a number must lie in [SI]. These bounds keep typing
// errors out and the formulas inside their meaning; what a given line can make
// is another and narrower matter.
// A metal of the user's own is held to the bounds of package material.
type limit struct{ low, high float64 }

var limits = map[string]limit{
	"quantity":          {1, 1e6},
	"spares":            {0, 1e5},
	"tube_od":           {0.006, 0.330},
	"tube_wall":         {0.0003, 0.030},
	"fin_height":        {0.001, 0.060},
	"strip_thickness":   {0.0001, 0.006},
	"fin_pitch":         {20, 1700},
	"tip_thickness":     {0.00002, 0.006},
	"groove_depth":      {0.0001, 0.001},
	"foot_lap":          {0.0001, 0.010},
	"sleeve_thickness":  {0.0001, 0.010},
	"tube_length":       {0.1, 30},
	"plain_end_a":       {0, 5},
	"plain_end_b":       {0, 5},
	"film_coefficient":  {0.1, 5000},
	"metal_temperature": {-200, 1000},
	spanCentre:          {0, 30},
	spanWidth:           {0.001, 5},
}

// Fields of a bare span, followed by its number in errors: span_centre_1.
const (
	spanCentre = "span_centre"
	spanWidth  = "span_width"
)
