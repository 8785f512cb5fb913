package static

import (
	"net/http"
	"net/http/httptest"
	"testing"
	"testing/fstest"
)

func TestHandler(t *testing.T) {
	files := fstest.MapFS{
		"index.html":                 {Data: []byte("<!doctype html>")},
		"js/page.ABCDEFGH.js":        {Data: []byte("0")},
		"engine.ABCDEFGH.wasm.gz":    {Data: []byte("\x1f\x8b")},
		"fonts/plain.IJKLMN23.woff2": {Data: []byte("wOF2")},
	}
	const forever = "public, max-age=31536000, immutable"
	for _, c := range []struct {
		name, path  string
		unpack      bool
		status      int
		kind, cache string
		encoding    string
	}{
		{"the page", "/a/b/", false, 200, "text/html; charset=utf-8", "no-cache", ""},
		{"a script", "/a/b/js/page.ABCDEFGH.js", false, 200, "text/javascript; charset=utf-8", forever, ""},
		{"a font", "/a/b/fonts/plain.IJKLMN23.woff2", false, 200, "font/woff2", forever, ""},
		{"a program as it is", "/a/b/engine.ABCDEFGH.wasm.gz", false, 200, "application/octet-stream", forever, ""},
		{"a program declared as compressed", "/a/b/engine.ABCDEFGH.wasm.gz", true, 200, "application/wasm", forever, "gzip"},
		{"no listing", "/a/b/js/", false, 404, "text/plain; charset=utf-8", "", ""},
		{"no such file", "/a/b/none.js", false, 404, "text/plain; charset=utf-8", "", ""},
		{"outside the base", "/index.html", false, 404, "text/plain; charset=utf-8", "", ""},
		{"above the folder", "/a/b/../../etc/passwd", false, 404, "text/plain; charset=utf-8", "", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			reply := httptest.NewRecorder()
			Host{Base: "/a/b/", Unpack: c.unpack}.Handler(files).ServeHTTP(reply, httptest.NewRequest(http.MethodGet, c.path, nil))
			header := reply.Header()
			if reply.Code != c.status || header.Get("Content-Type") != c.kind ||
				header.Get("Cache-Control") != c.cache || header.Get("Content-Encoding") != c.encoding {
				t.Errorf("%d %q %q %q, want %d %q %q %q", reply.Code, header.Get("Content-Type"), header.Get("Cache-Control"),
					header.Get("Content-Encoding"), c.status, c.kind, c.cache, c.encoding)
			}
		})
	}
}

func TestCaching(t *testing.T) {
	files := fstest.MapFS{"index.html": {}, "js/page.ABCDEFGH.js": {}}
	for caching, want := range map[Caching][2]string{
		ByName: {"no-cache", "public, max-age=31536000, immutable"},
		Silent: {"", ""},
		AnHour: {"max-age=3600", "max-age=3600"},
	} {
		for i, path := range []string{"/", "/js/page.ABCDEFGH.js"} {
			reply := httptest.NewRecorder()
			Host{Base: "/", Caching: caching}.Handler(files).ServeHTTP(reply, httptest.NewRequest(http.MethodGet, path, nil))
			if got := reply.Header().Get("Cache-Control"); got != want[i] {
				t.Errorf("%d: %s is sent with %q, want %q", caching, path, got, want[i])
			}
		}
	}
}
