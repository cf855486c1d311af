import type { Doubt } from '#core/part/doubt.ts';

/** More references than this on one line is no line of a BOM. */
export const MOST_REFS = 10_000;

export interface RefsReading {
  readonly refs: readonly string[];
  /** words of the cell that are no references: `X2 USB mini-B` → `USB mini-B` */
  readonly rest: string;
  readonly doubts: readonly Doubt[];
  /** a range with more than `MOST_REFS` references: the line must be refused */
  readonly tooMany: string | null;
}

const REF = /^([A-Z_]{1,12}\$?)(\d{1,9})([A-Z]?)$/i;
const RANGE = /^([A-Z_]{1,12}\$?)(\d{1,9})\s*(?:-|–|—|−|…|\.{2,3}|~|\bto\b|\bbis\b|:)\s*([A-Z_]{1,12}\$?)?(\d{1,9})$/i;
/** what stands in a cell of references when there are none */
const NONE = /^(?:[-–—~?.*x]+|n\/?a|none|nil|tbd|ref\*+|no ref|keine?|without)$/i;

/** Whether a text has the shape of a reference: letters of a class, then a number. `R12`, `LED3`, `IC1A`. */
export function isRef(text: string): boolean {
  return REF.test(text);
}

/**
 * Reads a cell of references: `R1-R4, R7` → R1 R2 R3 R4 R7; `C9, C14-17` → C9 C14 … C17; `U1A,U1B` → U1, one part.
 * Backward and mixed ranges (`R10-R8`, `R1-C3`) are a doubt and give none; a reference written twice counts once, with a doubt.
 * Shapes after IEEE 315 and ASME Y14.44; separators and short ranges are common practice, no source.
 */
export function readRefs(text: string): RefsReading {
  const doubts: Doubt[] = [];
  const refs: string[] = [];
  const rest: string[] = [];
  let tooMany: string | null = null;
  for (const piece of pieces(text)) {
    const range = RANGE.exec(piece);
    if (range && !/^:|[:]/.test(piece.replace(/\s/g, '').slice(-1))) {
      const made = expand(range, MOST_REFS - refs.length);
      if (made === 'too-many') tooMany ??= piece;
      else if (made === null) doubts.push({ field: 'refs', code: 'ref-unreadable', args: { text: piece } });
      else refs.push(...made);
      continue;
    }
    const { ref, words } = single(piece, refs.at(-1));
    if (ref) refs.push(...ref);
    if (words) rest.push(words);
  }
  return { ...unique(mergeUnits(refs), doubts), rest: rest.join(' '), tooMany };
}

/** The pieces of a cell: cut at commas, semicolons, plus signs and line ends; at blanks and slashes only between references. */
function pieces(text: string): string[] {
  const whole = text.replace(/\((?:DN[PFIM]|NF|\d+ ?x|x ?\d+|\d+ ?pcs)\)/gi, ' ').trim();
  if (!whole || NONE.test(whole)) return [];
  const cut = whole
    .split(/[;+&|\n\t]+|,(?!_)/)
    .map((piece) => piece.trim())
    .filter((piece) => piece && !NONE.test(piece));
  return cut.flatMap((piece) => {
    const spaced = piece.replace(/\s*([-–—−…~])\s*/g, '$1').replace(/\s+(to|bis)\s+/gi, '-');
    const parts = spaced
      .split(/\s+/)
      .map((part) => part.replace(/^[([]|[)\].:]$/g, ''))
      .flatMap(cutSlash)
      .filter(Boolean);
    return parts.length > 1 && parts.every((part) => isRef(part) || RANGE.test(part))
      ? parts
      : parts.length === 1 && parts[0]
        ? [parts[0]]
        : [piece];
  });
}

function cutSlash(part: string): string[] {
  const sides = part.split('/');
  return sides.length > 1 && sides.every((side) => isRef(side)) ? sides : [part];
}

/** A piece that is no range: a reference, a number that goes on (`C1,2,5`), a name (`PIC_PROG`), or a reference and words. */
function single(piece: string, before: string | undefined): { ref: string[] | null; words: string } {
  const number = /^(\d{1,6})(?:[-–](\d{1,6}))?$/.exec(piece);
  const prefix = before === undefined ? undefined : REF.exec(before)?.[1];
  if (number && prefix !== undefined) {
    const range =
      number[2] === undefined ? [`${prefix}${number[1] ?? ''}`] : expand(['', prefix, number[1] ?? '', '', number[2]], MOST_REFS);
    return { ref: Array.isArray(range) ? range : null, words: Array.isArray(range) ? '' : piece };
  }
  const words = piece.split(/\s+/);
  const [first = ''] = words;
  if (words.length === 1)
    return /\p{L}|\d/u.test(piece) && !/^\d+$/.test(piece) ? { ref: [piece], words: '' } : { ref: null, words: piece };
  if (isRef(first) && !/^(socket|holder|base|mount|for|fassung|sockel)\b/i.test(words[1] ?? ''))
    return { ref: [first], words: words.slice(1).join(' ') };
  return { ref: null, words: piece };
}

type RangeMatch = readonly (string | undefined)[];

/** The references of a range; null where it runs backward or from one class to another. */
function expand(range: RangeMatch, most: number): string[] | 'too-many' | null {
  const [, prefix = '', from = '', second = '', to = ''] = range;
  const start = Number(from);
  const end = Number(to);
  if (second && second.toUpperCase() !== prefix.toUpperCase()) return null;
  if (!second && end <= start) return end === start ? [`${prefix}${from}-${to}`] : null;
  if (end < start) return null;
  if (end - start >= most) return 'too-many';
  const width = from.startsWith('0') && from.length === to.length ? from.length : 0;
  return Array.from({ length: end - start + 1 }, (_, step) => `${prefix}${String(start + step).padStart(width, '0')}`);
}

/** Units of one part are one part: `U1A U1B` → `U1`; a lone `U1A` stays as typed. */
function mergeUnits(refs: readonly string[]): string[] {
  const units = new Map<string, Set<string>>();
  for (const ref of refs) {
    const [, prefix, number, unit] = REF.exec(ref) ?? [];
    if (unit) units.set(`${prefix}${number}`, (units.get(`${prefix}${number}`) ?? new Set()).add(unit.toUpperCase()));
  }
  const merged = new Set([...units].filter(([, letters]) => letters.size > 1 && letters.has('A')).map(([base]) => base));
  const out: string[] = [];
  for (const ref of refs) {
    const [, prefix, number, unit] = REF.exec(ref) ?? [];
    const base = `${prefix}${number}`;
    if (!unit || !merged.has(base)) out.push(ref);
    else if (!out.includes(base)) out.push(base);
  }
  return out;
}

function unique(refs: readonly string[], doubts: readonly Doubt[]): Pick<RefsReading, 'refs' | 'doubts'> {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const ref of refs) (seen.has(ref) ? twice : seen).add(ref);
  return {
    refs: [...seen],
    doubts: [...doubts, ...[...twice].map((ref): Doubt => ({ field: 'refs', code: 'ref-twice', args: { ref } }))],
  };
}
