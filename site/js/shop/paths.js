// @ts-check
// Where paths lead once an item of a list has gone or come. A move gives the path now, empty where there is none any more.

/** @typedef {(path: string) => string} Move */

/** @param {string} path @param {string} list @param {(place: number) => number} to  NaN: it is gone */
function shifted(path, list, to) {
  if (!path.startsWith(`${list}/`)) return path;
  const [place, ...rest] = path.slice(list.length + 1).split("/");
  if (!/^\d+$/.test(place)) return path;
  const now = to(Number(place));
  return Number.isNaN(now) ? "" : [list, now, ...rest].join("/");
}

/** @param {string} list @param {number} index @returns {Move} */
export const without = (list, index) => (path) => shifted(path, list, (place) => (place === index ? NaN : place > index ? place - 1 : place));

/** @param {string} list @param {number} index that another was put behind @returns {Move} */
export const withOneMore = (list, index) => (path) => shifted(path, list, (place) => (place > index ? place + 1 : place));
