/** What the page that finds bags says. */
import { counted, figures } from './ui.ts';

export const FIND_PAGE = {
  field: 'Find a part, a bag, a box…',
  help: 'Works too: 0.1u 50v, M3x8, bag 114, a part number',
  looking: 'Looking…',
  reading: 'Reading the lab…',
  caption: 'Bags that were found',
  lastCaption: 'Bags touched last',
  columns: {
    bag: 'Bag',
    value: 'Value',
    what: 'What it is',
    code: 'Part code',
    box: 'Box',
    onHand: 'On hand',
    free: 'Free',
  },
  free: 'free',
  groups: {
    typed: { name: 'As you typed it', more: null },
    package: { name: 'Same value, another package', more: null },
    near: { name: 'Nearest', more: 'not what was asked; each says why' },
    exhausted: { name: 'Exhausted', more: 'the number stays with the part; the place in the box is empty' },
  },
  exhausted: 'exhausted',
  astray: 'astray',
  noBox: 'no box',
  last: 'Bags touched last',
  noneTouched: 'No bag has moved yet.',
  ways: 'Ways to ask',
  keys: { row: 'choose', open: 'open', number: 'go to that bag', clear: 'close or clear' },
  askOtherwise: 'Ask with fewer words',
  askOtherwiseWhy: 'A value alone finds the most: 4k7, 100n, M3. A bag number finds its bag.',
} as const;

export const WAYS_TO_ASK = [
  ['4k7, 4R7, 0.1u 50v', 'values as they are written on drawings'],
  ['M3x8', 'screws by thread and length'],
  ['114', 'a bag'],
  ['box C', 'what is in a box'],
  ['>=25V x7r', 'a rating and better'],
] as const;

interface FoundSum {
  readonly bags: number;
  /** what they hold together, or null where they count in different units */
  readonly onHand: number | null;
  readonly unit: string;
}

/** `2 bags hold it: 598 on hand.`; `more` where the list was cut. */
export function sayHeld({ bags, onHand, unit }: FoundSum, more: boolean): string {
  if (more) return `More than ${figures(bags)} bags hold it.`;
  const held = counted(bags, 'bag holds it', 'bags hold it');
  return onHand === null ? `${held}.` : `${held}: ${sayAmount(onHand, unit)} on hand.`;
}

export const sayNotHeld = (asked: string): string => `No bag holds ${asked}.`;

/** What stands under the sentence where nothing answers all of it. */
export function sayOtherwise({
  package: other,
  near,
  exhausted,
}: Readonly<Record<'package' | 'near' | 'exhausted', number>>): string {
  const said = [
    other > 0 && counted(other, 'bag has it in another package', 'bags have it in another package'),
    near > 0 && counted(near, 'bag is near it', 'bags are near it'),
    exhausted > 0 && counted(exhausted, 'bag of it is exhausted', 'bags of it are exhausted'),
  ].filter((part) => part !== false);
  return said.length > 0 ? `${said.join('; ')}.` : 'Nothing is near it either.';
}

/** `240`, `1500 mm` */
export const sayAmount = (amount: number, unit: string): string =>
  unit === 'piece' ? figures(amount) : `${figures(amount)}\u202f${unit}`;

/** What the lab holds, before anything is typed. */
export const sayLab = (bags: number, boxes: number): string =>
  `${counted(bags, 'bag', 'bags')} in ${counted(boxes, 'box', 'boxes')}.`;

export function sayLabMore(exhausted: number, toCount: number): string {
  const said = [exhausted > 0 && `${figures(exhausted)} exhausted`, toCount > 0 && `${figures(toCount)} to count`].filter(
    (part) => part !== false,
  );
  return said.length > 0 ? `${said.join(', ')}. Type a value, a bag number or a box.` : 'Type a value, a bag number or a box.';
}

export const sayEmptySince = (day: string): string => `empty since ${day}`;
