// Package report turns results into what is shown of them, as plain data:
// plot series and rows. It knows neither a chart library nor a page.
package report

import "finwright/core/units"

// Axis is a quantity along one side of a plot.
type Axis struct {
	Field string     // the input that a place on the axis stands for
	Kind  units.Kind // what is plotted
	Unit  string     // unit of every number on the axis, as shown
	Label string
	Nudge float64 // [Unit] what one press of an arrow key moves the design
	Said  string  // where the design stands
}

// Range is what of an axis is in sight, in the units of the axis.
type Range struct{ Low, High float64 }

// Name writes the axis as its chart does.
func (a Axis) Name() string {
	if a.Unit == "" {
		return a.Label
	}
	return a.Label + ", " + a.Unit
}

// Point is a place in a plot, in the units of its axes.
type Point struct {
	X float64 // [unit of the x axis]
	Y float64 // [unit of the y axis]
}

// Curve is one line of a panel. X and Y have equal lengths; a Y that is not finite is a gap.
type Curve struct {
	Label string
	Main  bool // the design's own curve
	X     []float64
	Y     []float64

	// Beyond says at each X whether the correlation that Y rests on is out of its range; nil where there is none.
	Beyond []bool
}

// Panel is one quantity against the axis that all panels share.
type Panel struct {
	Figure string     // id of the figure, which decides the colour
	Kind   units.Kind // what is plotted
	Unit   string     // unit of every Y, as shown; empty for a plain number
	Label  string
	Lines  []Curve
	Mark   *Point // the design; nil where it lies outside the plot or has no such quantity

	// From names the axis that begins at a number other than nought; nil where that misleads nobody.
	From func(low string) string

	// Low and High bound the band about the main line, at its X; both empty where there is none.
	Low, High []float64
}

// Curves is a plot of one or more panels over one x axis.
type Curves struct {
	ID     string
	X      Axis
	Panels []Panel
	Wide   bool // it reaches as far as was in sight, and not as far as the design asks for

	Numbers units.Style // of the reader

	Title string // the plot's answer
	Alt   string // what is said to a reader who does not see the plot
	Held  string // what stands still along it; empty where nothing hangs on that
}

// Contour is one line of equal value.
type Contour struct {
	Label   string
	Points  [][2]float64
	LabelAt *Point // nil where the line is too short to carry its label, or the ring leaves it no place
}

// Map is a quantity over two inputs, shown as bands between round levels.
// Its samples span X.From to X.To and Y.From to Y.To, both ends included.
type Map struct {
	ID       string
	X, Y     SampledAxis
	Quantity string // id of the figure that is shown
	Title    string // the map's answer
	Alt      string // what is said to a reader who does not see the map
	Held     string // what stands still over it; empty where nothing hangs on that
	Levels   []float64
	Bands    []byte // one a sample: how many levels it reaches, or Absent; row 0 at the bottom
	Columns  int
	Rows     int
	Contours []Contour
	Ring     Point
	Numbers  units.Style // of the reader
}

// SampledAxis is an axis and the part of it that is sampled.
type SampledAxis struct {
	Axis
	From float64 // [Unit]
	To   float64 // [Unit]
}

// at lists n places from From to To.
func (s SampledAxis) at(n int) []float64 {
	places := make([]float64, n)
	for i := range places {
		places[i] = s.From + (s.To-s.From)*float64(i)/float64(n-1)
	}
	return places
}

// MaxBands is how many steps a reader can tell apart and put in order.
const MaxBands = 7

// Fill draws samples, row by row from the bottom, as bands and contours;
// label prints a level. A sample that is not finite stays blank.
func (f *Map) Fill(samples []float64, label func(level float64) string) {
	lo, hi := extent(samples)
	f.Levels = Levels(lo, hi, MaxBands)
	f.Bands = make([]byte, len(samples))
	for i, v := range samples {
		f.Bands[i] = BandIndex(f.Levels, v)
	}
	f.Contours = nil
	x, y := f.X.at(f.Columns), f.Y.at(f.Rows)
	for _, level := range f.Levels {
		f.Contours = append(f.Contours, labelled(ContourLines(samples, f.Columns, f.Rows, x, y, level), f.X, f.Y, f.Ring, label(level))...)
	}
}
