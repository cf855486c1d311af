import assert from 'node:assert/strict';
import { randomUUID } from 'node:crypto';
import type { Action, Clock, Done, Who } from '#actions/action.ts';
import type { ActInput, ReceivedItem } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { receive } from '#actions/receive.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import type { Part } from '#core/part/part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import type { Outcome, RefusalCode } from '#core/stock/refusal.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { Lab } from '#db/database.ts';
import { readBag } from '#db/read-stock.ts';

/** How a suite gets an empty lab, and the same lab once more as another process would open it. */
export interface Store {
  readonly engine: 'sqlite' | 'postgres';
  fresh(): Promise<{ readonly lab: Lab; again(): Promise<Lab>; end(): Promise<void> }>;
}

export const WHO: Who = { name: 'Ada', device: null };
export const CLOCK: Clock = { now: () => '2026-03-01T09:00:00.000Z' };

export async function withLab(store: Store, fn: (lab: Lab, again: () => Promise<Lab>) => Promise<void>): Promise<void> {
  const fresh = await store.fresh();
  try {
    await fn(fresh.lab, () => fresh.again());
  } finally {
    await fresh.end();
  }
}

/** An act under a new id. */
export function act<Input extends ActInput, Result extends Done>(
  lab: Lab,
  action: Action<Input, Result>,
  input: NoInfer<Omit<Input, 'id'>> & { readonly id?: string },
): Promise<Outcome<Result>> {
  // as: the rest of a generic input and its id are the input
  return perform(lab, action, CLOCK, WHO, { id: randomUUID(), ...input } as unknown as Input);
}

/** The result of an act that must succeed. */
export async function did<Result>(outcome: Promise<Outcome<Result>>): Promise<Result> {
  const settled = await outcome;
  if (!settled.ok) assert.fail(`refused: ${JSON.stringify(settled.refusal)}`);
  return settled.value;
}

/** The refusal of an act that must be refused. */
export async function refusedBy(
  outcome: Promise<Outcome<unknown>>,
  code: RefusalCode,
): Promise<Readonly<Record<string, string | number>>> {
  const settled = await outcome;
  assert.equal(settled.ok ? 'done' : settled.refusal.code, code);
  return settled.ok ? {} : settled.refusal.args;
}

export function resistor(ohms: number | string, text = `resistor ${ohms}`): Part {
  return {
    kind: 'resistor',
    facts: {
      value: { key: 'value', value: decimal(ohms), unit: 'ohm', origin: 'stated' },
      package: { key: 'package', value: '0805', unit: null, origin: 'stated' },
    },
    text,
  };
}

export function row(number: number, part: Part, more: Partial<ReadRow> = {}): ReadRow {
  return { row: number, refs: [], quantity: 100, fitted: true, part, location: null, supplier: null, doubts: [], ...more };
}

/** Bags 1, 2, 3 … with so many pieces each, every one another value. */
export async function fill(lab: Lab, ...quantities: readonly number[]): Promise<string> {
  const items = quantities.map((quantity, at): ReceivedItem => ({
    quantity,
    part: resistor((at + 1) * 100),
    bag: at + 1,
    box: 'A',
  }));
  return (await did(act(lab, receive, { items }))).act;
}

export async function bagOf(lab: Lab, number: number): Promise<Bag> {
  const bag = await lab.read((tx) => readBag(tx, number));
  return bag ?? assert.fail(`no bag ${number}`);
}

/** On hand, sure and free of a bag. */
export async function heldIn(lab: Lab, number: number): Promise<readonly [onHand: number, sure: number, free: number]> {
  const bag = await bagOf(lab, number);
  return [bag.onHand, bag.sure, bag.sure - bag.reserved];
}
