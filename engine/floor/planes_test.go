package floor

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// evenGround is a deck with one least depth everywhere.
func evenGround(least float64, points []Point, heights []float64) Ground {
	g := Ground{Points: points, Heights: heights}
	for range points {
		g.Least = append(g.Least, least)
	}
	return g
}

// randomGround is a floor of n readings over a random room, tilted, bumped, sometimes in whole millimetres on a whole grid, where ties abound.
func randomGround(rng *rand.Rand, n int) (Ground, Point) {
	w, d := 1+9*rng.Float64(), 1+9*rng.Float64()
	a, b := 0.01*rng.NormFloat64(), 0.01*rng.NormFloat64()
	whole := rng.Intn(3) == 0
	var g Ground
	for i := 0; i < n; i++ {
		p := Point{w * rng.Float64(), d * rng.Float64()}
		if whole {
			p = Point{math.Round(p.X), math.Round(p.Y)}
		}
		z := a*p.X + b*p.Y + 0.004*rng.NormFloat64()
		if whole {
			z = math.Round(z*500) / 500
		}
		g.Points, g.Heights = append(g.Points, p), append(g.Heights, z)
		g.Least = append(g.Least, []float64{0.003, 0.01}[rng.Intn(2)])
	}
	return g, Point{w * (0.3 + 0.4*rng.Float64()), d * (0.3 + 0.4*rng.Float64())}
}

func assertLevel(t *testing.T, height float64, f Finish) {
	t.Helper()
	assert.Zero(t, f.Slope)
	assert.InDelta(t, height, f.Plane.C, 1e-15)
}

func TestALevelPlaneStandsOverTheHighestGroundByItsLeastDepth(t *testing.T) {
	g := Ground{Points: []Point{{0, 0}, {1, 0}, {0, 1}}, Heights: []float64{0.010, 0.012, 0.002}, Least: []float64{0.006, 0.003, 0.003}}
	f, err := LevelOver(g)
	require.NoError(t, err)
	assert.InDelta(t, 0.016, f.Plane.C, 1e-15, "10 mm of deck that asks for 6 mm stands over 12 mm that asks for 3 mm")
	assert.Equal(t, []int{0}, f.Carriers)
	assert.Zero(t, f.Slope)
	assert.Equal(t, -1, f.ShortAt)
}

func TestThePlaneOfLeastVolumeOverATiltedDeckFollowsIt(t *testing.T) {
	g := evenGround(0.005, []Point{{0, 0}, {4, 0}, {4, 3}, {0, 3}, {2, 1.5}}, []float64{0, 0.02, 0.02, 0, 0.002})
	f, err := LeastVolume(g, 0.01, Point{2, 1.5})
	require.NoError(t, err)
	assert.InDelta(t, 0.005, f.Plane.A, 1e-12, "20 mm in 4 m")
	assert.InDelta(t, 0, f.Plane.B, 1e-12)
	assert.InDelta(t, 0.005, f.Plane.C, 1e-12)

	capped, err := LeastVolume(g, 0.002, Point{2, 1.5})
	require.NoError(t, err)
	assert.InDelta(t, 0.002, capped.Slope, 1e-12, "the slope limit holds")
	assert.InDelta(t, 0.025, capped.Plane.At(Point{4, 0}), 1e-9, "and the plane stands on the high wall")
}

func TestWhereALevelPlaneNeedsNoMoreThePlaneIsLevel(t *testing.T) {
	saddle := evenGround(0.003, []Point{{0, 0}, {2, 0}, {2, 2}, {0, 2}}, []float64{0.01, 0, 0.01, 0})
	f, err := LeastVolume(saddle, 0.02, Point{1, 1})
	require.NoError(t, err)
	assertLevel(t, 0.013, f)
}

func TestFewReadingsGiveOnlyTheTiltTheySpeakFor(t *testing.T) {
	middle := Point{1, 1}
	one, err := LeastVolume(evenGround(0.003, []Point{{0, 0}}, []float64{0.01}), 0.02, middle)
	require.NoError(t, err)
	assertLevel(t, 0.013, one)

	twice, err := LeastVolume(evenGround(0.003, []Point{{0, 0}, {0, 0}}, []float64{0.01, 0.012}), 0.02, middle)
	require.NoError(t, err)
	assertLevel(t, 0.015, twice) // two readings of one spot: the higher counts

	line, err := LeastVolume(evenGround(0.003, []Point{{0, 0}, {1, 0}, {2, 0}}, []float64{0, 0.001, 0.02}), 0.02, middle)
	require.NoError(t, err)
	assert.InDelta(t, 0.01, line.Plane.A, 1e-12)
	assert.InDelta(t, 0, line.Plane.B, 1e-12, "nothing is known across the line")
	assert.Equal(t, []int{0, 2}, line.Carriers)
}

func TestADoorsHeightIsMetAndALevelPlaneThroughItMaySinkIntoTheDeck(t *testing.T) {
	g := evenGround(0.003, []Point{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, []float64{0, 0.01, 0.01, 0})
	door := Point{0, 2}
	level, err := ThroughPoint(g, 0, Point{2, 2}, door, 0.020)
	require.NoError(t, err)
	assertLevel(t, 0.020, level)
	assert.Zero(t, level.Shortfall)
	assert.Empty(t, level.Carriers)

	low, err := ThroughPoint(g, 0, Point{2, 2}, door, 0.008)
	require.NoError(t, err)
	assertLevel(t, 0.008, low)
	assert.InDelta(t, 0.005, low.Shortfall, 1e-12, "13 mm is needed over the high wall")

	tilted, err := ThroughPoint(g, 0.01, Point{2, 2}, door, 0.003)
	require.NoError(t, err)
	assert.InDelta(t, 0.0025, tilted.Plane.A, 1e-8, "a tilt meets the door and clears the high wall")
	assert.Zero(t, tilted.Shortfall)
	assert.Equal(t, -1, tilted.ShortAt)
}

func TestAPlaneByHandFallsWhereItIsTold(t *testing.T) {
	g := evenGround(0.003, []Point{{0, 0}, {4, 0}}, []float64{0, 0})
	f, err := ByHand(g, Point{0, 0}, 0.05, 0.01, Point{3, 4})
	require.NoError(t, err)
	assert.InDelta(t, 0, f.Plane.At(Point{3, 4}), 1e-15, "1 % over 5 m is 50 mm")
	assert.InDelta(t, 0.01, f.Slope, 1e-15)

	level, err := ByHand(g, Point{1, 1}, 0.05, 0, Point{1, 1})
	require.NoError(t, err)
	assertLevel(t, 0.05, level)
}

func TestBadInputIsRefusedInWords(t *testing.T) {
	good := evenGround(0.003, []Point{{0, 0}}, []float64{0})
	bad := evenGround(0.003, []Point{{0, 0}}, []float64{math.NaN()})
	for name, call := range map[string]func() error{
		"no-readings":          func() error { _, err := LevelOver(Ground{}); return err },
		"readings-unequal":     func() error { _, err := LevelOver(Ground{Points: []Point{{0, 0}}}); return err },
		"reading-not-a-number": func() error { _, err := LeastVolume(bad, 0.01, Point{}); return err },
		"plane-slope":          func() error { _, err := LeastVolume(good, -0.01, Point{}); return err },
		"centroid":             func() error { _, err := LeastVolume(good, 0.01, Point{X: math.NaN()}); return err },
		"plane-height":         func() error { _, err := ThroughPoint(good, 0.01, Point{}, Point{}, math.Inf(1)); return err },
		"plane-direction":      func() error { _, err := ByHand(good, Point{}, 0, 0.01, Point{}); return err },
	} {
		var refused *Error
		require.ErrorAs(t, call(), &refused, name)
		assert.Equal(t, name, refused.Code)
		assert.NotEmpty(t, refused.Remedy)
	}
}

func TestThePlaneOfLeastVolumeIsSeidels(t *testing.T) {
	rng := rand.New(rand.NewSource(1))
	for floor := 0; floor < 2000; floor++ {
		g, centroid := randomGround(rng, 3+rng.Intn(60))
		limit := []float64{0.002, 0.005, 0.02, 0.2}[rng.Intn(4)]
		if g.spread().rank < 2 {
			continue
		}
		f, err := LeastVolume(g, limit, centroid)
		require.NoError(t, err)
		assert.LessOrEqual(t, f.Slope, limit*(1+1e-12), "floor %d", floor)
		assert.Zero(t, f.Shortfall, "floor %d", floor)
		lower, ok := seidelHeight(g, limit, centroid, 96, false, nil, rng)
		require.True(t, ok)
		higher, ok := seidelHeight(g, limit, centroid, 96, true, nil, rng)
		require.True(t, ok)
		got := f.Plane.At(centroid)
		assert.GreaterOrEqual(t, got, lower-1e-9, "floor %d", floor)
		assert.LessOrEqual(t, got, higher+1e-9, "floor %d", floor)
	}
}

// The ground as the plan gives it: every corner of every clipped facet, most of them several times over, in a room with a nook.
func TestThePlaneOverClippedFacetsIsSeidels(t *testing.T) {
	rng := rand.New(rand.NewSource(12))
	room := Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 1.7}, {2.2, 1.7}, {2.2, 3}, {0, 3}}}
	for deck := 0; deck < 100; deck++ {
		s := meshed(4, 3, 2+rng.Intn(5), 2+rng.Intn(5), rng, roughDeck(rng))
		var g Ground
		for _, cell := range CellsOf(&s, RegionOf(room)) {
			for i, p := range cell.Corners {
				g.Points, g.Heights, g.Least = append(g.Points, p), append(g.Heights, cell.Heights[i]), append(g.Least, 0.003)
			}
		}
		f, err := LeastVolume(g, 0.01, room.Centroid())
		require.NoError(t, err)
		assert.Zero(t, f.Shortfall)
		lower, _ := seidelHeight(g, 0.01, room.Centroid(), 96, false, nil, rng)
		higher, _ := seidelHeight(g, 0.01, room.Centroid(), 96, true, nil, rng)
		assert.GreaterOrEqual(t, f.Plane.At(room.Centroid()), lower-1e-9, "deck %d", deck)
		assert.LessOrEqual(t, f.Plane.At(room.Centroid()), higher+1e-9, "deck %d", deck)
	}
}

func TestThePlaneThroughADoorIsSeidels(t *testing.T) {
	rng := rand.New(rand.NewSource(2))
	missed := 0
	for floor := 0; floor < 1000; floor++ {
		g, centroid := randomGround(rng, 3+rng.Intn(40))
		if g.spread().rank < 2 {
			continue
		}
		door := g.Points[rng.Intn(len(g.Points))]
		height := 0.01 + 0.02*rng.NormFloat64()
		f, err := ThroughPoint(g, 0.02, centroid, door, height)
		require.NoError(t, err)
		assert.InDelta(t, height, f.Plane.At(door), 1e-9)
		pin := &pinned{door, height}
		lower, fitsOutside := seidelHeight(g, 0.02, centroid, 96, false, pin, rng)
		higher, fitsInside := seidelHeight(g, 0.02, centroid, 96, true, pin, rng)
		if f.Shortfall > 0 {
			missed++
			assert.False(t, fitsInside, "floor %d misses by %v though a plane fits", floor, f.Shortfall)
			continue
		}
		assert.True(t, fitsOutside, "floor %d", floor)
		got := f.Plane.At(centroid)
		assert.GreaterOrEqual(t, got, lower-1e-8, "floor %d", floor)
		if fitsInside {
			assert.LessOrEqual(t, got, higher+1e-8, "floor %d", floor)
		}
	}
	assert.Greater(t, missed, 50, "both kinds of door were met")
}

func TestTheCarriersHoldThePlaneUp(t *testing.T) {
	rng := rand.New(rand.NewSource(3))
	for floor := 0; floor < 500; floor++ {
		g, centroid := randomGround(rng, 4+rng.Intn(50))
		f, err := LeastVolume(g, 0.02, centroid)
		require.NoError(t, err)
		require.NotEmpty(t, f.Carriers)
		var alone Ground
		for _, i := range f.Carriers {
			assert.InDelta(t, g.target(i), f.Plane.At(g.Points[i]), 1e-4)
			alone.Points, alone.Heights, alone.Least = append(alone.Points, g.Points[i]), append(alone.Heights, g.Heights[i]), append(alone.Least, g.Least[i])
		}
		if len(f.Carriers) == 3 && alone.spread().rank == 2 {
			again, err := LeastVolume(alone, 0.02, centroid)
			require.NoError(t, err)
			assert.InDelta(t, f.Plane.At(centroid), again.Plane.At(centroid), 1e-8, "three carriers alone give the same volume")
		}
	}
}

func TestFallIsTheGreatestAcrossTheRoom(t *testing.T) {
	room := Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 3}, {0, 3}}}
	d := Fall(Plane{A: 0.003, B: 0.004}, room)
	assert.InDelta(t, 0.024, d.Fall, 1e-12)
	assert.Equal(t, Point{4, 3}, d.From)
	assert.Equal(t, Point{0, 0}, d.To)
	assert.Zero(t, Fall(Plane{C: 1}, room).Fall)
}

func FuzzThePlaneOfLeastVolumeKeepsEveryLeastDepth(f *testing.F) {
	f.Add(int64(1), 3, 0.01)
	f.Add(int64(7), 2000, 0.0)
	f.Add(int64(9), 1, 1e-9)
	f.Fuzz(func(t *testing.T, seed int64, n int, limit float64) {
		if n < 1 || n > 3000 || !(limit >= 0 && limit < 10) {
			return
		}
		g, centroid := randomGround(rand.New(rand.NewSource(seed)), n)
		finish, err := LeastVolume(g, limit, centroid)
		require.NoError(t, err)
		level, err := LevelOver(g)
		require.NoError(t, err)
		assert.Zero(t, finish.Shortfall)
		assert.LessOrEqual(t, finish.Slope, limit*(1+1e-12))
		assert.LessOrEqual(t, finish.Plane.At(g.spread().place(centroid)), level.Plane.C+1e-9, "never more than level")
	})
}

func BenchmarkLeastVolume(b *testing.B) {
	for _, n := range []int{200, 2000, 20000} {
		g, centroid := randomGround(rand.New(rand.NewSource(5)), n)
		b.Run(map[int]string{200: "200", 2000: "2000", 20000: "20000"}[n], func(b *testing.B) {
			for i := 0; i < b.N; i++ {
				if _, err := LeastVolume(g, 0.02, centroid); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
