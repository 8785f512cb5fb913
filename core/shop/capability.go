package shop

import (
	"finwright/core/material"
	"finwright/core/tube"
	"finwright/core/units"
)

// Format and Version mark a capability file.
//
// The file is JSON. The methods "keys" name each key, what its value may be and where
// it goes; its meaning for a reader is the text "shop.field.<key>". A quantity is a
// text with its unit as people type it ("5/8 in", "2.5 m/s", "420 kg"), a count is a
// number. A file of an earlier version is lifted (versions.go). Every key must be there unless it is asked for with "has", and no other may
// be, except "note", a remark that any object may carry.
const (
	Format  = "finwright-shop"
	Version = 3
)

// Capability is what a shop can do and what its work costs. All its figures are
// the shop's own and editable.
type Capability struct {
	Name     string
	Currency string
	Lines    []Line
	Forming  []Forming
	Placing  Placing
	Foot     tube.Foot
	Cutting  Cutting
	Buying   Buying
	Measured []Measured
	Losses   Losses
	Bundle   Opening
	Crate    Crate
	Crew     Crew
	Rates    Rates
	Steps    []Step
	Checks   []Check
	Calendar Calendar
	BoughtIn []BoughtIn

	tree map[string]any // the file as typed; nil: the one that ships
	from int            // the earlier version that it was saved by; 0: this one
}

// Range is a low and a high limit, both included.
type Range[T ~float64] struct {
	Low  T
	High T
}

// ByOD is a range that holds for tubes of one outside diameter.
type ByOD[T ~float64] struct {
	OD   units.Length
	Low  T
	High T
}

// Line is one finning machine with its coil, racks and times.
type Line struct {
	Name       string
	TubeOD     Range[units.Length]
	Sizes      []units.Length // for which tooling is in stock
	TubeLength Range[units.Length]
	StripWidth Range[units.Length]
	StripSpeed units.Speed // highest
	Drive      units.Power
	Idle       units.Power    // taken before any strip is rolled
	RunUp      units.Duration // from rest to the type's spindle speed
	RunDown    units.Duration // and back
	Jog        units.Speed    // of the tube where it stays bare
	Groover    Groover
	Straight   Straightness // that the line takes
	ODOut      units.Length // by which a tube's diameter may be out; 0: the shop does not care
	Securing   []Securing   // ways to hold the ends of the fins beside the line's own; none: the shop does not say
	Coils      []Coil       // in order of preference
	Racks      Racks
	Times      Times
	ChangeOver ChangeOver
	FirstOff   int // tubes spent on each set-up
	Tooling    Tooling
	Types      []Practice
}

// Practice is what a line does with one fin type.
type Practice struct {
	Type       tube.FinType
	Height     Range[units.Length]
	HeightByOD []ByOD[units.Length]
	Count      Range[units.PerLength]
	CountByOD  []ByOD[units.PerLength]
	Strip      Range[units.Length]
	FinMetals  []string
	TubeMetals []string
	LeastWall  units.Length   // that bears the rolls, or the weld without burning through
	Knurl      units.Length   // depth
	Spindle    units.Rotation // highest in steady work
	Oiler      bool           // strip must be lubricated
	Growth     float64        // a guess, until tubes are measured
	Scatter    float64        // of that guess
	StripRatio float64        // strip used over n pi d
	Joints     Joints
	Tools      []Tool
	Hardest    float64      // [HV] tube that takes groove or knurl; 0: the shop does not care
	BeadOut    units.Length // highest weld bead of the tube outside; 0: the shop does not care
	BeadIn     units.Length // and inside
	Burr       units.Length // highest of the strip; 0: the shop does not care
	Demands    []StripDemand
	Weld       Weld // of welded fins
}

// Tool is a set of rolls: each height, thickness and range of pitch has its own.
type Tool struct {
	Height units.Length
	Strip  units.Length
	Count  Range[units.PerLength]
}

// Joints says how many strip joints one tube may carry.
type Joints struct {
	Short int // on a tube up to Until
	Long  int // on a longer tube
	Until units.Length
	Apart units.Length // along the tube
	Clear units.Length // of the tube's ends and supports; 0: the shop does not care
}

// Groover is the tool of a line that rolls groove or knurl into the tube.
type Groover struct {
	Lifts  bool         // where the tube is to stay bare
	RunOut units.Length // that is still rolled behind the last fin of a zone
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
	Form   CoilForm
	OD     units.Length
	ID     units.Length
	Width  units.Length // of a traverse-wound coil
	Mass   units.Mass
	Fill   float64 // share of the coil's volume that is metal
	Change units.Duration
}

// Tooling is what is bought where an order needs what the line does not have; 0 where the shop does not say.
type Tooling struct {
	Rolls     units.Money // a set for a height, thickness and pitch
	RollsDays int
	Size      units.Money // for a tube's diameter
	SizeDays  int
}

// Racks carry tubes to and from the line.
type Racks struct {
	Tubes  int
	Change units.Duration
}

// Times are what each tube takes beside the winding.
type Times struct {
	Load   units.Duration // and unload
	Secure units.Duration // one finned end
	Check  units.Duration // first-off, each set-up
}

// ChangeOver is the time to set the line from one tube to another. A deeper
// change includes the shallower ones.
type ChangeOver struct {
	Type    units.Duration
	OD      units.Duration
	Tooling units.Duration // height or strip
	Pitch   units.Duration
}

// Forming is how far a family of fin metals can be worked.
type Forming struct {
	Metal      material.Family
	Stretch    float64      // greatest usual Df/d
	Tip        units.Length // thinnest
	SpeedShare float64
	Work       units.Stress // to roll a volume of strip into a fin
}

// Placing holds the tolerances along the tube.
type Placing struct {
	Tolerance   units.Length // of a zone's edge
	LeastFinned units.Length
	LeastBare   units.Length // of a span
	Supports    units.Length // longest length between two supports; 0: the shop does not care
	RolledEnd   units.Length // of a plain end, that is rolled or expanded into a tubesheet; 0: the shop does not care
	ToolHeight  units.Length // by which a tool's height may differ
	ToolStrip   units.Length
	Mismatch    float64 // of expansions, welded fins
	Strain      float64 // elastic strain left by winding
}

// Cutting is the saw and the tubes as they come from the mill.
type Cutting struct {
	Stock []units.Length // lengths in which tubes come
	Kerf  units.Length
	TrimA units.Length // cut off after finning
	TrimB units.Length
	Step  units.Length   // to which a cut is set
	Time  units.Duration // one cut
}

// Buying is how tubes and strip are bought, and what becomes of what is left of them.
type Buying struct {
	Tubes       TubeWay
	Tolerance   units.Length // by which a tube that is bought cut to length may be out, to either side
	Extra       float64      // of the price by mass, for tubes cut to length
	Offcuts     float64      // of the price, for what is left of stock lengths
	Quotes      []Quote
	OnHand      []TubesOnHand
	StripOnHand []StripOnHand
	PriceDays   int // for which a price holds; 0: the shop does not say
	Coils       CoilChoice
	StripLeft   StripUse
	Spoilt      Bearer
}

// TubeWay is how tubes are bought.
type TubeWay string

// Ways to buy tubes.
const (
	CutToLength  TubeWay = "cut"
	StockLengths TubeWay = "stock" // and sawn in the shop
)

// TubeWays lists them.
var TubeWays = []TubeWay{CutToLength, StockLengths}

// CoilChoice says which of the coils that a line takes an order is wound from.
type CoilChoice string

// Choices of the coil.
const (
	CheaperCoil CoilChoice = "cheaper"
	FirstCoil   CoilChoice = "first" // of the line's list that serves the tube
)

// CoilChoices lists them.
var CoilChoices = []CoilChoice{CheaperCoil, FirstCoil}

// StripUse is what becomes of the strip that is left when an order is done.
type StripUse string

// Uses of strip that is left. Slit strip suits one height and pitch, so it is scrap unless the shop knows of a use.
const (
	StripIsScrap  StripUse = "scrap"
	StripIsStored StripUse = "again" // and is not paid for by the order
)

// StripUses lists them.
var StripUses = []StripUse{StripIsScrap, StripIsStored}

// Bearer is who pays for a tube of the customer's that is spoilt.
type Bearer string

// Bearers.
const (
	CustomerBears Bearer = "customer"
	ShopBears     Bearer = "shop"
)

// Bearers lists them.
var Bearers = []Bearer{CustomerBears, ShopBears}

// TubesOnHand are tubes that lie in the shop: an order for their size takes them before any are bought.
type TubesOnHand struct {
	Metal  string
	OD     units.Length
	Wall   units.Length
	Length units.Length
	Pieces int
	Heat   string      // number
	Worth  units.Money // each
}

// StripOnHand is a coil, or the end of one, that lies in the shop: an order for its strip takes it before any is bought.
type StripOnHand struct {
	Metal     string
	Width     units.Length
	Thickness units.Length
	Mass      units.Mass
	Heat      string             // number
	Worth     units.MoneyPerMass // 0: it is paid for
	Remark    string
}

// BoughtIn is at what a shop buys tubes that no line of its winds, finned as they are.
type BoughtIn struct {
	Type     tube.FinType
	OD       Range[units.Length]
	PerMetre units.MoneyPerLength // of the overall length
	Days     int                  // in which they come
	Dated    string               // the supplier's day, or Undated
}

// BoughtInFor returns how a tube is bought in finned; ok is false where its fins are wound, or the shop does not say.
func (c *Capability) BoughtInFor(t *tube.Tube) (price *BoughtIn, ok bool) {
	for i := range c.BoughtIn {
		b := &c.BoughtIn[i]
		if b.Type == t.Fin.Type && !t.Fin.Type.Wound() && t.OD >= b.OD.Low*(1-Slack) && t.OD <= b.OD.High*(1+Slack) {
			return b, true
		}
	}
	return nil, false
}

// Quote is a mill's price for tubes of one size. It goes before the metal's price by mass.
type Quote struct {
	Metal  string
	Way    TubeWay
	OD     units.Length
	Wall   units.Length
	Length units.Length // the longest that is had at this price; of stock, the stock length
	Price  float64      // in SI; of what, Per says
	Per    units.Kind   // CostPerWeight, CostPerRun or CostEach
	Dated  string       // the supplier's day, or Undated
}

// Measured is one tube that the shop finned and measured, from which growth is learned.
type Measured struct {
	Type     tube.FinType
	Cut      units.Length
	Finned   units.Length
	Finished units.Length
}

// Losses are strip and tubes that do not reach the customer.
type Losses struct {
	CoilStart units.Length
	CoilEnd   units.Length
	Joint     units.Length
	Rejects   float64
}

// Opening is what a bundle of plain tubes must pass through.
type Opening struct {
	Width  units.Length
	Height units.Length
}

// Crate is a crate or basket, its lifting and the truck that takes it.
type Crate struct {
	Width     units.Length // inside
	Height    units.Length
	Length    units.Length
	Clearance units.Length // over both ends together
	Separator units.Length // between layers; 0 lets layers nest
	Mass      units.Mass
	Crane     units.Mass
	Tackle    units.Mass          // that hangs on the hook beside the crate
	Tare      float64             // of what is packed
	LayerLoad units.MassPerLength // that a tube of the lowest layer may carry; 0: not stated
	Slings    Range[float64]      // of the length, from each end
	Payload   units.Mass
	Bed       Bed // of the truck
	Time      units.Duration
	Cost      units.Money
	PerMetre  units.MoneyPerLength // of a crate as long as its tubes and the clearance, besides
}

// Bed is where crates stand on a truck; without a length it is not stated.
type Bed struct {
	Length units.Length
	Width  units.Length
	Stack  int // crates upon one another
}

// Heaviest returns the mass [kg] that a crate may have: what it bears itself, the crane less its tackle, and the truck.
//
// Valid: tackle lighter than the crane's limit.
// Source: the least of the shop's limits.
func (k *Crate) Heaviest() units.Mass { return min(k.Mass, k.Crane-k.Tackle, k.Payload) }

// Crew is who works, how long and how steadily.
type Crew struct {
	People     int
	Shift      units.Duration
	Efficiency float64 // productive share of a shift
}

// Rates are what things cost.
type Rates struct {
	Line       units.MoneyPerTime
	Person     units.MoneyPerTime
	TubeMetals []Price
	FinMetals  []StripPrice
	Overhead   float64            // on the time of line and people
	Freight    units.MoneyPerMass // of the order's gross mass
	MarkUp     float64            // on cost
	Least      units.Money        // charged for an order
	Breaks     []int              // quantities that are priced beside the one ordered
	Band       float64            // of a budget price, to either side; 0: none is named
	BandDays   int                // for which it holds
}

// StripPrice is what strip of a metal costs, and the share of that which its scrap fetches.
type StripPrice struct {
	Metal string
	Price units.MoneyPerMass
	Scrap float64
	MetalPrice
}

// MetalPrice is what a price by mass says beside its amount.
type MetalPrice struct {
	Surcharge units.MoneyPerMass // for the metal, besides
	Dated     string             // the supplier's day, or Undated
}

// Price is what a metal costs.
type Price struct {
	Metal string
	Price units.MoneyPerMass
	MetalPrice
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
func (c *Capability) FormingOf(k material.Family) (*Forming, bool) {
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
