import { TIDE } from './scenario/boards.data.ts';

/** Answers a question to the program: the object that a command prints with --json. */
export type Ask = (question: readonly string[]) => Promise<unknown>;

/** One step of the show: what it is for, what is typed, how it ends (0 unless said). */
export interface ShownStep {
  readonly say: string;
  readonly command: readonly string[] | ((ask: Ask) => Promise<readonly string[]>);
  readonly ends?: number;
}

const BUILD = 'Two loggers for the harbour';
const SHUNTS = 57;

/** as: both commands print what their `--json` promises */
async function onHand(ask: Ask, bag: number): Promise<number> {
  return ((await ask(['bag', String(bag), '--json'])) as { onHand: number }).onHand;
}

async function takes(ask: Ask): Promise<readonly { readonly bag: number; readonly cell: number; readonly planned: number }[]> {
  return ((await ask(['builds', BUILD, '--json'])) as { takes: { bag: number; cell: number; planned: number }[] }).takes;
}

/** The first stop of the walk that takes several pieces: there one can come up short. */
async function shortPick(ask: Ask): Promise<string[]> {
  const stop = (await takes(ask)).find(({ planned }) => planned > 4);
  if (!stop) throw new Error('the kit of the show has no stop with several pieces');
  return ['pick', '--build', BUILD, `${stop.cell}=${stop.planned - 1}`, '--short'];
}

export const SHOWN: readonly ShownStep[] = [
  { say: 'A lab to try things on: five boxes, three boards, two years of deliveries, builds and counts.', command: ['demo'] },
  {
    say: 'Find a part, however you write it. First as it is printed on a bag.',
    command: ['find', '4k7', '0805', '--limit', '3'],
  },
  { say: 'The same with a unit …', command: ['find', '4.7 kΩ 1%', '0805', '--limit', '3'] },
  { say: '… and as a BOM from elsewhere may have it.', command: ['find', '4700', '0805', '--limit', '3'] },
  {
    say: 'Put a BOM against the bags, for two boards: what serves, what a person must look at, what is missing.',
    command: ['match', TIDE, '--boards', '2'],
  },
  {
    say: 'One part is missing, so not one board could be built. The delivery has come: take it in.',
    command: ['receive', '10 SM712 TVS SOT-23', '--box', 'C', '--place', '34', '--from', 'Quayside'],
  },
  {
    say: 'A fuse is never taken by rule. We have looked: this one is right for this board, now and in its next revision.',
    command: ['choose', TIDE, '11', '214'],
  },
  {
    say: 'Plan the kit and promise the bags to it. Below: the lines, then the walk, each bag opened once.',
    command: ['kit', TIDE, '--boards', '2', '--reserve', '--name', BUILD],
  },
  { say: 'The sheet for the bench: the walk, and what lies in which cell of the tray.', command: ['builds', BUILD] },
  { say: 'Pick. One bag holds a piece less than it should: say so, and it goes on the count list.', command: shortPick },
  { say: 'All the rest is as planned.', command: ['pick', '--build', BUILD] },
  {
    say: 'Meanwhile somebody needs shunts. The record says that there are fewer than asked for, and refuses …',
    command: async (ask) => ['pick', String(SHUNTS), String((await onHand(ask, SHUNTS)) + 2)],
    ends: 1,
  },
  {
    say: '… but the hand holds them, and the shelf is always right: pick and correction in one act.',
    command: async (ask) => ['pick', String(SHUNTS), String((await onHand(ask, SHUNTS)) + 2), '--in-hand'],
  },
  { say: 'The boards are soldered.', command: ['finish', BUILD] },
  { say: 'What should be left in the cells is left: back into the bags.', command: ['return', '--build', BUILD, '--expected'] },
  {
    say: 'Count a bag: two are gone, nobody knows where.',
    command: async (ask) => ['count', '23', String((await onHand(ask, 23)) - 2)],
  },
  {
    say: 'They were under the mat. Take the count back; the act and its opposite both stay in the history.',
    command: ['undo', '--last'],
  },
  { say: 'Is every number in the lab what its history says?', command: ['check'] },
];
