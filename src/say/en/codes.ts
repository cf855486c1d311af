import type { PatternFault } from '#core/part/part-code-pattern.ts';

const FAULTS: Readonly<Record<PatternFault['code'], (text: string) => string>> = {
  empty: () => 'A pattern names at least one piece in braces, for example {kind}-{rest}.',
  'too-long': () => 'The pattern is longer than 1000 characters.',
  unclosed: (text) => `Here a piece in braces was expected, but there is '${text}'.`,
  'no-such-piece': (text) => `There is no piece {${text}}.`,
  'piece-twice': (text) => `{${text}} stands twice.`,
  'letters-between': (text) =>
    `Only - _ . / : + may stand between pieces, at most three of them, and nothing before the first; not '${text}'.`,
  'no-separator': (text) => `Something must stand before {${text}}, so that the pieces stay apart.`,
  'no-such-kind': (text) => `There is no kind '${text}'.`,
  'kind-twice': (text) => `There is a form for these parts already: '${text}'.`,
};

/** Why a pattern of part codes can't be read. */
export function sayPatternFault({ code, at, text }: PatternFault): string {
  return `${FAULTS[code](text)} (At character ${at + 1} of the pattern.)`;
}

/** What a pattern would do to the labels of the stock. */
export function sayCodePreview(bags: number, differ: number, clashes: number): string {
  const labels = `${differ} of ${bags} labels would differ.`;
  return clashes === 0
    ? `${labels} Every part keeps a code of its own.`
    : `${labels} ${clashes} ${clashes === 1 ? 'code stands' : 'codes stand'} for several parts: the pattern drops what tells them apart.`;
}
