package deck

// StiffnessLimit is how stiff a floor must be: no more than span/n under live load, and under all load where Total is above zero.
type StiffnessLimit struct {
	Finish string  `json:"finish"`
	Live   float64 `json:"live"`
	Total  float64 `json:"total"`
	Source string  `json:"source"`
}

// StiffnessLimits go from the code's own to the stiffest. Local code, the finish's own sheet and an engineer go first.
var StiffnessLimits = []StiffnessLimit{
	{Finish: "any", Live: 360, Source: "IRC Table R301.7 (reproductions)"},
	{Finish: "any, by the building code", Live: 360, Total: 240, Source: "IBC Table 1604.3 (reproduction)"},
	{Finish: "tile, stiffer practice", Live: 480, Source: "common practice"},
	{Finish: "stone", Live: 720, Source: "common practice, read in a secondary text"},
}
