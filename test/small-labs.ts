import * as fc from 'fast-check';
import type { Candidate, Demand, Need } from '#core/kit/kit.ts';
import type { Part } from '#core/part/part.ts';
import type { Verdict } from '#core/serve/verdict.ts';
import type { Bag, Stock } from '#core/stock/stock.ts';

const PART: Part = { kind: 'resistor', facts: {}, text: '' };

/** A bag as a test wants it; what it does not say is usual. */
export function bagOf(number: number, onHand: number, more: Partial<Bag> = {}): Bag {
  return {
    id: `bag-${number}`,
    number,
    partId: 'p',
    code: 'R',
    part: PART,
    holder: 'zip-bag',
    unit: 'piece',
    box: 'A',
    place: String(number),
    state: 'sound',
    onHand,
    sure: onHand,
    reserved: 0,
    oldest: null,
    toCount: false,
    ...more,
  };
}

export function stockOf(bags: readonly Bag[]): Stock {
  return {
    change: 1,
    bags,
    boxes: [
      { name: 'A', places: 60, lifts: 0, order: 1 },
      { name: 'B', places: 60, lifts: 1, order: 2 },
    ],
  };
}

export function candidateOf(bag: number, verdict: Verdict = 'exact', accepted = false, chosen = false): Candidate {
  return { bag, verdict, accepted: accepted || chosen, because: chosen ? [{ code: 'chosen', args: { bag } }] : [] };
}

export function needOf(line: string, perBoard: number, candidates: readonly Candidate[]): Need {
  return { line, row: 1, refs: [line], perBoard, candidates };
}

export function demandOf(build: string, boards: number, needs: readonly Need[], priority = 1, due: string | null = null): Demand {
  return { build, boards, priority, due, needs };
}

export interface Lab {
  readonly stock: Stock;
  readonly demands: readonly Demand[];
}

const answers = fc.constantFrom<readonly [Verdict, boolean, boolean]>(
  ['exact', false, false],
  ['serves', false, false],
  ['exact', false, false],
  ['serves', false, false],
  ['check', true, false],
  ['check', false, false],
  ['serves', true, true],
  ['missing', false, false],
);

export interface LabSize {
  readonly bags: number;
  readonly lines: number;
  readonly holds: number;
  readonly boards: number;
  /** lines for a bag that is no answer, in ten */
  readonly sparse: number;
}

/** Labs of a few bags and lines, small enough to try every plan. */
export function smallLabs(size: LabSize): fc.Arbitrary<Lab> {
  const bag = fc.record({
    onHand: fc.integer({ min: 0, max: size.holds }),
    reserved: fc.constantFrom(0, 0, 0, 1),
    state: fc.constantFrom('sound', 'sound', 'sound', 'astray'),
    oldest: fc.constantFrom(null, '2024-02-01', '2025-06-30', '2026-01-15'),
  });
  const line = fc.record({
    perBoard: fc.integer({ min: 1, max: 2 }),
    build: fc.integer({ min: 0, max: 1 }),
    answers: fc.array(
      fc.tuple(fc.integer({ min: 1, max: 10 }), answers).map(([chance, answer]) => (chance > size.sparse ? answer : null)),
      { minLength: size.bags, maxLength: size.bags },
    ),
  });
  return fc
    .record({
      bags: fc.array(bag, { minLength: Math.ceil(size.bags / 2), maxLength: size.bags }),
      lines: fc.array(line, { minLength: Math.ceil(size.lines / 2), maxLength: size.lines }),
      boards: fc.tuple(fc.integer({ min: 1, max: size.boards }), fc.integer({ min: 1, max: size.boards })),
      priorities: fc.tuple(fc.integer({ min: 1, max: 2 }), fc.integer({ min: 1, max: 2 })),
    })
    .map(({ bags, lines, boards, priorities }) => ({
      stock: stockOf(bags.map((one, at) => bagOf(at + 1, one.onHand, { ...one, state: one.state as Bag['state'] }))), // as: the constants above are states
      demands: [0, 1].map((build) =>
        demandOf(
          `b${build}`,
          boards[build] ?? 1,
          lines.flatMap((one, at) =>
            one.build === build
              ? [
                  needOf(
                    `b${build}/${at}`,
                    one.perBoard,
                    one.answers.flatMap((answer, to) => (answer && to < bags.length ? [candidateOf(to + 1, ...answer)] : [])),
                  ),
                ]
              : [],
          ),
          priorities[build] ?? 1,
        ),
      ),
    }));
}
