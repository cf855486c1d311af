/** The greatest number that a bag can have: a slip of the finger must not push all that follow out of sight. */
export const MOST_NUMBER = 1_000_000;

const WHOLE = /^\d+$/;
const NUMBER = /^[+-]?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?$/i;

/** The bag number that a text is: `"007"` → 7; null for 0, `"1.5"`, `"1000001"` and for words. */
export function readBagNumber(text: string): number | null {
  const number = WHOLE.test(text) ? Number(text) : 0;
  return number >= 1 && number <= MOST_NUMBER ? number : null;
}

/** A number, but none that a bag can have: `"-1"`, `"0"`, `"1.5"`. */
export function isNoBagNumber(text: string): boolean {
  return NUMBER.test(text) && readBagNumber(text) === null;
}
