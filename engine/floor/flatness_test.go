package floor

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// meshed is a deck on a jittered grid of readings, every square cut in two; it covers width × depth from the origin.
func meshed(width, depth float64, columns, rows int, rng *rand.Rand, height func(Point) float64) Surface {
	var s Surface
	for j := 0; j <= rows; j++ {
		for i := 0; i <= columns; i++ {
			p := Point{width * float64(i) / float64(columns), depth * float64(j) / float64(rows)}
			if i > 0 && i < columns {
				p.X += 0.6 * (rng.Float64() - 0.5) * width / float64(columns)
			}
			if j > 0 && j < rows {
				p.Y += 0.6 * (rng.Float64() - 0.5) * depth / float64(rows)
			}
			s.Points, s.Heights = append(s.Points, p), append(s.Heights, height(p))
		}
	}
	for j := 0; j < rows; j++ {
		for i := 0; i < columns; i++ {
			a := j*(columns+1) + i
			b, c, d := a+1, a+columns+2, a+columns+1
			s.Triangles = append(s.Triangles, [3]int{a, b, c}, [3]int{a, c, d})
		}
	}
	return s
}

// heightAt looks a height up triangle by triangle, as no code under test does.
func heightAt(s Surface, p Point) float64 {
	for _, t := range s.Triangles {
		a, b, c := s.Points[t[0]], s.Points[t[1]], s.Points[t[2]]
		whole := (b.X-a.X)*(c.Y-a.Y) - (b.Y-a.Y)*(c.X-a.X)
		l := ((b.X-p.X)*(c.Y-p.Y) - (b.Y-p.Y)*(c.X-p.X)) / whole
		m := ((c.X-p.X)*(a.Y-p.Y) - (c.Y-p.Y)*(a.X-p.X)) / whole
		if n := 1 - l - m; l >= -1e-9 && m >= -1e-9 && n >= -1e-9 {
			return l*s.Heights[t[0]] + m*s.Heights[t[1]] + n*s.Heights[t[2]]
		}
	}
	return math.NaN()
}

// denseGap lays the edge in many directions on many lines, sample by sample. In each window it walks from support to support along the steepest next
// slope, which is the upper hull by another road.
func denseGap(s Surface, o Outline, length float64, directions int, step float64) float64 {
	low, high := Bounds(o.Outer)
	middle := Point{(low.X + high.X) / 2, (low.Y + high.Y) / 2}
	half := Distance(low, high) / 2
	worst := 0.0
	for k := 0; k < directions; k++ {
		x, y := math.Cos(math.Pi*float64(k)/float64(directions)), math.Sin(math.Pi*float64(k)/float64(directions))
		for aside := -half; aside <= half; aside += step {
			var line []float64
			for along := -half; along <= half+step; along += step {
				p := Point{middle.X + along*x - aside*y, middle.Y + along*y + aside*x}
				if along <= half && o.Contains(p) {
					line = append(line, heightAt(s, p))
					continue
				}
				worst = math.Max(worst, walkedGap(line, int(length/step+1e-9), step))
				line = line[:0]
			}
		}
	}
	return worst
}

func walkedGap(z []float64, window int, step float64) float64 {
	worst := 0.0
	for start := range z {
		end := min(start+window, len(z)-1)
		for p := start; p < end; {
			q, steepest := p+1, math.Inf(-1)
			for j := p + 1; j <= end; j++ {
				if slope := (z[j] - z[p]) / float64(j-p); slope >= steepest {
					q, steepest = j, slope
				}
			}
			for r := p + 1; r < q; r++ {
				worst = math.Max(worst, z[p]+steepest*float64(r-p)-z[r])
			}
			p = q
		}
	}
	return worst
}

func roughDeck(rng *rand.Rand) func(Point) float64 {
	a, b, phase := 0.01*rng.NormFloat64(), 0.01*rng.NormFloat64(), 6*rng.Float64()
	return func(p Point) float64 {
		return a*p.X + b*p.Y + 0.004*math.Sin(2*p.X+p.Y+phase) + 0.002*rng.NormFloat64()
	}
}

func TestAFlatFloorHasNoGapHoweverItTilts(t *testing.T) {
	room := Outline{Outer: Rectangle(4, 3)}
	deck := meshed(4, 3, 4, 3, rand.New(rand.NewSource(1)), func(p Point) float64 { return 0.02*p.X - 0.01*p.Y })
	gap, err := LargestGap(&deck, room, 2)
	require.NoError(t, err)
	assert.InDelta(t, 0, gap.Depth, 1e-12)
}

// A valley with sides of 1 % under a 2 m edge laid across it: 1 m × 1 % = 10 mm.
func TestAValleyShowsItsDepthUnderHalfTheEdge(t *testing.T) {
	deck := Surface{Points: []Point{{0, 0}, {2, 0}, {4, 0}, {0, 3}, {2, 3}, {4, 3}}, Heights: []float64{0.02, 0, 0.02, 0.02, 0, 0.02},
		Triangles: [][3]int{{0, 1, 4}, {0, 4, 3}, {1, 2, 5}, {1, 5, 4}}}
	for length, want := range map[float64]float64{2: 0.010, 0.15: 0.00075, 3: 0.015, 10: 0.020 * 1} {
		gap, err := LargestGap(&deck, Outline{Outer: Rectangle(4, 3)}, length)
		require.NoError(t, err)
		assert.InDelta(t, want, gap.Depth, want*1e-4, "%v m", length)
		assert.InDelta(t, 2, gap.At.X, 0.01)
		assert.LessOrEqual(t, Distance(gap.From, gap.To), length+1e-6)
	}
}

// The edge may not reach across the inner corner of an L, nor over a keep-out.
func TestTheEdgeStaysInsideTheRoom(t *testing.T) {
	corner := Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 4}, {0, 4}}}
	island := Outline{Outer: Rectangle(4, 4), Holes: []Ring{{{1, 1}, {3, 1}, {3, 3}, {1, 3}}}}
	for seed := int64(0); seed < 6; seed++ {
		rng := rand.New(rand.NewSource(seed))
		deck := meshed(4, 4, 8, 8, rng, roughDeck(rng))
		for _, room := range []Outline{corner, island} {
			gap, err := LargestGap(&deck, room, 2)
			require.NoError(t, err)
			for k := 0; k <= 100; k++ {
				share := 0.0005 + 0.999*float64(k)/100
				p := Point{gap.From.X + share*(gap.To.X-gap.From.X), gap.From.Y + share*(gap.To.Y-gap.From.Y)}
				assert.True(t, room.Outer.Contains(p), "seed %d: %v", seed, p)
				for _, hole := range room.Holes {
					inner := Ring{{1.000001, 1.000001}, {2.999999, 1.000001}, {2.999999, 2.999999}, {1.000001, 2.999999}}
					assert.False(t, inner.Contains(p), "seed %d: %v in %v", seed, p, hole)
				}
			}
			between := gap.Depth + heightAt(deck, gap.At)
			share := Distance(gap.From, gap.At) / Distance(gap.From, gap.To)
			assert.InDelta(t, between, heightAt(deck, gap.From)*(1-share)+heightAt(deck, gap.To)*share, 1e-9, "the gap is what the supports say")
		}
	}
}

func TestTheLargestGapReachesThatOfADenseSearch(t *testing.T) {
	for seed := int64(0); seed < 8; seed++ {
		rng := rand.New(rand.NewSource(100 + seed))
		width, depth := 1.5+2*rng.Float64(), 1.5+1.5*rng.Float64()
		deck := meshed(width, depth, 3+rng.Intn(5), 3+rng.Intn(4), rng, roughDeck(rng))
		room := Outline{Outer: Rectangle(width, depth)}
		if seed%2 == 1 {
			room.Outer = Ring{{0, 0}, {width, 0}, {width, depth / 2}, {width / 2, depth / 2}, {width / 2, depth}, {0, depth}}
		}
		length := []float64{0.6096, 1, 2, 3.048}[seed%4]
		gap, err := LargestGap(&deck, room, length)
		require.NoError(t, err)
		dense := denseGap(deck, room, length, 45, 0.04)
		assert.GreaterOrEqual(t, gap.Depth, 0.99*dense, "seed %d, %v m", seed, length)
	}
}

func TestTheProfileGapIsThatOfEveryPairOfSupports(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	for line := 0; line < 500; line++ {
		n := 3 + rng.Intn(40)
		along, z := make([]float64, n), make([]float64, n)
		u := 0.0
		for i := range along {
			u += 0.05 + rng.Float64()
			along[i], z[i] = u, 0.003*rng.NormFloat64()
		}
		length := 0.5 + 6*rng.Float64()
		want := 0.0
		for p := range along {
			for q := p + 2; q < n && along[q]-along[p] <= length; q++ {
				for r := p + 1; r < q; r++ {
					want = math.Max(want, z[p]+(z[q]-z[p])*(along[r]-along[p])/(along[q]-along[p])-z[r])
				}
			}
		}
		got, err := LargestProfileGap(along, z, length)
		require.NoError(t, err)
		assert.InDelta(t, want, got.Depth, 1e-12, "line %d", line)
	}
}

// A tilt is no gap, and twice as rough is twice the gap.
func FuzzTheProfileGapDoesNotKnowTilt(f *testing.F) {
	f.Add(int64(1), 20, 2.0, 0.01)
	f.Add(int64(2), 3, 0.1, -0.5)
	f.Add(int64(3), 200, 15.0, 0.0)
	f.Fuzz(func(t *testing.T, seed int64, n int, length, tilt float64) {
		if n < 0 || n > 500 || !(length > 0 && length < 100) || !(tilt > -1 && tilt < 1) {
			return
		}
		rng := rand.New(rand.NewSource(seed))
		along, z, tilted := make([]float64, n), make([]float64, n), make([]float64, n)
		for i := range along {
			along[i], z[i] = 0.3*float64(i), 0.004*rng.NormFloat64()
			tilted[i] = 2*z[i] + tilt*along[i]
		}
		gap, err := LargestProfileGap(along, z, length)
		require.NoError(t, err)
		twice, err := LargestProfileGap(along, tilted, length)
		require.NoError(t, err)
		assert.InDelta(t, 2*gap.Depth, twice.Depth, 1e-9)
		if gap.Depth > 0 {
			assert.True(t, gap.From < gap.At && gap.At < gap.To)
			assert.LessOrEqual(t, along[gap.To]-along[gap.From], length+1e-6)
		}
	})
}

func TestAnEdgeOrALineThatCannotBeIsRefused(t *testing.T) {
	var refused *Error
	_, err := LargestGap(&Surface{}, Outline{}, 0)
	require.ErrorAs(t, err, &refused)
	assert.Equal(t, "edge-length", refused.Code)
	_, err = LargestGap(&Surface{}, Outline{Outer: Rectangle(1000, 2)}, 2)
	require.ErrorAs(t, err, &refused)
	assert.Equal(t, "edge-too-short", refused.Code)
	_, err = LargestProfileGap([]float64{0, 1, 1}, []float64{0, 0, 0}, 2)
	require.ErrorAs(t, err, &refused)
	assert.Equal(t, "line-order", refused.Code)
	_, err = LargestProfileGap([]float64{0}, nil, 2)
	require.ErrorAs(t, err, &refused)
	gap, err := LargestProfileGap(nil, nil, 2)
	require.NoError(t, err)
	assert.Zero(t, gap.Depth)
	nowhere, err := LargestGap(&Surface{}, Outline{}, 2)
	require.NoError(t, err)
	assert.Zero(t, nowhere.Depth)
}

func BenchmarkLargestGap(b *testing.B) {
	rng := rand.New(rand.NewSource(1))
	deck := meshed(5, 4, 12, 10, rng, roughDeck(rng))
	for name, length := range map[string]float64{"2m": 2, "150mm": 0.15} {
		b.Run(name, func(b *testing.B) {
			for i := 0; i < b.N; i++ {
				if _, err := LargestGap(&deck, Outline{Outer: Rectangle(5, 4)}, length); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
