import { isPlainName, withoutControls } from '#core/quantity/plain-text.ts';
import type { Refusal } from '#core/stock/refusal.ts';

const UUID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;
const PLAIN_DATE = /^\d{4}-\d{2}-\d{2}$/;
const INSTANT = /^\d{4}-\d{2}-\d{2}T[\d:.]+(?:Z|[+-]\d{2}:\d{2})$/;
/** Far above what a lab holds, far below 2^53: sums stay exact. */
export const MOST = 1_000_000_000;
const DAY_MS = 86_400_000;

/** A quantity that moves: a whole number of at least `least` (1 unless said). */
export function quantityTrouble(field: string, value: number, least: number = 1): Refusal | null {
  if (!Number.isSafeInteger(value)) return { code: 'not-whole', args: { field, received: String(value) } };
  if (value < least)
    return least === 1 ? { code: 'not-positive', args: { field, received: value } } : range(field, value, least, MOST);
  return value > MOST ? range(field, value, least, MOST) : null;
}

/** A whole number between two bounds. */
export function rangeTrouble(field: string, value: number, least: number, most: number): Refusal | null {
  if (!Number.isSafeInteger(value)) return { code: 'not-whole', args: { field, received: String(value) } };
  return value < least || value > most ? range(field, value, least, most) : null;
}

export function idTrouble(id: string): Refusal | null {
  return UUID.test(id) ? null : { code: 'not-valid', args: { field: 'id', received: id, expected: 'uuid' } };
}

/** A name that can be seen and typed; null or undefined is none, which is no trouble. */
export function nameTrouble(field: string, name: string | null | undefined): Refusal | null {
  if (name === undefined || name === null || isPlainName(name)) return null;
  const received = withoutControls(name)
    .toWellFormed()
    .replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ')
    .trim();
  return { code: 'not-valid', args: { field, received: received.slice(0, 40), expected: 'plain-name' } };
}

/** `YYYY-MM-DD` of a day that exists. */
export function dateTrouble(field: string, text: string): Refusal | null {
  const real = PLAIN_DATE.test(text) && readOr(() => Temporal.PlainDate.from(text, { overflow: 'reject' })) !== null;
  return real ? null : { code: 'not-valid', args: { field, received: text, expected: 'date' } };
}

/** An instant with its zone, in UTC to the millisecond; null for anything else, a 30 February too: `2026-03-01T01:00+02:00` -> `2026-02-28T23:00:00.000Z`. */
export function utcInstant(text: string): string | null {
  const read = INSTANT.test(text) ? readOr(() => Temporal.Instant.from(text)) : null;
  return read?.toString({ fractionalSecondDigits: 3 }) ?? null;
}

/** Deeds happen after the age of paper and before tomorrow: anything else is a clock that is wrong. */
export function nearNow(instant: string, now: string): boolean {
  const at = Date.parse(instant);
  return at >= 0 && at <= Date.parse(now) + DAY_MS;
}

/** The day on which an instant falls where the lab is, that is in the time zone of this process. */
export function labDay(instant: string, zone: string = Temporal.Now.timeZoneId()): string {
  return Temporal.Instant.from(instant).toZonedDateTimeISO(zone).toPlainDate().toString();
}

/** Temporal throws where it can't read. */
function readOr<T>(read: () => T): T | null {
  try {
    return read();
  } catch {
    return null;
  }
}

/** The first trouble there is. */
export function firstTrouble(...troubles: readonly (Refusal | null)[]): Refusal | null {
  return troubles.find((trouble) => trouble !== null) ?? null;
}

function range(field: string, received: number, least: number, most: number): Refusal {
  return { code: 'out-of-range', args: { field, received, least, most } };
}
