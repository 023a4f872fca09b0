/**
 * The text of a score, to be written in.
 * @module
 */
import { EditorState, StateEffect, StateField } from '@codemirror/state';
import { EditorView, Decoration, keymap, lineNumbers, drawSelection, highlightActiveLine } from '@codemirror/view';
import { history, historyKeymap, defaultKeymap, isolateHistory, undo, redo } from '@codemirror/commands';
import { autocompletion, completionKeymap } from '@codemirror/autocomplete';
import { setDiagnostics, diagnosticCount, lintGutter, lintKeymap } from '@codemirror/lint';
import { loomText, completions } from '/page/loom-text.js';
import { say } from '/page/words.js';

/** @type {import('@codemirror/state').StateEffectType<[number, number] | null>} */
const light = StateEffect.define();

const lit = StateField.define({
  create: () => Decoration.none,
  update(marks, change) {
    let now = marks.map(change.changes);
    for (const effect of change.effects) {
      if (effect.is(light)) {
        now = effect.value ? Decoration.set([Decoration.mark({ class: 'sounding' }).range(effect.value[0], effect.value[1])]) : Decoration.none;
      }
    }
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});

/**
 * @param {HTMLElement} parent
 * @param {{ text: string, vocabulary: any, typed: (text: string) => void, moved: (at: number) => void }} given
 */
export function openEditor(parent, given) {
  const word = document.documentElement.dataset.word ?? '';
  const view = new EditorView({
    parent,
    state: EditorState.create({
      doc: given.text,
      extensions: [
        EditorView.cspNonce.of(word),
        lineNumbers(),
        history(),
        drawSelection(),
        highlightActiveLine(),
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({ 'aria-label': say('text'), spellcheck: 'false', autocapitalize: 'off' }),
        loomText,
        lintGutter(),
        lit,
        // Enter begins a line unless somebody has chosen what is offered.
        autocompletion({ override: [completions(given.vocabulary)], activateOnTyping: true, selectOnOpen: false }),
        keymap.of([...completionKeymap, ...lintKeymap, ...historyKeymap, ...defaultKeymap]),
        EditorView.updateListener.of((update) => {
          if (update.docChanged) given.typed(update.state.doc.toString());
          if (update.selectionSet && !update.docChanged) given.moved(update.state.selection.main.head);
        }),
      ],
    }),
  });
  /**
   * Takes back what was written last, or takes that back, also while the keys belong to something else on the page.
   * @param {KeyboardEvent} event
   */
  function outside(event) {
    const key = event.key.toLowerCase();
    const target = /** @type {HTMLElement} */ (event.target);
    const again = key === 'y' || key === 'z' && event.shiftKey;
    if (!(event.ctrlKey || event.metaKey) || event.altKey || !again && key !== 'z') return;
    if (target.closest('input, textarea, select, .cm-editor') || view.dom.offsetParent === null) return;
    event.preventDefault();
    if (again) redo(view);
    else undo(view);
  }
  document.addEventListener('keydown', outside);
  return {
    view,
    text: () => view.state.doc.toString(),
    focus: () => view.focus(),
    /** What is chosen. */
    chosen: () => view.state.sliceDoc(view.state.selection.main.from, view.state.selection.main.to),
    /**
     * Takes another text as one step that one key undoes.
     * @param {string} text
     */
    replace(text) {
      const old = view.state.doc.toString();
      let from = 0;
      while (from < old.length && from < text.length && old[from] === text[from]) from++;
      let end = 0;
      while (end < old.length - from && end < text.length - from && old[old.length - 1 - end] === text[text.length - 1 - end]) end++;
      view.dispatch({ changes: { from, to: old.length - end, insert: text.slice(from, text.length - end) }, annotations: isolateHistory.of('full') });
    },
    /**
     * Writes at the cursor, with spaces around it where there are none.
     * @param {string} words
     */
    insert(words) {
      const { from, to } = view.state.selection.main;
      const before = view.state.sliceDoc(Math.max(0, from - 1), from);
      const after = view.state.sliceDoc(to, to + 1);
      const insert = (before.trim() ? ' ' : '') + words + (after.trim() ? ' ' : '');
      view.dispatch({ changes: { from, to, insert }, selection: { anchor: from + insert.length }, annotations: isolateHistory.of('full') });
      view.focus();
    },
    /** @param {any[]} problems */
    showProblems(problems) {
      if (!problems.length && !diagnosticCount(view.state)) return;
      view.dispatch(setDiagnostics(view.state, problems.map((each) => diagnostic(view.state.doc, each))));
    },
    /**
     * Chooses what is written between two places. The head stands before it, for what lies at the head is lit.
     * @param {number} from
     * @param {number} to
     * @param {boolean} write whether one goes on there, so that it is shown and has the keys
     */
    goTo(from, to, write) {
      view.dispatch({ selection: { anchor: to, head: from }, scrollIntoView: write });
      if (write) view.focus();
    },
    /**
     * Lights what is said now.
     * @param {[number, number] | null} range
     */
    light(range) {
      const inside = range && range[1] <= view.state.doc.length ? range : null;
      view.dispatch({ effects: light.of(inside) });
    },
    close() {
      document.removeEventListener('keydown', outside);
      view.destroy();
    },
  };
}

/**
 * Columns count letters as a reader does.
 * @param {any} doc
 * @param {any} problem
 */
function diagnostic(doc, problem) {
  const line = doc.line(Math.min(Math.max(1, problem.line), doc.lines));
  const letters = [...new Intl.Segmenter().segment(line.text)].map((each) => each.index);
  letters.push(line.length);
  const at = (/** @type {number} */ column) => line.from + (letters[Math.min(column, letters.length - 1)] ?? line.length);
  const from = problem.line > 0 ? at(problem.column - 1) : 0;
  const to = problem.line > 0 ? Math.max(from, at(problem.column - 1 + problem.width)) : 0;
  /** @type {import('@codemirror/lint').Diagnostic['severity']} */
  const severity = problem.error ? 'error' : 'warning';
  return { from, to, severity, message: problem.message + (problem.help ? '\n' + problem.help : '') };
}
