/**
 * What a score was before, and what another has made of it.
 * @module
 */
import { get } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button } from '/page/make.js';

/** Swedish dates are those of ISO 8601: the year first, then month, day, and the time of 24 hours. */
const ISO_DATES = 'sv';

/**
 * @param {HTMLElement} place
 * @param {string} name
 * @param {(text: string) => void} replace
 */
export async function showVersions(place, name, replace) {
  const { versions } = await get('/api/versions', { name });
  const shown = make('pre.old', { tabIndex: 0, 'aria-label': say('versionText') });
  const back = button(say('takeBack'), () => { replace(shown.textContent); place.replaceChildren(); }, { id: 'take-back', hidden: true });
  const list = make('ol.versions', {}, ...versions.map((/** @type {any} */ each) =>
    make('li', {}, button(new Date(each.when).toLocaleString(ISO_DATES), async () => {
      shown.textContent = (await get('/api/version', { name, id: each.id })).text;
      back.hidden = false;
    }))));
  place.replaceChildren(
    make('h2', {}, say('versions')),
    versions.length ? list : make('p', {}, say('noVersions')),
    shown, back, button(say('close'), () => place.replaceChildren()));
  place.querySelector('button')?.focus();
}

/**
 * Shows both texts; neither goes over the other unasked.
 * @param {HTMLElement} place
 * @param {string} name
 * @param {string} mine
 * @param {{ text: string, stamp: string }} theirs
 * @param {(mine: boolean, theirs: { text: string, stamp: string }) => Promise<void>} settled
 */
export function showClash(place, name, mine, theirs, settled) {
  const choose = (/** @type {boolean} */ own) => async () => {
    // Somebody may have written on meanwhile.
    const now = await get('/api/score', { name }).catch(() => theirs);
    place.replaceChildren();
    await settled(own, now);
  };
  place.replaceChildren(
    make('h2', {}, say('clash')),
    make('p', {}, say('clashHow')),
    make('div.both', {},
      make('div', {}, make('h3', {}, say('mine')), make('pre', { tabIndex: 0, id: 'mine' }, mine), button(say('keepMine'), choose(true), { id: 'keep-mine' })),
      make('div', {}, make('h3', {}, say('theirs')), make('pre', { tabIndex: 0, id: 'theirs' }, theirs.text), button(say('takeTheirs'), choose(false), { id: 'take-theirs' }))));
  /** @type {HTMLElement} */ (place.querySelector('button')).focus();
}
