import { decimal, digitsOf, shift, type Decimal } from '#core/quantity/decimal.ts';
import { readVoltageCode } from '#core/quantity/mark.ts';
import { TANTALUM_VOLTS } from './codes.data.ts';
import type { Evidence, Look, MarkingRead, Piece, Reading, Unread } from './marking.ts';
import { NOTATION_ROWS, OF_LOOK, type NotationRow } from './notations.data.ts';
import { toleranceLetter, tolerancePieces } from './tolerance-letter.ts';
import { decodedFacts, ordered, plausible, rangeEvidence, say, valueEvidence } from './weigh.ts';

/** What a person sees beside the letters and figures. */
export interface MarkingLook {
  /** null: it may be any part */
  readonly look?: Exclude<Look, 'bands'> | null;
  /** a line stands under or over the figures, which makers use for different things */
  readonly underlined?: boolean;
}

const LONGEST = 24;
const LINES = /[\u0305\u0332\u0333\u035f]/u;
const TURNED: Readonly<Record<string, string>> = { 0: '0', 1: '1', 6: '9', 8: '8', 9: '6' };
const PATTERNS = new Map<NotationRow, RegExp>(NOTATION_ROWS.map((row) => [row, patternOf(row)]));

/** Voltage code or tantalum letter in front, the value, tolerance letter, then a voltage code or volts. */
function patternOf({ marks, letters, rated, tantalum }: NotationRow): RegExp {
  const value = `(?<marks>${marks.shape})`;
  if (tantalum) {
    const any = `[${Object.keys(TANTALUM_VOLTS).join('')}]`;
    return new RegExp(`^(?:(?<before>${any})${value}|(?<behind>${marks.shape})(?<after>${any}))$`);
  }
  const letter = letters ? `(?: ?(?<letter>[${letters}]))?` : '';
  if (!rated) return new RegExp(`^${value}${letter}$`);
  const volts = String.raw`(?:(?: ?/ ?| |(?<=[A-Z]))(?<volts>\d{1,4}(?:[.,]\d)?)(?<kilo>K)?V?)`;
  return new RegExp(`^(?:(?<front>[0-3][A-Z]) ?)?${value}${letter}(?:(?: |(?<=[A-Z]))(?<code>[0-3][A-Z])|${volts})?$`);
}

/**
 * Letters and figures printed on a part, in every way that they can be read, the most plausible first; never throws.
 * `"472"` on a chip → 4.7 kΩ; `"104K"` on a capacitor → 100 nF ±10 %; `"10R"` on a chip → 10 Ω, or 1.24 Ω in the three-character code.
 */
export function readMarking(text: string, { look = null, underlined = false }: MarkingLook = {}): MarkingRead {
  const plainText = text.normalize('NFC').replaceAll(/[µμ]/g, 'u').replaceAll('Ω', '').trim().replaceAll(/\s+/g, ' ');
  if (underlined || LINES.test(text)) return none('underlined', text);
  if (plainText.length > LONGEST) return none('too-long', text.slice(0, LONGEST));
  const looks = (row: NotationRow): boolean => look === null || row.look === look;
  const rows = NOTATION_ROWS.filter(looks);
  const upright = rows.flatMap((row) => readRow(row, plainText, []));
  const turned = turnedText(plainText);
  const upsideDown =
    turned === null
      ? []
      : rows.filter((row) => row.look === 'chip').flatMap((row) => readRow(row, turned, [say('turned', { text: turned })]));
  const readings = ordered([...twoWays(upright, plainText), ...upsideDown]);
  if (readings.length > 0) return { readings, unread: null };
  return none(/^[A-Z]\d{2}$/i.test(plainText) && (look === null || look === 'chip') ? 'other-scheme' : 'no-notation', text);
}

function none(code: Exclude<Unread['code'], 'band-count' | 'band-meaningless'>, text: string): MarkingRead {
  return { readings: [], unread: { code, args: { text } } };
}

/** Three or four figures that also read when the part is upside down: `106` is `901`. */
function turnedText(text: string): string | null {
  if (!/^[01689]{3,4}$/.test(text) || /^0+$/.test(text)) return null;
  const turned = text
    .split('')
    .toReversed()
    .map((figure) => TURNED[figure] ?? figure)
    .join('');
  return turned === text || turned.startsWith('0') ? null : turned;
}

/** `10R`: R is the point, or the letter of the three-character code; each is told of the other. */
function twoWays(readings: readonly Reading[], text: string): Reading[] {
  const both =
    readings.some(({ notation }) => notation === 'r-point') && readings.some(({ notation }) => notation === 'e96-older');
  return readings.map((reading) =>
    both && (reading.notation === 'r-point' || reading.notation === 'e96-older') && reading.look === 'chip'
      ? { ...reading, evidence: [...reading.evidence, say('r-two-ways', { text })] }
      : reading,
  );
}

function readRow(row: NotationRow, text: string, more: readonly Evidence[]): Reading[] {
  const match = PATTERNS.get(row)?.exec(row.exact ? text : text.toUpperCase());
  const found = match?.groups ?? {};
  const marks = found['marks'] ?? found['behind'] ?? '';
  const read = match ? row.marks.read(marks) : null;
  if (read === null) return [];
  const value = shift(read, row.power);
  const rated = ratedVoltage(found);
  if (rated === null) return [];
  const { kind, unit } = OF_LOOK[row.look];
  const evidence: Evidence[] = [
    say(`${row.use}-notation`),
    row.marks.closed ? say('usual-value', { series: '' }) : valueEvidence(value, row.look, row.marks.figures),
    ...(/^0\d/.test(marks) && digitsOf(value).digits !== 0n && row.tolerance === undefined && !/[.,]/.test(marks)
      ? [say('first-figure-nought')]
      : []),
    ...(row.notation === 'three-figures' && /[1-9]\d0$/.test(marks) ? [say('nought-adds-none', { figures: marks })] : []),
    // a small m is milli, but is also written for mega
    ...(row.notation === 'k-point' && text.includes('m') ? [say('letter-two-ways', { letter: 'm' })] : []),
    ...rangeEvidence(value, row.look),
    ...more,
  ];
  return toleranceLetter(row, found['letter'] ?? null, value).map(({ tolerance, against }) => {
    const all = [...evidence, ...against];
    return {
      notation: row.notation,
      look: row.look,
      kind,
      facts: decodedFacts([
        ['value', value, unit],
        ...(tolerance
          ? ([
              ['tolerance-low', tolerance.low, tolerance.unit],
              ['tolerance-high', tolerance.high, tolerance.unit],
            ] as const)
          : []),
        ...(rated ? [['voltage', rated.volts, 'V'] as const] : []),
      ]),
      pieces: [
        ...(rated?.before ? [rated.piece] : []),
        ...(row.marks.pieces?.(marks) ?? [{ typed: marks, is: 'value' as const, means: value }]),
        ...tolerancePieces(found['letter'] ?? null, tolerance, row),
        ...(rated && !rated.before ? [rated.piece] : []),
      ],
      evidence: all,
      plausible: plausible(all),
    };
  });
}

interface Rated {
  readonly volts: Decimal;
  readonly piece: Piece;
  readonly before: boolean;
}

/** The voltage that stands beside the value; undefined where none does, null where it is none of the table. */
function ratedVoltage(found: Readonly<Record<string, string | undefined>>): Rated | null | undefined {
  const { front, code, volts, kilo, before, after } = found;
  const letter = before ?? after;
  const typed = letter ?? front ?? code ?? volts;
  if (typed === undefined) return undefined;
  const written = letter === undefined ? undefined : TANTALUM_VOLTS[letter];
  const number =
    written !== undefined ? decimal(written) : volts === undefined ? readVoltageCode(typed) : decimal(volts.replace(',', '.'));
  if (number === null || digitsOf(number).digits === 0n) return null;
  const value = kilo === undefined ? number : shift(number, 3);
  return {
    volts: value,
    piece: { typed: kilo === undefined ? typed : `${typed}k`, is: 'voltage', means: value },
    before: before !== undefined || front !== undefined,
  };
}
