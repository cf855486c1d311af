import { expectedLeftovers } from '#actions/expected-leftovers.ts';
import { kitCautions } from '#actions/kit-cautions.ts';
import { kitLines, sparesOf } from '#actions/kit-lines.ts';
import type { KitView } from '#api/kits.ts';
import { readKitActs } from '#db/kit-acts.ts';
import { readKit } from '#db/read-builds.ts';
import { sayPart } from '#say/en/said.ts';
import type { Served } from './served.ts';

/** A build as its page shows it: its walk, its lines and what was done with it; null where there is none. */
export async function kitView({ lab, stock }: Served, id: string): Promise<KitView | null> {
  const found = await lab.read(async (tx) => ({ kit: await readKit(tx, id), acts: await readKitActs(tx, id) }));
  const { kit, acts } = found;
  if (!kit) return null;
  const now = await stock.current();
  const spares = sparesOf(kit);
  const takes = expectedLeftovers(kit).map(({ take, expected }) => {
    const bag = now.bag(take.bag);
    const said = bag ? sayPart(bag.part) : { name: take.text, rest: take.code };
    return {
      ...take,
      refs: [...take.refs],
      said,
      unit: bag?.unit ?? 'piece',
      spare: spares.get(take.id) ?? 0,
      expected,
      cautions: kitCautions(bag),
    };
  });
  const saidOf = new Map(takes.map(({ line, said }) => [line, said]));
  const lines = (await kitLines(lab, stock, kit)).map(({ line, row, refs, need, short, asks }) => ({
    line,
    row,
    refs: [...refs],
    said: asks ? sayPart(asks) : (saidOf.get(line) ?? { name: refs.join(' '), rest: '' }),
    need,
    short,
  }));
  return { build: kit.build, takes, lines, acts: acts.map((one) => ({ ...one, takes: [...one.takes] })) };
}
