import type { Fact, FactKey } from '#core/part/part.ts';
import type { Posting } from './words.ts';

interface Step {
  readonly at: number;
  readonly value: string;
}

/** The values of one fact in one unit that the stock has, with the bags that have each; in order of size when asked. */
export interface Scale {
  readonly postings: Map<string, Posting>;
  steps: readonly Step[] | null;
}

export type Scales = Map<string, Scale>;

export function scaleName(key: FactKey, unit: string | null): string {
  return unit === null ? key : `${key} ${unit}`;
}

export function postFact(scales: Scales, slot: number, fact: Fact): void {
  const name = scaleName(fact.key, fact.unit);
  let scale = scales.get(name);
  if (!scale) scales.set(name, (scale = { postings: new Map(), steps: null }));
  const value = spelling(fact);
  const posting = scale.postings.get(value);
  if (posting) posting.push(slot);
  else {
    scale.postings.set(value, [slot]);
    scale.steps = null;
  }
}

/** Words are compared without regard to case; numbers have one spelling only. */
function spelling(fact: Pick<Fact, 'value' | 'unit'>): string {
  return fact.unit === null ? fact.value.toLowerCase() : fact.value;
}

/** Bags whose fact equals this one. */
export function equalTo(scales: Scales, fact: Pick<Fact, 'key' | 'unit' | 'value'>): Posting {
  return scales.get(scaleName(fact.key, fact.unit))?.postings.get(spelling(fact)) ?? [];
}

/** Bags whose fact lies within the bounds, both included; nearest to `low` first. */
export function within(scales: Scales, key: FactKey, unit: string | null, low: number, high: number): Posting[] {
  const scale = scales.get(scaleName(key, unit));
  if (!scale) return [];
  return steps(scale).flatMap(({ at, value }) => (at >= low && at <= high ? [scale.postings.get(value) ?? []] : []));
}

/** The values next to this one that `counts`, at most `each` on either side and within `ratio` of it, nearest first; never the value itself. */
export function neighbours(
  scales: Scales,
  fact: Fact,
  each: number,
  ratio: number,
  counts: (posting: Posting) => boolean,
): Posting[] {
  const scale = scales.get(scaleName(fact.key, fact.unit));
  const middle = Number(fact.value);
  if (!scale || !(middle > 0)) return [];
  const far = (step: Step): number => (step.at > middle ? step.at / middle : middle / step.at);
  const near = steps(scale).filter(
    (step) => step.at > 0 && step.value !== fact.value && far(step) <= ratio && counts(scale.postings.get(step.value) ?? []),
  );
  const below = near.filter(({ at }) => at < middle).slice(-each);
  const above = near.filter(({ at }) => at > middle).slice(0, each);
  return [...below, ...above].toSorted((a, b) => far(a) - far(b)).map(({ value }) => scale.postings.get(value) ?? []);
}

/** Bags whose value of the fact passes the test; for facts with few different values. */
export function passing(scales: Scales, key: FactKey, unit: string | null, test: (value: string) => boolean): Posting[] {
  return [...(scales.get(scaleName(key, unit))?.postings ?? [])].flatMap(([value, posting]) => (test(value) ? [posting] : []));
}

function steps(scale: Scale): readonly Step[] {
  scale.steps ??= [...scale.postings.keys()].map((value) => ({ at: Number(value), value })).sort((a, b) => a.at - b.at);
  return scale.steps;
}
