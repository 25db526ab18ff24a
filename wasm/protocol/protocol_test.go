package protocol

import (
	"context"
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"lowspot/engine"
	"lowspot/wasm/kept"
	"lowspot/wasm/store"
)

func bridge() *Bridge { return New(kept.New(&store.Memory{}), "b1") }

// say sends a message as the page encodes it and gives the reply as the page decodes it.
func say(t testing.TB, b *Bridge, message string) map[string]any {
	t.Helper()
	answered := make(chan []byte, 2)
	b.Answer([]byte(message), func(reply []byte) { answered <- reply })
	select {
	case reply := <-answered:
		var decoded map[string]any
		require.NoError(t, json.Unmarshal(reply, &decoded), string(reply))
		return decoded
	case <-time.After(20 * time.Second):
		require.Fail(t, "no reply", message)
		return nil
	}
}

// ask sends one request and gives its reply's body.
func ask(t testing.TB, b *Bridge, kind string, body any) map[string]any {
	t.Helper()
	encoded, err := json.Marshal(body)
	require.NoError(t, err)
	reply := say(t, b, fmt.Sprintf(`{"id":1,"kind":%q}`+"\n%s", kind, encoded))
	require.Equal(t, true, reply["ok"], "%s: %v", kind, reply["error"])
	return reply["body"].(map[string]any)
}

func code(t testing.TB, reply map[string]any) string {
	t.Helper()
	require.Equal(t, false, reply["ok"], reply)
	require.NotContains(t, reply, "body")
	problem := reply["error"].(map[string]any)
	require.NotEmpty(t, problem["message"])
	require.NotEmpty(t, problem["remedy"])
	return problem["code"].(string)
}

func TestPageAndEngineOfOneBuildGreetEachOther(t *testing.T) {
	reply := say(t, bridge(), `{"id":7,"kind":"hello"}`+"\n"+`{"build":"b1"}`)
	require.Equal(t, map[string]any{"id": 7.0, "ok": true, "body": map[string]any{"build": "b1", "jobFormat": float64(engine.JobFormat)}}, reply)
	require.Equal(t, "build", code(t, say(t, bridge(), `{"id":7,"kind":"hello"}`+"\n"+`{"build":"b2"}`)))
}

func TestAMessageThatCannotBeReadGetsAReplyAllTheSame(t *testing.T) {
	for message, want := range map[string]string{
		``:                                      "message",
		`{"id":3`:                               "message",
		`[]`:                                    "message",
		`{"id":"three","kind":"hello"}`:         "message",
		`{"id":3,"kind":"hello"}`:               "message",
		`{"id":3,"kind":"hello"}` + "\n" + `[]`: "message",
		`{"id":3,"kind":"plan"}` + "\n" + `{"job":{"rooms":"none"}}`: "message",
		`{"id":3,"kind":"dance"}` + "\n" + `{}`:                      "unknown-kind",
		strings.Repeat("[", 1e6):                                     "message",
		"\xff\xfe":                                                   "message",
	} {
		require.Equal(t, want, code(t, say(t, bridge(), message)), message[:min(len(message), 60)])
	}
}

func TestTheReplyCarriesTheRequestsNumber(t *testing.T) {
	b := bridge()
	for _, kind := range []string{"vocabulary", "jobs.list", "dance"} {
		require.Equal(t, 42.0, say(t, b, `{"id":42,"kind":"`+kind+`"}`+"\n{}")["id"], kind)
	}
}

func TestTheDemoJobIsPlannedKeptListedAndOpened(t *testing.T) {
	b := bridge()
	job := ask(t, b, "jobs.demo", Nothing{})["job"].(map[string]any)
	plan := ask(t, b, "plan", map[string]any{"job": job})
	require.Positive(t, plan["totals"].(map[string]any)["bags"])

	at := ask(t, b, "jobs.keep", map[string]any{"job": job})["kept"]
	listed := ask(t, b, "jobs.list", Nothing{})["jobs"].([]any)
	require.Len(t, listed, 1)
	require.Equal(t, at, listed[0].(map[string]any)["kept"])
	opened := ask(t, b, "jobs.open", Named{ID: job["id"].(string)})
	require.Equal(t, job, opened["job"])
	require.Equal(t, plan, ask(t, b, "plan", map[string]any{"job": opened["job"]}), "the same job gives the same plan")
}

func TestEveryFindingCanBeExplained(t *testing.T) {
	b := bridge()
	job := ask(t, b, "jobs.demo", Nothing{})["job"]
	findings := ask(t, b, "plan", map[string]any{"job": job})["findings"].([]any)
	require.NotEmpty(t, findings)
	for _, f := range findings {
		finding := f.(map[string]any)
		explained := ask(t, b, "explain", map[string]any{"job": job, "rule": finding["rule"], "subject": finding["subject"]})
		require.NotEmpty(t, explained["text"], finding["rule"])
	}
	require.Equal(t, "missing", code(t, say(t, b, `{"id":1,"kind":"explain"}`+"\n"+`{"job":{},"rule":"none","subject":{"scope":"job"}}`)))
}

func TestAJobMovesThroughDeletingCopyingAndFiles(t *testing.T) {
	b := bridge()
	job := ask(t, b, "jobs.new", WantedJob{Units: "us"})["job"].(map[string]any)
	id := Named{ID: job["id"].(string)}
	ask(t, b, "jobs.keep", map[string]any{"job": job})
	ask(t, b, "jobs.copy", CopyJob{ID: id.ID, Name: "copy"})
	ask(t, b, "jobs.delete", id)
	ask(t, b, "jobs.undelete", id)
	text := ask(t, b, "jobs.export", ExportJobs{})["text"].(string)
	ask(t, b, "jobs.delete", id)
	ask(t, b, "jobs.erase", id)
	require.Len(t, ask(t, b, "jobs.list", Nothing{})["jobs"], 1)
	done := ask(t, b, "jobs.import", FileText{Text: text})
	require.Len(t, done["jobs"], 1)
	require.Equal(t, 1.0, done["same"])
	require.Equal(t, []any{}, ask(t, b, "jobs.revisions", id)["revisions"])
	require.Equal(t, "missing", code(t, say(t, b, `{"id":1,"kind":"jobs.restore"}`+"\n"+`{"id":"`+id.ID+`","number":1}`)))
}

func TestSheetsRulebooksAndSettingsAreKept(t *testing.T) {
	b := bridge()
	ask(t, b, "sheets.keep", kept.Sheet{ID: "s", Kind: "primer"})
	require.Len(t, ask(t, b, "sheets.list", Nothing{})["sheets"], 1)
	ask(t, b, "sheets.delete", Named{ID: "s"})
	require.Empty(t, ask(t, b, "sheets.list", Nothing{})["sheets"])

	shipped := ask(t, b, "books.shipped", Nothing{})["text"].(string)
	require.Empty(t, ask(t, b, "books.check", BookText{Text: shipped})["errors"])
	ask(t, b, "books.keep", kept.Book{ID: "r", Title: "Own", Text: shipped})
	require.Equal(t, shipped, ask(t, b, "books.open", Named{ID: "r"})["text"])
	require.Len(t, ask(t, b, "books.list", Nothing{})["books"], 1)
	ask(t, b, "books.delete", Named{ID: "r"})

	ask(t, b, "settings.keep", SettingsText{Values: kept.Settings{"language": "es"}})
	require.Equal(t, map[string]any{"language": "es"}, ask(t, b, "settings.open", Nothing{})["values"])
}

func TestAPlanByAnOwnRulebookIsMadeByThatRulebook(t *testing.T) {
	b := bridge()
	job := ask(t, b, "jobs.demo", Nothing{})["job"]
	shipped := ask(t, b, "books.shipped", Nothing{})["text"].(string)
	own := shipped + "\n# changed\n"
	require.Equal(t, ask(t, b, "plan", map[string]any{"job": job}), ask(t, b, "plan", map[string]any{"job": job, "book": own}))
	none := ask(t, b, "plan", map[string]any{"job": job, "book": "# no rules"})
	require.Empty(t, none["findings"])
	require.NotEmpty(t, ask(t, b, "books.check", BookText{Text: "rubbish"})["errors"])
}

func TestQuantitiesAreReadAndWritten(t *testing.T) {
	b := bridge()
	length := map[string]any{"Length": 1}
	require.InDelta(t, 0.009525, ask(t, b, "quantity.read", map[string]any{"typed": "3/8 in", "dimension": length})["si"], 1e-12)
	require.InDelta(t, 0.0095, ask(t, b, "quantity.read", map[string]any{"typed": "9,5", "dimension": length, "bareUnit": "mm"})["si"], 1e-12)
	require.Equal(t, "3/8 in", ask(t, b, "quantity.write", map[string]any{"si": 0.009525, "dimension": length, "units": "us"})["text"])
	reply := say(t, b, `{"id":1,"kind":"quantity.read"}`+"\n"+`{"typed":"3 kg","dimension":{"Length":1}}`)
	require.Equal(t, "dimension", code(t, reply))
	require.Equal(t, "3 kg", reply["error"].(map[string]any)["given"])
}

func TestAFaultOfTheEngineIsToldWithAReport(t *testing.T) {
	broken := on("broken", func(context.Context, *Bridge, Nothing) (Nothing, error) { panic("index out of range") })
	message := bridge().answer(t.Context(), Request{ID: 5, body: []byte("{}")}, broken)
	require.Contains(t, string(message), `"id":5,"ok":false`)
	require.Contains(t, string(message), `"code":"fault"`)
	require.Contains(t, string(message), "index out of range")
}

func TestANumberThatIsNoneIsAFaultAndNotAReply(t *testing.T) {
	message := encode(Reply{ID: 5, OK: true, Body: ReadAmount{SI: math.NaN()}}, nil)
	require.Contains(t, string(message), `"code":"fault"`)
}

func TestAListIsNeverNull(t *testing.T) {
	type inner struct {
		Numbers []float64         `json:"numbers"`
		Names   map[string]string `json:"names"`
		Next    *inner            `json:"next"`
	}
	encoded, err := json.Marshal(withoutNull(map[string][]inner{"a": {{Next: &inner{}}}, "b": nil}))
	require.NoError(t, err)
	require.JSONEq(t, `{"a":[{"numbers":[],"names":{},"next":{"numbers":[],"names":{},"next":null}}],"b":[]}`, string(encoded))
}

func TestNoReplyHoldsANullList(t *testing.T) {
	Kinds(func(name string, _, reply reflect.Type) {
		encoded, err := json.Marshal(withoutNull(reflect.Zero(reply).Interface()))
		require.NoError(t, err)
		for _, list := range []string{"jobs", "rooms", "errors", "words", "values", "steps"} {
			require.NotContains(t, string(encoded), `"`+list+`":null`, name)
		}
	})
}

// hung is a store that never answers.
type hung struct{ store.Store }

func (hung) Read(ctx context.Context, _ func(store.Reader) error) error {
	<-ctx.Done()
	return ctx.Err()
}

func TestAPlanDoesNotWaitForADiskThatHangs(t *testing.T) {
	b := New(kept.New(hung{}), "b1")
	b.Answer([]byte(`{"id":1,"kind":"jobs.list"}`+"\n"+`{}`), func([]byte) {})
	require.Equal(t, true, say(t, b, `{"id":2,"kind":"vocabulary"}`+"\n"+`{}`)["ok"])
}

func TestStorageIsUsedInTheOrderOfTheRequests(t *testing.T) {
	b := bridge()
	for i := range 50 {
		b.Answer(fmt.Appendf(nil, `{"id":%d,"kind":"jobs.keep"}`+"\n"+`{"job":{"id":"a","name":"edit %d"}}`, i, i), func([]byte) {})
	}
	require.Equal(t, "edit 49", ask(t, b, "jobs.open", Named{ID: "a"})["job"].(map[string]any)["name"])
}

// FuzzAnswer: whatever comes in, exactly one well-formed reply goes out, and the engine never faults.
func FuzzAnswer(f *testing.F) {
	Kinds(func(name string, body, _ reflect.Type) {
		example, err := json.Marshal(withoutNull(reflect.Zero(body).Interface()))
		require.NoError(f, err)
		f.Add(fmt.Appendf(nil, `{"id":1,"kind":%q}`+"\n%s", name, example))
	})
	demo, err := json.Marshal(engine.DemoJob("demo"))
	require.NoError(f, err)
	f.Add(fmt.Appendf(nil, `{"id":1,"kind":"plan"}`+"\n"+`{"job":%s}`, demo))
	b := bridge() // one for all: compiling the rulebook costs more than most answers
	f.Fuzz(func(t *testing.T, message []byte) {
		b.Keeper.Store = &store.Memory{}
		reply := say(t, b, string(message))
		require.Contains(t, reply, "id")
		if problem, failed := reply["error"].(map[string]any); failed {
			require.NotEqual(t, CodeFault, problem["code"], problem)
		}
	})
}

func TestWhatIsNotPlainArrivesAsItWasWritten(t *testing.T) {
	for _, text := range []string{"", "plain", "5 m² at 20 °C", "señal – ≤ 3", "🧱 and \u2028", "²"} {
		written, err := json.Marshal(text)
		require.NoError(t, err)
		escaped := plain(written)
		require.Equal(t, len(escaped), beyond(escaped), "ASCII alone")
		var read string
		require.NoError(t, json.Unmarshal(escaped, &read))
		require.Equal(t, text, read)
	}
}
