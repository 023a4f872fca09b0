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

/** Whether what is told belongs to the view that comes. */
let stays = false;

/**
 * Tells something in one line at the top, which a screen reader says.
 * @param {string} words
 * @param {boolean} [withNext] whether it belongs to the view that comes
 */
export function tell(words, withNext = false) {
  const told = document.getElementById('told');
  if (told) told.textContent = words;
  stays = withNext;
}

/** Another view comes: what was told of the one before goes. */
export function forget() {
  if (!stays) tell('');
  stays = false;
}
