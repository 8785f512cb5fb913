package plots

import "encoding/json"

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
	Min   float64  `json:"min"`
	Max   float64  `json:"max"`
	Tick  custom   `json:"axisTick"`
	Label custom   `json:"axisLabel"`
	Texts []string `json:"texts"`
}

// custom puts ticks where we say, not where the chart library would.
type custom struct {
	Values []float64 `json:"customValues"`
}

type seriesPatch struct {
	ID   string `json:"id"`
	Data raw    `json:"data"`
}

func axisPatch(s scale) axisRange {
	return axisRange{s.low, s.high, custom{s.ticks}, custom{s.ticks}, s.texts}
}

func (p patch) json() json.RawMessage {
	text, err := json.Marshal(p)
	if err != nil {
		panic("plots: " + err.Error())
	}
	return text
}
