package protocol

import (
	"context"
	"encoding/json"
	"reflect"
	"time"

	"lowspot/engine"
)

// kind is one kind of request.
type kind struct {
	name        string
	body, reply reflect.Type
	patience    time.Duration // with storage; none: it uses none
	answer      func(context.Context, *Bridge, json.RawMessage) (any, error)
}

// Kinds gives every kind of request with the types of its body and its reply, in order.
func Kinds(visit func(name string, body, reply reflect.Type)) {
	for _, k := range kinds {
		visit(k.name, k.body, k.reply)
	}
}

var kinds = []kind{
	worked("hello", hello),
	worked("plan", plan),
	worked("study", study),
	worked("spot", spot),
	worked("section", section),
	worked("guide", guide),
	worked("field-sheet", fieldSheet),
	worked("explain", explain),
	worked("pour", pourDay),
	worked("pour.replan", pourReplan),
	worked("calendar.write", writeCalendar),
	worked("vocabulary", vocabulary),
	worked("books.shipped", shippedBook),
	worked("books.check", checkBook),
	worked("books.view", viewBook),
	worked("books.change", changeRule),
	worked("books.leave-out", leaveOutRule),
	worked("books.merge", mergeBook),
	worked("books.write", writeBookFile),
	worked("books.preview", previewFile),
	worked("rules.on", rulesOn),
	worked("rules.try", tryRule),
	worked("rules.rewrite", rewriteNumber),
	worked("clear", clearFinding),
	worked("readings.read", readReadings),
	worked("quantity.read", readQuantity),
	worked("quantity.write", writeQuantity),
	worked("takeoff", takeOff),
	worked("csv.write", writeCSV),
	worked("takeoff.planes", planeCosts),
	worked("prices.read", readPrices),
	worked("prices.write", writePrices),
	worked("prices.set", setPrice),
	worked("after", after),
	worked("jobs.read", readJobText),
	worked("jobs.write", writeJobText),
	worked("jobs.new", newJob),
	worked("jobs.demo", demoJob),

	stored("jobs.list", listJobs),
	stored("jobs.open", openJob),
	stored("jobs.keep", keepJob),
	stored("jobs.put-off", putOff),
	stored("jobs.copy", copyJob),
	stored("jobs.delete", deleteJob),
	stored("jobs.undelete", undeleteJob),
	stored("jobs.erase", eraseJob),
	stored("jobs.revisions", listRevisions),
	stored("jobs.restore", restoreRevision),
	sweeping("jobs.export", exportJobs),
	sweeping("jobs.import", importFile),

	stored("sheets.list", listSheets),
	stored("sheets.keep", keepSheet),
	stored("sheets.delete", deleteSheet),

	stored("books.list", listBooks),
	stored("books.open", openBook),
	stored("books.keep", keepBook),
	stored("books.delete", deleteBook),

	stored("shop.open", openShop),
	stored("shop.keep", keepShop),
	stored("past", past),

	stored("settings.open", openSettings),
	stored("settings.keep", keepSettings),
}

var kindsByName = func() map[string]kind {
	byName := make(map[string]kind, len(kinds))
	for _, k := range kinds {
		byName[k.name] = k
	}
	return byName
}()

// worked is a kind that only works things out.
func worked[Body, Answer any](name string, answer func(*Bridge, Body) (Answer, error)) kind {
	return on(name, func(_ context.Context, b *Bridge, body Body) (Answer, error) { return answer(b, body) })
}

// stored is a kind that uses storage.
func stored[Body, Answer any](name string, answer func(context.Context, *Bridge, Body) (Answer, error)) kind {
	k := on(name, answer)
	k.patience = storageAnswers
	return k
}

// sweeping is a kind that goes through all that is stored.
func sweeping[Body, Answer any](name string, answer func(context.Context, *Bridge, Body) (Answer, error)) kind {
	k := on(name, answer)
	k.patience = storageSweeps
	return k
}

func on[Body, Answer any](name string, answer func(context.Context, *Bridge, Body) (Answer, error)) kind {
	return kind{
		name: name, body: reflect.TypeFor[Body](), reply: reflect.TypeFor[Answer](),
		answer: func(ctx context.Context, b *Bridge, raw json.RawMessage) (any, error) {
			var body Body
			if err := json.Unmarshal(raw, &body); err != nil {
				return nil, engine.Problem{Code: "message", Field: "body", Message: "The engine could not read a “" + name + "” request: " + err.Error() + ".", Remedy: "Reload the page. What was kept is still there."}
			}
			return answer(ctx, b, body)
		},
	}
}

// Nothing is the body or the reply of a kind that needs none.
type Nothing struct{}
