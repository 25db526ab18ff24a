// Every answer to an absurd job: it comes, and every number in it is one.
package hostile

import (
	"encoding/json"
	"math"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/rules"
)

// endless is how long one answer on one job may take before it counts as hanging; a slow machine is no hang.
const endless = 2 * time.Minute

var book = engine.ShippedRulebook()

// Everything that the page asks of a job is answered, by numbers that are numbers.
func TestAbsurdJobsAreAnsweredInFiniteNumbers(t *testing.T) {
	for name, job := range absurd() {
		t.Run(name, func(t *testing.T) {
			document, err := json.Marshal(job)
			require.NoError(t, err)
			if again, err := engine.ReadJob(document); err == nil {
				job = again
			} // else it is refused, and planned all the same, as one that grew so large on the page
			answers(t, job)
		})
	}
}

// answers asks all that the page asks.
func answers(t *testing.T, job *engine.Job) {
	plan := engine.MakePlan(job, book)
	finite(t, "plan", func() any { return plan })
	finite(t, "study", func() any { return engine.MakeStudy(job, book) })
	finite(t, "pour", func() any { return engine.MakePour(job, book) })
	finite(t, "take-off", func() any { return engine.MakeTakeOff(job, book, shop()) })
	finite(t, "guide", func() any { return engine.MakeGuide(job, book) })
	finite(t, "field sheet", func() any { return engine.MakeFieldSheet(job, book) })
	finite(t, "outcome", func() any { return engine.MakeAfter(job, book) })
	for _, record := range job.Record {
		finite(t, "rest of the pour", func() any {
			rest, _ := engine.ReplanPour(job, book, record.Room, record.Part, "2026-05-02T09:00:00Z")
			return rest
		})
	}
	if broken := firstBroken(plan); broken != nil {
		finite(t, "clear", func() any {
			clearing, _ := engine.Clear(job, book, shop(), broken.Rule, broken.Subject)
			return clearing
		})
		finite(t, "explain", func() any { why, _ := engine.Explain(job, book, broken.Rule, broken.Subject); return why })
	}
}

func firstBroken(plan *engine.Plan) *engine.Finding {
	for i := range plan.Findings {
		if plan.Findings[i].State == rules.Broken {
			return &plan.Findings[i]
		}
	}
	return nil
}

func shop() *engine.Shop {
	shop := engine.NewShop()
	shop.Hour, shop.Delivery = "1e9", "NaN"
	return &shop
}

// finite works something out and holds that it comes, in time, and that every number in it and every text of it is one.
func finite(t *testing.T, what string, work func() any) {
	t.Helper()
	done := make(chan any, 1)
	go func() { done <- work() }()
	select {
	case answer := <-done:
		everyNumber(t, what, reflect.ValueOf(answer))
		_, err := json.Marshal(answer)
		require.NoError(t, err, what)
	case <-time.After(endless):
		t.Fatalf("%s: no answer in %v", what, endless)
	}
}

// notANumber is how a number that is none would be written.
var notANumber = regexp.MustCompile(`(?i)(^|[^\w"“'])[+-]?(nan|inf)([^\w"”']|$)|e\+?[1-9]\d\d`)

// quoted is what a person typed, told back.
var quoted = regexp.MustCompile(`“[^”]*”`)

func everyNumber(t *testing.T, path string, v reflect.Value) {
	t.Helper()
	switch v.Kind() {
	case reflect.Float64:
		require.False(t, math.IsNaN(v.Float()) || math.IsInf(v.Float(), 0), "%s is %v", path, v.Float())
	case reflect.String:
		if !strings.HasSuffix(path, ".Given") {
			require.NotRegexp(t, notANumber, quoted.ReplaceAllString(v.String(), ""), path)
		}
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			everyNumber(t, path, v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				everyNumber(t, path+"."+v.Type().Field(i).Name, v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			everyNumber(t, path, v.Index(i))
		}
	case reflect.Map:
		for _, key := range v.MapKeys() {
			everyNumber(t, path+"."+key.String(), v.MapIndex(key))
		}
	}
}
