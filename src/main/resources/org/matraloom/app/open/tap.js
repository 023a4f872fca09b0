/**
 * A rhythm tapped on a key against the clap, to be written at the cursor or not.
 * @module
 */
import { post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';

const FEWEST = 2;
/** What sounds while one taps, for how many avartanas. */
const CLAP = { countIn: 16, parts: 'clap,count,wave', go: 'first', at: 0 };
const PASSED = ['Tab', 'Shift', 'Control', 'Alt', 'Meta'];

/**
 * @param {HTMLElement} place
 * @param {{ hear: any, text: () => string, insert: (phrase: string) => void }} score
 */
export async function showTap(place, score) {
  /** @type {number[]} */
  let taps = [];
  let tempo = 0;
  const count = make('p', { role: 'status' });
  const pad = make('button.pad', { type: 'button', id: 'tap-pad', 'aria-describedby': 'tap-how' }, say('tapHere'));
  const found = make('div', { id: 'tap-found' });
  const done = button(say('tapDone'), end, { id: 'tap-done' });

  function tap(/** @type {Event} */ event) {
    event.preventDefault();
    const playing = score.hear.playing();
    if (!playing) return;
    const heard = playing.place(event.timeStamp);
    tempo = heard.tempo;
    taps.push(heard.beat);
    count.textContent = say('tapCount', { count: taps.length });
  }

  pad.addEventListener('pointerdown', tap);
  pad.addEventListener('keydown', (/** @type {KeyboardEvent} */ event) => {
    if (PASSED.includes(event.key) || event.ctrlKey || event.metaKey || event.altKey) return;
    event.stopPropagation();
    if (event.key === 'Escape') return close();
    if (event.key === 'Enter') {
      event.preventDefault();
      return end();
    }
    if (event.repeat) event.preventDefault();
    else tap(event);
  });

  function close() {
    score.hear.stop();
    place.replaceChildren();
  }

  async function begin() {
    taps = [];
    count.textContent = '';
    found.replaceChildren();
    score.hear.stop();
    await score.hear.begin(CLAP);
    pad.focus();
  }

  async function end() {
    score.hear.stop();
    if (taps.length < FEWEST) return tell(say('tapFew'));
    try {
      const told = await post('/api/rhythm', { text: score.text(), taps: taps.join(','), tempo: Math.round(tempo * 100) });
      show(told);
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
  }

  function show(/** @type {any} */ told) {
    const write = button(say('tapWrite'), () => {
      score.insert(told.phrase);
      place.replaceChildren();
      tell(say('tapWritten'));
    }, { id: 'tap-write' });
    found.replaceChildren(
      make('pre', { tabIndex: 0, 'aria-label': say('tapPhrase') }, told.phrase),
      make('p', {}, say('tapFound', { matras: told.matras, nadai: told.nadai, begins: told.begins, scatter: told.scatterMs })),
      write);
    write.focus();
  }

  place.replaceChildren(
    make('h2', {}, say('tapIt')),
    make('p', { id: 'tap-how' }, say('tapHow')),
    pad, count,
    make('div.row-of-verbs', {}, done, button(say('tapAnew'), begin), button(say('close'), close)),
    found);
  await begin();
}
