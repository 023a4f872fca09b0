/**
 * Says a sentence with a voice of the machine, if it has one: only such voices as need nothing from elsewhere.
 * @module
 */

/** Whoever is silent for so long says nothing more. */
const LONGEST_MS = 15000;

/** @returns {SpeechSynthesisVoice | undefined} a voice of this machine for the sentences, which are English */
function voice() {
  return window.speechSynthesis?.getVoices().find((each) => each.localService && each.lang.startsWith('en'));
}

/**
 * Calls back as soon as there is a voice; browsers look for theirs after the page is there.
 * @param {() => void} found
 */
export function whenVoiced(found) {
  if (voice()) return found();
  window.speechSynthesis?.addEventListener('voiceschanged', () => { if (voice()) found(); }, { once: true });
}

/**
 * Says a sentence; fulfilled at its end.
 * @param {string} sentence
 * @returns {Promise<unknown>}
 */
export function sayAloud(sentence) {
  const words = new SpeechSynthesisUtterance(sentence);
  words.voice = voice() ?? null;
  words.lang = words.voice?.lang ?? 'en';
  return new Promise((done) => {
    words.onend = done;
    words.onerror = done;
    setTimeout(done, LONGEST_MS);
    window.speechSynthesis.cancel();
    window.speechSynthesis.speak(words);
  });
}
