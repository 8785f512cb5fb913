package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// inlined lists, by program, the packages that are compiled with inlining: those whose code runs thousands of times for an
// answer or a painting. All else is smaller without, by a tenth, and no slower that could be felt.
var inlined = map[string][]string{
	"engine": {
		"runtime", "internal/runtime/...", "internal/abi", "internal/strconv", "math", "math/bits", "unicode/utf8",
		"finwright/core/units", "finwright/core/numeric", "finwright/core/material", "finwright/core/fluid", "finwright/core/tube", "finwright/core/fin/...",
		"finwright/core/bond", "finwright/core/airside", "finwright/core/inside", "finwright/core/exchanger", "finwright/core/drawing/ink",
	},
	"canvas": {"math", "finwright/core/drawing/ink"},
}

// gcflags are the compiler's flags for a program.
func gcflags(name string) []string {
	flags := []string{"-gcflags=all=-l"}
	if name == "first" {
		name = "engine" // a part of it
	}
	for _, p := range inlined[name] {
		flags = append(flags, "-gcflags="+p+"=")
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
	args := append([]string{"build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w", "-o", file}, gcflags(name)...)
	command := exec.Command("go", append(args, "./wasm/"+name)...)
	command.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if output, err := command.CombinedOutput(); err != nil {
		return fmt.Errorf("wasm/%s: %w\n%s", name, err, output)
	}
	packed := file + ".gz"
	if output, err := exec.Command("node", filepath.Join(source, "build", "pack.js"), file, packed).CombinedOutput(); err != nil {
		return fmt.Errorf("packing wasm/%s: %w\n%s", name, err, output)
	}
	content, err := os.ReadFile(packed)
	if err != nil {
		return err
	}
	return built.addHashed(name+".wasm.gz", content)
}
