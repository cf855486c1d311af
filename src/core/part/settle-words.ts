import type { Atom } from './atoms.ts';
import type { Cell } from './cell.ts';
import { dielectricName, readDielectric } from './dielectric.ts';
import { fuseCharacteristic } from './fuse.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';
import { WORD_FACTS } from './part.ts';
import { compare, decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';

/** Facts that words and codes state: technology, dielectric, polarity, colour, thread, pins, pitch. */
export function settleWords(kind: Kind, cells: readonly Cell[]): Fact[] {
  const facts = new Map<FactKey, Fact>();
  const put = (key: FactKey, value: string, unit: string | null = null): void => {
    if (KIND_ROWS[kind].facts.includes(key) && !facts.has(key)) facts.set(key, { key, value, unit, origin: 'stated' });
  };
  const characteristic = kind === 'fuse' ? fuseCharacteristic(cells) : null;
  if (characteristic !== null) put('safety', characteristic);
  for (const [key, value] of several(kind, cells)) put(key, value);
  for (const cell of cells) if (cell.field !== 'supplierNumber' && cell.field !== 'maker') readWords(kind, cell, put);
  const dielectrics = new Set(
    cells.flatMap((cell) => cell.atoms.flatMap((atom) => (atom.type === 'dielectric' ? [atom.name] : []))),
  );
  const [dielectric] = dielectrics;
  // `X5R/X7R`: either will do, so neither is stated
  if (dielectric !== undefined && dielectrics.size === 1) put('dielectric', dielectric);
  const rare = dielectric === undefined && kind === 'capacitor' ? rareDielectric(cells) : null;
  if (rare !== null) put('dielectric', rare);
  if (kind === 'capacitor') {
    const drawn = cells.find((cell) => cell.field === 'footprint' || cell.field === 'package')?.text ?? '';
    if (/(?:^|:)CP[-_]|CPOL|CAPMP|CAPAE|CAP_POL/i.test(drawn)) put('polarised', 'yes');
  }
  return [...facts.values()];
}

const IEC_CODE = /(?<![\w.,])2[BCDF][1-6](?![\w.,])/;

/** In its own column any code that means something; in a text the codes of IEC that are no number (`2C1`, but not `2R1`, `2E6`). */
function rareDielectric(cells: readonly Cell[]): string | null {
  const own = cells.find((cell) => cell.field === 'dielectric')?.text ?? '';
  if (readDielectric(own)) return dielectricName(own);
  const told = cells
    .filter(({ field }) => field === 'text' || field === 'description')
    .flatMap(({ text }) => IEC_CODE.exec(text) ?? []);
  return told[0] ?? null;
}

type Put = (key: FactKey, value: string, unit?: string | null) => void;

/** Two safety classes (`X1/Y2`) or the two colours of an LED are one fact together. */
function several(kind: Kind, cells: readonly Cell[]): [FactKey, string][] {
  const told = (key: FactKey): string[] => [
    ...new Set(
      cells.flatMap(({ field, atoms }) =>
        field === 'footprint' || field === 'context'
          ? []
          : atoms.flatMap((atom) =>
              atom.type === 'word' ? atom.meaning.facts.flatMap(([one, value]) => (one === key ? [value] : [])) : [],
            ),
      ),
    ),
  ];
  const key = kind === 'capacitor' ? 'safety' : kind === 'led' ? 'colour' : null;
  const classes = kind === 'capacitor' ? cells.flatMap(rareClasses) : [];
  const values = key ? [...new Set([...told(key), ...classes])].sort() : [];
  return key && values.length > (classes.length > 0 ? 0 : 1) ? [[key, values.join('/')]] : [];
}

/** `X1 275 VAC`: of itself `X1` names a crystal or a connector; beside an alternating voltage it is a class (IEC 60384-14). */
function rareClasses({ field, text }: Cell): string[] {
  if (field === 'footprint' || field === 'context' || !/\d ?(?:V ?AC|V ?~|VAC)/i.test(text)) return [];
  return text.match(/(?<![\w-])(?:[XY]1|X3|Y[34])(?![\w-])/g) ?? [];
}

function readWords(kind: Kind, cell: Cell, put: Put): void {
  for (const atom of cell.atoms) {
    if (atom.type === 'word') for (const [fact, value] of atom.meaning.facts) if (isWordFact(fact)) put(fact, value);
    if (atom.type === 'thread') {
      put('thread', atom.thread);
      if (atom.length !== null) put('length', millimetres(atom.length), 'm');
    }
    if (atom.type === 'grid') put('pins', decimal(atom.rows * atom.columns), 'count');
    if (atom.type === 'quantity' && atom.quantity.unit === 'pins') put('pins', atom.quantity.value, 'count');
    if (atom.type === 'quantity') readMeasure(kind, atom, cell, put);
  }
}

/** Lengths by what they are on this kind: a pitch, the diameter of a disc, how long it is; farads on a crystal are its load. */
function readMeasure(kind: Kind, { quantity }: Extract<Atom, { type: 'quantity' }>, { field, text }: Cell, put: Put): void {
  const { value, unit, form, power } = quantity;
  if (kind === 'crystal' && (unit === 'F' || (unit === null && form === 'prefix' && power === -12)))
    put('load-capacitance', value, 'F');
  if (kind === 'capacitor' && unit === 'degC' && HOT.has(value) && /elko|elec|alum|elyt|polymer|radial/i.test(text))
    put('temperature-high', value, 'degC');
  if (field === 'footprint' && unit === null) return;
  if (kind === 'resistor' && /ppm/i.test(text.slice(quantity.start, quantity.end)))
    put('temperature-coefficient', multiply(plainNumber(text, quantity), MILLIONTH), '1/K');
  if (kind === 'capacitor' && unit === 'm' && FILM_PITCHES.has(value) && SPACED.test(text)) put('pitch', value, 'm');
  if (unit === null && form === 'bare' && BARE_PITCHES.has(value)) put('pitch', multiply(value, MILLI), 'm');
  if (unit !== 'm' || /^[²2^]/.test(text.slice(quantity.end))) return;
  // of a barrel jack the figure is its pin
  if (kind !== 'capacitor' && PITCHES.has(value) && !/jack|barrel|hohlstecker|dc[- ](?:plug|buchse)/i.test(text))
    put('pitch', value, 'm');
  if (kind === 'varistor') put('diameter', value, 'm');
  if (kind === 'wire' && isThin(value)) put('diameter', value, 'm');
  else if (LONG.has(kind)) put('length', value, 'm');
  else if (kind === 'header' && field !== 'footprint' && isTall(value)) put('length', value, 'm');
}

/** The figures of `25 ppm/K`, whatever its unit made of them. */
function plainNumber(text: string, { start, end }: { start: number; end: number }): Decimal {
  return decimal(/\d+(?:[.,]\d+)?/.exec(text.slice(start, end))?.[0].replace(',', '.') ?? '0');
}

/** A length on a film or safety capacitor is the spacing of its leads, on others only where it is called so. */
const SPACED = /film|folie|foil|mk[tps]|wima|x2|y2|pitch|raster|lead spacing|\bRM ?\d/i;
const MILLIONTH = decimal('1e-6');
const MILLI = decimal('1e-3');
const LONG: ReadonlySet<Kind> = new Set(['screw', 'standoff', 'wire']);
/** A wire is never so short: it is as thick. */
const isThin = (metres: Decimal): boolean => compare(metres, decimal('6e-3')) < 0 && !CABLE_PITCHES.has(metres);
/** Of ribbon cables and jumper wires. */
const CABLE_PITCHES: ReadonlySet<string> = new Set(['1.27', '2.54'].map(millimetres));
/** How tall a header stands over the board, where the figure is no pitch. */
const isTall = (metres: Decimal): boolean =>
  !PITCHES.has(metres) && compare(metres, decimal('3e-3')) > 0 && compare(metres, decimal('4e-2')) < 0;
const HOT: ReadonlySet<string> = new Set(['85', '105', '125', '130', '135', '150'].map(decimal));
/** Numbers that are a pitch in millimetres though no unit stands there. */
const FILM_PITCHES: ReadonlySet<string> = new Set(
  ['2.5', '2.54', '5', '5.08', '7.5', '10', '10.16', '15', '22.5', '27.5', '37.5'].map(millimetres),
);
const BARE_PITCHES: ReadonlySet<string> = new Set(['1.27', '2.54', '5.08', '3.81', '3.96', '7.62'].map(decimal));

const PITCHES: ReadonlySet<string> = new Set(
  ['1', '1.25', '1.27', '1.5', '2', '2.5', '2.54', '3.5', '3.81', '3.96', '5', '5.08', '7.5', '7.62', '0.5', '0.8'].map(
    millimetres,
  ),
);

function millimetres(number: string): Decimal {
  return decimal(`${number}e-3`);
}

function isWordFact(fact: string): fact is (typeof WORD_FACTS)[number] {
  return (WORD_FACTS as readonly string[]).includes(fact); // as: widened only to ask
}
