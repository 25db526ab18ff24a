// How far a finish plane falls across a room: what a tilted floor asks of tile, doors and furniture, and what no pouring takes away.
package floor

// Drop is the greatest fall of a plane across a room, between two corners of its outline.
type Drop struct {
	Fall float64 `json:"fall"` // metres
	From Point   `json:"from"` // the high corner
	To   Point   `json:"to"`   // the low corner
}

// Fall is the greatest fall of a plane across an outline. It lies between corners, because a plane's extremes do.
func Fall(plane Plane, outline Outline) Drop {
	if len(outline.Outer) == 0 {
		return Drop{}
	}
	high, low := outline.Outer[0], outline.Outer[0]
	for _, p := range outline.Outer {
		if plane.At(p) > plane.At(high) {
			high = p
		}
		if plane.At(p) < plane.At(low) {
			low = p
		}
	}
	return Drop{plane.At(high) - plane.At(low), high, low}
}
