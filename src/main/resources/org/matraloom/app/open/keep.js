/**
 * Keeps what is typed: on the disk within a second, in the page until it is there, and never over
 * what another has written.
 * @module
 */
import { get, post } from '/page/ask.js';

const WAIT_MS = 250;
/** Whoever types without a pause is saved after so long all the same. */
const LONGEST_WAIT_MS = 700;
const LOOK_MS = 1500;
const AGAIN_MS = 1000;

/**
 * @param {string} name the score
 * @param {{ text: string, stamp: string }} first as it was read
 * @param {{ state: (key: string) => void, clash: (theirs: { text: string, stamp: string }) => void, drawn: () => Promise<void> }} told
 *   what is told; "drawn" ends when the sheet is drawn, as somebody waits for that
 */
export function keeper(name, first, told) {
  const draft = 'draft/' + name;
  let stamp = first.stamp;
  let saved = first.text;
  let text = first.text;
  let clashing = false;
  let busy = false;
  /** What is being saved. */
  let saving = Promise.resolve();
  let timer = 0;
  /** When the first key was pressed that is not saved; 0 if all is. */
  let waitsSince = 0;
  /** What was sent and perhaps written, though no reply came. */
  let unanswered = /** @type {string[]} */ ([]);

  function typed(/** @type {string} */ written) {
    text = written;
    localStorage.setItem(draft, JSON.stringify({ text, stamp }));
    if (!clashing) {
      told.state('saving');
      const now = performance.now();
      waitsSince ||= now;
      clearTimeout(timer);
      timer = window.setTimeout(save, Math.max(0, Math.min(WAIT_MS, waitsSince + LONGEST_WAIT_MS - now)));
    }
  }

  /** Saves what is typed now, after what is being saved. */
  async function saveNow() {
    await saving;
    await save();
  }

  function save() {
    clearTimeout(timer);
    timer = 0;
    if (!busy) saving = write();
    return saving;
  }

  async function write() {
    waitsSince = 0;
    if (clashing || text === saved) {
      if (!clashing) settle();
      return;
    }
    busy = true;
    await told.drawn();
    const sent = text;
    try {
      stamp = (await post('/api/save', { name, text: sent, stamp })).stamp;
      saved = sent;
      unanswered = [];
    } catch (refusal) {
      const { status, told: theirs, message } = /** @type {any} */ (refusal);
      if (status === 409 && unanswered.includes(theirs.text)) {
        stamp = theirs.stamp;
        timer = window.setTimeout(save, 0);
      } else if (status === 409) {
        clash(theirs);
      } else {
        unanswered = [...unanswered.slice(-20), sent];
        told.state(status === 0 ? 'keptHere' : message);
        timer = window.setTimeout(save, AGAIN_MS);
      }
      busy = false;
      return;
    }
    busy = false;
    if (text === saved) settle();
    else timer ||= window.setTimeout(save, WAIT_MS);
  }

  function settle() {
    localStorage.removeItem(draft);
    told.state('saved');
  }

  function clash(/** @type {{ text: string, stamp: string }} */ theirs) {
    clashing = true;
    told.state('clash');
    told.clash(theirs);
  }

  /** Looks whether another program has written. */
  async function look() {
    if (busy || clashing) return;
    await told.drawn();
    try {
      const now = await get('/api/stamp', { name });
      if (now.stamp === stamp || busy || clashing) return;
      const theirs = await get('/api/score', { name });
      if (unanswered.includes(theirs.text)) {
        stamp = theirs.stamp;
      } else if (theirs.text === text) {
        stamp = theirs.stamp;
        saved = text;
      } else if (theirs.stamp !== stamp && !busy) {
        clash(theirs);
      }
    } catch (refusal) {
      // the page has been told, and saving asks again
    }
  }

  const looking = window.setInterval(look, LOOK_MS);
  return {
    typed,
    save: saveNow,
    /**
     * The clash is settled; what is typed goes over their text.
     * @param {string} theirStamp
     * @param {string} theirText
     */
    settled(theirStamp, theirText) {
      clashing = false;
      stamp = theirStamp;
      saved = theirText;
      return save();
    },
    async close() {
      clearInterval(looking);
      await saveNow();
    },
  };
}

/**
 * What a page had typed that never reached the disk.
 * @param {string} name
 * @returns {{ text: string, stamp: string } | null}
 */
export function draftOf(name) {
  const kept = localStorage.getItem('draft/' + name);
  return kept ? JSON.parse(kept) : null;
}
