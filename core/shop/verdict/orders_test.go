package verdict

import (
	"finwright/core/internal/sample"
	"finwright/core/shop/making"
	"finwright/core/tube"
)

const fpi = sample.PerInch

// ordered is an order for 120 tubes.
func ordered(t tube.Tube) making.Order {
	ofTube, ofFin := sample.Metals()
	return making.Order{Tube: t, TubeMetal: ofTube, FinMetal: ofFin, Quantity: 120}
}

func footed() making.Order    { return ordered(sample.Footed()) }
func embedded() making.Order  { return ordered(sample.Embedded()) }
func supported() making.Order { return ordered(sample.Supported()) }
