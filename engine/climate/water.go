package climate

import "math"

// WaterDensity is the density of water free of air at a temperature (K), kg/m³, 0 °C to 40 °C: Tanaka et al. 2001, Metrologia 38:301, formula as
// recalled, document not at hand; NaN beyond. It turns a volume of mixing water into what the scales show.
func WaterDensity(temperature float64) float64 {
	t := temperature - ZeroCelsius
	if !(t >= 0 && t <= 40) {
		return math.NaN()
	}
	fromDensest := t - 3.983035
	return 999.974950 * (1 - fromDensest*fromDensest*(t+301.797)/(522528.9*(t+69.34881)))
}
