/**
 * What was practised before: the tempi over time, and two takes side by side.
 * @module
 */
import { get, post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';

/**
 * @param {HTMLElement} place
 * @param {string} name
 * @param {string} title
 */
export async function showPast(place, name, title) {
  const { takes } = await get('/api/takes', { name });
  const choose = (/** @type {string} */ id, /** @type {number} */ at) => make('select', { id },
    ...takes.map((/** @type {string} */ each, /** @type {number} */ index) => make('option', { value: each, selected: index === at }, each)));
  const one = choose('one-take', Math.max(0, takes.length - 2));
  const other = choose('other-take', takes.length - 1);
  const words = make('pre', { tabIndex: 0, id: 'compared', hidden: true, 'aria-label': say('compared') });
  const picture = make('img', { alt: say('tempiOf', { title }), id: 'tempi', src: '/api/tempi?' + new URLSearchParams({ title, at: String(Date.now()) }),
    onerror: () => { picture.replaceWith(make('p', {}, say('noTempi'))); } });

  const both = make('div.both', { id: 'both-takes', hidden: true });

  /**
   * A take to be heard; while it sounds the other one is quiet.
   * @param {string} take
   */
  function player(take) {
    const sound = make('audio', { controls: true, preload: 'metadata', 'aria-label': take,
      src: '/api/take-sound?' + new URLSearchParams({ name, take }),
      onplay: () => both.querySelectorAll('audio').forEach((/** @type {HTMLAudioElement} */ each) => { if (each !== sound) each.pause(); }) });
    return make('div', {}, make('h3', {}, take), sound);
  }

  /** Goes over to the other take, to the same place. */
  function over() {
    const [first, second] = both.querySelectorAll('audio');
    const from = second.paused ? first : second;
    const to = second.paused ? second : first;
    to.currentTime = Math.min(from.currentTime, to.duration || 0);
    to.play();
  }

  async function compare() {
    try {
      both.replaceChildren(player(one.value), player(other.value), button(say('hearOther'), over, { id: 'hear-other' }));
      both.hidden = false;
      words.textContent = (await post('/api/compare', { name, one: one.value, other: other.value })).words;
      words.hidden = false;
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
  }

  place.replaceChildren(
    make('h2', {}, say('past')),
    picture,
    takes.length > 1
      ? make('div.row-of-verbs', {}, make('label', {}, say('oneTake'), ' ', one), make('label', {}, say('otherTake'), ' ', other),
        button(say('compare'), compare, { id: 'compare' }))
      : make('p', {}, say('fewTakes')),
    both,
    words,
    button(say('close'), () => place.replaceChildren()));
  place.querySelector('button')?.focus();
}
