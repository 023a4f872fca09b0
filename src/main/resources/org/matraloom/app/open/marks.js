/**
 * The marks of a row of the sheet: what is said, what rings, what is silent.
 * @module
 */
import { say } from '/page/words.js';

/** @typedef {{ element: HTMLElement, said: boolean, sign: string }} RowMark */

/** @type {WeakMap<Element, RowMark[]>} */
const known = new WeakMap();

/**
 * The marks of a row; they are looked for once, until it is forgotten.
 * @param {Element} row
 */
export function marksOf(row) {
  let marks = known.get(row);
  if (!marks) {
    marks = [...row.querySelectorAll('.marks > span')].map((each) => ({
      element: /** @type {HTMLElement} */ (each), said: each.classList.contains('s'), sign: sign(each),
    }));
    known.set(row, marks);
  }
  return marks;
}

/**
 * A row is drawn anew.
 * @param {Element} row
 */
export function forget(row) {
  known.delete(row);
}

/**
 * A mark in a word: a sollu, or the sign of what rings or is silent.
 * @param {Element} mark
 */
function sign(mark) {
  if (!mark.classList.contains('s')) return mark.classList.contains('v') ? ',' : '.';
  return [...mark.childNodes].filter((each) => each.nodeType === Node.TEXT_NODE).map((each) => each.textContent).join('').trim();
}

/**
 * A mark as it is told to a screen reader.
 * @param {any} mark
 */
export function spoken(mark) {
  return mark.sign === ',' ? say('ringsOn') : mark.sign === '.' ? say('silent') : mark.sign;
}
