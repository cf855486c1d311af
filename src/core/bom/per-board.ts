import type { Doubt } from '#core/part/doubt.ts';
import type { Kind, Part } from '#core/part/part.ts';
import type { ReadRow } from './bom.ts';

/** Kinds of which a line often has one mark for a handful of pieces. Common practice, no source. */
const HARDWARE: ReadonlySet<Kind> = new Set<Kind>(['screw', 'nut', 'washer', 'standoff', 'wire', 'mechanical']);
/** hardware and mechanical parts by their class (IEEE 315: H, HW, MP, W) */
const HARDWARE_REF = /^(?:H|HW|MP|MH|ME|W|SCR|SCREW|NUT|SPACER)\d*$/i;

/**
 * Pieces of a line for one board: what a person said, else its refs, or its quantity where it has none. Of hardware one ref may stand for several pieces:
 * `H1`, quantity 4, screw M3 → 4; `C1`, quantity 4 → 1, and a doubt (`needDoubts`).
 */
export function perBoardOf({ part, refs, quantity, perBoard }: Pick<ReadRow, 'part' | 'refs' | 'quantity' | 'perBoard'>): number {
  if (perBoard !== undefined) return perBoard;
  if (refs.length === 0) return Math.ceil(quantity ?? 1);
  return isHardware(part, refs) ? Math.max(refs.length, Math.ceil(quantity ?? 0)) : refs.length;
}

function isHardware({ kind }: Part, refs: readonly string[]): boolean {
  return HARDWARE.has(kind) || (kind === 'other' && refs.every((ref) => HARDWARE_REF.test(ref)));
}

/** Several pieces without a ref in a table that names refs are a doubt: the refs may have been left out. Hardware needs none. */
export function unnamedDoubts({ kind }: Part, quantity: number | null): Doubt[] {
  if (quantity === null || quantity <= 1 || HARDWARE.has(kind) || kind === 'not-a-part') return [];
  return [{ field: 'quantity', code: 'quantity-not-refs', args: { quantity, refs: 0 } }];
}

/** A quantity that is not the number of the refs is kept as printed, with a doubt, unless one ref stands for a handful of hardware. */
export function needDoubts(part: Part, refs: readonly string[], quantity: number | null, fitted: boolean): Doubt[] {
  if (quantity === null || refs.length === 0 || quantity === refs.length || (!fitted && quantity === 0)) return [];
  if (refs.length === 1 && quantity > 1 && isHardware(part, refs)) return [];
  return [{ field: 'quantity', code: 'quantity-not-refs', args: { quantity, refs: refs.length } }];
}
