/**
 * Keys that do something while nobody writes: the same as while playing in a terminal.
 * @module
 */

/**
 * @param {Record<string, (number: number, event: KeyboardEvent) => void>} deeds by key; "round" takes the digits
 * @param {boolean} [inSession] whether they are those of a practice session; others rest meanwhile
 * @returns {() => void} ends it
 */
export function onKeys(deeds, inSession = false) {
  const listen = (/** @type {KeyboardEvent} */ event) => {
    const target = /** @type {HTMLElement} */ (event.target);
    const writing = target.closest('input, textarea, select, .cm-editor');
    const pressing = [' ', 'Enter'].includes(event.key) && target.closest('button, summary, a');
    const others = document.body.classList.contains('in-session') !== inSession;
    if (others || writing || pressing || event.ctrlKey || event.metaKey || event.altKey) return;
    const digit = /^[1-9]$/.test(event.key) ? Number(event.key) : 0;
    const deed = digit ? deeds.round : deeds[event.key];
    if (!deed) return;
    event.preventDefault();
    deed(digit, event);
  };
  document.addEventListener('keydown', listen);
  return () => document.removeEventListener('keydown', listen);
}
