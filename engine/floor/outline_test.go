package floor

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func upright(x, y, length, width float64) Ring {
	return Ring{{x, y}, {x + length, y}, {x + length, y + width}, {x, y + width}}
}

func TestARingIsMeasured(t *testing.T) {
	r := Ring{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 3}, {0, 3}}
	assert.Equal(t, 10.0, r.Area())
	assert.Equal(t, 14.0, r.Perimeter())
	assert.InDelta(t, (8*2+2*1)/10.0, r.Centroid().X, 1e-12)
	assert.InDelta(t, (8*1+2*2.5)/10, r.Centroid().Y, 1e-12)
	clockwise := Ring{{0, 3}, {2, 3}, {2, 2}, {4, 2}, {4, 0}, {0, 0}}
	assert.Equal(t, -10.0, clockwise.SignedArea())
	assert.Equal(t, 10.0, clockwise.Area())
	assert.Equal(t, Point{4, 0.5}, r.PointAlong(1, 0.5))
	wall, along, off := r.NearestWall(Point{2.5, 2.25})
	assert.Equal(t, []float64{2, 1.5, 0.25}, []float64{float64(wall), along, off})
}

func TestASpotOnAWallIsFloor(t *testing.T) {
	o := Outline{Outer: Rectangle(4, 3), Holes: []Ring{upright(1, 1, 1, 1)}}
	for _, p := range []Point{{0, 0}, {4, 3}, {2, 0}, {0, 1.5}, {1, 1.5}, {2, 2}, {3, 2}, {0.3, 1}} {
		assert.True(t, o.Contains(p), "%v", p)
	}
	for _, p := range []Point{{1.5, 1.5}, {4.1, 1}, {-0.01, 0}, {5, 3}} {
		assert.False(t, o.Contains(p), "%v", p)
	}
	assert.Equal(t, 11.0, o.Area())
	assert.InDelta(t, (12*2-1.5)/11.0, o.Centroid().X, 1e-12)
}

func TestImpossibleOutlinesSayWhatIsWrongAndWhere(t *testing.T) {
	room, big := Rectangle(4, 3), make(Ring, 2001)
	for i := range big {
		big[i] = Point{float64(i) / 10, float64(i%2) + 1}
	}
	notched := Ring{{0, 0}, {4, 0}, {4, 3}, {2, 1}, {0, 3}}
	for name, bad := range map[string]struct {
		outline Outline
		code    string
		at      Point
	}{
		"bow tie":                     {Outline{Outer: Ring{{0, 0}, {4, 3}, {4, 0}, {0, 3}}}, "crosses-itself", Point{2, 1.5}},
		"a corner touches a wall":     {Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 3}, {2, 0}, {0, 3}}}, "crosses-itself", Point{2, 0}},
		"two corners meet":            {Outline{Outer: Ring{{0, 0}, {4, 0}, {2, 1}, {4, 2}, {0, 2}, {2, 1}}}, "crosses-itself", Point{2, 1}},
		"two corners":                 {Outline{Outer: Ring{{0, 0}, {4, 0}}}, "too-few-corners", Point{}},
		"no corners":                  {Outline{}, "too-few-corners", Point{}},
		"doubled corner":              {Outline{Outer: Ring{{0, 0}, {4, 0}, {4, 0}, {4, 3}}}, "no-length", Point{4, 0}},
		"folds back":                  {Outline{Outer: Ring{{0, 0}, {4, 0}, {2, 0}, {2, 2}}}, "folds-back", Point{4, 0}},
		"all on a line":               {Outline{Outer: Ring{{0, 0}, {2, 0}, {4, 0}}}, "folds-back", Point{4, 0}},
		"less than a stamp":           {Outline{Outer: Rectangle(0.005, 0.005)}, "no-area", Point{}},
		"not a number":                {Outline{Outer: Ring{{0, 0}, {math.NaN(), 0}, {4, 3}}}, "too-far", Point{}},
		"without end":                 {Outline{Outer: Ring{{0, 0}, {math.Inf(-1), 0}, {4, 3}}}, "too-far", Point{}},
		"a million metres":            {Outline{Outer: Rectangle(1e6, 3)}, "too-far", Point{1e6, 0}},
		"too many corners":            {Outline{Outer: big}, "too-many-corners", Point{}},
		"keep-out outside":            {Outline{Outer: room, Holes: []Ring{upright(3, 1, 2, 1)}}, "hole-outside", Point{5, 1}},
		"keep-out round the room":     {Outline{Outer: room, Holes: []Ring{upright(-1, -1, 6, 5)}}, "hole-outside", Point{-1, -1}},
		"keep-out through two walls":  {Outline{Outer: notched, Holes: []Ring{upright(0.5, 0.5, 3, 1.5)}}, "hole-crosses", Point{3, 2}},
		"keep-out through two nooks":  {Outline{Outer: notched, Holes: []Ring{{{0, 3}, {2, 0.5}, {4, 3}}}}, "hole-crosses", Point{4, 3}},
		"keep-outs overlap":           {Outline{Outer: room, Holes: []Ring{upright(1, 1, 1, 1), upright(1.5, 1.5, 1.5, 1)}}, "holes-overlap", Point{1.5, 1.5}},
		"keep-outs cross":             {Outline{Outer: room, Holes: []Ring{upright(1, 1, 2, 0.5), upright(1.5, 0.5, 0.5, 2)}}, "holes-overlap", Point{2, 1}},
		"keep-out in a keep-out":      {Outline{Outer: room, Holes: []Ring{upright(1, 1, 2, 1), upright(1.5, 1.2, 0.5, 0.5)}}, "holes-overlap", Point{1.5, 1.2}},
		"keep-out round a keep-out":   {Outline{Outer: room, Holes: []Ring{upright(1.5, 1.2, 0.5, 0.5), upright(1, 1, 2, 1)}}, "holes-overlap", Point{1.5, 1.2}},
		"the same keep-out twice":     {Outline{Outer: room, Holes: []Ring{upright(1, 1, 1, 1), upright(1, 1, 1, 1)}}, "holes-overlap", Point{1.5, 1}},
		"nothing but keep-out":        {Outline{Outer: room, Holes: []Ring{Rectangle(4, 3)}}, "no-floor", Point{}},
		"a keep-out that isn't a box": {Outline{Outer: room, Holes: []Ring{{{1, 1}, {2, 2}, {2, 1}, {1, 2}}}}, "crosses-itself", Point{1.5, 1.5}},
	} {
		var problem *Error
		require.True(t, errors.As(bad.outline.Check(), &problem), name)
		assert.Equal(t, bad.code, problem.Code, name)
		assert.InDelta(t, bad.at.X, problem.At.X, 1e-4, name)
		assert.InDelta(t, bad.at.Y, problem.At.Y, 1e-4, name)
		assert.NotEmpty(t, problem.Remedy, name)
	}
}

func TestKeepOutsMayStandAgainstWallsAndAgainstEachOther(t *testing.T) {
	room := Rectangle(4, 3)
	for name, holes := range map[string][]Ring{
		"a bath in the corner":         {upright(0, 0, 1.7, 0.7)},
		"a bath from wall to wall":     {upright(0, 0, 4, 0.7)},
		"two side by side":             {upright(0, 1, 1, 1), upright(1, 1, 1, 1)},
		"two corner to corner":         {upright(1, 1, 1, 1), upright(2, 2, 1, 1)},
		"one along part of another":    {upright(1, 1, 2, 0.5), upright(1.5, 1.5, 0.5, 0.5)},
		"an island in the middle":      {upright(1, 1, 2, 1)},
		"turned the other way round":   {{{1, 2}, {2, 2}, {2, 1}, {1, 1}}},
		"a nanometre through the wall": {upright(-1e-9, 1, 1, 1)},
	} {
		o := Outline{Outer: room, Holes: holes}
		assert.NoError(t, o.Check(), name)
		assert.InDelta(t, o.Area(), RegionOf(o).Area(), 1e-8, name)
	}
}

func FuzzOutline(f *testing.F) {
	f.Add(0.0, 0.0, 4.0, 0.0, 4.0, 3.0, 0.0, 3.0, 1.0, 1.0, 1.0, 1.0)
	f.Add(0.0, 0.0, 4.0, 3.0, 4.0, 0.0, 0.0, 3.0, 1.0, 1.0, 1.0, 1.0)
	f.Add(0.0, 0.0, 4.0, 0.0, 4.0, 3.0, 2.0, 1.0, 0.0, 0.0, 4.0, 0.5)
	f.Add(0.0, 0.0, 1e-4, 0.0, 999.0, 999.0, 0.0, 1e-4, 0.0, 0.0, 1e-4, 1e-4)
	f.Fuzz(func(t *testing.T, ax, ay, bx, by, cx, cy, dx, dy, x, y, length, width float64) {
		o := Outline{Outer: Ring{{ax, ay}, {bx, by}, {cx, cy}, {dx, dy}}, Holes: []Ring{upright(x, y, length, width)}}
		if o.Check() != nil {
			return
		}
		// A keep-out may reach a micrometre through a wall.
		assert.InDelta(t, o.Area(), RegionOf(o).Area(), touching*o.Outer.Perimeter()*4)
	})
}
