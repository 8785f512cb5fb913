package main

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// leaner compiles the engine without inlining, but for the loops of the physics: a tenth less to load before the first
// figure, for work that is not felt.
var leaner = map[string][]string{
	"engine": {
		"-gcflags=all=-l", "-gcflags=math=", "-gcflags=finwright/core/numeric=", "-gcflags=finwright/core/fin/...=",
		"-gcflags=finwright/core/airside=", "-gcflags=finwright/core/tube=",
	},
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
