package material

import (
	"fmt"

	"finwright/core/units"
)

// Point is a property's value in SI units at a temperature.
type Point struct {
	At units.Temperature
	SI float64
}

// Curve is a property over temperature: the points of its source, in order.
type Curve struct {
	Points []Point
	Source
}

// At returns the property [SI] at temperature t, by linear interpolation. Outside the
// points it returns the nearest one and inRange is false.
//
// Valid: see Range. Source: interpolation between the points of the curve's source.
func (c Curve) At(t units.Temperature) (value float64, inRange bool) {
	first, last := c.Points[0], c.Points[len(c.Points)-1]
	switch {
	case t <= first.At:
		return first.SI, t == first.At
	case t >= last.At:
		return last.SI, t == last.At
	}
	i := 1
	for c.Points[i].At < t {
		i++
	}
	a, b := c.Points[i-1], c.Points[i]
	return a.SI + (b.SI-a.SI)*float64((t-a.At)/(b.At-a.At)), true
}

// Range returns the temperatures [C] between which the source gives values.
//
// Valid: a curve of one point or more.
// Source: the ends of the curve.
func (c Curve) Range() (low, high units.Temperature) {
	return c.Points[0].At, c.Points[len(c.Points)-1].At
}

// conductivity takes k [W/(m K)] at 20, 100, 200, 300 and 400 degrees C, as far as given.
func conductivity(k []float64) Curve {
	return curve([]units.Temperature{20, 100, 200, 300, 400}, k, 1)
}

// expansion takes the mean expansion [1e-6/K] from 20 degrees C to 100 and 300, as far as
// given, or to 100, 200 and 300. Below 100 the first mean is used.
func expansion(mean []float64) Curve {
	to := []units.Temperature{20, 100, 300}
	if len(mean) == 3 {
		to = []units.Temperature{20, 100, 200, 300}
	}
	return curve(to, append([]float64{mean[0]}, mean...), 1e-6)
}

func curve(at []units.Temperature, values []float64, unit float64) Curve {
	if len(values) > len(at) {
		panic(fmt.Sprintf("material: %d values for %d temperatures", len(values), len(at)))
	}
	c := Curve{Source: handbook}
	for i, v := range values {
		c.Points = append(c.Points, Point{at[i], v * unit})
	}
	return c
}
