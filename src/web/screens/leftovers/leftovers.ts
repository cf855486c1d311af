import type { KitTakeView, KitView } from '#api/kits.ts';
import { readSum } from '#core/quantity/sum.ts';

/** Texts typed, by take; a take that nobody typed at holds what is expected. */
export type Typed = Readonly<Record<string, string>>;

export interface Back {
  readonly take: KitTakeView;
  readonly text: string;
  /** whole number from 0 to what is out; null where it is none */
  readonly pieces: number | null;
  readonly out: number;
}

const BY_CELL = (a: KitTakeView, b: KitTakeView): number => a.tray - b.tray || a.cell - b.cell || a.bag - b.bag;

/** What may come back, in the order of the cells; only where something is out. */
export function backsOf(takes: readonly KitTakeView[], typed: Typed): Back[] {
  return takes
    .filter(({ picked, returned }) => picked > returned)
    .toSorted(BY_CELL)
    .map((take) => {
      const text = typed[take.id] ?? String(take.expected);
      const out = take.picked - take.returned;
      const read = readSum(text);
      return { take, text, out, pieces: read.kind === 'sum' && read.total <= out ? read.total : null };
    });
}

export interface BackSum {
  readonly pieces: number;
  readonly bags: number;
  /** every field holds a number that can be */
  readonly sound: boolean;
}

export function sumOfBacks(backs: readonly Back[]): BackSum {
  const some = backs.filter(({ pieces }) => pieces !== null && pieces > 0);
  return {
    pieces: some.reduce((sum, { pieces }) => sum + (pieces ?? 0), 0),
    bags: new Set(some.map(({ take }) => take.bag)).size,
    sound: backs.every(({ pieces }) => pieces !== null),
  };
}

export const returnsOf = (backs: readonly Back[]): { take: string; quantity: number }[] =>
  backs.flatMap(({ take, pieces }) => (pieces ? [{ take: take.id, quantity: pieces }] : []));

interface KitBack {
  readonly build: Pick<KitView['build'], 'returned'>;
  readonly takes: readonly KitTakeView[];
}

/**
 * What is said to be used up or lost when the kit is closed: cells from which something should still come. Asked only once something
 * came back, or where 0 was typed for all: the way to close is no way around taking back what is there.
 */
export function restOf({ build, takes }: KitBack, { pieces, sound }: BackSum): { take: string; quantity: number }[] {
  if (build.returned === 0 && (!sound || pieces > 0)) return [];
  return takes.flatMap(({ id, expected }) => (expected > 0 ? [{ take: id, quantity: 0 }] : []));
}

const nameOf = (build: string): string => `bagatelle-leftovers-${build}`;

/** What was typed for this kit and is not booked yet; what can't be read is nothing. */
export function readTyped(storage: Pick<Storage, 'getItem'>, build: string): Typed {
  const text = storage.getItem(nameOf(build));
  if (text === null) return {};
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([, value]) => typeof value === 'string'));
  } catch (error) {
    if (error instanceof SyntaxError) return {};
    throw error;
  }
}

export function keepTyped(storage: Pick<Storage, 'setItem' | 'removeItem'>, build: string, typed: Typed): void {
  if (Object.keys(typed).length === 0) storage.removeItem(nameOf(build));
  else storage.setItem(nameOf(build), JSON.stringify(typed));
}
