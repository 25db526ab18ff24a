// F-numbers of a line of readings after ASTM E1155: floor flatness from the curvature over two steps, floor levelness from the fall over ten. The
// constants belong to inches at a spacing of 12 in; they and the way of combining are as recalled, document not at hand.
package floor

import "math"

const (
	flatnessConstant  = 4.57 * inch // over curvature at 12 in spacing
	levelnessConstant = 12.5 * inch // over the fall in 10 ft
	stepsOfLevelness  = 10
	leastFReadings    = 12 // readings on a line: 11 ft at 12 in
)

// FNumber is an F-number; unbounded where the readings show no departure at all, and then the value is zero.
type FNumber struct {
	Value     float64 `json:"value"`
	Unbounded bool    `json:"unbounded"`
}

// FNumbers are those of one line, or of several combined.
type FNumbers struct {
	Flatness  FNumber `json:"flatness"`  // FF
	Levelness FNumber `json:"levelness"` // FL
	Readings  int     `json:"readings"`
	Rescaled  bool    `json:"rescaled"` // the readings were 300 mm apart and were brought to 12 in by the geometry; not the standard's own procedure
}

// LineFNumbers works out FF and FL of a line from its heights, metres, all one spacing apart. The spacing is 12 in. Readings at 300 mm are rescaled,
// curvature with the square of the spacing and fall in proportion to it, and the result says so; any other spacing is refused.
func LineFNumbers(heights []float64, spacing float64) (FNumbers, error) {
	scale, rescaled, err := toTwelveInches(spacing)
	if err != nil {
		return FNumbers{}, err
	}
	if len(heights) < leastFReadings {
		return FNumbers{}, &Error{Code: "f-too-few", Message: "A line for F-numbers needs 12 readings or more, 12 in apart.", Remedy: "Take a longer line: 11 ft or more."}
	}
	if !finite(heights...) {
		return FNumbers{}, &Error{Code: "reading-not-a-number", Message: "A height on the line isn't a number.", Remedy: "Correct the reading or leave the line out."}
	}
	curvatures, falls := Curvatures(heights), TenStepFalls(heights)
	for i := range curvatures {
		curvatures[i] *= scale * scale
	}
	for i := range falls {
		falls[i] *= scale
	}
	return FNumbers{FlatnessNumber(curvatures), LevelnessNumber(falls), len(heights), rescaled}, nil
}

func toTwelveInches(spacing float64) (scale float64, rescaled bool, err error) {
	const near = 0.0005
	switch {
	case math.Abs(spacing-foot) <= near:
		return 1, false, nil
	case math.Abs(spacing-0.3) <= near:
		return foot / 0.3, true, nil
	}
	return 0, false, &Error{Code: "f-spacing", Message: "F-numbers need readings 12 in apart.", Remedy: "Take the line again at 12 in (or 300 mm), or use a straightedge tolerance."}
}

// Curvatures are the differences between neighbouring differences: positive in a trough.
func Curvatures(heights []float64) []float64 {
	var out []float64
	for i := 2; i < len(heights); i++ {
		out = append(out, (heights[i]-heights[i-1])-(heights[i-1]-heights[i-2]))
	}
	return out
}

// TenStepFalls are the differences between readings ten steps apart.
func TenStepFalls(heights []float64) []float64 {
	var out []float64
	for i := stepsOfLevelness; i < len(heights); i++ {
		out = append(out, heights[i]-heights[i-stepsOfLevelness])
	}
	return out
}

// FlatnessNumber is FF = 4.57 in / (3·S + |mean|) of curvatures at 12 in spacing, metres; S is the sample standard deviation.
func FlatnessNumber(curvatures []float64) FNumber { return fNumber(flatnessConstant, curvatures) }

// LevelnessNumber is FL = 12.5 in / (3·S + |mean|) of falls over 10 ft, metres.
func LevelnessNumber(falls []float64) FNumber { return fNumber(levelnessConstant, falls) }

func fNumber(constant float64, departures []float64) FNumber {
	mean, deviation := MeanAndDeviation(departures)
	departure := 3*deviation + math.Abs(mean)
	// Below a nanometre there is only rounding.
	if departure < 1e-9 {
		return FNumber{Unbounded: true}
	}
	return FNumber{Value: constant / departure}
}

// MeanAndDeviation are the mean and the sample standard deviation (n − 1) of some values; one value deviates by nothing.
func MeanAndDeviation(values []float64) (mean, deviation float64) {
	n := float64(len(values))
	if n == 0 {
		return 0, 0
	}
	for _, v := range values {
		mean += v / n
	}
	for _, v := range values {
		deviation += (v - mean) * (v - mean)
	}
	if n > 1 {
		deviation = math.Sqrt(deviation / (n - 1))
	}
	return mean, deviation
}

// CombineFNumbers combines lines two by two: F = Fa·Fb·√((ra + rb)/(ra·Fb² + rb·Fa²)), where r counts readings.
func CombineFNumbers(lines []FNumbers) FNumbers {
	if len(lines) == 0 {
		return FNumbers{}
	}
	sum := lines[0]
	for _, line := range lines[1:] {
		sum.Flatness = combined(sum.Flatness, line.Flatness, sum.Readings, line.Readings)
		sum.Levelness = combined(sum.Levelness, line.Levelness, sum.Readings, line.Readings)
		sum.Readings += line.Readings
		sum.Rescaled = sum.Rescaled || line.Rescaled
	}
	return sum
}

// combined adds the readings' inverse squares, which is the same formula and takes an unbounded number too.
func combined(a, b FNumber, ra, rb int) FNumber {
	weight := float64(ra)*a.inverseSquare() + float64(rb)*b.inverseSquare()
	if weight == 0 {
		return FNumber{Unbounded: true}
	}
	return FNumber{Value: math.Sqrt(float64(ra+rb) / weight)}
}

func (f FNumber) inverseSquare() float64 {
	if f.Unbounded {
		return 0
	}
	return 1 / (f.Value * f.Value)
}
