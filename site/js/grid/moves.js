// @ts-check
// Where a key leads in a grid, and what it asks for besides.

/** @typedef {{row: number, column: number}} Place */

/**
 * @param {KeyboardEvent} event
 * @param {Place} at
 * @param {Place} last the last row and column
 * @param {number} page rows in sight
 * @returns {Place | null} null: the key does not move
 */
export function moved({ key, ctrlKey, metaKey, altKey }, { row, column }, last, page) {
  if (altKey) return null;
  const far = ctrlKey || metaKey;
  switch (key) {
    case "ArrowUp":
      return { row: far ? 0 : row - 1, column };
    case "ArrowDown":
      return { row: far ? last.row : row + 1, column };
    case "ArrowLeft":
      return { row, column: far ? 0 : column - 1 };
    case "ArrowRight":
      return { row, column: far ? last.column : column + 1 };
    case "Home":
      return { row: far ? 0 : row, column: 0 };
    case "End":
      return { row: far ? last.row : row, column: last.column };
    case "PageUp":
      return { row: row - page, column };
    case "PageDown":
      return { row: row + page, column };
  }
  return null;
}

/**
 * @param {KeyboardEvent} event
 * @returns {"" | "edit" | "clear" | "fill" | "all" | "add" | "copy" | "remove" | "undo" | "redo"}
 */
export function asked({ key, ctrlKey, metaKey, shiftKey, altKey }) {
  const far = (ctrlKey || metaKey) && !altKey;
  if (far) {
    switch (key.length === 1 ? key.toLowerCase() : key) {
      case "a":
        return "all";
      case "d":
        return "fill";
      case "z":
        return shiftKey ? "redo" : "undo";
      case "y":
        return "redo";
      case "Enter":
        return shiftKey ? "copy" : "add";
      case "Delete":
      case "Backspace":
        return "remove";
    }
    return "";
  }
  if (key === "Enter" || key === "F2") return "edit";
  return key === "Delete" || key === "Backspace" ? "clear" : "";
}
