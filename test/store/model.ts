import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import { test } from 'node:test';
import * as fc from 'fast-check';
import { count } from '#actions/count.ts';
import { pick } from '#actions/pick.ts';
import { receive } from '#actions/receive.ts';
import { returnToBag } from '#actions/return-to-bag.ts';
import { undo } from '#actions/undo.ts';
import { checkLab } from '#db/check.ts';
import type { Lab } from '#db/database.ts';
import { readStock } from '#db/read-stock.ts';
import { act, did, fill, withLab, type Store } from './lab.ts';

const SEED = 20260301;
const BAGS = 3;

type Step =
  | {
      readonly do: 'receive' | 'return' | 'pick' | 'in-hand' | 'count';
      readonly bag: number;
      readonly quantity: number;
      readonly sure: number;
    }
  | { readonly do: 'undo'; readonly back: number };

const stepOf: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constantFrom('receive', 'return', 'pick', 'in-hand', 'count'),
      bag: fc.integer({ min: 1, max: BAGS }),
      quantity: fc.integer({ min: 1, max: 30 }),
      sure: fc.integer({ min: 0, max: 30 }),
    }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('undo' as const), back: fc.nat(4) }) },
);

/** What a clerk with a notebook would do: a number for each bag, and every deed written down with what it changed. */
interface Notebook {
  readonly held: number[];
  readonly deeds: { readonly act: string; readonly bag: number; readonly change: number; undone: boolean }[];
}

/** Does one step in the lab and in the notebook; both must agree on whether it is done. */
async function walk(lab: Lab, book: Notebook, step: Step): Promise<void> {
  if (step.do === 'undo') return walkBack(lab, book, step.back);
  const { bag, quantity } = step;
  const has = book.held[bag] ?? 0;
  const id = randomUUID();
  const inHand = step.do === 'in-hand';
  const outcome =
    step.do === 'receive'
      ? await act(lab, receive, { id, items: [{ bag, quantity, sure: Math.min(step.sure, quantity) }] })
      : step.do === 'return'
        ? await act(lab, returnToBag, { id, bag, quantity })
        : step.do === 'count'
          ? await act(lab, count, { id, bag, total: quantity })
          : await act(lab, pick, { id, bag, quantity, inHand });
  const change =
    step.do === 'count' ? quantity - has : step.do === 'receive' || step.do === 'return' ? quantity : -Math.min(quantity, has);
  const possible = step.do !== 'pick' || quantity <= has;
  assert.equal(outcome.ok, possible, `${step.do} ${quantity} of ${has}`);
  if (!possible) return;
  book.held[bag] = has + change;
  book.deeds.push({ act: id, bag, change, undone: false });
}

async function walkBack(lab: Lab, book: Notebook, back: number): Promise<void> {
  const deed = book.deeds.at(-1 - back);
  if (!deed) return;
  const left = (book.held[deed.bag] ?? 0) - deed.change;
  const outcome = await act(lab, undo, { act: deed.act });
  const code = deed.undone ? 'undone-already' : left < 0 ? 'below-zero' : 'done';
  assert.equal(outcome.ok ? 'done' : outcome.refusal.code, code);
  if (code !== 'done') return;
  book.held[deed.bag] = left;
  deed.undone = true;
}

/** The newest acts undone one after another lead back through every stock that there was. */
async function backToStart(lab: Lab, steps: readonly Step[]): Promise<void> {
  const stocks: (readonly [act: string, before: unknown])[] = [];
  for (const step of steps) {
    if (step.do === 'undo') continue;
    const before = await quantities(lab);
    const book: Notebook = { held: [0, ...before.map((bag) => bag.onHand)], deeds: [] };
    await walk(lab, book, step);
    if (book.deeds[0]) stocks.push([book.deeds[0].act, before]);
  }
  for (const [done, before] of stocks.toReversed()) {
    await did(act(lab, undo, { act: done }));
    assert.deepEqual(await quantities(lab), before);
  }
}

async function quantities(lab: Lab): Promise<{ number: number; onHand: number; sure: number; toCount: boolean }[]> {
  const { bags } = await lab.read(readStock);
  return bags.map(({ number, onHand, sure, toCount }) => ({ number, onHand, sure, toCount }));
}

/** Laws of any sequence of acts; `runs` is how many sequences are tried. */
export function modelSuite(store: Store, runs: number): void {
  const steps = fc.array(stepOf, { minLength: 1, maxLength: 12 });
  const options = { seed: SEED, numRuns: runs, endOnFailure: true };

  void test(`${store.engine}: after whatever acts, the lab holds what a clerk's notebook says, and proves itself (seed ${SEED})`, () =>
    withLab(store, async (lab) => {
      await fill(lab, ...Array.from({ length: BAGS }, () => 20));
      await fc.assert(
        fc.asyncProperty(steps, async (sequence) => {
          const book: Notebook = { held: [0, ...(await quantities(lab)).map((bag) => bag.onHand)], deeds: [] };
          for (const step of sequence) await walk(lab, book, step);
          const found = await quantities(lab);
          assert.deepEqual(
            found.map((bag) => bag.onHand),
            book.held.slice(1),
          );
          assert.ok(found.every((bag) => bag.sure >= 0 && bag.sure <= bag.onHand));
        }),
        options,
      );
      assert.deepEqual(await lab.read(checkLab), []);
    }));

  void test(`${store.engine}: undoing the newest acts one by one leads back through every stock (seed ${SEED})`, () =>
    withLab(store, async (lab) => {
      await fill(lab, ...Array.from({ length: BAGS }, () => 20));
      await fc.assert(
        fc.asyncProperty(steps, (sequence) => backToStart(lab, sequence)),
        { ...options, numRuns: Math.ceil(runs / 4) },
      );
      assert.deepEqual(await lab.read(checkLab), []);
    }));
}
