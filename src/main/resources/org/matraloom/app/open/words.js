/**
 * The page's own words, from a file for each language.
 * @module
 */
import { get } from '/page/ask.js';

/** @type {Record<string, string>} */
let words = {};
/** @type {Record<string, string>} */
let english = {};

/** The languages that there are, by their tags. */
export const TONGUES = { en: 'English', de: 'Deutsch (ungeprüft)' };

/** Reads the words of the language that was chosen last. */
export async function readWords() {
  english = await get('/page/words-en.json');
  const tongue = chosen();
  words = tongue === 'en' ? english : { ...english, ...(await get(`/page/words-${tongue}.json`)) };
  document.documentElement.lang = tongue;
}

export function chosen() {
  const kept = localStorage.getItem('tongue') || 'en';
  return kept in TONGUES ? kept : 'en';
}

/**
 * A word or sentence; what stands in curly brackets is filled in.
 * @param {string} key
 * @param {Record<string, string | number>} [values]
 */
export function say(key, values = {}) {
  return (words[key] ?? key).replace(/\{(\w+)\}/g, (whole, name) => String(values[name] ?? whole));
}

/**
 * Fills in all words below an element.
 * @param {ParentNode} root
 */
export function fillIn(root) {
  root.querySelectorAll('[data-say]').forEach((each) => {
    const element = /** @type {HTMLElement} */ (each);
    element.textContent = say(element.dataset.say ?? '');
  });
}
