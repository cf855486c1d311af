import { PREFIXES, PREFIX_WORDS, SQUARED, UNIT_ROWS, type UnitRow } from './units.data.ts';

/** What the letters after a number mean: `kΩ`, `UF`, `MHZ`, `VDC`, or a prefix alone (`k`). */
export interface Suffix {
  readonly unit: string | null;
  readonly power: number;
  readonly note: string | null;
  /** the power that the same letters may also mean, where the case does not tell */
  readonly other: number | null;
}

const EXACT = new Map<string, Suffix>();
const FOLDED = new Map<string, Suffix>();

/** `"kOhm"` → ohm, 3; `"MHZ"` → Hz, 6; `"MH"` → H, −3; `"k"` → no unit, 3; `"xyz"` → null. */
export function readSuffix(letters: string): Suffix | null {
  return EXACT.get(letters) ?? FOLDED.get(letters.toLowerCase()) ?? null;
}

/** Units that follow a prefix in words: `milliamp`, `micro farad`. */
const WORDED = 'ohm ohms f farad farads h henry henries hertz volt volts amp amps ampere amperes watt watts'.split(' ');

for (const row of UNIT_ROWS) addRow(row);
for (const [power, spellings] of PREFIXES) for (const prefix of spellings) if (prefix) bare(prefix, power);
for (const [word, power] of Object.entries(PREFIX_WORDS)) {
  FOLDED.set(word, { unit: null, power, note: null, other: null });
  for (const unit of WORDED) {
    const known = FOLDED.get(unit);
    if (known) FOLDED.set(`${word}${unit}`, { ...known, power });
  }
}
for (const [letter, power] of [
  ['U', -6],
  ['N', -9],
  ['P', -12],
  ['R', 0],
  ['r', 0],
  ['E', 0],
] as const) {
  bare(letter, power, letter === 'R' || letter === 'r' ? 'ohm' : null);
}
for (const word of ['mfd', 'mmf', 'mf'])
  FOLDED.set(word, { unit: 'F', power: word === 'mmf' ? -12 : -6, note: null, other: word === 'mf' ? -3 : null });
EXACT.set('mF', { unit: 'F', power: -3, note: null, other: -6 });
EXACT.set('MF', { unit: 'F', power: -6, note: null, other: -3 });
for (const [sign, unit, power] of SQUARED) EXACT.set(sign, { unit, power, note: null, other: null });
// a character that an encoding destroyed (U+FFFD) stood for µ or Ω: the kind must say which
EXACT.set('\ufffd', { unit: null, power: 0, note: 'lost', other: null });
EXACT.set('\ufffdF', { unit: 'F', power: -6, note: 'lost', other: null });
EXACT.set('\ufffdH', { unit: 'H', power: -6, note: 'lost', other: null });
for (const [prefix, power] of [
  ['k', 3],
  ['K', 3],
  ['M', 6],
] as const)
  EXACT.set(`${prefix}\ufffd`, { unit: 'ohm', power, note: 'lost', other: null });
EXACT.set('P', { unit: null, power: -12, note: 'pins', other: null });

function addRow(row: UnitRow): void {
  const smallest = row.smallest ?? 0;
  const largest = row.largest ?? 0;
  for (const [power, prefixes] of PREFIXES) {
    if (power < smallest || power > largest) continue;
    for (const prefix of prefixes) for (const spelling of row.spellings) spell(row, power, prefix, spelling);
  }
}

function spell(row: UnitRow, power: number, prefix: string, spelling: string): void {
  const suffix: Suffix = { unit: row.unit, power: power + scaleOf(spelling), note: row.note ?? null, other: null };
  if (!EXACT.has(prefix + spelling)) EXACT.set(prefix + spelling, suffix);
  const folded = (prefix + spelling).toLowerCase();
  const known = FOLDED.get(folded);
  if (!known) FOLDED.set(folded, prefix === 'm' && row.upperM === 6 ? { ...suffix, other: 6 } : suffix);
  else if (prefix === 'M' && row.upperM === 6) FOLDED.set(folded, { ...suffix, other: row.unit === 'ohm' ? -3 : null });
  if (prefix === 'm' && row.upperM !== undefined) upperCase(row, spelling.toUpperCase());
}

/** Upper case throughout: `10MH`, `16MHZ`, `100MA`; an exact reading in mixed case stays as it is. */
function upperCase(row: UnitRow, spelling: string): void {
  const power = row.upperM ?? 0;
  if (row.unit === 'ohm' && spelling !== 'R' && spelling !== 'Ω')
    EXACT.set(`M${spelling}`, { unit: 'ohm', power, note: null, other: -3 });
  else if (row.unit !== 'ohm') EXACT.set(`M${spelling}`, { unit: row.unit, power, note: row.note ?? null, other: null });
}

function bare(prefix: string, power: number, unit: string | null = null): void {
  if (!EXACT.has(prefix) || unit) EXACT.set(prefix, { unit, power, note: null, other: null });
}

function scaleOf(spelling: string): number {
  if (/^mm$/i.test(spelling)) return -3;
  return /^cm$/i.test(spelling) ? -2 : 0;
}
