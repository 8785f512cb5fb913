package plots

import (
	"encoding/json"

	"finwright/core/report"
)

// patch is the partial option of a change. It says only what a change of the design can change.
type patch struct {
	Title  heading       `json:"title"`
	X      []axisRange   `json:"xAxis,omitempty"`
	Y      []axisRange   `json:"yAxis,omitempty"`
	Series []seriesPatch `json:"series"`
}

type heading struct {
	Text string `json:"text"`
}

type axisRange struct {
	Min      float64  `json:"min"`
	Max      float64  `json:"max"`
	Interval float64  `json:"interval"`
	Texts    []string `json:"texts"`
}

type seriesPatch struct {
	ID   string `json:"id"`
	Data raw    `json:"data"`
}

func axisPatch(s report.Scale) axisRange { return axisRange{s.Low, s.High, s.Step, s.Texts()} }

func (p patch) json() json.RawMessage {
	text, err := json.Marshal(p)
	if err != nil {
		panic("plots: " + err.Error())
	}
	return text
}
