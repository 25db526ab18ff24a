// Dust and lifting as the authorities print them.
package published

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/people"
)

// 29 CFR 1926.1153 (reproduction; also rms.unlv.edu); Directive 2004/37/EC as amended by (EU) 2017/2398; HSE EH40/2005, 4th ed. 2020, as recalled, document not at hand.
func TestLimitsOfSilica(t *testing.T) {
	const microgram, milligram = 1e-9, 1e-6
	assert.InEpsilon(t, 50*microgram, people.SilicaLimitUS, 1e-12)
	assert.InEpsilon(t, 25*microgram, people.SilicaActionUS, 1e-12)
	assert.InEpsilon(t, 0.1*milligram, people.SilicaLimitEU, 1e-12)
	assert.InEpsilon(t, 0.1*milligram, people.SilicaLimitUK, 1e-12)
	assert.Equal(t, []float64{0.9997, 0.99}, []float64{people.HEPAEfficiency, people.CollectorEfficiency})
}

// OSHA 29 CFR 1926.1153 Table 1: (xi) and (xii) by secondary transcriptions and an OSHA/IMI sheet, (xiii) by a trade-magazine reproduction of 2017; with continuous
// water up to 4 h as recalled, document not at hand.
func TestRespiratorsOfTable1(t *testing.T) {
	for _, row := range []struct {
		task    string
		hours   float64
		indoors bool
		factor  int
	}{
		{"mortar", 4, false, 10}, {"mortar", 4.1, false, 25}, {"mortar", 4, true, 10}, {"mortar", 8, true, 25},
		{"grinder-shroud", 8, false, 0}, {"grinder-shroud", 4, true, 0}, {"grinder-shroud", 4.1, true, 10},
		{"grinder-water", 4, false, 0}, {"grinder-water", 8, false, 0},
		{"floor-grinder", 4, true, 0}, {"floor-grinder", 8, true, 0}, {"floor-grinder", 8, false, 0},
	} {
		task, known := people.DustTaskNamed(row.task)
		require.True(t, known, row.task)
		factor, err := task.Factor(row.hours*hours, row.indoors)
		require.NoError(t, err)
		assert.Equal(t, row.factor, factor, "%+v", row)
	}
}

// OSHA 29 CFR 1926.1153 Table 1 (trade-magazine reproduction, 2017): 25 ft³/min an inch of wheel.
func TestAirflowByWheel(t *testing.T) {
	const cubicFeetPerMinute = 0.028316846592 / 60
	for wheel, want := range map[float64][2]float64{4.5: {112.5, 53.1}, 5: {125, 59.0}, 7: {175, 82.6}} {
		airflow, err := people.Airflow(wheel * inches)
		require.NoError(t, err)
		assert.InDelta(t, want[0], airflow/cubicFeetPerMinute, 0.05)
		assert.InDelta(t, want[1], airflow*1000, 0.05, "L/s")
	}
}

// atRest is a lift whose multipliers are all 1 by the metric form.
var atRest = people.Lift{Horizontal: 0.25, Vertical: 0.75, Travel: 0.25, Grip: people.GripGood}

func metricLift(t *testing.T, change func(*people.Lift)) people.Multipliers {
	t.Helper()
	lift := atRest
	change(&lift)
	m, err := lift.Metric()
	require.NoError(t, err)
	return m
}

// NIOSH 94-110 rev. 2021 (reproduction) and CCOHS' table of the multipliers, after the NIOSH equation (reproduction); unrounded where that is known.
func TestLiftingMultipliers(t *testing.T) {
	for h, want := range map[float64]float64{25: 1, 30: 0.83, 50: 0.50} {
		assert.InDelta(t, want, metricLift(t, func(l *people.Lift) { l.Horizontal = h / 100 }).Horizontal, 0.005, "H %v cm", h)
	}
	for v, want := range map[float64]float64{0: 0.775, 75: 1, 100: 0.925, 150: 0.775, 175: 0.70, 176: 0} {
		assert.InDelta(t, want, metricLift(t, func(l *people.Lift) { l.Vertical = v / 100 }).Vertical, 1e-9, "V %v cm", v)
	}
	for d, want := range map[float64]float64{25: 1, 40: 0.93, 175: 0.85} {
		assert.InDelta(t, want, metricLift(t, func(l *people.Lift) { l.Travel = d / 100 }).Distance, 0.005, "D %v cm", d)
	}
	for a, want := range map[float64]float64{0: 1, 30: 0.90, 90: 0.71} {
		assert.InDelta(t, want, metricLift(t, func(l *people.Lift) { l.Asymmetry = a }).Asymmetry, 0.005, "A %v°", a)
	}
}

// NIOSH 94-110 rev. 2021 (reproduction); ccohs.ca. The US form in a secondary handbook chapter (reproduction).
func TestTheIdealLift(t *testing.T) {
	metric, err := metricLift(t, func(*people.Lift) {}).Against(23, people.LoadMetric)
	require.NoError(t, err)
	assert.Equal(t, 23.0, metric.Limit)
	assert.Equal(t, 1.0, metric.Index)

	lift := people.Lift{Horizontal: 10 * inches, Vertical: 30 * inches, Travel: 10 * inches, Grip: people.GripGood}
	us, err := lift.US()
	require.NoError(t, err)
	assert.InDelta(t, 1, us.Product(), 1e-12)
	assert.InDelta(t, 51*0.45359237, people.LoadUS, 1e-12)
}

func TestTheUSFormOfTheMultipliers(t *testing.T) {
	lift := people.Lift{Horizontal: 16 * inches, Vertical: 12 * inches, Travel: 20 * inches, Asymmetry: 45, Grip: people.GripGood}
	m, err := lift.US()
	require.NoError(t, err)
	assert.InDelta(t, 10.0/16, m.Horizontal, 1e-9)
	assert.InDelta(t, 1-0.0075*18, m.Vertical, 1e-9)
	assert.InDelta(t, 0.82+1.8/20, m.Distance, 1e-9)
	assert.InDelta(t, 1-0.0032*45, m.Asymmetry, 1e-9)
}

// 23 kg is not 51 lb: a 50 lb bag has an index of 0.986 with the one constant, 0.980 with the other.
func TestTheTwoLoadConstantsAreNotOne(t *testing.T) {
	const bag = 50 * 0.45359237
	ideal := metricLift(t, func(*people.Lift) {})
	metric, err := ideal.Against(bag, people.LoadMetric)
	require.NoError(t, err)
	us, err := ideal.Against(bag, people.LoadUS)
	require.NoError(t, err)
	assert.InDelta(t, 0.986, metric.Index, 5e-4)
	assert.InDelta(t, 0.980, us.Index, 5e-4)
}

// NIOSH 94-110 Tables 5 and 7, values as recalled, document not at hand: how often, for how long, and how the load is held.
func TestFrequencyAndGripOfLifts(t *testing.T) {
	for _, row := range []struct{ perMinute, hours, height, want float64 }{
		{0.2, 1, 1, 1.00}, {0.5, 1, 1, 0.97}, {1, 8, 1, 0.75}, {5, 2, 1, 0.60}, {9, 8, 1, 0.15}, {9, 8, 0.5, 0}, {15, 1, 1, 0.28}, {15, 1, 0.5, 0}, {16, 1, 1, 0},
	} {
		m := metricLift(t, func(l *people.Lift) {
			l.Rate, l.Lasting, l.Vertical = row.perMinute/60, row.hours*3600, row.height
		})
		assert.InDelta(t, row.want, m.Frequency, 1e-9, "%v a minute over %v h from %v m", row.perMinute, row.hours, row.height)
	}
	for _, row := range []struct {
		grip   people.GripKind
		height float64
		want   float64
	}{{people.GripGood, 0.5, 1}, {people.GripGood, 1, 1}, {people.GripFair, 0.5, 0.95}, {people.GripFair, 1, 1}, {people.GripPoor, 0.5, 0.90}, {people.GripPoor, 1, 0.90}} {
		m := metricLift(t, func(l *people.Lift) { l.Grip, l.Vertical = row.grip, row.height })
		assert.InDelta(t, row.want, m.Coupling, 1e-9, "%s grip from %v m", row.grip, row.height)
	}
}
