/**
 * The list of keys, which a key and a button show and hide.
 * @module
 */
import { say } from '/page/words.js';
import { make, button } from '/page/make.js';

/** Keys beside what they do; those of the page for a terminal, but that a page is not quitted by one. */
const KEYS = [
  ['space', 'StartStop'], ['enter', 'Again'], ['right', 'Next'], ['left', 'Previous'], ['0', 'First'], ['1–9', 'Round'],
  ['up', 'Faster'], ['down', 'Slower'], ['+', 'MuchFaster'], ['-', 'MuchSlower'], ['d', 'Double'], ['h', 'Half'], ['t', 'Tap'],
  ['l', 'Loop'], ['r', 'LoopRound'], ['c', 'Claps'], ['f', 'Counts'], ['w', 'Waves'], ['k', 'Ticks'], ['v', 'Voice'],
  ['b', 'Breaths'], ['s', 'Drone'], ['esc', 'Leave'], ['?', 'Help'],
];

export function keyList() {
  const element = make('dl.keys', { hidden: true, id: 'keys', 'aria-label': say('keys') },
    ...KEYS.map(([key, deed]) => make('div', {}, make('dt', {}, make('kbd', {}, key.length > 2 && key !== '1–9' ? say('name-' + key) : key)),
      make('dd', {}, say('key-' + deed)))));
  const opener = button(say('keys'), () => toggle(), { id: 'show-keys', 'aria-expanded': 'false', 'aria-controls': 'keys', 'aria-keyshortcuts': '?' });

  function set(/** @type {boolean} */ shown) {
    element.hidden = !shown;
    opener.setAttribute('aria-expanded', String(shown));
  }

  function toggle() {
    set(element.hidden);
  }

  return { element, opener, toggle, hide: () => set(false) };
}
