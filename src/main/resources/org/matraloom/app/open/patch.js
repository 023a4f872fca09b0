/**
 * Changes what stands there into what shall stand there, touching only what differs: the browser
 * lays out and paints again what was touched.
 * @module
 */

/**
 * @param {Element} now what stands there
 * @param {Element} then what shall stand there; its parts may be taken from it
 * @param {(changed: Element) => void} changed called for an element that is new or has other attributes
 */
export function patch(now, then, changed) {
  if (attributes(now, then)) changed(now);
  let old = now.firstChild;
  let next = then.firstChild;
  while (next) {
    const each = next;
    next = each.nextSibling;
    const before = old;
    old = before ? before.nextSibling : null;
    if (!before || before.nodeName !== each.nodeName) {
      if (before) before.replaceWith(each);
      else now.append(each);
      if (each instanceof Element) [each, ...each.querySelectorAll('*')].forEach(changed);
    } else if (each.nodeType === Node.TEXT_NODE) {
      if (before.nodeValue !== each.nodeValue) before.nodeValue = each.nodeValue;
    } else patch(/** @type {Element} */ (before), /** @type {Element} */ (each), changed);
  }
  while (old) {
    const more = old;
    old = more.nextSibling;
    more.remove();
  }
}

/**
 * What a script has set of the style stays.
 * @param {Element} now
 * @param {Element} then
 * @returns {boolean} whether one differs
 */
function attributes(now, then) {
  const wanted = then.attributes;
  let differs = false;
  for (let index = now.attributes.length - 1; index >= 0; index--) {
    const { name } = now.attributes[index];
    if (name !== 'style' && !then.hasAttribute(name)) {
      now.removeAttribute(name);
      differs = true;
    }
  }
  for (let index = 0; index < wanted.length; index++) {
    const { name, value } = wanted[index];
    if (now.getAttribute(name) !== value) {
      now.setAttribute(name, value);
      differs = true;
    }
  }
  return differs;
}
