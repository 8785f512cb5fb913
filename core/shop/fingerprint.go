package shop

import (
	"hash/fnv"
	"strconv"
	"sync"
)

// Fingerprint tells one shop from another: 64 bits of its file, in hexadecimal. It says whether two are the same, and is no
// proof against somebody who means to make it so.
func (c Capability) Fingerprint() string {
	if c.tree == nil {
		return fingerprintOfHouse()
	}
	return fingerprint(c)
}

// PricesOf returns the newest day among a shop's prices, empty where they bear none.
func (c *Capability) PricesOf() (newest string) {
	look := func(dated string) {
		if dated != Undated {
			newest = max(newest, dated) // days are written so that they sort
		}
	}
	for _, p := range c.Rates.TubeMetals {
		look(p.Dated)
	}
	for _, p := range c.Rates.FinMetals {
		look(p.Dated)
	}
	for _, q := range c.Buying.Quotes {
		look(q.Dated)
	}
	for _, b := range c.BoughtIn {
		look(b.Dated)
	}
	return newest
}

// fingerprintOfHouse is asked for with every list of rows, and its file has to be read for it.
var fingerprintOfHouse = sync.OnceValue(func() string { return fingerprint(House()) })

func fingerprint(c Capability) string {
	h := fnv.New64a()
	h.Write(c.Save())
	return strconv.FormatUint(h.Sum64(), 16)
}
