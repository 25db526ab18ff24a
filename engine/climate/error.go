package climate

import "strconv"

// Error says which quantity can't be used, what was given, and what would work.
type Error struct {
	Code    string `json:"code"` // the quantity
	Message string `json:"message"`
	Remedy  string `json:"remedy"`
}

func (e *Error) Error() string { return e.Message + " " + e.Remedy }

func refuse(what, given, remedy string) error {
	return &Error{Code: what, Message: "The " + what + " can't be " + given + ".", Remedy: remedy}
}

func number(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

// inRange refuses a temperature at which the formulas don't hold, and whatever isn't a number.
func inRange(what string, t float64) error {
	if t >= coldest && t <= hottest {
		return nil
	}
	return refuse(what, number(t-zeroCelsius)+" °C", "Give a temperature between -100 °C and 200 °C.")
}

func air(t, humidity float64) error {
	if err := inRange("air temperature", t); err != nil {
		return err
	}
	if humidity >= 0 && humidity <= 1 {
		return nil
	}
	return refuse("relative humidity", number(100*humidity)+" %", "Give a relative humidity between 0 % and 100 %.")
}
