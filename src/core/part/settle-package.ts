import type { Cell } from './cell.ts';
import type { Doubt } from './doubt.ts';
import { PARENT } from './kinds.data.ts';
import { BODIES, IMPERIAL, type PackageReading } from './sizes.ts';
import { BATTERY_SIZES, CHIP_SIZES, METRIC_MAKERS, TANTALUM_CASES } from './packages.data.ts';
import type { Fact, Kind } from './part.ts';
import { decodedFacts, type Settled } from './settle-value.ts';

/** Kinds of which a bare four-digit number is a chip size. */
const CHIPS: ReadonlySet<Kind> = new Set([
  'resistor',
  'resistor-network',
  'capacitor',
  'inductor',
  'ferrite',
  'led',
  'fuse',
  'thermistor',
  'varistor',
  'jumper',
  'diode',
  'tvs',
  'zener',
  'crystal',
  'oscillator',
  'potentiometer',
  'transformer',
]);
/** `DIP switch`, `DIP socket`: without a count of pins the family says nothing of these. */
const HOLDERS: ReadonlySet<Kind> = new Set(['switch', 'connector', 'header', 'relay', 'inductor', 'resistor-network']);
const METRIC_NAMED: ReadonlySet<Kind> = new Set(['crystal', 'oscillator']);
const TANTALUM: ReadonlySet<string> = new Set(TANTALUM_CASES.map(([metric]) => metric));

interface Named {
  readonly name: string;
  readonly of?: readonly Kind[];
  readonly other?: string;
  readonly bare?: boolean;
}

/** The package: its own column, the footprint, the description, the library name; in this order. */
export function settlePackage(kind: Kind, technology: string | null, cells: readonly Cell[]): Settled {
  const found: { place: string; name: string }[] = [];
  for (const cell of inOrder(cells)) {
    const name = inCell(cell, kind, technology);
    if (name !== null) found.push({ place: cell.field, name });
  }
  const [written, ...others] = found;
  if (!written) return { facts: [], doubts: [] };
  const size = whichSize(written.name, kind, cells);
  const first = { ...written, name: size.name };
  const facts: Fact[] = [{ key: 'package', value: first.name, unit: null, origin: 'stated' }];
  if (size.doubt) return { facts, doubts: [size.doubt] };
  const against = others.find((one) => one.place !== 'device' && one.place !== 'context' && differ(one.name, first.name));
  const doubts: Doubt[] = against
    ? [{ field: 'package', code: 'conflict', args: { taken: first.name, other: against.name, place: against.place } }]
    : [];
  return { facts, doubts };
}

/** Digits that name one chip in inches and another, smaller one in millimetres. */
const TWO_SIZES: ReadonlyMap<string, string> = new Map(
  CHIP_SIZES.flatMap(([imperial, metric]) => (IMPERIAL.has(metric) ? [[metric, imperial] as const] : [])),
);

/**
 * `0603` is imperial by the custom of the trade, unless the heading says metric or the maker's own number tells the metric size. A
 * number of another size, `0603M`, and `C0603` of a maker who counts in millimetres are doubts.
 */
function whichSize(name: string, kind: Kind, cells: readonly Cell[]): { readonly name: string; readonly doubt?: Doubt } {
  const decoded = decodedFacts(cells, kind).find((fact) => fact.key === 'package')?.value ?? null;
  const metric = TWO_SIZES.get(name);
  if (metric !== undefined) {
    const text = placeOf(name, cells);
    const ask = (taken: string, other: string): { name: string; doubt: Doubt } => ({
      name: taken,
      doubt: { field: 'package', code: 'size-metric-or-imperial', args: { text, taken, other } },
    });
    if (decoded === metric) return ask(metric, name);
    if (decoded === name || /\d{4}[-_ (]*metric/i.test(text)) return { name };
    if (cells.some((cell) => cell.field === 'context' && METRIC_WORD.test(cell.text))) return { name: metric };
    const maker = cells.find((cell) => cell.field === 'maker')?.text ?? '';
    if (new RegExp(`${name}M(?![A-Z0-9])`, 'i').test(text) || (/^C\d{4}$/i.test(text) && METRIC_MAKERS.test(maker)))
      return ask(name, metric);
  }
  return decoded !== null && differ(decoded, name)
    ? { name, doubt: { field: 'package', code: 'conflict', args: { taken: name, other: decoded, place: 'partNumber' } } }
    : { name };
}

const METRIC_WORD = /\bm[eé]tri(?:c|sch|que|co|ca)\b/i;

function placeOf(name: string, cells: readonly Cell[]): string {
  return (
    inOrder(cells)
      .find((cell) => cell.text.includes(name))
      ?.text.trim() ?? name
  );
}

const ORDER = ['package', 'footprint', 'value', 'description', 'text', 'category', 'device', 'context'];

function inOrder(cells: readonly Cell[]): Cell[] {
  return cells.filter((cell) => ORDER.includes(cell.field)).sort((a, b) => ORDER.indexOf(a.field) - ORDER.indexOf(b.field));
}

/** Two chip sizes that are not the same; outlines have too many names to be held against each other. */
function differ(a: string, b: string): boolean {
  return /^\d{4,5}$/.test(a) && /^\d{4,5}$/.test(b) && a !== b;
}

function inCell(cell: Cell, kind: Kind, technology: string | null): string | null {
  if (cell.drawn) {
    const reading = cell.drawn;
    const named: Named | null =
      reading.name === null
        ? null
        : { name: reading.name, ...(reading.of ? { of: reading.of } : {}), ...(reading.other ? { other: reading.other } : {}) };
    if (
      named &&
      counts(named, kind) &&
      (!HOLDERS.has(kind) || /\d/.test(named.name)) &&
      (cell.field !== 'device' || !/^\d{4}$/.test(named.name) || CHIPS.has(kind))
    )
      return spelled(named, kind, technology);
    if (cell.field === 'footprint' && METRIC_NAMED.has(kind)) return body(cell.text);
    if (cell.field !== 'package') return kind === 'switch' && cell.field === 'footprint' ? face(cell.text) : null;
  }
  const readings = cell.atoms.flatMap((atom): PackageReading[] => (atom.type === 'package' ? [atom.reading] : []));
  const sure =
    readings.find(
      (reading) =>
        !reading.bare && counts(reading, kind) && (cell.field === 'package' || !HOLDERS.has(kind) || /\d/.test(reading.name)),
    ) ?? readings.find((reading) => reading.bare && CHIPS.has(kind) && counts(reading, kind));
  if (sure && !(sure.bare && isBareValue(cell, sure))) return spelled(sure, kind, technology);
  if (kind === 'led') return diameter(cell) ?? body(cell.text);
  if (METRIC_NAMED.has(kind)) return body(cell.text);
  if (kind === 'switch' && cell.field === 'package') return face(cell.text);
  return kind === 'battery' && !/holder|clip|halter|fach|box|socket/i.test(cell.text)
    ? (BATTERY_SIZES.exec(cell.text.toUpperCase())?.[1] ?? null)
    : null;
}

function counts(named: Named, kind: Kind): boolean {
  // drawn as a row of so many pins, a header has no package
  if (kind === 'header' && named.name.startsWith('SIP-')) return false;
  return !named.of || named.of.includes(kind) || named.of.some((one) => PARENT[kind] === one);
}

/** `1206` alone in a value cell is a value, `0603` can't be one. */
function isBareValue(cell: Cell, reading: PackageReading): boolean {
  return cell.field === 'value' && cell.atoms.length === 1 && !cell.text.slice(reading.start, reading.end).startsWith('0');
}

function spelled(named: Named, kind: Kind, technology: string | null): string {
  const solid = technology === 'tantalum' || technology === 'polymer';
  if (kind === 'capacitor' && solid && named.other !== undefined && TANTALUM.has(named.other)) return `EIA-${named.other}`;
  return METRIC_NAMED.has(kind) && named.other !== undefined ? named.other : named.name;
}

const BODY = /(?<![\d.])L?(\d)[.,](\d)0?(?: ?mm)?[ -]?[xX×*-][ -]?W?(\d)[.,](\d)0?(?![\d.])/;

/** Crystals and square LEDs are named by their body in tenths of a millimetre: `3.2 x 2.5 mm` is 3225. */
function body(text: string): string | null {
  const digits = BODY.exec(text)?.slice(1).join('') ?? '';
  return BODIES.has(digits) ? digits : null;
}

const FACE = /(?<![\w.,])(\d{1,2}(?:[.,]\d)?)\s?[xX×*]\s?(\d{1,2}(?:[.,]\d)?)(?:\s?mm)?(?![\w×*]|[.,]\d|\s?[xX×*]\s?\d)/;

/** A tactile switch is named by its face: `6x6`, `6 x 6 mm`. */
function face(text: string): string | null {
  const match = FACE.exec(text);
  return match ? `${match[1]?.replace(',', '.')}x${match[2]?.replace(',', '.')}` : null;
}

const DIAMETERS: ReadonlySet<string> = new Set(['18e-4', '2e-3', '3e-3', '4e-3', '5e-3', '8e-3', '1e-2']);

/** A round LED is named by its diameter: `LED 5 mm`. */
function diameter(cell: Cell): string | null {
  for (const atom of cell.atoms) {
    if (atom.type !== 'quantity' || atom.quantity.unit !== 'm' || !DIAMETERS.has(atom.quantity.value)) continue;
    if (/[xX*]\s?$/.test(cell.text.slice(0, atom.start)) || /^\s?[xX*]\s?\d/.test(cell.text.slice(atom.end))) continue;
    return `${Number(atom.quantity.value) * 1000}mm`;
  }
  return null;
}
