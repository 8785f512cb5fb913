//go:build browser

package e2e

import (
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"finwright/site/browser"
)

// engineBeside opens the page and puts a second engine beside the page's own, as `engine`: the page's module, bundled
// for the test and evaluated through the debugger. `linked(units)` is what the method save is asked with.
func engineBeside(t *testing.T) *browser.Page {
	t.Helper()
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	bundler := exec.Command(filepath.Join("node_modules", ".bin", "esbuild"), "js/engine.js", "--bundle", "--global-name=beside",
		"--alias:wasm_exec="+filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"))
	bundler.Dir = site
	script, err := bundler.Output()
	if err != nil {
		t.Fatal(err)
	}
	page := plain.Page(t, browser.Desk)
	page.Open("")
	page.WaitMark("finwright:drawn")
	browser.Eval[bool](page, string(script)+`;
		globalThis.beside = beside;
		globalThis.engine = beside.createEngine();
		engine.call("start", {saved: "", pending: [], sheet: {width: 800, height: 600}}).then(({document}) => {
			globalThis.linked = (units) => ({job: {head: {reference: "", revision: "", received: "", due: ""}, base: {...document, units}, items: [{id: "1", design: {}}]}});
			return true;
		})`)
	return page
}

func TestEngine(t *testing.T) {
	page := engineBeside(t)
	t.Run("of four calls at once the first and the last are answered", func(t *testing.T) { latestOfFour(t, page) })
	t.Run("slots do not wait for each other", func(t *testing.T) { slotsApart(t, page) })
	t.Run("a batch answers in order and can be cancelled", func(t *testing.T) { batch(t, page) })
	t.Run("batches take turns, in chunks, and one can be cancelled alone", func(t *testing.T) { batches(t, page) })
	t.Run("a refusal is an error", func(t *testing.T) { refusal(t, page) })
	t.Run("a rejection that nobody waits for is a crash", func(t *testing.T) { rejection(t, page) })
	t.Run("a crash is asked again once", func(t *testing.T) { crash(t, page) })
}

func same(t *testing.T, what, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("%s: %s, want %s", what, got, want)
	}
}

func latestOfFour(t *testing.T, page *browser.Page) {
	got := browser.Eval[string](page, `(async () => {
		const si = await engine.call("save", linked("si")), us = await engine.call("save", linked("us"));
		const replies = await Promise.all(["si", "us", "si", "us"].map((units) => engine.callLatest("slot", "save", linked(units))));
		return JSON.stringify([si.text !== us.text, ...replies.map((reply) => reply && (reply.text === si.text ? "si" : "us"))]);
	})()`)
	same(t, "replies", got, `[true,"si",null,null,"us"]`)
}

func slotsApart(t *testing.T, page *browser.Page) {
	got := browser.Eval[int](page, `Promise.all(["a", "b", "c"].map((slot) => engine.callLatest(slot, "save", linked("si"))))
		.then((replies) => replies.filter(Boolean).length)`)
	if got != 3 {
		t.Errorf("%d of 3 slots were answered", got)
	}
}

func batch(t *testing.T, page *browser.Page) {
	got := browser.Eval[string](page, `(async () => {
		const one = JSON.stringify((await engine.call("save", linked("us"))));
		const {done} = engine.batch("save", ["si", "us", "si", "us", "si"].map(linked));
		return (await done).map((reply) => JSON.stringify(reply) === one).join();
	})()`)
	same(t, "replies", got, "false,true,false,true,false")
	got = browser.Eval[string](page, `(() => {
		const {done, cancel} = engine.batch("save", Array.from({length: 1000}, () => linked("si")));
		cancel();
		return done.then(() => "done", (reason) => String(reason instanceof beside.Cancelled));
	})()`)
	same(t, "cancelled", got, "true")
	got = browser.Eval[string](page, `engine.call("save", linked("si")).then(({text}) => typeof text)`)
	same(t, "the interactive worker after it", got, "string")
	got = browser.Eval[string](page, `engine.batch("save", [linked("si")]).done.then((replies) => String(replies.length))`)
	same(t, "the next batch", got, "1")
}

// The workers of the pool are started once, from the module that is there, whatever becomes of a batch.
func batches(t *testing.T, page *browser.Page) {
	got := browser.Eval[string](page, `(async () => {
		const {Worker} = globalThis, post = Worker.prototype.postMessage;
		let [workers, chunks, compiled, heard] = [0, 0, 0, 0];
		globalThis.Worker = class extends Worker { constructor(...args) { super(...args); workers++; } };
		Worker.prototype.postMessage = function (message) { chunks += Array.isArray(message.args); post.call(this, message); };
		for (const name of ["compile", "compileStreaming"]) {
			const plain = WebAssembly[name];
			WebAssembly[name] = (...args) => (compiled++, plain(...args));
		}
		const engine = beside.createEngine();
		const [si, us] = await Promise.all(["si", "us"].map((units) => engine.call("save", linked(units)).then(({text}) => text)));
		const long = engine.batch("save", Array.from({length: 2000}, () => linked("si")), () => (heard++, long.cancel()));
		const short = engine.batch("save", Array.from({length: 30}, (_, i) => linked(i % 2 ? "us" : "si")));
		const ended = await long.done.then(() => "done", (reason) => reason instanceof beside.Cancelled);
		const right = (await short.done).every(({text}, i) => text === (i % 2 ? us : si));
		chunks = 0;
		const all = (await engine.batch("save", Array.from({length: 200}, () => linked("us"))).done).filter(({text}) => text === us).length;
		const none = (await engine.batch("save", []).done).length;
		const refused = await engine.batch("none", [{}, {}]).done.catch((reason) => reason instanceof beside.EngineError);
		const after = (await engine.batch("save", [linked("si")]).done)[0].text === si;
		Object.assign(globalThis, {Worker});
		Worker.prototype.postMessage = post;
		return JSON.stringify({ended, heard, right, all, none, refused, after, fewer: chunks < 100, workers: workers - Math.min(2, navigator.hardwareConcurrency), compiled});
	})()`)
	same(t, "batches", got, `{"ended":true,"heard":1,"right":true,"all":200,"none":0,"refused":true,"after":true,"fewer":true,"workers":1,"compiled":0}`)
}

func refusal(t *testing.T, page *browser.Page) {
	got := browser.Eval[string](page, `engine.call("none", {}).catch((reason) => String(reason instanceof beside.EngineError && reason.message.length > 0))`)
	same(t, "refused", got, "true")
}

// Nothing else tells the page that its question is lost: it would wait until the engine counts as hung.
func rejection(t *testing.T, page *browser.Page) {
	browser.Eval[string](page, `(globalThis.slow = false, globalThis.engine = beside.createEngine(() => slow = true),
		engine.call("save", linked("si")).then(({text}) => text))`)
	if page.InWorkers(`self.onmessage = () => void Promise.reject(new Error("made by the test"))`) == 0 {
		t.Fatal("no worker was reached")
	}
	got := browser.Eval[string](page, `engine.call("save", linked("si")).then(({text}) => typeof text + " " + slow)`)
	same(t, "asked again", got, "string false")
}

// An uncaught error in the worker costs a new worker, which is asked again, and only the second one the call.
func crash(t *testing.T, page *browser.Page) {
	browser.Eval[bool](page, `(globalThis.answered = 0, globalThis.more = true, globalThis.pending = (async () => {
		while (more) await engine.call("save", linked("si")), answered++;
	})().then(() => "all answered", String), true)`)
	if page.InWorkers(`reportError(new Error("made by the test"))`) == 0 {
		t.Fatal("no worker was reached")
	}
	page.Wait("(globalThis.reached = answered) > 0")
	page.Wait("answered > reached + 3")
	same(t, "pending", browser.Eval[string](page, "(more = false, pending)"), "all answered")

	// One that kills every worker is given up; what waits behind it is answered.
	browser.Eval[bool](page, `((post) => {
		Worker.prototype.postMessage = function (message) {
			if (message.method === "poison") this.dispatchEvent(new ErrorEvent("error", {message: "made by the test"}));
			else post.call(this, message);
		};
		return true;
	})(Worker.prototype.postMessage)`)
	got := browser.Eval[string](page, `Promise.allSettled([engine.call("poison", {}), engine.call("save", linked("si"))])
		.then(([poison, next]) => [poison.reason instanceof beside.EngineLost, typeof next.value?.text].join())`)
	same(t, "poison and next", got, "true,string")
}
