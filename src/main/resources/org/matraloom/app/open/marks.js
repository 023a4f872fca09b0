/**
 * The marks of a row of the sheet: what is said, what rings, what is silent.
 * @module
 */
import { say } from '/page/words.js';

/** @typedef {{ element: HTMLElement, said: boolean, sign: string }} RowMark */

/** @type {WeakMap<Element, RowMark[]>} */
const known = new WeakMap();

/**
 * The marks of a row; a row that is drawn does not change.
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
