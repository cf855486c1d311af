import { decimal, ZERO, type Decimal } from '#core/quantity/decimal.ts';
import { readCell, type Cell, type CellReader } from './cell.ts';
import { cellsOf } from './cells-of.ts';
import { decideKind, type KindReading } from './decide-kind.ts';
import type { Doubt } from './doubt.ts';
import type { PartHints } from './hints.ts';
import type { Fact, FactKey, Facts, Kind, Part } from './part.ts';
import { mechanicalKind, settleMechanical } from './mechanical/settle-mechanical.ts';
import { settlePartNumber } from './part-number.ts';
import { settleVariant } from './settle-variant.ts';
import { settleWords } from './settle-words.ts';
import { settlePackage } from './settle-package.ts';
import { settleRatings, settleTolerance } from './settle-ratings.ts';
import { decodedFacts, settleValue } from './settle-value.ts';

export type { PartHints } from './hints.ts';

export interface PartReading {
  readonly part: Part;
  readonly doubts: readonly Doubt[];
}

/**
 * What a text, or the cells of a row, say of a part. What is not stated is left out; what only an ordering code says has the
 * origin `decoded`; what is uncertain has a doubt on its field. Never throws. `read`: a reader of cells that remembers.
 *
 * `"4k7 1% 0805 resistor"` → resistor, 4700 ohm, ±1 %, 0805. `{ value: "100n" }` with `C1` → capacitor, 1e-7 F.
 */
export function readPart(text: string, hints: PartHints = {}, read: CellReader = readCell): PartReading {
  const { cells, doubts } = cellsOf(text, hints, read);
  const reading = decideKind(cells, hints);
  const kind = mechanicalKind(refined(reading.kind, cells), cells);
  const value = settleValue(kind, cells);
  const words = settleWords(kind, cells);
  const technology = words.find((fact) => fact.key === 'technology')?.value ?? null;
  const ratings = settleRatings(kind, cells);
  const pack = settlePackage(kind, technology, cells);
  const number = value.facts.find((fact) => fact.key === 'value')?.value ?? null;
  // as: a value fact holds a canonical decimal by construction
  const tolerance = settleTolerance(kind, cells, number as Decimal | null);
  const partNumber = kind === 'not-a-part' ? null : settlePartNumber(kind, cells);
  const maker = makerOf(cells);
  const mechanical = settleMechanical(kind, cells);
  const stated = [
    ...mechanical.facts,
    ...words,
    ...value.facts,
    ...tolerance,
    ...ratings.facts,
    ...pack.facts,
    ...(partNumber ? [partNumber] : []),
    ...(maker ? [maker] : []),
    ...pinsOfSocket(kind, pack.facts),
  ];
  const known = factTable(stated, decodedFacts(cells, kind));
  const variant = mechanical.variantOf(settleVariant(kind, cells, Object.values(known)));
  const facts = variant ? { ...known, variant } : known;
  return {
    part: { kind, facts, text: text.trim() || joined(cells) },
    doubts: [
      ...doubts,
      ...kindDoubts(reading, kind, cells),
      ...value.doubts,
      ...ratings.doubts,
      ...pack.doubts,
      ...mechanical.doubts,
    ],
  };
}

function joined(cells: readonly Cell[]): string {
  return cells.map((cell) => cell.text.trim()).join(' ');
}

const REFINED: ReadonlySet<Kind> = new Set<Kind>(['inductor', 'potentiometer', 'fuse', 'mechanical', 'jumper']);

/**
 * An inductor whose only value is in ohms is a ferrite bead (`600R`, not `4R7`: that is a code in µH); what may be a potentiometer
 * or a varistor and states volts alone is a varistor.
 */
function refined(kind: Kind, cells: readonly Cell[]): Kind {
  if (!REFINED.has(kind)) return kind;
  const quantities = cells
    .filter((cell) => cell.field === 'value' || cell.field === 'text' || (kind === 'jumper' && cell.field === 'description'))
    .flatMap((cell) => cell.atoms.flatMap((atom) => (atom.type === 'quantity' ? [atom.quantity] : [])));
  const units = quantities.map((one) => one.unit);
  // a link of 0 ohms is bought and placed as a resistor, whether it is called jumper, link or resistor
  if (kind === 'jumper') return quantities.some((one) => one.unit === 'ohm' && one.value === ZERO) ? 'resistor' : kind;
  // a housing that counts its pins is a connector's
  if (kind === 'mechanical') return units.includes('pins') && named(cells, 'connector') ? 'connector' : kind;
  // a fusible resistor is a resistor: no fuse is sold by its ohms
  if (kind === 'fuse') return units.includes('ohm') && !units.includes('A') ? 'resistor' : kind;
  if (kind === 'potentiometer') return units.length > 0 && units.every((unit) => unit === 'V') ? 'varistor' : kind;
  const [first] = quantities;
  return first?.unit === 'ohm' && !units.includes('H') && (first.form !== 'rkm' || Number(first.value) >= 10) ? 'ferrite' : kind;
}

/** A socket for `DIP-28` has as many pins. */
function pinsOfSocket(kind: Kind, facts: readonly Fact[]): Fact[] {
  const pins = kind === 'connector' ? /^(?:DIP|PLCC)-(\d+)$/.exec(facts[0]?.value ?? '')?.[1] : undefined;
  return pins === undefined ? [] : [{ key: 'pins', value: decimal(pins), unit: 'count', origin: 'stated' }];
}

function named(cells: readonly Cell[], kind: Kind): boolean {
  return cells.some(({ atoms }) => atoms.some((atom) => atom.type === 'word' && atom.meaning.kinds.includes(kind)));
}

function makerOf(cells: readonly Cell[]): Fact | null {
  const text = cells.find((cell) => cell.field === 'maker')?.text.trim() ?? '';
  return /^(?:|-|~|n\/?a|generic|any|various.*)$/i.test(text)
    ? null
    : { key: 'maker', value: text, unit: null, origin: 'stated' };
}

/** The stated fact stands; where the text is silent the ordering code may speak. Of two facts of one key the first counts. */
function factTable(stated: readonly Fact[], decoded: readonly Fact[]): Facts {
  const table: Partial<Record<FactKey, Fact>> = {};
  for (const fact of stated) table[fact.key] ??= fact;
  const toleranceStated = table['tolerance-low'] !== undefined;
  for (const fact of decoded) if (!(toleranceStated && fact.key.startsWith('tolerance'))) table[fact.key] ??= fact;
  return table;
}

function kindDoubts(reading: KindReading, kind: Kind, cells: readonly Cell[]): Doubt[] {
  if (reading.score <= 0) return cells.length ? [{ field: 'kind', code: 'kind-unknown', args: { text: joined(cells) } }] : [];
  return reading.rival ? [{ field: 'kind', code: 'kind-unclear', args: { taken: kind, other: reading.rival } }] : [];
}
