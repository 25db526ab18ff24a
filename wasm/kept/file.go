package kept

import (
	"bytes"
	"context"
	"encoding/json"
	"strconv"

	"lowspot/engine"
	"lowspot/wasm/store"
)

// FileFormat is the version of the file that this build writes.
const FileFormat = 1

// The limits of a file, so that one from a stranger costs no more than it may.
const (
	MostBytes    = 64 << 20
	MostJobs     = 20_000
	MostRooms    = 1_000   // of one job
	MostReadings = 250_000 // of one room
)

// File is jobs, sheets and rulebooks in one file.
type File struct {
	Lowspot int          `json:"lowspot"` // the file's format
	Made    string       `json:"made"`    // when
	Jobs    []engine.Job `json:"jobs"`
	Sheets  []Sheet      `json:"sheets"`
	Books   []Book       `json:"books"`
}

// Imported is what came of reading a file.
type Imported struct {
	Jobs   []Entry `json:"jobs"` // added
	Same   int     `json:"same"` // jobs that were here already
	Sheets int     `json:"sheets"`
	Books  int     `json:"books"`
}

// Export writes the jobs of these IDs to a file or, given none, all that is kept, and marks them as exported.
func (k *Keeper) Export(ctx context.Context, ids []string) ([]byte, error) {
	file := File{Lowspot: FileFormat, Made: k.now(), Jobs: []engine.Job{}, Sheets: []Sheet{}, Books: []Book{}}
	if len(ids) == 0 {
		if err := k.fillAll(ctx, &file, &ids); err != nil {
			return nil, err
		}
	}
	for _, id := range ids {
		_, err := k.changeJob(ctx, id, func(found *jobRecord, _ store.Writer) (*jobRecord, error) {
			if found == nil {
				return nil, missing("job", id)
			}
			file.Jobs = append(file.Jobs, found.Item)
			found.Exported = file.Made
			return found, nil
		})
		if err != nil {
			return nil, err
		}
	}
	return json.MarshalIndent(file, "", "\t")
}

func (k *Keeper) fillAll(ctx context.Context, file *File, ids *[]string) (err error) {
	if file.Sheets, err = k.Sheets().List(ctx); err != nil {
		return err
	}
	if file.Books, err = k.Books().List(ctx); err != nil {
		return err
	}
	entries, err := k.ListJobs(ctx)
	for _, entry := range entries {
		if entry.Deleted == "" {
			*ids = append(*ids, entry.ID)
		}
	}
	return err
}

// Import adds what a file holds, all of it or, when anything is wrong, nothing. What is here already stays: a document with a known ID and
// other content is added under a new one.
func (k *Keeper) Import(ctx context.Context, content []byte) (Imported, error) {
	file, err := ReadFile(content)
	if err != nil {
		return Imported{}, err
	}
	var done Imported
	err = k.Store.Write(ctx, func(w store.Writer) error {
		done = Imported{Jobs: []Entry{}}
		for _, job := range file.Jobs {
			if err := k.addJob(w, job, &done); err != nil {
				return err
			}
		}
		for _, sheet := range file.Sheets {
			added, err := add(k, w, k.Sheets(), &sheet.ID, &sheet)
			if err != nil {
				return err
			}
			done.Sheets += added
		}
		for _, book := range file.Books {
			added, err := add(k, w, k.Books(), &book.ID, &book)
			if err != nil {
				return err
			}
			done.Books += added
		}
		return nil
	})
	return done, told(err)
}

func (k *Keeper) addJob(w store.Writer, job engine.Job, done *Imported) error {
	added, err := add(k, w, shelf[engine.Job]{k, "job", jobKey("")}, &job.ID, &job)
	if err != nil {
		return err
	}
	if added == 0 {
		done.Same++
		return nil
	}
	entry := entryOf(&jobRecord{Kept: k.now(), Item: job})
	done.Jobs = append(done.Jobs, entry)
	return enter(w, entry)
}

// add puts an item on a shelf unless it is there already, and gives how many it added. id points into the item.
func add[T any](k *Keeper, w store.Writer, s shelf[T], id *string, item *T) (int, error) {
	if checkID("id", *id) != nil {
		*id = k.NewID()
	}
	there, err := load[T](w, s.what, s.prefix+*id)
	if err == nil && there != nil && sameDocument(there.Item, *item) {
		return 0, nil
	}
	if err != nil || there != nil {
		*id = k.NewID()
	}
	content, err := encode(&record[T]{Kept: k.now(), Item: *item})
	if err != nil {
		return 0, err
	}
	return 1, w.Put(s.prefix+*id, content)
}

func sameDocument(a, b any) bool {
	first, err := json.Marshal(a)
	second, otherwise := json.Marshal(b)
	return err == nil && otherwise == nil && bytes.Equal(first, second)
}

// ReadFile reads a file within its limits.
func ReadFile(content []byte) (File, error) {
	var head struct {
		Lowspot int `json:"lowspot"`
	}
	switch {
	case len(content) > MostBytes:
		return File{}, badFile("It is larger than " + strconv.Itoa(MostBytes>>20) + " MB.")
	case !Shallow(content):
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
		if len(jobs[i].Rooms) > MostRooms {
			return badFile("A job in it has more than " + strconv.Itoa(MostRooms) + " rooms.")
		}
		for _, room := range jobs[i].Rooms {
			if len(room.Readings.Rows) > MostReadings {
				return badFile("A room in it has more than " + strconv.Itoa(MostReadings) + " readings.")
			}
		}
	}
	return nil
}

func badFile(why string) error {
	return engine.Problem{Code: "file", Field: "file", Message: "This file can't be opened. " + why + " Nothing was changed.", Remedy: "Choose a file that was exported from here."}
}
