import type { Action, Clock, Done } from '#actions/action.ts';
import { cancelBuild } from '#actions/cancel-build.ts';
import { choose } from '#actions/choose.ts';
import { count } from '#actions/count.ts';
import { finishBuild } from '#actions/finish-build.ts';
import { followStock } from '#actions/follow-stock.ts';
import type { ActInput } from '#actions/inputs.ts';
import { perform } from '#actions/perform.ts';
import { pick } from '#actions/pick.ts';
import { pickForBuild } from '#actions/pick-for-build.ts';
import { receive } from '#actions/receive.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { savedBom } from '#actions/saved-bom.ts';
import { returnLeftovers } from '#actions/return-leftovers.ts';
import { returnToBag } from '#actions/return-to-bag.ts';
import { saveBoard } from '#actions/save-board.ts';
import { setAside } from '#actions/set-aside.ts';
import { undo } from '#actions/undo.ts';
import type { Lab } from '#db/database.ts';
import { Refused } from '#db/refused.ts';
import { demandKey } from '#core/part/demand-key.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import { boardLines } from './board-lines.ts';
import { deliveryItems } from './delivery-items.ts';
import { kitNow, leftovers, picksOf } from './kits.ts';
import { chance, type Chance } from './random.ts';
import { REVISIONS, type BuiltBoard } from './scenario/boards.data.ts';
import { story, type StoryAct } from './story.ts';

export interface DemoFilled {
  readonly acts: number;
  /** instant of the last act */
  readonly until: string;
}

/** What the telling has to remember while it goes on. */
interface Teller {
  readonly lab: Lab;
  readonly chance: Chance;
  readonly clock: Clock | null;
  readonly stock: ReturnType<typeof followStock>;
  /** ids of the builds by their key in the scenario */
  readonly builds: Map<string, string>;
}

export const DEMO_SEED = 1;

/**
 * Fills an empty lab with the demo: every act of the story by the same actions that a person uses. The same seed gives the same
 * lab. Without a clock each act is recorded when it happened.
 */
export async function fillDemo(lab: Lab, clock: Clock | null = null, seed = DEMO_SEED): Promise<DemoFilled> {
  const teller: Teller = { lab, clock, chance: chance(seed), stock: followStock(lab), builds: new Map() };
  const acts = story(teller.chance);
  for (const act of acts) await tell(teller, act);
  return { acts: acts.length, until: acts.at(-1)?.at ?? '' };
}

async function tell(teller: Teller, act: StoryAct): Promise<void> {
  const told: ActInput = {
    id: teller.chance.uuid(act.name),
    happenedAt: act.at,
    ...(act.note !== undefined && { note: act.note }),
  };
  const outcome =
    act.deed.did === 'reserve' ? await reserve(teller, act, told, act.deed.build) : await tellDeed(teller, act, told);
  // an empty lab repeats nothing: somebody else is filling it at the same time
  if (outcome.ok ? isRepeat(outcome.value) : outcome.refusal.code === 'id-reused') throw new Refused('not-empty');
  // the story is ours: an act of it that is refused is a fault of the story
  if (!outcome.ok) throw new Error(`the demo's "${act.name}" was refused: ${JSON.stringify(outcome.refusal)}`);
}

function isRepeat(result: unknown): boolean {
  return typeof result === 'object' && result !== null && 'repeat' in result && result.repeat === true;
}

async function tellDeed(teller: Teller, { at, who, deed }: StoryAct, told: ActInput): Promise<Outcome<unknown>> {
  const act = <Input extends ActInput, Result extends Done>(
    action: Action<Input, Result>,
    input: Input,
  ): Promise<Outcome<Result>> => perform(teller.lab, action, clockOf(teller, at), { name: who, device: null }, input);
  switch (deed.did) {
    case 'receive':
      return act(receive, { ...told, items: deliveryItems(deed.delivery) });
    case 'pick':
      return act(pick, { ...told, bag: deed.bag, quantity: deed.quantity });
    case 'pick-in-hand':
      return act(pick, { ...told, bag: deed.bag, quantity: (await onHand(teller, deed.bag)) + deed.more, inHand: true });
    case 'return':
      return act(returnToBag, { ...told, bag: deed.bag, quantity: deed.quantity });
    case 'count':
      return act(count, { ...told, bag: deed.bag, total: Math.max(0, (await onHand(teller, deed.bag)) + deed.off) });
    case 'set-aside':
      return act(setAside, { ...told, bag: deed.bag, state: deed.state });
    case 'undo':
      return act(undo, { ...told, act: teller.chance.uuid(deed.of) });
    case 'save-board': {
      const { board, revision, file } = deed.saved;
      return act(saveBoard, { ...told, board, revision, source: file, lines: boardLines(deed.saved) });
    }
    case 'accept':
      return act(choose, { ...told, board: deed.board, demand: demandOf(deed.board, deed.row), bag: deed.bag, accept: true });
    case 'pick-kit':
      return act(pickForBuild, {
        ...told,
        build: buildOf(teller, deed.build),
        picks: picksOf(await kitNow(teller.lab, buildOf(teller, deed.build)), deed.build.short),
      });
    case 'finish':
      return act(finishBuild, { ...told, build: buildOf(teller, deed.build), made: deed.build.boards });
    case 'leftovers':
      return act(returnLeftovers, {
        ...told,
        build: buildOf(teller, deed.build),
        returns: leftovers(await kitNow(teller.lab, buildOf(teller, deed.build)), teller.chance),
      });
    case 'cancel':
      return act(cancelBuild, { ...told, build: buildOf(teller, deed.build) });
    default:
      throw new Error(`"${deed.did}" is told elsewhere`);
  }
}

function clockOf({ clock }: Teller, at: string): Clock {
  return clock ?? { now: () => at };
}

async function reserve(teller: Teller, { at, who }: StoryAct, told: ActInput, build: BuiltBoard): Promise<Outcome<unknown>> {
  const { board, revision, boards, name } = build;
  const of = { board, revision };
  const input = { ...told, of, boards, spares: true, name, anyway: true };
  const doer = { name: who, device: null };
  const outcome = await reserveBom(teller.lab, teller.stock, clockOf(teller, at), doer, input, () => savedBom(teller.lab, of));
  const made = outcome.ok ? outcome.value.result.builds[0]?.build : undefined;
  if (made !== undefined) teller.builds.set(build.key, made);
  return outcome;
}

async function onHand({ stock }: Teller, number: number): Promise<number> {
  const bag = (await stock.current()).bag(number);
  if (!bag) throw new Error(`the story speaks of bag ${number}, which is not there`);
  return bag.onHand;
}

function buildOf({ builds }: Teller, { key }: BuiltBoard): string {
  const id = builds.get(key);
  if (id === undefined) throw new Error(`${key} was not reserved`);
  return id;
}

function demandOf(board: string, row: number): string {
  const newest = REVISIONS.findLast((one) => one.board === board);
  const line = newest && boardLines(newest).find((one) => one.row === row);
  if (!line) throw new Error(`${board} has no row ${row}`);
  return demandKey(line.part);
}
