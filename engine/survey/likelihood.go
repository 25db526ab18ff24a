package survey

import (
	"math"

	"lowspot/engine/floor"
	"lowspot/engine/steady"
)

// What is believed of a deck before the first reading, own choice: it stands off its trend by some 4 mm (two in three decks between 1.5 and
// 11 mm), and ground 1.5 m apart is half alike (two in three between 0.75 and 3 m). It weighs like one reading; three readings lean on it,
// thirty don't.
const (
	usualUnevenness, unevennessFactor = 0.004, math.E // metres; one standard deviation as a factor
	usualReach, reachFactor           = 1.5, 2.0
)

// How far the fit may go: readings that agree with a plane still leave a tenth of a millimetre.
const (
	leastUnevenness, mostUnevenness = 1e-4, 10.0 // metres
	leastReach, mostReach           = 0.1, 30.0
)

// mostFitted is how many readings the likelihood is worked out for.
const mostFitted = 64

// fit finds the unevenness and the reach of greatest restricted likelihood times belief, by a search over ever finer steps.
func (m *Model) fit() {
	chosen := pairsOf(m.points, mostFitted)
	f := fitting{m: m, sloped: m.Sloped && slopes(pick(m.points, chosen))}
	for _, i := range chosen {
		f.points, f.heights, f.noise = append(f.points, m.points[i]), append(f.heights, m.heights[i]), append(f.noise, m.noise[i])
	}
	best := f.start()
	for step := 0.8; step > 0.02; step /= 2 {
		best = f.climb(best, step)
	}
	m.Unevenness, m.Reach = best.unevenness(), best.reach()
}

// guess is an unevenness and a reach as logarithms, and how likely they are.
type guess struct {
	logUnevenness, logReach, score float64
}

// The exponential of a logarithm may miss a bound by a last digit; what was fitted must stand when it is given again.
func (g guess) unevenness() float64 {
	return clamp(steady.Exp(g.logUnevenness), leastUnevenness, mostUnevenness)
}

func (g guess) reach() float64 { return clamp(steady.Exp(g.logReach), leastReach, farthest) }

type fitting struct {
	m              *Model
	points         []floor.Point
	heights, noise []float64
	sloped         bool
	alike          []float64 // correlations for the reach last asked for
	alikeAt        float64
	fixedU, fixedR bool
	matrix         []float64
}

// start tries some reaches with the heights' own scatter.
func (f *fitting) start() guess {
	f.alikeAt = math.NaN()
	f.fixedU, f.fixedR = f.m.options.Unevenness > 0, f.m.options.Reach > 0
	best := guess{score: math.Inf(-1)}
	for _, factor := range []float64{0, -1.6, -0.8, 0.8, 1.6} {
		g := f.weigh(steady.Log(f.scatter()), steady.Log(usualReach)+factor)
		if g.score > best.score {
			best = g
		}
	}
	return best
}

func (f *fitting) scatter() float64 {
	level, sum := mean(f.heights), 0.0
	for _, h := range f.heights {
		sum += (h - level) * (h - level)
	}
	return clamp(math.Sqrt(sum/float64(len(f.heights))), usualUnevenness/4, mostUnevenness)
}

// climb steps for as long as that helps: along the unevenness, along the reach, and along the ridge on which short distances look the same,
// where the unevenness goes with the 1.5th power of the reach and steps along one alone get stuck.
func (f *fitting) climb(best guess, step float64) guess {
	for better := true; better; {
		better = false
		for _, d := range [][2]float64{{step, 0}, {-step, 0}, {0, step}, {0, -step}, {1.5 * step, step}, {-1.5 * step, -step}} {
			if g := f.weigh(best.logUnevenness+d[0], best.logReach+d[1]); g.score > best.score+1e-9 {
				best, better = g, true
			}
		}
	}
	return best
}

// weigh scores a guess, held within bounds and to what the options fix.
func (f *fitting) weigh(logUnevenness, logReach float64) guess {
	g := guess{
		logUnevenness: clamp(logUnevenness, steady.Log(leastUnevenness), steady.Log(mostUnevenness)),
		logReach:      clamp(logReach, steady.Log(leastReach), steady.Log(mostReach)),
	}
	if f.fixedU {
		g.logUnevenness = steady.Log(f.m.options.Unevenness)
	}
	if f.fixedR {
		g.logReach = steady.Log(f.m.options.Reach)
	}
	u := (g.logUnevenness - steady.Log(usualUnevenness)) / steady.Log(unevennessFactor)
	r := (g.logReach - steady.Log(usualReach)) / steady.Log(reachFactor)
	g.score = f.likelihood(g) - u*u/2 - r*r/2
	return g
}

func (f *fitting) likelihood(g guess) float64 {
	n := len(f.points)
	if g.logReach != f.alikeAt {
		f.correlate(g.reach())
		f.alikeAt = g.logReach
	}
	sill := g.unevenness() * g.unevenness()
	for i := range n {
		for j := range i {
			f.matrix[i*n+j] = sill * f.alike[i*n+j]
		}
		f.matrix[i*n+i] = sill + f.noise[i]
	}
	s, err := solve(f.points, f.heights, f.matrix, func(float64) float64 { return sill }, f.sloped)
	if err != nil {
		return math.Inf(-1)
	}
	return s.likelihood()
}

func (f *fitting) correlate(reach float64) {
	n := len(f.points)
	if f.alike == nil {
		f.alike, f.matrix = make([]float64, n*n), make([]float64, n*n)
	}
	alike := CovarianceOf(f.m.Kind, 1, reach)
	for i, p := range f.points {
		for j, q := range f.points[:i] {
			f.alike[i*n+j] = alike(floor.Distance(p, q))
		}
	}
}

func clamp(x, low, high float64) float64 { return math.Max(low, math.Min(high, x)) }
