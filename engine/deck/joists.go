package deck

import (
	"math"

	"lowspot/engine/quantity"
	"lowspot/engine/steady"
)

// Joists are the beams under a wood deck. Span is the design span: from face to face of the supports and half the bearing needed at each end (NDS 3.2.1,
// secondary); tables print clear spans. Continuous ones run over a middle support, two spans or more.
type Joists struct {
	Size       Size    `json:"size"`
	Grade      Grade   `json:"grade"`
	Spacing    float64 `json:"spacing"`
	Span       float64 `json:"span"`
	Continuous bool    `json:"continuous"`
}

// Loads are what the joists carry, Pa. Pour and Finish are dead loads that weren't there when the floor was designed.
type Loads struct {
	Live   float64 `json:"live"`
	Dead   float64 `json:"dead"`
	Pour   float64 `json:"pour"`
	Finish float64 `json:"finish"`
}

// dead is all that lies on the floor for good, Pa.
func (l Loads) dead() float64 { return l.Dead + l.Pour + l.Finish }

// Stiffness is how far joists bend and how hard they are used. A ratio n reads L/n; zero deflection has ratio zero. Bending and Allowed are zero
// where the grade has no known bending stress.
type Stiffness struct {
	Live       float64 `json:"live"`       // deflection under live load, m
	LiveRatio  float64 `json:"liveRatio"`  // span over it
	Total      float64 `json:"total"`      // deflection under live and dead load, m; creep isn't in it
	TotalRatio float64 `json:"totalRatio"` //
	Bending    float64 `json:"bending"`    // greatest bending stress, Pa
	Allowed    float64 `json:"allowed"`    // what the grade allows, Pa
	Says       string  `json:"says"`
}

// The deflection of a beam under an even load is k w L⁴/(E I). Beam theory: 5/384 on two supports; on three, with every span loaded, 1/184.6 = 0.005416;
// with the load on one span only, as live load may stand, 0.009151.
const (
	simpleDeflection    = 5.0 / 384
	continuousEvenly    = 0.0054161
	continuousPatterned = 0.0091506
)

// Bend works out the joists' deflections and bending stress. Moment is w L²/8 on two supports and on three alike.
func (j Joists) Bend(l Loads) (Stiffness, error) {
	if err := j.check(l); err != nil {
		return Stiffness{}, err
	}
	liveFactor, deadFactor := j.factors()
	unit := j.Spacing * j.Span * j.Span * j.Span * j.Span / (j.Grade.Elasticity * j.Size.Inertia())
	s := Stiffness{Live: liveFactor * l.Live * unit, Allowed: j.Grade.bendingOf(j.Size)}
	s.Total = s.Live + deadFactor*l.dead()*unit
	s.LiveRatio, s.TotalRatio = over(j.Span, s.Live), over(j.Span, s.Total)
	if s.Allowed > 0 {
		s.Bending = (l.Live + l.dead()) * j.Spacing * j.Span * j.Span / 8 / j.Size.Modulus()
	}
	s.Says = "Bends by " + ratioText(s.LiveRatio) + " under live load, " + ratioText(s.TotalRatio) + " under all of it."
	return s, nil
}

func (j Joists) factors() (live, dead float64) {
	if j.Continuous {
		return continuousPatterned, continuousEvenly
	}
	return simpleDeflection, simpleDeflection
}

func over(span, deflection float64) float64 {
	if deflection == 0 {
		return 0
	}
	return span / deflection
}

// SpanAt is the longest span, m, whose deflection under an even live load (Pa) is no more than span/n.
func (j Joists) SpanAt(n, live float64) (float64, error) {
	if !above0(n) || !above0(live) {
		return 0, refuse("limit", ratioText(n), "A stiffness and a load above zero are needed.", "L/360 at 40 psf (1.9 kPa) is usual.")
	}
	if err := j.check(Loads{Live: live}); err != nil {
		return 0, err
	}
	factor, _ := j.factors()
	return cubeRoot(j.Grade.Elasticity * j.Size.Inertia() / (factor * n * live * j.Spacing)), nil
}

// SpanInBending is the longest span, m, at which the bending stress is allowed; false where the grade's bending stress isn't known.
func (j Joists) SpanInBending(l Loads) (float64, bool) {
	allowed := j.Grade.bendingOf(j.Size)
	if allowed == 0 || j.check(l) != nil || l.Live+l.dead() == 0 {
		return 0, false
	}
	return math.Sqrt(8 * allowed * j.Size.Modulus() / ((l.Live + l.dead()) * j.Spacing)), true
}

// TableSpan is the longest span as code tables print it, m: the lesser of stiffness at L/n under live load and of bending under all load, to the nearest
// inch (not down). IRC 2012 Table R502.3.1(2) follows from it, cell by cell.
func (j Joists) TableSpan(n float64, l Loads) (float64, error) {
	span, err := j.SpanAt(n, l.Live)
	if err != nil {
		return 0, err
	}
	bending, known := j.SpanInBending(l)
	if !known {
		return 0, refuse("joists.grade", j.Grade.Name+" "+j.Size.Name, "No bending stress is known for this grade and size.", "Use the span table of the local code.")
	}
	if bending < span {
		span = bending
	}
	return math.Floor(span/inch+0.5) * inch, nil
}

func cubeRoot(x float64) float64 { return steady.Pow(x, 1.0/3) }

func (j Joists) check(l Loads) error {
	switch {
	case !(j.Size.Breadth > 0 && j.Size.Breadth <= 0.5) || !(j.Size.Depth > 0 && j.Size.Depth <= 1):
		return refuse("joists.size", j.Size.Name, "A joist has a breadth up to 500 mm and a depth up to 1 m.", "Measure it: a 2×8 is 1 1/2 in by 7 1/4 in.")
	case !(j.Grade.Elasticity >= 1e9 && j.Grade.Elasticity <= 1e12):
		return refuse("joists.grade", quantity.Write(j.Grade.Elasticity, quantity.Pressure, quantity.Metric), "Wood has an elasticity of some 10 GPa.", "Choose a species and grade; C24 has 11 GPa.")
	case !(j.Spacing > 0 && j.Spacing <= 3):
		return refuse("joists.spacing", length(j.Spacing), "Joists stand up to 3 m apart.", "Measure from middle to middle: 400 mm and 16 in are usual.")
	case !(j.Span > 0 && j.Span <= 20):
		return refuse("joists.span", length(j.Span), "Joists span up to 20 m.", "Measure from support to support.")
	}
	for _, load := range []float64{l.Live, l.Dead, l.Pour, l.Finish} {
		if !from0(load) || load > 1e5 {
			return refuse("loads", quantity.Write(load, quantity.Pressure, quantity.Metric), "A floor load lies between 0 and 100 kPa.", "40 psf (1.9 kPa) live load is usual in homes.")
		}
	}
	return nil
}

func length(x float64) string { return quantity.Write(x, quantity.Length, quantity.Metric) }
