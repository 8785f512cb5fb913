package field

import (
	"strconv"

	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
	"finwright/core/units"
)

// Reasons why a field has no range of its own, and cannot be swept.
const (
	byMaterial = "field: material.NewOwn holds a metal of the user's own to its range"
	ofMetal    = "field: a metal is made of its properties when all are read"
	ofShares   = "field: the others would have to follow, so that the sum stays"
)

// Version is the version of the documents that is written now: the newest since which there is a field, or in which one changed
// its meaning (see core/document/versions.go).
const Version = 6

// Fields lists every field; those of a group stand in the order of the form.
var Fields = []Field{
	{
		ID: "quantity", Group: "job", Since: 1, Used: always, House: "1",
		Kind: units.Count, Low: 1, High: 1e6,
		Whole: func(in *Input) *int { return &in.Job.Quantity },
	},
	{
		ID: "job_kind", Group: "job", Since: 4, Used: always, House: "new",
		Choices: among("new", "retube"),
		Choice:  func(in *Input, c string) { in.Job.Retube = c == "retube" },
	},
	{
		ID: "old_ua", Group: "job", Since: 4, Used: retube,
		Kind: units.Transfer, Low: 1, High: 1e8, Usual: Range{500, 2e6},
		Real: func(in *Input) *float64 { return &in.Job.OldUA },
	},
	{
		ID: "old_pitch", Group: "job", Since: 5, Used: retube,
		Kind: units.Diameter, Low: 0.008, High: 1, Usual: Range{0.025, 0.25},
		Real: func(in *Input) *float64 { return (*float64)(&in.Job.OldPitch) },
	},
	{
		ID: "old_tubes", Group: "job", Since: 5, Used: retube,
		Kind: units.Count, Low: 1, High: 1e6,
		Whole: func(in *Input) *int { return &in.Job.OldTubes },
	},
	{
		ID: "old_length", Group: "job", Since: 5, Used: retube,
		Kind: units.Distance, Low: 0.1, High: 30, Usual: Range{0.5, 18},
		Real: func(in *Input) *float64 { return (*float64)(&in.Job.OldLength) },
	},
	{
		ID: "fin_od_most", Group: "job", Since: 4, Used: retube,
		Kind: units.Diameter, Low: 0.008, High: 0.5, Usual: Range{0.02, 0.25},
		Real: func(in *Input) *float64 { return (*float64)(&in.Job.FinMost) },
	},
	{
		ID: "supply", Group: "job", Since: 1, Used: always, House: "ours",
		Choices: among("ours", "free_issue"),
		Choice:  func(in *Input, c string) { in.Job.FreeIssue = c == "free_issue" },
	},
	{
		ID: "spares", Group: "job", Since: 1, Used: freeIssue, House: "0",
		Kind: units.Count, Low: 0, High: 1e5,
		Whole: func(in *Input) *int { return &in.Job.Spares },
	},

	{
		ID: "tube_metal", Group: "tube", Since: 1, Used: always, House: "cs",
		Choices: tubeMetals, Named: "metal.",
		Choice: func(in *Input, c string) {
			m, _ := material.TubeMetal(c)
			in.MakeTubeOf(m)
			in.OwnTube.Chosen = c == material.Own
		},
	},
	{
		ID: "own_tube_name", Group: "tube", Since: 1, Used: ownTube, House: "Alloy 1",
		Text: func(in *Input) *string { return &in.OwnTube.Name },
	},
	{
		ID: "own_tube_conductivity", Group: "tube", Since: 1, Used: ownTube, House: "50 W/m·K",
		Kind: units.Conduct, Unbounded: byMaterial, Fixed: ofMetal,
		Real: func(in *Input) *float64 { return &in.OwnTube.Conductivity },
	},
	{
		ID: "own_tube_density", Group: "tube", Since: 1, Used: ownTube, House: "7850 kg/m³",
		Kind: units.Dense, Unbounded: byMaterial, Fixed: ofMetal, Usual: Range{1000, 23e3},
		Real: func(in *Input) *float64 { return &in.OwnTube.Density },
	},
	{
		ID: "own_tube_expansion", Group: "tube", Since: 1, Used: ownTube, House: "12 µm/m·K",
		Kind: units.Expand, Unbounded: byMaterial, Fixed: ofMetal,
		Real: func(in *Input) *float64 { return &in.OwnTube.Expansion },
	},
	{
		ID: "tube_od", Group: "tube", Since: 1, Used: always, House: "1 in",
		Kind: units.Diameter, Low: 0.006, High: 0.330, Usual: Range{0.008, 0.22},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.OD) },
	},
	{
		ID: "tube_wall", Group: "tube", Since: 1, Used: always, House: "14 BWG",
		Kind: units.Wall, Low: 0.0003, High: 0.030, Usual: Range{0.0005, 0.0076},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Wall) },
	},
	{
		ID: "wall_basis", Group: "fin_detail", Since: 1, Used: always, House: string(tube.AverageWall),
		Choices: among(string(tube.AverageWall), string(tube.MinimumWall)),
		Choice:  func(in *Input, c string) { in.Tube.Basis = tube.WallBasis(c) },
	},

	{
		ID: "fin_type", Group: "fin", Since: 1, Used: always, House: string(tube.Footed),
		Choices: finTypes,
		Choice:  func(in *Input, c string) { in.Tube.Fin.Type = tube.FinType(c) },
	},
	{
		ID: "fin_metal", Group: "fin", Since: 1, Used: always, House: "al1060",
		Choices: finMetals, Named: "metal.",
		Choice: func(in *Input, c string) {
			m, _ := material.FinMetal(c)
			in.MakeFinOf(m)
			in.OwnFin.Chosen = c == material.Own
		},
	},
	{
		ID: "own_fin_name", Group: "fin", Since: 1, Used: ownFin, House: "Alloy 2",
		Text: func(in *Input) *string { return &in.OwnFin.Name },
	},
	{
		ID: "own_fin_conductivity", Group: "fin", Since: 1, Used: ownFin, House: "200 W/m·K",
		Kind: units.Conduct, Unbounded: byMaterial, Fixed: ofMetal,
		Real: func(in *Input) *float64 { return &in.OwnFin.Conductivity },
	},
	{
		ID: "own_fin_density", Group: "fin", Since: 1, Used: ownFin, House: "2700 kg/m³",
		Kind: units.Dense, Unbounded: byMaterial, Fixed: ofMetal, Usual: Range{1000, 23e3},
		Real: func(in *Input) *float64 { return &in.OwnFin.Density },
	},
	{
		ID: "own_fin_expansion", Group: "fin", Since: 1, Used: ownFin, House: "23 µm/m·K",
		Kind: units.Expand, Unbounded: byMaterial, Fixed: ofMetal,
		Real: func(in *Input) *float64 { return &in.OwnFin.Expansion },
	},
	{
		ID: "fin_height", Group: "fin", Since: 1, Used: always, House: "5/8 in",
		Kind: units.Height, Low: 0.001, High: 0.060, Usual: Range{0.003, 0.04},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Height) },
	},
	{
		ID: "strip_thickness", Group: "fin", Since: 1, Used: always, House: "0.4 mm",
		Kind: units.Thickness, Low: 0.0001, High: 0.006, Usual: Range{0.00015, 0.004},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Strip) },
	},
	{
		ID: "fin_pitch", Group: "fin", Since: 1, Used: always, House: "10 fpi",
		Kind: units.FinCount, Low: 20, High: 1700, Usual: Range{60, 1000},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Count) },
	},
	{
		ID: "fin_profile", Group: "fin_detail", Since: 1, Used: always, House: string(tube.AsMade),
		Choices: among(string(tube.AsMade), string(tube.Rolled), string(tube.Uniform), string(tube.Linear)),
		Choice:  func(in *Input, c string) { in.Tube.Fin.Profile = tube.Profile(c) },
	},
	{
		ID: "tip_thickness", Group: "fin_detail", Since: 1, Used: linear, House: "0.2 mm",
		Kind: units.Thickness, Low: 0.00002, High: 0.006, Usual: Range{0.00005, 0.004},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.TipGiven) },
	},
	{
		ID: "groove_depth", Group: "fin_detail", Since: 1, Used: grooved, House: "0.25 mm",
		Kind: units.Height, Low: 0.0001, High: 0.001, Usual: Range{0.00015, 0.0006},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Groove) },
	},
	{
		ID: "foot_lap", Group: "fin_detail", Since: 1, Used: lapped,
		Kind: units.Height, Low: 0.0001, High: 0.010, Usual: Range{0.0005, 0.006},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Lap) },
		StandIn: func(in *Input) (float64, bool) {
			bare := in.Tube
			bare.Fin.Lap = 0
			return float64(bare.FootLap()), bare.Fin.Type.Lapped()
		},
	},
	{
		ID: "sleeve_thickness", Group: "fin_detail", Since: 1, Used: sleeved, House: "0.5 mm",
		Kind: units.Height, Low: 0.0001, High: 0.010, Usual: Range{0.0002, 0.004},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Fin.Sleeve) },
	},
	{
		ID: "root_basis", Group: "fin_detail", Since: 1, Used: footed, House: string(tube.FromTube),
		Choices: among(string(tube.FromTube), string(tube.FromFoot)),
		Choice:  func(in *Input, c string) { in.Tube.Fin.Root = tube.RootBasis(c) },
	},

	{
		ID: "tube_length", Group: "lengths", Since: 1, Used: always, House: "18 ft",
		Kind: units.Distance, Low: 0.1, High: 30, Usual: Range{0.3, 20},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.Length) },
	},
	{
		ID: "plain_end_a", Group: "lengths", Since: 1, Used: always, House: "1 1/2 in",
		Kind: units.Distance, Low: 0, High: 5, Usual: Range{0.005, 0.6},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.PlainA) },
	},
	{
		ID: "plain_end_b", Group: "lengths", Since: 1, Used: always, House: "1 1/2 in",
		Kind: units.Distance, Low: 0, High: 5, Usual: Range{0.005, 0.6},
		Real: func(in *Input) *float64 { return (*float64)(&in.Tube.PlainB) },
	},

	{
		ID: "film_source", Group: "film", Since: 2, Used: always, House: "computed",
		Choices: among("computed", "given"),
		Choice:  func(in *Input, c string) { in.Air.FilmGiven = c == "given" },
	},
	{
		ID: "film_method", Group: "film", Since: 4, Used: computedFilm, House: rating.ByRule,
		Choices: filmMethods, Named: "airside.",
		Choice: func(in *Input, c string) { in.Air.FilmMethod = c },
	},
	{
		ID: "film_coefficient", Group: "film", Since: 1, Used: givenFilm, House: "50 W/m²K",
		Kind: units.Film, Low: 0.1, High: 5000, Usual: Range{5, 300},
		Real: func(in *Input) *float64 { return (*float64)(&in.Air.Film) },
	},
	{
		ID: "metal_temperature", Group: "film", Since: 1, Used: always,
		Kind: units.Temp, Low: -200, High: 1000,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Metal },
	},

	{
		ID: "gas", Group: "air", Since: 2, Used: always, House: "air",
		Choices: among(string(rating.MoistAir), string(rating.DryAir), string(rating.FlueGas), string(rating.OwnGas)),
		Choice:  func(in *Input, c string) { in.Air.Kind = rating.GasKind(c) },
	},
	{
		ID: "flue_by", Group: "gas", Since: 4, Used: flue, House: "shares",
		Choices: among("shares", "fuel"),
		Choice:  func(in *Input, c string) { in.Air.Flue.ByFuel = c == "fuel" },
	},
	{
		ID: "flue_basis", Group: "gas", Since: 4, Used: basedFlue, House: "wet",
		Choices: among("wet", "dry"),
		Choice:  func(in *Input, c string) { in.Air.Flue.Dry = c == "dry" },
	},
	{
		ID: "share_co2", Group: "gas", Since: 4, Used: sharedFlue, House: "8.3 %",
		Kind: units.Percent, Low: 0, High: 1, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.CO2 },
	},
	{
		ID: "share_h2o", Group: "gas", Since: 4, Used: wetFlue, House: "16.2 %",
		Kind: units.Percent, Low: 0, High: 0.5, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.H2O },
	},
	{
		ID: "share_o2", Group: "gas", Since: 4, Used: sharedFlue, House: "3.1 %",
		Kind: units.Percent, Low: 0, High: 0.21, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.O2 },
	},
	{
		ID: "share_n2", Group: "gas", Since: 4, Used: sharedFlue, House: "72.4 %",
		Kind: units.Percent, Low: 0, High: 1, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.N2 },
	},
	{
		ID: "share_so2", Group: "gas", Since: 4, Used: sharedFlue,
		Kind: units.Percent, Low: 0, High: 0.05, Fixed: ofShares,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Flue.SO2 },
	},
	{
		ID: "flue_water", Group: "gas", Since: 4, Used: dryFlue,
		Kind: units.Percent, Low: 0, High: 0.5,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Flue.Water },
	},
	{
		ID: "fuel_carbon", Group: "gas", Since: 4, Used: burntFlue, House: "74.3 %",
		Kind: units.Percent, Low: 0, High: 1, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Fuel.Carbon },
	},
	{
		ID: "fuel_hydrogen", Group: "gas", Since: 4, Used: burntFlue, House: "23.9 %",
		Kind: units.Percent, Low: 0, High: 1, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Fuel.Hydrogen },
	},
	{
		ID: "fuel_oxygen", Group: "gas", Since: 4, Used: burntFlue, House: "0.6 %",
		Kind: units.Percent, Low: 0, High: 0.6, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Fuel.Oxygen },
	},
	{
		ID: "fuel_nitrogen", Group: "gas", Since: 4, Used: burntFlue, House: "1.2 %",
		Kind: units.Percent, Low: 0, High: 0.9, Fixed: ofShares,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Fuel.Nitrogen },
	},
	{
		ID: "fuel_sulphur", Group: "gas", Since: 4, Used: burntFlue,
		Kind: units.Percent, Low: 0, High: 0.2, Fixed: ofShares,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Flue.Sulphur },
	},
	{
		ID: "burnt_by", Group: "gas", Since: 4, Used: burntFlue, House: "excess",
		Choices: among("excess", "oxygen"),
		Choice:  func(in *Input, c string) { in.Air.Flue.ByOxygen = c == "oxygen" },
	},
	{
		ID: "excess_air", Group: "gas", Since: 4, Used: excessFlue, House: "16 %",
		Kind: units.Percent, Low: 0, High: 20,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Excess },
	},
	{
		ID: "oxygen_left", Group: "gas", Since: 4, Used: leftFlue, House: "2.8 %",
		Kind: units.Percent, Low: 0, High: 0.2,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Left },
	},
	{
		ID: "burning_air_water", Group: "gas", Since: 4, Used: burntFlue, House: "0.9 %",
		Kind: units.Percent, Low: 0, High: 0.2,
		Real: func(in *Input) *float64 { return &in.Air.Flue.Humidity },
	},
	{
		ID: "to_trioxide", Group: "gas", Since: 4, Used: flue, House: "2.5 %",
		Kind: units.Percent, Low: 0, High: 0.3,
		Real: func(in *Input) *float64 { return &in.Air.Flue.ToTrioxide },
	},
	{
		ID: "own_gas_density", Group: "gas", Since: 2, Used: ownGas, House: "0.6 kg/m³",
		Kind: units.Dense, Low: 0.01, High: 100, Usual: Range{0.2, 60},
		Real: func(in *Input) *float64 { return &in.Air.Gas.Density },
	},
	{
		ID: "own_gas_heat", Group: "gas", Since: 2, Used: ownGas, House: "1100 J/kg·K",
		Kind: units.SpecificHeat, Low: 100, High: 20000, Usual: Range{700, 5000},
		Real: func(in *Input) *float64 { return &in.Air.Gas.HeatCapacity },
	},
	{
		ID: "own_gas_viscosity", Group: "gas", Since: 2, Used: ownGas, House: "0.03 mPa·s",
		Kind: units.Viscous, Low: 1e-6, High: 1e-3,
		Real: func(in *Input) *float64 { return &in.Air.Gas.Viscosity },
	},
	{
		ID: "own_gas_conductivity", Group: "gas", Since: 2, Used: ownGas, House: "0.045 W/m·K",
		Kind: units.Conduct, Low: 0.001, High: 1,
		Real: func(in *Input) *float64 { return &in.Air.Gas.Conductivity },
	},
	{
		ID: "air_in", Group: "air", Since: 2, Used: always, House: "30 °C",
		Kind: units.Temp, Low: -40, High: 1200,
		Real: func(in *Input) *float64 { return (*float64)(&in.Air.In) },
	},
	{
		ID: "air_humidity", Group: "air_detail", Since: 2, Used: inAir, House: "50 %",
		Kind: units.Percent, Low: 0, High: 1,
		Real: func(in *Input) *float64 { return &in.Air.Humidity },
	},
	{
		ID: "altitude", Group: "air_detail", Since: 2, Used: inAtmosphere, House: "0 m",
		Kind: units.Run, Low: -300, High: 6000,
		Real: func(in *Input) *float64 { return (*float64)(&in.Air.Altitude) },
	},
	{
		ID: "face_velocity", Group: "air", Since: 2, Used: always, House: "3 m/s",
		Kind: units.Velocity, Low: rating.LeastVelocity, High: rating.MostVelocity, Usual: Range{0.5, 20},
		Real: func(in *Input) *float64 { return &in.Air.Velocity },
	},
	{
		ID: "velocity_basis", Group: "air_detail", Since: 4, Used: always, House: string(rating.Actual),
		Choices: among(string(rating.Actual), string(rating.Standard), string(rating.Normal)),
		Choice:  func(in *Input, c string) { in.Air.Basis = rating.VelocityBasis(c) },
	},
	{
		ID: "fouling_outside", Group: "air_detail", Since: 2, Used: always, House: "0 m²K/W",
		Kind: units.Resist, Low: 0, High: 0.05, Usual: Range{0.00001, 0.0019},
		Real: func(in *Input) *float64 { return &in.Air.Fouling },
	},
	{
		ID: "fan_efficiency", Group: "fan", Since: 2, Used: always, House: "65 %",
		Kind: units.Percent, Low: 0.05, High: 1,
		Real: func(in *Input) *float64 { return &in.Air.Fan.Efficiency },
	},
	{
		ID: "draught", Group: "fan", Since: 4, Used: always, House: "forced",
		Choices: among("forced", "induced"),
		Choice:  func(in *Input, c string) { in.Air.Fan.Induced = c == "induced" },
	},
	{
		ID: "fan_entry", Group: "fan", Since: 4, Used: always, House: "30 %",
		Kind: units.Percent, Low: 0, High: 5,
		Real: func(in *Input) *float64 { return &in.Air.Fan.Entry },
	},
	{
		ID: "fan_area", Group: "fan", Since: 4, Used: always,
		Kind: units.SurfacePerTube, Low: 0.01, High: 1000, Usual: Range{0.5, 100},
		Real: func(in *Input) *float64 { return &in.Air.Fan.Area },
	},
	{
		ID: "coldest_air", Group: "fan", Since: 4, Used: always,
		Kind: units.Temp, Low: -40, High: 390,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Fan.Coldest },
	},
	{
		ID: "fan_bears", Group: "fan", Since: 4, Used: induced,
		Kind: units.Temp, Low: 0, High: 600,
		Optional: func(in *Input) *rating.Optional { return &in.Air.Fan.Bears },
	},
	{
		ID: "drop_method", Group: "air_detail", Since: 4, Used: always, House: rating.ByRule,
		Choices: dropMethods, Named: "airside.",
		Choice: func(in *Input, c string) { in.Air.DropMethod = c },
	},

	{
		ID: "layout", Group: "bank", Since: 2, Used: always, House: "staggered",
		Choices: among("staggered", "in_line"),
		Choice:  func(in *Input, c string) { in.Bank.Layout = layout(c) },
	},
	{
		ID: "tip_clearance", Group: "bank_detail", Since: 2, Used: always, House: "1/4 in",
		Kind: units.Height, Low: 0, High: 0.2, Usual: Range{0.001, 0.06},
		Real: func(in *Input) *float64 { return (*float64)(&in.Bank.Clearance) },
	},
	{
		ID: "tube_pitch", Group: "bank", Since: 2, Used: always,
		Kind: units.Diameter, Low: 0.008, High: 1, Usual: Range{0.02, 0.25},
		Real:    func(in *Input) *float64 { return (*float64)(&in.Bank.TubePitch) },
		StandIn: func(in *Input) (float64, bool) { return float64(in.TubePitch()), true },
	},
	{
		ID: "row_pitch", Group: "bank_detail", Since: 2, Used: always,
		Kind: units.Diameter, Low: 0.008, High: 1, Usual: Range{0.02, 0.25},
		Real:    func(in *Input) *float64 { return (*float64)(&in.Bank.RowPitch) },
		StandIn: func(in *Input) (float64, bool) { return float64(in.RowPitch()), true },
	},
	{
		ID: "rows", Group: "bank", Since: 2, Used: always, House: "4",
		Kind: units.Count, Low: 1, High: 30,
		Whole: func(in *Input) *int { return &in.Bank.Rows },
	},
	{
		ID: "tubes_per_row", Group: "bank", Since: 2, Used: always, House: "30",
		Kind: units.Count, Low: 1, High: 500,
		Whole: func(in *Input) *int { return &in.Bank.TubesPerRow },
	},
	{
		ID: "bundles", Group: "bank_detail", Since: 4, Used: always, House: "1",
		Kind: units.Count, Low: 1, High: 100,
		Whole: func(in *Input) *int { return &in.Job.Bundles },
	},
	{
		ID: "frame_share", Group: "bank_detail", Since: 4, Used: always, House: "40 %",
		Kind: units.Percent, Low: 0, High: 5,
		Real: func(in *Input) *float64 { return &in.Job.Frame },
	},
	{
		ID: "passes", Group: "bank", Since: 2, Used: always, House: "2",
		Kind: units.Count, Low: 1, High: 30,
		Whole: func(in *Input) *int { return &in.Bank.Passes },
	},
	{
		ID: "duty_wanted", Group: "bank", Since: 2, Used: always,
		Kind: units.Duty, Low: 1, High: 1e9, Usual: Range{10e3, 50e6},
		Real:    func(in *Input) *float64 { return &in.Bank.DutyWanted },
		StandIn: func(in *Input) (float64, bool) { return in.Bank.DutyWanted, in.Process.Third == rating.ThirdDuty },
	},
	{
		ID: "drop_allowed", Group: "bank_detail", Since: 2, Used: always,
		Kind: units.Drop, Low: 1, High: 20000, Usual: Range{5, 2500},
		Real: func(in *Input) *float64 { return &in.Bank.DropAllowed },
	},

	{
		ID: "hold_space", Group: "holds", Since: 4, Used: always, House: rating.Usual,
		Choices: among(rating.Usual, string(rating.AsEntered), string(rating.Clearance), string(rating.Pitch), string(rating.Face), string(rating.Tubes), string(rating.Depth)),
		Choice:  func(in *Input, c string) { in.Holds.Space = rating.Space(c) },
	},
	{
		ID: "hold_air", Group: "holds", Since: 4, Used: always, House: rating.Usual,
		Choices: among(rating.Usual, string(rating.HoldMass), string(rating.HoldVelocity), string(rating.HoldDrop), string(rating.HoldPower)),
		Choice:  func(in *Input, c string) { in.Holds.Air = rating.AirHold(c) },
	},
	{
		ID: "hold_process", Group: "holds", Since: 5, Used: flowing, House: string(rating.HoldInlet),
		Choices: among(string(rating.HoldInlet), string(rating.HoldEnds), string(rating.HoldDuty)),
		Choice:  func(in *Input, c string) { in.Holds.Process = rating.ProcessHold(c) },
	},
	{
		ID: "inside_fluid", Group: "inside", Since: 2, Used: always, House: "water",
		Choices: among("water", "ethylene_glycol", "propylene_glycol", "steam", "own"),
		Choice:  func(in *Input, c string) { in.Process.Fluid = rating.Fluid(c) },
	},
	{
		ID: "glycol_share", Group: "inside", Since: 4, Used: glycol, House: "35 %",
		Kind: units.Percent, Low: 0, High: 0.60,
		Real: func(in *Input) *float64 { return &in.Process.Glycol },
	},
	{
		ID: "own_fluid_phase", Group: "stream", Since: 4, Used: ownFluid, House: "liquid",
		Choices: among("liquid", "gas"),
		Choice:  func(in *Input, c string) { in.Process.Gas = c == "gas" },
	},
	{
		ID: "own_fluid_points", Group: "stream", Since: 4, Used: ownFluid, House: "1",
		Choices: among("1", "2", "3"),
		Choice:  func(in *Input, c string) { in.Process.Points, _ = strconv.Atoi(c) },
	},
	{
		ID: "own_fluid_at", Group: "stream", Since: 4, Used: ownPoint(2), House: "60 °C",
		Kind: units.Temp, Low: -60, High: 600,
		Real: func(in *Input) *float64 { return (*float64)(&in.Process.OwnAt) },
	},
	{
		ID: "own_fluid_density", Group: "stream", Since: 2, Used: ownFluid, House: "850 kg/m³",
		Kind: units.Dense, Low: 0.05, High: 20000, Usual: Range{0.2, 2500},
		Real: func(in *Input) *float64 { return &in.Process.Own.Density },
	},
	{
		ID: "own_fluid_heat", Group: "stream", Since: 2, Used: ownFluid, House: "2100 J/kg·K",
		Kind: units.SpecificHeat, Low: 100, High: 20000, Usual: Range{700, 15e3},
		Real: func(in *Input) *float64 { return &in.Process.Own.HeatCapacity },
	},
	{
		ID: "own_fluid_viscosity", Group: "stream", Since: 2, Used: ownFluid, House: "5 mPa·s",
		Kind: units.Viscous, Low: 5e-6, High: 10,
		Real: func(in *Input) *float64 { return &in.Process.Own.Viscosity },
	},
	{
		ID: "own_fluid_conductivity", Group: "stream", Since: 2, Used: ownFluid, House: "0.13 W/m·K",
		Kind: units.Conduct, Low: 0.005, High: 100,
		Real: func(in *Input) *float64 { return &in.Process.Own.Conductivity },
	},
	{
		ID: "own_fluid_at_2", Group: "stream", Since: 4, Used: ownPoint(2), House: "100 °C",
		Kind: units.Temp, Low: -60, High: 600,
		Real: func(in *Input) *float64 { return (*float64)(&in.Process.More[0].At) },
	},
	{
		ID: "own_fluid_density_2", Group: "stream", Since: 4, Used: ownPoint(2), House: "826 kg/m³",
		Kind: units.Dense, Low: 0.05, High: 20000, Usual: Range{0.2, 2500},
		Real: func(in *Input) *float64 { return &in.Process.More[0].Density },
	},
	{
		ID: "own_fluid_heat_2", Group: "stream", Since: 4, Used: ownPoint(2), House: "2260 J/kg·K",
		Kind: units.SpecificHeat, Low: 100, High: 20000, Usual: Range{700, 15e3},
		Real: func(in *Input) *float64 { return &in.Process.More[0].HeatCapacity },
	},
	{
		ID: "own_fluid_viscosity_2", Group: "stream", Since: 4, Used: ownPoint(2), House: "2.1 mPa·s",
		Kind: units.Viscous, Low: 5e-6, High: 10,
		Real: func(in *Input) *float64 { return &in.Process.More[0].Viscosity },
	},
	{
		ID: "own_fluid_conductivity_2", Group: "stream", Since: 4, Used: ownPoint(2), House: "0.127 W/m·K",
		Kind: units.Conduct, Low: 0.005, High: 100,
		Real: func(in *Input) *float64 { return &in.Process.More[0].Conductivity },
	},
	{
		ID: "own_fluid_at_3", Group: "stream", Since: 4, Used: ownPoint(3), House: "140 °C",
		Kind: units.Temp, Low: -60, High: 600,
		Real: func(in *Input) *float64 { return (*float64)(&in.Process.More[1].At) },
	},
	{
		ID: "own_fluid_density_3", Group: "stream", Since: 4, Used: ownPoint(3), House: "802 kg/m³",
		Kind: units.Dense, Low: 0.05, High: 20000, Usual: Range{0.2, 2500},
		Real: func(in *Input) *float64 { return &in.Process.More[1].Density },
	},
	{
		ID: "own_fluid_heat_3", Group: "stream", Since: 4, Used: ownPoint(3), House: "2420 J/kg·K",
		Kind: units.SpecificHeat, Low: 100, High: 20000, Usual: Range{700, 15e3},
		Real: func(in *Input) *float64 { return &in.Process.More[1].HeatCapacity },
	},
	{
		ID: "own_fluid_viscosity_3", Group: "stream", Since: 4, Used: ownPoint(3), House: "1.2 mPa·s",
		Kind: units.Viscous, Low: 5e-6, High: 10,
		Real: func(in *Input) *float64 { return &in.Process.More[1].Viscosity },
	},
	{
		ID: "own_fluid_conductivity_3", Group: "stream", Since: 4, Used: ownPoint(3), House: "0.124 W/m·K",
		Kind: units.Conduct, Low: 0.005, High: 100,
		Real: func(in *Input) *float64 { return &in.Process.More[1].Conductivity },
	},
	{
		ID: "own_fluid_pour", Group: "stream", Since: 4, Used: ownLiquid,
		Kind: units.Temp, Low: -100, High: 400,
		Optional: func(in *Input) *rating.Optional { return &in.Process.Pour },
	},
	{
		ID: "steam_by", Group: "inside", Since: 4, Used: condensing, House: "temperature",
		Choices: among("temperature", "pressure"),
		Choice:  func(in *Input, c string) { in.SteamByPressure = c == "pressure" },
	},
	{
		ID: "inside_in", Group: "inside", Since: 2, Used: inletTold, House: "90 °C",
		Kind: units.Temp, Low: -60, High: 600,
		Real: func(in *Input) *float64 { return (*float64)(&in.Process.In) },
	},
	{
		ID: "inside_flow", Group: "inside", Since: 2, Used: flowing, House: "15 kg/s",
		Clearable: true,
		Kind:      units.MassRate, Low: rating.LeastFlow, High: rating.MostFlow, Usual: Range{0.02, 500},
		Also:    &Way{units.VolumeRate, func(in *Input) *rating.Optional { return &in.Process.Volume }},
		Real:    func(in *Input) *float64 { return &in.Process.Flow },
		StandIn: func(in *Input) (float64, bool) { return in.Process.Flow, in.Process.Third == rating.ThirdFlow },
	},
	{
		ID: "inside_out", Group: "inside", Since: 4, Used: flowing,
		Kind: units.Temp, Low: -60, High: 600,
		Optional: func(in *Input) *rating.Optional { return &in.Process.Out },
		StandIn:  func(in *Input) (float64, bool) { return in.Process.Out.SI, in.Process.Third == rating.ThirdOut },
	},
	{
		ID: "inside_pressure", Group: "inside", Since: 2, Used: pressed, House: "1000 kPa", Clearable: true,
		Kind: units.Pressure, Low: 1000, High: 20e6, Usual: Range{50e3, 15e6},
		Also:     &Way{units.Gauge, func(in *Input) *rating.Optional { return &in.Process.Gauge }},
		Optional: func(in *Input) *rating.Optional { return &in.Process.Pressure },
	},
	{
		ID: "own_fluid_pressure", Group: "stream", Since: 4, Used: ownFluid,
		Kind: units.Pressure, Low: 1000, High: 100e6, Usual: Range{50e3, 15e6},
		Also:     &Way{units.Gauge, func(in *Input) *rating.Optional { return &in.Process.Gauge }},
		Optional: func(in *Input) *rating.Optional { return &in.Process.Pressure },
	},
	{
		ID: "own_fluid_vapour", Group: "stream", Since: 4, Used: ownLiquid,
		Kind: units.Pressure, Low: 1e-3, High: 20e6, Usual: Range{100, 2e6},
		Optional: func(in *Input) *rating.Optional { return &in.Process.Vapour },
	},
	{
		ID: "inside_drop_allowed", Group: "inside_detail", Since: 4, Used: flowing,
		Kind: units.Loss, Low: 1, High: 20e6, Usual: Range{1000, 500e3},
		Real: func(in *Input) *float64 { return &in.Process.DropAllowed },
	},
	{
		ID: "fouling_inside", Group: "inside_detail", Since: 2, Used: always, House: "0.00018 m²K/W",
		Kind: units.Resist, Low: 0, High: 0.05, Usual: Range{0.00001, 0.0019},
		Real: func(in *Input) *float64 { return &in.Process.Fouling },
	},
	{
		ID: "bond_resistance", Group: "inside_detail", Since: 2, Used: always,
		Kind: units.Resist, Low: 0, High: 0.01, Usual: Range{1e-6, 0.0005},
		Optional: func(in *Input) *rating.Optional { return &in.Process.Bond },
		StandIn:  func(in *Input) (float64, bool) { return in.Tube.Fin.Type.Fixing().Bond.SI, true },
	},

	{
		ID: "start_up", Group: "cases", Since: 2, Used: always,
		Kind: units.Temp, Low: -60, High: 1000,
		Optional: func(in *Input) *rating.Optional { return &in.Beyond.StartUp },
	},
	{
		ID: "upset", Group: "cases", Since: 2, Used: always,
		Kind: units.Temp, Low: -60, High: 1000,
		Optional: func(in *Input) *rating.Optional { return &in.Beyond.Upset },
	},
	{
		ID: "air_start_up", Group: "cases", Since: 4, Used: always,
		Kind: units.Temp, Low: -40, High: 1200,
		Optional: func(in *Input) *rating.Optional { return &in.Beyond.GasStartUp },
	},
	{
		ID: "air_upset", Group: "cases", Since: 4, Used: always,
		Kind: units.Temp, Low: -40, High: 1200,
		Optional: func(in *Input) *rating.Optional { return &in.Beyond.GasUpset },
	},
	{
		ID: "flow_lost", Group: "cases", Since: 4, Used: always, House: "untold",
		Choices: among("untold", "possible", "excluded"),
		Choice:  func(in *Input, c string) { in.Beyond.FlowLost = rating.FlowLost(c) },
	},
	{
		ID: "air_summer", Group: "cases", Since: 4, Used: always,
		Kind: units.Temp, Low: -40, High: 1200,
		Optional: func(in *Input) *rating.Optional { return &in.Limits.Summer },
	},
	{
		ID: "air_winter", Group: "cases", Since: 4, Used: always,
		Kind: units.Temp, Low: -40, High: 1200,
		Optional: func(in *Input) *rating.Optional { return &in.Limits.Winter },
	},
	{
		ID: "turndown", Group: "cases", Since: 4, Used: flowing,
		Kind: units.Percent, Low: 0.05, High: 1,
		Optional: func(in *Input) *rating.Optional { return &in.Limits.Turndown },
	},
	{
		ID: "house_limit", Group: "cases", Since: 2, Used: always,
		Kind: units.Temp, Low: 20, High: 1000,
		Optional: func(in *Input) *rating.Optional { return &in.Limits.House },
		StandIn: func(in *Input) (float64, bool) {
			house := in.Tube.Fin.Type.Fixing().Limits.House
			return house.SI, house.Known()
		},
	},
	{
		ID: "tube_metal_limit", Group: "cases", Since: 4, Used: always,
		Kind: units.Temp, Low: 20, High: 1200,
		Optional: func(in *Input) *rating.Optional { return &in.Limits.TubeMetal },
	},

	{
		ID: "line", Group: "making", Since: 3, Used: always,
		Text: func(in *Input) *string { return &in.Wish.Line },
	},
	{
		ID: "least_wall", Group: "tolerances", Since: 3, Used: always,
		Kind: units.Wall, Low: 0.0001, High: 0.030, Usual: Range{0.0003, 0.0076},
		Real: func(in *Input) *float64 { return (*float64)(&in.Wish.LeastWall) },
	},
	{
		ID: "position_tolerance", Group: "tolerances", Since: 3, Used: always,
		Kind: units.Distance, Low: 0.0005, High: 0.5, Usual: Range{0.0005, 0.05},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Tolerance },
	},
	{
		ID: "joints_allowed", Group: "making", Since: 3, Used: always,
		Kind: units.Count, Low: 0, High: 50,
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Joints },
	},
	{
		ID: "margin", Group: "making", Since: 3, Used: always,
		Kind: units.Percent, Low: 0, High: 9,
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Margin },
	},
	{
		ID: "ordered", Group: "making", Since: 6, Used: always,
		Day: func(in *Input) *shop.Day { return &in.Wish.Ordered },
	},
	{
		ID: "drawing_approved", Group: "making", Since: 6, Used: always,
		Day: func(in *Input) *shop.Day { return &in.Wish.Approved },
	},
	{
		ID: "support_spacing", Group: "tolerances", Since: 6, Used: always,
		Kind: units.Distance, Low: 0.1, High: 30, Usual: Range{0.3, 6},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.Supports },
	},
	{
		ID: "rolled_length", Group: "tolerances", Since: 6, Used: cutInto,
		Kind: units.Distance, Low: 0, High: 5, Usual: Range{0.01, 1},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.Rolled },
	},
	{
		ID: "end_security", Group: "tolerances", Since: 6, Used: always, House: "shop", Before: "shop",
		Choices: endSecurities,
		Choice: func(in *Input, c string) {
			if in.Wish.Asked.Security = c; c == "shop" {
				in.Wish.Asked.Security = ""
			}
		},
	},
	{
		ID: "tube_bow", Group: "tolerances", Since: 6, Used: always,
		Kind: units.Gap, Low: 0, High: 0.5, Usual: Range{0.0001, 0.02},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.Bow },
	},
	{
		ID: "tube_bow_over", Group: "tolerances", Since: 6, Used: always,
		Kind: units.Distance, Low: 0.1, High: 30, Usual: Range{0.3, 12},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.BowOver },
	},
	{
		ID: "od_tolerance", Group: "tolerances", Since: 6, Used: always,
		Kind: units.Gap, Low: 0, High: 0.02, Usual: Range{0.00002, 0.002},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.ODOut },
	},
	{
		ID: "tube_hardness", Group: "tolerances", Since: 6, Used: cutInto,
		Kind: units.Hardness, Low: 20, High: 1000,
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.Hardness },
	},
	{
		ID: "bead_outside", Group: "tolerances", Since: 6, Used: cutInto,
		Kind: units.Gap, Low: 0, High: 0.01, Usual: Range{0.00005, 0.003},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.BeadOut },
	},
	{
		ID: "bead_inside", Group: "tolerances", Since: 6, Used: cutInto,
		Kind: units.Gap, Low: 0, High: 0.01, Usual: Range{0.00005, 0.003},
		Optional: func(in *Input) *rating.Optional { return &in.Wish.Asked.BeadIn },
	},
	stepAsked(shop.Identify),
	stepAsked(shop.GaugeBore),
	stepAsked(shop.EddyCurrent),
	stepAsked(shop.PressureTest),
	stepAsked(shop.Certificate),
	stepAsked(shop.Inspect),
}

// AskedStep returns the ID of the field by which a customer asks for a step.
func AskedStep(k shop.StepKind) string { return "ask_" + string(k) }

// stepAsked is the field by which a customer asks for a step of a kind.
func stepAsked(k shop.StepKind) Field {
	return Field{
		ID: AskedStep(k), Group: "asked", Since: 6, Used: always, House: "shop", Before: "shop",
		Choices: among("shop", "asked"), Named: "choice.step.",
		Choice: func(in *Input, c string) { in.Wish.Asked.Steps.Put(k, c == "asked") },
	}
}
