/** What a person typed for a count. `wrong`: the piece that is no whole number, as typed. */
export type SumReading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'sum'; readonly total: number; readonly terms: readonly number[] }
  | { readonly kind: 'wrong'; readonly piece: string; readonly why: 'letter' | 'fraction' | 'below-zero' | 'large' | 'gap' };

/** More pieces than a bag can hold, see `MOST` of the ledger. */
const MOST = 1_000_000_000;
/** Spaces that set thousands apart; a plain space between figures may do so too. */
const SPACES = /[\s\u00a0\u202f\u2009]/g;
const MINUS = /[\u2212\u2012\u2013]/g;
const TERM = /([+-])([^+-]*)/g;

/**
 * A count as it is typed at the bench: a whole number, or piles that are added up, also taken away. Exact whole numbers only.
 *
 * `47+31+12` → 90; `100 - 3` → 97; `1 240` → 1240; `1O` is wrong: the letter O.
 */
export function readSum(text: string): SumReading {
  const plain = text.replaceAll(MINUS, '-').trim();
  if (plain === '') return { kind: 'empty' };
  const terms: number[] = [];
  for (const [, sign = '+', written = ''] of `${/^[+-]/.test(plain) ? '' : '+'}${plain}`.matchAll(TERM)) {
    const term = termOf(written.trim());
    if (typeof term !== 'number') return { kind: 'wrong', ...term };
    terms.push(sign === '-' ? -term : term);
  }
  const total = terms.reduce((sum, term) => sum + term, 0);
  if (total < 0) return { kind: 'wrong', piece: text.trim(), why: 'below-zero' };
  return total > MOST ? { kind: 'wrong', piece: text.trim(), why: 'large' } : { kind: 'sum', total, terms };
}

function termOf(written: string): number | { piece: string; why: 'letter' | 'fraction' | 'large' | 'gap' } {
  if (written === '') return { piece: written, why: 'gap' };
  if (/\s/.test(written) && !/^\d{1,3}(?:[\s\u00a0\u202f\u2009]\d{3})+$/.test(written)) return { piece: written, why: 'gap' };
  const figures = written.replaceAll(SPACES, '');
  if (/^\d+[.,]\d+$/.test(figures)) return { piece: written, why: 'fraction' };
  if (!/^\d+$/.test(figures)) return { piece: written, why: 'letter' };
  return figures.length > 10 ? { piece: written, why: 'large' } : Number(figures);
}
