package floor

import (
	"encoding/json"
	"math"
	"slices"
	"strconv"

	"finwright/core/message"
	"finwright/core/shop"
	"finwright/core/shop/making"
	"finwright/core/units"
)

// Least is how many tubes of one set-up must have been measured before anything is learned of them.
//
// Source: the trade's own rule of thumb, no source.
const Least = 5

// Counted is what became of the tubes of an order.
type Counted struct{ Good, Scrapped, Rejected int }

func (c Counted) made() int { return c.Good + c.Scrapped + c.Rejected }

// Thing is a part of the shop's file that can be learned. Its name is the text "floor.thing.<thing>".
type Thing string

// Things.
const (
	Growth  Thing = "growth"
	Loading Thing = "loading"
	Rejects Thing = "rejects"
)

// Proposal is a change of the shop's file that measured tubes speak for. It is made only when somebody accepts it. Where Why says something, it
// is not to be had, for that reason.
type Proposal struct {
	Thing   Thing
	Tubes   int            // that speak for it
	Was     message.Amount // in the file
	New     message.Amount
	Scatter message.Amount // half-width in which nineteen of twenty lie: tubes of growth, else the value itself
	Why     message.Message

	path  string // of the value, or of the list that gets an item a tube
	note  string // path of the remark that keeps the old value
	items []shop.Measured
}

// Learn says what the tubes of a planned order propose. It proposes what the shop needs, takes or loses, and never a limit, a tolerance or a
// rule: those are nobody's to learn.
func Learn(c *shop.Capability, p *making.Plan, tubes []Tube, n Counted) []Proposal {
	line := slices.IndexFunc(c.Lines, func(l shop.Line) bool { return l.Name == p.Line.Name })
	at := "lines/" + strconv.Itoa(line)
	var out []Proposal
	for _, one := range []Proposal{growth(c, p, tubes), loading(p, tubes, at), rejects(c, n)} {
		if one.Tubes >= Least && one.New != one.Was {
			out = append(out, one)
		}
	}
	return out
}

// growth is learned by the list of measured tubes, to which these are put; the guess stays in the file. A wider scatter is not taken: the check of
// where the fins end would let more pass by it.
func growth(c *shop.Capability, p *making.Plan, tubes []Tube) Proposal {
	g := &p.Programme.Growth
	out := Proposal{Thing: Growth, Was: percent(g.Share), path: "measured"}
	for _, t := range tubes {
		if t[Cut].Known && t[Finished].Known {
			out.items = append(out.items, shop.Measured{Type: p.Practice.Type, Cut: units.Length(t[Cut].SI), Finned: p.Programme.Finned(), Finished: units.Length(t[Finished].SI)})
		}
	}
	if out.Tubes = len(out.items); out.Tubes < Least {
		return out
	}
	share, scatter := making.FitGrowth(append(slices.Clip(c.Measured), out.items...), p.Practice.Type)
	out.New, out.Scatter = percent(share), percent(scatter)
	if scatter > g.Scatter {
		out.Why = message.New("floor.scatters", "scatter", percent(scatter), "allowed", percent(g.Scatter))
	}
	return out
}

// loading is the time beside the winding, which follows from speeds: what the tubes took longer than planned goes to it, and what they took less.
func loading(p *making.Plan, tubes []Tube, line string) Proposal {
	out := Proposal{Thing: Loading, path: line + "/times/load", note: line + "/note"}
	if p.Time == nil {
		return out
	}
	planned := p.Time.Tube
	out.Was = message.Of(units.Time, planned.Load)
	var took []float64
	for _, t := range tubes {
		if t[Took].Known {
			took = append(took, t[Took].SI)
		}
	}
	if out.Tubes = len(took); out.Tubes < Least {
		return out
	}
	mean, half := meanOf(took)
	load := float64(planned.Load) + mean - float64(planned.Total())
	out.New, out.Scatter = message.Of(units.Time, units.Duration(load)), message.Of(units.Time, units.Duration(half))
	if load < 1 {
		out.Why = message.New("floor.faster", "took", message.Of(units.Time, units.Duration(mean)), "runs", message.Of(units.Time, planned.Total()-planned.Load))
	}
	return out
}

// mostRejects is what a shop's file may say of it [-].
const mostRejects = 0.5

// rejects is the share of tubes that come to nothing.
func rejects(c *shop.Capability, n Counted) Proposal {
	out := Proposal{Thing: Rejects, Tubes: n.made(), Was: percent(c.Losses.Rejects), path: "losses/rejects", note: "losses/note"}
	if out.Tubes < Least {
		return out
	}
	share := float64(n.Scrapped+n.Rejected) / float64(out.Tubes)
	out.New, out.Scatter = percent(share), percent(wilson(share, float64(out.Tubes)))
	if share > mostRejects {
		out.Why = message.New("floor.most_rejected", "most", percent(mostRejects))
	}
	return out
}

func percent(x float64) message.Amount { return message.Amount{Kind: units.Percent, SI: x} }

// meanOf returns the mean and the half-width in which it lies with 95 %.
//
// Valid: two values or more.
// Source: Student's t.
func meanOf(list []float64) (mean, half float64) {
	n := float64(len(list))
	for _, x := range list {
		mean += x / n
	}
	var rest float64
	for _, x := range list {
		rest += (x - mean) * (x - mean)
	}
	return mean, making.Student95(len(list)-1) * math.Sqrt(rest/(n-1)/n)
}

// wilson returns the half-width of the interval in which a share [-] of n lies with 95 %.
//
//	z sqrt(p (1 - p)/n + z2/(4 n2)) / (1 + z2/n)
//
// Valid: 0 <= share <= 1, n > 0.
// Source: Wilson, J. Amer. Statist. Assoc. 22 (1927) 209, from memory.
func wilson(share, n float64) float64 {
	const z = 1.959964
	return z * math.Sqrt(share*(1-share)/n+z*z/(4*n*n)) / (1 + z*z/n)
}

// Accept makes the change in the shop's file. told is the remark that keeps the old value, with who answers for the new one; it goes before what is
// remarked there already. Faults mean that the file stays as it is.
func (p *Proposal) Accept(c shop.Capability, told string) (shop.Capability, []shop.Fault) {
	plain := func(k units.Kind, si float64) string { return units.Plain.Echo(k, si, units.SI) }
	if p.items == nil {
		note := told
		for _, l := range c.Places() {
			if l.Path == p.note && l.Text != "" {
				note += "\n" + l.Text
			}
		}
		return c.Enter([]shop.Entered{{Path: p.path, Text: plain(p.New.Kind, p.New.SI)}, {Path: p.note, Text: cut(note)}})
	}
	for _, m := range p.items {
		item := map[string]string{"type": string(m.Type), "cut": metres(m.Cut), "finned": metres(m.Finned), "finished": metres(m.Finished), "note": cut(told)}
		var faults []shop.Fault
		text, err := json.Marshal(item)
		if err != nil {
			panic("floor: " + err.Error()) // texts alone
		}
		if c, faults = c.Add(p.path, string(text)); faults != nil {
			return c, faults
		}
	}
	return c, nil
}

// longest remark that is written [letters].
const longest = 1800

func cut(text string) string {
	if letters := []rune(text); len(letters) > longest {
		return string(letters[:longest]) + "…"
	}
	return text
}

func metres(l units.Length) string { return strconv.FormatFloat(float64(l), 'f', -1, 64) + " m" }
