/**
 * Where the piece lands, in one sentence that is always in sight, and what would mend it.
 * @module
 */
import { post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';

/**
 * @param {(text: string) => void} replace
 * @param {() => string} text
 */
export function landingLine(replace, text) {
  const sentence = make('p.sentence', { id: 'landing', role: 'status' });
  const ways = make('ol.ways', { id: 'repairs' });
  const ask = button(say('askRepairs'), async () => {
    const told = await post('/api/repairs', { text: text() });
    ways.replaceChildren(...told.repairs.map((/** @type {string} */ words, /** @type {number} */ index) =>
      make('li', {}, button(words, () => apply(index + 1)))));
    if (!told.repairs.length) ways.replaceChildren(make('li', {}, say('noRepairs')));
  }, { id: 'ask-repairs', hidden: true });
  const element = make('footer.landing', { 'aria-label': say('landing') }, sentence, ask, ways);

  async function apply(/** @type {number} */ number) {
    try {
      const told = await post('/api/repair', { text: text(), number });
      replace(told.text);
      tell(say('repaired'));
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
  }

  return {
    element,
    /** @param {any} told */
    show(told) {
      if (ways.firstChild) ways.replaceChildren();
      const wrong = told.problems.filter((/** @type {any} */ each) => each.error);
      element.dataset.lands = wrong.length ? 'unread' : String(told.lands);
      ask.hidden = wrong.length > 0 || told.lands;
      const words = wrong.length
        ? say('wrong', { line: wrong[0].line, column: wrong[0].column, what: wrong[0].message + (wrong[0].help ? '; ' + wrong[0].help : '') })
        : [told.landing.replace('\n', ' '), ...told.remarks.map((/** @type {string} */ each) => each.charAt(0).toUpperCase() + each.slice(1) + '.')].join(' ');
      if (sentence.textContent !== words) sentence.textContent = words;
    },
  };
}
