import { buildIndex, updateIndex, type FindIndex } from '#core/find/find-index.ts';
import type { Bag, Box, Stock } from '#core/stock/stock.ts';
import type { Lab } from '#db/database.ts';
import { readStock, readStockSince, type StockChanges } from '#db/read-stock.ts';
import { readBegun } from '#db/setting.ts';

/** The stock in memory at one change number; use it at once, since the next look may bring it further. */
export interface StockNow {
  readonly change: number;
  readonly index: FindIndex;
  readonly boxes: readonly Box[];
  bag(number: number): Bag | null;
  /** the whole stock, bags by number */
  stock(): Stock;
}

/** Keeps the stock in memory as new as the database, whoever changes it: this process or another. */
export interface FollowedStock {
  current(): Promise<StockNow>;
}

/** Reads the stock whole at the first look, then only what changed since; looks wait for each other. */
export function followStock(lab: Lab): FollowedStock {
  let held: Held | null = null;
  let looking: Promise<Held> | null = null;
  const look = async (): Promise<Held> => {
    const change = await lab.change();
    if (held?.change === change) return held;
    // a number that went back: another lab was put in place of this one
    held = (held && change > held.change ? await next(lab, held) : null) ?? (await whole(lab));
    return held;
  };
  return {
    async current() {
      const before = looking;
      const mine = before ? before.then(look, look) : look();
      looking = mine;
      const now = await mine.finally(() => {
        if (looking === mine) looking = null;
      });
      return stockNow(now);
    },
  };
}

interface Held {
  readonly change: number;
  readonly index: FindIndex;
  readonly bags: Map<string, Bag>;
  readonly numbers: Map<number, string>;
  readonly boxes: readonly Box[];
}

/** What is held, brought as far as the lab is; null where the lab was emptied or restored meanwhile, and nothing held is true. */
async function next(lab: Lab, held: Held): Promise<Held | null> {
  const changes = await lab.read(async (tx) => {
    const begun = await readBegun(tx);
    return begun > held.change ? null : readStockSince(tx, held.change);
  });
  return changes && brought(held, changes);
}

async function whole(lab: Lab): Promise<Held> {
  const stock = await lab.read(readStock);
  return {
    change: stock.change,
    index: buildIndex(stock),
    bags: new Map(stock.bags.map((bag) => [bag.id, bag])),
    numbers: new Map(stock.bags.map((bag) => [bag.number, bag.id])),
    boxes: stock.boxes,
  };
}

function brought(held: Held, { change, bags, gone, boxes }: StockChanges): Held {
  const left = [...gone, ...bags.map((bag) => bag.id)];
  for (const id of left) {
    const before = held.bags.get(id);
    if (before && held.numbers.get(before.number) === id) held.numbers.delete(before.number);
    held.bags.delete(id);
  }
  for (const bag of bags) {
    held.bags.set(bag.id, bag);
    held.numbers.set(bag.number, bag.id);
  }
  return { ...held, change, boxes, index: updateIndex(held.index, bags, change, gone) };
}

function stockNow(held: Held): StockNow {
  return {
    change: held.change,
    index: held.index,
    boxes: held.boxes,
    bag: (number) => held.bags.get(held.numbers.get(number) ?? '') ?? null,
    stock: () => ({
      change: held.change,
      bags: [...held.bags.values()].toSorted((a, b) => a.number - b.number),
      boxes: held.boxes,
    }),
  };
}
