package bridge

import (
	"fmt"

	"finwright/core/design"
	"finwright/core/document"
	"finwright/core/drawing/finned"
)

type outlinesArgs struct {
	Designs []document.Document `json:"designs"`
}

// outlined are what a drawing shows of designs beside that which it is of. One that cannot be read has none.
type outlined struct {
	Ghosts []finned.Ghost `json:"ghosts"`
}

// outlines takes the sizes of designs once, so that they go with every question for a drawing in a few numbers.
func outlines(a outlinesArgs) (outlined, error) {
	if len(a.Designs) > mostCompared {
		return outlined{}, fmt.Errorf("bridge: %d designs", len(a.Designs))
	}
	out := outlined{[]finned.Ghost{}}
	for _, d := range a.Designs {
		if err := document.Check(d); err != nil {
			return outlined{}, err
		}
		if in, err := design.Read(d); err == nil {
			out.Ghosts = append(out.Ghosts, finned.Ghost{OD: in.Tube.OD.Millimetres(), FinOD: in.Tube.FinOD().Millimetres()})
		}
	}
	return out, nil
}
