package main

import (
	_ "embed"
	"net/http"
	"os"
	"path"
	"strings"
	"time"
)

//go:embed policy.txt
var policy string

// types are those of the files that the page is made of; nothing else is served.
var types = map[string]string{
	".html":        "text/html; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".svg":         "image/svg+xml",
	".png":         "image/png",
	".json":        "application/json",
	".webmanifest": "application/manifest+json",
	".wasm":        "application/wasm",
	".gz":          "application/gzip",
}

// handler serves one folder's files by name, without listings and folders.
type handler struct{ root *os.Root }

func (h handler) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "only GET and HEAD", http.StatusMethodNotAllowed)
		return
	}
	protect(w.Header())
	name := strings.TrimPrefix(path.Clean(r.URL.Path), "/")
	if name == "" {
		name = "index.html"
	}
	kind, known := types[path.Ext(name)]
	if !known {
		http.NotFound(w, r)
		return
	}
	for _, c := range copies(name, kind, r.Header.Get("Accept-Encoding")) {
		if h.send(w, r, c) {
			return
		}
	}
	http.NotFound(w, r)
}

// protect sets the headers that keep the page to itself.
func protect(header http.Header) {
	header.Set("Content-Security-Policy", strings.TrimSpace(policy)+"; frame-ancestors 'none'")
	header.Set("X-Content-Type-Options", "nosniff")
	header.Set("Referrer-Policy", "no-referrer")
	header.Set("Cross-Origin-Opener-Policy", "same-origin")
	header.Set("Cross-Origin-Resource-Policy", "same-origin")
	header.Set("Permissions-Policy", "camera=(), microphone=(), geolocation=(), payment=(), usb=()")
}

// copied is one way to answer: a file, its type and how it is packed.
type copied struct{ name, kind, encoding string }

// copies gives the ways to answer, the smallest first. The engine lies there packed (engine.wasm.gz, for hosts that don't pack) and is handed
// out unpacked on the way where the browser can do that.
func copies(name, kind, accepted string) []copied {
	var ways []copied
	stem, packed := strings.CutSuffix(name, ".wasm.gz")
	if packed {
		name, kind = stem+".wasm", types[".wasm"]
	}
	for _, way := range []struct{ encoding, ending string }{{"br", ".br"}, {"gzip", ".gz"}} {
		if accepts(accepted, way.encoding) {
			ways = append(ways, copied{name + way.ending, kind, way.encoding})
		}
	}
	if packed {
		return append(ways, copied{name + ".gz", types[".gz"], ""})
	}
	return append(ways, copied{name, kind, ""})
}

func accepts(header, encoding string) bool {
	for _, part := range strings.Split(header, ",") {
		name, quality, _ := strings.Cut(strings.TrimSpace(part), ";")
		if name == encoding && strings.TrimSpace(quality) != "q=0" {
			return true
		}
	}
	return false
}

// send answers with a file if there is one.
func (h handler) send(w http.ResponseWriter, r *http.Request, c copied) bool {
	file, err := h.root.Open(c.name)
	if err != nil {
		return false
	}
	defer file.Close()
	info, err := file.Stat()
	if err != nil || !info.Mode().IsRegular() {
		return false
	}
	header := w.Header()
	header.Set("Content-Type", c.kind)
	header.Set("Vary", "Accept-Encoding")
	header.Set("Cache-Control", lifetime(c.name))
	if c.encoding != "" {
		header.Set("Content-Encoding", c.encoding)
	}
	http.ServeContent(w, r, c.name, time.Time{}, file)
	return true
}

// lifetime is for ever for names with a hash in them; the others are asked for afresh every time.
func lifetime(name string) string {
	if strings.HasPrefix(name, "index.html") || strings.HasPrefix(name, "sw.js") {
		return "no-cache"
	}
	return "public, max-age=31536000, immutable"
}
