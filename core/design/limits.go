package design

// limit is the range that a number must lie in [SI]. These bounds keep typing
// errors out and the formulas inside their meaning; what a given line can make
// is another and narrower matter.
// A metal of the user's own is held to the bounds of package material.
type limit struct{ low, high float64 }

var limits = map[string]limit{
	"quantity":               {1, 1e6},
	"spares":                 {0, 1e5},
	"tube_od":                {0.006, 0.330},
	"tube_wall":              {0.0003, 0.030},
	"fin_height":             {0.001, 0.060},
	"strip_thickness":        {0.0001, 0.006},
	"fin_pitch":              {20, 1700},
	"tip_thickness":          {0.00002, 0.006},
	"groove_depth":           {0.0001, 0.001},
	"foot_lap":               {0.0001, 0.010},
	"sleeve_thickness":       {0.0001, 0.010},
	"tube_length":            {0.1, 30},
	"plain_end_a":            {0, 5},
	"plain_end_b":            {0, 5},
	"film_coefficient":       {0.1, 5000},
	"metal_temperature":      {-200, 1000},
	"own_gas_density":        {0.01, 100},
	"own_gas_heat":           {100, 20000},
	"own_gas_viscosity":      {1e-6, 1e-3},
	"own_gas_conductivity":   {0.001, 1},
	"air_in":                 {-40, 390},
	"air_humidity":           {0, 1},
	"altitude":               {-300, 6000},
	"face_velocity":          {0.2, 30},
	"fouling_outside":        {0, 0.05},
	"fan_efficiency":         {0.05, 1},
	"tip_clearance":          {0, 0.2},
	"tube_pitch":             {0.008, 1},
	"row_pitch":              {0.008, 1},
	"rows":                   {1, 30},
	"tubes_per_row":          {1, 500},
	"passes":                 {1, 30},
	"duty_wanted":            {1, 1e9},
	"drop_allowed":           {1, 20000},
	"own_fluid_density":      {0.05, 20000},
	"own_fluid_heat":         {100, 20000},
	"own_fluid_viscosity":    {5e-6, 10},
	"own_fluid_conductivity": {0.005, 100},
	"inside_in":              {-60, 600},
	"inside_flow":            {0.001, 5000},
	"inside_pressure":        {1000, 20e6},
	"fouling_inside":         {0, 0.05},
	"bond_resistance":        {0, 0.01},
	"start_up":               {-60, 1000},
	"upset":                  {-60, 1000},
	"house_limit":            {20, 1000},
	"least_wall":             {0.0001, 0.030},
	"position_tolerance":     {0.0005, 0.5},
	"joints_allowed":         {0, 50},
	"margin":                 {0, 9},
	spanCentre:               {0, 30},
	spanWidth:                {0.001, 5},
}

// Range returns the limits of a field's number [SI]; bounded is false for a field that has none of its own here. A span's
// fields are named without their number.
func Range(field string) (low, high float64, bounded bool) {
	l, bounded := limits[field]
	return l.low, l.high, bounded
}

// Fields of a bare span, followed by its number in errors: span_centre_1.
const (
	spanCentre = "span_centre"
	spanWidth  = "span_width"
)
