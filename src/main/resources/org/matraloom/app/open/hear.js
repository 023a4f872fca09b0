/**
 * Hearing a score: what sounds, how fast, from where to where.
 * @module
 */
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';
import { play, prepare } from '/page/sound.js';
import { openHand } from '/page/hand.js';
import { onKeys } from '/page/keys.js';
import { keyList } from '/page/keylist.js';
import { tapTempo } from '/page/taptempo.js';

const PARTS = ['clap', 'count', 'wave', 'tick', 'voice', 'breath', 'drone'];

/**
 * *
 * @param {{ text: () => string, piece: () => any, sheet: () => any, light: (range: any) => void }} score
 */
export function openHear(score) {
  /** @type {any} */
  let playing = null;
  /**
   * The last play, also after its end.
   * @type {any}
   */
  let latest = null;
  let frame = 0;
  /**
   * The mark that is lit in the text.
   * @type {any}
   */
  let shown = null;
  /** What comes again and again: "cells", "section", "round", or nothing. */
  let looping = '';
  /** The last beat that was heard, or to which a lead-in leads, in thousandths. */
  let heard = 0;
  /** The score's own tempo when it was last looked at. */
  let ownTempo = 0;
  /** Counts what was begun and stopped, for a play that comes after it was stopped. */
  let turn = 0;
  const start = button(say('play'), () => (playing ? stop() : begin()), { id: 'play', 'aria-keyshortcuts': 'Space' });
  const tempo = make('input', { id: 'tempo', type: 'number', min: 5, max: 600, step: 'any', onchange: () => change({ tempo: hundredths() }) });
  const parts = PARTS.map((part) => button(say('part-' + part), (event) => toggle(/** @type {HTMLElement} */ (event.currentTarget)),
    { 'aria-pressed': String(!['breath', 'drone'].includes(part)), 'data-part': part }));
  const countIn = make('input', { id: 'count-in', type: 'number', min: 0, max: 16, value: 1 });
  const fade = make('input', { id: 'fade', type: 'number', min: 1, max: 99, placeholder: say('none') });
  const drone = make('input', { id: 'drone', size: 4, placeholder: say('none'), oninput: () => sruti() });
  const loop = button(say('loop'), () => setLoop(score.sheet().chosen() ? 'cells' : 'section'), { id: 'loop', 'aria-pressed': 'false' });
  const stage = button(say('stage'), () => setStage(!document.body.classList.contains('stage')), { id: 'stage' });
  const wall = button(say('wall'), () => setStage(!document.body.classList.contains('stage'), true), { id: 'wall' });
  const keys = keyList();
  const hand = openHand();
  hand.element.hidden = true;
  const element = make('section.hear', { 'aria-label': say('hear') },
    make('div.row-of-verbs', {}, start, loop, stage, wall, keys.opener,
      make('label', {}, say('tempo'), ' ', tempo), make('label', {}, say('countInLabel'), ' ', countIn),
      make('label', {}, say('fade'), ' ', fade), make('label', {}, say('drone'), ' ', drone)),
    make('div.row-of-verbs', { role: 'group', 'aria-label': say('sounding') }, ...parts),
    keys.element,
    hand.element);

  function hundredths() {
    return Math.round(Number(tempo.value) * 100);
  }

  function sounding() {
    return parts.filter((each) => each.getAttribute('aria-pressed') === 'true').map((each) => each.dataset.part).join(',') || 'drone';
  }

  function wish() {
    const stretch = looping === 'cells' ? score.sheet().chosen() : null;
    const own = score.piece().tempo;
    return {
      text: score.text(), parts: sounding(), countIn: countIn.value || '0', fade: fade.value, drone: drone.value,
      ...(Math.abs(Number(tempo.value) - own) > 0.005 ? { tempo: hundredths() } : {}),
      ...(stretch ? { fromMark: stretch[0], toMark: stretch[1] } : {}),
      ...(looping && !stretch ? { loop: looping, at: heard } : {}),
    };
  }

  /**
   * Goes to a section, as seen from what is heard; begins if nothing is.
   * @param {string} step
   */
  function go(step) {
    if (!playing) return begin({ go: step, at: heard });
    if (looping) looping = 'section';
    return change({ go: step, at: heard, looping: looping !== '' });
  }

  async function begin(/** @type {object} */ more = {}) {
    if (!score.piece()) return tell(say('mendFirst'));
    start.textContent = say('stop');
    const mineTurn = ++turn;
    try {
      const mine = await play({ ...wish(), ...more }, () => {
        if (playing === mine) ended();
      }, (gaps) => tell(say('late', { gaps })));
      if (mineTurn !== turn) return mine.stop();
      playing?.stop();
      playing = mine;
      latest = mine;
    } catch (refusal) {
      ended();
      return tell(/** @type {Error} */ (refusal).message);
    }
    element.dataset.playing = 'true';
    hand.element.hidden = false;
    hand.clear();
    draw();
    return playing;
  }

  function draw() {
    if (!playing) return;
    const place = playing.place();
    const mark = place.counting ? undefined : score.sheet().lightBeat(place.beat);
    heard = Math.ceil(1000 * (place.counting ? place.start : place.beat));
    if (place.counting) score.sheet().dark();
    hand.show(score.piece(), place, score.sheet().marks(), mark);
    if (mark !== shown) score.light(mark ? score.sheet().place(mark.sollu) : null);
    shown = mark;
    frame = requestAnimationFrame(draw);
  }

  function stop() {
    turn++;
    playing?.stop();
    ended();
  }

  function ended() {
    playing = null;
    cancelAnimationFrame(frame);
    element.dataset.playing = 'false';
    hand.element.hidden = !document.body.classList.contains('stage');
    start.textContent = say('play');
    score.sheet().dark();
    score.light(null);
    shown = null;
  }

  async function change(/** @type {object} */ how) {
    if (!playing) return;
    try {
      await playing.change(how);
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
  }

  function toggle(/** @type {HTMLElement} */ part) {
    if (part.dataset.part === 'drone' && !drone.value) return tell(say('noDrone'));
    part.setAttribute('aria-pressed', String(part.getAttribute('aria-pressed') !== 'true'));
    change({ parts: sounding() });
  }

  /** A sruti that is given is heard. */
  function sruti() {
    parts[PARTS.indexOf('drone')].setAttribute('aria-pressed', String(drone.value.trim() !== ''));
  }

  /**
   * Loops something, or lets go what is looped; begins if nothing is heard.
   * @param {string} what
   */
  function setLoop(what) {
    looping = looping ? '' : what;
    loop.setAttribute('aria-pressed', String(looping !== ''));
    const stretch = score.sheet().chosen();
    if (!looping) return change({ letGo: true });
    if (!playing) return begin();
    return change(looping === 'cells' ? { fromMark: stretch[0], toMark: stretch[1] } : { loop: looping, at: heard });
  }

  /**
   * Very large for the stand, or wide for a wall.
   * @param {boolean} on
   * @param {boolean} [wide]
   */
  function setStage(on, wide = false) {
    document.body.classList.toggle('stage', on);
    document.body.classList.toggle('wall', on && wide);
    hand.element.hidden = !on && !playing;
    stage.textContent = on ? say('leaveStage') : say('stage');
    wall.textContent = on ? say('leaveStage') : say('wall');
    if (on && score.piece()) hand.show(score.piece(), { beat: score.piece().rounds[0].start, counting: false }, score.sheet().marks(), undefined);
  }

  const faster = (/** @type {number} */ by) => {
    tempo.value = String(Math.min(600, Math.max(5, Number(tempo.value) + by)));
    change({ tempo: hundredths() });
  };
  const tap = tapTempo((found) => {
    tempo.value = String(found);
    change({ tempo: hundredths() });
  });
  const press = (/** @type {number} */ number) => () => toggle(parts[number]);
  const unkey = onKeys({
    ' ': () => (playing ? stop() : begin()), PageDown: () => (playing ? stop() : begin()),
    ArrowUp: () => faster(1), ArrowDown: () => faster(-1), '+': () => faster(5), '-': () => faster(-5),
    d: () => faster(Number(tempo.value)), h: () => faster(-Number(tempo.value) / 2),
    Enter: () => go('again'), PageUp: () => go('again'), ArrowRight: () => go('next'), ArrowLeft: () => go('previous'),
    0: () => go('first'), Home: () => go('first'),
    t: (/** @type {number} */ _, /** @type {KeyboardEvent} */ event) => tap(event.timeStamp),
    l: () => loop.click(), r: () => setLoop('round'),
    c: press(0), f: press(1), w: press(2), k: press(3), v: press(4), b: press(5), s: press(6),
    '?': () => keys.toggle(),
    Escape: () => { keys.hide(); setStage(false); },
    round: (/** @type {number} */ number) => change({ round: number }),
  });

  return {
    element,
    begin,
    stop,
    /** A tempo that was put in holds until the score has another. */
    shown() {
      if (!score.piece() || score.piece().tempo === ownTempo) return;
      if (!ownTempo) prepare(score.text()).catch(() => {});
      ownTempo = score.piece().tempo;
      tempo.value = String(Math.round(ownTempo * 100) / 100);
    },
    playing: () => playing,
    latest: () => latest,
    countIn: () => Number(countIn.value || 0),
    close() {
      unkey();
      stop();
      setStage(false);
    },
  };
}
