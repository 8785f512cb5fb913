package design

import (
	"math"

	"finwright/core/field"
	"finwright/core/figure"
	"finwright/core/message"
	"finwright/core/rating"
	"finwright/core/shop/verdict"
	"finwright/core/units"
)

// testWater is the density [kg/m3] of what a bundle is full of when it is tested and lifted full.
const testWater = 1000

// BankTubes returns how many tubes the bank takes.
func BankTubes(in *field.Input) int {
	return in.Bank.Rows * in.Bank.TubesPerRow * in.Job.Bundles
}

// Bundle returns how wide and how deep a bundle is [m], and the mass of its tubes [kg].
func Bundle(in *field.Input) (width, depth, dry float64) {
	width = float64(in.Bank.TubesPerRow) * float64(in.TubePitch())
	depth = float64(in.Bank.Rows-1)*float64(in.RowPitch()) + float64(in.Tube.FinOD())
	return width, depth, float64(in.Bank.Rows*in.Bank.TubesPerRow) * float64(in.Tube.Weight())
}

// bank is how large and heavy it is, and what of the order goes into it. Rows and tubes per row are those of a bundle.
func (b *builder) bank() []figure.Figure {
	in, t := b.in, b.t
	bank, count := in.Pitches(), float64(in.Bank.Rows*in.Bank.TubesPerRow)
	rows, across := arg("N_r", units.Count, float64(in.Bank.Rows)), arg("N_t", units.Count, float64(in.Bank.TubesPerRow))
	bore := float64(t.InsideOD())
	width, depth, dry := Bundle(in)
	full := dry + count*testWater*math.Pi/4*bore*bore*float64(t.Length)
	m := arg("M_d", units.Weight, dry)
	return []figure.Figure{
		fig("bank_width", units.Distance, width, "", "bank_width", across, arg("P_T", units.Diameter, bank.TransversePitch)),
		fig("bank_depth", units.Distance, depth, "", "bank_depth", rows, arg("P_L", units.Diameter, bank.RowPitch), b.tip()),
		fig("mass_dry", units.Weight, dry, "", "mass_dry", rows, across, arg("M_T", units.Weight, float64(t.Weight()))),
		fig("mass_full", units.Weight, full, "", "mass_full", m, rows, across, arg("d_i", units.Diameter, bore), b.length()),
		fig("mass_lifted", units.Weight, dry*(1+in.Job.Frame), "", "mass_lifted", m, arg("x_r", units.Percent, in.Job.Frame)),
		fig("order_bank", units.Count, float64(BankTubes(in)), figure.WholeBank, "order_bank", rows, across, arg("N_a", units.Count, float64(in.Job.Bundles))),
		fig("order_difference", units.Count, float64(in.Job.Quantity-BankTubes(in)), figure.WholeOrder, "order_difference", arg("q", units.Count, float64(in.Job.Quantity)), arg("N", units.Count, float64(BankTubes(in)))),
	}
}

// orderNotices tie the order to the bank, and a retube to what stands. One tube alone is a sample, and tied to none.
func orderNotices(in *field.Input) []Notice {
	var out []Notice
	if q, n := in.Job.Quantity, BankTubes(in); q > 1 && q != n {
		differs := Notice{
			State: figure.Watch, Field: "quantity", Figure: "order_difference", Message: message.New("notice.order_differs", "ordered", q, "bank", n),
			Change: counted("quantity", n),
		}
		if part := in.Bank.Rows * in.Bank.TubesPerRow; q%part == 0 {
			differs.Others = append(differs.Others, counted("bundles", q/part))
		}
		if part := in.Bank.Rows * in.Job.Bundles; q%part == 0 {
			differs.Others = append(differs.Others, counted("tubes_per_row", q/part))
		}
		out = append(out, differs)
	}
	if in.Job.Retube {
		out = append(out, standingNotices(in)...)
	}
	return out
}

func counted(field string, n int) []verdict.Setting {
	return []verdict.Setting{{Field: field, Kind: units.Count, SI: float64(n)}}
}

// sameSize [m] lets pass what is a tube's own length or pitch written in other units.
const sameSize = 1e-5

// standingNotices hold a retube to what stands: pitch, count, length and the room for fins are the customer's. What stands is
// offered, of each by itself, else of all that differ together.
func standingNotices(in *field.Input) []Notice {
	var out []Notice
	say := func(state figure.State, field, fig, key string, pairs ...any) {
		out = append(out, Notice{State: state, Field: field, Figure: fig, Message: message.New(key, pairs...)})
	}
	var all []verdict.Setting
	take := func(s verdict.Setting) {
		out[len(out)-1].Change = []verdict.Setting{s}
		all = append(all, s)
	}
	job := &in.Job
	other := func(now, old units.Length) bool { return old > 0 && math.Abs(float64(now-old)) > sameSize }
	switch pitch := in.TubePitch(); {
	case other(pitch, job.OldPitch):
		say(figure.No, "tube_pitch", "tube_pitch", "notice.old_pitch", "now", of(units.Diameter, pitch), "old", of(units.Diameter, job.OldPitch))
		take(verdict.Setting{Field: "tube_pitch", Kind: units.Diameter, SI: float64(job.OldPitch)})
	case job.OldPitch == 0 && in.Bank.TubePitch == 0:
		say(figure.Watch, "tube_pitch", "tube_pitch", "notice.old_pitch_missing")
	}
	if n := BankTubes(in); job.OldTubes > 0 && n != job.OldTubes {
		say(figure.No, "tubes_per_row", "order_bank", "notice.old_tubes", "now", n, "old", job.OldTubes)
		if part := in.Bank.Rows * job.Bundles; job.OldTubes%part == 0 {
			take(counted("tubes_per_row", job.OldTubes/part)[0])
		}
	}
	if other(in.Tube.Length, job.OldLength) {
		say(figure.No, "tube_length", "finned_length", "notice.old_length", "now", of(units.Distance, in.Tube.Length), "old", of(units.Distance, job.OldLength))
		take(verdict.Setting{Field: "tube_length", Kind: units.Distance, SI: float64(job.OldLength)})
	}
	if most := job.FinMost; most > 0 && in.Tube.FinOD() > most+1e-9 {
		say(figure.No, "fin_od_most", "fin_od", "notice.fin_over", "fin", of(units.Diameter, in.Tube.FinOD()), "most", message.Most(of(units.Diameter, most)))
	}
	for i := range out {
		if out[i].Change != nil && len(all) > 1 {
			out[i].Others = [][]verdict.Setting{all}
		}
	}
	return out
}

// UA returns U times A of the bank [W/K].
func UA(t *rating.Thermal) float64 { return t.Overall.OnBare * t.Bank.BareArea() }

// retubeNotices ask of a retube what it is for: at least the old U times A. That the drop is at most the old one is asked by
// the drop allowed.
func retubeNotices(in *field.Input, t *rating.Thermal) []Notice {
	if !in.Job.Retube {
		return nil
	}
	var out []Notice
	switch old, now := in.Job.OldUA, UA(t); {
	case old == 0:
		out = append(out, Notice{State: figure.Watch, Field: "old_ua", Figure: "ua", Message: message.New("notice.old_ua_missing")})
	case now < old*(1-wishMargin):
		transfer := func(si float64) message.Amount { return message.Amount{Kind: units.Transfer, SI: si} }
		out = append(out, Notice{State: figure.No, Field: "old_ua", Figure: "ua", Message: message.New("notice.ua_short", "has", transfer(now), "old", transfer(old), "by", percent(1-now/old))})
	}
	if in.Bank.DropAllowed == 0 {
		out = append(out, Notice{State: figure.Watch, Field: "drop_allowed", Figure: "air_drop", Message: message.New("notice.old_drop_missing")})
	}
	return out
}

// takes offers what carries the duty wanted where the bank does not: tubes in a row, or rows, at a press. Of a retube both are
// the customer's.
func (r *Result) takes(in *field.Input) {
	want, t := in.Bank.DutyWanted, &r.Heat.Thermal
	if !r.Heat.Absent.None() || in.Job.Retube || math.Abs(t.Duty.Heat) >= want*(1-wishMargin) {
		return
	}
	offer := func(key, field string, n int, why message.Message) {
		if why.None() {
			r.Notices = append(r.Notices, Notice{
				State: figure.Plain, Field: field, Figure: "tubes_wanted", Message: message.New(key, "count", n),
				Change: counted(field, n),
			})
		}
	}
	n, why, _ := in.TubesFor(want*(1-wishMargin), t)
	offer("notice.take_tubes", "tubes_per_row", n, why)
	n, why, _ = in.RowsFor(want*(1-wishMargin), t)
	offer("notice.take_rows", "rows", n, why)
}
