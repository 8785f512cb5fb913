package report

import (
	"finwright/core/message"
	"finwright/core/shop"
)

// Whose says on paper by whose prices, of when, and by which file an order is priced; mark is the fingerprint of that.
func (w Writer) Whose(c *shop.Capability, mark string) string {
	key, dated := "paper.whose", c.PricesOf()
	if dated != "" {
		key = "paper.whose_dated"
	}
	return w.say(message.New(key, "shop", c.Name, "dated", dated, "mark", mark))
}
