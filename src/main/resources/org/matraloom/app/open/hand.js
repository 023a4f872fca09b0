/**
 * The hand as it goes: what it does now, large, the count, what is said next, what is coming.
 * @module
 */
import { say } from '/page/words.js';
import { make } from '/page/make.js';

export function openHand() {
  const figure = make('div.figure', { 'aria-hidden': 'true' });
  const count = make('p.count');
  const now = make('p.saying');
  const next = make('p.next');
  const coming = make('p.coming', { role: 'status' });
  const element = make('section.hand-now', { 'aria-label': say('hand'), id: 'hand' }, figure, make('div', {}, count, now, next, coming));
  let shown = '';
  let told = '';

  return {
    element,
    /**
     * @param {any} piece
     * @param {{ beat: number, counting: boolean }} place
     * @param {any[]} marks
     * @param {any} mark
     */
    show(piece, place, marks, mark) {
      const beat = Math.floor(place.beat + 1e-6);
      const cycle = piece.cycle;
      const inCycle = ((beat % cycle) + cycle) % cycle;
      const key = beat + '/' + place.counting + '/' + (mark ? mark.beat : '');
      if (key === shown) return;
      shown = key;
      const hand = piece.hand[inCycle];
      figure.innerHTML = `<svg viewBox="0 0 24 24"><use href="#f-${hand.figure}"></use></svg>`;
      figure.dataset.figure = hand.figure;
      count.textContent = say('beatOf', { beat: inCycle + 1, cycle, hand: say('kriya-' + hand.figure) });
      now.textContent = place.counting ? say('countIn') : words(marks, beat, mark);
      next.textContent = place.counting ? words(marks, Math.ceil(piece.rounds[0].start), undefined) : words(marks, beat + 1, undefined);
      const turn = comingTurn(piece, place.beat);
      if (turn !== told) {
        told = turn;
        coming.textContent = turn;
      }
    },
    clear() {
      shown = '';
    },
  };
}

/**
 * What is said in a beat.
 * @param {any[]} marks
 * @param {number} beat
 * @param {any} now
 */
function words(marks, beat, now) {
  const inside = marks.filter((each) => each.beat >= beat - 1e-6 && each.beat < beat + 1 - 1e-6);
  return inside.map((each) => (each === now ? '›' : '') + each.sign).join(' ');
}

/**
 * A change of nadai within an avartana.
 * @param {any} piece
 * @param {number} beat
 */
function comingTurn(piece, beat) {
  for (let i = 1; i < piece.rounds.length; i++) {
    const left = piece.rounds[i].start - beat;
    if (left > 0 && left <= piece.cycle && piece.rounds[i].nadai !== piece.rounds[i - 1].nadai) {
      const beats = Math.ceil(left - 1e-6);
      return say(beats === 1 ? 'turnNext' : 'turn', { beats, nadai: piece.rounds[i].nadai });
    }
  }
  return '';
}
