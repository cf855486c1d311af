import { FAMILY_ROWS } from './families.data.ts';
import type { Kind } from './part.ts';

const BEGINNINGS = new Map<string, Kind>();
const CLOSED = new Set<string>();
for (const [kind, beginnings] of FAMILY_ROWS) {
  for (const written of beginnings.split(' ')) {
    const beginning = written.replace('!', '');
    BEGINNINGS.set(beginning, kind);
    if (beginning !== written) CLOSED.add(beginning);
  }
}
/** How any series begins, to turn most words away at once. */
const FIRST: ReadonlySet<string> = new Set([...BEGINNINGS.keys()].map((beginning) => beginning.slice(0, 2)));
const LONGEST = Math.max(...[...BEGINNINGS.keys()].map((beginning) => beginning.length));

/**
 * The kind of a maker's series by how the number begins: `BC547B` → transistor, `1N4148` → diode. A beginning that ends in a letter
 * must be followed by a digit; one letter or two and a digit or two are too little. Null for what begins otherwise.
 */
export function familyKind(block: string): Kind | null {
  const upper = block.toUpperCase();
  if (!FIRST.has(upper.slice(0, 2)) || !/[A-Z]/.test(upper) || !/\d/.test(upper)) return null;
  for (let length = Math.min(LONGEST, upper.length); length >= 2; length--) {
    const beginning = upper.slice(0, length);
    const kind = BEGINNINGS.get(beginning);
    if (kind && goesOn(upper, length) && !(CLOSED.has(beginning) && /\d/.test(upper[length] ?? ''))) return kind;
  }
  return null;
}

function goesOn(upper: string, length: number): boolean {
  const rest = upper.slice(length);
  const last = upper[length - 1] ?? '';
  if (/^\d[A-Z]$/.test(upper.slice(0, length))) return /^\d{3}/.test(rest); // 1N, 2N, 2S: three digits, else `2n2F` is one
  if (length >= 5 && /\d/.test(upper.slice(0, length))) return true;
  if (/[A-Z]/.test(last)) return rest === '' ? /\d/.test(upper) : /^-?\d/.test(rest) && (length > 2 || rest.length > 1);
  return (upper.match(/\d/g)?.length ?? 0) >= (length < 4 ? 2 : 1) && upper.length >= 4;
}
