/**
 * Saying a score into the microphone, and what the take shows.
 * @module
 */
import { post, postBytes, get } from '/page/ask.js';
import { say } from '/page/words.js';
import { make, button, tell } from '/page/make.js';
import { openMicrophone } from '/page/microphone.js';
import { measureRoundTrip, guideIn } from '/page/roundtrip.js';

const SPEEDS = [100, 75, 50, 25];

/**
 * *
 * @param {{ name: string, hear: any, sheet: () => any, saved: () => Promise<void>, cleared: () => void, isClear: () => boolean }} score
 *   "cleared" puts away what is open beside the take; "isClear" tells whether nothing is
 */
export function openListen(score) {
  /** @type {any} */
  let microphone = null;
  let recording = false;
  const level = make('meter', { min: -60, max: 0, low: -30, high: -3, optimum: -12, value: -60, 'aria-label': say('level') });
  const record = button(say('record'), () => (recording ? stop() : begin()), { id: 'record' });
  const tryIt = button(say('tryLevel'), () => (microphone ? shut() : hearLevel()), { id: 'try-level' });
  const trip = button(say('roundTrip'), calibrate, { id: 'round-trip' });
  const guide = make('input', { type: 'checkbox', id: 'with-guide', checked: true });
  // Emptied when it is asked again, so that a file of the same name, recorded anew, is measured too.
  const file = make('input', { type: 'file', id: 'take-file', accept: 'audio/*,.wav,.flac,.mp3,.m4a,.opus,.ogg',
    onclick: () => { file.value = ''; }, onchange: () => file.files[0] && measureFile(file.files[0]) });
  const result = make('div.result', { id: 'result', 'aria-live': 'polite' });
  const player = make('audio', { controls: true, hidden: true, id: 'heard' });
  const speed = make('select', { id: 'speed', onchange: () => { player.playbackRate = Number(speed.value) / 100; } },
    ...SPEEDS.map((each) => make('option', { value: each }, each + ' %')));
  const element = make('section.listen', { 'aria-label': say('listen') },
    make('div.row-of-verbs', {}, record, tryIt, level, trip,
      make('label', {}, guide, ' ', say('withGuide')),
      make('label', {}, say('dropTake'), ' ', file)),
    result);
  /** @type {any[]} */
  let said = [];

  async function hearLevel() {
    try {
      microphone = await openMicrophone((now) => { level.value = now; });
      tryIt.textContent = say('shut');
    } catch (refused) {
      tell(say('noMicrophone', { why: /** @type {Error} */ (refused).message }));
    }
  }

  function shut() {
    microphone?.close();
    microphone = null;
    level.value = -60;
    tryIt.textContent = say('tryLevel');
  }

  async function calibrate() {
    shut();
    tell(say('roundTripGoes'));
    trip.disabled = true;
    try {
      const found = await measureRoundTrip();
      tell(say('roundTripKept', { ms: found.ms, spread: found.spreadMs }));
    } catch (refusal) {
      tell(/** @type {Error} */ (refusal).message);
    }
    trip.disabled = false;
  }

  /**
   * Where the guide was in the take, if the round trip is known and it went straight on.
   * @returns {Promise<Record<string, string>>}
   */
  async function guidePlace() {
    const latest = score.hear.latest();
    const place = guide.checked ? await guideIn(microphone, latest) : {};
    if (!place.guideFrame) return {};
    return { ...place, tempo: String(Math.round(latest.straight().tempo * 100)), countIn: String(score.hear.countIn()) };
  }

  async function begin() {
    if (!microphone) await hearLevel();
    if (!microphone) return;
    await microphone.opened;
    microphone.record();
    recording = true;
    post('/api/take/expected', {}).catch(() => {});
    record.textContent = say('endTake');
    element.dataset.recording = 'true';
    const begun = performance.now();
    const since = window.setInterval(() => {
      if (!recording) return clearInterval(since);
      result.replaceChildren(make('p', {}, say('recordingFor', { seconds: Math.floor((performance.now() - begun) / 1000) })));
    }, 500);
    if (guide.checked) await score.hear.begin();
  }

  async function stop() {
    recording = false;
    record.textContent = say('record');
    element.dataset.recording = 'false';
    const place = await guidePlace().catch(() => ({}));
    score.hear.stop();
    const take = microphone.take();
    shut();
    await measure(take, 'wav', place);
  }

  /** @param {File} dropped */
  function measureFile(dropped) {
    return measure(dropped, dropped.name.split('.').pop() ?? 'wav');
  }

  async function measure(/** @type {Blob} */ take, /** @type {string} */ ending, /** @type {Record<string, string>} */ place = {}) {
    result.replaceChildren(make('p', {}, say('measuring')));
    score.cleared();
    await score.saved();
    const begun = performance.now();
    try {
      const found = await postBytes('/api/take', { name: score.name, as: ending, ...place }, take);
      element.dataset.measuredMs = String(Math.round(performance.now() - begun));
      player.src = URL.createObjectURL(take);
      player.preservesPitch = true;
      show(found);
    } catch (refusal) {
      result.replaceChildren(make('p.wrong', {}, /** @type {Error} */ (refusal).message));
    }
  }

  function show(/** @type {any} */ found) {
    said = found.sollus;
    score.sheet().showDeviations(said, found.missed, found.slips);
    player.hidden = false;
    // What was opened while it was being measured stays open, and the take is folded under its heading.
    result.replaceChildren(make('details', { open: score.isClear() },
      make('summary', {}, make('h2', {}, say('heardIt'))),
      ...[found.mouth, found.doubt, found.recorded, found.good, found.wrong, ...landing(found), found.practice && say('practise', { what: found.practice })].filter(Boolean)
        .map((sentence) => make('p.sentence', {}, sentence)),
      make('div.row-of-verbs', {}, player, make('label', {}, say('speed'), ' ', speed),
        found.drill ? button(say('drill'), drill, { id: 'drill' }) : '',
        button(say('hideTake'), hide)),
      make('p', {}, say('deviationsHow'))));
  }

  /**
   * How it landed, as it was measured, and what was heard beside the score.
   * @param {any} found
   */
  function landing(found) {
    const { landing: end, addedSeconds: added } = found;
    const ms = end ? Math.round(1000 * (end.errorSeconds ?? end.errorSecondsIfWhole)) : 0;
    return [
      end && say(found.lands ? 'takeLands' : end.off ? 'takeMisses' : 'takeDoubtful', { ms: Math.abs(ms), side: say(ms < 0 ? 'tooEarly' : 'tooLate'), against: end.against }),
      added.length && say('takeAdded', { count: added.length, at: added.slice(0, 5).map((/** @type {number} */ each) => each.toFixed(1)).join(', ') }),
    ];
  }

  async function drill() {
    tell(say('makingDrill'));
    const { id } = await post('/api/drill', { name: score.name });
    const looking = window.setInterval(async () => {
      const { jobs } = await get('/api/jobs');
      const job = jobs.find((/** @type {any} */ each) => each.id === id);
      if (!job || job.state === 'running') return;
      clearInterval(looking);
      if (job.state !== 'done') return tell(job.said);
      const sound = make('audio', { controls: true, autoplay: true, id: 'drill-sound', src: '/api/made?id=' + id });
      result.querySelector('details')?.append(make('p', {}, say('drillReady')), sound);
      tell('');
    }, 400);
  }

  function hide() {
    result.replaceChildren();
    said = [];
    score.sheet().hideDeviations();
  }

  const drop = (/** @type {DragEvent} */ event) => {
    const dropped = event.dataTransfer?.files[0];
    if (!dropped) return;
    event.preventDefault();
    measureFile(dropped);
  };
  const over = (/** @type {DragEvent} */ event) => event.preventDefault();
  document.addEventListener('drop', drop);
  document.addEventListener('dragover', over);

  return {
    element,
    hide,
    /** Leaves of what was heard its heading only, which opens it again. */
    fold() {
      const told = result.querySelector('details');
      if (told) told.open = false;
    },
    /**
     * Plays the take from a sollu on.
     * @param {number} sollu
     */
    playFrom(sollu) {
      const found = said.find((each) => each.place === sollu);
      if (!found) return false;
      player.currentTime = Math.max(0, found.onsetSeconds - 0.1);
      player.playbackRate = Number(speed.value) / 100;
      player.play();
      return true;
    },
    close() {
      document.removeEventListener('drop', drop);
      document.removeEventListener('dragover', over);
      if (recording) score.hear.stop();
      shut();
    },
  };
}
