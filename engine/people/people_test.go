package people

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// fromTheVan is a 25 kg bag lifted off a pallet now and then, held from below.
var fromTheVan = Lift{Horizontal: 0.40, Vertical: 0.50, Travel: 0.40, Asymmetry: 30, Rate: 0.5 / minute, Lasting: hour, Grip: GripFair}

func TestALiftIsTheProductOfItsCircumstances(t *testing.T) {
	m, err := fromTheVan.Metric()
	require.NoError(t, err)
	assert.InDelta(t, 25.0/40, m.Horizontal, 1e-12)
	assert.InDelta(t, 1-0.003*25, m.Vertical, 1e-12)
	assert.InDelta(t, 0.82+4.5/40, m.Distance, 1e-12)
	assert.InDelta(t, 1-0.0032*30, m.Asymmetry, 1e-12)
	assert.Equal(t, 0.97, m.Frequency)
	assert.Equal(t, 0.95, m.Coupling)
	l, err := m.Against(25, LoadMetric)
	require.NoError(t, err)
	assert.InDelta(t, 23*0.625*0.925*0.9325*0.904*0.97*0.95, l.Limit, 1e-9)
	assert.InDelta(t, 25/l.Limit, l.Index, 1e-12)
	assert.Greater(t, l.Index, 1.0, "more than the equation allows")
}

func TestWhatIsTooFarOrTooOftenMustNotBeLiftedAtAll(t *testing.T) {
	for _, spoil := range []func(*Lift){
		func(l *Lift) { l.Horizontal = 0.64 }, func(l *Lift) { l.Vertical = 1.76 }, func(l *Lift) { l.Travel = 1.76 },
		func(l *Lift) { l.Asymmetry = 136 }, func(l *Lift) { l.Rate = 16 / minute }, func(l *Lift) { l.Rate, l.Lasting = 10/minute, 8*hour },
	} {
		bad := fromTheVan
		spoil(&bad)
		m, err := bad.Metric()
		require.NoError(t, err)
		l, err := m.Against(25, LoadMetric)
		require.NoError(t, err)
		assert.True(t, l.None, "%+v", bad)
		assert.Zero(t, l.Index)
	}
}

func TestOftenerAndLongerLiftingAllowsLess(t *testing.T) {
	for _, low := range []bool{false, true} {
		for rate := 0.0; rate < 16; rate += 0.25 {
			for _, lasting := range []float64{hour, 2 * hour, 8 * hour} {
				assert.LessOrEqual(t, frequency(rate+0.25, lasting, low), frequency(rate, lasting, low))
				assert.LessOrEqual(t, frequency(rate, lasting+1, low), frequency(rate, lasting, low))
				assert.LessOrEqual(t, frequency(rate, lasting, true), frequency(rate, lasting, false))
			}
		}
	}
	assert.InDelta(t, 0.925, frequency(1.5, hour, false), 1e-12, "halfway between two rows")
}

func TestAPoorGripAllowsLess(t *testing.T) {
	assert.Equal(t, []float64{1, 1, 1, 0.95, 0.9, 0.9}, []float64{coupling(GripGood, true), coupling(GripGood, false), coupling(GripFair, false), coupling(GripFair, true), coupling(GripPoor, true), coupling(GripPoor, false)})
}

func TestLiftsThatCannotBeAreRefused(t *testing.T) {
	for _, spoil := range []func(*Lift){
		func(l *Lift) { l.Horizontal = math.NaN() }, func(l *Lift) { l.Vertical = -1 }, func(l *Lift) { l.Travel = math.Inf(1) }, func(l *Lift) { l.Asymmetry = -1 },
		func(l *Lift) { l.Rate = math.NaN() }, func(l *Lift) { l.Lasting = 25 * hour }, func(l *Lift) { l.Grip = "" },
	} {
		bad := fromTheVan
		spoil(&bad)
		_, err := bad.Metric()
		assert.Error(t, err, "%+v", bad)
		_, err = bad.US()
		assert.Error(t, err, "%+v", bad)
	}
	_, err := Multipliers{}.Against(math.NaN(), LoadMetric)
	assert.Error(t, err)
}

func TestFortyBagsOneByOneAreFortyTripsThereAndBack(t *testing.T) {
	c, err := Carry(40, 25, 1, 30)
	require.NoError(t, err)
	assert.Equal(t, Carries{Trips: 40, Loaded: 1200, Walked: 2400, Mass: 1000, Lifts: 80}, c)
	c, err = Carry(41, 25, 4, 30)
	require.NoError(t, err)
	assert.Equal(t, 11, c.Trips, "the last trolley isn't full")
	for _, bad := range []struct {
		bags     int
		mass     float64
		perTrip  int
		distance float64
	}{{-1, 25, 1, 30}, {1, 0, 1, 30}, {1, 25, 0, 30}, {1, 25, 1, math.NaN()}} {
		_, err = Carry(bad.bags, bad.mass, bad.perTrip, bad.distance)
		assert.Error(t, err, "%+v", bad)
	}
}

func TestAPalletOfBagsIsMoreThanAHomesFloorCarries(t *testing.T) {
	const allowed = 1915.0 // 40 psf
	s, err := Stack(40, 25, 0.96, allowed)
	require.NoError(t, err)
	assert.InDelta(t, 40*25*9.80665/0.96, s.Load, 1e-9)
	assert.True(t, s.Exceeds)
	assert.Equal(t, 7, s.Highest)
	assert.Equal(t, 6, s.Stacks)
	assert.InDelta(t, 6*0.96, s.Area, 1e-12)

	s, err = Stack(7, 25, 0.96, allowed)
	require.NoError(t, err)
	assert.False(t, s.Exceeds)

	s, err = Stack(3, 50, 0.1, allowed)
	require.NoError(t, err)
	assert.Zero(t, s.Highest, "even one bag is too many")
	assert.Zero(t, s.Stacks)
	for _, bad := range [][3]float64{{0, 1, allowed}, {25, 0, allowed}, {25, 1, 0}, {math.NaN(), 1, allowed}, {25, 1, math.Inf(1)}} {
		_, err = Stack(1, bad[0], bad[1], bad[2])
		assert.Error(t, err, "%v", bad)
	}
}

func TestWaterOnAGrinderIsForOutdoors(t *testing.T) {
	task, known := DustTaskNamed("grinder-water")
	require.True(t, known)
	_, err := task.Factor(hour, true)
	assert.EqualError(t, err, "dust.task: The table has this for work outdoors only. Use a shroud and a dust collector indoors.")
}

func TestEveryStepHasItsCautionsAndNoneSaysThatAllIsWell(t *testing.T) {
	for _, step := range Steps {
		assert.NotEmpty(t, CautionsAt(step), step)
	}
	assert.Empty(t, CautionsAt("rest"))
	seen := map[string]bool{}
	for _, c := range Cautions {
		assert.False(t, seen[c.ID], c.ID)
		seen[c.ID] = true
		assert.NotEmpty(t, c.Source, c.ID)
		assert.NotEmpty(t, c.Steps, c.ID)
		assert.Subset(t, Steps, c.Steps, c.ID)
		assert.NotContains(t, strings.ToLower(c.Text), "safe", c.ID)
	}
	var grinding []string
	for _, c := range CautionsAt(StepGrind) {
		grinding = append(grinding, c.ID)
	}
	assert.Equal(t, []string{"asbestos", "lead", "silica", "hidden"}, grinding)
}
