package shop

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Step is a piece of work on the tubes of an order beside finning, sawing and packing: what is done to them before the line and
// after it, in the order of the list.
type Step struct {
	Name      string
	Kind      StepKind
	Used      bool // off, it stays in the file and is not planned
	When      StepTime
	FinTypes  []string // for which it is done; none named: all
	Families  []string // of tube metal, likewise
	Of        StepTubes
	Who       Doer
	PerTube   units.Duration // of one person; a supplier's time is Lead
	PerOrder  units.Duration
	CostTube  units.Money // of what it uses up, or the supplier's price
	CostOrder units.Money
	Lead      int     // days that the tubes are away
	MarkUp    float64 // on a supplier's price, in place of the shop's own
}

// StepKind says what a step is, for what must be heeded in it. Its name is the text "shop.choice.<kind>".
type StepKind string

// Kinds of step.
const (
	Identify     StepKind = "identify" // the metal, before bundles are mixed
	Clean        StepKind = "clean"    // and degrease
	OilOut       StepKind = "oil_out"  // of the bond
	GaugeBore    StepKind = "gauge"    // gauge or ball
	EddyCurrent  StepKind = "eddy_current"
	PressureTest StepKind = "pressure_test"
	Preserve     StepKind = "preserve"
	CapEnds      StepKind = "cap_ends"
	MarkTubes    StepKind = "mark"
	Certificate  StepKind = "certificate"
	Inspect      StepKind = "inspect"
	Deliver      StepKind = "deliver"
	OtherStep    StepKind = "other_step"
)

// StepKinds lists them in the order of the work.
var StepKinds = []StepKind{
	Identify, Clean, OilOut, GaugeBore, EddyCurrent, PressureTest, Preserve, CapEnds, MarkTubes, Certificate, Inspect, Deliver, OtherStep,
}

// StepSet is a set of kinds of step.
type StepSet uint32

// Put puts a kind into the set, or takes it out.
func (s *StepSet) Put(k StepKind, in bool) {
	*s &^= stepBit(k)
	if in {
		*s |= stepBit(k)
	}
}

// Has reports whether the set has a kind.
func (s StepSet) Has(k StepKind) bool { return s&stepBit(k) != 0 }

func stepBit(k StepKind) StepSet {
	for i, kind := range StepKinds {
		if kind == k {
			return 1 << i
		}
	}
	panic("shop: no kind of step " + string(k))
}

// StepTime says whether a step comes before finning, and so to spoilt tubes too, or after it.
type StepTime string

// Times of a step.
const (
	BeforeFinning StepTime = "before"
	AfterFinning  StepTime = "after"
)

// StepTimes lists them.
var StepTimes = []StepTime{BeforeFinning, AfterFinning}

// StepTubes says to whose tubes a step is done.
type StepTubes string

// Whose tubes.
const (
	AnyTubes    StepTubes = "any_tubes"
	BoughtTubes StepTubes = "bought_tubes"
	FreeTubes   StepTubes = "free_tubes"
)

// WhoseTubes lists them.
var WhoseTubes = []StepTubes{AnyTubes, BoughtTubes, FreeTubes}

// Doer is who does a step.
type Doer string

// Doers.
const (
	ByCrew   Doer = "crew_does"
	BySubLet Doer = "sub_let" // a supplier, at a price
)

// DoersOfSteps lists them.
var DoersOfSteps = []Doer{ByCrew, BySubLet}

// stepFamilies are the families of tube metal that a step may be for.
var stepFamilies = []material.Family{
	material.CarbonSteel, material.LowAlloy, material.Stainless, material.CopperNickel, material.Brass, material.Copper, material.Titanium, material.NickelAlloy,
}

// StepFamilies lists the families of tube metal that a step may be for.
func StepFamilies() []material.Family { return stepFamilies }

// Check is what is looked at in the first tubes off a set-up, with what it may be out by.
type Check struct {
	Kind     CheckKind
	FinTypes []string     // for which it is done; none named: all
	Fins     float64      // of a count, to either side
	Off      units.Length // of a size
}

// CheckKind is one of the checks. Its name is the text "check.<kind>".
type CheckKind string

// Kinds of check.
const (
	CountShort  CheckKind = "count_short" // fins over a tenth of a metre
	CountLong   CheckKind = "count_long"  // over a metre
	FinODCheck  CheckKind = "fin_od"      // at three stations
	PlainEnds   CheckKind = "plain_ends"
	TurnByHand  CheckKind = "turn_by_hand" // a foot that turns is loose
	PullTest    CheckKind = "pull_test"    // of a fin in its groove
	WeldSection CheckKind = "weld_section" // cut through the first turns, or a fin pulled
	EndSecurity CheckKind = "end_security"
	GrowthCheck CheckKind = "growth_check"
)

// CheckKinds lists them.
var CheckKinds = []CheckKind{CountShort, CountLong, FinODCheck, PlainEnds, TurnByHand, PullTest, WeldSection, EndSecurity, GrowthCheck}

// holdsType reports whether a list of fin types takes one; an empty list takes all.
func holdsType(list []string, t tube.FinType) bool { return holds(list, string(t)) }

func holds(list []string, id string) bool {
	for _, one := range list {
		if one == id {
			return true
		}
	}
	return len(list) == 0
}

// For reports whether a step is done to tubes of a fin type and a family of metal, free issue or bought.
func (s *Step) For(t tube.FinType, family material.Family, free bool) bool {
	whose := s.Of == AnyTubes || free == (s.Of == FreeTubes)
	return s.Used && whose && holdsType(s.FinTypes, t) && holds(s.Families, string(family))
}

// For reports whether a check is made of a fin type.
func (k *Check) For(t tube.FinType) bool { return holdsType(k.FinTypes, t) }
