package rating

import (
	"math"
	"sync/atomic"
	"testing"

	"finwright/core/airside"
	"finwright/core/proof"
)

// inAnyGas is a bank in another gas, which may be the hotter.
func inAnyGas(c *proof.Case) Input {
	in := anyBank(c)
	if c.Rand.IntN(3) == 0 {
		in = anyOil(c)
	}
	pair := c.Rand.IntN(3) // methods by rule, or any
	if pair > 0 {
		in.Air.FilmMethod = airside.FilmMethods[c.Rand.IntN(len(airside.FilmMethods))].ID
		in.Air.DropMethod = airside.DropMethods[c.Rand.IntN(len(airside.DropMethods))].ID
	}
	switch c.Rand.IntN(4) {
	case 0:
		in.Air.Kind = DryAir
	case 1:
		in.Air.Kind, in.Air.Flue = FlueGas, Flue{CO2: 0.083, H2O: 0.162, O2: 0.031, N2: 0.724}
		in.Air.In = in.Process.In * 3
	}
	in.Air.Metal.Stated = c.Rand.IntN(2) == 0
	in.Air.Fan = Fan{Efficiency: 0.6, Entry: 0.3, Induced: c.Rand.IntN(2) == 0}
	return in
}

// No bank carries more, has more of U A, a lower drop or a weaker fan than the reach of its kind, and none of a kind that is beyond
// its correlations is within them.
func TestNoBankPassesItsReach(t *testing.T) {
	var bounded, close atomic.Int64
	count := proof.Proof{Share: 300, Full: 100_000, Seed: 61}.Run(t, func(c *proof.Case) {
		in := inAnyGas(c)
		th, hindered := RateBriefly(&in)
		b, ok := in.Scope()
		if hindered != nil || !ok {
			return
		}
		bounded.Add(1)
		r := b.Reach(&in)
		ua, heat := r.Transfer(&in)
		has, carries := th.Overall.OnBare*th.Bank.BareArea(), math.Abs(th.Duty.Heat)
		if has > ua || carries > heat {
			c.Errorf("U A of %g and %g W, at most %g and %g", has, carries, ua, heat)
		}
		if carries > 0.8*heat {
			close.Add(1)
		}
		within := (in.Air.FilmGiven || th.UsedFilm.InRange) && (!th.HasDrop() || th.UsedDrop.InRange)
		if r.Beyond && within {
			c.Error("within the correlations, and said to be beyond")
		}
		if !th.HasDrop() {
			return
		}
		if drop, power := in.DropJudged(&th), th.Draught(&in).Power; drop < r.Drop || power < r.FacePower*th.Bank.FaceArea() || in.Air.Kind != FlueGas && r.Drop < 0.5*th.UsedDrop.Answer.Total {
			c.Errorf("%g Pa and %g W, at least %g and %g", drop, power, r.Drop, r.FacePower*th.Bank.FaceArea())
		}
	})
	if n, near := int(bounded.Load()), int(close.Load()); n < count/2 || near < n/10 {
		t.Errorf("%d of %d banks have a reach, %d come near to it", n, count, near)
	}
}

// Film, drop and heat capacity go with no higher power of a temperature than what a reach allows between two states.
func TestNoGasPassesItsSlack(t *testing.T) {
	proof.Proof{Share: 100, Full: 20_000, Seed: 62}.Run(t, func(c *proof.Case) {
		in := inAnyGas(c)
		g, err := in.gas()
		if err != nil || g.kind == MoistAir && in.Process.In < in.Air.In {
			return
		}
		low, high := float64(min(in.Process.In, in.Air.In)), float64(max(in.Process.In, in.Air.In))
		at, root := low+(high-low)*c.Rand.Float64(), low+(high-low)*c.Rand.Float64()
		const step = 0.01 // [K]
		ask := func(at, root float64) (logs [3]float64, ok bool) {
			p, err := g.at(at)
			wall, cannot := g.at(root)
			if err != nil || cannot != nil {
				return logs, false
			}
			x := airside.Cross(in.Pitches(), airside.Flow{Properties: p, FaceMassVelocity: g.flux(&in.Air), WallPrandtl: wall.Prandtl(), TemperatureRatio: (at + zeroCelsius) / (root + zeroCelsius)})
			pair := in.Pair()
			logs[0], logs[2] = math.Log(airside.FilmMethods[pair.Film].Compute(&x).Coefficient), math.Log(p.HeatCapacity)
			if pair.HasDrop() {
				logs[1] = math.Log(airside.DropMethods[pair.Drop].Compute(&x).Total)
			}
			return logs, true
		}
		here, ok := ask(at, root)
		warmer, okGas := ask(at+step, root)
		other, okRoot := ask(at, root+step)
		if !ok || !okGas || !okRoot {
			return
		}
		for i, most := range [3][2]float64{{steepestFilm, steepestRoot}, {steepestDrop, steepestRoot}, {steepestHeat, 0}} {
			byGas := math.Abs(warmer[i]-here[i]) * (at + zeroCelsius) / step
			byRoot := math.Abs(other[i]-here[i]) * (root + zeroCelsius) / step
			if byGas > most[0] || byRoot > most[1] {
				c.Errorf("number %d goes with powers of %.2f and %.2f of the gas's and the root's temperature", i, byGas, byRoot)
			}
		}
	})
}
