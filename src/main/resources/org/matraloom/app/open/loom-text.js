/**
 * How the text of a score looks in the editor, and what it offers. The server reads scores; this
 * only tells signs apart.
 * @module
 */
import { StreamLanguage, HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { tags } from '@lezer/highlight';

/** Larger groups are said in several words. */
const LARGEST_WORD = 9;

const HEADER = /^\s*(title|tala|kalai|tempo|start|eduppu|stroke|after|words|fingers)\b/;

const language = StreamLanguage.define({
  name: 'loom',
  token(stream) {
    if (stream.match(/#.*/)) return 'comment';
    if (stream.sol() && stream.match(/title\b/)) { stream.skipToEnd(); return 'heading'; }
    if (stream.sol() && stream.match(HEADER)) return 'keyword';
    if (stream.match(/perform\b|rest\b|until\b/)) return 'keyword';
    if (stream.match(/(nadai|kalam)\s+\d+/)) return 'strong';
    if (stream.match(/\{\s*\w+\s*:/) || stream.match('}')) return 'strong';
    if (stream.match(/\p{Lu}[\p{L}\p{M}\d_]*/u)) return 'typeName';
    if (stream.match(/x\d+/)) return 'number';
    if (stream.match(/\d+(\*\d+)?(\(\d+\))?/)) return 'number';
    if (stream.match(/[,;]/)) return 'emphasis';
    if (stream.match(/[.]/)) return 'punctuation';
    if (stream.match(/[\[\]()|]+/)) return 'bracket';
    if (stream.match(/[\p{L}\p{M}][\p{L}\p{M}-]*/u)) return 'variableName';
    stream.next();
    return null;
  },
});

const looks = HighlightStyle.define([
  { tag: tags.comment, color: 'var(--soft)', fontStyle: 'italic' },
  { tag: tags.heading, fontWeight: '700' },
  { tag: tags.keyword, color: 'var(--river)' },
  { tag: tags.strong, fontWeight: '700', border: '1.5px solid currentColor', borderRadius: '2px' },
  { tag: tags.typeName, fontWeight: '700', color: 'var(--river)' },
  { tag: tags.number, fontWeight: '700' },
  { tag: tags.emphasis, backgroundColor: 'var(--pool)', fontWeight: '700' },
  { tag: tags.punctuation, fontWeight: '700', color: 'var(--soft)' },
  { tag: tags.bracket, fontWeight: '700', textDecoration: 'underline' },
]);

export const loomText = [language, syntaxHighlighting(looks)];

/**
 * What can be written at the cursor.
 * @param {any} vocabulary what the server knows
 */
export function completions(vocabulary) {
  return (/** @type {any} */ context) => {
    const line = context.state.doc.lineAt(context.pos);
    const before = line.text.slice(0, context.pos - line.from);
    const word = context.matchBefore(/[\p{L}\p{M}\d_]+/u);
    if (!word && !context.explicit) return null;
    const from = word ? word.from : context.pos;
    if (/^\s*tala\s/.test(before)) {
      const isWhole = !context.explicit && vocabulary.talas.includes(word?.text);
      return isWhole ? null : { from, options: plain(vocabulary.talas, 'constant') };
    }
    if (/^\s*(tempo|title|start|eduppu|kalai)\s/.test(before) || /\b(nadai|kalam|beat)\s+[\d ]*$/.test(before)) return null;
    const number = /(?:^|\s)(\d{1,2})$/.exec(before);
    if (number) return { from, options: plain(vocabulary.groups[Number(number[1]) - 1] ?? [], 'text'), filter: false };
    const names = [...context.state.doc.toString().matchAll(/^\s*(\p{Lu}[\p{L}\p{M}\d_]*)\s*=/gmu)].map((found) => found[1]);
    const words = [...new Set(vocabulary.groups.slice(0, LARGEST_WORD).flat())].filter((each) => !vocabulary.sollus.includes(each));
    const heads = /^\s*\p{L}*$/u.test(before) ? vocabulary.headers : [];
    const all = [...plain(names, 'class'), ...plain(vocabulary.sollus, 'variable'), ...plain(words, 'variable'), ...plain(heads, 'keyword')];
    // Nothing is offered for a word that is whole, so that enter begins a line after it.
    return !context.explicit && all.some((each) => each.label === word?.text) ? null : { from, options: all };
  };
}

/**
 * @param {string[]} labels
 * @param {string} type
 */
function plain(labels, type) {
  return labels.map((label) => ({ label, type }));
}
