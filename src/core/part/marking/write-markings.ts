import { decimal, shift } from '#core/quantity/decimal.ts';
import { writeVoltageCode } from '#core/quantity/mark.ts';
import { writeToleranceLetter, type Tolerance } from '#core/quantity/tolerance.ts';
import { numberFact, type Part } from '../part.ts';
import { writeBands } from './bands.ts';
import type { Look } from './marking.ts';
import { NOTATION_ROWS, OF_LOOK, type NotationRow } from './notations.data.ts';

/** A marking that may stand on a part: bands by their colours with blanks between, or what is printed. */
export interface Marking {
  readonly notation: string;
  readonly look: Look;
  readonly text: string;
}

/**
 * Every marking that a part of these facts may carry. A notation that can't say a fact leaves it out; one that implies another
 * tolerance than the part's is not given. `readMarking` and `readBands` read each back to the same value.
 * 4.7 kΩ ±5 % → yellow violet red gold, `472`, `4701`, `4K7`.
 */
export function writeMarkings(part: Part): Marking[] {
  const bands = writeBands(part).map(({ notation, bands }) => ({ notation, look: 'bands' as const, text: bands.join(' ') }));
  return [...bands, ...NOTATION_ROWS.flatMap((row) => writeRow(row, part))];
}

function writeRow(row: NotationRow, part: Part): Marking[] {
  const value = numberFact(part, 'value');
  const { kind, unit } = OF_LOOK[row.look];
  if (part.kind !== kind || value === null || part.facts.value?.unit !== unit || row.tantalum) return [];
  if (row.look === 'can' ? part.facts.polarised?.value !== 'yes' : part.facts.polarised?.value === 'yes') return [];
  const tolerance = toleranceOf(part);
  if (row.tolerance !== undefined && !isShare(tolerance, row.tolerance)) return [];
  const marks = row.marks.write(shift(value, -row.power));
  if (marks === null) return [];
  // chips are printed without their tolerance (makers' sheets)
  const letter = tolerance && row.letters && row.look !== 'chip' ? writeToleranceLetter(tolerance) : null;
  const volts = row.notation === 'three-figures' && row.rated ? numberFact(part, 'voltage') : null;
  const code = volts === null ? null : writeVoltageCode(volts);
  const text = `${code ?? ''}${marks}${letter !== null && row.letters?.includes(letter) ? letter : ''}`;
  return [{ notation: row.notation, look: row.look, text }];
}

function isShare(tolerance: Tolerance | null, share: string): boolean {
  return (
    tolerance !== null && tolerance.unit === 'fraction' && tolerance.low === tolerance.high && tolerance.low === decimal(share)
  );
}

/** A share, or picofarads; another unit has no letter. */
function toleranceOf(part: Part): Tolerance | null {
  const [low, high] = [numberFact(part, 'tolerance-low'), numberFact(part, 'tolerance-high')];
  const unit = part.facts['tolerance-low']?.unit;
  return low === null || high === null || (unit !== 'fraction' && unit !== 'F') ? null : { low, high, unit };
}
