/**
 * Fetches blocks of a play and hands them to the audio thread; knows what is heard now.
 * @module
 */
import { post, fetchBytes } from '/page/ask.js';

const BLOCK = 9600;
const MOST_BLOCK = 96000;
/** Frames that are read ahead; a change is heard after them. */
const AHEAD = 19200;
const MOST_AHEAD = 192000;
/** Of what is read ahead, what is played as soon as it has come. */
const FIRST_PART = 4;
/** A first reply that takes longer than this tells of a busy machine, which needs more ahead. */
const QUICK_MS = 40;
/** As far as this machine was found to need it. */
let ahead = AHEAD;

/** @type {AudioContext | undefined} */
let context;
/** @type {Promise<void> | undefined} */
let loaded;

/**
 * Makes ready what takes time, so that the first sound comes at once.
 * @param {string} text
 */
export async function prepare(text) {
  context ??= new AudioContext({ sampleRate: 48000, latencyHint: 'interactive' });
  loaded ??= context.audioWorklet.addModule('/page/player.js');
  const begun = await post('/api/play', { text, countIn: 0 });
  await fetchBytes('/api/play/next', { id: begun.id, frames: 48000 });
}

/** The one audio context of the page. */
export async function audio() {
  context ??= new AudioContext({ sampleRate: 48000, latencyHint: 'interactive' });
  loaded ??= context.audioWorklet.addModule('/page/player.js');
  await Promise.all([loaded, context.resume()]);
  return context;
}

/**
 * Begins to play.
 * @param {object} wish what is played and how
 * @param {() => void} over is called after the last sound
 * @param {(gaps: number, ms: number) => void} late is told of gaps, and of how long they were together
 */
export async function play(wish, over, late) {
  const asked = performance.now();
  let answered = 0;
  const [ctx, begun] = await Promise.all([audio(), post('/api/play', wish).then((told) => {
    answered = performance.now() - asked;
    return told;
  })]);
  const node = new AudioWorkletNode(ctx, 'player', { numberOfInputs: 0, outputChannelCount: [2] });
  node.connect(ctx.destination);
  let segments = begun.segments;
  let at = { frame: 0, time: 0 };
  let sent = 0;
  let fetching = false;
  let ended = false;
  let dry = 0;
  let gaps = 0;
  let started = 0;

  /** A busy machine needs more ahead. */
  function readFurther() {
    if (!ended) ahead = Math.min(MOST_AHEAD, 2 * ahead);
  }

  /** Fetches what comes next, until enough lies ahead. */
  async function fill() {
    if (fetching) return;
    fetching = true;
    try {
      while (!ended && sent - at.frame < ahead) {
        await more(Math.min(MOST_BLOCK, Math.max(BLOCK, ahead - sent + at.frame)));
      }
    } catch (refusal) {
      // a gap is heard; the next message of the audio thread asks again
    }
    fetching = false;
  }

  async function more(/** @type {number} */ frames) {
    const { bytes } = await fetchBytes('/api/play/next', { id: begun.id, frames });
    const got = bytes.byteLength / 4;
    if (got) node.port.postMessage({ samples: bytes }, [bytes]);
    sent += got;
    if (got < frames) {
      ended = true;
      node.port.postMessage({ end: true });
    }
  }

  node.port.onmessage = (event) => {
    const told = event.data;
    if (told.frame > 0 && !started) started = performance.now() - asked;
    at = told;
    dry = told.dry;
    if (told.gaps > gaps) {
      gaps = told.gaps;
      late(gaps, Math.ceil(dry / begun.rate * 1000));
      readFurther();
    } else if (told.left < ahead / 2 && told.frame > ahead) {
      // Before anything is late.
      readFurther();
    }
    if (told.over) {
      node.disconnect();
      over();
      return;
    }
    fill();
  };
  ahead = Math.min(MOST_AHEAD, Math.max(AHEAD, ahead / 2, BLOCK * Math.ceil(answered / QUICK_MS)));
  await more(ahead / FIRST_PART);
  fill();
  const looking = window.setInterval(async () => {
    if (ended) return clearInterval(looking);
    try {
      segments = (await post('/api/play/clock', { id: begun.id })).segments;
    } catch (refusal) {
      // the last ones hold
    }
  }, 400);

  /**
   * The frame that leaves the loudspeaker at a moment of the page's clock.
   * @param {number} ms
   */
  function heardFrame(ms) {
    const stamp = ctx.getOutputTimestamp();
    const now = stamp.contextTime ? stamp.contextTime + (ms - (stamp.performanceTime ?? 0)) / 1000
      : ctx.currentTime - (ctx.outputLatency || ctx.baseLatency || 0);
    return at.frame + (now - at.time) * begun.rate;
  }

  return {
    /**
     * What is heard: a beat of the piece, and whether the mouth has not begun.
     * @param {number} [ms] when, on the page's clock
     */
    place(ms = performance.now()) {
      const frame = heardFrame(ms);
      let found = segments[0];
      for (const each of segments) {
        if (startOf(each, begun.rate) <= frame) found = each;
      }
      const live = found.clockBeat + (frame - found.clockFrame) * found.tempo / 60 / begun.rate;
      return { frame, beat: live - found.shift, counting: live - found.shift < found.start - 1e-6, start: found.start, tempo: found.tempo };
    },
    /** @param {object} wish */
    async change(wish) {
      segments = (await post('/api/play/change', { id: begun.id, ...wish })).segments;
    },
    stop() {
      clearInterval(looking);
      ended = true;
      node.port.postMessage({ stop: true });
    },
    /** The frame of the audio clock at which its first frame is played, and the tempo; nothing if it did not go straight on. */
    straight: () => (segments.length === 1 && at.frame > 0 && !dry && ctx.sampleRate === begun.rate
      ? { frame: Math.round(at.time * begun.rate) - at.frame, tempo: segments[0].tempo } : null),
    measured: () => ({ dry, gaps, ahead, sent, startedMs: started, latency: ctx.outputLatency }),
  };
}

/**
 * @param {any} segment
 * @param {number} rate
 */
function startOf(segment, rate) {
  return segment.clockFrame + (segment.fromBeat - segment.clockBeat) * 60 / segment.tempo * rate;
}
