/**
 * Hands what is said to the program while it is said, in blocks, and shows what it heard: a mark
 * above the cell of what was early, below what was late.
 * @module
 */
import { postBytes } from '/page/ask.js';

/**
 * @param {number} number of the pass
 * @param {any} microphone
 * @param {number | undefined} tripFrames the round trip, if it is known
 * @param {(heard: { marks: { place: number, frame: number, lateMs: number }[], notice: string }) => void} told
 */
export function openEar(number, microphone, tripFrames, told) {
  /** @type {Int16Array[]} */
  let waiting = [];
  /** @type {any} */
  let playing = null;
  /** @type {Promise<void> | null} */
  let sending = null;
  let isDeaf = false;

  /** @returns {Record<string, string>} where the guide is in what is said, as soon as it is heard */
  function guide() {
    const straight = playing?.straight();
    /** @type {Record<string, string>} */
    const known = {};
    if (tripFrames !== undefined) known.tripFrames = String(tripFrames);
    if (straight && Number.isFinite(microphone.beganAt())) known.guideFrame = String(straight.frame - microphone.beganAt() + (tripFrames ?? 0));
    return known;
  }

  async function send() {
    while (waiting.length && !isDeaf) {
      const blocks = new Blob(waiting.map((block) => block.buffer));
      waiting = [];
      try {
        told(await postBytes('/api/session/heard', { number: String(number), ...guide() }, blocks));
      } catch (refusal) {
        // The take itself is kept and measured without it.
        isDeaf = true;
      }
    }
  }

  function go() {
    sending ??= send().finally(() => { sending = null; });
    return sending;
  }

  return {
    /** @param {Int16Array} block */
    hear(block) {
      waiting.push(block);
      go();
    },
    /** @param {any} guide what is played */
    follow(guide) {
      playing = guide;
    },
    /** Fulfilled when all has been handed on. */
    async end() {
      while (waiting.length && !isDeaf) await go();
      await sending;
    },
  };
}
