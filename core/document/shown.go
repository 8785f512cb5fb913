package document

// Basis is what rows were found by. Items that were answered alike share one.
type Basis struct {
	Build   string   `json:"build"`           // of the program, as its page names it
	Shop    string   `json:"shop"`            // the shop's fingerprint
	Named   string   `json:"named,omitempty"` // the shop's name; empty where an earlier version saved it
	Dated   string   `json:"dated,omitempty"` // the newest day among its prices; empty where they bear none
	Figures []string `json:"figures"`         // the IDs of the figures in a row, in order
}

// Shown is the row that an item showed when it was last in hand, in SI units and to six digits: what is printed has fewer,
// and a language and a system of units of its own.
type Shown struct {
	By    int        `json:"by"`    // the place of its basis in the job
	Day   string     `json:"day"`   // the page's, as 2026-11-27
	Cells []*float64 `json:"cells"` // as the figures of its basis; null where one had no value; none where the design was refused
}

const maxBases = 500

func checkShown(s *Shown, by []Basis) error {
	switch {
	case s == nil:
		return nil
	case s.By < 0 || s.By >= len(by) || len(s.Cells) > 0 && len(s.Cells) != len(by[s.By].Figures):
		return damaged("items")
	case by[s.By].Dated != "" && !isDate(by[s.By].Dated):
		return damaged("day")
	case !isDate(s.Day):
		return damaged("day")
	}
	return nil
}
