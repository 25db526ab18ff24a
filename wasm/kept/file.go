package kept

import (
	"encoding/json"
	"strconv"

	"lowspot/engine"
)

// FileFormat is the version of the file that this build writes.
const FileFormat = 1

// The limits of a file, so that one from a stranger costs no more than it may.
const (
	MostBytes = 64 << 20
	MostJobs  = 20_000
	MostKept  = 10_000 // sheets, and rulebooks
)

// File is jobs, sheets, rulebooks, the price list and the settings in one file: some jobs, or all that is kept but earlier states of jobs.
type File struct {
	Lowspot  int          `json:"lowspot"` // the file's format
	Made     string       `json:"made"`    // when
	Jobs     []engine.Job `json:"jobs"`
	Sheets   []Sheet      `json:"sheets"`
	Books    []Book       `json:"books"`
	Shop     *engine.Shop `json:"shop,omitempty"`
	Settings Settings     `json:"settings,omitempty"`
}

// ReadFile reads a file within its limits.
func ReadFile(content []byte) (File, error) {
	var head struct {
		Lowspot int `json:"lowspot"`
	}
	switch {
	case len(content) > MostBytes:
		return File{}, badFile("It is larger than " + strconv.Itoa(MostBytes>>20) + " MB.")
	case !engine.Shallow(content):
		return File{}, badFile("Its brackets are nested too deep.")
	case json.Unmarshal(content, &head) != nil || head.Lowspot < 1:
		return File{}, badFile("It does not hold jobs of this tool.")
	case head.Lowspot > FileFormat:
		return File{}, newer("file")
	}
	var file File
	if err := json.Unmarshal(content, &file); err != nil {
		return File{}, badFile("Something in it is not where it belongs: " + err.Error() + ".")
	}
	if len(file.Sheets) > MostKept || len(file.Books) > MostKept {
		return File{}, badFile("It holds more than " + strconv.Itoa(MostKept) + " sheets or rulebooks.")
	}
	return file, checkJobs(file.Jobs)
}

func checkJobs(jobs []engine.Job) error {
	if len(jobs) > MostJobs {
		return badFile("It holds more than " + strconv.Itoa(MostJobs) + " jobs.")
	}
	for i := range jobs {
		if jobs[i].Format > engine.JobFormat {
			return newer("file")
		}
		jobs[i].Format = engine.JobFormat
		if excess := jobs[i].Excess(); excess != "" {
			return badFile("A job in it has " + excess + ".")
		}
	}
	return nil
}

func badFile(why string) error {
	return engine.Problem{Code: "file", Field: "file", Message: "This file can't be opened. " + why + " Nothing was changed.", Remedy: "Choose a file that was exported from here."}
}
