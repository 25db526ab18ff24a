package kept

import (
	"context"
	"errors"

	"lowspot/engine"
	"lowspot/wasm/store"
)

func missing(what, id string) error {
	return engine.Problem{Code: "missing", Field: "id", Given: id, Message: "There is no such " + what + " on this device.", Remedy: "It may have been removed in another tab: look at the list again."}
}

func newer(what string) error {
	return engine.Problem{Code: "newer", Message: "This " + what + " was made by a newer version than this one. It was left as it is.", Remedy: "Reload the page to get the newer version, then open it again."}
}

func unreadable(what string) error {
	return engine.Problem{Code: "unreadable", Message: "This " + what + " is damaged and can't be read. It was left as it is.", Remedy: "Restore an earlier revision or open your last exported file."}
}

// told words a store's error for the person whose work it holds.
func told(err error) error {
	var problem engine.Problem
	switch {
	case err == nil:
		return nil
	case errors.As(err, &problem):
		return problem
	case errors.Is(err, store.ErrFull):
		return engine.Problem{Code: "full", Message: "Not kept: the browser has no room left for this page. What was kept before is still there.", Remedy: "Export your jobs to a file, then remove old jobs or free space on the device."}
	case errors.Is(err, store.ErrUnavailable):
		return engine.Problem{Code: "unavailable", Message: "Not kept: the browser keeps nothing for this page, as in a private window.", Remedy: "Export the job to a file before you close the page, or open the page in an ordinary window."}
	case errors.Is(err, context.DeadlineExceeded), errors.Is(err, context.Canceled):
		return engine.Problem{Code: "late", Message: "The browser's storage did not answer in time.", Remedy: "Close other tabs of this page, then try again."}
	}
	return engine.Problem{Code: "storage", Message: "The browser's storage failed: " + err.Error() + ".", Remedy: "Export the job to a file, then reload the page."}
}
