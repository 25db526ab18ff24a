package survey

import (
	"math"
	"math/rand"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

var room = floor.Outline{Outer: floor.Rectangle(8, 5)}

// lShaped has an arm and a keep-out, and stands askew.
var lShaped = turnedOutline(floor.Outline{
	Outer: floor.Ring{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 2.5}, {X: 2.5, Y: 2.5}, {X: 2.5, Y: 5}, {X: 0, Y: 5}},
	Holes: []floor.Ring{{{X: 1, Y: 1}, {X: 2, Y: 1}, {X: 2, Y: 2}, {X: 1, Y: 2}}},
}, 0.3)

func turnedSpot(p floor.Point, angle float64) floor.Point {
	c, s := math.Cos(angle), math.Sin(angle)
	return floor.Point{X: c*p.X - s*p.Y, Y: s*p.X + c*p.Y}
}

func turnedOutline(o floor.Outline, angle float64) floor.Outline {
	turn := func(r floor.Ring) floor.Ring {
		turned := make(floor.Ring, len(r))
		for i, p := range r {
			turned[i] = turnedSpot(p, angle)
		}
		return turned
	}
	turned := floor.Outline{Outer: turn(o.Outer)}
	for _, hole := range o.Holes {
		turned.Holes = append(turned.Holes, turn(hole))
	}
	return turned
}

// imagined draws whole decks as the readings leave them possible, and adds up each one's volume: the oracle for mean and deviation. Draws
// come from the joint distribution of the heights on a grid of its own. Of n draws the deviation is known to 1 in √(2n).
func imagined(r *rand.Rand, s *System, o floor.Outline, plane floor.Plane, draws int) (mean, deviation float64) {
	var spots []floor.Point
	low, high := floor.Bounds(o.Outer)
	const step = 0.23
	for y := low.Y + step/2; y < high.Y; y += step {
		for x := low.X + step/2; x < high.X; x += step {
			if o.Contains(spot(x, y)) {
				spots = append(spots, spot(x, y))
			}
		}
	}
	n := len(spots)
	views, depths := make([]view, n), make([]float64, n)
	matrix := make([]float64, n*n)
	for i, p := range spots {
		views[i] = s.viewOf(s.factor.forward(s.seenFrom(p)), s.trend.at(p))
		depths[i] = plane.At(p) - s.Height(p)
		for j := range i + 1 {
			matrix[i*n+j] = s.covariance(floor.Distance(p, spots[j])) + s.shared(&views[i], &views[j])
		}
	}
	f, ok := factorFirmly(matrix, n)
	if !ok {
		panic("no covariance")
	}
	area := o.Area() / float64(n)
	white, sum, squares := make([]float64, n), 0.0, 0.0
	for range draws {
		for i := range white {
			white[i] = r.NormFloat64()
		}
		volume := 0.0
		for i, depth := range depths {
			volume += area * math.Max(0, depth-dot(f.row(i), white[:i+1]))
		}
		sum += volume
		squares += volume * volume
	}
	mean = sum / float64(draws)
	return mean, math.Sqrt(squares/float64(draws) - mean*mean)
}

// Monte Carlo error of a deviation from 2,500 draws is 1.4 %; three of them, and 1.5 % for the two grids.
func TestVolumeAndItsDoubtAgreeWithImaginedDecks(t *testing.T) {
	const draws, within = 2500, 3*0.0142 + 0.015
	for _, c := range []struct {
		name     string
		outline  floor.Outline
		readings int
		plane    float64 // above the mean reading
	}{
		{"all below the plane", room, 12, 0.040},
		{"few readings", room, 4, 0.030},
		{"one reading", room, 1, 0.015},
		{"some ground at the plane", room, 12, 0.008},
		{"half the ground above the plane", room, 12, 0},
		{"most of the ground above the plane", room, 20, -0.006},
		{"an arm and a keep-out", lShaped, 15, 0.010},
		{"more than are used for one spot", room, 60, 0.006},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := rand.New(rand.NewSource(7))
			points, heights := deckSeen(r, c.readings, 0.004, 1.2, 0.001)
			m, err := Fit(points, heights, 0.001, Options{Unevenness: 0.004, Reach: 1.2})
			require.NoError(t, err)
			plane := floor.Plane{C: mean(heights) + c.plane}
			v, err := VolumeOf(m, c.outline, plane)
			require.NoError(t, err)
			volume, deviation := imagined(r, m.whole(), c.outline, plane, draws)
			assert.InDelta(t, volume, v.Mean, 4*deviation/math.Sqrt(draws)+0.01*volume)
			assert.InEpsilon(t, deviation, v.Deviation, within)
		})
	}
}

func TestGroundFarBelowThePlaneNeedsNoBend(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(3)), 15, 0.004, 1.2, 0.001)
	m := fitted(t, points, heights, 0.001)
	v, err := VolumeOf(m, room, floor.Plane{C: 0.2})
	require.NoError(t, err)
	deeper, err := VolumeOf(m, room, floor.Plane{C: 0.3})
	require.NoError(t, err)
	assert.Zero(t, v.bends)
	assert.Zero(t, v.Proud)
	assert.InDelta(t, v.Mean+0.1*40, deeper.Mean, 1e-9, "0.1 m over 40 m²")
	assert.InDelta(t, v.Deviation, deeper.Deviation, 1e-12)
}

func TestFinerCellsChangeLittle(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(5)), 25, 0.004, 0.8, 0.001)
	m := fitted(t, points, heights, 0.001)
	for _, plane := range []float64{0.05, 0.02} {
		coarse, err := volumeOver(m, lShaped, floor.Plane{C: plane}, volumeCells)
		require.NoError(t, err)
		fine, err := volumeOver(m, lShaped, floor.Plane{C: plane}, 4*volumeCells)
		require.NoError(t, err)
		assert.InEpsilon(t, fine.Mean, coarse.Mean, 0.002)
		assert.InEpsilon(t, fine.Deviation, coarse.Deviation, 0.01)
	}
}

func TestMergedReadingsTellNearlyAsMuch(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(6)), 700, 0.004, 1.2, 0.001)
	m := fitted(t, points, heights, 0.001)
	v, err := VolumeOf(m, room, floor.Plane{C: 0.06})
	require.NoError(t, err)
	m.whole = sync.OnceValue(func() *System { return mustSolve(points, heights, m.noise, m.covariance, m.Sloped) })
	all, err := VolumeOf(m, room, floor.Plane{C: 0.06})
	require.NoError(t, err)
	assert.InEpsilon(t, all.Mean, v.Mean, 0.001)
	assert.InEpsilon(t, all.Deviation, v.Deviation, 0.05)
}

func TestTurningAndShiftingTheRoomChangesNothing(t *testing.T) {
	const angle = 0.7
	shift := spot(310, -120)
	for _, n := range []int{1, 3, 7, 30, 90, 230} {
		points, heights := deckSeen(rand.New(rand.NewSource(int64(n))), n, 0.004, 1.2, 0.001)
		moved, raised := make([]floor.Point, n), make([]float64, n)
		move := func(p floor.Point) floor.Point {
			q := turnedSpot(p, angle)
			return spot(q.X+shift.X, q.Y+shift.Y)
		}
		for i, p := range points {
			moved[i], raised[i] = move(p), heights[i]+20
		}
		outline := floor.Outline{Outer: floor.Ring{move(room.Outer[0]), move(room.Outer[1]), move(room.Outer[2]), move(room.Outer[3])}}
		before, after := fitted(t, points, heights, 0.001), fitted(t, moved, raised, 0.001)
		assert.InEpsilon(t, before.Unevenness, after.Unevenness, 1e-9)
		assert.InEpsilon(t, before.Reach, after.Reach, 1e-9)
		for _, p := range []floor.Point{spot(0, 0), spot(4.1, 2.2), spot(7.9, 5)} {
			assert.InDelta(t, before.At(p)+20, after.At(move(p)), 1e-9)
			assert.InDelta(t, before.Deviation(p), after.Deviation(move(p)), 1e-9)
		}
		a, err := VolumeOf(before, room, floor.Plane{C: 0.03})
		require.NoError(t, err)
		b, err := VolumeOf(after, outline, floor.Plane{C: 20.03})
		require.NoError(t, err)
		assert.InDelta(t, a.Mean, b.Mean, 1e-9)
		assert.InDelta(t, a.Deviation, b.Deviation, 1e-9)
	}
}

func TestTheStatedDoubtHoldsFromThreeReadingsUp(t *testing.T) {
	// The true volume lies within one deviation of the stated one in about two of three decks, within two in about nineteen of twenty; the fit
	// is from the readings alone, so a few more may fall outside.
	r := rand.New(rand.NewSource(11))
	const decks = 150
	var grid []floor.Point
	for x := 0.25; x < 8; x += 0.5 {
		for y := 0.25; y < 5; y += 0.5 {
			grid = append(grid, spot(x, y))
		}
	}
	for _, readings := range []int{3, 5, 8, 20} {
		one, two := 0, 0
		for range decks {
			points := append([]floor.Point{}, grid...)
			for range readings {
				points = append(points, spot(8*r.Float64(), 5*r.Float64()))
			}
			unevenness, reach := 0.004*math.Exp(0.5*r.NormFloat64()), 1.5*math.Exp(0.4*r.NormFloat64())
			heights := drawn(r, points, CovarianceOf(Matern32, unevenness, reach))
			truth := 0.0
			for _, h := range heights[:len(grid)] {
				truth += 0.25 * (0.2 - h)
			}
			seen := heights[len(grid):]
			for i := range seen {
				seen[i] += 0.001 * r.NormFloat64()
			}
			v, err := volumeOver(fitted(t, points[len(grid):], seen, 0.001), room, floor.Plane{C: 0.2}, 300)
			require.NoError(t, err)
			off := math.Abs(v.Mean-truth) / v.Deviation
			if off < 1 {
				one++
			}
			if off < 2 {
				two++
			}
		}
		t.Logf("%d readings: %.0f %% within one deviation, %.0f %% within two", readings, 100*float64(one)/decks, 100*float64(two)/decks)
		assert.InDelta(t, 0.68, float64(one)/decks, 0.15)
		assert.Greater(t, float64(two)/decks, 0.87)
	}
}

func TestAPlaneOrARoomThatCannotBeUsedIsRefused(t *testing.T) {
	m := fitted(t, []floor.Point{spot(1, 1)}, []float64{0}, 0.001)
	_, err := VolumeOf(m, room, floor.Plane{C: math.NaN()})
	var e *Error
	require.ErrorAs(t, err, &e)
	assert.Equal(t, "plane", e.Code)
	_, err = VolumeOf(m, floor.Outline{}, floor.Plane{})
	var outline *floor.Error
	require.ErrorAs(t, err, &outline)
	_, err = m.DoubtsOver(floor.Outline{}, 100)
	require.ErrorAs(t, err, &outline)
}
