package shop

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Format and Version mark a capability file.
//
// The file is JSON. Each key stands beside its Go field in the tags of this
// file; its meaning for a reader is the text "shop.field.<key>". A quantity is a
// text with its unit as people type it ("9/16 in", "4 m/s", "1200 lb"), a count is a
// number. Every key must be there unless marked optional, and no other may be, except
// "note", a remark that any object may carry.
//
// A range is what a number may be, "most" how many letters a text or items a list may
// have. They keep typing errors out, every sum and product finite and every plan's work
// bounded; they are ten times and more beyond what any shop has, so that none is turned
// away. Narrower for a reason: a tube's joints, as many as a design may ask for; shares,
// which end at the whole; growth, which no practice brings to 5 %, and the strip ratio,
// which is 1 to 1.02 in practice; a stretch, which is above 1 by its meaning; first-off
// tubes, which are one or two.
const (
	Format  = "finwright-shop"
	Version = 1
)

// Capability is what a shop can do and what its work costs. All its figures are
// the shop's own and editable.
type Capability struct {
	Name     string     `file:"name"`
	Currency string     `file:"currency" most:"20"`
	Lines    []Line     `file:"lines" most:"20"`
	Forming  []Forming  `file:"forming" most:"20"`
	Placing  Placing    `file:"placing"`
	Cutting  Cutting    `file:"cutting"`
	Measured []Measured `file:"measured,optional" most:"1000"`
	Losses   Losses     `file:"losses"`
	Bundle   Opening    `file:"mill_bundle"`
	Crate    Crate      `file:"crate"`
	Crew     Crew       `file:"crew"`
	Rates    Rates      `file:"rates"`

	tree map[string]any // the file as typed; nil: the one that ships
}

// Range is a low and a high limit, both included.
type Range[T ~float64] struct {
	Low  T `file:"low,inherit,zero"`
	High T `file:"high,inherit"`
}

// ByOD is a range that holds for tubes of one outside diameter.
type ByOD[T ~float64] struct {
	OD   units.Length `file:"od,diameter" range:"1 mm..2 m"`
	Low  T            `file:"low,inherit,zero"`
	High T            `file:"high,inherit"`
}

// Line is one finning machine with its coil, racks and times.
type Line struct {
	Name       string              `file:"name"`
	TubeOD     Range[units.Length] `file:"tube_od,diameter" range:"1 mm..2 m"`
	Sizes      []units.Length      `file:"tube_sizes,diameter" range:"1 mm..2 m" most:"200"` // for which tooling is in stock
	TubeLength Range[units.Length] `file:"tube_length,distance" range:"10 mm..200 m"`
	StripWidth Range[units.Length] `file:"strip_width,width" range:"0.1 mm..2 m"`
	StripSpeed units.Speed         `file:"strip_speed,running" range:"0.001 m/s..200 m/s"` // highest
	Drive      units.Power         `file:"drive,drive" range:"1 W..100 MW"`
	Idle       units.Power         `file:"idle,drive" range:"0 W..100 MW"`            // taken before any strip is rolled
	RunUp      units.Duration      `file:"run_up,time" range:"0.001 s..10 h"`         // from rest to the type's spindle speed
	RunDown    units.Duration      `file:"run_down,time" range:"0.001 s..10 h"`       // and back
	Jog        units.Speed         `file:"jog,feed" range:"0.001 m/min..10000 m/min"` // of the tube where it stays bare
	Coils      []Coil              `file:"coils" most:"20"`                           // in order of preference
	Racks      Racks               `file:"racks"`
	Times      Times               `file:"times"`
	ChangeOver ChangeOver          `file:"change_over"`
	FirstOff   int                 `file:"first_off" range:"0..100"` // tubes spent on each set-up
	Types      []Practice          `file:"types" most:"20"`
}

// Practice is what a line does with one fin type.
type Practice struct {
	Type       tube.FinType            `file:"type"`
	Height     Range[units.Length]     `file:"fin_height,height" range:"0.1 mm..1 m"`
	HeightByOD []ByOD[units.Length]    `file:"fin_height_by_od,height,optional" range:"0.1 mm..1 m" most:"200"`
	Count      Range[units.PerLength]  `file:"fin_count,fin_count" range:"1 /m..20000 /m"`
	CountByOD  []ByOD[units.PerLength] `file:"fin_count_by_od,fin_count,optional" range:"1 /m..20000 /m" most:"200"`
	Strip      Range[units.Length]     `file:"strip,thickness" range:"0.01 mm..100 mm"`
	FinMetals  []string                `file:"fin_metals" most:"100"`
	TubeMetals []string                `file:"tube_metals" most:"100"`
	LeastWall  units.Length            `file:"least_wall,wall" range:"0.01 mm..200 mm"`   // that bears the rolls
	Knurl      units.Length            `file:"knurl,height,optional" range:"0 mm..20 mm"` // depth
	Spindle    units.Rotation          `file:"spindle,spin" range:"0.1 rpm..100000 rpm"`  // highest in steady work
	Oiler      bool                    `file:"oiler"`                                     // strip must be lubricated
	Growth     float64                 `file:"growth,percent" range:"0 %..5 %"`           // a guess, until tubes are measured
	Scatter    float64                 `file:"growth_scatter,percent" range:"0 %..5 %"`   // of that guess
	StripRatio float64                 `file:"strip_ratio,factor" range:"0.9..1.2"`       // strip used over n pi d
	Joints     Joints                  `file:"joints"`
	Tools      []Tool                  `file:"tools" most:"300"`
}

// Tool is a set of rolls: each height, thickness and range of pitch has its own.
type Tool struct {
	Height units.Length           `file:"height,height" range:"0.1 mm..1 m"`
	Strip  units.Length           `file:"strip,thickness" range:"0.01 mm..100 mm"`
	Count  Range[units.PerLength] `file:"count,fin_count" range:"1 /m..20000 /m"`
}

// Joints says how many strip joints one tube may carry.
type Joints struct {
	Short int          `file:"short" range:"0..50"` // on a tube up to Until
	Long  int          `file:"long" range:"0..50"`  // on a longer tube
	Until units.Length `file:"until,distance" range:"1 mm..1000 m"`
	Apart units.Length `file:"apart,distance" range:"0 m..1000 m"` // along the tube
}

// CoilForm is how strip is wound into a coil.
type CoilForm string

// Coil forms.
const (
	Pancake  CoilForm = "pancake"  // turn upon turn, as wide as the strip
	Traverse CoilForm = "traverse" // level-wound to and fro on a wide core
)

// Coil is the largest coil that a line takes.
type Coil struct {
	Form   CoilForm       `file:"form"`
	OD     units.Length   `file:"od,diameter" range:"10 mm..20 m"`
	ID     units.Length   `file:"id,diameter" range:"1 mm..20 m"`
	Width  units.Length   `file:"width,diameter,optional" range:"1 mm..20 m"` // of a traverse-wound coil
	Mass   units.Mass     `file:"mass,weight" range:"0.1 kg..1000 t"`
	Fill   float64        `file:"fill,factor" range:"0.01..1"` // share of the coil's volume that is metal
	Change units.Duration `file:"change,time" range:"0.001 s..1000 h"`
}

// Racks carry tubes to and from the line.
type Racks struct {
	Tubes  int            `file:"tubes" range:"1..100000"`
	Change units.Duration `file:"change,time" range:"0.001 s..1000 h"`
}

// Times are what each tube takes beside the winding.
type Times struct {
	Load   units.Duration `file:"load,time" range:"0.001 s..1000 h"`   // and unload
	Secure units.Duration `file:"secure,time" range:"0.001 s..1000 h"` // one finned end
	Check  units.Duration `file:"check,time" range:"0.001 s..1000 h"`  // first-off, each set-up
}

// ChangeOver is the time to set the line from one tube to another. A deeper
// change includes the shallower ones.
type ChangeOver struct {
	Type    units.Duration `file:"type,time" range:"0.001 s..1000 h"`
	OD      units.Duration `file:"od,time" range:"0.001 s..1000 h"`
	Tooling units.Duration `file:"tooling,time" range:"0.001 s..1000 h"` // height or strip
	Pitch   units.Duration `file:"pitch,time" range:"0.001 s..1000 h"`
}

// Forming is how far a family of fin metals can be worked.
type Forming struct {
	Metal      material.Kind `file:"metal"`
	Stretch    float64       `file:"stretch,factor" range:"1.001..20"`       // greatest usual Df/d
	Tip        units.Length  `file:"tip,thickness" range:"0.001 mm..100 mm"` // thinnest
	SpeedShare float64       `file:"speed_share,percent" range:"0.1 %..100 %"`
	Work       units.Stress  `file:"work,work" range:"1 MPa..100000 MPa"` // to roll a volume of strip into a fin
}

// Placing holds the tolerances along the tube.
type Placing struct {
	Tolerance   units.Length `file:"tolerance,distance" range:"0.001 mm..100 m"` // of a zone's edge
	LeastFinned units.Length `file:"least_finned,distance" range:"0.001 mm..100 m"`
	LeastBare   units.Length `file:"least_bare,distance" range:"0.001 mm..100 m"` // of a span
	ToolHeight  units.Length `file:"tool_height,height" range:"0.001 µm..1 m"`    // by which a tool's height may differ
	ToolStrip   units.Length `file:"tool_strip,thickness" range:"0.001 µm..100 mm"`
	Mismatch    float64      `file:"mismatch,percent" range:"0.001 %..1000 %"` // of expansions, welded fins
	Strain      float64      `file:"strain,percent" range:"0.0001 %..10 %"`    // elastic strain left by winding
}

// Cutting is the saw and the tubes as they come from the mill.
type Cutting struct {
	Stock []units.Length `file:"stock,distance" range:"10 mm..200 m" most:"100"` // lengths in which tubes come
	Kerf  units.Length   `file:"kerf,height" range:"0.001 mm..1 m"`
	TrimA units.Length   `file:"trim_a,distance" range:"0 mm..20 m"` // cut off after finning
	TrimB units.Length   `file:"trim_b,distance" range:"0 mm..20 m"`
	Step  units.Length   `file:"step,height" range:"0.001 mm..1 m"` // to which a cut is set
	Time  units.Duration `file:"time,time" range:"0.001 s..1000 h"` // one cut
}

// Measured is one tube that the shop finned and measured, from which growth is learned.
type Measured struct {
	Type     tube.FinType `file:"type"`
	Cut      units.Length `file:"cut,distance" range:"1 mm..200 m"`
	Finned   units.Length `file:"finned,distance" range:"1 mm..200 m"`
	Finished units.Length `file:"finished,distance" range:"1 mm..200 m"`
}

// Losses are strip and tubes that do not reach the customer.
type Losses struct {
	CoilStart units.Length `file:"coil_start,run" range:"0 m..10000 m"`
	CoilEnd   units.Length `file:"coil_end,run" range:"0 m..10000 m"`
	Joint     units.Length `file:"joint,run" range:"0 m..10000 m"`
	Rejects   float64      `file:"rejects,percent" range:"0 %..50 %"`
}

// Opening is what a bundle of plain tubes must pass through.
type Opening struct {
	Width  units.Length `file:"width,diameter" range:"1 mm..20 m"`
	Height units.Length `file:"height,diameter" range:"1 mm..20 m"`
}

// Crate is a crate or basket, its lifting and the truck that takes it.
type Crate struct {
	Width     units.Length   `file:"width,distance" range:"1 mm..20 m"` // inside
	Height    units.Length   `file:"height,distance" range:"1 mm..20 m"`
	Length    units.Length   `file:"length,distance" range:"10 mm..200 m"`
	Clearance units.Length   `file:"clearance,distance" range:"0 mm..200 m"` // over both ends together
	Separator units.Length   `file:"separator,height" range:"0 mm..20 m"`    // between layers; 0 lets layers nest
	Mass      units.Mass     `file:"mass,weight" range:"0.1 kg..10000 t"`
	Crane     units.Mass     `file:"crane,weight" range:"0.1 kg..10000 t"`
	Tare      float64        `file:"tare,percent" range:"0 %..1000 %"` // of what is packed
	Slings    Range[float64] `file:"slings,percent" range:"0 %..50 %"` // of the length, from each end
	Payload   units.Mass     `file:"payload,weight" range:"0.1 kg..10000 t"`
	Time      units.Duration `file:"time,time" range:"0.001 s..1000 h"`
	Cost      units.Money    `file:"cost,cost" range:"0..1000000000"`
}

// Crew is who works, how long and how steadily.
type Crew struct {
	People     int            `file:"people" range:"1..1000"`
	Shift      units.Duration `file:"shift,hours" range:"0.1 h..168 h"`
	Efficiency float64        `file:"efficiency,percent" range:"1 %..100 %"` // productive share of a shift
}

// Rates are what things cost.
type Rates struct {
	Line       units.MoneyPerTime `file:"line,cost_per_time" range:"0.000001 /h..1000000000 /h"`
	Person     units.MoneyPerTime `file:"person,cost_per_time" range:"0.000001 /h..1000000000 /h"`
	TubeMetals []Price            `file:"tube_metals" most:"100"`
	FinMetals  []Price            `file:"fin_metals" most:"100"`
	ScrapShare float64            `file:"scrap_share,percent" range:"0 %..100 %"` // of the strip's price that scrap fetches
	Margin     float64            `file:"margin,percent" range:"0 %..1000 %"`     // on cost
}

// Price is what a metal costs.
type Price struct {
	Metal string             `file:"metal"`
	Price units.MoneyPerMass `file:"price,cost_per_weight" range:"0.000001 /kg..1000000000 /kg"`
}

// Practice returns what the line does with a fin type.
func (l *Line) Practice(t tube.FinType) (*Practice, bool) {
	for i := range l.Types {
		if l.Types[i].Type == t {
			return &l.Types[i], true
		}
	}
	return nil, false
}

// FormingOf returns how far a metal can be worked.
func (c *Capability) FormingOf(k material.Kind) (*Forming, bool) {
	for i := range c.Forming {
		if c.Forming[i].Metal == k {
			return &c.Forming[i], true
		}
	}
	return nil, false
}

// HeightOn returns the fin heights that are wound on a tube of a diameter.
func (m *Practice) HeightOn(od units.Length) Range[units.Length] {
	return within(od, m.Height, m.HeightByOD)
}

// CountOn returns the fin counts that are wound on a tube of a diameter.
func (m *Practice) CountOn(od units.Length) Range[units.PerLength] {
	return within(od, m.Count, m.CountByOD)
}

// within returns the range in force for a tube: the table's row for its
// diameter, or of two rows about it the narrower; outside the table and without
// one, the general range.
func within[T ~float64](od units.Length, all Range[T], table []ByOD[T]) Range[T] {
	below, above := -1, -1
	for i, row := range table {
		if row.OD <= od*(1+Slack) && (below < 0 || row.OD > table[below].OD) {
			below = i
		}
		if row.OD >= od*(1-Slack) && (above < 0 || row.OD < table[above].OD) {
			above = i
		}
	}
	if below < 0 || above < 0 {
		return all
	}
	a, b := table[below], table[above]
	return Range[T]{max(a.Low, b.Low), min(a.High, b.High)}
}
