package deck

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"lowspot/engine/floor"
)

func method(t *testing.T, id string) Method {
	t.Helper()
	m, known := MethodNamed(id)
	require.True(t, known)
	return m
}

func is(x float64) *float64 { return &x }

func goodTest(humidity float64) Test {
	return Test{Value: is(humidity), Depth: is(0.04), Waited: is(24 * hour), Condition: is(48 * hour), Calibrated: is(10 * day), Age: is(2 * day)}
}

func codes(reasons []Reason) (all []string) {
	for _, r := range reasons {
		all = append(all, r.Code)
	}
	return all
}

func TestThreeGoodTestsSatisfyASmallSlabAndTheWorstDecides(t *testing.T) {
	s := Survey{Method: method(t, "f2170"), Area: 40, Thickness: 0.1, Sides: 1, Tests: []Test{goodTest(0.71), goodTest(0.78), goodTest(0.74)}}
	v, err := s.Judge()
	require.NoError(t, err)
	assert.True(t, v.Satisfied, "%v", v.Reasons)
	assert.Equal(t, Verdict{Satisfied: true, Needed: 3, Counted: 3, Worst: 0.78, WorstTest: 1}, v)
}

func TestEveryFaultOfATestIsNamed(t *testing.T) {
	for code, spoil := range map[string]func(*Test){
		"value":      func(x *Test) { x.Value = is(1.2) },
		"depth":      func(x *Test) { x.Depth = is(0.02) },
		"wait":       func(x *Test) { x.Waited = is(hour) },
		"condition":  func(x *Test) { x.Condition = is(0) },
		"calibrated": func(x *Test) { x.Calibrated = is(31 * day) },
		"age":        func(x *Test) { x.Age = is(90 * day) },
	} {
		bad := goodTest(0.7)
		spoil(&bad)
		s := Survey{Method: method(t, "f2170"), Area: 40, Thickness: 0.1, Sides: 1, Tests: []Test{goodTest(0.7), goodTest(0.7), goodTest(0.7), bad}}
		v, err := s.Judge()
		require.NoError(t, err)
		require.Len(t, v.Reasons, 1, code)
		assert.Equal(t, code, v.Reasons[0].Code)
		assert.Equal(t, 3, v.Reasons[0].Test)
		assert.False(t, v.Reasons[0].Unanswered)
		assert.False(t, v.Satisfied)
	}
}

func TestWhatNobodyWroteDownIsAskedForAndNeverKept(t *testing.T) {
	s := Survey{Method: method(t, "f2170"), Area: 40, Tests: []Test{{}}}
	v, err := s.Judge()
	require.NoError(t, err)
	assert.Equal(t, []string{"value", "condition", "wait", "calibrated", "age", "slab", "too-few"}, codes(v.Reasons))
	for _, r := range v.Reasons[:6] {
		assert.True(t, r.Unanswered, r.Code)
	}
	assert.Equal(t, "Tests with a value: 0; this area needs 3.", v.Reasons[6].Says)
	assert.Equal(t, -1, v.WorstTest)
}

func TestCalciumChlorideThatStoodTooLongDoesNotCount(t *testing.T) {
	test := Test{Value: is(1.7e-7), Waited: is(80 * hour), Condition: is(48 * hour), Age: is(day)}
	v, err := Survey{Method: method(t, "f1869"), Area: 40, Tests: []Test{test, test, test}}.Judge()
	require.NoError(t, err)
	assert.Equal(t, []string{"wait-most", "wait-most", "wait-most"}, codes(v.Reasons))
	assert.Equal(t, "The test was read after 80 h; it needs 72 h or less.", v.Reasons[0].Says)
}

func TestAPlasticSheetNeedsNoCalibration(t *testing.T) {
	v, err := Survey{Method: method(t, "d4263"), Area: 40, Tests: []Test{{Value: is(0), Waited: is(16 * hour), Age: is(0)}}}.Judge()
	require.NoError(t, err)
	assert.True(t, v.Satisfied, "%v", v.Reasons)
}

func TestTheFirstTestSpotIsTheMiddleAndTheNextAreOffTheWalls(t *testing.T) {
	room := floor.Outline{Outer: floor.Rectangle(10, 6)}
	spots, err := TestSpots(room, 5)
	require.NoError(t, err)
	require.Len(t, spots, 5)
	assert.Equal(t, floor.Point{X: 5, Y: 3}, spots[0])
	for i, p := range spots[1:] {
		_, _, off := room.Outer.NearestWall(p)
		assert.InDelta(t, 1, off, 0.2, "the four corners, 1 m off the walls: %v", p)
		for _, q := range spots[:i+1] {
			assert.Greater(t, floor.Distance(p, q), 2.0)
		}
	}
	again, err := TestSpots(room, 5)
	require.NoError(t, err)
	assert.Equal(t, spots, again)
}

func TestTestSpotsStayOnTheFloorAndOutOfKeepOuts(t *testing.T) {
	room := floor.Outline{
		Outer: floor.Ring{{X: 0, Y: 0}, {X: 8, Y: 0}, {X: 8, Y: 1.2}, {X: 3, Y: 1.2}, {X: 3, Y: 7}, {X: 0, Y: 7}},
		Holes: []floor.Ring{{{X: 1, Y: 3}, {X: 2, Y: 3}, {X: 2, Y: 4}, {X: 1, Y: 4}}},
	}
	spots, err := TestSpots(room, 12)
	require.NoError(t, err)
	require.Len(t, spots, 12)
	for _, p := range spots {
		assert.True(t, room.Contains(p), "%v", p)
		assert.Greater(t, clearance(room, p), 0.2, "%v", p)
	}
}

func TestTestSpotsOfWhatIsNoRoomAreRefused(t *testing.T) {
	_, err := TestSpots(floor.Outline{}, 3)
	assert.Error(t, err)
	_, err = TestSpots(floor.Outline{Outer: floor.Rectangle(4, 3)}, 1001)
	assert.Error(t, err)
	_, err = TestSpots(floor.Outline{Outer: floor.Rectangle(4, 3)}, -1)
	assert.Error(t, err)
	none, err := TestSpots(floor.Outline{Outer: floor.Rectangle(4, 3)}, 0)
	assert.NoError(t, err)
	assert.Empty(t, none)
}

func TestSlabsAndPullsThatCannotBeAreRefused(t *testing.T) {
	for _, x := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		_, err := ProbeDepth(x, 1)
		assert.Error(t, err)
		_, err = method(t, "f2170").TestsFor(x)
		assert.Error(t, err)
		_, err = PullOff(100, x)
		assert.Error(t, err)
	}
	_, err := ProbeDepth(0.1, 3)
	assert.Error(t, err)
	_, err = PullOff(math.NaN(), 0.05)
	assert.Error(t, err)
	_, known := MethodNamed("tea leaves")
	assert.False(t, known)
}
