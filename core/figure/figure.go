// Package figure carries a result together with what is needed to trust it:
// its formula, the arguments that went in, its reference area, its source and
// whether it is in range. "Show the working" renders from this record alone.
package figure

import (
	"finwright/core/message"
	"finwright/core/units"
)

// State is what a figure says of the design.
type State string

// States.
const (
	Plain   State = "none" // says nothing either way
	Good    State = "good"
	Kept    State = "kept"    // within a limit that is only remembered
	Outside State = "outside" // a correlation is used outside its range: the figure is less sure, not bad
	Watch   State = "watch"
	No      State = "no"
)

// Worsens reports whether a state is graver than the worst of a list so far, which begins as Good.
func (s State) Worsens(worst State) bool { return s == No || s == Watch && worst == Good }

// Basis is the area or length that a figure is referred to.
type Basis string

// Bases; each has a text "basis.<id>".
const (
	NoBasis        Basis = ""
	BareArea       Basis = "bare"
	TotalArea      Basis = "total"
	FacesOnly      Basis = "faces"
	FinnedMetre    Basis = "finned_metre"
	TubeMetre      Basis = "tube_metre"
	PerTube        Basis = "tube"
	WholeOrder     Basis = "order"
	StripAtTheRoot Basis = "root"
	InsideArea     Basis = "inside"
	FaceArea       Basis = "face"
	WholeBank      Basis = "bank"
	FinMetalMass   Basis = "fin_metal"
)

// Arg is a number that goes into a formula under its symbol.
type Arg struct {
	Symbol string
	Kind   units.Kind
	SI     float64
}

// Figure is one result.
type Figure struct {
	ID      string // also the key of its label, "figure.<id>"
	Label   string // "figure.<label>", where the label depends on the design
	Kind    units.Kind
	SI      float64
	Side    units.Side // to which it is printed: of a bound that a reader may type in, that on which it does
	Basis   Basis
	Formula string   // key into Formulas
	Stated  *Formula // beside the method that computed it; nil: Formulas has it
	Args    []Arg
	State   State
	Tests   message.Message   // what the state says that the figure is held against; none where it is held against nothing
	Why     []message.Message // reasons for a state other than good
	Beside  []message.Message // what stands beside the value wherever it decides: spread, range, confirmation
	Absent  message.Message   // why there is no value; SI then means nothing
}

// Law returns the formula that computed the figure.
func (f *Figure) Law() Formula {
	if f.Stated != nil {
		return *f.Stated
	}
	law, ok := Formulas[f.Formula]
	if !ok {
		panic("figure: no formula " + f.Formula)
	}
	return law
}
