package climate

import "lowspot/engine/quantity"

// vapourRatio is the mass of water vapour over that of dry air at the same pressure: ASHRAE Fundamentals 2017 ch. 1.
const vapourRatio = 0.621945

// HumidityRatio is the mass of water per mass of dry air at a pressure (Pa): ASHRAE Fundamentals 2017 ch. 1 eq. 20, for an ideal gas, which is
// 0.4 % to 0.6 % low at rooms' temperatures.
func HumidityRatio(a Air, pressure float64) (float64, error) {
	if err := a.checkUnder(pressure); err != nil {
		return 0, err
	}
	return ratioOf(a.Humidity*SaturationPressure(a.Temperature), pressure), nil
}

func ratioOf(vapour, pressure float64) float64 { return vapourRatio * vapour / (pressure - vapour) }

func (a Air) checkUnder(pressure float64) error {
	if !(pressure >= 50000 && pressure <= 120000) {
		return refuse("air.pressure", quantity.WriteIn(pressure, "kPa"), "Air has between 50 kPa and 120 kPa.", "101.325 kPa is the standard at sea level.")
	}
	return a.check()
}

// WetBulb is what a thermometer in a wet sleeve reads in moving air, K, at a pressure (Pa).
func WetBulb(a Air, pressure float64) (float64, error) {
	ratio, err := HumidityRatio(a, pressure)
	if err != nil {
		return 0, err
	}
	return risingRoot(coldest-20, a.Temperature, func(wet float64) float64 { return ratioFromWetBulb(a.Temperature, wet, pressure) - ratio }), nil
}

// AirFromWetBulb is the air that a dry and a wet thermometer (K) measure at a pressure (Pa).
func AirFromWetBulb(dry, wet, pressure float64) (Air, error) {
	if err := (Air{Temperature: dry}).checkUnder(pressure); err != nil {
		return Air{}, err
	}
	if !(wet >= coldest && wet <= dry) {
		return Air{}, refuse("air.wet_bulb", quantity.WriteIn(wet, "°C"), "A wet thermometer never reads more than the dry one.", "Check which reading is which.")
	}
	ratio := ratioFromWetBulb(dry, wet, pressure)
	if ratio < 0 {
		return Air{}, refuse("air.wet_bulb", quantity.WriteIn(wet, "°C"), "No air is as dry as these two readings say.", "Wet the sleeve and read both again.")
	}
	vapour := pressure * ratio / (vapourRatio + ratio)
	return Air{Temperature: dry, Humidity: vapour / SaturationPressure(dry)}, nil
}

// ratioFromWetBulb is ASHRAE Fundamentals 2017 ch. 1 eq. 33 (water on the sleeve) and 35 (ice), in °C and kJ/kg.
func ratioFromWetBulb(dryKelvin, wetKelvin, pressure float64) float64 {
	dry, wet := dryKelvin-ZeroCelsius, wetKelvin-ZeroCelsius
	saturated := ratioOf(SaturationPressure(wetKelvin), pressure)
	if wet >= 0 {
		return ((2501-2.326*wet)*saturated - 1.006*(dry-wet)) / (2501 + 1.86*dry - 4.186*wet)
	}
	return ((2830-0.24*wet)*saturated - 1.006*(dry-wet)) / (2830 + 1.86*dry - 2.1*wet)
}
