package engine

import (
	"errors"
	"math"
	"strconv"

	"lowspot/engine/floor"
	"lowspot/engine/survey"
	"lowspot/rules"
)

// beyondWalls is how far outside the walls the surface's box reaches, metres.
const beyondWalls = 1.0

// The reading error where the rulebook says nothing (common practice for a staff under a line laser), and the finest that a staff is believed, metres.
const usualReadingError, finestReading = 1e-3, 1e-5

// fitSurvey works out what the readings tell of the deck between them and along the walls.
func (w *work) fitSurvey(r *roomWork) bool {
	exact, result := w.book.quantity("reading_error", r.facts)
	if result.State != rules.Known {
		exact = usualReadingError
	}
	if before := w.sameSurvey(r, exact); before != nil {
		r.exact, r.model, r.surface, r.merges = exact, before.model, before.surface, before.merges
		return true
	}
	model, err := survey.Fit(r.points, r.heights, math.Max(exact, finestReading), survey.Options{})
	if err != nil {
		w.failSurvey(r, err)
		return false
	}
	r.exact, r.model = exact, model
	r.surface, r.merges = surfaceOf(r.site, model)
	return true
}

// sameSurvey is the room as worked out before, where its walls, its readings and their error are the same.
func (w *work) sameSurvey(r *roomWork, exact float64) *roomWork {
	if w.before == nil {
		return nil
	}
	for _, b := range w.before.rooms {
		if b.surface != nil && b.field == r.field && b.exact == exact {
			return b
		}
	}
	return nil
}

func (w *work) failSurvey(r *roomWork, err error) {
	problem := Problem{Code: "survey", Field: r.field + "/readings", Message: err.Error(), Remedy: "Check the readings."}
	var bad *survey.Error
	if errors.As(err, &bad) {
		problem.Code, problem.Message, problem.Remedy = bad.Code, bad.Message, bad.Remedy
		if bad.Reading >= 0 {
			problem.Field += "/rows/" + strconv.Itoa(r.rows[bad.Reading]) + "/height"
		}
		if bad.Code == "reading-error" {
			problem.Field = r.field + "/answers/survey.error"
		}
	}
	w.fail(problem)
}

// surfaceOf makes the deck's surface: every reading as read, and heights along the walls, where seldom anybody measures, from the survey's model.
func surfaceOf(s *site, model *survey.Model) (*floor.Surface, []floor.Merge) {
	support, walls := floor.Support(s.outline, s.points, wallSpacing(s))
	points := append(append(make([]floor.Point, 0, len(s.points)+len(support)), s.points...), support...)
	heights := append(make([]float64, 0, len(points)), s.heights...)
	for _, p := range support {
		heights = append(heights, heightBy(s, p, model))
	}
	return floor.Triangulate(points, heights, walls, beyondWalls, model.At)
}

// wallSpacing is how far apart heights along the walls are taken: half as far again as the readings stand from each other, so that a wall that
// was read like the rest of the floor gets none. Round the room there are some 200 at most.
func wallSpacing(s *site) float64 {
	return math.Max(1.5*math.Sqrt(s.outline.Area()/float64(len(s.points))), s.outline.Perimeter()/200)
}

// heightBy takes a reading that was taken in the very spot as it is.
func heightBy(s *site, spot floor.Point, model *survey.Model) float64 {
	const same = 1e-6 // metres
	for i, p := range s.points {
		if floor.Distance(p, spot) < same {
			return s.heights[i]
		}
	}
	return model.At(spot)
}
