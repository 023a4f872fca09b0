/**
 * Makes elements.
 * @module
 */

/**
 * @param {string} tag a name, with classes after points
 * @param {Record<string, any>} [set] properties; those that begin with "on" listen, those with a
 *   hyphen are attributes
 * @param {...(Node | string)} inside
 * @returns {any}
 */
export function make(tag, set = {}, ...inside) {
  const [name, ...classes] = tag.split('.');
  const element = document.createElement(name);
  element.classList.add(...classes);
  for (const [key, value] of Object.entries(set)) {
    if (key.startsWith('on')) element.addEventListener(key.slice(2), value);
    else if (key.includes('-') || key === 'role' || key === 'for') element.setAttribute(key, String(value));
    else /** @type {any} */ (element)[key] = value;
  }
  element.append(...inside);
  return element;
}

/**
 * A button with words.
 * @param {string} words
 * @param {(event: Event) => void} done
 * @param {Record<string, any>} [set]
 */
export function button(words, done, set = {}) {
  return make('button', { type: 'button', onclick: done, ...set }, words);
}

/**
 * Tells something in one line at the top, which a screen reader says.
 * @param {string} words
 */
export function tell(words) {
  const told = document.getElementById('told');
  if (told) told.textContent = words;
}
