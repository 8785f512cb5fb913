package tube

import "finwright/core/material"

// Fin types; Fixings has all that depends on each.
const (
	Footed         FinType = "footed"          // L: the strip's foot lies on the tube up to the next turn
	OverlapFooted  FinType = "overlap_footed"  // LL: each foot laps the next
	KnurledFooted  FinType = "knurled_footed"  // KL: foot rolled into a knurled tube
	KnurledOverlap FinType = "knurled_overlap" // KLL: knurled and lapped
	Embedded       FinType = "embedded"        // G: wound into a groove that is rolled closed
	EdgeWound      FinType = "edge_wound"      // on edge, no foot and no groove
	Welded         FinType = "welded"          // on edge, continuously welded
	Extruded       FinType = "extruded"        // raised from a muff over the tube; not wound
)

// Contacts.
const (
	WholeTube  Contact = "whole_tube"  // under a foot or a muff
	GrooveWall Contact = "groove_wall" // both walls and the floor of a groove
	StripEdge  Contact = "strip_edge"
)

// Sections.
const (
	FootSection   Section = "foot"   // strip bent to a foot, which may lap the next
	GrooveSection Section = "groove" // let into the tube
	EdgeSection   Section = "edge"   // strip on edge
	WeldSection   Section = "weld"   // on edge, a fillet on either side
	MuffSection   Section = "muff"   // fins and sleeve of one piece
)

// Where bonds and limits come from.
var (
	bondJudged = material.Source{Key: "bond.source.judged", Status: material.Judgement}
	bondRanked = material.Source{Key: "bond.source.ranked", Status: material.Judgement}
	fused      = material.Source{Key: "bond.source.fused", Status: material.Judgement}
	standard   = material.Source{Key: "limit.source.standard", Status: material.FromMemory}
	unclear    = material.Source{Key: "limit.source.unclear", Status: material.FromMemory}
	lapped     = material.Source{Key: "limit.source.lapped", Status: material.FoundInText}
	trade      = material.Source{Key: "limit.source.trade", Status: material.FoundInText}
	judged     = material.Source{Key: "limit.source.judged", Status: material.Judgement}
)

// Fixings lists the fin types, in the order a page offers them, with all that depends on each.
//
// Source: layers: common practice, no source: a lapped foot's heel sits on its neighbour's toe.
// Tension: common practice, no source; knurled feet are also keyed to the tube and last longer.
// Bond: engineering judgement, editable; edge-wound and extruded have no figure of their
// own: they are set by their rank among the others.
// Standard limits: ISO 13706 (= API 661), from memory; it gives none for strip wound on
// edge, and puts welded fins above 400 C, where the fin metal governs. Its row of the lapped foot is
// remembered both at 130 and at 165 C: the lower refuses. House limits: the lowest figure of trade pages, where
// it lies below the standard's or tells of another reading of it; edge-wound: engineering judgement, editable.
// Usual: engineering judgement, editable; growth: L, LL: none expected; knurled: small;
// embedded: 0 to 0.5 %.
var Fixings = []*Fixing{
	{
		Type: Footed, Layers: 1, Tension: true, Contact: WholeTube, Forming: material.Foot, Section: FootSection,
		Bond:   material.Value{SI: 5e-5, Source: bondJudged},
		Limits: Limits{Standard: material.Value{SI: 130, Source: standard}},
		Usual:  Usual{StripRatio: 1.01, LeastWall: 0.0009, Spindle: 1200.0 / 60},
	},
	{
		Type: OverlapFooted, Layers: 2, Tension: true, Contact: WholeTube, Forming: material.Foot, Section: FootSection,
		Bond: material.Value{SI: 5e-5, Source: bondJudged},
		Limits: Limits{
			Standard: material.Value{SI: 130, Source: unclear},
			House:    material.Value{SI: 165, Source: lapped},
		},
		Usual: Usual{StripRatio: 1.01, LeastWall: 0.0009, Spindle: 1200.0 / 60},
	},
	{
		Type: KnurledFooted, Layers: 1, Knurled: true, Contact: WholeTube, Forming: material.Foot, Section: FootSection,
		Bond:   material.Value{SI: 2e-5, Source: bondJudged},
		Limits: Limits{Standard: material.Value{SI: 200, Source: standard}},
		Usual:  Usual{Growth: 0.0002, Scatter: 0.0002, StripRatio: 1.01, LeastWall: 0.00165, Knurl: 0.00015, Spindle: 800.0 / 60},
	},
	{
		Type: KnurledOverlap, Layers: 2, Knurled: true, Contact: WholeTube, Forming: material.Foot, Section: FootSection,
		Bond:   material.Value{SI: 2e-5, Source: bondJudged},
		Limits: Limits{Standard: material.Value{SI: 200, Source: standard}},
		Usual:  Usual{Growth: 0.0002, Scatter: 0.0002, StripRatio: 1.01, LeastWall: 0.00165, Knurl: 0.00015, Spindle: 800.0 / 60},
	},
	{
		Type: Embedded, Contact: GrooveWall, Forming: material.Groove, Section: GrooveSection,
		Bond:   material.Value{SI: 1e-5, Source: bondJudged},
		Limits: Limits{Standard: material.Value{SI: 400, Source: standard}},
		Usual:  Usual{Growth: 0.001, Scatter: 0.0025, StripRatio: 1, LeastWall: 0.0021, Spindle: 700.0 / 60},
	},
	{
		Type: EdgeWound, Tension: true, Contact: StripEdge, Forming: material.Edge, Section: EdgeSection,
		Bond:   material.Value{SI: 1e-4, Source: bondRanked},
		Limits: Limits{House: material.Value{SI: 100, Source: judged}},
		Usual:  Usual{StripRatio: 1, LeastWall: 0.0009, Spindle: 900.0 / 60},
	},
	{
		Type: Welded, Contact: StripEdge, Forming: material.Weld, Section: WeldSection,
		Bond:  material.Value{SI: 0, Source: fused},
		Usual: Usual{Scatter: 0.0001, StripRatio: 1, LeastWall: 0.0026, Spindle: 640.0 / 60},
	},
	{
		Type: Extruded, Contact: WholeTube, Forming: material.Muff, Section: MuffSection,
		Bond: material.Value{SI: 2e-5, Source: bondRanked},
		Limits: Limits{
			Standard: material.Value{SI: 300, Source: standard},
			House:    material.Value{SI: 285, Source: trade},
		},
	},
}
