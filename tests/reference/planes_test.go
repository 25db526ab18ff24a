// The plane of least volume against a general-purpose linear programming library, HiGHS (npm highs).
package reference

import (
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

// linear is one floor for HiGHS: metres from the centroid, millimetres, millimetres a metre.
type linear struct {
	X      []float64 `json:"x"`
	Y      []float64 `json:"y"`
	Target []float64 `json:"target"`
	Limit  float64   `json:"limit"`
	Sides  int       `json:"sides"`
}

// roughFloor is a tilted, bumpy floor with two kinds of deck.
func roughFloor(r *rand.Rand, n int) (floor.Ground, floor.Point) {
	ground := floor.Ground{Points: scattered(r, n), Heights: bumpy(r, n)}
	a, b := 0.008*r.NormFloat64(), 0.008*r.NormFloat64()
	for i, p := range ground.Points {
		ground.Heights[i] += a*p.X + b*p.Y
		ground.Least = append(ground.Least, []float64{0.003, 0.010}[r.Intn(2)])
	}
	return ground, floor.Point{X: 2 + 4*r.Float64(), Y: 2 + 2*r.Float64()}
}

func linearOf(ground floor.Ground, centroid floor.Point, limit float64, sides int) linear {
	l := linear{Limit: limit * 1000, Sides: sides}
	for i, p := range ground.Points {
		l.X, l.Y = append(l.X, p.X-centroid.X), append(l.Y, p.Y-centroid.Y)
		l.Target = append(l.Target, 1000*(ground.Heights[i]+ground.Least[i]))
	}
	return l
}

// The slope limit is round; HiGHS gets a polygon drawn round it and one drawn in it, and the answer lies between the two. Where the limit doesn't bind
// the three are one. HiGHS keeps its constraints to 1e-7, here of a millimetre.
func TestThePlaneOfLeastVolumeIsThatOfHiGHS(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	const floors, sides = 300, 48
	var asked []linear
	var heights []float64
	for i := 0; i < floors; i++ {
		ground, centroid := roughFloor(r, 4+r.Intn(120))
		limit := []float64{0.003, 0.01, 0.1}[i%3]
		finish, err := floor.LeastVolume(ground, limit, centroid)
		require.NoError(t, err)
		heights = append(heights, 1000*finish.Plane.At(centroid))
		asked = append(asked, linearOf(ground, centroid, limit, sides), linearOf(ground, centroid, limit*math.Cos(math.Pi/sides), sides))
	}
	var answers []float64
	ask(t, []string{"node", "--input-type=module", "-e", "import 'highs'"}, []string{"node", "planes.mjs"}, asked, &answers)
	require.Len(t, answers, len(asked))
	met := 0
	for i, height := range heights {
		lower, higher := answers[2*i], answers[2*i+1]
		assert.GreaterOrEqual(t, height, lower-1e-5, "floor %d", i)
		assert.LessOrEqual(t, height, higher+1e-5, "floor %d", i)
		if higher-lower < 1e-6 {
			met++
		}
	}
	assert.GreaterOrEqual(t, met, floors/4, "on many floors the limit doesn't bind and the three agree")
}
