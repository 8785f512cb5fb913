package main

import (
	"crypto/sha256"
	"encoding/base32"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"
)

// assets records every file of the static folder: the name the sources use and the name it is served under. A language has a
// folder within it, for what is its own; all else is there from the folder above.
type assets struct {
	folder string
	above  *assets // nil: this is the static folder itself

	mutex  sync.Mutex
	served map[string]string
}

func newAssets(folder string) *assets {
	return &assets{folder: folder, served: map[string]string{}}
}

// within returns the assets of a folder in this one.
func (a *assets) within(name string) *assets {
	inner := newAssets(filepath.Join(a.folder, name))
	inner.above = a
	return inner
}

// find returns the served name of a file, as seen from this folder.
func (a *assets) find(name string) (served string, ok bool) {
	served, ok = a.served[name]
	if !ok && a.above != nil {
		served, ok = a.above.find(name)
		served = "../" + served
	}
	return served, ok
}

// copyHashed adds a file of the site folder as it is.
func (a *assets) copyHashed(name string) error {
	content, err := os.ReadFile(filepath.Join(source, name))
	if err != nil {
		return err
	}
	return a.addHashed(name, content)
}

// addHashed writes content under a name that changes with it, so that a browser may keep the file for ever.
func (a *assets) addHashed(name string, content []byte) error {
	folder, file := path.Split(name)
	stem, ending, _ := strings.Cut(file, ".")
	return a.add(name, folder+stem+"."+hash(content)+"."+ending, content)
}

func hash(content []byte) string {
	sum := sha256.Sum256(content)
	return base32.StdEncoding.EncodeToString(sum[:])[:8]
}

// add writes content under a name of its own.
func (a *assets) add(name, served string, content []byte) error {
	a.record(name, served)
	file := filepath.Join(a.folder, filepath.FromSlash(served))
	if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
		return err
	}
	return os.WriteFile(file, content, 0o644)
}

// record notes a file that another tool has written already.
func (a *assets) record(name, served string) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	a.served[name] = served
}

// askedByScripts picks the programs, data and frames, and the script that is fetched before it is run: what the scripts must know
// the served name of.
func (a *assets) askedByScripts() map[string]string {
	asked := maps.Clone(a.served)
	if a.above != nil {
		for name := range a.above.served {
			asked[name], _ = a.find(name)
		}
	}
	maps.DeleteFunc(asked, func(name, _ string) bool {
		return !slices.ContainsFunc([]string{".gz", ".json", ".html", "language.txt", "licences.txt", "js/plots.js"}, func(ending string) bool { return strings.HasSuffix(name, ending) })
	})
	return asked
}

// names lists what is served, in order.
func (a *assets) names() []string {
	return slices.Sorted(maps.Values(a.served))
}
