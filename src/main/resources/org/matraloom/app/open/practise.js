/**
 * A practice session: it plays, listens, says one thing and goes on by itself. What is played and
 * what is decided comes from the program; the page plays, records and shows.
 * @module
 */
import { post, postBytes, fetchBytes } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';
import { play, audio } from '/page/sound.js';
import { openMicrophone } from '/page/microphone.js';
import { guideIn, roundTripOf } from '/page/roundtrip.js';
import { openEar } from '/page/ear.js';
import { sayAloud, whenVoiced } from '/page/aloud.js';
import { openHand } from '/page/hand.js';
import { onKeys } from '/page/keys.js';

const LOOK_MS = 250;
const TOLD_MS = 2500;
/** What is said is handed on in blocks of 20 ms, so that a mark comes while one remembers the sollu. */
const BLOCK_FRAMES = 960;
/** What rings and is late is recorded too. */
const TAIL_MS = 800;

/**
 * @param {HTMLElement} place
 * @param {{ name: string, saved: () => Promise<void>, stopped: () => void, script: () => string, sheet: () => any, piece: () => any }} score
 * @returns {() => unknown} ends a session that goes on
 */
export function showSession(place, score) {
  const goal = make('input', { id: 'goal', type: 'number', min: 5, max: 600, value: Math.round(score.piece()?.tempo ?? 60) });
  const from = make('input', { id: 'session-from', type: 'number', min: 5, max: 600, placeholder: say('fromLog') });
  const minutes = make('input', { id: 'minutes', type: 'number', min: 1, max: 240, value: 15 });
  const whole = make('input', { type: 'checkbox', id: 'only-whole' });
  const aloud = make('input', { type: 'checkbox', id: 'aloud' });
  const spoken = make('label', { hidden: true }, aloud, ' ', say('aloud'));
  whenVoiced(() => { spoken.hidden = false; });
  const begin = button(say('sessionBegin'), run, { id: 'session-begin' });
  const end = button(say('sessionEnd'), () => stop(), { id: 'session-end', hidden: true });
  const close = button(say('close'), () => place.replaceChildren());
  const level = make('meter', { min: -60, max: 0, low: -30, high: -3, optimum: -12, value: -60, 'aria-label': say('level') });
  const now = make('p.pass', { id: 'pass', role: 'status' });
  const sentence = make('p.sentence', { id: 'session-sentence', role: 'status' });
  const decision = make('p', { id: 'session-decision' });
  const hand = openHand();
  hand.element.hidden = true;
  hand.element.removeAttribute('id');
  const done = make('ol', { id: 'passes' });
  const setting = make('div.row-of-verbs', {},
    make('label', {}, say('goal'), ' ', goal), make('label', {}, say('from'), ' ', from),
    make('label', {}, say('minutes'), ' ', minutes), make('label', {}, whole, ' ', say('onlyWhole')), spoken);
  place.replaceChildren(
    make('h2', {}, say('session')),
    make('p.how', {}, say('sessionHow')),
    setting,
    make('div.row-of-verbs', {}, begin, end, level, close),
    now, hand.element, sentence, decision, done);
  goal.focus();
  // The measure of takes is warmed while one reads; in a pass it would hold up the marks.
  post('/api/take/expected', {}).catch(() => {});
  const stop = () => post('/api/session/end', {}).catch(() => {});
  let unkey = () => {};
  let isHeard = false;

  async function run() {
    /** @type {any} */
    let microphone;
    try {
      score.stopped();
      await score.saved();
      isHeard = true;
      microphone = await openMicrophone((heard) => { if (isHeard) level.value = heard; }, BLOCK_FRAMES);
      await microphone.opened;
    } catch (refused) {
      return tell(say('noMicrophone', { why: /** @type {Error} */ (refused).message }));
    }
    setGoing(true);
    try {
      const begun = await post('/api/session/begin', {
        name: score.name, goal: goal.value, from: from.value, minutes: minutes.value, onlyTheWhole: whole.checked,
      });
      if (begun.mouth) tell(begun.mouth);
      await follow(microphone);
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
      await stop();
    }
    microphone.close();
    isHeard = false;
    setGoing(false);
    score.sheet().clearSaid();
    if (score.piece()) score.sheet().draw(score.piece());
  }

  /** @param {boolean} going */
  function setGoing(going) {
    document.body.classList.toggle('in-session', going);
    place.scrollIntoView({ block: 'start' });
    begin.hidden = going;
    close.hidden = going;
    setting.hidden = going;
    end.hidden = !going;
    hand.element.hidden = true;
    level.value = -60;
    unkey();
    if (going) {
      unkey = onKeys({ ' ': stop, PageDown: stop, q: stop }, true);
      done.replaceChildren();
      sentence.textContent = '';
      decision.textContent = '';
      end.focus();
    }
  }

  const leave = () => (document.body.classList.contains('in-session') ? stop() : undefined);

  /**
   * Does what there is to be done, until the session has ended.
   * @param {any} microphone
   */
  async function follow(microphone) {
    let seen = -1;
    for (;;) {
      const state = await post('/api/session/look', { seen, script: score.script() });
      if (state.number === seen) {
        await new Promise((wait) => setTimeout(wait, LOOK_MS));
        continue;
      }
      seen = state.number;
      if (state.kind === 'pass') await onePass(state, microphone);
      if (state.kind === 'told') await shown(state);
      if (state.kind === 'rest') rest(state);
      if (state.kind === 'end') return over(state);
    }
  }

  /**
   * @param {any} state
   * @param {any} microphone
   */
  async function onePass(state, microphone) {
    now.textContent = state.words[0];
    sentence.textContent = '';
    decision.textContent = '';
    score.sheet().draw({ ...state, places: [] });
    hand.element.hidden = false;
    hand.clear();
    score.sheet().clearSaid();
    const { frames: trip } = await roundTripOf(microphone.name).catch(() => ({ frames: undefined }));
    const ear = openEar(state.number, microphone, trip, (heard) => marked(heard, microphone));
    microphone.record(ear.hear);
    let isOver = false;
    const playing = await play({}, () => { isOver = true; }, (gaps) => tell(say('late', { gaps })), '/api/session/play');
    ear.follow(playing);
    place.dataset.passes = String(Number(place.dataset.passes ?? 0) + 1);
    place.dispatchEvent(new CustomEvent('pass', { bubbles: true, detail: { state, playing } }));
    const isStill = await new Promise((finished) => {
      const look = window.setInterval(async () => {
        const still = await post('/api/session/look', { seen: state.number }).catch(() => ({ number: -1 }));
        if (isOver || still.number !== state.number) {
          clearInterval(look);
          cancelAnimationFrame(frame);
          finished(still.number === state.number);
        }
      }, LOOK_MS);
      let frame = 0;
      const draw = () => {
        const at = playing.place();
        const mark = at.counting ? undefined : score.sheet().lightBeat(at.beat);
        hand.show(state, at, score.sheet().marks(), mark);
        frame = requestAnimationFrame(draw);
      };
      draw();
    });
    if (!isStill) {
      microphone.take();
      return playing.stop();
    }
    await new Promise((wait) => setTimeout(wait, TAIL_MS));
    hand.element.hidden = true;
    score.sheet().dark();
    const guide = await guideIn(microphone, playing).catch(() => ({}));
    const take = microphone.take();
    await ear.end();
    await postBytes('/api/session/take', { number: String(state.number), ...guide }, take);
  }

  /**
   * Shows what was heard; how old each sound is when its mark is drawn is told to whoever asks.
   * @param {any} heard
   * @param {any} microphone
   */
  function marked(heard, microphone) {
    if (heard.notice) tell(heard.notice);
    heard.marks.forEach((/** @type {any} */ each) => score.sheet().showSaid(each.place, each.lateMs));
    if (!heard.marks.length) return;
    requestAnimationFrame(() => {
      const now = microphone.context.currentTime * microphone.context.sampleRate - microphone.beganAt();
      const ages = heard.marks.map((/** @type {any} */ each) => (now - each.frame) / microphone.context.sampleRate * 1000);
      place.dispatchEvent(new CustomEvent('said', { bubbles: true, detail: { marks: heard.marks, ages } }));
    });
  }

  /** @param {any} state */
  async function shown(state) {
    [sentence.textContent, decision.textContent] = state.words;
    done.append(make('li', {}, now.textContent + ': ' + state.words[0]));
    if (state.move !== 'same') await sound(state.move);
    const shortest = new Promise((wait) => setTimeout(wait, TOLD_MS));
    if (aloud.checked) await sayAloud(state.words[0]);
    await shortest;
    await post('/api/session/answer', { number: state.number });
  }

  /** @param {any} state */
  function rest(state) {
    now.textContent = '';
    sentence.textContent = state.words[0];
    decision.replaceChildren(button(say('goOn'), () => {
      decision.textContent = '';
      post('/api/session/answer', { number: state.number });
    }, { id: 'go-on' }));
  }

  /** @param {any} state */
  function over(state) {
    now.textContent = '';
    [sentence.textContent] = state.words;
    decision.replaceChildren(...state.words.slice(1).map((/** @type {string} */ line) => make('span.summary', {}, line)));
  }

  return leave;
}

/**
 * Tells a decision without words.
 * @param {string} move
 */
async function sound(move) {
  const context = await audio();
  const samples = new Int16Array((await fetchBytes('/api/session/sound', { move })).bytes);
  const buffer = context.createBuffer(2, samples.length / 2, 48000);
  for (let channel = 0; channel < 2; channel++) {
    buffer.getChannelData(channel).forEach((_, i, all) => { all[i] = samples[2 * i + channel] / 32768; });
  }
  const source = new AudioBufferSourceNode(context, { buffer });
  source.connect(context.destination);
  source.start();
}
