import type { KitView } from '#api/kits.ts';
import { sayDoneBoxes, sayEmptied, sayKit, sayOf, sayShort } from '#say/en/kit-page.ts';
import { boxWalks, emptiedBags, isOpen, lies } from './walk.ts';

/** Can stops be picked? */
export const canPick = (kit: KitView): boolean => kit.build.state === 'reserved' || kit.build.state === 'picking';

/** Pieces that lie in the trays. */
export const outPieces = ({ takes }: KitView): number => takes.reduce((sum, take) => sum + lies(take), 0);

export const expectedPieces = ({ takes }: KitView): number => takes.reduce((sum, { expected }) => sum + expected, 0);

/** Something of a soldered kit should still be left over. */
export const awaitsReturn = (kit: KitView): boolean => kit.build.state === 'built' && expectedPieces(kit) > 0;

/** Bags, not stops: a bag that feeds two cells is one. */
function bagsIn({ takes }: KitView): { picked: number; all: number } {
  const open = new Set(takes.filter(isOpen).map(({ bag }) => bag));
  const all = new Set(takes.map(({ bag }) => bag));
  return { picked: all.size - open.size, all: all.size };
}

/** The page's sentence, and its reasons. */
export function kitAnswer(kit: KitView, next: { readonly bag: number; readonly box: string | null } | null): [string, string] {
  const { build, takes, lines } = kit;
  const { picked, all } = bagsIn(kit);
  const title = sayKit({
    state: build.state,
    picked,
    all,
    made: build.made,
    left: expectedPieces(kit),
    out: outPieces(kit),
    next,
  });
  const short = lines.filter((line) => line.short > 0);
  const going = canPick(kit);
  const done = boxWalks(takes).flatMap(({ box, open }) => (box !== null && open.length === 0 ? [box] : []));
  const why = [
    sayOf(build),
    going && next ? sayDoneBoxes(done) : '',
    going ? sayEmptied(emptiedBags(takes)) : '',
    going || build.state === 'planned'
      ? sayShort(
          short.length,
          short.reduce((sum, line) => sum + line.short, 0),
        )
      : '',
  ];
  return [title, why.filter(Boolean).join(' ')];
}

/** Boards for which nothing is short: of each line what lies in its cells, beside what one board needs. */
export function likelyMade({ build, lines, takes }: KitView): number {
  const reach = lines.flatMap(({ line, need }) => {
    if (need === 0) return [];
    const got = takes.filter((take) => take.line === line).reduce((sum, take) => sum + lies(take), 0);
    return [Math.floor((got * build.boards) / need)];
  });
  return Math.max(0, Math.min(build.boards, ...reach));
}
