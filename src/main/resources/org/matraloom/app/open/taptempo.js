/**
 * A tempo that is tapped on a key; the program finds it.
 * @module
 */
import { post } from '/page/ask.js';
import { say } from '/page/words.js';
import { tell } from '/page/make.js';

const MOST_TAPS = 12;

/**
 * @param {(tempo: number) => void} found
 * @returns {(ms: number) => Promise<void>} takes a tap
 */
export function tapTempo(found) {
  /** @type {number[]} */
  let taps = [];
  return async (ms) => {
    taps = [...taps, ms].slice(-MOST_TAPS);
    const { tempo } = await post('/api/tap', { taps: taps.join(',') });
    if (tempo) found(tempo);
    tell(tempo ? say('tapped', { tempo }) : say('tapOn'));
  };
}
