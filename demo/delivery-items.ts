import type { LotInput, ReceivedItem } from '#actions/inputs.ts';
import { readPart } from '#core/part/read-part.ts';
import type { Kind } from '#core/part/part.ts';
import { CAPACITORS } from './scenario/capacitors.data.ts';
import { DELIVERIES, TOP_UPS } from './scenario/deliveries.data.ts';
import { ELECTROMECHANICS } from './scenario/electromechanics.data.ts';
import { MECHANICAL } from './scenario/mechanical.data.ts';
import { RESISTORS } from './scenario/resistors.data.ts';
import type { BagGroup, BagRow, Delivery } from './scenario/scenario.ts';
import { SEMICONDUCTORS } from './scenario/semiconductors.data.ts';

const PLACES = 60;
const BOXES = ['A', 'B', 'C', 'D', 'E'] as const;

/** Every bag of the demo, box by box. */
export const BAG_GROUPS: readonly BagGroup[] = [
  ...RESISTORS,
  ...CAPACITORS,
  ...SEMICONDUCTORS,
  ...ELECTROMECHANICS,
  ...MECHANICAL,
];

/** What a delivery brings: new bags with what is written on them as it is read, and more for bags that are there. */
export function deliveryItems(key: string): ReceivedItem[] {
  const delivery = DELIVERIES.find((one) => one.key === key);
  if (!delivery) throw new Error(`no delivery ${key}`);
  const fresh = BAG_GROUPS.filter((group) => group.delivery === key).flatMap(({ kind, bags }) =>
    bags.map((bag) => newBag(kind, bag, delivery)),
  );
  const more = TOP_UPS.filter(([of]) => of === key).map(([, bag, quantity, cents]): ReceivedItem => ({
    bag,
    quantity,
    lot: lotOf(delivery, cents, quantity),
  }));
  return [...fresh, ...more];
}

function newBag(kind: Kind, [number, text, quantity, cents, extra = {}]: BagRow, delivery: Delivery): ReceivedItem {
  const { holder, unit, state, sure, fields, note } = extra;
  const hints = fields ? { kind, fields: { description: text, ...fields } } : { kind };
  const { part } = readPart(text, hints);
  return {
    bag: number,
    quantity,
    part: { ...part, text: note ? `${text} (${note})` : text },
    box: boxOf(number),
    place: String(((number - 1) % PLACES) + 1),
    ...(holder && { holder }),
    ...(unit && { unit }),
    ...(state && { state }),
    ...(sure !== undefined && { sure }),
    lot: lotOf(delivery, cents, quantity),
  };
}

/** Numbers run through the boxes, sixty to each: 61 is the first place of box B. */
function boxOf(number: number): string {
  const box = BOXES[Math.floor((number - 1) / PLACES)];
  if (box === undefined) throw new Error(`no box for bag ${number}`);
  return box;
}

function lotOf({ supplier, day }: Delivery, cents: number, pieces: number): LotInput {
  const price = cents > 0 ? { price: { micros: cents * 10_000, currency: 'EUR', pieces } } : {};
  return { received: day, ...(supplier !== null && { supplier }), ...price };
}
