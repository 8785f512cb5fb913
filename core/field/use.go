package field

import (
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/tube"
)

// Use tells whether a field counts, from the texts of the fields.
type Use func(text func(id string) string) bool

func always(func(string) string) bool { return true }

func ownTube(text func(string) string) bool  { return text("tube_metal") == material.Own }
func ownFin(text func(string) string) bool   { return text("fin_metal") == material.Own }
func ownGas(text func(string) string) bool   { return text("gas") == "own" }
func ownFluid(text func(string) string) bool { return text("inside_fluid") == string(rating.OwnFluid) }

func freeIssue(text func(string) string) bool { return text("supply") == "free_issue" }
func givenFilm(text func(string) string) bool { return text("film_source") == "given" }
func inAir(text func(string) string) bool     { return text("gas") == "air" }
func flowing(text func(string) string) bool   { return text("inside_fluid") != string(rating.Steam) }

func ofWater(text func(string) string) bool { return text("inside_fluid") == string(rating.Water) }

func finType(text func(string) string) tube.FinType { return tube.FinType(text("fin_type")) }

func linear(text func(string) string) bool  { return text("fin_profile") == string(tube.Linear) }
func grooved(text func(string) string) bool { return finType(text).Grooved() }
func footed(text func(string) string) bool  { return finType(text).FootLayers() > 0 }
func lapped(text func(string) string) bool  { return finType(text).Lapped() }
func sleeved(text func(string) string) bool { return !finType(text).Wound() }
