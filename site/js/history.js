// @ts-check
// Undo is a list of documents and a place in it.

const LONGEST = 500;

export function createHistory() {
  /** @type {object[]} */
  let documents = [];
  let place = -1;

  return {
    get current() {
      return documents[place];
    },
    get canUndo() {
      return place > 0;
    },
    get canRedo() {
      return place < documents.length - 1;
    },

    /** Puts a document after the current one; what was undone is gone. @param {object} document */
    push(document) {
      documents = documents.slice(Math.max(0, place + 2 - LONGEST), place + 1);
      documents.push(document);
      place = documents.length - 1;
    },
    undo() {
      if (place > 0) place--;
    },
    redo() {
      if (place < documents.length - 1) place++;
    },
  };
}
