package deck

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func joists(t *testing.T, grade, size string) Joists {
	t.Helper()
	g, known := GradeNamed(grade)
	require.True(t, known, grade)
	s, known := SizeNamed(size)
	require.True(t, known, size)
	return Joists{Size: s, Grade: g, Spacing: 16 * inch, Span: 12 * 12 * inch}
}

// The elastic line of a beam on three supports, one span loaded with w = 1, the moment over the middle support m: solved by its textbook form and searched.
func deepest(m float64) (most float64) {
	for x := 0.0; x <= 1; x += 1e-5 {
		most = math.Max(most, (x-2*x*x*x+x*x*x*x)/24-m*(x-x*x*x)/6)
	}
	return most
}

func TestTheFactorsOfContinuousJoistsAreThoseOfBeamTheory(t *testing.T) {
	assert.InDelta(t, deepest(1.0/8), continuousEvenly, 1e-7, "both spans loaded: the support carries w L²/8")
	assert.InDelta(t, deepest(1.0/16), continuousPatterned, 1e-7, "one span loaded: half of that")
	assert.InDelta(t, deepest(0), simpleDeflection, 1e-12)
}

func TestContinuousJoistsBendLessThanSimpleOnes(t *testing.T) {
	simple := joists(t, "spruce-pine-fir", "2x10")
	continuous := simple
	continuous.Continuous = true
	loads := Loads{Live: 1915, Dead: 479}
	a, err := simple.Bend(loads)
	require.NoError(t, err)
	b, err := continuous.Bend(loads)
	require.NoError(t, err)
	assert.Less(t, b.Live, a.Live)
	assert.Less(t, b.Total, a.Total)
	assert.Equal(t, a.Bending, b.Bending)
}

func TestThePourAndTheFinishAddToAllLoadAndNotToLiveLoad(t *testing.T) {
	floor := joists(t, "spruce-pine-fir", "2x10")
	pour, err := AddedLoad(0.020, 2000)
	require.NoError(t, err)
	before, err := floor.Bend(Loads{Live: 1915, Dead: 479})
	require.NoError(t, err)
	after, err := floor.Bend(Loads{Live: 1915, Dead: 479, Pour: pour, Finish: 300})
	require.NoError(t, err)
	assert.Equal(t, before.Live, after.Live)
	assert.InEpsilon(t, (1915+479+pour+300)/(1915.0+479), after.Total/before.Total, 1e-12)
	assert.InEpsilon(t, (1915+479+pour+300)/(1915.0+479), after.Bending/before.Bending, 1e-12)
	assert.Equal(t, "Bends by L/802 under live load, L/497 under all of it.", after.Says)
}

func TestAFloorWithoutLoadDoesNotBend(t *testing.T) {
	s, err := joists(t, "c24", "2x8").Bend(Loads{})
	require.NoError(t, err)
	assert.Zero(t, s.Live)
	assert.Zero(t, s.LiveRatio)
	assert.Zero(t, s.Allowed, "no bending stress is known for it")
}

func TestJoistsAtTheirLongestSpanAreJustStiffEnough(t *testing.T) {
	for _, continuous := range []bool{false, true} {
		j := joists(t, "hem-fir", "2x12")
		j.Continuous = continuous
		span, err := j.SpanAt(480, 1915)
		require.NoError(t, err)
		j.Span = span
		s, err := j.Bend(Loads{Live: 1915})
		require.NoError(t, err)
		assert.InDelta(t, 480, s.LiveRatio, 1e-6)
	}
}

func TestJoistsThatCannotBeAreRefusedInWords(t *testing.T) {
	good := joists(t, "hem-fir", "2x8")
	for name, spoil := range map[string]func(*Joists){
		"joists.size: A joist has a breadth up to 500 mm and a depth up to 1 m. Measure it: a 2×8 is 1 1/2 in by 7 1/4 in.": func(j *Joists) { j.Size.Depth = math.NaN() },
		"joists.grade: Wood has an elasticity of some 10 GPa. Choose a species and grade; C24 has 11 GPa.":                  func(j *Joists) { j.Grade = Grade{} },
		"joists.spacing: Joists stand up to 3 m apart. Measure from middle to middle: 400 mm and 16 in are usual.":          func(j *Joists) { j.Spacing = 0 },
		"joists.span: Joists span up to 20 m. Measure from support to support.":                                             func(j *Joists) { j.Span = math.Inf(1) },
	} {
		bad := good
		spoil(&bad)
		_, err := bad.Bend(Loads{Live: 1915})
		assert.EqualError(t, err, name)
		_, err = bad.SpanAt(360, 1915)
		assert.EqualError(t, err, name)
	}
	for _, load := range []float64{-1, math.NaN(), math.Inf(1)} {
		_, err := good.Bend(Loads{Live: load})
		assert.Error(t, err, "%v", load)
		_, err = good.SpanAt(load, 1915)
		assert.Error(t, err, "%v", load)
	}
	_, err := joists(t, "c16", "2x8").TableSpan(360, Loads{Live: 1915})
	assert.EqualError(t, err, "joists.grade: No bending stress is known for this grade and size. Use the span table of the local code.")
	_, err = AddedLoad(2, 2000)
	assert.Error(t, err)
	_, err = AddedLoad(0.02, math.NaN())
	assert.Error(t, err)
}

func TestNoSuchLumber(t *testing.T) {
	_, known := GradeNamed("balsa")
	assert.False(t, known)
	_, known = SizeNamed("2x7")
	assert.False(t, known)
	s, known := SizeNamed("2×8")
	assert.True(t, known)
	assert.Equal(t, 7.25*inch, s.Depth)
}
