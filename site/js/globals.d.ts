// Names that come from outside the scripts of this folder.

/** From wasm_exec.js of the Go installation. */
declare class Go {
  importObject: WebAssembly.Imports;
  run(instance: WebAssembly.Instance): Promise<void>;
}

/** Set by the engine program: call takes JSON and gives JSON; speak takes the file of another language than English, before the first call. */
declare var finwright: { call(method: string, args: string): string; speak(file: string): void };

/** Set by the canvas program: takes what has changed of a scene. */
declare var take: undefined | ((scene: object) => void);

/** Set by frame.js. */
declare function paint(scene: object): void;

/** Set by worker.js: what is on its way since the page began. */
declare var begun: any;

/** Put into the first script by the build: the text of engine.worker.js. */
declare const WORKER: string;

/** Put into the service worker by the build. */
declare const FILES: string[];
declare const PAGES: string[];
declare const BUILD: string;

/** Of the Go installation; the build knows where. */
declare module "wasm_exec";
