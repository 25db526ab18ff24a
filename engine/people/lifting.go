package people

import (
	"math"

	"lowspot/engine/quantity"
)

// Lift is one way of lifting a load: the NIOSH lifting equation, NIOSH 94-110 rev. 2021 (formula and constants in a secondary handbook chapter and at
// ccohs.ca). It is for two hands, standing, on a floor that doesn't slip; not for carrying, nor for wheelbarrows.
type Lift struct {
	Horizontal float64  `json:"horizontal"` // hands in front of the ankles, m
	Vertical   float64  `json:"vertical"`   // hands above the floor where the lift starts, m
	Travel     float64  `json:"travel"`     // up or down, m
	Asymmetry  float64  `json:"asymmetry"`  // how far the body twists, degrees
	Rate       float64  `json:"rate"`       // lifts a second
	Lasting    float64  `json:"lasting"`    // how long the lifting goes on, s
	Grip       GripKind `json:"grip"`
}

// GripKind is how well the load can be held.
type GripKind string

// A bag without handles has a fair grip where it can be held from below, a poor one where it sags.
const (
	GripGood GripKind = "good"
	GripFair GripKind = "fair"
	GripPoor GripKind = "poor"
)

// Multipliers are what each circumstance leaves of the load constant, shares of 1.
type Multipliers struct {
	Horizontal float64 `json:"horizontal"`
	Vertical   float64 `json:"vertical"`
	Distance   float64 `json:"distance"`
	Asymmetry  float64 `json:"asymmetry"`
	Frequency  float64 `json:"frequency"`
	Coupling   float64 `json:"coupling"`
}

// Product is what all of them leave together.
func (m Multipliers) Product() float64 {
	return m.Horizontal * m.Vertical * m.Distance * m.Asymmetry * m.Frequency * m.Coupling
}

// The load constants: two roundings of one figure. 51 lb is 23.13 kg.
const (
	LoadMetric = 23.0            // kg
	LoadUS     = 51 * 0.45359237 // kg
)

const (
	centimetre = 0.01
	minute     = 60.0
	hour       = 60 * minute
)

// Metric are the multipliers by the metric form: HM 25/H, VM 1 − 0.003 |V − 75|, DM 0.82 + 4.5/D in cm, AM 1 − 0.0032 A in degrees.
func (l Lift) Metric() (Multipliers, error) {
	h, v, d := l.Horizontal/centimetre, l.Vertical/centimetre, l.Travel/centimetre
	return l.multipliers(reach(25, h, 63), height(0.003, v, 75, 175), travel(4.5, d, 25, 175), v < 75)
}

// US are the multipliers by the US form: HM 10/H, VM 1 − 0.0075 |V − 30|, DM 0.82 + 1.8/D in inches, AM the same.
func (l Lift) US() (Multipliers, error) {
	h, v, d := l.Horizontal/inch, l.Vertical/inch, l.Travel/inch
	return l.multipliers(reach(10, h, 25), height(0.0075, v, 30, 70), travel(1.8, d, 10, 70), v < 30)
}

func (l Lift) multipliers(horizontal, vertical, distance float64, low bool) (Multipliers, error) {
	if err := l.check(); err != nil {
		return Multipliers{}, err
	}
	return Multipliers{
		Horizontal: horizontal, Vertical: vertical, Distance: distance,
		Asymmetry: twist(l.Asymmetry), Frequency: frequency(l.Rate*minute, l.Lasting, low), Coupling: coupling(l.Grip, low),
	}, nil
}

func reach(near, h, far float64) float64 {
	switch {
	case h <= near:
		return 1
	case h > far+1e-9:
		return 0
	}
	return near / h
}

func height(per, v, knuckles, top float64) float64 {
	if v > top+1e-9 {
		return 0
	}
	return 1 - per*math.Abs(v-knuckles)
}

func travel(per, d, least, most float64) float64 {
	switch {
	case d <= least:
		return 1
	case d > most+1e-9:
		return 0
	}
	return 0.82 + per/d
}

func twist(degrees float64) float64 {
	if degrees > 135 {
		return 0
	}
	return 1 - 0.0032*degrees
}

// coupling is the multiplier of the grip; it counts less where the lift starts below the knuckles. NIOSH 94-110 Table 7, values as recalled, document not
// at hand.
func coupling(grip GripKind, low bool) float64 {
	switch {
	case grip == GripPoor:
		return 0.90
	case grip == GripFair && low:
		return 0.95
	}
	return 1
}

func (l Lift) check() error {
	for _, given := range []struct {
		field       string
		value, most float64
	}{{"lift.horizontal", l.Horizontal, 3}, {"lift.vertical", l.Vertical, 3}, {"lift.travel", l.Travel, 3}} {
		if !(given.value >= 0 && given.value <= given.most) {
			return refuse(given.field, quantity.Write(given.value, quantity.Length, quantity.Metric), "A person's reach lies between 0 and 3 m.", "Measure from the ankles and from the floor to the hands.")
		}
	}
	switch {
	case !(l.Asymmetry >= 0 && l.Asymmetry <= 180):
		return refuse("lift.asymmetry", quantity.Write(l.Asymmetry, quantity.Number, quantity.Metric), "A body twists between 0 and 180 degrees.", "Straight ahead is 0.")
	case !(l.Rate >= 0 && l.Rate*minute <= 1000):
		return refuse("lift.rate", quantity.Write(l.Rate, quantity.Number, quantity.Metric), "Lifts a second must not be below zero.", "Count the lifts in fifteen minutes.")
	case !(l.Lasting >= 0 && l.Lasting <= 24*hour):
		return refuse("lift.lasting", quantity.Write(l.Lasting, quantity.Time, quantity.Metric), "Lifting lasts between 0 and 24 h.", "Count from the first lift to the last.")
	case l.Grip != GripGood && l.Grip != GripFair && l.Grip != GripPoor:
		return refuse("lift.grip", string(l.Grip), "A grip is good, fair or poor.", "A full bag held from below has a fair grip.")
	}
	return nil
}

// Lifting is a load held against what may be lifted. An index above 1 asks more of a body than the equation allows; None means that nothing at all
// may be lifted like this, and then there is no index.
type Lifting struct {
	Limit       float64     `json:"limit"` // recommended weight limit, kg
	Index       float64     `json:"index"` // load over it
	None        bool        `json:"none"`
	Multipliers Multipliers `json:"multipliers"`
}

// Against holds a load (kg) against the limit that multipliers leave of a load constant (kg): LoadMetric or LoadUS, as the multipliers' form.
func (m Multipliers) Against(load, constant float64) (Lifting, error) {
	if !(load >= 0 && load <= 1000) {
		return Lifting{}, refuse("lift.load", quantity.Write(load, quantity.Mass, quantity.Metric), "A load lies between 0 and 1000 kg.", "Give what one bag weighs.")
	}
	l := Lifting{Limit: constant * m.Product(), Multipliers: m}
	if l.Limit == 0 {
		l.None = true
		return l, nil
	}
	l.Index = load / l.Limit
	return l, nil
}
