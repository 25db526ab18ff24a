package survey

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func TestAMistypedReadingIsFound(t *testing.T) {
	for _, c := range []struct {
		name     string
		readings int
		off      float64
	}{
		{"100 mm off among eight", 8, 0.1},
		{"100 mm off among fifteen", 15, 0.1},
		{"two digits swapped, 63 mm, among thirty", 30, 0.063},
		{"36 mm too low among thirty", 30, -0.036},
		{"27 mm among a hundred", 100, 0.027},
		{"50 mm among five hundred", 500, 0.05},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := rand.New(rand.NewSource(21))
			for range 10 {
				points, heights := deckSeen(r, c.readings, 0.004, 1.5, 0.001)
				wrong := r.Intn(c.readings)
				was := heights[wrong]
				heights[wrong] += c.off
				suspects := fitted(t, points, heights, 0.001).Suspects()
				require.NotEmpty(t, suspects)
				assert.Equal(t, wrong, suspects[0].Reading)
				assert.Equal(t, heights[wrong], suspects[0].Height)
				assert.InDelta(t, was, suspects[0].Expected, math.Abs(c.off)/3)
				assert.InDelta(t, heights[wrong]-suspects[0].Expected, suspects[0].Off, 1e-12)
			}
		})
	}
}

func TestTwoMistypedReadingsAreBothFound(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(22)), 24, 0.004, 1.5, 0.001)
	heights[3] += 0.1
	heights[17] -= 0.054
	var found []int
	for _, s := range fitted(t, points, heights, 0.001).Suspects() {
		found = append(found, s.Reading)
	}
	assert.ElementsMatch(t, []int{3, 17}, found)
}

func TestSoundReadingsAreSeldomSuspected(t *testing.T) {
	r := rand.New(rand.NewSource(23))
	const decks = 100
	for _, n := range []int{6, 8, 15, 30} {
		wrongly := 0
		for range decks {
			points, heights := deckSeen(r, n, 0.004, 1.5, 0.001)
			if len(fitted(t, points, heights, 0.001).Suspects()) > 0 {
				wrongly++
			}
		}
		t.Logf("%d readings: %d %% of sound surveys have a suspect", n, wrongly)
		assert.LessOrEqual(t, wrongly, 5)
	}
}

func TestARoughDeckIsNotAllSuspect(t *testing.T) {
	r := rand.New(rand.NewSource(24))
	points, heights := deckSeen(r, 400, 0.004, 1.5, 0.004) // stated as 1 mm
	assert.LessOrEqual(t, len(fitted(t, points, heights, 0.001).Suspects()), 4, "one in a hundred")
}

func TestTooFewReadingsToSuspectOne(t *testing.T) {
	points, heights := deckSeen(rand.New(rand.NewSource(25)), leastOthers, 0.004, 1.5, 0.001)
	heights[0] += 1
	assert.Empty(t, fitted(t, points, heights, 0.001).Suspects())
}

func TestLeavingOutShowsWhatItChanges(t *testing.T) {
	points := []floor.Point{spot(1, 1), spot(2, 2), spot(3, 3)}
	p, h := Without(points, []float64{1, 2, 3}, 1, 9, -1)
	assert.Equal(t, []floor.Point{spot(1, 1), spot(3, 3)}, p)
	assert.Equal(t, []float64{1, 3}, h)
}

// The closed form against leaving out one reading after another.
func TestLeaveOneOutIsTheModelWithoutTheReading(t *testing.T) {
	for _, n := range []int{4, 9, 25} {
		points, heights := deckSeen(rand.New(rand.NewSource(26)), n, 0.004, 1.5, 0.001)
		c := CovarianceOf(Matern32, 0.004, 1.5)
		noise := noiseOf(points, 0.001)
		sloped := slopes(points)
		s, err := Solve(points, heights, noise, c, sloped)
		require.NoError(t, err)
		off, deviation := s.LeaveOneOut()
		for i := range points {
			p, h := Without(points, heights, i)
			rest, err := Solve(p, h, noise[1:], c, sloped)
			require.NoError(t, err)
			height, variance := rest.Estimate(points[i])
			assert.InDelta(t, heights[i]-height, off[i], 1e-12)
			assert.InDelta(t, math.Sqrt(variance+noise[i]), deviation[i], 1e-12)
		}
	}
}
