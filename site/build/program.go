package main

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// buildProgram compiles wasm/name and adds it compressed, as name.wasm.gz, so that any plain host serves it small.
func buildProgram(built *assets, name string) error {
	folder, err := os.MkdirTemp("", "finwright-build-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	file := filepath.Join(folder, name+".wasm")
	command := exec.Command("go", "build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w", "-o", file, "./wasm/"+name)
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
