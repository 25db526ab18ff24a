// Package measure times what a bench program offers, the same way native and in a browser: asked in JSON for one thing of one size, it runs it so
// many times and answers with the processor's time that it took. Processor time, because other work on the machine then counts on neither side.
package measure

import (
	"encoding/json"
	"fmt"
)

// Side is one thing to time. What is not to be timed is done before, when it is made, and after, when its result is asked for.
type Side struct {
	Input  any            // what a reference needs to do the same work; nil where there is none
	Run    func()         // what is timed
	Result func() float64 // a number by which two sides show that they did the same work
}

// Sides are made by name and size.
type Sides map[string]func(size int) Side

// request asks for so many runs; for the input, where there are to be none.
type request struct {
	Name  string `json:"name"`
	Size  int    `json:"size"`
	Times int    `json:"times"`
}

// answer is the processor's time of all the runs, in milliseconds, and a result; or an input. In a browser the page's own clock of its thread counts.
type answer struct {
	Milliseconds float64 `json:"ms"`
	Result       float64 `json:"result"`
	Input        any     `json:"input,omitempty"`
}

// responder answers requests and keeps the side asked for last, so that a round doesn't make it again.
func responder(sides Sides) func(line []byte) []byte {
	var made Side
	var last request
	return func(line []byte) []byte {
		var asked request
		must(json.Unmarshal(line, &asked))
		if asked.Name != last.Name || asked.Size != last.Size {
			create, known := sides[asked.Name]
			if !known {
				panic(fmt.Sprintf("nothing here is called %q", asked.Name))
			}
			made, last = create(asked.Size), asked
		}
		reply, err := json.Marshal(made.answer(asked.Times))
		must(err)
		return reply
	}
}

func (s Side) answer(times int) answer {
	if times == 0 {
		return answer{Input: s.Input}
	}
	before := processorTime()
	for range times {
		s.Run()
	}
	took := processorTime() - before
	return answer{Milliseconds: took.Seconds() * 1000, Result: s.Result()}
}

func must(err error) {
	if err != nil {
		panic(err)
	}
}
