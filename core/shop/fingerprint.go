package shop

import (
	"hash/fnv"
	"strconv"
)

// Fingerprint tells one shop from another: 64 bits of its file, in hexadecimal. It says whether two are the same, and is no
// proof against somebody who means to make it so.
func (c Capability) Fingerprint() string {
	if c.tree == nil {
		return houseFingerprint // lies ready: it is wanted with the first answers, and to find it takes reading and writing the file
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

func fingerprint(c Capability) string {
	h := fnv.New64a()
	h.Write(c.Save())
	return strconv.FormatUint(h.Sum64(), 16)
}
