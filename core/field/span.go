package field

import "finwright/core/units"

// SpanCentre and SpanWidth are the two entries of each bare span: they stand in no group, and the span's number follows
// their names in errors, as in span_centre_1.
var (
	SpanCentre = Field{ID: "span_centre", Used: always, Kind: units.Distance, Low: 0, High: 30, Usual: Range{0.1, 20}}
	SpanWidth  = Field{ID: "span_width", Used: always, Kind: units.Distance, Low: 0.001, High: 5, Usual: Range{0.01, 1}}
)
