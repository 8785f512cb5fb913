// @ts-check
// Files in and out, and links.

/**
 * @param {string} text
 * @param {string} filename
 */
export function download(text, filename) {
  const anchor = document.createElement("a");
  anchor.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  anchor.download = filename;
  anchor.click();
  URL.revokeObjectURL(anchor.href);
}

/**
 * @param {HTMLButtonElement} button
 * @param {HTMLInputElement} input
 * @param {(text: string) => void} onText
 */
export function chooseFile(button, input, onText) {
  button.addEventListener("click", () => input.click());
  input.addEventListener("change", async () => {
    const [file] = input.files ?? [];
    input.value = ""; // so that the same file can be chosen again
    if (file) onText(await file.text());
  });
}

/** What an address carries after #, once: afterwards the address is plain, so that a reload does not undo later work. */
export function takeFragment() {
  const fragment = location.hash.slice(1);
  if (!fragment.startsWith("d=")) return "";
  history.replaceState(null, "", location.pathname + location.search);
  return fragment;
}

/** True when the clipboard took it; else the address line has it. @param {string} fragment */
export async function copyLink(fragment) {
  const url = new URL(location.href);
  url.hash = fragment;
  try {
    await navigator.clipboard.writeText(url.href);
    return true;
  } catch {
    history.replaceState(null, "", url);
    return false;
  }
}
