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
const (
	Format  = "finwright-shop"
	Version = 1
)

// Capability is what a shop can do and what its work costs. All its figures are
// the shop's own and editable.
type Capability struct {
	Name     string     `file:"name"`
	Currency string     `file:"currency"`
	Lines    []Line     `file:"lines"`
	Forming  []Forming  `file:"forming"`
	Placing  Placing    `file:"placing"`
	Cutting  Cutting    `file:"cutting"`
	Measured []Measured `file:"measured,optional"`
	Losses   Losses     `file:"losses"`
	Bundle   Bundle     `file:"mill_bundle"`
	Crate    Crate      `file:"crate"`
	Crew     Crew       `file:"crew"`
	Rates    Rates      `file:"rates"`

	tree map[string]any // the file as typed
}

// Range is a low and a high limit, both included.
type Range[T ~float64] struct {
	Low  T `file:"low,inherit,zero"`
	High T `file:"high,inherit"`
}

// ByOD is a range that holds for tubes of one outside diameter.
type ByOD[T ~float64] struct {
	OD   units.Length `file:"od,diameter"`
	Low  T            `file:"low,inherit,zero"`
	High T            `file:"high,inherit"`
}

// Line is one finning machine with its coil, racks and times.
type Line struct {
	Name       string              `file:"name"`
	TubeOD     Range[units.Length] `file:"tube_od,diameter"`
	Sizes      []units.Length      `file:"tube_sizes,diameter"` // for which tooling is in stock
	TubeLength Range[units.Length] `file:"tube_length,distance"`
	StripWidth Range[units.Length] `file:"strip_width,width"`
	StripSpeed units.Speed         `file:"strip_speed,running"` // highest
	Drive      units.Power         `file:"drive,drive"`
	Idle       units.Power         `file:"idle,drive,zero"` // taken before any strip is rolled
	RunUp      units.Duration      `file:"run_up,time"`     // from rest to the type's spindle speed
	RunDown    units.Duration      `file:"run_down,time"`   // and back
	Jog        units.Speed         `file:"jog,feed"`        // of the tube where it stays bare
	Coils      []Coil              `file:"coils"`           // in order of preference
	Racks      Racks               `file:"racks"`
	Times      Times               `file:"times"`
	ChangeOver ChangeOver          `file:"change_over"`
	FirstOff   int                 `file:"first_off"` // tubes spent on each set-up
	Types      []Making            `file:"types"`
}

// Making is what a line does with one fin type.
type Making struct {
	Type       tube.FinType            `file:"type"`
	Height     Range[units.Length]     `file:"fin_height,height"`
	HeightByOD []ByOD[units.Length]    `file:"fin_height_by_od,height,optional"`
	Count      Range[units.PerLength]  `file:"fin_count,fin_count"`
	CountByOD  []ByOD[units.PerLength] `file:"fin_count_by_od,fin_count,optional"`
	Strip      Range[units.Length]     `file:"strip,thickness"`
	FinMetals  []string                `file:"fin_metals"`
	TubeMetals []string                `file:"tube_metals"`
	LeastWall  units.Length            `file:"least_wall,wall"`             // that bears the rolls
	Knurl      units.Length            `file:"knurl,height,optional,zero"`  // depth
	Spindle    units.Rotation          `file:"spindle,spin"`                // highest in steady work
	Oiler      bool                    `file:"oiler"`                       // strip must be lubricated
	Growth     float64                 `file:"growth,percent,zero"`         // a guess, until tubes are measured
	Scatter    float64                 `file:"growth_scatter,percent,zero"` // of that guess
	StripRatio float64                 `file:"strip_ratio,factor"`          // strip used over n pi d
	Joints     Joints                  `file:"joints"`
	Tools      []Tool                  `file:"tools"`
}

// Tool is a set of rolls: each height, thickness and range of pitch has its own.
type Tool struct {
	Height units.Length           `file:"height,height"`
	Strip  units.Length           `file:"strip,thickness"`
	Count  Range[units.PerLength] `file:"count,fin_count"`
}

// Joints says how many strip joints one tube may carry.
type Joints struct {
	Short int          `file:"short"` // on a tube up to Until
	Long  int          `file:"long"`  // on a longer tube
	Until units.Length `file:"until,distance"`
	Apart units.Length `file:"apart,distance,zero"` // along the tube
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
	OD     units.Length   `file:"od,diameter"`
	ID     units.Length   `file:"id,diameter"`
	Width  units.Length   `file:"width,diameter,optional"` // of a traverse-wound coil
	Mass   units.Mass     `file:"mass,weight"`
	Fill   float64        `file:"fill,factor"` // share of the coil's volume that is metal
	Change units.Duration `file:"change,time"`
}

// Racks carry tubes to and from the line.
type Racks struct {
	Tubes  int            `file:"tubes"`
	Change units.Duration `file:"change,time"`
}

// Times are what each tube takes beside the winding.
type Times struct {
	Load   units.Duration `file:"load,time"`   // and unload
	Secure units.Duration `file:"secure,time"` // one finned end
	Check  units.Duration `file:"check,time"`  // first-off, each set-up
}

// ChangeOver is the time to set the line from one tube to another. A deeper
// change includes the shallower ones.
type ChangeOver struct {
	Type    units.Duration `file:"type,time"`
	OD      units.Duration `file:"od,time"`
	Tooling units.Duration `file:"tooling,time"` // height or strip
	Pitch   units.Duration `file:"pitch,time"`
}

// Forming is how far a family of fin metals can be worked.
type Forming struct {
	Metal      material.Kind `file:"metal"`
	Stretch    float64       `file:"stretch,factor"` // greatest usual Df/d
	Tip        units.Length  `file:"tip,thickness"`  // thinnest
	SpeedShare float64       `file:"speed_share,percent"`
	Work       units.Stress  `file:"work,work"` // to roll a volume of strip into a fin
}

// Placing holds the tolerances along the tube.
type Placing struct {
	Tolerance   units.Length `file:"tolerance,distance"` // of a zone's edge
	LeastFinned units.Length `file:"least_finned,distance"`
	LeastBare   units.Length `file:"least_bare,distance"` // of a span
	ToolHeight  units.Length `file:"tool_height,height"`  // by which a tool's height may differ
	ToolStrip   units.Length `file:"tool_strip,thickness"`
	Mismatch    float64      `file:"mismatch,percent"` // of expansions, welded fins
	Strain      float64      `file:"strain,percent"`   // elastic strain left by winding
}

// Cutting is the saw and the tubes as they come from the mill.
type Cutting struct {
	Stock []units.Length `file:"stock,distance"` // lengths in which tubes come
	Kerf  units.Length   `file:"kerf,height"`
	TrimA units.Length   `file:"trim_a,distance,zero"` // cut off after finning
	TrimB units.Length   `file:"trim_b,distance,zero"`
	Step  units.Length   `file:"step,height"` // to which a cut is set
	Time  units.Duration `file:"time,time"`   // one cut
}

// Measured is one tube that the shop finned and measured, from which growth is learned.
type Measured struct {
	Type     tube.FinType `file:"type"`
	Cut      units.Length `file:"cut,distance"`
	Finned   units.Length `file:"finned,distance"`
	Finished units.Length `file:"finished,distance"`
}

// Losses are strip and tubes that do not reach the customer.
type Losses struct {
	CoilStart units.Length `file:"coil_start,run,zero"`
	CoilEnd   units.Length `file:"coil_end,run,zero"`
	Joint     units.Length `file:"joint,run,zero"`
	Rejects   float64      `file:"rejects,percent,zero"`
}

// Bundle is the opening that a bundle of plain tubes must pass.
type Bundle struct {
	Width  units.Length `file:"width,diameter"`
	Height units.Length `file:"height,diameter"`
}

// Crate is a crate or basket, its lifting and the truck that takes it.
type Crate struct {
	Width     units.Length   `file:"width,distance"` // inside
	Height    units.Length   `file:"height,distance"`
	Length    units.Length   `file:"length,distance"`
	Clearance units.Length   `file:"clearance,distance,zero"` // over both ends together
	Separator units.Length   `file:"separator,height,zero"`   // between layers; 0 lets layers nest
	Mass      units.Mass     `file:"mass,weight"`
	Crane     units.Mass     `file:"crane,weight"`
	Tare      float64        `file:"tare,percent,zero"` // of what is packed
	Slings    Range[float64] `file:"slings,percent"`    // of the length, from each end
	Payload   units.Mass     `file:"payload,weight"`
	Time      units.Duration `file:"time,time"`
	Cost      units.Money    `file:"cost,cost,zero"`
}

// Crew is who works, how long and how steadily.
type Crew struct {
	People     int            `file:"people"`
	Shift      units.Duration `file:"shift,hours"`
	Efficiency float64        `file:"efficiency,percent"` // productive share of a shift
}

// Rates are what things cost.
type Rates struct {
	Line       units.MoneyPerTime `file:"line,cost_per_time"`
	Person     units.MoneyPerTime `file:"person,cost_per_time"`
	TubeMetals []Price            `file:"tube_metals"`
	FinMetals  []Price            `file:"fin_metals"`
	ScrapShare float64            `file:"scrap_share,percent,zero"` // of the strip's price that scrap fetches
	Margin     float64            `file:"margin,percent,zero"`      // on cost
}

// Price is what a metal costs.
type Price struct {
	Metal string             `file:"metal"`
	Price units.MoneyPerMass `file:"price,cost_per_weight"`
}

// Making returns what the line does with a fin type.
func (l *Line) Making(t tube.FinType) (*Making, bool) {
	for i := range l.Types {
		if l.Types[i].Type == t {
			return &l.Types[i], true
		}
	}
	return nil, false
}

// forming returns how far a metal can be worked.
func (c *Capability) forming(k material.Kind) (*Forming, bool) {
	for i := range c.Forming {
		if c.Forming[i].Metal == k {
			return &c.Forming[i], true
		}
	}
	return nil, false
}

// within returns the range in force for a tube: the table's row for its
// diameter, or of two rows about it the narrower; outside the table and without
// one, the general range.
func within[T ~float64](od units.Length, all Range[T], table []ByOD[T]) Range[T] {
	below, above := -1, -1
	for i, row := range table {
		if row.OD <= od*(1+slack) && (below < 0 || row.OD > table[below].OD) {
			below = i
		}
		if row.OD >= od*(1-slack) && (above < 0 || row.OD < table[above].OD) {
			above = i
		}
	}
	if below < 0 || above < 0 {
		return all
	}
	a, b := table[below], table[above]
	return Range[T]{max(a.Low, b.Low), min(a.High, b.High)}
}
