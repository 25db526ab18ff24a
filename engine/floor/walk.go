// A room measured by walking round it: a length and a turn for every wall. Tape and corners are never perfect, so the walk ends a little off
// its start; the gap is shared out over the walls as surveyors do with a traverse.
package floor

import (
	"math"
	"strconv"

	"lowspot/engine/steady"
)

// ClosingLimit is the greatest closing error shared out, as a share of the perimeter. Common practice: past one in a hundred, a length was
// misread or a wall left out, and sharing it out would bend every wall.
const ClosingLimit = 0.01

// Leg is one wall of a walk: its length, metres, and the turn at its end, radians, to the left above zero.
type Leg struct {
	Length float64
	Turn   float64
}

// Closing is how far a walk ended from its start before the gap was shared out.
type Closing struct {
	X, Y      float64 // metres, from the start to where the walk ended
	Error     float64 // length of the gap, metres
	Perimeter float64 // metres walked
	OneIn     float64 // perimeter over error, as a traverse's closure is stated; zero where there is no error
}

// WalkRound turns a walk into a ring that starts at the origin along x. The closing error is shared out in proportion to the lengths: the
// compass rule (Bowditch), as in any handbook of surveying. The turn at the end of the last leg isn't needed. The closing is given with an
// error too, so that it can be shown.
func WalkRound(legs []Leg) (Ring, Closing, error) {
	if err := checkLegs(legs); err != nil {
		return nil, Closing{}, err
	}
	steps := stepsOf(legs)
	closing := closingOf(legs, steps)
	if closing.Error > ClosingLimit*closing.Perimeter {
		return nil, closing, openWalk(legs, steps, closing)
	}
	ring, at := make(Ring, len(legs)), Point{}
	for i, leg := range legs {
		ring[i] = at
		share := leg.Length / closing.Perimeter
		at = Point{at.X + steps[i].X - share*closing.X, at.Y + steps[i].Y - share*closing.Y}
	}
	return ring, closing, nil
}

// WalkPath is the walk as it was measured, before any error is shared out: it starts at the origin and ends where the walk ended.
func WalkPath(legs []Leg) []Point {
	path := []Point{{}}
	for _, step := range stepsOf(legs) {
		last := path[len(path)-1]
		path = append(path, Point{last.X + step.X, last.Y + step.Y})
	}
	return path
}

// stepsOf are the legs as they run in plan.
func stepsOf(legs []Leg) []Point {
	steps, heading := make([]Point, len(legs)), Point{1, 0}
	for i, leg := range legs {
		steps[i] = Point{leg.Length * heading.X, leg.Length * heading.Y}
		heading = turned(heading, leg.Turn)
	}
	return steps
}

func closingOf(legs []Leg, steps []Point) Closing {
	var c Closing
	for i, step := range steps {
		c.X, c.Y, c.Perimeter = c.X+step.X, c.Y+step.Y, c.Perimeter+legs[i].Length
	}
	c.Error = steady.Hypot(c.X, c.Y)
	if c.Error < 1e-9 { // rounding of the sums, not of the tape
		c.X, c.Y, c.Error = 0, 0, 0
		return c
	}
	c.OneIn = c.Perimeter / c.Error
	return c
}

func checkLegs(legs []Leg) error {
	if len(legs) < 3 {
		return &Error{Code: "too-few-corners", Message: "A walk round a room needs three walls or more; this one has " + strconv.Itoa(len(legs)) + ".", Remedy: "Add the walls that are missing, back to the first corner."}
	}
	for i, leg := range legs {
		if !finite(leg.Length, leg.Turn) || leg.Length <= 0 || leg.Length > farthest {
			return &Error{Code: "no-length", Message: "Wall " + strconv.Itoa(i+1) + " has no usable length.", Remedy: "Give a length above zero and up to 1 km, as measured."}
		}
		if math.Abs(leg.Turn) > 2*math.Pi {
			return &Error{Code: "turn", Message: "The turn after wall " + strconv.Itoa(i+1) + " goes more than once round.", Remedy: "Give it between 180° left and 180° right."}
		}
	}
	return nil
}

// turned is a heading after a turn to the left. Square turns are exact, so that a square room is square.
func turned(heading Point, turn float64) Point {
	quarters := math.Round(turn / (math.Pi / 2))
	sin, cos := steadySin(turn - quarters*(math.Pi/2))
	h := Point{heading.X*cos - heading.Y*sin, heading.X*sin + heading.Y*cos}
	for range (int(math.Mod(quarters, 4)) + 4) % 4 {
		h = Point{-h.Y, h.X}
	}
	return h
}

// steadySin gives the sine and cosine of an angle up to an eighth of a turn, from their series: the same on every target.
func steadySin(angle float64) (sin, cos float64) {
	if math.Abs(angle) < 1e-12 {
		return 0, 1
	}
	square := angle * angle
	sin, cos = 1, 1
	for n := 20.0; n > 0; n -= 2 {
		cos = 1 - square*cos/(n*(n-1))
		sin = 1 - square*sin/(n*(n+1))
	}
	return angle * sin, cos
}

// openWalk says which walls could make up the gap: those that run the way of it, within thirty degrees.
func openWalk(legs []Leg, steps []Point, c Closing) error {
	walls := ""
	for i, step := range steps {
		along := (step.X*c.X + step.Y*c.Y) / (legs[i].Length * c.Error)
		if math.Abs(along) > 0.866 {
			walls += strconv.Itoa(i+1) + ", "
		}
	}
	remedy := "Check every length and every turn."
	if walls != "" {
		remedy = "Check the lengths of walls " + walls + "and every turn."
	}
	return &Error{Code: "does-not-close", At: Point{c.X, c.Y}, Message: "The walk ends " + metres(c.Error) + " from where it began, 1 in " + strconv.FormatFloat(c.OneIn, 'f', 0, 64) + " of its length.", Remedy: remedy}
}

func metres(length float64) string { return strconv.FormatFloat(length, 'f', 3, 64) + " m" }
