/**
 * Plays: the audio thread is given blocks by a worker; this knows what is heard now.
 * @module
 */
import { post, fetchBytes } from '/page/ask.js';

/** @type {AudioContext | undefined} */
let context;
/** @type {Promise<void> | undefined} */
let loaded;
/** @type {Worker | undefined} */
let feeder;
let ahead = 0;

/** The worker that fetches blocks, beside the page. */
function feeding() {
  if (!feeder) {
    feeder = new Worker('/page/feeder.js', { type: 'module' });
    feeder.onmessage = (event) => { ahead = event.data.ahead; };
  }
  return feeder;
}

/**
 * Makes ready what takes time, so that the first sound comes at once.
 * @param {string} text
 */
export async function prepare(text) {
  context ??= new AudioContext({ sampleRate: 48000, latencyHint: 'interactive' });
  loaded ??= context.audioWorklet.addModule('/page/player.js');
  feeding();
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
 * @param {(gaps: number) => void} late is told how many gaps there were so far
 * @param {string} [path] who begins it
 */
export async function play(wish, over, late, path = '/api/play') {
  const asked = performance.now();
  let answered = 0;
  const [ctx, begun] = await Promise.all([audio(), post(path, wish).then((told) => {
    answered = performance.now() - asked;
    return told;
  })]);
  const node = new AudioWorkletNode(ctx, 'player', { numberOfInputs: 0, outputChannelCount: [2] });
  node.connect(ctx.destination);
  let segments = begun.segments;
  let at = { frame: 0, time: 0, written: 0 };
  let ended = false;
  let dry = 0;
  let gaps = 0;
  let started = 0;

  node.port.onmessage = (event) => {
    const told = event.data;
    if (told.frame > 0 && !started) started = performance.now() - asked;
    at = told;
    dry = told.dry;
    if (told.gaps > gaps) {
      gaps = told.gaps;
      late(gaps);
    }
    if (told.over) {
      ended = true;
      node.disconnect();
      over();
    }
  };
  const { port1, port2 } = new MessageChannel();
  node.port.postMessage({ feeder: port1 }, [port1]);
  feeding().postMessage({ id: begun.id, player: port2, answeredMs: answered }, [port2]);
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
    return at.time ? at.frame + (now - at.time) * begun.rate : 0;
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
    measured: () => ({ dry, gaps, ahead, sent: at.written, startedMs: started, latency: ctx.outputLatency }),
  };
}

/**
 * @param {any} segment
 * @param {number} rate
 */
function startOf(segment, rate) {
  return segment.clockFrame + (segment.fromBeat - segment.clockBeat) * 60 / segment.tempo * rate;
}
