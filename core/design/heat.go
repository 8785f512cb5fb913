package design

import (
	"math"

	"finwright/core/airside"
	"finwright/core/bond"
	"finwright/core/exchanger"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/tube"
	"finwright/core/units"
)

// Method is one correlation's answer beside its range, for the list of all that were asked.
type Method struct {
	ID      string
	Kind    units.Kind
	SI      float64
	InRange bool
	Used    bool
	Why     []message.Message // limits passed
}

// Heat is everything said of the bank at work. Where it cannot be computed, Absent says why, and Field which entry hinders.
type Heat struct {
	Thermal  Thermal
	Absent   message.Message
	Field    string
	Methods  []Method // films, then pressure drops
	Findings []exchanger.Finding
	Wet      bool // the coldest fin is below the dew point of the air
	Case     Case
}

// Case holds the extreme metal temperatures [C] by case.
type Case struct{ Root map[exchanger.Case]float64 }

// Rate evaluates the bank of a checked Input.
func Rate(in Input) Heat {
	if found := pitchFindings(&in); in.Air.FilmGiven && len(found) > 0 {
		return Heat{Absent: found[0].Why, Field: in.closestPitch()}
	}
	t, errs := settle(&in, in.start(), nil, fine)
	if errs != nil {
		return Heat{Absent: errs[0].Message, Field: errs[0].Field}
	}
	h := Heat{Thermal: t, Case: Case{t.roots(&in)}, Wet: in.wets(t.Duty.Coldest.Celsius)}
	h.Methods = append(methods(units.Film, t.Films, t.Film, in.Air.FilmGiven), methods(units.Drop, t.Drops, t.Drop, false)...)
	limits := exchanger.ProcessLimits(in.Tube.Fin.Type)
	if in.Limits.House != nil {
		limits.House.SI = *in.Limits.House
		if !limits.House.Known() {
			limits.House.Source = houseLimit
		}
	}
	// In hot gas a root may be hotter than the stream, and a tip hotter than its root.
	tips := map[exchanger.Case]float64{exchanger.Normal: t.tip()}
	h.Findings = append(exchanger.CheckProcess(limits, hotter(in.Limits.Cases, h.Case.Root)), exchanger.CheckFinMetal(in.FinMetal, hotter(h.Case.Root, tips))...)
	return h
}

func methods[A airside.Answer](k units.Kind, verdicts []airside.Verdict[A], used int, given bool) []Method {
	out := make([]Method, len(verdicts))
	for i, v := range verdicts {
		out[i] = Method{ID: v.ID, Kind: k, SI: v.Answer.Measure(), InRange: v.InRange, Used: i == used && !given}
		for _, l := range v.Limits {
			if !l.In() {
				out[i].Why = append(out[i].Why, l.Message())
			}
		}
	}
	return out
}

// roots returns the hottest fin root [C] of each stated case: in normal running that
// of the rows, in another the same share of the difference of the inlets.
func (t *Thermal) roots(in *Input) map[exchanger.Case]float64 {
	air := float64(in.Air.In)
	out := map[exchanger.Case]float64{}
	for c, at := range in.Limits.Cases {
		switch {
		case c == exchanger.Normal:
			out[c] = t.Duty.HottestRoot.Celsius
		case in.unfed(at):
			out[c] = max(air, at)
		default:
			out[c] = air + t.rootShare(in)*(at-air)
		}
	}
	return out
}

// rootShare returns how much of the difference of the inlets the hottest root has [-].
func (t *Thermal) rootShare(in *Input) float64 {
	return (t.Duty.HottestRoot.Celsius - float64(in.Air.In)) / float64(in.Process.In-in.Air.In)
}

// unfed reports whether a case with the process at a temperature [C] is held to be one
// in which no stream cools the tube: the gas outside is the hotter, then or in normal running.
func (in *Input) unfed(at float64) bool {
	return in.Process.In <= in.Air.In || at < float64(in.Air.In)
}

// tip returns the tip [C] of the fin with the hottest root.
func (t *Thermal) tip() float64 {
	at := t.Duty.HottestRoot
	return at.Air + (at.Celsius-at.Air)*t.TipRatio
}

// hotter returns the higher temperature of two for each case of a.
func hotter(a, b map[exchanger.Case]float64) map[exchanger.Case]float64 {
	out := map[exchanger.Case]float64{}
	for c, at := range a {
		out[c] = max(at, b[c])
	}
	return out
}

// winding returns the joint of a tension-wound fin. Its strain and the temperature up to which metals expand are those by
// which the shop's rule judges it.
func winding(in *Input, h *Heat) (bond.Winding, bool) {
	hottest := h.hottest()
	if !bond.HeldByTension(in.Tube.Fin.Type) || hottest == nil {
		return bond.Winding{}, false
	}
	strain := bond.DefaultStrain
	if in.Shop != nil {
		strain = in.Shop.Placing.Strain
	}
	f, _ := in.FinMetal.ExpansionTo(*hottest)
	t, _ := in.TubeMetal.ExpansionTo(*hottest)
	return bond.Winding{
		OD: float64(in.Tube.OD), Strain: strain, FinExpansion: float64(f), TubeExpansion: float64(t), Metallic: in.Process.Bond,
	}, true
}

// yield returns heat per kilogram of fin metal [W/kg] and per face area [W/m2].
func (t *Thermal) yield(tb *tube.Tube) (perKilogram, perFace float64) {
	return math.Abs(t.Duty.Heat) / t.finMetal(tb), math.Abs(t.Duty.Heat) / t.Bank.FaceArea()
}

// finMetal returns the mass of all fins [kg].
func (t *Thermal) finMetal(tb *tube.Tube) float64 {
	return float64(tb.FinMass()) * t.Bank.FinnedLength * float64(t.Bank.Tubes())
}

// heatNotices remarks on wishes not met, on temperatures and on correlations outside their range.
func heatNotices(in *Input, h Heat) []Notice {
	if !h.Absent.None() {
		return []Notice{{figure.Watch, h.Field, "duty", h.Absent}}
	}
	out := wishNotices(in, &h.Thermal)
	for _, f := range h.Findings {
		if f.State == figure.No || f.State == figure.Watch {
			out = append(out, Notice{f.State, caseField[f.Case], h.rootOf(f.Case), f.Why})
		}
	}
	if h.Wet {
		out = append(out, Notice{figure.Watch, "inside_in", "coldest_metal", message.New("notice.wet")})
	}
	for _, m := range h.Methods {
		if m.Used && !m.InRange {
			fig := "film"
			if m.Kind == units.Drop {
				fig = "air_drop"
			}
			out = append(out, Notice{figure.Watch, "face_velocity", fig, message.New("notice.out_of_range", "method", message.Key("airside."+m.ID), "why", m.Why[0])})
		}
	}
	return out
}

// rootOf is the figure that a remark on a case belongs to: the hottest root of that case where one is stated.
func (h Heat) rootOf(c exchanger.Case) string {
	if _, stated := h.Case.Root[c]; stated && c != exchanger.Normal {
		return "root_" + string(c)
	}
	return "hottest_root"
}

// caseField is where each case is entered.
var caseField = map[exchanger.Case]string{exchanger.Normal: "inside_in", exchanger.StartUp: "start_up", exchanger.Upset: "upset", "": "fin_metal"}
