// @ts-check
// Files in and out.

/**
 * @param {ReturnType<typeof import("./engine.js").createEngine>} engine
 * @param {"design" | "shop"} kind
 * @param {string} name of what it holds
 * @param {string} text
 */
export async function saveFile(engine, kind, name, text) {
  const { filename } = await engine.call("filename", { kind, name, date: today() });
  download(text, filename, "application/json");
}

/** The day here, as 2026-11-27: the engine reads no clock. @param {Date} [now] */
export function today(now = new Date()) {
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
}

/**
 * @param {BlobPart | BlobPart[]} text
 * @param {string} filename
 * @param {string} type
 */
export function download(text, filename, type) {
  const anchor = document.createElement("a");
  anchor.href = URL.createObjectURL(new Blob([text].flat(), { type }));
  anchor.download = filename;
  anchor.click();
  URL.revokeObjectURL(anchor.href);
}

/**
 * @param {HTMLButtonElement} button
 * @param {HTMLInputElement} input
 * @param {(text: string, name: string) => void} onText
 */
export function chooseFile(button, input, onText) {
  button.addEventListener("click", () => input.click());
  input.addEventListener("change", async () => {
    const [file] = input.files ?? [];
    input.value = ""; // so that the same file can be chosen again
    if (file) onText(await file.text(), file.name);
  });
}
