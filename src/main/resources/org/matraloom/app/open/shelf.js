/**
 * The shelf: a pile of sheets, one strip for each score.
 * @module
 */
import { get, post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';

/**
 * The shelf that was asked for before it could be shown.
 * @type {Promise<any> | null}
 */
let early = null;

/** So many strips are shown at first, and more by as many: thousands at once would keep the page from answering. */
const AT_ONCE = 100;

/** Asks for the shelf while the page's own words are still on their way. */
export function expectShelf() {
  early = get('/api/shelf');
  early.catch(() => { early = null; });
}

/**
 * @param {HTMLElement} main
 * @returns {Promise<() => void>}
 */
export async function showShelf(main) {
  document.title = say('shelf') + ' – Matraloom';
  const shelf = await (early ?? get('/api/shelf'));
  early = null;
  const list = make('ol.pile', { id: 'pile' });
  const filters = filterBar(shelf.scores, () => fill(list, shelf.scores, filters));
  main.append(
    make('h1', {}, say('shelf')),
    make('p.folder', {}, shelf.folder),
    beginnings(shelf),
    filters.bar,
    list,
    binned(shelf.bin),
  );
  fill(list, shelf.scores, filters);
  return () => {};
}

/** @param {string} name */
function open(name) {
  location.hash = '#score/' + encodeURIComponent(name);
}

/**
 * Asks, then shows the shelf anew or the score that was made.
 * @param {string} path
 * @param {object} body
 * @param {boolean} [enter]
 */
async function ask(path, body, enter = false) {
  try {
    const told = await post(path, body);
    if (enter) {
      if (told.guesses?.length) tell(say('guessed', { what: told.guesses.join('; ') }), true);
      open(told.name);
    } else {
      if (path === '/api/rename') tell(say('renamed', { name: told.name }), true);
      window.dispatchEvent(new HashChangeEvent('hashchange'));
    }
  } catch (refusal) {
    tell(/** @type {Error} */ (refusal).message);
  }
}

/** @param {any} shelf */
function beginnings(shelf) {
  const title = make('input', { id: 'new-title', maxLength: 80 });
  const pasted = make('textarea', { id: 'pasted', rows: 4, spellcheck: false });
  const sample = make('select', { id: 'sample' },
    ...shelf.samples.map((/** @type {string} */ name) => make('option', { value: name }, name.replace('.loom', ''))));
  return make('details.begin', { open: shelf.scores.length === 0 },
    make('summary', {}, say('begin')),
    shelf.scores.length === 0 ? make('p', {}, say('empty')) : '',
    make('div.ways', {},
      make('form', { onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); ask('/api/new', { title: title.value }, true); } },
        make('label', { htmlFor: 'new-title' }, say('newTitle')), title,
        make('button', { type: 'submit', id: 'make-new' }, say('makeNew'))),
      make('form', { onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); ask('/api/new', { sample: sample.value }, true); } },
        make('label', { htmlFor: 'sample' }, say('fromSample')), sample,
        make('button', { type: 'submit', id: 'take-sample' }, say('takeSample'))),
      make('form', { onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); ask('/api/new', { pasted: pasted.value, title: title.value }, true); } },
        make('label', { htmlFor: 'pasted' }, say('fromPaste')), pasted,
        make('button', { type: 'submit', id: 'take-paste' }, say('takePaste')))));
}

/**
 * @param {any[]} scores
 * @param {() => void} changed
 */
function filterBar(scores, changed) {
  const distinct = (/** @type {any[]} */ all) => [...new Set(all)];
  const talas = distinct(scores.map((each) => each.tala).filter(Boolean)).sort();
  const nadais = distinct(scores.flatMap((each) => each.nadais ?? [])).sort((a, b) => a - b);
  const choose = (/** @type {string} */ id, /** @type {any[]} */ values) => make('select', { id, onchange: changed },
    make('option', { value: '' }, say('all')), ...values.map((value) => make('option', { value }, String(value))));
  const tala = choose('by-tala', talas);
  const nadai = choose('by-nadai', nadais);
  const longest = make('input', { id: 'by-length', type: 'number', min: 1, oninput: changed });
  const name = make('input', { id: 'by-name', type: 'search', oninput: changed });
  const bar = make('fieldset.filters', { hidden: scores.length < 2 },
    make('legend', {}, say('show')),
    make('label', {}, say('withName'), ' ', name),
    make('label', {}, say('tala'), ' ', tala),
    make('label', {}, say('nadai'), ' ', nadai),
    make('label', {}, say('atMost'), ' ', longest));
  return { bar, name, tala, nadai, longest };
}

/**
 * @param {HTMLElement} list
 * @param {any[]} scores
 * @param {any} filters
 */
function fill(list, scores, filters) {
  const most = Number(filters.longest.value) || Infinity;
  const wanted = filters.name.value.trim().toLocaleLowerCase();
  const shown = scores.filter((each) =>
    (!wanted || ((each.title ?? '') + ' ' + each.name).toLocaleLowerCase().includes(wanted)) &&
    (!filters.tala.value || each.tala === filters.tala.value) &&
    (!filters.nadai.value || (each.nadais ?? []).includes(Number(filters.nadai.value))) &&
    (each.length ?? 0) <= most);
  list.replaceChildren();
  append(list, shown);
}

/**
 * Shows the next strips, and a button for those that are left.
 * @param {HTMLElement} list
 * @param {any[]} left
 */
function append(list, left) {
  list.append(...left.slice(0, AT_ONCE).map(strip));
  if (left.length <= AT_ONCE) {
    return;
  }
  const rest = left.slice(AT_ONCE);
  const more = make('li.more', {},
    button(say('moreScores', { count: Math.min(rest.length, AT_ONCE), left: rest.length }), () => {
      const last = more.previousElementSibling;
      more.remove();
      append(list, rest);
      /** @type {HTMLElement | null | undefined} */ (last?.nextElementSibling?.querySelector('a'))?.focus();
    }));
  list.append(more);
}

/** @param {any} score */
function strip(score) {
  const link = make('a', { href: '#score/' + encodeURIComponent(score.name) }, score.title || score.name);
  const facts = score.problem
    ? make('p.verdict.wrong', {}, say('unread', { line: score.line || '', why: score.problem }))
    : make('p.verdict', {}, make('span', { 'aria-hidden': 'true' }, score.lands ? '● ' : '○ '), score.verdict);
  const line = score.problem ? [] : [
    make('dl', {},
      ...[['tala', `${score.tala}, ${score.beats}`], ['rounds', score.rounds], ['matras', score.matras], ['tempo', score.tempo],
        ['practised', score.practised || say('never')], ['clean', score.clean || '–']]
        .map(([key, value]) => make('div', {}, make('dt', {}, say(key)), make('dd', {}, String(value)))))];
  return make('li.strip' + (score.lands ? '.lands' : ''), { 'data-name': score.name },
    make('h2', {}, link, ' ', make('span.file', {}, score.title ? score.name : '')), facts, ...line, deeds(score.name));
}

/** @param {string} name */
function deeds(name) {
  const stem = name.replace('.loom', '');
  return make('details.deeds', {},
    make('summary', { 'aria-label': say('deedsOf', { name: stem }) }, say('deeds')),
    make('div', {},
      button(say('copy'), () => ask('/api/copy', { name }), { 'aria-label': say('copyOf', { name: stem }) }),
      button(say('rename'), (event) => rename(event, name), { 'aria-label': say('renameOf', { name: stem }) }),
      button(say('discard'), () => ask('/api/discard', { name }), { 'aria-label': say('discardOf', { name: stem }) })));
}

/**
 * @param {Event} event
 * @param {string} name
 */
function rename(event, name) {
  const field = make('input', { value: name.replace('.loom', ''), 'aria-label': say('newName') });
  const form = make('form.rename', {
    onsubmit: (/** @type {Event} */ e) => { e.preventDefault(); ask('/api/rename', { name, to: field.value }); },
  }, field, make('button', { type: 'submit' }, say('rename')));
  /** @type {HTMLElement} */ (event.currentTarget).replaceWith(form);
  field.focus();
}

/** @param {string[]} bin */
function binned(bin) {
  return make('details.bin', { hidden: bin.length === 0 },
    make('summary', {}, say('bin', { count: bin.length })),
    make('ul', {}, ...bin.map((name) => make('li', {}, name + ' ',
      button(say('bringBack'), () => ask('/api/bring-back', { name }), { 'aria-label': say('bringBackOf', { name }) })))));
}
