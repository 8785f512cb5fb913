package ink

import "math"

// Closed repeats the first point at the end, which makes a loop a polyline.
func Closed(loop []Point) []Point { return append(loop[:len(loop):len(loop)], loop[0]) }

// Between returns the point that is a share f of the way from a to b.
func Between(a, b Point, f float64) Point { return Point{a.X + f*(b.X-a.X), a.Y + f*(b.Y-a.Y)} }

// Area returns the signed area of a loop.
func Area(loop []Point) float64 {
	sum := 0.0
	for i, p := range loop {
		q := loop[(i+1)%len(loop)]
		sum += p.X*q.Y - q.X*p.Y
	}
	return sum / 2
}

// Distance returns how far two points lie apart. It does without Hypot, whose care for overflow costs time.
func Distance(p, q Point) float64 { return math.Sqrt((q.X-p.X)*(q.X-p.X) + (q.Y-p.Y)*(q.Y-p.Y)) }

// Length returns how long a path is.
func Length(p []Point) float64 {
	sum := 0.0
	for i := 0; i+1 < len(p); i++ {
		sum += Distance(p[i], p[i+1])
	}
	return sum
}
