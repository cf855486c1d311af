import type { Kind, Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { isBlank, isPartNumber } from './cell-shapes.ts';

/** more are a catalogue, not a choice */
const MOST = 12;

/**
 * The parts that a cell of alternates names, of the kind of the line's own part: `BC547B; BC550C` → two parts. Cut at
 * semicolons, commas before a blank, bars, line ends, and at a stroke or the word `or` between blanks. Common practice, no source.
 */
export function readAlternates(cells: readonly string[], kind: Kind): Part[] {
  const pieces = cells
    .flatMap((cell) => cell.split(/[;|\n]+|,\s+|,(?=[A-Z]{2})|\s+(?:\/|or|oder|ou|o|eller|lub|или)\s+/u))
    .map((piece) => piece.trim());
  const known = [...new Set(pieces.filter((piece) => !isBlank(piece) && /\d/.test(piece)))].slice(0, MOST);
  const hint = kind === 'other' ? {} : { kind };
  return known.map((piece) => readPart(piece, isPartNumber(piece) ? { ...hint, fields: { partNumber: piece } } : hint).part);
}
