import { KINDS } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { Columns } from './columns.ts';
import type { FindIndex } from './find-index.ts';
import { readQuery, type Ask, type Query } from './read-query.ts';
import { Top, type Ranked } from './top.ts';
import { GRADE, waysOf } from './ways.ts';
import { whyFound, type Why } from './why.ts';

/** A bag that answers what was typed. `full`: it answers all of it; else it is something near. */
export interface Found {
  readonly bag: Bag;
  readonly score: number;
  readonly full: boolean;
  readonly why: readonly Why[];
}

const LIMIT = 50;
/** above every sum of grades, so that a sound bag comes before an astray one, and that before an exhausted one */
const STEP = 1000;

/**
 * The bags that answer what was typed, in any notation, best first: all facts and words, then nearest values, other packages,
 * ratings and makes; astray and exhausted bags last. `4k7`, `4,7 kΩ`, `4700 ohm`, `12`, `box A`, `LM35`, `at least 50 V 100n`.
 */
export function find(index: FindIndex, words: string, { limit = LIMIT }: { readonly limit?: number } = {}): Found[] {
  return findAsked(index, readQuery(words), limit);
}

/** The same for what was read already. */
export function findAsked(index: FindIndex, query: Query, limit: number): Found[] {
  const touched = count(index, query.asks);
  const found = best(index.columns, query, touched, limit).flatMap(({ slot, rank }) => {
    const bag = index.slots[slot];
    return bag
      ? [{ bag, score: rank, full: index.columns.answered[slot] === query.asks.length, why: whyFound(bag, query.asks) }]
      : [];
  });
  wipe(index.columns, touched);
  return found;
}

/** Goes once over the postings of everything asked; a bag counts once for each thing asked, by its best way. Answers how many bags it met. */
function count(index: FindIndex, asks: readonly Ask[]): number {
  const { score, essential, answered, seen, touched } = index.columns;
  const only = asks.some((ask) => ask.essential);
  let met = 0;
  for (const [at, ask] of asks.entries()) {
    const weight = ask.essential || !only ? 1 : 0;
    for (const { grade, posting } of waysOf(index, ask)) {
      const full = grade >= GRADE.begins ? 1 : 0;
      for (const slot of posting) {
        if (seen[slot] === at + 1) continue;
        if (score[slot] === 0) touched[met++] = slot;
        seen[slot] = at + 1;
        score[slot] = (score[slot] ?? 0) + grade;
        essential[slot] = (essential[slot] ?? 0) + weight;
        answered[slot] = (answered[slot] ?? 0) + full;
      }
    }
  }
  return met;
}

/** Only bags that answer as many essential things as the best one does: an essential word that no bag has stops nothing. */
function best(columns: Columns, query: Query, met: number, limit: number): readonly Ranked[] {
  const { score, essential, standing, kind, touched, number } = columns;
  const usual = query.kind === null ? -1 : KINDS.indexOf(query.kind);
  let most = 1;
  for (let at = 0; at < met; at += 1) {
    const slot = touched[at] ?? 0;
    if (standing[slot] !== 0 && (essential[slot] ?? 0) > most) most = essential[slot] ?? 0;
  }
  const top = new Top(limit, number);
  for (let at = 0; at < met; at += 1) {
    const slot = touched[at] ?? 0;
    if (essential[slot] !== most || standing[slot] === 0) continue;
    top.offer(slot, (standing[slot] ?? 0) * STEP + 2 * (score[slot] ?? 0) + (kind[slot] === usual ? 1 : 0));
  }
  return top.kept;
}

function wipe({ score, essential, answered, seen, touched }: Columns, met: number): void {
  for (let at = 0; at < met; at += 1) {
    const slot = touched[at] ?? 0;
    score[slot] = essential[slot] = answered[slot] = seen[slot] = 0;
  }
}
