package main

import (
	"encoding/json"
	"strconv"

	"lowspot/engine"
	"lowspot/tests/bench/measure"
)

// plan is what the page's engine does at a keystroke, by readings: the job from its bytes, the plan, the plan's bytes.
func plan(readings int) measure.Side { return planOf(engine.Surveyed(readings)) }

// rooms is a plan of so many rooms with thirty readings each.
func rooms(count int) measure.Side {
	job := engine.Surveyed(30)
	one := job.Rooms[0]
	job.Rooms = nil
	for i := range count {
		one.ID = "room-" + strconv.Itoa(i)
		job.Rooms = append(job.Rooms, one)
	}
	return planOf(job)
}

// demo is the demo job's plan.
func demo(int) measure.Side { return planOf(engine.DemoJob("demo")) }

func planOf(job *engine.Job) measure.Side {
	document, err := json.Marshal(job)
	if err != nil {
		panic(err)
	}
	book := engine.ShippedRulebook()
	var written []byte
	return measure.Side{
		Input: job,
		Run: func() {
			job, _ := engine.ReadJob(document)
			written, _ = json.Marshal(engine.MakePlan(job, book))
		},
		Result: func() float64 { return float64(len(written)) },
	}
}
