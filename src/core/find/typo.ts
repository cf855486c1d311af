import { startingWith, type Words } from './words.ts';

const SHORTEST = 4;
const LONG = 8;

/**
 * Words of the stock that were probably meant: one slip away (a letter too many, missing, wrong, or two changed about), two
 * from eight letters on, with the first letters right. `resitsor` → `resistor`; words under four letters are taken as typed.
 */
export function meantBy(words: Words, typed: string, counts: (word: string) => boolean = () => true): string[] {
  const slips = mostSlips(typed);
  if (slips === 0) return [];
  const found: { word: string; away: number }[] = [];
  for (const word of startingWith(words, typed.slice(0, 2))) {
    if (Math.abs(word.length - typed.length) > slips) continue;
    const away = slipsBetween(word, typed, slips);
    if (away <= slips && counts(word)) found.push({ word, away });
  }
  const least = Math.min(...found.map(({ away }) => away));
  return found.filter(({ away }) => away === least).map(({ word }) => word);
}

/** How many slips a word of this length may have. */
export function mostSlips(typed: string): number {
  if (typed.length < SHORTEST) return 0;
  return typed.length < LONG ? 1 : 2;
}

/** Slips that lead from one word to the other (optimal string alignment); anything above `most` may be answered as more. */
export function slipsBetween(a: string, b: string, most: number): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let slips = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) slips = Math.min(slips, (before[j - 2] ?? 0) + 1);
      row.push(slips);
      if (slips < least) least = slips;
    }
    if (least > most) return most + 1;
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
