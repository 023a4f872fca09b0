/**
 * Files for others, and how far they are.
 * @module
 */
import { get, post } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';

const KINDS = ['sheet-pdf', 'sheet-svg', 'sheet-html', 'sheet-txt', 'read-aloud', 'track', 'slow-track', 'pack', 'page', 'midi', 'musicxml', 'vtt'];
const LOOK_MS = 500;

/**
 * @param {HTMLElement} place
 * @param {string} name
 * @param {{ saved: () => Promise<void>, script: () => string }} score
 */
export async function showHandOn(place, name, score) {
  const large = make('input', { type: 'checkbox', id: 'large' });
  const cues = make('input', { type: 'checkbox', id: 'cues' });
  const work = make('ol.jobs', { id: 'jobs' });
  place.replaceChildren(
    make('h2', {}, say('handOn')),
    make('div.row-of-verbs', {}, ...KINDS.map((kind) => button(say('kind-' + kind), () => begin(kind), { 'data-kind': kind }))),
    make('div.row-of-verbs', {}, make('label', {}, large, ' ', say('large')), make('label', {}, cues, ' ', say('cues'))),
    work,
    button(say('close'), () => place.replaceChildren()));
  /** @type {HTMLElement} */ (place.querySelector('button')).focus();
  /** @type {Map<number, { element: any, words: any, deed: any }>} */
  const lines = new Map();

  async function begin(/** @type {string} */ kind) {
    await score.saved();
    try {
      await post('/api/make', { name, kind, script: score.script(), large: large.checked, cues: cues.checked });
      await look();
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
  }

  async function look() {
    if (!work.isConnected) return clearInterval(looking);
    const { jobs } = await get('/api/jobs');
    jobs.forEach(show);
  }

  /**
   * A line stays where it is while its work goes on, and so does its button.
   * @param {any} job
   */
  function show(job) {
    let line = lines.get(job.id);
    if (!line) {
      const words = make('span');
      const deed = make('span');
      line = { element: make('li', {}, words, ' ', deed), words, deed };
      lines.set(job.id, line);
      work.append(line.element);
    }
    line.words.textContent = job.file + ': ' + say('job-' + job.state, { seconds: job.seconds, files: job.files, said: job.said });
    if (line.element.dataset.state === job.state) return;
    if (line.element.dataset.state) tell(line.words.textContent);
    line.element.dataset.state = job.state;
    line.deed.replaceChildren(
      job.state === 'running' ? button(say('cancel'), () => post('/api/cancel', { id: job.id }).then(look), { 'aria-label': say('cancelOf', { file: job.file }) }) : '',
      job.state === 'done' && job.kind !== 'pack' ? make('a', { href: '/api/made?id=' + job.id, download: job.file }, say('download')) : '');
  }

  const looking = window.setInterval(look, LOOK_MS);
  await look();
}
