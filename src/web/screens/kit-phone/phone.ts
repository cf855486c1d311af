import { unlessMoved } from '../../address.ts';
import type { KitTakeView } from '#api/kits.ts';
import { comingStops, isOpen, namedStop, readSkipped } from '../kit/walk.ts';

export interface PhoneWords {
  readonly take?: string;
  readonly skipped?: string;
  readonly show?: string;
  readonly hand?: string;
}

/** The words of the address after a pick that was begun at `before`: the next stop, unless something else was chosen meanwhile. */
export const afterBooking = (now: PhoneWords, before: PhoneWords): PhoneWords =>
  unlessMoved(now, before, ['take', 'show', 'hand'], ({ skipped }) => (skipped === undefined ? {} : { skipped }));

export interface PhoneStand {
  /** the stop in the hand; null where all is done */
  readonly stop: KitTakeView | null;
  /** what comes after it */
  readonly after: KitTakeView | null;
  /** the stop of the address was picked while something was being typed for it */
  readonly gone: boolean;
}

/**
 * Which stop is shown. A stop that was picked elsewhere makes way for the next one at once, unless something is being typed for it:
 * a number typed for one bag must never be booked from another.
 */
export function standOf(takes: readonly KitTakeView[], words: PhoneWords): PhoneStand {
  const coming = comingStops(takes, readSkipped(words.skipped));
  const named = namedStop(takes, words.take);
  const gone = named !== null && !isOpen(named) && words.show === 'fewer';
  const stop = named && (isOpen(named) || gone) ? named : (coming[0] ?? null);
  const at = coming.findIndex((take) => take.id === stop?.id);
  const rest = at < 0 ? coming : [...coming.slice(at + 1), ...coming.slice(0, at)];
  return { stop, after: rest[0] ?? null, gone };
}

/** A typed bag number: `131` → 131; what is none → null. */
export function handNumber(text: string): number | null {
  const plain = text.trim();
  return /^[1-9]\d{0,8}$/.test(plain) ? Number(plain) : null;
}

/** What the stop is after: `same` box as the one before it. */
export const sameBox = (a: KitTakeView, b: KitTakeView): boolean => a.box === b.box;
