import type { FoundAnswer, FoundBag } from '#api/bags.ts';
import { MOST_FOUND } from '../../lab/questions.ts';
import { FIND_PAGE, sayHeld, sayNotHeld, sayOtherwise } from '#say/en/find-page.ts';

export type GroupName = FoundBag['group'];

export interface FoundGroup {
  readonly group: GroupName;
  readonly bags: readonly FoundBag[];
}

const ORDER: readonly GroupName[] = ['typed', 'package', 'near', 'exhausted'];

/** As typed, another package, nearest, exhausted; a group without bags is left out, the order in a group is the lab's. */
export function groupsOf(found: readonly FoundBag[]): FoundGroup[] {
  return ORDER.map((group) => ({ group, bags: found.filter((bag) => bag.group === group) })).filter(
    ({ bags }) => bags.length > 0,
  );
}

/** The rows as they stand on the screen. */
export const rowsOf = (groups: readonly FoundGroup[]): number[] => groups.flatMap(({ bags }) => bags.map(({ bag }) => bag));

/** The next row up or down; the first where none is chosen; null at an end. */
export function stepFrom(rows: readonly number[], bag: number | null, by: 1 | -1): number | null {
  const at = bag === null ? -1 : rows.indexOf(bag);
  if (at < 0) return rows[by === 1 ? 0 : rows.length - 1] ?? null;
  return rows[at + by] ?? null;
}

export interface Sentence {
  readonly title: string;
  readonly why: string | null;
}

/** The page's one sentence, and a line under it where nothing answers all that was typed. */
export function answerOf({ read, found }: Pick<FoundAnswer, 'read' | 'found'>): Sentence {
  const of = (group: GroupName): number => found.filter((bag) => bag.group === group).length;
  const held = found.filter((bag) => bag.group === 'typed');
  if (held.length === 0) {
    const why = sayOtherwise({ package: of('package'), near: of('near'), exhausted: of('exhausted') });
    return { title: sayNotHeld(askedOf({ read })), why };
  }
  const unit = held[0]?.unit ?? 'piece';
  const alike = held.every((bag) => bag.unit === unit);
  const onHand = alike ? held.reduce((sum, bag) => sum + bag.onHand, 0) : null;
  return { title: sayHeld({ bags: Math.min(held.length, MOST_FOUND), onHand, unit }, held.length > MOST_FOUND), why: null };
}

/** What was asked as it was read, in the order of typing: `4.7 kΩ resistor, package 0805`. */
export function askedOf({ read }: Pick<FoundAnswer, 'read'>): string {
  const asked = read.filter((piece) => piece.how !== 'filled');
  return asked.map((piece) => (piece.how === 'unread' ? `“${piece.typed}”` : piece.means)).join(', ');
}

/** Why a bag that is not as typed was found; what agrees needs no second voice. */
export const whyOf = (bag: FoundBag): string => (bag.group === 'typed' && bag.full ? '' : bag.why.join(', '));

/** What the row says of a bag that can't be taken as it is. */
export function standsAs(bag: Pick<FoundBag, 'onHand' | 'state'>): string | null {
  if (bag.state === 'astray') return FIND_PAGE.astray;
  return bag.onHand === 0 ? FIND_PAGE.exhausted : null;
}
