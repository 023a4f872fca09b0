/**
 * The sheet: rows as the server draws them, of which only the changed ones are drawn again.
 * @module
 */
import { say } from '/page/words.js';
import { make, tell } from '/page/make.js';
import { forget, marksOf, spoken } from '/page/marks.js';
import { patch } from '/page/patch.js';

const FREE_MS = 4000;
/** As in a terminal: what is nearer is hardly off, what is farther is far off. */
const NEAR_MS = 20;
const FAR_MS = 45;
/** So long rows that nobody sees give way to those that somebody does. */
const UNSEEN_MS = 200;
/** They are written in slices of so many ms, with as long between them. */
const SLICE_MS = 8;
/**
 * How many cells a key goes on.
 * @type {Record<string, number>}
 */
const STEPS = { ArrowRight: 1, ArrowLeft: -1, ArrowDown: 8, ArrowUp: -8 };

/**
 * @param {HTMLElement} parent
 * @param {(sollu: number, byKey: boolean) => void} chosen called with the number of a sollu that was clicked, or gone to by a key
 */
export function openSheet(parent, chosen) {
  const head = make('div.head');
  const rows = make('div.rows', { id: 'rows', tabIndex: 0, role: 'group', 'aria-label': say('cells'), 'aria-describedby': 'cells-how' });
  const how = make('p.vh', { id: 'cells-how' }, say('cellsHow'));
  const close = make('div.close');
  parent.append(head, how, rows, close);
  /**
   * The rows that stand there, by their keys, in order.
   * @type {string[]}
   */
  let drawn = [];
  /**
   * What is in them, by key: the row, and where its marks begin, in beats from its own beginning.
   * @type {Map<string, { html: string, at: number[] }>}
   */
  let written = new Map();
  /** @type {{ element: HTMLElement, beat: number, sollu: number, sign: string }[]} */
  let marks = [];
  /** @type {HTMLElement[]} */
  let lit = [];
  let placesNow = /** @type {number[]} */ ([]);

  // Whoever moves the page wants to look elsewhere for a while.
  let freeUntil = 0;
  const moved = () => { freeUntil = performance.now() + FREE_MS; };
  for (const kind of ['wheel', 'touchmove']) window.addEventListener(kind, moved, { passive: true });

  let stretch = /** @type {number[]} */ ([]);
  let inStretch = /** @type {HTMLElement[]} */ ([]);

  rows.addEventListener('click', (/** @type {MouseEvent} */ event) => {
    finish();
    const mark = /** @type {HTMLElement} */ (event.target).closest('.marks > span');
    const at = marks.findIndex((each) => each.element === mark);
    if (at < 0) return;
    choose(at, event.shiftKey);
    if (!event.shiftKey) chosen(marks[at].sollu, false);
  });

  // Cells are chosen, not letters; and what is pressed next is meant for the sound, not for the text.
  rows.addEventListener('mousedown', (/** @type {MouseEvent} */ event) => {
    event.preventDefault();
    rows.focus({ preventScroll: true });
  });

  // The last cell that was chosen, and the one at which the stretch began.
  let last = -1;
  let first = -1;

  /**
   * @param {number} at
   * @param {boolean} longer
   */
  function choose(at, longer) {
    if (!longer || first < 0) first = at;
    last = at;
    stretch = [Math.min(first, at), Math.max(first, at)];
    inStretch = classify('stretch', marks.slice(stretch[0], stretch[1] + 1).map((each) => each.element), inStretch);
  }

  rows.addEventListener('keydown', (/** @type {KeyboardEvent} */ event) => {
    finish();
    const steps = STEPS[event.key];
    if (event.key === 'Enter' && last >= 0) {
      // Elsewhere this key plays.
      event.preventDefault();
      event.stopPropagation();
      chosen(marks[last].sollu, true);
    }
    if (!steps || !marks.length) return;
    event.preventDefault();
    event.stopPropagation();
    const at = last < 0 ? 0 : Math.min(marks.length - 1, Math.max(0, last + steps));
    choose(at, event.shiftKey);
    const row = marks[at].element.closest('.row');
    row?.scrollIntoView({ block: 'nearest' });
    tell(say('cell', { sign: spoken(marks[at]), place: row?.getAttribute('aria-label') ?? '' }));
  });

  // Rows that somebody sees are drawn first.
  const seen = new WeakSet();
  const sight = new IntersectionObserver((entries) => entries.forEach((each) => {
    if (each.isIntersecting) seen.add(each.target);
    else seen.delete(each.target);
  }));
  /** Writes what is out of sight until a moment; whether all is written. */
  let unwritten = (/** @type {number} */ _) => true;
  let soon = 0;

  /** @param {any} piece */
  function draw(piece) {
    parent.classList.remove('stale');
    if (head.dataset.html !== piece.head) {
      head.innerHTML = piece.head;
      head.dataset.html = piece.head;
    }
    if (close.dataset.html !== piece.closing) {
      close.innerHTML = piece.closing;
      close.dataset.html = piece.closing;
    }
    // Set anew, even to the same, it makes the browser lay out every letter again.
    if (rows.lang !== piece.language) rows.lang = piece.language;
    const old = [...rows.children];
    const before = written;
    written = new Map(piece.rows.map((/** @type {any} */ row) => [row.key, row.html ? row : before.get(row.key)]));
    const changed = [...piece.rows.keys()].filter((index) => drawn[index] !== piece.rows[index].key);
    const later = changed.filter((index) => old[index] && !seen.has(old[index]));
    const write = (/** @type {number} */ index) => {
      const line = old[index] ?? make('div.line');
      fill(line, written.get(piece.rows[index].key)?.html ?? '');
      forget(line);
      if (old[index]) return;
      rows.append(line);
      sight.observe(line);
    };
    changed.filter((index) => !later.includes(index)).forEach(write);
    old.slice(piece.rows.length).forEach((each) => each.remove());
    // What is not written yet is none of what stands there, should another sheet come before.
    drawn = piece.rows.map((/** @type {any} */ row, /** @type {number} */ index) => (later.includes(index) ? '' : row.key));
    placesNow = piece.places;
    unwritten = (until) => {
      while (later.length) {
        const index = /** @type {number} */ (later.shift());
        write(index);
        drawn[index] = piece.rows[index].key;
        if (performance.now() > until) return false;
      }
      settle(piece);
      unwritten = () => true;
      return true;
    };
    clearTimeout(soon);
    if (later.length) soon = setTimeout(finishSoon, UNSEEN_MS);
    else finish();
  }

  /** Writes the rows that are out of sight, as somebody asks for them. */
  function finish() {
    unwritten(Infinity);
  }

  /** Writes some of them, and leaves the page to whoever types before the next. */
  function finishSoon() {
    if (!unwritten(performance.now() + SLICE_MS)) soon = setTimeout(finishSoon, SLICE_MS);
  }

  /** @param {any} piece */
  function settle(piece) {
    number(piece);
    // A mark may be another sollu's now.
    current = classify('now', [], current);
    lit = classify('here', [], lit);
    if (stretch.length) inStretch = classify('stretch', marks.slice(stretch[0], stretch[1] + 1).map((each) => each.element), inStretch);
  }

  /**
   * Finds the marks of the rows, in the order in which they are said.
   * @param {any} piece
   */
  function number(piece) {
    marks = [];
    let sollu = -1;
    [...rows.children].forEach((row, index) => {
      const { key, from } = piece.rows[index];
      const at = written.get(key)?.at ?? [];
      marksOf(row).forEach((mark, place) => {
        if (mark.said) sollu++;
        marks.push({ element: mark.element, beat: from + at[place], sollu, sign: mark.sign });
      });
    });
  }

  /**
   * @param {string} name
   * @param {HTMLElement[]} elements
   * @param {HTMLElement[]} before
   */
  function classify(name, elements, before) {
    before.forEach((each) => each.classList.remove(name));
    elements.forEach((each) => each.classList.add(name));
    return elements;
  }

  let current = /** @type {HTMLElement[]} */ ([]);
  return {
    draw,
    /** The text is wrong; the last good sheet stays, greyed. */
    stale: () => parent.classList.add('stale'),
    marks() {
      finish();
      return marks;
    },
    /** The keys of the rows that stand there, which need not be sent again. */
    known: () => [...written.keys()].join(' '),
    /** The numbers of the first and the last mark that are chosen. */
    chosen: () => (stretch.length ? stretch : null),
    /**
     * Where in the text a sollu is written.
     * @param {number} sollu
     * @returns {[number, number] | null}
     */
    place(sollu) {
      return placesNow.length > 2 * sollu + 1 && sollu >= 0 ? [placesNow[2 * sollu], placesNow[2 * sollu + 1]] : null;
    },
    /**
     * Lights the cells of what is written at a place.
     * @param {number} at
     */
    lightPlace(at) {
      finish();
      const sollus = new Set();
      for (let i = 0; i < placesNow.length; i += 2) {
        if (at >= placesNow[i] && at < placesNow[i + 1]) sollus.add(i / 2);
      }
      lit = classify('here', marks.filter((each) => sollus.has(each.sollu)).map((each) => each.element), lit);
    },
    /**
     * Lights what is heard at a beat; gives its mark.
     * @param {number} beat
     */
    lightBeat(beat) {
      finish();
      let from = 0;
      let to = marks.length - 1;
      while (from < to) {
        const middle = (from + to + 1) >> 1;
        if (marks[middle].beat <= beat + 1e-6) from = middle;
        else to = middle - 1;
      }
      const found = marks[from] && marks[from].beat <= beat + 1e-6 ? marks[from] : undefined;
      const next = found ? [found.element] : [];
      if (next[0] !== current[0]) {
        current = classify('now', next, current);
        if (found && performance.now() > freeUntil) found.element.closest('.row')?.scrollIntoView({ block: 'nearest' });
      }
      return found;
    },
    /**
     * Writes under each sollu how late it was, in ms.
     * @param {any[]} said
     * @param {number[]} missed
     * @param {any[]} slips places from which on all is later
     */
    showDeviations(said, missed, slips) {
      finish();
      this.hideDeviations();
      const first = new Map(marks.filter((each) => each.element.classList.contains('s')).map((each) => [each.sollu, each.element]));
      parent.classList.add('measured');
      for (const each of said) {
        const ms = Math.round(each.deviationSeconds * 1000);
        const written = (ms > 0 ? '+' : ms < 0 ? '−' : '') + Math.abs(ms);
        first.get(each.place)?.append(make('span.off' + (Math.abs(ms) >= 30 ? '.far' : ''), {}, written));
      }
      for (const slip of slips) {
        const ms = Math.round(slip.seconds * 1000);
        const mark = first.get(slip.place);
        mark?.querySelector('.off')?.remove();
        mark?.append(make('span.off.far', {}, (ms > 0 ? '+' : '−') + Math.abs(ms)));
      }
      for (const place of missed) first.get(place)?.append(make('span.off.far', {}, '?'));
    },
    /**
     * Writes above a sollu how early, or below it how late it was: a dot up to 20 ms, a small o up to 45, a large one beyond.
     * @param {number} sollu
     * @param {number} ms
     */
    showSaid(sollu, ms) {
      finish();
      const said = marks.find((each) => each.sollu === sollu && each.element.classList.contains('s'))?.element;
      said?.querySelector('.said')?.remove();
      const away = Math.abs(ms);
      said?.append(make('span.said' + (ms < 0 ? '.early' : '.late'), { 'aria-hidden': 'true' }, away <= NEAR_MS ? '·' : away <= FAR_MS ? 'o' : 'O'));
    },
    clearSaid() {
      rows.querySelectorAll('.said').forEach((/** @type {Element} */ each) => each.remove());
    },
    hideDeviations() {
      parent.classList.remove('measured');
      rows.querySelectorAll('.off').forEach((/** @type {Element} */ each) => each.remove());
    },
    dark() {
      current = classify('now', [], current);
    },
  };
}

/**
 * Puts a row with its heading into its line.
 * @param {Element} line
 * @param {string} html
 */
function fill(line, html) {
  const fresh = document.createElement('template');
  fresh.innerHTML = html;
  const then = make('div.line');
  then.append(fresh.content);
  patch(line, then, grow);
}

/**
 * How wide a mark is, as its data tell; the page may have no styles in its text.
 * @param {Element} mark
 */
function grow(mark) {
  if (mark instanceof HTMLElement && mark.dataset.grow) mark.style.flexGrow = mark.dataset.grow;
}
