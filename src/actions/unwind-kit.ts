import type { Refusal } from '#core/stock/refusal.ts';
import type { KnownAct } from '#db/acts.ts';
import { touchBags } from '#db/bags.ts';
import { buildsOfAct, findBuild, planAgain, setBuild, setTake, takesOf, type BuildState, type Take } from '#db/builds.ts';
import type { Tx } from '#db/database.ts';
import type { ReservedMemo } from './reserve-kit.ts';
import { settle, type KitMemo } from './kit-takes.ts';
import type { Unwind } from './unwind.ts';

/** A build that was only planned competes no more. */
export const undoPlanned: Unwind = {
  trouble: async (tx, act) => standTrouble(tx, act, await buildsOfAct(tx, act.id), 'planned'),
  async after(tx, act) {
    for (const id of await buildsOfAct(tx, act.id)) await setBuild(tx, id, 'undone', null);
    return [];
  },
};

/** A reservation is taken back while nothing was picked for its builds; a build that was planned before is planned again. */
export const undoReserved: Unwind = {
  trouble: async (tx, act) => standTrouble(tx, act, [...(await buildsOfAct(tx, act.id)), ...plannedBefore(act)], 'reserved'),
  async after(tx, act, undo, change) {
    const freed: string[] = [];
    for (const id of [...(await buildsOfAct(tx, act.id)), ...plannedBefore(act)]) {
      await setBuild(tx, id, 'undone', null);
      freed.push(...(await settle(tx, change, id)));
    }
    for (const id of plannedBefore(act)) await planAgain(tx, id, undo);
    return freed;
  },
};

function plannedBefore(act: KnownAct): readonly string[] {
  return (act.memo as ReservedMemo | null)?.planned ?? []; // as: `reserveKit` wrote it, or an older one nothing
}

async function standTrouble(tx: Tx, act: KnownAct, builds: readonly string[], wants: BuildState): Promise<Refusal | null> {
  for (const id of builds) {
    const wrong = await stateTrouble(tx, act, id, [wants]);
    if (wrong) return wrong;
  }
  return null;
}

/** A pick for a build goes back while the build is being picked and nothing of it was returned or used up. */
export const undoPicked: Unwind = {
  async trouble(tx, act) {
    const memo = memoOf(act);
    const wrong = await stateTrouble(tx, act, memo.build, ['picking']);
    if (wrong) return wrong;
    const returned = (await changedTakes(tx, memo)).some(({ take, did }) => take.picked - did.picked < take.returned);
    return returned ? { code: 'not-undoable', args: { act: act.id, why: 'returned-since' } } : null;
  },
  async after(tx, act, _undo, change) {
    const memo = memoOf(act);
    for (const { take, did } of await changedTakes(tx, memo)) {
      const picked = take.picked - did.picked;
      const open = did.state === 'open' && picked < take.planned;
      await setTake(tx, { ...take, picked, state: open ? 'open' : take.state });
    }
    const some = (await takesOf(tx, memo.build)).some((take) => take.picked > 0);
    await setBuild(tx, memo.build, some ? 'picking' : 'reserved', null);
    return settleTouched(tx, change, memo);
  },
};

export const undoLeftovers: Unwind = {
  trouble: (tx, act) => stateTrouble(tx, act, memoOf(act).build, ['picking', 'built']),
  async after(tx, act, _undo, change) {
    const memo = memoOf(act);
    await takeReturnsBack(tx, memo);
    return settleTouched(tx, change, memo);
  },
};

export const undoBuilt: Unwind = {
  trouble: (tx, act) => stateTrouble(tx, act, memoOf(act).build, ['built']),
  after: restoreState,
};

export const undoCancelled: Unwind = {
  trouble: (tx, act) => stateTrouble(tx, act, memoOf(act).build, ['cancelled']),
  async after(tx, act, undo, change) {
    await takeReturnsBack(tx, memoOf(act));
    return restoreState(tx, act, undo, change);
  },
};

function memoOf(act: KnownAct): KitMemo {
  return act.memo as KitMemo; // as: the act on the kit wrote it
}

async function stateTrouble(tx: Tx, act: KnownAct, id: string, wants: readonly BuildState[]): Promise<Refusal | null> {
  const build = await findBuild(tx, id);
  if (!build || wants.includes(build.state)) return null;
  return { code: 'not-undoable', args: { act: act.id, why: 'build-went-on', build: build.name, state: build.state } };
}

type Did = KitMemo['takes'][number];

async function changedTakes(tx: Tx, memo: KitMemo): Promise<{ take: Take; did: Did }[]> {
  const takes = new Map((await takesOf(tx, memo.build)).map((take) => [take.id, take]));
  return memo.takes.flatMap((did) => {
    const take = takes.get(did.take);
    return take ? [{ take, did }] : [];
  });
}

async function takeReturnsBack(tx: Tx, memo: KitMemo): Promise<void> {
  for (const { take, did } of await changedTakes(tx, memo))
    await setTake(tx, { ...take, returned: take.returned - did.returned });
}

async function restoreState(tx: Tx, act: KnownAct, _undo: string, change: number): Promise<string[]> {
  const memo = memoOf(act);
  await setBuild(tx, memo.build, memo.state, memo.made);
  return settle(tx, change, memo.build);
}

async function settleTouched(tx: Tx, change: number, memo: KitMemo): Promise<string[]> {
  const bags = (await changedTakes(tx, memo)).map(({ take }) => take.bag);
  await touchBags(tx, change, bags);
  return [...new Set([...bags, ...(await settle(tx, change, memo.build))])];
}
