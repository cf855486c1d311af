import { withDoubts } from '#core/part/doubted.ts';
import { partCode } from '#core/part/part-code.ts';
import { readPart } from '#core/part/read-part.ts';
import { done, type Outcome } from '#core/stock/refusal.ts';
import type { Lab } from '#db/database.ts';
import { sayPart, type SaidPart } from '#say/en/said.ts';
import type { Clock, Who } from './action.ts';
import { nameTrouble } from './checks.ts';
import type { ActInput, BagBalance, ReceiveResult } from './inputs.ts';
import { perform } from './perform.ts';
import { receive } from './receive.ts';

/** One new bag: what it says in any notation, how many, and where it goes. */
export interface TakeInInput extends ActInput {
  readonly says: string;
  readonly quantity: number;
  /** the quantity is an estimate: none of it is sure */
  readonly about?: boolean;
  /** the next free number where it is left out; a number that a bag has is refused */
  readonly bag?: number;
  readonly box?: string;
  readonly place?: string;
}

export interface TakenIn {
  readonly result: ReceiveResult;
  readonly balance: BagBalance;
  readonly box: string | null;
  readonly code: string;
  readonly said: SaidPart;
}

/** Takes in one bag from words. What was read with a doubt stays in doubt on the bag. */
export async function takeIn(lab: Lab, clock: Clock, who: Who, input: TakeInInput): Promise<Outcome<TakenIn>> {
  const { says, quantity, about, bag, box, place, ...act } = input;
  const trouble = nameTrouble('says', says);
  if (trouble) return { ok: false, refusal: trouble };
  const { part: read, doubts } = readPart(says);
  const part = withDoubts({ ...read, text: says.trim() }, doubts);
  const item = {
    quantity,
    part,
    fresh: true,
    ...(about === true && { sure: 0 }),
    ...(bag !== undefined && { bag }),
    ...(box !== undefined && { box }),
    ...(place !== undefined && { place }),
  };
  const outcome = await perform(lab, receive, clock, who, { ...act, items: [item] });
  if (!outcome.ok) return outcome;
  const [balance] = outcome.value.bags;
  if (!balance) throw new Error('a bag was taken in, and none is there');
  return done({ result: outcome.value, balance, box: box ?? null, code: partCode(part), said: sayPart(part) });
}
