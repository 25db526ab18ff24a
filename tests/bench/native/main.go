// Command native times the engine's plan outside the browser: it reads a job file and writes the milliseconds of so many plans, one a line.
package main

import (
	"encoding/json"
	"fmt"
	"os"
	"strconv"
	"time"

	"lowspot/engine"
)

func main() {
	if len(os.Args) == 3 && os.Args[1] == "-job" {
		readings, _ := strconv.Atoi(os.Args[2])
		json.NewEncoder(os.Stdout).Encode(engine.Surveyed(readings))
		return
	}
	document, err := os.ReadFile(os.Args[1])
	if err != nil {
		panic(err)
	}
	times, _ := strconv.Atoi(os.Args[2])
	job, err := engine.ReadJob(document)
	if err != nil {
		panic(err)
	}
	book := engine.ShippedRulebook()
	engine.MakePlan(job, book)
	for range times {
		start := time.Now()
		// What the browser is asked to do too: the job from its bytes, the plan, the plan's bytes.
		job, _ := engine.ReadJob(document)
		plan, _ := json.Marshal(engine.MakePlan(job, book))
		fmt.Println(float64(time.Since(start).Microseconds())/1000, len(plan))
	}
}
