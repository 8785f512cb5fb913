package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

var licenceFile = regexp.MustCompile(`(?i)^(licen[cs]e|notice|copying|copyright|ofl)([-._].*)?$`)

// writeLicences gathers the licence texts of all code by others that the static folder ships: Go itself, the modules
// linked into the WebAssembly programs, and the npm packages in the bundles. One without a licence fails the build.
func writeLicences(built *assets, npmPackages []string) error {
	works, err := linkedGo("engine", "canvas")
	if err != nil {
		return err
	}
	for _, name := range npmPackages {
		work, err := npmWork(name)
		if err != nil {
			return err
		}
		works[work.title] = work
	}
	var text bytes.Buffer
	for _, title := range slices.Sorted(maps.Keys(works)) {
		if err := works[title].write(&text); err != nil {
			return err
		}
	}
	return built.addHashed("licences.txt", text.Bytes())
}

// work is one piece of code by others: where it lies, and the folders in it whose licences apply.
type work struct {
	title   string
	root    string
	folders []string
}

func (w work) write(out io.Writer) error {
	seen := map[string]bool{}
	for _, folder := range append([]string{w.root, filepath.Join(w.root, "licenses")}, w.folders...) {
		entries, err := os.ReadDir(folder)
		if errors.Is(err, fs.ErrNotExist) {
			continue
		}
		if err != nil {
			return err
		}
		for _, entry := range entries {
			file := filepath.Join(folder, entry.Name())
			if entry.IsDir() || seen[file] || !licenceFile.MatchString(entry.Name()) {
				continue
			}
			seen[file] = true
			text, err := os.ReadFile(file)
			if err != nil {
				return err
			}
			name, err := filepath.Rel(w.root, file)
			if err != nil {
				return err
			}
			fmt.Fprintf(out, "%s\n%s: %s\n%s\n\n%s\n\n", rule, w.title, name, rule, bytes.TrimSpace(text))
		}
	}
	if len(seen) == 0 {
		return fmt.Errorf("%s has no licence file", w.title)
	}
	return nil
}

var rule = strings.Repeat("-", 80)

// linkedGo lists Go and the modules that the programs link, with the folder of every linked package and of those above it:
// some packages hold code by yet others, with its licence beside it.
func linkedGo(programs ...string) (map[string]work, error) {
	arguments := []string{"list", "-deps", "-json=Dir,Standard,Root,Module"}
	for _, name := range programs {
		arguments = append(arguments, "./wasm/"+name)
	}
	command := exec.Command("go", arguments...)
	command.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	output, err := command.Output()
	if err != nil {
		return nil, fmt.Errorf("go list: %w", err)
	}
	works := map[string]work{}
	for decoder := json.NewDecoder(bytes.NewReader(output)); ; {
		var linked struct {
			Dir, Root string
			Standard  bool
			Module    *struct {
				Path, Version, Dir string
				Main               bool
			}
		}
		if err := decoder.Decode(&linked); errors.Is(err, io.EOF) {
			return works, nil
		} else if err != nil {
			return nil, err
		}
		title, root := "Go", linked.Root
		if !linked.Standard {
			if linked.Module.Main {
				continue
			}
			title, root = linked.Module.Path+" "+linked.Module.Version, linked.Module.Dir
		}
		found := works[title]
		found.title, found.root = title, root
		for folder := linked.Dir; len(folder) > len(root); folder = filepath.Dir(folder) {
			if !slices.Contains(found.folders, folder) {
				found.folders = append(found.folders, folder)
			}
		}
		works[title] = found
	}
}

func npmWork(name string) (work, error) {
	root := filepath.Join(source, "node_modules", filepath.FromSlash(name))
	text, err := os.ReadFile(filepath.Join(root, "package.json"))
	if err != nil {
		return work{}, err
	}
	var about struct{ Version string }
	if err := json.Unmarshal(text, &about); err != nil {
		return work{}, err
	}
	return work{title: name + " " + about.Version, root: root}, nil
}
