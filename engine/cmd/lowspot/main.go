// Command lowspot makes the plan of a job file on the command line: text for people, JSON for programs.
//
//	lowspot [-json] [-work plan|study|pour|takeoff] [-rules BOOK] [-demo] [JOB.json]
//
// It is the same plan, to the byte, that the page works out; study, pour and take-off come as JSON alone. Without a file the job is read from standard input.
package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"

	"lowspot/engine"
	"lowspot/rules"
)

func main() {
	asJSON := flag.Bool("json", false, "write the whole plan as JSON")
	work := flag.String("work", "plan", "what to work out: plan, study, pour or takeoff")
	bookFile := flag.String("rules", "", "a rulebook `file` to use in place of the shipped one")
	demo := flag.Bool("demo", false, "plan the demo job")
	flag.Parse()
	if err := run(os.Stdout, *work, *asJSON, *demo, *bookFile, flag.Arg(0)); err != nil {
		fmt.Fprintln(os.Stderr, "lowspot:", err)
		os.Exit(1)
	}
}

func run(out io.Writer, work string, asJSON, demo bool, bookFile, jobFile string) error {
	book, err := readBook(bookFile)
	if err != nil {
		return err
	}
	job := engine.DemoJob("demo")
	if !demo {
		if job, err = readJob(jobFile); err != nil {
			return err
		}
	}
	switch work {
	case "plan":
		plan := engine.MakePlan(job, book)
		if asJSON {
			return writeJSON(out, plan)
		}
		return writeText(out, job, plan)
	case "study":
		return writeJSON(out, engine.MakeStudy(job, book))
	case "pour":
		return writeJSON(out, engine.MakePour(job, book))
	case "takeoff":
		return writeJSON(out, engine.MakeTakeOff(job, book, nil))
	}
	return fmt.Errorf("-work %s: choose plan, study, pour or takeoff", work)
}

func writeJSON(out io.Writer, worked any) error {
	bytes, err := json.Marshal(worked)
	if err != nil {
		return err
	}
	_, err = out.Write(append(bytes, '\n'))
	return err
}

func readBook(file string) (*engine.Rulebook, error) {
	if file == "" {
		return engine.ShippedRulebook(), nil
	}
	text, err := os.ReadFile(file)
	if err != nil {
		return nil, err
	}
	book, errors := rules.Parse(string(text))
	if len(errors) > 0 {
		return nil, fmt.Errorf("%s:%w", file, errors[0])
	}
	compiled := engine.NewRulebook(book)
	if len(compiled.Errors()) > 0 {
		return nil, fmt.Errorf("%s:%w", file, compiled.Errors()[0])
	}
	return compiled, nil
}

func readJob(file string) (*engine.Job, error) {
	read := func() ([]byte, error) { return os.ReadFile(file) }
	if file == "" {
		read = func() ([]byte, error) { return io.ReadAll(io.LimitReader(os.Stdin, engine.MostJobBytes+1)) }
	}
	document, err := read()
	if err != nil {
		return nil, err
	}
	return engine.ReadJob(document)
}
