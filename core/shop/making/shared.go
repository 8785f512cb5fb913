package making

import (
	"finwright/core/shop"
	"finwright/core/units"
)

// SettingUp returns what setting up and the check of the first tubes come to in the price of an order [currency]: what an order that follows one of
// the same set-up is without. Of a price that is raised to the least charge nothing is set-up's.
//
// Valid: a plan with its cost.
// Source: the terms of cost.
func (p *Plan) SettingUp(c *shop.Capability) units.Money {
	if p.Cost.Raised > 0 || p.Time == nil {
		return 0
	}
	cost := float64(p.Time.OnLine.Of(SettingUp)+p.Time.OnLine.Of(Checking)) * crewed(c)
	return units.Money(cost * (1 + c.Rates.Overhead) * (1 + c.Rates.MarkUp))
}

// ACrate returns what one crate comes to in the price of an order, packing it included [currency]: what an order that shares one with
// another is without. Of a price that is raised to the least charge nothing is the crates'.
//
// Valid: a plan with its cost.
// Source: the terms of cost.
func (p *Plan) ACrate(c *shop.Capability) units.Money {
	if p.Cost.Raised > 0 || p.Packing == nil {
		return 0
	}
	work := float64(oneWorks(c, c.Crate.Time)) * (1 + c.Rates.Overhead)
	return units.Money((work + float64(c.Crate.Cost) + float64(p.Packing.Length)*float64(c.Crate.PerMetre)) * (1 + c.Rates.MarkUp))
}
