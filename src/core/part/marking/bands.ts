import { decimal, digitsOf, fromDigits, multiply, shift, type Decimal } from '#core/quantity/decimal.ts';
import { numberFact, type Part } from '../part.ts';
import {
  COLOURS,
  COLOUR_ROWS,
  LAYOUTS,
  USUAL_TEMPERATURES,
  type BandLayout,
  type Colour,
  type ColourRow,
  type Slot,
} from './colours.data.ts';
import type { Evidence, MarkingRead, Piece, Reading } from './marking.ts';
import { decodedFacts, ordered, plausible, rangeEvidence, say, valueEvidence } from './weigh.ts';

/** What a person sees beside the colours. */
export interface BandLook {
  /** the band, counted from 0, before which the gap is wider than the others; null where none is seen to be */
  readonly gapBefore?: number | null;
  /** the part is from before the standard of 2016 */
  readonly old?: boolean;
}

type Missing = { readonly colour: Colour; readonly slot: Slot };

const NO_TOLERANCE = '20';
const isColour = (word: string): word is Colour => COLOURS.includes(word as Colour); // as: asked right here

/** `"Gray"` → grey, `"purple"` → violet; another word → null. */
export function readColour(word: string): Colour | null {
  const folded = word.trim().toLowerCase();
  const named =
    { gray: 'grey', purple: 'violet', blk: 'black', brn: 'brown', yel: 'yellow', grn: 'green', blu: 'blue', wht: 'white' }[
      folded
    ] ?? folded;
  return isColour(named) ? named : null;
}

/**
 * Colour bands of a resistor (IEC 60062 clause 3), read from both ends; each reading says what speaks for and against it.
 * yellow violet red gold → 4.7 kΩ ±5 %; brown black black red brown → 10 kΩ ±1 %, or 120 Ω from the other end.
 */
export function readBands(bands: readonly Colour[], look: BandLook = {}): MarkingRead {
  if (bands.length === 1 && bands[0] === 'black') return { readings: [link()], unread: null };
  const layouts = LAYOUTS.filter(({ slots }) => slots.length === bands.length);
  if (layouts.length === 0) return { readings: [], unread: { code: 'band-count', args: { count: String(bands.length) } } };
  const turned = bands.toReversed();
  const ways = turned.every((colour, at) => colour === bands[at]) ? [bands] : [bands, turned];
  const readings: Reading[] = [];
  let missing: Missing | null = null;
  for (const layout of layouts) {
    const lacks = ways.map((way) => meaningless(layout, way));
    for (const [at, way] of ways.entries()) {
      missing ??= lacks[at] ?? null;
      if (lacks[at]) continue;
      const gap = look.gapBefore ?? null;
      const gapBefore = gap === null ? null : at === 0 ? gap : bands.length - gap;
      readings.push(readWay(layout, way, { gapBefore, old: look.old ?? false }, lacks[1 - at] ?? null));
    }
  }
  return {
    readings: ordered(readings),
    unread: readings.length || !missing ? null : { code: 'band-meaningless', args: { ...missing } },
  };
}

/** The first band that says nothing where it stands. */
function meaningless({ slots, only }: BandLayout, bands: readonly Colour[]): Missing | null {
  for (const [at, slot] of slots.entries()) {
    const colour = bands[at] ?? 'black';
    if (slot === 'extra') continue;
    if (COLOUR_ROWS[colour][slot] === undefined) return { colour, slot };
    if (slot === 'tolerance' && only && !only.includes(colour)) return { colour, slot };
  }
  return null;
}

function readWay(layout: BandLayout, bands: readonly Colour[], look: Required<BandLook>, other: Missing | null): Reading {
  const rows = bands.map((colour) => COLOUR_ROWS[colour]);
  const at = (slot: Slot): ColourRow | undefined => rows[layout.slots.indexOf(slot)];
  const figures = layout.slots.flatMap((slot, place) => (slot === 'figure' ? [rows[place]?.figure ?? ''] : [])).join('');
  const value = fromDigits(BigInt(figures), at('times')?.times ?? 0);
  const row = at('tolerance');
  const percent = row ? ((look.old ? row.older : undefined) ?? row.tolerance ?? NO_TOLERANCE) : NO_TOLERANCE;
  const ppm = at('temperature')?.temperature;
  const share = shift(decimal(percent), -2);
  const evidence: Evidence[] = [
    layout.only ? say('special-mark', { colour: bands.at(-1) ?? '' }) : say('usual-notation'),
    valueEvidence(value, 'bands', figures.length === 3 ? 3 : 2),
    ...(figures.startsWith('0') ? [say('first-figure-nought')] : []),
    ...rangeEvidence(value, 'bands'),
    ...toleranceEvidence(layout, bands, look),
    ...temperatureEvidence(layout, bands),
    ...gapEvidence(layout, look.gapBefore),
    ...(other ? [say('only-way', { ...other })] : []),
  ];
  return {
    notation: layout.notation,
    look: 'bands',
    kind: 'resistor',
    facts: decodedFacts([
      ['value', value, 'ohm'],
      ['tolerance-low', share, 'fraction'],
      ['tolerance-high', share, 'fraction'],
      ...(ppm === undefined ? [] : [['temperature-coefficient', shift(decimal(ppm), -6), '1/K'] as const]),
    ]),
    pieces: bands.map((colour, place) => piece(colour, layout.slots[place] ?? 'extra', percent)),
    evidence,
    plausible: plausible(evidence),
  };
}

function piece(colour: Colour, slot: Slot, percent: string): Piece {
  const { figure = '', times = 0, temperature = '' } = COLOUR_ROWS[colour];
  const means = { figure, times: String(times), tolerance: percent, temperature, extra: '' }[slot];
  return { typed: colour, is: slot === 'figure' ? 'figures' : slot, means };
}

function toleranceEvidence(layout: BandLayout, bands: readonly Colour[], look: Required<BandLook>): Evidence[] {
  const colour = bands[layout.slots.indexOf('tolerance')];
  if (colour === undefined) return [];
  const { older, tolerance = '' } = COLOUR_ROWS[colour];
  if (older !== undefined && !look.old) return [say('tolerance-by-edition', { now: tolerance, old: older })];
  return [say(layout.tolerances.includes(colour) ? 'usual-tolerance' : 'rare-tolerance')];
}

function temperatureEvidence({ slots }: BandLayout, bands: readonly Colour[]): Evidence[] {
  const colour = bands[slots.indexOf('temperature')];
  return colour === undefined || USUAL_TEMPERATURES.includes(colour) ? [] : [say('rare-temperature')];
}

/** The gap stands before the tolerance, or before what comes after it. */
function gapEvidence({ slots }: BandLayout, gapBefore: number | null): Evidence[] {
  if (gapBefore === null) return [];
  const from = slots.indexOf('tolerance');
  return [say(from > 0 && gapBefore >= from ? 'gap-fits' : 'gap-against')];
}

function link(): Reading {
  const evidence = [say('usual-notation'), say('usual-value', { series: '' })];
  const facts = decodedFacts([['value', fromDigits(0n, 0), 'ohm']]);
  const pieces: Piece[] = [{ typed: 'black', is: 'link', means: '0' }];
  return { notation: 'bands-1', look: 'bands', kind: 'resistor', facts, pieces, evidence, plausible: plausible(evidence) };
}

/** Bands that say a resistor's value, tolerance and temperature coefficient, for each way that can: 4.7 kΩ ±5 % → yellow violet red gold. */
export function writeBands(part: Part): { readonly notation: string; readonly bands: readonly Colour[] }[] {
  const value = numberFact(part, 'value');
  if (part.kind !== 'resistor' || value === null || part.facts.value?.unit !== 'ohm') return [];
  if (digitsOf(value).digits === 0n) return [{ notation: 'bands-1', bands: ['black'] }];
  return LAYOUTS.flatMap((layout) => {
    const bands = layout.only ? null : bandsOf(layout, value, part);
    return bands ? [{ notation: layout.notation, bands }] : [];
  });
}

function bandsOf({ slots }: BandLayout, value: Decimal, part: Part): Colour[] | null {
  const count = slots.filter((slot) => slot === 'figure').length;
  const { digits, exponent } = digitsOf(value);
  const figures = digits.toString().padEnd(count, '0');
  if (digits < 0n || figures.length > count) return null;
  const times = exponent - (figures.length - digits.toString().length);
  const low = numberFact(part, 'tolerance-low');
  const even = low !== null && low === numberFact(part, 'tolerance-high') && part.facts['tolerance-low']?.unit === 'fraction';
  const percent = even ? multiply(low, decimal('100')) : null;
  const temperature = numberFact(part, 'temperature-coefficient');
  if (!slots.includes('tolerance') && percent !== decimal(NO_TOLERANCE)) return null;
  const found = slots.map((slot, at) =>
    COLOURS.find((colour) => {
      const row = COLOUR_ROWS[colour];
      if (slot === 'figure') return row.figure === figures[at];
      if (slot === 'times') return row.times === times;
      if (slot === 'tolerance') return row.tolerance !== undefined && decimal(row.tolerance) === percent;
      return temperature !== null && row.temperature !== undefined && shift(decimal(row.temperature), -6) === temperature;
    }),
  );
  return found.every((colour) => colour !== undefined) ? found : null;
}
