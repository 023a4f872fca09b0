/**
 * Chooses what is shown: the shelf, or one score.
 * @module
 */
import { watch } from '/page/ask.js';
import { fillIn, readWords, say, chosen, TONGUES } from '/page/words.js';
import { make, tell, forget } from '/page/make.js';
import { showShelf, expectShelf } from '/page/shelf.js';

const main = /** @type {HTMLElement} */ (document.getElementById('main'));
/** @type {() => Promise<void> | void} */
let leave = () => {};

const score = () => import('/page/score.js');

async function show() {
  await leave();
  forget();
  main.replaceChildren();
  const [view, name] = decodeURIComponent(location.hash.slice(1)).split('/');
  main.dataset.view = view === 'score' ? 'score' : 'shelf';
  // The shelf comes without the editor, which is read while one looks at it.
  leave = view === 'score' && name ? await (await score()).showScore(main, name) : await showShelf(main);
  main.dataset.ready = location.hash;
  performance.mark('ready');
}

function offerTongues() {
  const select = /** @type {HTMLSelectElement} */ (document.getElementById('tongue'));
  for (const [tag, name] of Object.entries(TONGUES)) {
    select.append(make('option', { value: tag, selected: tag === chosen(), lang: tag }, name));
  }
  select.addEventListener('change', () => {
    localStorage.setItem('tongue', select.value);
    location.reload();
  });
}

async function begin() {
  const first = document.documentElement.dataset.first;
  if (!first && !location.hash.startsWith('#score')) expectShelf();
  await readWords();
  fillIn(document);
  offerTongues();
  watch((away) => {
    document.body.classList.toggle('away', away);
    tell(away ? say('away') : say('back'));
  });
  if (first && !location.hash) location.replace('#score/' + encodeURIComponent(first));
  window.addEventListener('hashchange', show);
  await show();
  setTimeout(score, 200);
}

begin();
