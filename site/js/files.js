// @ts-check
// Files in and out.

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
