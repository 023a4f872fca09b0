/**
 * Asks the server. When it is gone, whoever asked is told, and what was typed stays on the page.
 * @module
 */

/** What went wrong, with the status of the reply; 0 if there was no reply. */
export class Refusal extends Error {
  /**
   * @param {number} status
   * @param {string} message
   * @param {any} [told]
   */
  constructor(status, message, told) {
    super(message);
    this.status = status;
    this.told = told;
  }
}

/** @type {Set<(away: boolean) => void>} */
const watchers = new Set();
let away = false;

/**
 * Calls back when the server goes and when it is back.
 * @param {(away: boolean) => void} watcher
 */
export function watch(watcher) {
  watchers.add(watcher);
}

/** @param {boolean} now */
function setAway(now) {
  if (now === away) return;
  away = now;
  watchers.forEach((watcher) => watcher(now));
}

/**
 * @param {string} path
 * @param {RequestInit} how
 * @returns {Promise<Response>}
 */
async function send(path, how) {
  let reply;
  try {
    reply = await fetch(path, { credentials: 'same-origin', ...how });
  } catch (gone) {
    setAway(true);
    throw new Refusal(0, 'away');
  }
  setAway(false);
  if (reply.ok) return reply;
  const text = await reply.text();
  let told;
  try {
    told = JSON.parse(text);
  } catch (words) {
    told = undefined;
  }
  throw new Refusal(reply.status, text.trim(), told);
}

/**
 * @param {string} path
 * @param {Record<string, string>} [values]
 * @returns {Promise<any>}
 */
export async function get(path, values = {}) {
  const reply = await send(path + query(values), { method: 'GET' });
  return reply.json();
}

/**
 * @param {string} path
 * @param {object} body
 * @returns {Promise<any>}
 */
export async function post(path, body) {
  const reply = await send(path, { method: 'POST', body: JSON.stringify(body) });
  return reply.json();
}

/**
 * Sends bytes.
 * @param {string} path
 * @param {Record<string, string>} values
 * @param {BodyInit} body
 */
export async function postBytes(path, values, body) {
  const reply = await send(path + query(values), { method: 'POST', body });
  return reply.json();
}

/**
 * Asks for bytes.
 * @param {string} path
 * @param {object} body
 */
export async function fetchBytes(path, body) {
  const reply = await send(path, { method: 'POST', body: JSON.stringify(body) });
  return { bytes: await reply.arrayBuffer(), head: reply.headers };
}

/** The clicks of a calibration, 16 bits, one channel. */
export async function fetchClicks() {
  return (await send('/api/clicks', { method: 'GET' })).arrayBuffer();
}

/** @param {Record<string, string>} values */
function query(values) {
  const text = new URLSearchParams(values).toString();
  return text ? '?' + text : '';
}
