/**
 * How a score is written, in a few lines.
 * @module
 */
import { say } from '/page/words.js';
import { make, button } from '/page/make.js';

const SIGNS = [
  'Song = takadimi takita', 'takadimi', 'tan-gu', ',  ;', '.',
  '( … ) x3', 'Song x3', '[ … ]', '7', '9(1)9',
  '{5: … }', '\'', '|  ||', '# …', 'perform',
  '  Song x2 nadai 4', '  Song nadai 5', 'start beat 4 1/2', 'eduppu +1/2',
];

/** @param {HTMLElement} place */
export function showWriting(place) {
  place.replaceChildren(
    make('h2', {}, say('writing')),
    make('dl.writing', {}, ...SIGNS.map((sign, at) => make('div', {}, make('dt', {}, make('code', {}, sign)), make('dd', {}, say('sign-' + at))))),
    button(say('close'), () => place.replaceChildren()));
  place.querySelector('button')?.focus();
}
