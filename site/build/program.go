package main

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// leaner leaves inlining out where it costs size and buys no speed that is felt: in the engine in what runs once or never,
// in the canvas in all but what makes triangles of artwork.
var leaner = map[string][]string{
	"engine": without("regexp/...", "text/template/...", "html/template", "time", "compress/flate", "os", "internal/poll", "log/...",
		"net/...", "syscall", "math/rand", "io/fs", "path/...", "unicode", "embed", "github.com/go-echarts/..."),
	"canvas": append(without("all"), "-gcflags=finwright/core/drawing/ink=", "-gcflags=math="),
}

// without is the flags that compile packages without inlining.
func without(packages ...string) []string {
	flags := make([]string, len(packages))
	for i, p := range packages {
		flags[i] = "-gcflags=" + p + "=-l"
	}
	return flags
}

// buildProgram compiles wasm/name and adds it compressed, as name.wasm.gz, so that any plain host serves it small.
func buildProgram(built *assets, name string) error {
	folder, err := os.MkdirTemp("", "finwright-build-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	file := filepath.Join(folder, name+".wasm")
	args := append([]string{"build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w", "-o", file}, leaner[name]...)
	command := exec.Command("go", append(args, "./wasm/"+name)...)
	command.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if output, err := command.CombinedOutput(); err != nil {
		return fmt.Errorf("wasm/%s: %w\n%s", name, err, output)
	}
	content, err := os.ReadFile(file)
	if err != nil {
		return err
	}
	var packed bytes.Buffer
	writer, err := gzip.NewWriterLevel(&packed, gzip.BestCompression)
	if err != nil {
		return err
	}
	if _, err := writer.Write(content); err != nil {
		return err
	}
	if err := writer.Close(); err != nil {
		return err
	}
	return built.addHashed(name+".wasm.gz", packed.Bytes())
}
