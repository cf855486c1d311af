import { decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { readFigures, readRkm, readUniroyal, readVoltageCode } from '#core/quantity/mark.ts';
import { readToleranceLetter } from '#core/quantity/tolerance.ts';
import { DIELECTRICS, ORDERING_CODES, SIZES, VOLTS, type OrderingCodeRow } from './ordering-codes.data.ts';
import { KIND_ROWS } from './kinds.data.ts';
import { CHIP_SIZES } from './packages.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';

export interface Decoded {
  readonly kind: Kind;
  readonly maker: string;
  readonly family: string;
  /** all of origin `decoded` */
  readonly facts: readonly Fact[];
}

const PICO = decimal('1e-12');
const NANO = decimal('1e-9');
const MICRO = decimal('1e-6');
const IMPERIAL_OF = new Map(CHIP_SIZES.map(([imperial, metric]) => [metric, imperial]));

/** What an ordering code says when the whole of it follows a maker's grammar: `RC0603FR-074K7L` → 4.7 kΩ, ±1 %, 0603. Else null. */
export function decodeOrderingCode(text: string): Decoded | null {
  if (text.length < 7 || text.length > 24) return null;
  const code = text.toUpperCase();
  for (const row of ORDERING_CODES) {
    const groups = row.pattern.exec(code)?.groups;
    if (groups) return { kind: row.kind, maker: row.maker, family: row.family, facts: factsOf(row, groups) };
  }
  return null;
}

type Groups = Readonly<Record<string, string | undefined>>;

function factsOf(row: OrderingCodeRow, groups: Groups): Fact[] {
  const facts: Fact[] = [];
  const add = (key: FactKey, value: string | null, unit: string | null): void => {
    if (value !== null) facts.push({ key, value, unit, origin: 'decoded' });
  };
  const value = valueOf(row, groups);
  add('value', value, KIND_ROWS[row.kind].value ?? null);
  const tolerance = groups['tolerance']
    ? readToleranceLetter(groups['tolerance'], row.kind === 'capacitor' ? value : null)
    : null;
  if (tolerance && value !== decimal(0)) {
    add('tolerance-low', tolerance.low, tolerance.unit);
    add('tolerance-high', tolerance.high, tolerance.unit);
  }
  add('voltage', voltageOf(row, groups['voltage']), 'V');
  add('dielectric', dielectricOf(row, groups['dielectric']), null);
  add('technology', row.technology ?? null, null);
  add('package', sizeOf(row, groups['size']), null);
  return facts;
}

function valueOf(row: OrderingCodeRow, groups: Groups): Decimal | null {
  if (groups['rkm']) return /^0+$/.test(groups['rkm']) ? decimal(0) : readRkm(groups['rkm']);
  if (groups['uniroyal']) return readUniroyal(groups['uniroyal']);
  if (groups['zener']) return decimal(groups['zener'].replace('V', '.'));
  if (groups['micro']) return scaled(readFigures(groups['micro'], true), MICRO);
  if (groups['henry']?.includes('N')) return scaled(decimal(groups['henry'].replace('N', '.').replace(/\.$/, '')), NANO);
  if (groups['henry']) return scaled(readFigures(groups['henry'], true), MICRO);
  const figures = groups['code'] ? readFigures(groups['code'], row.kind === 'capacitor') : null;
  return figures && row.kind === 'capacitor' ? multiply(figures, PICO) : figures;
}

function scaled(figures: Decimal | null, unit: Decimal): Decimal | null {
  return figures === null ? null : multiply(figures, unit);
}

function voltageOf(row: OrderingCodeRow, code: string | undefined): Decimal | null {
  if (code === undefined || row.volts === undefined) return null;
  if (row.volts === 'eia') return readVoltageCode(code);
  if (row.volts === 'digits') return readFigures(code);
  const table: Readonly<Record<string, string>> = VOLTS[row.volts];
  const volts = table[code];
  return volts === undefined ? null : decimal(volts);
}

function dielectricOf(row: OrderingCodeRow, code: string | undefined): string | null {
  if (code === undefined || row.dielectrics === undefined) return null;
  if (row.dielectrics === 'written') return code === 'NPO' || code === 'NP0' ? 'C0G' : code;
  const table: Readonly<Record<string, string>> = DIELECTRICS[row.dielectrics];
  return table[code] ?? null;
}

function sizeOf(row: OrderingCodeRow, code: string | undefined): string | null {
  if (code === undefined || row.sizes === undefined) return null;
  if (row.sizes === 'imperial') return code === '0100' ? '01005' : code;
  if (row.sizes === 'metric') return IMPERIAL_OF.get(code) ?? null;
  const table: Readonly<Record<string, string>> = SIZES[row.sizes];
  return table[code.replace('-', '')] ?? null;
}
