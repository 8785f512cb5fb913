package field

import (
	"strconv"

	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/tube"
	"finwright/core/units"
)

// Use tells whether a field counts, from the texts of the fields.
type Use func(text func(id string) string) bool

func always(func(string) string) bool { return true }

func ownTube(text func(string) string) bool  { return text("tube_metal") == material.Own }
func ownFin(text func(string) string) bool   { return text("fin_metal") == material.Own }
func ownGas(text func(string) string) bool   { return text("gas") == "own" }
func ownFluid(text func(string) string) bool { return text("inside_fluid") == string(rating.OwnFluid) }

func induced(text func(string) string) bool      { return text("draught") == "induced" }
func retube(text func(string) string) bool       { return text("job_kind") == "retube" }
func freeIssue(text func(string) string) bool    { return text("supply") == "free_issue" }
func givenFilm(text func(string) string) bool    { return text("film_source") == "given" }
func computedFilm(text func(string) string) bool { return !givenFilm(text) }
func inAir(text func(string) string) bool        { return text("gas") == string(rating.MoistAir) }
func flowing(text func(string) string) bool      { return text("inside_fluid") != string(rating.Steam) }

// Of flue gas hangs on how it is told what else is asked for.

func flue(text func(string) string) bool       { return text("gas") == string(rating.FlueGas) }
func sharedFlue(text func(string) string) bool { return flue(text) && text("flue_by") == "shares" }
func burntFlue(text func(string) string) bool  { return flue(text) && text("flue_by") == "fuel" }
func excessFlue(text func(string) string) bool {
	return burntFlue(text) && text("burnt_by") == "excess"
}

func leftFlue(text func(string) string) bool { return burntFlue(text) && text("burnt_by") == "oxygen" }

func wetFlue(text func(string) string) bool { return sharedFlue(text) && text("flue_basis") == "wet" }

func dryFlue(text func(string) string) bool   { return sharedFlue(text) && text("flue_basis") == "dry" }
func basedFlue(text func(string) string) bool { return sharedFlue(text) || leftFlue(text) }

func condensing(text func(string) string) bool { return !flowing(text) }

// byPressure tells whether the pressure says how hot the steam is, inletTold whether the inlet temperature is asked for.
func byPressure(text func(string) string) bool {
	return condensing(text) && text("steam_by") == "pressure"
}
func inletTold(text func(string) string) bool { return !byPressure(text) }

// pressed tells whether the pressure of the stream is asked for.
func pressed(text func(string) string) bool {
	return text("inside_fluid") == string(rating.Water) || glycol(text) || byPressure(text)
}

func ownLiquid(text func(string) string) bool {
	return ownFluid(text) && text("own_fluid_phase") == "liquid"
}

func glycol(text func(string) string) bool {
	fluid := rating.Fluid(text("inside_fluid"))
	return fluid == rating.Ethylene || fluid == rating.Propylene
}

// ownPoint tells whether the own fluid is known at so many temperatures.
func ownPoint(n int) Use {
	return func(text func(string) string) bool {
		points, _ := strconv.Atoi(text("own_fluid_points"))
		return ownFluid(text) && points >= n
	}
}

// inAtmosphere tells whether something hangs on the pressure of the air about.
func inAtmosphere(text func(string) string) bool {
	return text("gas") != string(rating.OwnGas) || pressed(text) && units.Is(units.Gauge, text("inside_pressure")) ||
		ownFluid(text) && units.Is(units.Gauge, text("own_fluid_pressure"))
}

func finType(text func(string) string) tube.FinType { return tube.FinType(text("fin_type")) }

func linear(text func(string) string) bool  { return text("fin_profile") == string(tube.Linear) }
func grooved(text func(string) string) bool { return finType(text).Grooved() }
func cutInto(text func(string) string) bool { return finType(text).CutInto() }
func footed(text func(string) string) bool  { return finType(text).FootLayers() > 0 }
func lapped(text func(string) string) bool  { return finType(text).Lapped() }
func sleeved(text func(string) string) bool { return !finType(text).Wound() }
