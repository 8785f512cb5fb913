package field

import (
	"finwright/core/airside"
	"finwright/core/material"
	"finwright/core/rating"
	"finwright/core/shop"
	"finwright/core/tube"
)

// among makes choices of a list.
func among(list ...string) func() []string { return func() []string { return list } }

func tubeMetals() []string { return metals(material.TubeMetals) }
func finMetals() []string  { return metals(material.FinMetals) }

// metals lists the ids of metals, and the user's own.
func metals(list []material.Metal) []string {
	ids := make([]string, 0, len(list)+1)
	for i := range list {
		ids = append(ids, list[i].ID)
	}
	return append(ids, material.Own)
}

func finTypes() []string {
	var list []string
	for _, t := range tube.FinTypes() {
		list = append(list, string(t))
	}
	return list
}

// endSecurities lists the ways to hold the ends of the fins, after the shop's own.
func endSecurities() []string {
	list := []string{"shop"}
	for _, w := range shop.SecuringWays {
		list = append(list, string(w))
	}
	return list
}

func filmMethods() []string { return methods(airside.FilmMethods) }
func dropMethods() []string { return methods(airside.DropMethods) }

// methods lists the ids of correlations, after the rule that chooses one.
func methods[A airside.Answer](list []airside.Method[A]) []string {
	ids := make([]string, 0, len(list)+1)
	ids = append(ids, rating.ByRule)
	for i := range list {
		ids = append(ids, list[i].ID)
	}
	return ids
}

func layout(choice string) airside.Layout {
	if choice == "in_line" {
		return airside.InLine
	}
	return airside.Staggered
}
