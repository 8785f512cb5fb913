// Package static serves a folder of files as a plain host would: no listing, no logic.
package static

import (
	"io/fs"
	"net/http"
	"path"
	"regexp"
	"strings"
)

// Host says how the folder is served.
type Host struct {
	// Base is the path the folder is served under, with a slash at both ends.
	Base string
	// Unpack declares compressed programs as such (Content-Encoding), as some hosts do; the browser then unpacks them.
	Unpack bool
	// Caching is what the host says of how long a file may be kept.
	Caching Caching
}

// Caching is a habit of hosts.
type Caching int

const (
	// ByName keeps for ever what has a hash in its name and has all else asked for anew, as headers.example advises.
	ByName Caching = iota
	// Silent says nothing: the browser judges by the age of the file.
	Silent
	// AnHour keeps everything for an hour, whatever its name.
	AnHour
)

func (c Caching) header(name string) string {
	switch {
	case c == Silent:
		return ""
	case c == AnHour:
		return "max-age=3600"
	case hashed.MatchString(name):
		return "public, max-age=31536000, immutable"
	default:
		return "no-cache"
	}
}

// types holds the media types that a machine's own table may lack.
var types = map[string]string{
	".css":         "text/css; charset=utf-8",
	".gz":          "application/octet-stream",
	".html":        "text/html; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".svg":         "image/svg+xml",
	".txt":         "text/plain; charset=utf-8",
	".webmanifest": "application/manifest+json",
	".woff":        "font/woff",
	".woff2":       "font/woff2",
}

var hashed = regexp.MustCompile(`\.[A-Z0-9]{8}\.`)

// Handler serves the files.
func (h Host) Handler(files fs.FS) http.Handler {
	server := http.StripPrefix(strings.TrimSuffix(h.Base, "/"), http.FileServerFS(files))
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		name, inside := strings.CutPrefix(r.URL.Path, h.Base)
		if !inside {
			http.NotFound(w, r)
			return
		}
		if name == "" || strings.HasSuffix(name, "/") {
			name += "index.html"
		}
		if info, err := fs.Stat(files, name); err != nil || info.IsDir() {
			http.NotFound(w, r)
			return
		}
		header := w.Header()
		if kind := types[path.Ext(name)]; kind != "" {
			header.Set("Content-Type", kind)
		}
		if h.Unpack && strings.HasSuffix(name, ".wasm.gz") {
			header.Set("Content-Type", "application/wasm")
			header.Set("Content-Encoding", "gzip")
		}
		header.Set("X-Content-Type-Options", "nosniff")
		if caching := h.Caching.header(name); caching != "" {
			header.Set("Cache-Control", caching)
		}
		server.ServeHTTP(w, r)
	})
}
