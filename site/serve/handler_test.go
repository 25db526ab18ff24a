package main

import (
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

// page is a built page of few words, with a secret beside its folder.
func page(t *testing.T) http.Handler {
	t.Helper()
	outside := t.TempDir()
	folder := filepath.Join(outside, "dist")
	require.NoError(t, os.MkdirAll(filepath.Join(folder, "sub.js"), 0o755))
	for name, content := range map[string]string{
		"dist/index.html": "page", "dist/sw.js": "worker", "dist/main-1a.js": "plain", "dist/main-1a.js.br": "brotli", "dist/main-1a.js.gz": "gzip",
		"dist/engine-1a.wasm.gz": "packed", "dist/engine-1a.wasm.br": "smaller", "dist/notes.txt": "notes", "secret.html": "secret",
	} {
		require.NoError(t, os.WriteFile(filepath.Join(outside, name), []byte(content), 0o644))
	}
	require.NoError(t, os.Symlink(filepath.Join(outside, "secret.html"), filepath.Join(folder, "link.html")))
	root, err := os.OpenRoot(folder)
	require.NoError(t, err)
	t.Cleanup(func() { _ = root.Close() })
	return handler{root}
}

func get(t *testing.T, h http.Handler, method, path, encodings string) *httptest.ResponseRecorder {
	t.Helper()
	request := httptest.NewRequest(method, "http://127.0.0.1/", nil)
	request.URL.Path = path
	request.Header.Set("Accept-Encoding", encodings)
	recorder := httptest.NewRecorder()
	h.ServeHTTP(recorder, request)
	return recorder
}

func TestEachFileGoesOutInTheSmallestCopyThatTheBrowserTakes(t *testing.T) {
	h := page(t)
	for _, c := range []struct{ path, accepts, body, kind, encoding string }{
		{"/", "gzip, br", "page", "text/html; charset=utf-8", ""},
		{"/main-1a.js", "gzip, deflate, br", "brotli", "text/javascript; charset=utf-8", "br"},
		{"/main-1a.js", "gzip", "gzip", "text/javascript; charset=utf-8", "gzip"},
		{"/main-1a.js", "br;q=0, gzip", "gzip", "text/javascript; charset=utf-8", "gzip"},
		{"/main-1a.js", "", "plain", "text/javascript; charset=utf-8", ""},
		{"/engine-1a.wasm.gz", "gzip, br", "smaller", "application/wasm", "br"},
		{"/engine-1a.wasm.gz", "gzip", "packed", "application/wasm", "gzip"},
		{"/engine-1a.wasm.gz", "", "packed", "application/gzip", ""},
	} {
		got := get(t, h, http.MethodGet, c.path, c.accepts)
		require.Equal(t, http.StatusOK, got.Code, c)
		require.Equal(t, c.body, got.Body.String(), c)
		require.Equal(t, c.kind, got.Header().Get("Content-Type"), c)
		require.Equal(t, c.encoding, got.Header().Get("Content-Encoding"), c)
	}
}

func TestNothingOutsideTheFolderAndNoListingGoesOut(t *testing.T) {
	h := page(t)
	for _, path := range []string{
		"/../secret.html", "/..%2fsecret.html", "/sub/../../secret.html", "//secret.html", "/link.html", "/sub.js", "/sub.js/", "/notes.txt", "/none.html", "/\\..\\secret.html", "/index.html\x00.js",
	} {
		got := get(t, h, http.MethodGet, path, "")
		require.Equal(t, http.StatusNotFound, got.Code, path)
		require.NotContains(t, got.Body.String(), "secret", path)
	}
}

func TestEveryAnswerCarriesThePolicy(t *testing.T) {
	h := page(t)
	for _, path := range []string{"/", "/sw.js", "/main-1a.js", "/none.html"} {
		header := get(t, h, http.MethodGet, path, "").Header()
		require.Contains(t, header.Get("Content-Security-Policy"), "default-src 'none'; script-src 'self' 'wasm-unsafe-eval';", path)
		require.NotContains(t, header.Get("Content-Security-Policy"), "unsafe-inline", path)
		require.Equal(t, "nosniff", header.Get("X-Content-Type-Options"), path)
	}
}

func TestOnlyNamesWithAHashMayBeCachedForEver(t *testing.T) {
	h := page(t)
	for path, lifetime := range map[string]string{"/": "no-cache", "/sw.js": "no-cache", "/main-1a.js": "public, max-age=31536000, immutable"} {
		require.Equal(t, lifetime, get(t, h, http.MethodGet, path, "br").Header().Get("Cache-Control"), path)
	}
}

func TestOnlyReadingIsAllowed(t *testing.T) {
	h := page(t)
	require.Equal(t, http.StatusMethodNotAllowed, get(t, h, http.MethodPost, "/", "").Code)
	require.Empty(t, get(t, h, http.MethodHead, "/", "").Body.String())
}
