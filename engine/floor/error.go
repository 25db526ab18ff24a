package floor

// Error says why an outline or a walk can't be used: what is wrong, where in plan, and what would work.
type Error struct {
	Code    string `json:"code"`
	Message string `json:"message"`
	Remedy  string `json:"remedy"`
	At      Point  `json:"at"`
}

func (e *Error) Error() string { return e.Message + " " + e.Remedy }
