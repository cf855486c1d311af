import { CODE_PIECES, partCode, piecesByName, type PieceName } from './part-code.ts';
import { KINDS, type Kind, type Part } from './part.ts';

/** How a lab spells its part codes: one form for all kinds, and others for the kinds that have their own. */
export interface CodePattern {
  readonly all: CodeForm;
  readonly kinds: Readonly<Partial<Record<Kind, CodeForm>>>;
}

type CodeForm = readonly CodeStep[];

interface CodeStep {
  /** written before the piece, where something stands before it */
  readonly separator: string;
  readonly piece: PieceName | 'rest';
}

/** Why a text is no pattern; `at` is the place in the text that is meant. */
export interface PatternFault {
  readonly code:
    | 'empty'
    | 'too-long'
    | 'unclosed'
    | 'no-such-piece'
    | 'piece-twice'
    | 'letters-between'
    | 'no-separator'
    | 'no-such-kind'
    | 'kind-twice';
  readonly at: number;
  readonly text: string;
}

export type PatternReading =
  | { readonly ok: true; readonly pattern: CodePattern }
  | { readonly ok: false; readonly fault: PatternFault };

/** Today's code: the letters of the kind, then every fact that tells parts apart, in one order. */
export const DEFAULT_PATTERN = '{kind}-{rest}';
const LONGEST = 1000;
const STEP = /([^{}]*)\{([^{}]*)\}/y;

/**
 * Reads a pattern: names of pieces in braces with separators (`- _ . / : +`) between them, `{rest}` for every piece that the form does
 * not name; after a `;` forms of single kinds. `"{kind}-{value}-{rest}; screw: {kind}_{thread}_{rest}"`.
 */
export function parseCodePattern(text: string): PatternReading {
  if (text.length > LONGEST) return fault('too-long', LONGEST, text.slice(LONGEST, LONGEST + 20));
  const kinds: Partial<Record<Kind, CodeForm>> = {};
  let all: CodeForm | null = null;
  let at = 0;
  for (const clause of text.split(';')) {
    const [, own] = /^\s*([a-z-]+)\s*:/.exec(clause) ?? [];
    const kind = own === undefined ? null : (KINDS.find((one) => one === own) ?? null);
    if (own !== undefined && kind === null) return fault('no-such-kind', at + clause.indexOf(own), own);
    if (kind === null ? all !== null : kinds[kind] !== undefined) return fault('kind-twice', at, clause.trim());
    const from = own === undefined ? 0 : clause.indexOf(':') + 1;
    const form = parseForm(clause.slice(from), at + from);
    if (!Array.isArray(form)) return { ok: false, fault: form };
    if (kind === null) all = form;
    else kinds[kind] = form;
    at += clause.length + 1;
  }
  return all === null ? fault('empty', 0, text) : { ok: true, pattern: { all, kinds } };
}

function parseForm(written: string, offset: number): CodeStep[] | PatternFault {
  const text = written.trimEnd();
  const steps: CodeStep[] = [];
  let at = text.length - text.trimStart().length;
  if (at === text.length) return { code: 'empty', at: offset, text: written };
  while (at < text.length) {
    STEP.lastIndex = at;
    const match = STEP.exec(text);
    if (!match) return { code: 'unclosed', at: offset + at, text: text.slice(at) };
    const [whole, separator = '', name = ''] = match;
    const bad = stepFault(steps, separator, name);
    if (bad) return { code: bad, at: offset + at, text: bad === 'letters-between' ? separator : name };
    steps.push({ separator, piece: name as CodeStep['piece'] }); // as: looked up in `stepFault`
    at += whole.length;
  }
  return steps;
}

function stepFault(steps: readonly CodeStep[], separator: string, name: string): PatternFault['code'] | null {
  if (!/^[-_./:+]{0,3}$/.test(separator) || (steps.length === 0 && separator !== '')) return 'letters-between';
  if (steps.length > 0 && separator === '') return 'no-separator';
  if (name !== 'rest' && !CODE_PIECES.some((piece) => piece === name)) return 'no-such-piece';
  return steps.some(({ piece }) => piece === name) ? 'piece-twice' : null;
}

function fault(code: PatternFault['code'], at: number, text: string): { readonly ok: false; readonly fault: PatternFault } {
  return { ok: false, fault: { code, at, text } };
}

/** The code of a part by the lab's pattern. A part of which nothing is known but its text keeps today's code. */
export function codeBy(pattern: CodePattern, part: Part): string {
  const pieces = piecesByName(part);
  if (pieces.size === 0) return partCode(part);
  const form = pattern.kinds[part.kind] ?? pattern.all;
  const named = new Set(form.map(({ piece }) => piece));
  const rest = [...pieces].flatMap(([name, text]) => (name === 'kind' || named.has(name) ? [] : [text])).join('-');
  let code = '';
  for (const { separator, piece } of form) {
    const text = piece === 'rest' ? rest : pieces.get(piece);
    if (text) code += code === '' ? text : separator + text;
  }
  return code || partCode(part);
}

/** Two parts that a code can't tell apart. */
export interface CodeClash<Of> {
  readonly code: string;
  readonly of: readonly Of[];
}

/** The codes that several of these parts would share by the pattern though today's codes tell them apart; in the order of the parts. */
export function codeClashes<Of extends { readonly part: Part }>(pattern: CodePattern, stock: readonly Of[]): CodeClash<Of>[] {
  const byCode = new Map<string, Map<string, Of>>();
  for (const one of stock) {
    const code = codeBy(pattern, one.part);
    const parts = byCode.get(code) ?? new Map<string, Of>();
    const full = partCode(one.part);
    if (!parts.has(full)) parts.set(full, one);
    byCode.set(code, parts);
  }
  return [...byCode].flatMap(([code, parts]) => (parts.size > 1 ? [{ code, of: [...parts.values()] }] : []));
}
