import type { Chance } from './random.ts';
import { ACCEPTED, BUILDS, REVISIONS, type BuiltBoard, type SavedRevision } from './scenario/boards.data.ts';
import { DELIVERIES } from './scenario/deliveries.data.ts';
import { EVENTS } from './scenario/events.data.ts';

/** What one act of the story does. */
export type Deed =
  | { readonly did: 'receive'; readonly delivery: string }
  | { readonly did: 'pick' | 'return'; readonly bag: number; readonly quantity: number }
  | { readonly did: 'pick-in-hand'; readonly bag: number; readonly more: number }
  | { readonly did: 'count'; readonly bag: number; readonly off: number }
  | { readonly did: 'set-aside'; readonly bag: number; readonly state: 'astray' | 'sound' }
  | { readonly did: 'undo'; readonly of: string }
  | { readonly did: 'save-board'; readonly saved: SavedRevision }
  | { readonly did: 'accept'; readonly board: string; readonly row: number; readonly bag: number }
  | { readonly did: 'reserve' | 'pick-kit' | 'finish' | 'leftovers' | 'cancel'; readonly build: BuiltBoard };

/** One act: `name` is its own for ever, since ids and chances come from it. */
export interface StoryAct {
  readonly name: string;
  /** UTC instant */
  readonly at: string;
  readonly who: string;
  readonly note?: string;
  readonly deed: Deed;
}

const PEOPLE = ['Maren Oduya', 'Tobias Quell', 'Ines Farrow'] as const;
/** Bags that a breadboard evening takes from: plenty in them, whatever two years take out. */
const EVERYDAY = [
  2, 5, 7, 10, 11, 13, 16, 19, 21, 23, 34, 36, 48, 49, 51, 52, 67, 72, 75, 79, 98, 101, 113, 116, 121, 122, 135, 136, 140, 143,
  145, 148, 243, 245, 250, 254,
] as const;
const FIRST_MONTH = 2025 * 12 + 0;
const MONTHS = 23;

/** Two years of the lab as dated acts, in their order; the same chance gives the same story. */
export function story(chance: Chance): StoryAct[] {
  const acts = [...deliveries(), ...boards(), ...BUILDS.flatMap(ofBuild), ...events(), ...evenings(chance), ...counts(chance)];
  return acts
    .map((act, at) => ({ act, at }))
    .toSorted((a, b) => (a.act.at < b.act.at ? -1 : a.act.at > b.act.at ? 1 : a.at - b.at))
    .map(({ act }) => act);
}

function deliveries(): StoryAct[] {
  return DELIVERIES.map(({ key, day, who, note }) => ({
    name: `delivery ${key}`,
    at: `${day}T09:10:00.000Z`,
    who,
    ...(note && { note }),
    deed: { did: 'receive', delivery: key },
  }));
}

function boards(): StoryAct[] {
  const saved = REVISIONS.map((saved): StoryAct => ({
    name: `board ${saved.board} ${saved.revision}`,
    at: `${saved.day}T10:00:00.000Z`,
    who: saved.who,
    deed: { did: 'save-board', saved },
  }));
  const accepted = ACCEPTED.map((one): StoryAct => {
    const first = REVISIONS.find(({ board }) => board === one.board);
    return {
      name: `accept ${one.board} ${one.row}`,
      at: `${first?.day}T10:30:00.000Z`,
      who: first?.who ?? PEOPLE[0],
      deed: { did: 'accept', ...one },
    };
  });
  return [...saved, ...accepted];
}

function ofBuild(build: BuiltBoard): StoryAct[] {
  const { key, who, reserved, picked, finished, cancelled, undone } = build;
  const act = (
    did: 'reserve' | 'pick-kit' | 'finish' | 'leftovers' | 'cancel',
    day: string | undefined,
    time: string,
  ): StoryAct[] =>
    day === undefined ? [] : [{ name: `${did} ${key}`, at: `${day}T${time}:00.000Z`, who, deed: { did, build } }];
  const back: StoryAct[] = undone
    ? [{ name: `undo ${key}`, at: `${undone}T17:00:00.000Z`, who, deed: { did: 'undo', of: `reserve ${key}` } }]
    : [];
  return [
    ...act('reserve', reserved, '13:00'),
    ...act('pick-kit', picked, '14:00'),
    ...act('finish', finished, '16:00'),
    ...act('leftovers', finished, '16:20'),
    ...act('cancel', cancelled, '16:40'),
    ...back,
  ];
}

function events(): StoryAct[] {
  return EVENTS.map(({ name, day, who, note, ...deed }, at) => ({
    name,
    at: `${day}T11:${String(10 + (at % 40)).padStart(2, '0')}:00.000Z`,
    who,
    ...(note && { note }),
    deed,
  }));
}

/** Breadboard evenings: a few parts out, some of them back two days later. */
function evenings(chance: Chance): StoryAct[] {
  return months().flatMap((month) =>
    Array.from({ length: chance.whole(`evenings ${month}`, 3, 6) }, (_, at): StoryAct[] => {
      const name = `evening ${month} ${at + 1}`;
      const [bag, day, quantity] = [
        chance.pick(`${name} bag`, EVERYDAY),
        chance.whole(`${name} day`, 2, 18),
        chance.whole(`${name} quantity`, 2, 5),
      ];
      const who = chance.pick(`${name} who`, PEOPLE);
      const out: StoryAct = {
        name,
        at: `${month}-${two(day)}T19:${two(at * 7)}:00.000Z`,
        who,
        note: 'breadboard evening',
        deed: { did: 'pick', bag, quantity },
      };
      const back = chance.whole(`${name} back`, 0, quantity - 1);
      if (back === 0) return [out];
      return [
        out,
        {
          name: `${name} back`,
          at: `${month}-${two(day + 2)}T18:${two(at * 7)}:00.000Z`,
          who,
          deed: { did: 'return', bag, quantity: back },
        },
      ];
    }).flat(),
  );
}

/** A few bags each month, most of them right; small parts are off by one or two more often than they should be. */
function counts(chance: Chance): StoryAct[] {
  return months().flatMap((month) =>
    Array.from({ length: 6 }, (_, at): StoryAct => {
      const name = `count ${month} ${at + 1}`;
      const bag = chance.pick(`${name} bag`, EVERYDAY);
      const off = chance.pick(`${name} off`, [0, 0, 0, 0, -1, 0, -2, 0, 1, 0]);
      return {
        name,
        at: `${month}-22T15:${two(at * 4)}:00.000Z`,
        who: chance.pick(`${name} who`, PEOPLE),
        deed: { did: 'count', bag, off },
      };
    }),
  );
}

function months(): string[] {
  return Array.from(
    { length: MONTHS },
    (_, at) => `${Math.floor((FIRST_MONTH + at) / 12)}-${two(((FIRST_MONTH + at) % 12) + 1)}`,
  );
}

function two(number: number): string {
  return String(number).padStart(2, '0');
}
