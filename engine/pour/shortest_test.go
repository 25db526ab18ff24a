package pour

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// shortestWalk is the exact shortest path over the visibility graph of the outline's corners, by Dijkstra: the oracle for the marched distance.
func shortestWalk(outline floor.Outline, from, to floor.Point) float64 {
	nodes := append([]floor.Point{from, to}, outline.Outer...)
	for _, hole := range outline.Holes {
		nodes = append(nodes, hole...)
	}
	edges := edgesOf(outline)
	distance := make([]float64, len(nodes))
	for i := range distance {
		distance[i] = math.Inf(1)
	}
	distance[0] = 0
	done := make([]bool, len(nodes))
	for {
		at := -1
		for i, d := range distance {
			if !done[i] && (at < 0 || d < distance[at]) {
				at = i
			}
		}
		if at < 0 || at == 1 || math.IsInf(distance[at], 1) {
			return distance[1]
		}
		done[at] = true
		for i := range nodes {
			if d := distance[at] + apart(nodes[at], nodes[i]); !done[i] && d < distance[i] && inSight(outline, edges, nodes[at], nodes[i]) {
				distance[i] = d
			}
		}
	}
}

// inSight cuts the segment wherever it meets an edge and looks whether the middle of every piece is floor or wall line.
func inSight(outline floor.Outline, edges []edge, p, q floor.Point) bool {
	cuts := []float64{0, 1}
	for _, e := range edges {
		if turned := (q.X-p.X)*(e.b.Y-e.a.Y) - (q.Y-p.Y)*(e.b.X-e.a.X); turned != 0 {
			t := ((e.a.X-p.X)*(e.b.Y-e.a.Y) - (e.a.Y-p.Y)*(e.b.X-e.a.X)) / turned
			if t > 0 && t < 1 {
				cuts = append(cuts, t)
			}
		}
	}
	sortFloats(cuts)
	for i := 1; i < len(cuts); i++ {
		t := (cuts[i-1] + cuts[i]) / 2
		middle := floor.Point{X: p.X + t*(q.X-p.X), Y: p.Y + t*(q.Y-p.Y)}
		onWall := false
		for _, e := range edges {
			onWall = onWall || offEdge(e, middle) < 1e-9
		}
		if !onWall && !holds(outline, middle) {
			return false
		}
	}
	return true
}

func box(x, y, w, h float64) floor.Ring {
	return floor.Ring{{X: x, Y: y}, {X: x + w, Y: y}, {X: x + w, Y: y + h}, {X: x, Y: y + h}}
}

// corners makes a ring of x, y, x, y ...
func corners(xy ...float64) floor.Ring {
	ring := floor.Ring{}
	for i := 0; i < len(xy); i += 2 {
		ring = append(ring, floor.Point{X: xy[i], Y: xy[i+1]})
	}
	return ring
}

// testRoom is a room of the tests with its ways out.
type testRoom struct {
	name    string
	outline floor.Outline
	exits   []floor.Point
}

var testRooms = []testRoom{
	{"square with a door in a wall", floor.Outline{Outer: box(0, 0, 4, 4)}, []floor.Point{{X: 2, Y: 0}}},
	{"long room with a door in its long wall", floor.Outline{Outer: box(0, 0, 9, 4)}, []floor.Point{{X: 4.5, Y: 0}}},
	{"L", floor.Outline{Outer: corners(0, 0, 6, 0, 6, 2, 2, 2, 2, 5, 0, 5)}, []floor.Point{{X: 0, Y: 0.5}}},
	{"T with two arms", floor.Outline{Outer: corners(0, 3, 3, 3, 3, 0, 5, 0, 5, 3, 9, 3, 9, 5, 0, 5)}, []floor.Point{{X: 4, Y: 0}}},
	{"U", floor.Outline{Outer: corners(0, 0, 7, 0, 7, 6, 5, 6, 5, 2, 2, 2, 2, 6, 0, 6)}, []floor.Point{{X: 1, Y: 6}}},
	{"kitchen with an island", floor.Outline{Outer: box(0, 0, 6, 5), Holes: []floor.Ring{box(2, 1.8, 2, 1.2)}}, []floor.Point{{X: 3, Y: 0}}},
	{"two islands and a splayed wall", floor.Outline{Outer: corners(0, 0, 8, 0, 9, 3, 7, 6, 0, 6),
		Holes: []floor.Ring{box(1.5, 2, 1, 2), corners(4, 2, 6, 2.5, 5, 4)}}, []floor.Point{{X: 0, Y: 3}}},
	{"hall with a door at each end", floor.Outline{Outer: box(0, 0, 12, 3)}, []floor.Point{{X: 0, Y: 1.5}, {X: 12, Y: 1.5}}},
}

func TestDistanceGoesRoundCornersAndKeepOutsAsTheShortestWalkDoes(t *testing.T) {
	for _, room := range testRooms {
		t.Run(room.name, func(t *testing.T) {
			f, err := Walk(room.outline, room.exits, 0.025)
			require.NoError(t, err)
			area, _ := f.Unreached()
			assert.Zero(t, area)
			random := rand.New(rand.NewSource(1))
			low, high := bounds(room.outline.Outer)
			errors := []float64{}
			for len(errors) < 300 {
				p := floor.Point{X: low.X + random.Float64()*(high.X-low.X), Y: low.Y + random.Float64()*(high.Y-low.Y)}
				if !holds(room.outline, p) {
					continue
				}
				exact := math.Inf(1)
				for _, exit := range room.exits {
					exact = math.Min(exact, shortestWalk(room.outline, exit, p))
				}
				if exact < 0.3 {
					continue
				}
				errors = append(errors, math.Abs(f.At(p)-exact)/exact)
			}
			sortFloats(errors)
			// A first-order march is off most beside its sources and the corners it turns at; the order of the batches needs no better.
			assert.Less(t, errors[150], 0.01, "median")
			assert.Less(t, errors[299], 0.06, "worst")
		})
	}
}

func TestFloorThatNoWayLeadsToIsReported(t *testing.T) {
	barred := floor.Outline{Outer: box(0, 0, 6, 4), Holes: []floor.Ring{box(3, 0, 0.01, 4)}} // a partition thinner than the grid
	f, err := Walk(barred, []floor.Point{{X: 0, Y: 2}}, 0.025)
	require.NoError(t, err)
	area, at := f.Unreached()
	assert.InDelta(t, 11.96, area, 0.1)
	assert.Greater(t, at.X, 3.0)
	assert.True(t, math.IsInf(f.At(floor.Point{X: 5, Y: 2}), 1))
}

func TestAnExitOffTheFloorIsRefused(t *testing.T) {
	square := floor.Outline{Outer: box(0, 0, 4, 4)}
	_, err := Walk(square, []floor.Point{{X: 2, Y: -2}}, 0.05)
	assert.EqualError(t, err, "exit: (2 m, -2 m) lies off the floor; put it in a door of the outline")
	_, err = Walk(square, nil, 0.05)
	assert.ErrorContains(t, err, "mark the door")
	_, err = Walk(square, []floor.Point{{X: 2, Y: -0.1}}, 0.05)
	assert.NoError(t, err, "the middle of a door's thickness will do")
}

func BenchmarkWalk480By320(b *testing.B) {
	room := floor.Outline{Outer: box(0, 0, 12, 8)}
	for b.Loop() {
		if _, err := Walk(room, []floor.Point{{X: 3, Y: 0}}, 0.025); err != nil {
			b.Fatal(err)
		}
	}
}
