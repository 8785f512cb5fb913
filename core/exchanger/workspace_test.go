package exchanger

import (
	"math/rand/v2"
	"reflect"
	"testing"
)

// What lies in a workspace is given again to the same question alone, followed or not, and never grows.
func TestSameQuestionAgain(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 1))
	questions := []question{
		{Arrangement{Rows: 4, Passes: 2}, 1.2, 0.7},
		{Arrangement{Rows: 4, Passes: 2, Mixed: true}, 1.2, 0.7},
		{Arrangement{Rows: 4, Passes: 2}, 1.2, 90},
		{Arrangement{Rows: 30, Passes: 4}, 3, 1},
		{Arrangement{Rows: 1, Passes: 1}, 0.3, 0},
	}
	var used workspace
	most := 0
	for i := range 400 {
		q := questions[random.IntN(len(questions))]
		for range 1 + random.IntN(3) {
			var fresh workspace
			got, want := q.respond(&used, q.ntu, q.ratio), q.respond(&fresh, q.ntu, q.ratio)
			if random.IntN(2) == 0 {
				q.follow(&used, &got)
				q.follow(&fresh, &want)
			}
			if !reflect.DeepEqual(got, want) {
				t.Fatalf("%+v: %+v, at first %+v", q, got, want)
			}
		}
		if i == 100 {
			most = len(used.numbers)
		}
	}
	if len(used.numbers) > most {
		t.Errorf("grew from %d to %d numbers", most, len(used.numbers))
	}
}
