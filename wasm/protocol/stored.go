package protocol

import (
	"context"

	"lowspot/engine"
	"lowspot/wasm/kept"
)

// Named is what a request about one kept document says.
type Named struct {
	ID string `json:"id"`
}

// KeptAt says when something was kept: it is on the disk and was read back.
type KeptAt struct {
	Kept string `json:"kept"`
}

func listJobs(ctx context.Context, b *Bridge, w kept.Wanted) (kept.Found, error) {
	return b.Keeper.FindJobs(ctx, w)
}

func openJob(ctx context.Context, b *Bridge, n Named) (kept.OpenedJob, error) {
	return b.Keeper.OpenJob(ctx, n.ID)
}

// KeepJob carries a job to be kept.
type KeepJob struct {
	Job engine.Job `json:"job"`
}

func keepJob(ctx context.Context, b *Bridge, k KeepJob) (kept.Standing, error) {
	return b.Keeper.KeepJob(ctx, k.Job)
}

func putOff(ctx context.Context, b *Bridge, n Named) (kept.Standing, error) {
	return b.Keeper.PutOff(ctx, n.ID)
}

// CopyJob names a job to copy and the copy.
type CopyJob struct {
	ID   string `json:"id"`
	Name string `json:"name"`
}

func copyJob(ctx context.Context, b *Bridge, c CopyJob) (kept.OpenedJob, error) {
	return b.Keeper.CopyJob(ctx, c.ID, c.Name)
}

func deleteJob(ctx context.Context, b *Bridge, n Named) (Nothing, error) {
	return Nothing{}, b.Keeper.DeleteJob(ctx, n.ID)
}

func undeleteJob(ctx context.Context, b *Bridge, n Named) (Nothing, error) {
	return Nothing{}, b.Keeper.UndeleteJob(ctx, n.ID)
}

func eraseJob(ctx context.Context, b *Bridge, n Named) (Nothing, error) {
	return Nothing{}, b.Keeper.EraseJob(ctx, n.ID)
}

// RevisionList is a job's earlier states, newest first.
type RevisionList struct {
	Revisions []kept.Revision `json:"revisions"`
}

func listRevisions(ctx context.Context, b *Bridge, n Named) (RevisionList, error) {
	revisions, err := b.Keeper.ListRevisions(ctx, n.ID)
	return RevisionList{Revisions: revisions}, err
}

// RestoreJob names an earlier state of a job.
type RestoreJob struct {
	ID     string `json:"id"`
	Number int    `json:"number"`
}

func restoreRevision(ctx context.Context, b *Bridge, r RestoreJob) (kept.OpenedJob, error) {
	return b.Keeper.RestoreRevision(ctx, r.ID, r.Number)
}

// ExportJobs says which jobs go into the file; none named means everything that is kept.
type ExportJobs struct {
	IDs []string `json:"ids"`
}

// FileText is a file's content.
type FileText struct {
	Text string `json:"text"`
}

func exportJobs(ctx context.Context, b *Bridge, e ExportJobs) (FileText, error) {
	content, err := b.Keeper.Export(ctx, e.IDs)
	return FileText{Text: string(content)}, err
}

// writeJobText gives a job as a file as it is shown, for where it can't be kept.
func writeJobText(b *Bridge, m MadeJob) (FileText, error) {
	content, err := b.Keeper.Write(m.Job)
	return FileText{Text: string(content)}, err
}

func importFile(ctx context.Context, b *Bridge, f FileText) (kept.Imported, error) {
	return b.Keeper.Import(ctx, []byte(f.Text))
}

// SheetList is the kept product sheets.
type SheetList struct {
	Sheets []kept.Sheet `json:"sheets"`
}

func listSheets(ctx context.Context, b *Bridge, _ Nothing) (SheetList, error) {
	sheets, err := b.Keeper.Sheets().List(ctx)
	return SheetList{Sheets: sheets}, err
}

func keepSheet(ctx context.Context, b *Bridge, s kept.Sheet) (KeptAt, error) {
	at, err := b.Keeper.Sheets().Keep(ctx, s.ID, s)
	return KeptAt{Kept: at}, err
}

func deleteSheet(ctx context.Context, b *Bridge, n Named) (Nothing, error) {
	return Nothing{}, b.Keeper.Sheets().Delete(ctx, n.ID)
}

// BookList is the kept rulebooks.
type BookList struct {
	Books []kept.Book `json:"books"`
}

func listBooks(ctx context.Context, b *Bridge, _ Nothing) (BookList, error) {
	books, err := b.Keeper.Books().List(ctx)
	return BookList{Books: books}, err
}

func openBook(ctx context.Context, b *Bridge, n Named) (kept.Book, error) {
	return b.Keeper.Books().Open(ctx, n.ID)
}

func keepBook(ctx context.Context, b *Bridge, book kept.Book) (KeptAt, error) {
	at, err := b.Keeper.Books().Keep(ctx, book.ID, book)
	return KeptAt{Kept: at}, err
}

func deleteBook(ctx context.Context, b *Bridge, n Named) (Nothing, error) {
	return Nothing{}, b.Keeper.Books().Delete(ctx, n.ID)
}

// SettingsText is a person's settings by name.
type SettingsText struct {
	Values kept.Settings `json:"values"`
}

func openSettings(ctx context.Context, b *Bridge, _ Nothing) (SettingsText, error) {
	values, err := b.Keeper.OpenSettings(ctx)
	return SettingsText{Values: values}, err
}

func keepSettings(ctx context.Context, b *Bridge, s SettingsText) (Nothing, error) {
	return Nothing{}, b.Keeper.KeepSettings(ctx, s.Values)
}
