package shop

import (
	"hash/fnv"
	"strconv"
)

// Fingerprint tells one shop from another: 64 bits of its file, in hexadecimal. It says whether two are the same, and is no
// proof against somebody who means to make it so.
func (c Capability) Fingerprint() string {
	h := fnv.New64a()
	h.Write(c.Save())
	return strconv.FormatUint(h.Sum64(), 16)
}
