/** What a bag holds by its records: 0 ≤ sure ≤ onHand. */
export interface Balance {
  readonly onHand: number;
  readonly sure: number;
}

/** One change of a balance, in the bag's unit. */
export interface Move {
  readonly delta: number;
  readonly sureDelta: number;
}

/** Taken out: 50 on hand, 30 sure, 5 taken → −5, −5; none sure → −5, 0, since what is taken may be what was not sure. */
export function takeOut(held: Balance, quantity: number): Move {
  return { delta: -quantity, sureDelta: -Math.min(held.sure, quantity) };
}

/** Put in: all of it sure, or as many as are said to be. */
export function putIn(quantity: number, sure: number = quantity): Move {
  return { delta: quantity, sureDelta: sure };
}

/** "I have them in my hand": the record is raised to what the hand holds, and that is sure. */
export function raiseTo(held: Balance, inHand: number): Move {
  return { delta: inHand - held.onHand, sureDelta: inHand - held.sure };
}

const SLIP_TIMES = 10;
const SLIP_PIECES = 1000;

/** So far above the record that a slip of the pen is likelier: 205 on hand, 1,000,000,000 in the hand. */
export function isSlip(onHand: number, inHand: number): boolean {
  return inHand > SLIP_TIMES * onHand && inHand - onHand > SLIP_PIECES;
}

/**
 * A count of `total`, taken when the person knew the balance `seen`; `later` came after that.
 * Posts total − seen, so what was picked meanwhile stays picked: seen 50, 5 picked meanwhile, counted 48 → −2, leaving 43.
 * Where later picks took more than the count leaves, the bag is at 0 and `contradicts`.
 */
export function countTo(held: Balance, seen: number, total: number): Move & { readonly contradicts: boolean } {
  const wanted = held.onHand + (total - seen);
  const after = Math.max(0, wanted);
  return { delta: after - held.onHand, sureDelta: after - held.sure, contradicts: wanted < 0 };
}

/** The move that takes another back; null where the bag would go below zero. Sure stays between 0 and on hand. */
export function opposite(held: Balance, move: Move): Move | null {
  const onHand = held.onHand - move.delta;
  if (onHand < 0) return null;
  const sure = Math.min(onHand, Math.max(0, held.sure - move.sureDelta));
  return { delta: onHand - held.onHand, sureDelta: sure - held.sure };
}

/** The balance after a move. */
export function apply(held: Balance, move: Move): Balance {
  return { onHand: held.onHand + move.delta, sure: held.sure + move.sureDelta };
}
