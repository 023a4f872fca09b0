/**
 * One score: its text and its sheet side by side, the landing always in sight.
 * @module
 */
import { get, post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';
import { openEditor } from '/page/editor.js';
import { openSheet } from '/page/sheet.js';
import { keeper, draftOf } from '/page/keep.js';
import { openHear } from '/page/hear.js';
import { audio } from '/page/sound.js';
import { openListen } from '/page/listen.js';
import { showPast } from '/page/past.js';
import { showTap } from '/page/tap.js';
import { showHandOn } from '/page/handon.js';
import { showSession } from '/page/practise.js';
import { showWriting } from '/page/writing.js';
import { landingLine } from '/page/landing.js';
import { showVersions, showClash } from '/page/versions.js';

/** So long what can wait gives way to the sheet. */
const DRAWN_MS = 150;

/** @type {any} */
let vocabulary;

/**
 * @param {HTMLElement} main
 * @param {string} name
 * @returns {Promise<() => Promise<void>>}
 */
export async function showScore(main, name) {
  vocabulary ??= await get('/api/vocabulary');
  if (!document.querySelector('.figures')) document.body.insertAdjacentHTML('beforeend', vocabulary.figures);
  const first = await get('/api/score', { name });
  document.title = name.replace('.loom', '') + ' – Matraloom';
  const state = make('span.state', { id: 'state', role: 'status' });
  const script = make('select', { id: 'script', onchange: () => read(editor.text()) },
    ...vocabulary.scripts.map((/** @type {string} */ each) => make('option', { value: each }, each)));
  const paper = make('section.paper', { 'aria-label': say('sheet'), id: 'sheet' });
  const desk = make('section.desk', { 'aria-label': say('text') });
  const margin = make('section.margin', { id: 'margin' });
  /** Whether somebody has to choose between two texts. */
  const isAsked = () => margin.querySelector('#keep-mine') !== null;
  const hear = openHear({ text: () => editor.text(), piece: () => piece, sheet: () => sheet, light: (range) => editor.light(range) });
  const listen = openListen({
    name, hear, sheet: () => sheet, saved: () => kept.save(),
    cleared: () => { if (!isAsked()) margin.replaceChildren(); }, isClear: () => !margin.firstChild,
  });
  const line = landingLine((text) => changeTo(text), () => editor.text());
  main.append(
    make('div.heading', {},
      make('h1', { id: 'title' }, name.replace('.loom', '')),
      make('nav.verbs', { 'aria-label': say('verbs') },
        button(say('tapIt'), () => showTap(margin, { hear, text: () => editor.text(), insert: (phrase) => editor.insert(phrase) }), { id: 'tap-rhythm' }),
        button(say('session'), () => {
          leaveSession = showSession(margin, {
            name, saved: () => kept.save(), stopped: () => { hear.stop(); listen.hide(); }, script: () => script.value, sheet: () => sheet, piece: () => piece,
          });
        }, { id: 'session' }),
        button(say('writing'), () => showWriting(margin), { id: 'writing' }),
        button(say('versions'), () => showVersions(margin, name, (text) => changeTo(text)), { id: 'versions' }),
        button(say('past'), () => showPast(margin, name, piece?.title ?? name), { id: 'past' }),
        button(say('handOn'), () => showHandOn(margin, name, { saved: () => kept.save(), script: () => script.value }), { id: 'hand-on' }),
        make('label', {}, say('script'), ' ', script)),
      state),
    hear.element,
    listen.element,
    margin,
    make('div.spread', {}, desk, paper),
    make('p.care', {}, say('care')),
    line.element);
  // What is opened is seen, wherever the page has been moved to, and what was open before is folded.
  new MutationObserver(() => {
    if (!margin.firstChild) return;
    listen.fold();
    margin.scrollIntoView({ block: 'nearest' });
  }).observe(margin, { childList: true });
  const sheet = openSheet(paper, (sollu, byKey) => {
    listen.playFrom(sollu);
    const place = sheet.place(sollu);
    if (place) editor.goTo(place[0], place[1], byKey);
  });
  const kept = keeper(name, first, {
    drawn: async () => { await Promise.race([reading, new Promise((wait) => setTimeout(wait, DRAWN_MS))]); },
    state: (key) => { state.textContent = say(key); state.dataset.state = key; },
    clash: (theirs) => showClash(margin, name, editor.text(), theirs, async (mine, now) => {
      if (!mine) editor.replace(now.text);
      await kept.settled(now.stamp, now.text);
    }),
  });
  /** @type {any} */
  let piece = null;
  /**
   * The text that is to be read next; what is typed while another one is read takes its place.
   * @type {string | null}
   */
  let waiting = null;
  /** @type {Promise<void> | null} */
  let reading = null;
  let drawn = 0;
  /** @type {() => any} */
  let leaveSession = () => {};

  /**
   * Takes another text; the key that takes it back is the editor's.
   * @param {string} text
   */
  function changeTo(text) {
    editor.replace(text);
    editor.focus();
  }

  function read(/** @type {string} */ text) {
    waiting = text;
    reading ??= readOn().finally(() => { reading = null; });
    return reading;
  }

  async function readOn() {
    while (waiting !== null) {
      const text = waiting;
      waiting = null;
      try {
        show(text, await post('/api/read', { name, text, script: script.value, known: sheet.known() }));
      } catch (refusal) {
        // the page has been told; the next key asks again
      }
    }
  }

  function show(/** @type {string} */ text, /** @type {any} */ told) {
    if (text === editor.text()) editor.showProblems(told.problems);
    if (told.rows) {
      piece = told;
      sheet.draw(told);
      hear.shown();
      const title = document.getElementById('title');
      const called = told.title || name.replace('.loom', '');
      if (title && title.textContent !== called) title.textContent = called;
    } else {
      sheet.stale();
    }
    line.show(told);
    paper.dataset.drawn = String(++drawn);
    paper.dispatchEvent(new CustomEvent('drawn', { detail: told }));
  }

  const editor = openEditor(desk, {
    text: first.text,
    vocabulary,
    typed: (text) => {
      // Asked first: what is kept on the page takes a while, and the answer too.
      read(text);
      kept.typed(text);
    },
    moved: (at) => sheet.lightPlace(at),
  });
  state.textContent = say('saved');
  state.dataset.state = 'saved';
  const draft = draftOf(name);
  if (draft && draft.text !== first.text) {
    tell(say('draftFound'));
    if (draft.stamp === first.stamp) editor.replace(draft.text);
    else showClash(margin, name, draft.text, first, async (mine) => { if (mine) editor.replace(draft.text); else await kept.save(); });
  }
  await read(editor.text());
  Object.assign(window, { matraloom: { hear, sheet, piece: () => piece, audio, chosen: () => editor.chosen() } });
  return async () => {
    leaveSession();
    listen.close();
    hear.close();
    await kept.close();
    editor.close();
  };
}
