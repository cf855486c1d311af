import { apply, putIn, type Balance } from '#core/stock/moves.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { bagsById, touchBags } from '#db/bags.ts';
import { findBuild, setTake, settlePromises, takesOf, type BuildState, type KnownBuild, type Take } from '#db/builds.ts';
import type { Tx } from '#db/database.ts';
import type { NewMovement } from '#db/ledger.ts';
import { rangeTrouble } from './checks.ts';
import type { Leftover } from './inputs.ts';

/** What an undo of an act on a kit must know: how the build stood before, and what the act did to its takes. */
export interface KitMemo {
  readonly build: string;
  readonly state: BuildState;
  readonly made: number | null;
  readonly takes: readonly {
    readonly take: string;
    readonly picked: number;
    readonly returned: number;
    readonly state: Take['state'];
  }[];
}

export interface OpenKit {
  readonly build: KnownBuild;
  readonly takes: Map<string, Take>;
}

/** The build and its takes, where it is in one of the states that the act wants. */
export async function openKit(tx: Tx, id: string, wants: readonly BuildState[]): Promise<Outcome<OpenKit>> {
  const build = await findBuild(tx, id);
  if (!build || build.state === 'undone') return refuse('no-such-build', { build: id });
  if (!wants.includes(build.state))
    return refuse('build-state', { build: build.name, state: build.state, wants: wants.join(', ') });
  return done({ build, takes: new Map((await takesOf(tx, id)).map((take) => [take.id, take])) });
}

/** Checked leftovers: each of a take of the build, and no more than was picked and is still out; 0 only of what is out. */
export async function checkReturns(
  tx: Tx,
  kit: OpenKit,
  returns: readonly Leftover[],
): Promise<Outcome<{ take: Take; quantity: number }[]>> {
  const found: { take: Take; quantity: number }[] = [];
  const seen = new Set<string>();
  for (const { take: id, quantity } of returns) {
    const take = kit.takes.get(id);
    if (!take || seen.has(id)) return refuse('not-valid', { field: 'take', received: id, expected: 'take-of-build' });
    seen.add(id);
    const out = take.picked - take.returned;
    const trouble = rangeTrouble('quantity', quantity, 0, out);
    if (trouble) return { ok: false, refusal: { ...trouble, args: { ...trouble.args, ...(await stopOf(tx, take)), out } } };
    if (out > 0) found.push({ take, quantity });
  }
  return done(found);
}

/** Names a take for a person: its bag and its cell. */
export async function stopOf(tx: Tx, { bag, tray, cell }: Take): Promise<{ bag: number; tray: number; cell: number }> {
  return { bag: (await bagsById(tx, [bag])).get(bag)?.number ?? 0, tray, cell };
}

/** Everything that was picked and is still out. */
export function allOut(kit: OpenKit): { take: Take; quantity: number }[] {
  return [...kit.takes.values()].flatMap((take) =>
    take.picked > take.returned ? [{ take, quantity: take.picked - take.returned }] : [],
  );
}

export function returnMovements(returns: readonly { take: Take; quantity: number }[]): NewMovement[] {
  const some = returns.filter(({ quantity }) => quantity > 0);
  return some.map(({ take, quantity }) => ({ bag: take.bag, buildLine: take.line, ...putIn(quantity) }));
}

export async function markReturned(tx: Tx, returns: readonly { take: Take; quantity: number }[]): Promise<void> {
  for (const { take, quantity } of returns) await setTake(tx, { ...take, returned: take.returned + quantity });
}

/** Settles what is promised to the build and tells followers of the bags. */
export async function settle(tx: Tx, change: number, build: string): Promise<string[]> {
  const bags = await settlePromises(tx, build);
  await touchBags(tx, change, bags);
  return bags;
}

/** Balances that follow the movements of an act while they are being made up. */
export async function runningBalances(tx: Tx, bags: readonly string[]) {
  const known = await bagsById(tx, bags);
  const held = new Map<string, Balance>([...known].map(([id, bag]) => [id, bag]));
  return {
    bag: (id: string) => {
      const bag = known.get(id);
      if (!bag) throw new Error(`a take of bag ${id}, which is not there`);
      return bag;
    },
    held: (id: string): Balance => held.get(id) ?? { onHand: 0, sure: 0 },
    move(movement: NewMovement) {
      held.set(movement.bag, apply(held.get(movement.bag) ?? { onHand: 0, sure: 0 }, movement));
    },
  };
}
