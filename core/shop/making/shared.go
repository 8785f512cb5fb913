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
