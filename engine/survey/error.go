package survey

import (
	"math"
	"strconv"

	"lowspot/engine/floor"
)

// Error says why there is no answer: what is wrong, at which reading if any, and what would work.
type Error struct {
	Code    string `json:"code"`
	Reading int    `json:"reading"` // index, or -1
	Message string `json:"message"`
	Remedy  string `json:"remedy"`
}

func (e *Error) Error() string { return e.Message + " " + e.Remedy }

// The furthest that a place or a height may lie from the origin, metres, and the greatest error of a reading.
const farthest, greatestError = 10000.0, 1.0

func check(points []floor.Point, heights []float64, readingError float64, o Options) error {
	switch {
	case len(points) == 0:
		return &Error{"no-readings", -1, "There are no readings yet.", "Enter one at least."}
	case len(points) != len(heights):
		return &Error{"uneven-lists", -1, "There are " + strconv.Itoa(len(points)) + " places and " + strconv.Itoa(len(heights)) + " heights.", "Give each place its height."}
	case !within(readingError, 0, greatestError):
		return &Error{"reading-error", -1, "The error of a reading can't be " + number(readingError) + " m.", "Give how far off one reading may be, such as 1 mm."}
	case !fitOr(o.Unevenness, leastUnevenness, mostUnevenness) || !fitOr(o.Reach, leastReach, farthest) || (o.Kind != Matern32 && o.Kind != Exponential):
		return &Error{"options", -1, "The covariance asked for is none.", "Give an unevenness and a reach in metres, or zero to have them fitted."}
	}
	for i, p := range points {
		if !within(p.X, -farthest, farthest) || !within(p.Y, -farthest, farthest) {
			return &Error{"no-place", i, "Reading " + strconv.Itoa(i+1) + " has no usable place.", "Check its x and y."}
		}
		if !within(heights[i], -farthest, farthest) {
			return &Error{"no-height", i, "Reading " + strconv.Itoa(i+1) + " has no usable height.", "Check what was read there."}
		}
	}
	return nil
}

func fitOr(x, low, high float64) bool { return x == 0 || within(x, low, high) }

// within is false for what is no number.
func within(x, low, high float64) bool { return x >= low && x <= high }

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

func number(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
