// What the standards for testing floors ask: how many tests, how deep, how long, how hard a disk is pulled.
package published

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/deck"
	"lowspot/engine/quantity"
)

const (
	squareFeet = 0.3048 * 0.3048
	hours      = 3600.0
)

func moistureMethod(t *testing.T, id string) deck.Method {
	t.Helper()
	m, known := deck.MethodNamed(id)
	require.True(t, known)
	return m
}

// ASTM F2170 §10.1, ASTM F1869, ASTM D4263: values as recalled, documents not at hand.
func TestHowManyMoistureTestsAnAreaNeeds(t *testing.T) {
	for id, rows := range map[string]map[float64]int{
		"f2170": {1: 3, 1000: 3, 1001: 4, 2000: 4, 2001: 5, 5000: 7},
		"f1869": {1000: 3, 2000: 4, 5000: 7},
		"d4263": {1: 1, 500: 1, 501: 2, 1000: 2, 5000: 10},
	} {
		for area, want := range rows {
			count, err := moistureMethod(t, id).TestsFor(area * squareFeet)
			require.NoError(t, err)
			assert.Equal(t, want, count, "%s over %v ft²", id, area)
		}
	}
}

// ASTM F2170 §10.2: value as recalled, document not at hand; the depths recomputed.
func TestHowDeepAProbeSits(t *testing.T) {
	for sides, want := range map[int]float64{1: 1.6, 2: 0.8} {
		depth, err := deck.ProbeDepth(4*inches, sides)
		require.NoError(t, err)
		assert.InDelta(t, want, depth/inches, 1e-12)
	}
}

// ASTM F2170 (24 h since its 2018 revision, 72 h before), F1869, D4263: values as recalled, documents not at hand. ASTM F710-05 §5 (reproduction) for the puddle.
func TestHowLongMoistureTestsTake(t *testing.T) {
	probe, chloride, sheet := moistureMethod(t, "f2170"), moistureMethod(t, "f1869"), moistureMethod(t, "d4263")
	assert.Equal(t, []float64{24 * hours, 48 * hours, 30 * 24 * hours}, []float64{probe.Wait, probe.Condition, probe.Calibrated})
	assert.Equal(t, []float64{60 * hours, 72 * hours}, []float64{chloride.Wait, chloride.WaitMost})
	assert.Equal(t, []float64{16 * hours, 18 * inches}, []float64{sheet.Wait, sheet.Sheet})
	assert.Equal(t, []float64{1 * inches, 60, 5, 24 * hours}, []float64{deck.PuddleAcross, deck.PuddleStands, deck.PuddleSlack, deck.CleanedBefore})
}

// 1 lb/(1000 ft² 24 h), by unit conversion.
func TestTheUnitOfVapourEmission(t *testing.T) {
	emission, err := quantity.Read("1 lb/(1000 ft2 24 h)", quantity.EvaporationRate)
	require.NoError(t, err)
	assert.InDelta(t, 56.51, emission*1e9, 0.005, "µg/(s m²)")
}

// ASTM C1583: values as recalled, document not at hand. 200 psi is common practice, as recalled from ICRI and ACI guides.
func TestPullOff(t *testing.T) {
	const poundForce = 4.4482216152605
	assert.Equal(t, []float64{2 * inches, 0.5 * inches}, []float64{deck.PullOffDisk, deck.PullOffCore})
	assert.InDelta(t, 5, inPSI(deck.PullOffRate), 1e-9)
	assert.InDelta(t, 2, inPSI(deck.PullOffRateSlack), 1e-9)
	assert.InDelta(t, 1.379, deck.PullOffTarget/1e6, 5e-4)
	stress, err := deck.PullOff(200*math.Pi*poundForce, 2*inches)
	require.NoError(t, err)
	assert.InDelta(t, 200, inPSI(stress), 1e-9, "a 2 in disk has π square inches")
}
