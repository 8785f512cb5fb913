package material

// Status says how well a value is known. Its text is "metal.status.<status>".
type Status string

// Statuses.
const (
	FoundInText Status = "found"     // read in a public text
	Computed    Status = "computed"  // computed from other values
	FromMemory  Status = "memory"    // recalled from the named standard or handbook: verify
	Judgement   Status = "judgement" // engineering judgement, or typed by the user
)

// Source is where a value comes from. Key is the key of its text. The zero
// Source belongs to a value that is not known.
type Source struct {
	Key    string
	Status Status
}

// Sources of the shipped metals and of a user's own.
var (
	handbook  = Source{"metal.source.handbook", FromMemory}
	minimum   = Source{"metal.source.minimum", FromMemory}
	soft      = Source{"metal.source.soft", FromMemory}
	tipLimits = Source{"metal.source.tip_limits", FromMemory}
	user      = Source{"metal.source.user", Judgement}
)

// Value is one property in SI units with its source.
type Value struct {
	SI float64
	Source
}

// Known reports whether there is a value; if not, SI means nothing.
func (v Value) Known() bool { return v.Status != "" }

// ValueRange is a property that its source gives as a range, in SI units.
type ValueRange struct {
	Low, High float64
	Source
}

// Known reports whether there is a range.
func (s ValueRange) Known() bool { return s.Status != "" }
