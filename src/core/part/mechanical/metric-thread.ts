import { decimal } from '#core/quantity/decimal.ts';
import { METRIC_THREADS } from './threads.data.ts';

const THREAD =
  /M(\d{1,2}(?:[.,]\d)?)(?:\s?(?:[xX*]\s?(\d{1,3}(?:[.,]\d{1,2})?)|-\s?(\d{1,3}(?:[.,]\d)?))(?:\s?[xX*-]\s?(\d{1,3}(?:[.,]\d)?))?(?:\s?mm)?)?(?![A-Za-z0-9])/y;
const PITCHES: ReadonlyMap<string, { readonly coarse: string; readonly fine: readonly string[] }> = new Map(
  METRIC_THREADS.map(([size, coarse, fine]) => [
    size,
    { coarse: decimal(coarse), fine: fine ? fine.split(' ').map(decimal) : [] },
  ]),
);

export interface ThreadReading {
  readonly thread: string;
  /** in mm, as written */
  readonly length: string | null;
  readonly end: number;
}

/**
 * `M3x10` → `M3`, 10 mm; `M3x0.5x8` → `M3`, 8 mm, since a coarse pitch goes without saying (ISO 261); `M8x1` → `M8x1`, a fine pitch
 * and no length; null where no metric thread begins.
 */
export function metricThreadAt(text: string, start: number): ThreadReading | null {
  if (text[start] !== 'M') return null;
  THREAD.lastIndex = start;
  const match = THREAD.exec(text);
  const [all = '', written = '', second, dashed, third] = match?.map((one) => one?.replace(',', '.')) ?? [];
  const pitches = PITCHES.get(written);
  if (!pitches) return null;
  const end = start + all.length;
  const pitch = second !== undefined && isPitch(second, pitches) ? second : null;
  if (pitch === null) return third === undefined ? { thread: `M${written}`, length: second ?? dashed ?? null, end } : null;
  const thread = decimal(pitch) === pitches.coarse ? `M${written}` : `M${written}x${pitch}`;
  return { thread, length: third ?? null, end };
}

/** A pitch of this size, or a figure under one: no screw is so short. */
function isPitch(figures: string, { coarse, fine }: { readonly coarse: string; readonly fine: readonly string[] }): boolean {
  const value = decimal(figures);
  return value === coarse || fine.includes(value) || figures.startsWith('0.');
}
