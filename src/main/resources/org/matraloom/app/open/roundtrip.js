/**
 * How long a sound takes from the page to the microphone and back: clicks are played and recorded,
 * and the program finds them.
 * @module
 */
import { get, postBytes, fetchClicks } from '/page/ask.js';
import { openMicrophone } from '/page/microphone.js';

const LEAD_SECONDS = 0.1;
const TAIL_MS = 800;

/** @returns {Promise<{ ms: number, spreadMs: number, frames: number }>} */
export async function measureRoundTrip() {
  const clicks = new Int16Array(await fetchClicks());
  const microphone = await openMicrophone(() => {});
  const context = microphone.context;
  try {
    await microphone.opened;
    microphone.record();
    const buffer = context.createBuffer(1, clicks.length, context.sampleRate);
    const samples = buffer.getChannelData(0);
    for (let i = 0; i < clicks.length; i++) samples[i] = clicks[i] / 32768;
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(context.destination);
    const first = Math.ceil((context.currentTime + LEAD_SECONDS) * context.sampleRate);
    source.start(first / context.sampleRate);
    await new Promise((done) => { source.onended = done; });
    await new Promise((done) => { setTimeout(done, TAIL_MS); });
    const offset = first - microphone.beganAt();
    return await postBytes('/api/round-trip', { input: microphone.name, offset: String(offset) }, await microphone.samples());
  } finally {
    microphone.close();
  }
}

/**
 * What was measured for a microphone before.
 * @param {string} input
 * @returns {Promise<{ frames?: number }>}
 */
export function roundTripOf(input) {
  return get('/api/round-trip', { input });
}

/**
 * Where the guide was in a take, if the round trip is known and it went straight on.
 * @param {any} microphone what recorded it
 * @param {any} playing the guide
 * @returns {Promise<Record<string, string>>}
 */
export async function guideIn(microphone, playing) {
  const straight = playing?.straight();
  const { frames } = await roundTripOf(microphone.name);
  if (!straight || frames === undefined || !Number.isFinite(microphone.beganAt())) return {};
  return { guideFrame: String(straight.frame - microphone.beganAt() + frames), tripFrames: String(frames) };
}
