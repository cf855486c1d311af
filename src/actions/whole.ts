import { MOST } from './checks.ts';
import { plainText } from '#core/quantity/plain-text.ts';
import { MOST_NUMBER } from '#core/stock/bag-number.ts';
import type { Outcome, Refusal, RefusalCode } from '#core/stock/refusal.ts';

const WHOLE = /^[+-]?\d+(?:e\+?\d+)?$/i;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

interface Range {
  readonly least: number;
  readonly most: number;
}

const ANY: Range = { least: -MOST, most: MOST };
export const BOARDS: Range = { least: 1, most: 10_000 };
export const BAGS: Range = { least: 1, most: MOST_NUMBER };
export const PORTS: Range = { least: 0, most: 65_535 };

/** A whole number that was typed: `'12'` -> 12; `'1.5'`, `'twelve'` and what is out of range are refused by the name of the field. */
export function readWhole(text: string, field: string, { least, most }: Range = ANY): Outcome<number> {
  const received = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  const plain = plainText(text);
  if (!NUMBER.test(plain)) return no('not-valid', { field, received, expected: 'a whole number' });
  if (!WHOLE.test(plain)) return no('not-whole', { field, received });
  const value = Number(plain);
  return value < least || value > most
    ? no('out-of-range', { field, received, least: Math.max(least, 0), most })
    : { ok: true, value };
}

function no(code: RefusalCode, args: Refusal['args']): Outcome<never> {
  return { ok: false, refusal: { code, args } };
}
