/**
 * Fetches blocks of plays and hands them to the audio thread. It works beside the page, so that nothing the page
 * draws keeps sound waiting, and reads further ahead where the machine is busy.
 * @module
 */
import { fetchBytes } from '/page/ask.js';

const BLOCK = 9600;
const MOST_BLOCK = 96000;
/** Frames that are read ahead; a change is heard after them. */
const AHEAD = 38400;
const MOST_AHEAD = 192000;
/** What is played as soon as it has come. */
const FIRST = 4800;
/** A first reply that takes longer than this tells of a busy machine, which needs more ahead. */
const QUICK_MS = 40;

/** As far as this machine was found to need it. */
let ahead = AHEAD;

/**
 * @param {number} id the play
 * @param {MessagePort} player the audio thread
 */
function feed(id, player) {
  let frame = 0;
  let gaps = 0;
  let sent = 0;
  let fetching = false;
  let ended = false;

  async function fill() {
    if (fetching) return;
    fetching = true;
    try {
      while (!ended && sent - frame < ahead) {
        await more(sent ? Math.min(MOST_BLOCK, Math.max(BLOCK, ahead - sent + frame)) : Math.max(FIRST, (ahead - AHEAD) / 4));
      }
    } catch (refusal) {
      // a gap is heard; the next message of the audio thread asks again
    }
    fetching = false;
  }

  async function more(/** @type {number} */ frames) {
    const { bytes } = await fetchBytes('/api/play/next', { id, frames });
    const got = bytes.byteLength / 4;
    if (got) player.postMessage({ samples: bytes }, [bytes]);
    sent += got;
    if (got < frames) {
      ended = true;
      player.postMessage({ end: true });
    }
  }

  player.onmessage = (event) => {
    const told = event.data;
    frame = told.frame;
    if (told.over) ended = true;
    if (ended) return;
    const late = told.gaps > gaps;
    gaps = told.gaps;
    // Before anything is late, if it can be.
    if (late || (told.left < ahead / 2 && frame > ahead)) {
      ahead = Math.min(MOST_AHEAD, 2 * ahead);
      postMessage({ ahead });
    }
    fill();
  };
  fill();
}

onmessage = (event) => {
  const { id, player, answeredMs } = event.data;
  ahead = Math.min(MOST_AHEAD, Math.max(AHEAD, ahead / 2, BLOCK * Math.ceil(answeredMs / QUICK_MS)));
  postMessage({ ahead });
  feed(id, player);
};
