package pour

import (
	"math"

	"lowspot/engine/steady"
)

// gasConstant in J/(mol·K), to the digits of the published rows.
const gasConstant = 8.314

// Spell is a stretch of time at one temperature.
type Spell struct {
	Seconds     float64 `json:"seconds"`
	Temperature float64 `json:"temperature"` // K
}

// Maturity is the Nurse–Saul sum of (T − datum)·time, K·s; time below the datum adds nothing (ASTM C1074).
func Maturity(spells []Spell, datum float64) float64 {
	sum := 0.0
	for _, s := range spells {
		if s.Temperature > datum {
			sum += (s.Temperature - datum) * s.Seconds
		}
	}
	return sum
}

// ArrheniusRate is how fast setting goes at a temperature against the reference one, both K: exp(−q·(1/T − 1/reference)). q is the activation
// energy over the gas constant, K (ASTM C1074's form).
func ArrheniusRate(temperature, reference, q float64) float64 {
	return steady.Exp(-q * (1/temperature - 1/reference))
}

// ActivationEnergy is that of portland cement, J/mol, after Freiesleben Hansen & Pedersen: 33.5 kJ/mol, and 1.47 more for each degree below 20 °C
// (value as recalled, document not at hand).
func ActivationEnergy(temperature float64) float64 {
	return 33500 + 1470*math.Max(0, ZeroCelsius+20-temperature)
}

// The models by which times follow temperature.
const (
	NurseSaul = "nurse-saul" // rate (T − datum)/(reference − datum)
	Arrhenius = "arrhenius"  // rate exp(−q·(1/T − 1/reference))
	Q10       = "q10"        // the rate doubles every 10 K, a rule of thumb
)

// Setting is how a product's times follow temperature. The sheet's times hold at Reference; Least and Greatest bound where the model is used.
type Setting struct {
	Model     string  `json:"model"`
	Reference float64 `json:"reference"` // K
	Datum     float64 `json:"datum"`     // K, for nurse-saul
	Q         float64 `json:"q"`         // K, for arrhenius; 0 takes ActivationEnergy
	Factor    float64 `json:"factor"`    // per 10 K, for q10; 0 takes 2
	Least     float64 `json:"least"`     // K, no pour below it
	Greatest  float64 `json:"greatest"`  // K, no pour above it
}

// CommonSetting is the model used where a sheet gives times at 20 °C and no more: doubling every 10 K between 5 °C and 35 °C (common practice;
// 35 °C is also the hot-weather limit at discharge of ACI 301-20 and ACI 305.1-14, seen in a reproduction).
var CommonSetting = Setting{Model: Q10, Reference: ZeroCelsius + 20, Factor: 2, Least: ZeroCelsius + 5, Greatest: ZeroCelsius + 35}

// Rate is how fast the product sets at a temperature (K) against its reference. Outside the model's limits it is refused.
func (s Setting) Rate(temperature float64) (float64, error) {
	if !(temperature >= s.Least && temperature <= s.Greatest) {
		return 0, refuse("temperature", celsius(temperature), "times are worked out from "+celsius(s.Least)+" to "+celsius(s.Greatest)+" only; warm or cool the room, or go by the sheet")
	}
	rate := math.NaN()
	switch s.Model {
	case NurseSaul:
		rate = (temperature - s.Datum) / (s.Reference - s.Datum)
	case Arrhenius:
		q := s.Q
		if q == 0 {
			q = ActivationEnergy(temperature) / gasConstant
		}
		rate = ArrheniusRate(temperature, s.Reference, q)
	case Q10:
		factor := s.Factor
		if factor == 0 {
			factor = 2
		}
		rate = steady.Pow(factor, (temperature-s.Reference)/10)
	default:
		return 0, refuse("setting model", "“"+s.Model+"”", "choose "+NurseSaul+", "+Arrhenius+" or "+Q10)
	}
	if !positive(rate) {
		return 0, refuse("temperature", celsius(temperature)+" gives no setting by the "+s.Model+" model", "give a temperature above the datum and a full set of the model's figures")
	}
	return rate, nil
}

// TimeAt is how long something the sheet gives as seconds at the reference temperature takes at another: flow, wet edge, walking, tiling.
func (s Setting) TimeAt(seconds, temperature float64) (float64, error) {
	rate, err := s.Rate(temperature)
	if err != nil {
		return 0, err
	}
	return seconds / rate, nil
}

// States says the model and its limits in a sentence, for the page and the print.
func (s Setting) States() string {
	factor := s.Factor
	if factor == 0 {
		factor = 2
	}
	how := "run " + number(factor, 2) + " times as fast for every 10 °C more (a rule of thumb)"
	switch s.Model {
	case NurseSaul:
		how = "follow maturity, counted from " + celsius(s.Datum) + " (Nurse–Saul)"
	case Arrhenius:
		how = "follow an Arrhenius rate"
	}
	return "The sheet's times hold at " + celsius(s.Reference) + "; here they " + how + ". Used from " + celsius(s.Least) + " to " + celsius(s.Greatest) +
		"; humidity, draught and depth are left out, and a test patch on site goes before any model."
}
