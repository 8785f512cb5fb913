package shop

import (
	"finwright/core/tube"
	"finwright/core/units"
)

// This file says of each object of the file which keys it has, what each value may be
// and where it goes. Opening and listing a file both go through it. Numbers are in SI.
//
// A range is what a number may be; a list says how many items it may have, a text how
// many letters. They keep typing errors out, every sum and product finite and every
// plan's work bounded; they are ten times and more beyond what any shop has, so that none
// is turned away. Narrower for a reason: a tube's joints, as many as a design may ask for;
// shares, which end at the whole; growth, which no practice brings to 5 %, and the strip
// ratio, which is 1 to 1.02 in practice; a stretch, which is above 1 by its meaning;
// first-off tubes, which are one or two.

// Units to multiply by.
const (
	mm      = 1e-3       // m
	hour    = 3600.0     // s
	minute  = 60.0       // s
	rpm     = 1.0 / 60.0 // 1/s
	tonne   = 1000.0     // kg
	mega    = 1e6        // Pa and W
	percent = 0.01
)

func (c *Capability) keys(o *object) {
	text(o, "name", &c.Name, longestText)
	text(o, "currency", &c.Currency, 20)
	list(o, "lines", &c.Lines, 20)
	list(o, "forming", &c.Forming, 20)
	o.inner("placing", &c.Placing)
	o.inner("foot", keysOf(func(o *object) { foot(o, &c.Foot) }))
	o.inner("cutting", &c.Cutting)
	o.inner("buying", &c.Buying)
	if o.has("measured") {
		list(o, "measured", &c.Measured, 1000)
	}
	o.inner("losses", &c.Losses)
	o.inner("mill_bundle", &c.Bundle)
	o.inner("crate", &c.Crate)
	o.inner("crew", &c.Crew)
	o.inner("rates", &c.Rates)
	list(o, "steps", &c.Steps, 60)
	list(o, "checks", &c.Checks, 40)
	o.inner("calendar", &c.Calendar)
	list(o, "bought_in", &c.BoughtIn, 100)
}

func (l *Line) keys(o *object) {
	text(o, "name", &l.Name, longestText)
	span(o, "tube_od", &l.TubeOD, units.Diameter, mm, 2)
	amounts(o, "tube_sizes", &l.Sizes, 200, units.Diameter, mm, 2)
	span(o, "tube_length", &l.TubeLength, units.Distance, 10*mm, 200)
	span(o, "strip_width", &l.StripWidth, units.Width, 0.1*mm, 2)
	amount(o, "strip_speed", &l.StripSpeed, units.Running, 0.001, 200)
	amount(o, "drive", &l.Drive, units.Drive, 1, 100*mega)
	amount(o, "idle", &l.Idle, units.Drive, 0, 100*mega)
	amount(o, "run_up", &l.RunUp, units.Time, 0.001, 10*hour)
	amount(o, "run_down", &l.RunDown, units.Time, 0.001, 10*hour)
	amount(o, "jog", &l.Jog, units.Feed, 0.001/minute, 10000/minute)
	o.inner("groover", &l.Groover)
	o.inner("straightness", &l.Straight)
	amount(o, "od_out", &l.ODOut, units.Gap, 0, 100*mm)
	list(o, "securing", &l.Securing, 20)
	list(o, "coils", &l.Coils, 20)
	o.inner("racks", &l.Racks)
	o.inner("times", &l.Times)
	o.inner("change_over", &l.ChangeOver)
	o.whole("first_off", &l.FirstOff, 0, 100)
	o.inner("new_tools", &l.Tooling)
	list(o, "types", &l.Types, 20)
}

func (p *Practice) keys(o *object) {
	text(o, "type", &p.Type, longestText)
	span(o, "fin_height", &p.Height, units.Height, 0.1*mm, 1)
	if o.has("fin_height_by_od") {
		byOD(o, "fin_height_by_od", &p.HeightByOD, 200, units.Height, 0.1*mm, 1)
	}
	span(o, "fin_count", &p.Count, units.FinCount, 1, 20000)
	if o.has("fin_count_by_od") {
		byOD(o, "fin_count_by_od", &p.CountByOD, 200, units.FinCount, 1, 20000)
	}
	span(o, "strip", &p.Strip, units.Thickness, 0.01*mm, 100*mm)
	texts(o, "fin_metals", &p.FinMetals, 100)
	texts(o, "tube_metals", &p.TubeMetals, 100)
	amount(o, "least_wall", &p.LeastWall, units.Wall, 0.01*mm, 200*mm)
	if o.has("knurl") {
		amount(o, "knurl", &p.Knurl, units.Height, 0, 20*mm)
	}
	amount(o, "spindle", &p.Spindle, units.Spin, 0.1*rpm, 1e5*rpm)
	o.yesNo("oiler", &p.Oiler)
	amount(o, "growth", &p.Growth, units.Percent, 0, 5*percent)
	amount(o, "growth_scatter", &p.Scatter, units.Percent, 0, 5*percent)
	amount(o, "strip_ratio", &p.StripRatio, units.Factor, 0.9, 1.2)
	o.inner("joints", &p.Joints)
	list(o, "tools", &p.Tools, 300)
	amount(o, "tube_hardest", &p.Hardest, units.Hardness, 0, 2000)
	amount(o, "weld_outside", &p.BeadOut, units.Gap, 0, 20*mm)
	amount(o, "weld_inside", &p.BeadIn, units.Gap, 0, 20*mm)
	amount(o, "strip_burr", &p.Burr, units.Gap, 0, 20*mm)
	texts(o, "strip_demands", &p.Demands, 20)
	if o.has("weld") {
		o.inner("weld", &p.Weld)
	}
}

func (w *Weld) keys(o *object) {
	amount(o, "power", &w.Power, units.Drive, 1, 100*mega)
	amount(o, "heat", &w.Heat, units.WeldHeat, 0.01*mega, 1e4*mega)
	if o.has("restart") {
		amount(o, "restart", &w.Restart, units.Time, 0, 1000*hour)
	}
	list(o, "edge", &w.Edge, 100)
	if o.has("preheat") {
		list(o, "preheat", &w.Preheat, 100)
	}
}

func (p *Preheat) keys(o *object) {
	text(o, "preheated", &p.Metal, longestText)
	amount(o, "preheat_time", &p.Time, units.Time, 0.001, 1000*hour)
	amount(o, "preheat_cost", &p.Cost, units.Cost, 0, 1e9)
}

func (e *EdgeSpeed) keys(o *object) {
	text(o, "metal", &e.Metal, longestText)
	amount(o, "strip", &e.Strip, units.Thickness, 0.01*mm, 100*mm)
	amount(o, "speed", &e.Speed, units.Running, 0.001, 200)
}

func (t *Tool) keys(o *object) {
	amount(o, "height", &t.Height, units.Height, 0.1*mm, 1)
	amount(o, "strip", &t.Strip, units.Thickness, 0.01*mm, 100*mm)
	span(o, "count", &t.Count, units.FinCount, 1, 20000)
}

func (j *Joints) keys(o *object) {
	o.whole("short", &j.Short, 0, 50)
	o.whole("long", &j.Long, 0, 50)
	amount(o, "until", &j.Until, units.Distance, mm, 1000)
	amount(o, "apart", &j.Apart, units.Distance, 0, 1000)
	amount(o, "joint_clear", &j.Clear, units.Distance, 0, 100)
}

func (s *Straightness) keys(o *object) {
	amount(o, "bow", &s.Bow, units.Gap, 0, 1)
	amount(o, "bow_over", &s.Over, units.Distance, 10*mm, 200)
}

func (s *Securing) keys(o *object) {
	text(o, "way", &s.Way, longestText)
	amount(o, "secure_time", &s.Time, units.Time, 0, 1000*hour)
}

func (g *Groover) keys(o *object) {
	o.yesNo("lifts", &g.Lifts)
	amount(o, "run_out", &g.RunOut, units.Distance, 0, 100)
}

func (c *Coil) keys(o *object) {
	text(o, "form", &c.Form, longestText)
	amount(o, "od", &c.OD, units.Diameter, 10*mm, 20)
	amount(o, "id", &c.ID, units.Diameter, mm, 20)
	if o.has("width") {
		amount(o, "width", &c.Width, units.Diameter, mm, 20)
	}
	amount(o, "mass", &c.Mass, units.Weight, 0.1, 1000*tonne)
	amount(o, "fill", &c.Fill, units.Factor, 0.01, 1)
	amount(o, "change", &c.Change, units.Time, 0.001, 1000*hour)
}

func (r *Racks) keys(o *object) {
	o.whole("tubes", &r.Tubes, 1, 1e5)
	amount(o, "change", &r.Change, units.Time, 0.001, 1000*hour)
}

func (t *Times) keys(o *object) {
	amount(o, "load", &t.Load, units.Time, 0.001, 1000*hour)
	amount(o, "secure", &t.Secure, units.Time, 0.001, 1000*hour)
	amount(o, "check", &t.Check, units.Time, 0.001, 1000*hour)
}

func (c *ChangeOver) keys(o *object) {
	amount(o, "type", &c.Type, units.Time, 0.001, 1000*hour)
	amount(o, "od", &c.OD, units.Time, 0.001, 1000*hour)
	amount(o, "tooling", &c.Tooling, units.Time, 0.001, 1000*hour)
	amount(o, "pitch", &c.Pitch, units.Time, 0.001, 1000*hour)
}

func (f *Forming) keys(o *object) {
	text(o, "metal", &f.Metal, longestText)
	amount(o, "stretch", &f.Stretch, units.Factor, 1.001, 20)
	amount(o, "tip", &f.Tip, units.Thickness, 0.001*mm, 100*mm)
	amount(o, "speed_share", &f.SpeedShare, units.Percent, 0.1*percent, 100*percent)
	amount(o, "work", &f.Work, units.Work, mega, 1e5*mega)
}

func (p *Placing) keys(o *object) {
	amount(o, "tolerance", &p.Tolerance, units.Distance, 0.001*mm, 100)
	amount(o, "least_finned", &p.LeastFinned, units.Distance, 0.001*mm, 100)
	amount(o, "least_bare", &p.LeastBare, units.Distance, 0.001*mm, 100)
	amount(o, "supports_apart", &p.Supports, units.Distance, 0, 100)
	amount(o, "rolled_end", &p.RolledEnd, units.Distance, 0, 100)
	amount(o, "tool_height", &p.ToolHeight, units.Height, 1e-6*mm, 1)
	amount(o, "tool_strip", &p.ToolStrip, units.Thickness, 1e-6*mm, 100*mm)
	amount(o, "mismatch", &p.Mismatch, units.Percent, 0.001*percent, 1000*percent)
	amount(o, "strain", &p.Strain, units.Percent, 0.0001*percent, 10*percent)
}

func foot(o *object, f *tube.Foot) {
	text(o, "cut_by", &f.By, longestText)
	amount(o, "bend", &f.Bend, units.Factor, 0.05, 1)
	amount(o, "knurl_reach", &f.Knurl, units.Height, 0, 20*mm)
	amount(o, "lap", &f.Lap, units.Height, 0, 20*mm)
}

func (c *Cutting) keys(o *object) {
	amounts(o, "stock", &c.Stock, 100, units.Distance, 10*mm, 200)
	amount(o, "kerf", &c.Kerf, units.Height, 0.001*mm, 1)
	amount(o, "trim_a", &c.TrimA, units.Distance, 0, 20)
	amount(o, "trim_b", &c.TrimB, units.Distance, 0, 20)
	amount(o, "step", &c.Step, units.Height, 0.001*mm, 1)
	amount(o, "time", &c.Time, units.Time, 0.001, 1000*hour)
}

func (b *Buying) keys(o *object) {
	text(o, "tubes_bought", &b.Tubes, longestText)
	amount(o, "length_tolerance", &b.Tolerance, units.Distance, 0, 1)
	amount(o, "length_extra", &b.Extra, units.Percent, 0, 1000*percent)
	amount(o, "offcut_share", &b.Offcuts, units.Percent, 0, 100*percent)
	list(o, "quotes", &b.Quotes, 200)
	list(o, "tubes_on_hand", &b.OnHand, 500)
	list(o, "strip_on_hand", &b.StripOnHand, 500)
	o.whole("price_days", &b.PriceDays, 0, 1000)
	text(o, "coil_used", &b.Coils, longestText)
	text(o, "strip_left", &b.StripLeft, longestText)
	text(o, "spoilt", &b.Spoilt, longestText)
}

func (q *Quote) keys(o *object) {
	text(o, "metal", &q.Metal, longestText)
	text(o, "bought", &q.Way, longestText)
	amount(o, "od", &q.OD, units.Diameter, mm, 2)
	amount(o, "wall", &q.Wall, units.Wall, 0.01*mm, 200*mm)
	amount(o, "up_to", &q.Length, units.Distance, 10*mm, 200)
	o.priced("quoted", &q.Price, &q.Per, 1e-6, 1e9)
	text(o, "dated", &q.Dated, longestText)
}

func (m *Measured) keys(o *object) {
	text(o, "type", &m.Type, longestText)
	amount(o, "cut", &m.Cut, units.Distance, mm, 200)
	amount(o, "finned", &m.Finned, units.Distance, mm, 200)
	amount(o, "finished", &m.Finished, units.Distance, mm, 200)
}

func (l *Losses) keys(o *object) {
	amount(o, "coil_start", &l.CoilStart, units.Run, 0, 10000)
	amount(o, "coil_end", &l.CoilEnd, units.Run, 0, 10000)
	amount(o, "joint", &l.Joint, units.Run, 0, 10000)
	amount(o, "rejects", &l.Rejects, units.Percent, 0, 50*percent)
}

func (b *Opening) keys(o *object) {
	amount(o, "width", &b.Width, units.Diameter, mm, 20)
	amount(o, "height", &b.Height, units.Diameter, mm, 20)
}

func (c *Crate) keys(o *object) {
	amount(o, "width", &c.Width, units.Distance, mm, 20)
	amount(o, "height", &c.Height, units.Distance, mm, 20)
	amount(o, "length", &c.Length, units.Distance, 10*mm, 200)
	amount(o, "clearance", &c.Clearance, units.Distance, 0, 200)
	amount(o, "separator", &c.Separator, units.Height, 0, 20)
	amount(o, "mass", &c.Mass, units.Weight, 0.1, 10000*tonne)
	amount(o, "crane", &c.Crane, units.Weight, 0.1, 10000*tonne)
	amount(o, "tackle", &c.Tackle, units.Weight, 0, 10000*tonne)
	amount(o, "tare", &c.Tare, units.Percent, 0, 1000*percent)
	amount(o, "layer_load", &c.LayerLoad, units.WeightPerMetre, 0, 1e6)
	span(o, "slings", &c.Slings, units.Percent, 0, 50*percent)
	amount(o, "payload", &c.Payload, units.Weight, 0.1, 10000*tonne)
	amount(o, "bed_length", &c.Bed.Length, units.Distance, 0, 200)
	amount(o, "bed_width", &c.Bed.Width, units.Distance, 0, 200)
	o.whole("stack", &c.Bed.Stack, 1, 50)
	amount(o, "time", &c.Time, units.Time, 0.001, 1000*hour)
	amount(o, "cost", &c.Cost, units.Cost, 0, 1e9)
	amount(o, "cost_metre", &c.PerMetre, units.CostPerRun, 0, 1e9)
}

func (c *Crew) keys(o *object) {
	o.whole("people", &c.People, 1, 1000)
	amount(o, "shift", &c.Shift, units.Hours, 0.1*hour, 168*hour)
	amount(o, "efficiency", &c.Efficiency, units.Percent, percent, 100*percent)
}

func (r *Rates) keys(o *object) {
	amount(o, "line", &r.Line, units.CostPerTime, 1e-6/hour, 1e9/hour)
	amount(o, "person", &r.Person, units.CostPerTime, 1e-6/hour, 1e9/hour)
	list(o, "tube_metals", &r.TubeMetals, 100)
	list(o, "fin_metals", &r.FinMetals, 100)
	amount(o, "overhead", &r.Overhead, units.Percent, 0, 1000*percent)
	amount(o, "freight", &r.Freight, units.CostPerWeight, 0, 1e9)
	amount(o, "mark_up", &r.MarkUp, units.Percent, 0, 1000*percent)
	amount(o, "least_charge", &r.Least, units.Cost, 0, 1e9)
	o.wholes("breaks", &r.Breaks, 10, 1, 1e6)
	amount(o, "budget_band", &r.Band, units.Percent, 0, 90*percent)
	o.whole("budget_days", &r.BandDays, 0, 1000)
}

func (p *StripPrice) keys(o *object) {
	text(o, "metal", &p.Metal, longestText)
	amount(o, "price", &p.Price, units.CostPerWeight, 1e-6, 1e9)
	amount(o, "scrap", &p.Scrap, units.Percent, 0, 100*percent)
	p.MetalPrice.keys(o)
}

func (p *MetalPrice) keys(o *object) {
	amount(o, "surcharge", &p.Surcharge, units.CostPerWeight, 0, 1e9)
	text(o, "dated", &p.Dated, longestText)
}

func (t *Tooling) keys(o *object) {
	amount(o, "rolls_cost", &t.Rolls, units.Cost, 0, 1e9)
	o.whole("rolls_days", &t.RollsDays, 0, 1000)
	amount(o, "size_cost", &t.Size, units.Cost, 0, 1e9)
	o.whole("size_days", &t.SizeDays, 0, 1000)
}

func (c *Calendar) keys(o *object) {
	texts(o, "work_days", &c.WorkDays, 7)
	o.whole("shifts_a_day", &c.Shifts, 1, 20)
	texts(o, "holidays", &c.Holidays, 200)
	o.whole("approval_days", &c.Approval, 0, 1000)
	o.whole("queue_days", &c.Queue, 0, 1000)
	list(o, "tube_leads", &c.TubeLeads, 200)
	list(o, "strip_leads", &c.StripLeads, 200)
}

func (t *TubesOnHand) keys(o *object) {
	text(o, "metal", &t.Metal, longestText)
	amount(o, "od", &t.OD, units.Diameter, mm, 2)
	amount(o, "wall", &t.Wall, units.Wall, 0.01*mm, 200*mm)
	amount(o, "each_long", &t.Length, units.Distance, 10*mm, 200)
	o.whole("pieces", &t.Pieces, 1, 1e6)
	text(o, "heat_number", &t.Heat, longestText)
	amount(o, "worth", &t.Worth, units.CostEach, 0, 1e9)
}

func (s *StripOnHand) keys(o *object) {
	text(o, "metal", &s.Metal, longestText)
	amount(o, "strip_width", &s.Width, units.Width, 0.1*mm, 2)
	amount(o, "strip", &s.Thickness, units.Thickness, 0.01*mm, 100*mm)
	amount(o, "mass_on_hand", &s.Mass, units.Weight, 0.01, 1000*tonne)
	text(o, "heat_number", &s.Heat, longestText)
	amount(o, "worth_mass", &s.Worth, units.CostPerWeight, 0, 1e9)
	if o.has("remark") {
		text(o, "remark", &s.Remark, longestText)
	}
}

func (b *BoughtIn) keys(o *object) {
	text(o, "finned_type", &b.Type, longestText)
	span(o, "lead_od", &b.OD, units.Diameter, mm, 2)
	amount(o, "per_metre", &b.PerMetre, units.CostPerRun, 1e-6, 1e9)
	o.whole("days", &b.Days, 0, 2000)
	text(o, "dated", &b.Dated, longestText)
}

func (t *TubeLead) keys(o *object) {
	text(o, "metal", &t.Metal, longestText)
	text(o, "bought", &t.Way, longestText)
	span(o, "lead_od", &t.OD, units.Diameter, mm, 2)
	o.whole("days", &t.Days, 0, 2000)
}

func (s *StripLead) keys(o *object) {
	text(o, "metal", &s.Metal, longestText)
	text(o, "form", &s.Form, longestText)
	o.whole("days", &s.Days, 0, 2000)
}

func (p *Price) keys(o *object) {
	text(o, "metal", &p.Metal, longestText)
	amount(o, "price", &p.Price, units.CostPerWeight, 1e-6, 1e9)
	p.MetalPrice.keys(o)
}

func (s *Step) keys(o *object) {
	text(o, "name", &s.Name, longestText)
	text(o, "kind", &s.Kind, longestText)
	o.yesNo("used", &s.Used)
	text(o, "when", &s.When, longestText)
	texts(o, "fin_types", &s.FinTypes, 20)
	texts(o, "tube_families", &s.Families, 20)
	text(o, "of_tubes", &s.Of, longestText)
	text(o, "who", &s.Who, longestText)
	amount(o, "time_tube", &s.PerTube, units.Time, 0, 1000*hour)
	amount(o, "time_order", &s.PerOrder, units.Time, 0, 1000*hour)
	amount(o, "cost_tube", &s.CostTube, units.Cost, 0, 1e9)
	amount(o, "cost_order", &s.CostOrder, units.Cost, 0, 1e9)
	o.whole("lead_days", &s.Lead, 0, 1000)
	amount(o, "step_mark_up", &s.MarkUp, units.Percent, 0, 1000*percent)
}

func (k *Check) keys(o *object) {
	text(o, "looked_at", &k.Kind, longestText)
	texts(o, "fin_types", &k.FinTypes, 20)
	if o.has("fins_out") {
		amount(o, "fins_out", &k.Fins, units.Factor, 0, 1000)
	}
	if o.has("size_out") {
		amount(o, "size_out", &k.Off, units.Gap, 0, 1)
	}
}
