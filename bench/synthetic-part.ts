import type { Fact, FactKey, Kind, Part } from '#core/part/part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import type { Seeded } from './seeded.ts';

const E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91] as const;
const E6 = [10, 22, 47, 33, 15, 68] as const;
const CHIPS = ['0603', '0805', '0402', '1206', '1210', '2512'] as const;
const MAKERS = ['Norvik', 'Halden', 'Tessaro', 'Kumagane', 'Ostrava Electric', 'Brightwell'] as const;
const LETTERS = Array.from('ABCDEFGHJKLMNPRSTUVWXYZ');

type Unit = string | null;
type Rows = readonly (readonly [FactKey, string | number, Unit])[];

function part(kind: Kind, text: string, rows: Rows): Part {
  const facts: Partial<Record<FactKey, Fact>> = {};
  for (const [key, value, unit] of rows)
    facts[key] = { key, value: unit === null ? String(value) : decimal(value), unit, origin: 'stated' };
  return { kind, facts, text };
}

/** 4.7e3 → `4.7k`; 1e-7 → `100n`. */
export function short(value: number): string {
  const steps = [
    [1e9, 'G'],
    [1e6, 'M'],
    [1e3, 'k'],
    [1, ''],
    [1e-3, 'm'],
    [1e-6, 'u'],
    [1e-9, 'n'],
    [1e-12, 'p'],
  ] as const;
  const [size, prefix] = steps.find(([size]) => value >= size * 0.9999999) ?? [1e-12, 'p'];
  return `${Number((value / size).toPrecision(4))}${prefix}`;
}

const exact = (digits: number, power: number): string => `${digits}e${power}`;
const sides = (fraction: string): Rows => [
  ['tolerance-low', fraction, 'fraction'],
  ['tolerance-high', fraction, 'fraction'],
];

function resistor(chance: Seeded): Part {
  const value = exact(chance.pick(E24), chance.whole(-1, 4));
  const [tolerance, percent] = chance.often([
    ['0.01', '1%'],
    ['0.05', '5%'],
    ['0.001', '0.1%'],
  ] as const);
  const body = chance.often(CHIPS);
  const rows: Rows = [['value', value, 'ohm'], ...sides(tolerance), ['package', body, null]];
  const maker = chance.pick(MAKERS);
  return chance.next() < 0.3
    ? part('resistor', `${short(Number(value))} ${percent} ${body} ${maker}`, [...rows, ['maker', maker, null]])
    : part('resistor', `resistor ${short(Number(value))} ${percent} ${body}`, rows);
}

function ceramic(chance: Seeded): Part {
  const value = exact(chance.often(E6), chance.whole(-13, -7));
  const small = Number(value) < 1e-9;
  const [dielectric, body, volts] = [
    small ? 'C0G' : chance.often(['X7R', 'X5R', 'Y5V']),
    chance.often(CHIPS),
    chance.often([50, 25, 16, 100, 10, 6.3]),
  ];
  const rows: Rows = [
    ['value', value, 'F'],
    ['dielectric', dielectric, null],
    ['voltage', volts, 'V'],
    ['package', body, null],
  ];
  return part('capacitor', `${short(Number(value))}F ${volts}V ${dielectric} ${body}`, [
    ...rows,
    ...(chance.next() < 0.5 ? sides('0.1') : []),
  ]);
}

function electrolytic(chance: Seeded): Part {
  const value = exact(chance.often(E6), chance.whole(-7, -4));
  const volts = chance.pick([10, 16, 25, 35, 50, 63]);
  return part('capacitor', `electrolytic ${short(Number(value))}F ${volts}V radial`, [
    ['value', value, 'F'],
    ['voltage', volts, 'V'],
    ['technology', 'electrolytic', null],
    ['polarised', 'yes', null],
  ]);
}

function coil(chance: Seeded): Part {
  const value = exact(chance.pick(E6), chance.whole(-8, -5));
  const [body, amps] = [chance.pick(CHIPS), chance.pick([0.1, 0.3, 0.5, 1, 2])];
  return part('inductor', `coil ${short(Number(value))}H ${amps}A ${body}`, [
    ['value', value, 'H'],
    ['current', amps, 'A'],
    ['package', body, null],
  ]);
}

function letters(chance: Seeded, count: number): string {
  return Array.from({ length: count }, () => chance.pick(LETTERS)).join('');
}

/** Invented numbers in the manner of makers: two letters, digits, a grade and a packing letter. */
function numbered(chance: Seeded, kind: Kind, word: string, bodies: readonly string[]): Part {
  const number = `${letters(chance, 2)}${chance.whole(100, 9999)}${letters(chance, chance.whole(0, 2))}`;
  const body = chance.pick(bodies);
  const maker = chance.pick(MAKERS);
  return part(kind, `${number} ${word} ${body} ${maker}`, [
    ['partNumber', number, null],
    ['package', body, null],
    ['maker', maker, null],
  ]);
}

function led(chance: Seeded): Part {
  const [colour, body] = [chance.often(['red', 'green', 'yellow', 'blue', 'white']), chance.pick(['0603', '0805', '3mm', '5mm'])];
  return part('led', `LED ${colour} ${body}`, [
    ['colour', colour, null],
    ['package', body, null],
  ]);
}

function screw(chance: Seeded): Part {
  const [thread, length, drive] = [
    chance.often(['M3', 'M2', 'M2.5', 'M4', 'M5']),
    chance.pick([4, 5, 6, 8, 10, 12, 16, 20, 25, 30]),
    chance.pick(['hex', 'torx', 'phillips']),
  ];
  return part('screw', `screw ${thread}x${length} ${drive}`, [
    ['thread', thread, null],
    ['length', `${length}e-3`, 'm'],
    ['drive', drive, null],
  ]);
}

function header(chance: Seeded): Part {
  const pins = chance.whole(2, 40);
  return part('header', `pin header ${pins} pins 2.54 mm`, [
    ['pins', pins, 'count'],
    ['pitch', '2.54e-3', 'm'],
  ]);
}

/** One part as a lab might have it; about a third resistors, a quarter ceramic capacitors, the rest of everything. */
export function syntheticPart(chance: Seeded): Part {
  const roll = chance.next();
  if (roll < 0.35) return resistor(chance);
  if (roll < 0.58) return ceramic(chance);
  if (roll < 0.62) return electrolytic(chance);
  if (roll < 0.66) return coil(chance);
  if (roll < 0.7) return led(chance);
  if (roll < 0.77) return numbered(chance, 'transistor', 'NPN', ['SOT-23', 'TO-92', 'SOT-223']);
  if (roll < 0.81) return numbered(chance, 'diode', 'diode', ['SOD-123', 'SOD-323', 'DO-41']);
  if (roll < 0.93) return numbered(chance, 'ic', 'amplifier', ['SOIC-8', 'SOIC-14', 'DIP-8', 'TSSOP-16']);
  return roll < 0.97 ? screw(chance) : header(chance);
}
