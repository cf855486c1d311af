import { isSlip, raiseTo, takeOut } from '#core/stock/moves.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { bagsById } from '#db/bags.ts';
import { setBuild, setTake, type Take } from '#db/builds.ts';
import type { Tx } from '#db/database.ts';
import { postBagChanges, postMovements, type NewBagChange, type NewMovement } from '#db/ledger.ts';
import { action, type Action, type Warning } from './action.ts';
import { balancesOf, brokenPromises } from './balances.ts';
import { begin } from './begin.ts';
import { quantityTrouble } from './checks.ts';
import type { KitPick, PickForBuildInput, PickForBuildResult } from './inputs.ts';
import { openKit, runningBalances, settle, stopOf, type KitMemo, type OpenKit } from './kit-takes.ts';

type PlannedPick = KitPick & { readonly of: Take };

interface Pulled {
  readonly movements: readonly NewMovement[];
  /** bags whose record was shown to be wrong, by a short pick or by what a hand holds */
  readonly doubtful: readonly NewBagChange[];
}

/**
 * Picks a kit, whole or stop by stop: what really went into each cell. A short pick lets the rest of the promise go and puts the
 * bag on the count list; one that is `enough` lets it go too; without either, what is not picked stays promised. A stop that was done may be picked again,
 * with a warning, unless the person's screen knew less of it (`saw`): then another was quicker.
 */
export const pickForBuild: Action<PickForBuildInput, PickForBuildResult> = action(
  'pickForBuild',
  async (tx, clock, who, input) => {
    const kit = await openKit(tx, input.build, ['reserved', 'picking']);
    if (!kit.ok) return kit;
    const picks = await plannedPicks(tx, kit.value, input.picks);
    if (!picks.ok) return picks;
    if (picks.value.length === 0) return refuse('nothing-to-do');
    const pulled = await pull(tx, picks.value, input.inHand ?? false);
    if (!pulled.ok) return pulled;

    const { build } = kit.value;
    const begun = await begin(tx, clock, who, input, { kind: 'picked-for-build', memo: memoOf(kit.value, picks.value) });
    if (!begun.ok) return begun;
    const change = begun.value;
    await postMovements(tx, input.id, change, pulled.value.movements);
    await postBagChanges(tx, input.id, change, pulled.value.doubtful);
    for (const pick of picks.value) {
      const picked = pick.of.picked + pick.quantity;
      await setTake(tx, { ...pick.of, picked, state: closes(pick) || picked >= pick.of.planned ? 'done' : 'open' });
    }
    await setBuild(tx, build.id, 'picking', null);
    await settle(tx, change, build.id);

    const bags = [...new Set(picks.value.map((pick) => pick.of.bag))];
    const balances = await balancesOf(tx, bags);
    const after = await openKit(tx, build.id, ['picking']);
    const open = after.ok ? [...after.value.takes.values()].filter((take) => take.state === 'open').length : 0;
    const doubted = await balancesOf(
      tx,
      pulled.value.doubtful.map((one) => one.bag),
    );
    const warnings = [
      ...(await brokenPromises(tx, (await bagsById(tx, bags)).values())),
      ...doubted.map(({ bag }) => ({ code: 'on-count-list' as const, args: { bag } })),
      ...(await pickedAgain(tx, build.name, picks.value)),
      ...(await overfull(tx, picks.value)),
    ];
    const picked = picks.value.reduce((sum, pick) => sum + pick.quantity, 0);
    return done({ act: input.id, repeat: false, change, warnings, build: build.id, picked, open, bags: balances });
  },
);

/** Nothing more comes into this cell: the bag gave no more, or no more is wanted. */
const closes = ({ short, enough }: KitPick): boolean => short === true || enough === true;

/** What a hand took is booked, also from a stop that was done; but it may be the same pick told twice. */
async function pickedAgain(tx: Tx, build: string, picks: readonly PlannedPick[]): Promise<Warning[]> {
  const again = picks.filter(({ of, quantity }) => of.state === 'done' && quantity > 0);
  const bags = await bagsById(
    tx,
    again.map(({ of }) => of.bag),
  );
  return again.map(({ of, quantity }) => ({
    code: 'picked-again',
    args: { bag: bags.get(of.bag)?.number ?? 0, build, quantity, picked: of.picked },
  }));
}

/** More than a cell wants is booked, since the hand has it, and said: it may be a slip of the finger. */
async function overfull(tx: Tx, picks: readonly PlannedPick[]): Promise<Warning[]> {
  const over = picks.filter(({ of, quantity }) => of.state === 'open' && of.picked + quantity > of.planned);
  const bags = await bagsById(
    tx,
    over.map(({ of }) => of.bag),
  );
  return over.map(({ of, quantity }) => {
    const { tray, cell, planned } = of;
    const picked = of.picked + quantity;
    return {
      code: 'cell-over',
      args: { tray, cell, bag: bags.get(of.bag)?.number ?? 0, planned, picked, over: picked - planned },
    };
  });
}

async function plannedPicks(tx: Tx, kit: OpenKit, picks: readonly KitPick[] | undefined): Promise<Outcome<PlannedPick[]>> {
  if (picks === undefined) {
    const open = [...kit.takes.values()].filter((take) => take.state === 'open' && take.planned > take.picked);
    return done(open.map((of) => ({ take: of.id, quantity: of.planned - of.picked, of })));
  }
  const found = new Map<string, PlannedPick>();
  for (const pick of picks) {
    const of = kit.takes.get(pick.take);
    if (!of || found.has(pick.take))
      return refuse('not-valid', { field: 'take', received: pick.take, expected: 'take-of-build' });
    const trouble = quantityTrouble('quantity', pick.quantity, closes(pick) ? 0 : 1);
    if (trouble) return { ok: false, refusal: { ...trouble, args: { ...trouble.args, ...(await stopOf(tx, of)) } } };
    if (pick.saw !== undefined && pick.saw !== of.picked)
      return refuse('picked-meanwhile', { ...(await stopOf(tx, of)), picked: of.picked, saw: pick.saw });
    found.set(pick.take, { ...pick, of });
  }
  return done([...found.values()]);
}

/** The movements of the picks, one after another, so that two takes of one bag see each other. */
async function pull(tx: Tx, picks: readonly PlannedPick[], inHand: boolean): Promise<Outcome<Pulled>> {
  const balances = await runningBalances(
    tx,
    picks.map((pick) => pick.of.bag),
  );
  const movements: NewMovement[] = [];
  const doubtful = new Map<string, NewBagChange>();
  const push = (movement: NewMovement): void => {
    movements.push(movement);
    balances.move(movement);
  };
  for (const { of, quantity, short } of picks) {
    const bag = balances.bag(of.bag);
    const { onHand } = balances.held(of.bag);
    if (quantity > onHand && !inHand) return refuse('not-enough', { bag: bag.number, onHand, asked: quantity });
    if (isSlip(onHand, quantity)) return refuse('in-hand-large', { bag: bag.number, onHand, asked: quantity });
    const missed = short === true && onHand > quantity && of.picked + quantity < of.planned;
    if (quantity > onHand || missed) {
      doubtful.set(of.bag, { bag: of.bag, field: 'to_count', before: bag.toCount ? '1' : '0', after: '1' });
    }
    if (quantity > onHand) push({ bag: of.bag, buildLine: of.line, ...raiseTo(balances.held(of.bag), quantity) });
    if (quantity > 0) push({ bag: of.bag, buildLine: of.line, ...takeOut(balances.held(of.bag), quantity) });
  }
  return done({ movements, doubtful: [...doubtful.values()] });
}

function memoOf(kit: OpenKit, picks: readonly PlannedPick[]): KitMemo {
  const takes = picks.map((pick) => ({ take: pick.take, picked: pick.quantity, returned: 0, state: pick.of.state }));
  return { build: kit.build.id, state: kit.build.state, made: kit.build.made, takes };
}
