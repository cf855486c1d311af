import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Fact, FactKey, Kind, Origin, Part } from '#core/part/part.ts';
import { decimal } from '#core/quantity/decimal.ts';
import { serve } from './serve.ts';
import type { Verdict } from './verdict.ts';

const UNITS: Readonly<Record<string, string>> = {
  voltage: 'V',
  power: 'W',
  current: 'A',
  pins: 'count',
  pitch: 'm',
  length: 'm',
  'load-capacitance': 'F',
};
const VALUE_UNIT: Partial<Record<Kind, string>> = { capacitor: 'F', inductor: 'H', crystal: 'Hz', zener: 'V' };
type Given = Partial<Record<FactKey | 'tolerance', string | number>>;

function part(kind: Kind, given: Given, origin: Origin = 'stated'): Part {
  const facts: Partial<Record<FactKey, Fact>> = {};
  const put = (key: FactKey, value: string | number, unit: string | null): void => {
    facts[key] = { key, value: unit === null ? String(value) : decimal(value), unit, origin };
  };
  for (const [key, value] of Object.entries(given)) {
    if (key === 'tolerance') {
      put('tolerance-low', value, 'fraction');
      put('tolerance-high', value, 'fraction');
    } else if (key === 'value') put('value', value, VALUE_UNIT[kind] ?? 'ohm');
    else put(key as FactKey, value, UNITS[key] ?? null); // as: keys of Given but 'tolerance'
  }
  return { kind, facts, text: '' };
}

function rule(name: string, cases: readonly (readonly [has: Part, asked: Part, verdict: Verdict, why: string])[]): void {
  void test(name, () => {
    for (const [has, asked, verdict, why] of cases) {
      const answer = serve(has, asked);
      assert.equal(answer.verdict, verdict, `${why}: ${JSON.stringify(answer)}`);
      assert.ok(answer.because.length > 0, why);
    }
  });
}

const R = (given: Given): Part => part('resistor', given);
const C = (given: Given): Part => part('capacitor', given);
const line = C({ value: '100e-9', package: '0603', voltage: 25, dielectric: 'X7R' });

rule('a resistor is exact when all that is stated is equal, and a better one serves', [
  [R({ value: 4700, package: '0805', tolerance: 0.01 }), R({ value: 4700, package: '0805', tolerance: 0.01 }), 'exact', 'equal'],
  [
    R({ value: 4700, package: '0805', tolerance: 0.01 }),
    R({ value: 4700, package: '0805', tolerance: 0.05 }),
    'serves',
    'tighter',
  ],
  [
    R({ value: 4700, package: '0805', tolerance: 0.05 }),
    R({ value: 4700, package: '0805', tolerance: 0.01 }),
    'missing',
    'looser',
  ],
  [R({ value: 4700, package: '0805' }), R({ value: 4700, package: '0805', tolerance: 0.01 }), 'check', 'tolerance not stated'],
  [R({ value: 4700, package: '0805', tolerance: 0.01 }), R({ value: 4700, package: '0805' }), 'exact', 'more said than asked'],
  [R({ value: 4700, package: '0603' }), R({ value: 4700, package: '0805' }), 'missing', 'another size'],
  [R({ value: 4700, package: '0603' }), R({ value: 4700 }), 'check', 'the line names no size'],
  [R({ value: 4700 }), R({ value: 4700, package: '0603' }), 'check', 'the bag names no size'],
  [R({ value: 4750, package: '0805' }), R({ value: 4700, package: '0805' }), 'missing', 'another value'],
  [R({ value: 4700, package: '0603' }), R({ value: 4700, package: '0603', power: 0.1 }), 'serves', 'usual power of the size'],
  [R({ value: 4700, package: '0603' }), R({ value: 4700, package: '0603', power: 0.25 }), 'check', 'more than the usual power'],
]);

rule('a capacitor betters voltage and dielectric, never size or value', [
  [C({ value: '100e-9', package: '0603', voltage: 25, dielectric: 'X7R' }), line, 'exact', 'equal'],
  [C({ value: '100e-9', package: '0603', voltage: 50, dielectric: 'X7R' }), line, 'serves', 'more volts'],
  [C({ value: '100e-9', package: '0603', voltage: 16, dielectric: 'X7R' }), line, 'missing', 'fewer volts'],
  [C({ value: '100e-9', package: '0603', voltage: 25, dielectric: 'C0G' }), line, 'serves', 'better dielectric'],
  [C({ value: '100e-9', package: '0603', voltage: 25, dielectric: 'X5R' }), line, 'missing', 'poorer dielectric'],
  [C({ value: '100e-9', package: '0603', voltage: 25 }), line, 'check', 'dielectric not stated'],
  [C({ value: '100e-9', package: '0603', dielectric: 'X7R' }), line, 'check', 'voltage not stated'],
  [C({ value: '100e-9', package: '0805', voltage: 25, dielectric: 'X7R' }), line, 'missing', 'another size'],
]);

const open = C({ value: '100e-9', package: '0603' });
rule('a line that names no voltage is served by a usual one; a low or unknown one is looked at', [
  [C({ value: '100e-9', package: '0603', voltage: 50, dielectric: 'X7R' }), open, 'serves', '50 V'],
  [C({ value: '100e-9', package: '0603', voltage: 6.3, dielectric: 'X7R' }), open, 'check', '6.3 V'],
  [open, open, 'check', 'nobody says'],
  [C({ value: '100e-9', package: '0603', voltage: 50, dielectric: 'Y5V' }), open, 'check', 'a poor dielectric'],
]);

rule('a polarised part never answers a ceramic line, and is looked at where the line is silent', [
  [
    C({ value: '10e-6', package: 'EIA-3216', voltage: 16, technology: 'tantalum' }),
    C({ value: '10e-6', package: '1206', voltage: 16 }),
    'missing',
    'tantalum case',
  ],
  [
    C({ value: '10e-6', voltage: 50, technology: 'electrolytic' }),
    C({ value: '10e-6', voltage: 16, technology: 'ceramic' }),
    'missing',
    'electrolytic',
  ],
  [C({ value: '10e-6', voltage: 50, technology: 'electrolytic' }), C({ value: '10e-6', voltage: 16 }), 'check', 'line is silent'],
  [
    C({ value: '10e-6', voltage: 25, technology: 'electrolytic' }),
    C({ value: '10e-6', voltage: 16, technology: 'electrolytic' }),
    'serves',
    'more volts',
  ],
  [
    C({ value: '10e-6', voltage: 25, technology: 'electrolytic' }),
    C({ value: '10e-6', technology: 'electrolytic' }),
    'check',
    'voltage of an electrolytic is open',
  ],
]);

const x2 = C({ value: '100e-9', safety: 'X2', voltage: 275, 'voltage-kind': 'ac', pitch: '15e-3' });
rule('interference-suppression capacitors are never swapped by rule', [
  [x2, x2, 'exact', 'all stated and equal'],
  [C({ value: '100e-9', voltage: 630, pitch: '15e-3' }), x2, 'missing', 'plain film'],
  [
    C({ value: '100e-9', safety: 'X2', voltage: 310, 'voltage-kind': 'ac', pitch: '15e-3' }),
    x2,
    'check',
    'more volts, still by hand',
  ],
  [
    C({ value: '100e-9', safety: 'Y2', voltage: 275, 'voltage-kind': 'ac', pitch: '15e-3' }),
    x2,
    'check',
    'Y2 may stand for X2, by hand',
  ],
  [x2, C({ value: '100e-9', safety: 'Y2', voltage: 275, 'voltage-kind': 'ac', pitch: '15e-3' }), 'missing', 'X2 never for Y2'],
  [x2, C({ value: '100e-9', voltage: 250, pitch: '15e-3' }), 'check', 'the line asks for no X2'],
]);

rule('a fuse or a cell is matched by its number only', [
  [
    part('fuse', { current: 1, safety: 'T', package: '5x20' }),
    part('fuse', { current: 1, safety: 'T', package: '5x20' }),
    'check',
    'alike, by hand',
  ],
  [
    part('fuse', { current: 1, safety: 'F', package: '5x20' }),
    part('fuse', { current: 1, safety: 'T', package: '5x20' }),
    'missing',
    'another characteristic',
  ],
  [part('battery', { partNumber: 'CR2032' }), part('battery', { partNumber: 'cr2032' }), 'exact', 'the same cell'],
  [part('battery', { partNumber: 'LIR2032' }), part('battery', { partNumber: 'CR2032' }), 'missing', 'another chemistry'],
]);

const ic = (partNumber: string, more: Given = {}): Part => part('ic', { partNumber, ...more });
rule('what has a name is matched by its name', [
  [ic('LM358DR', { package: 'SOIC-8' }), ic('lm358dr'), 'exact', 'letter case'],
  [ic('LM358', { package: 'DIP-8' }), ic('LM358', { package: 'SOIC-8' }), 'missing', 'another package'],
  [ic('LM358'), ic('LM358', { package: 'SOIC-8' }), 'check', 'a type name without its package'],
  [ic('STM32F103C8T6'), ic('STM32F103C8T6', { package: 'LQFP-48' }), 'exact', 'a full number says its package'],
  [ic('LM358DR', { package: 'SOIC-8' }), ic('LM358', { package: 'SOIC-8' }), 'check', 'a head of the number'],
  [ic('LM3580'), ic('LM358'), 'missing', 'another number'],
  [ic('AMS1117-5.0'), ic('AMS1117-3.3'), 'missing', 'another voltage'],
  [ic('SN74HC595N'), ic('74HC595N'), 'exact', 'the head of the maker'],
  [part('transistor', { partNumber: 'BC547B' }), part('transistor', { partNumber: '2N3904' }), 'missing', 'another transistor'],
  [part('regulator', { partNumber: 'LM7805CT' }), ic('LM7805CT'), 'exact', 'kinds that readers mix'],
  [part('resistor', { value: 1000 }), ic('LM358'), 'missing', 'nothing alike'],
  [ic('LM358'), part('ic', { package: 'SOIC-8' }), 'missing', 'a line without a name'],
]);

rule('names of one outline are one; look-alikes are looked at', [
  [
    part('transistor', { partNumber: 'MMBT3904', package: 'TO-236AB' }),
    part('transistor', { partNumber: 'MMBT3904', package: 'SOT-23' }),
    'exact',
    'TO-236AB is SOT-23',
  ],
  [
    part('transistor', { partNumber: 'MMBT3904', package: 'SC-59' }),
    part('transistor', { partNumber: 'MMBT3904', package: 'SOT-23' }),
    'check',
    'SC-59 is not',
  ],
  [
    part('diode', { partNumber: 'SS14', package: 'DO-214AA' }),
    part('diode', { partNumber: 'SS14', package: 'DO-214AC' }),
    'missing',
    'SMB is not SMA',
  ],
]);

const decoded = part(
  'capacitor',
  { value: '100e-9', package: '0603', voltage: 50, dielectric: 'X7R', technology: 'ceramic', partNumber: 'GRM188R71H104KA93D' },
  'decoded',
);
rule('what a dielectric or a size says already is not asked again', [
  [C({ value: '100e-9', package: '0603', voltage: 50, dielectric: 'X7R' }), decoded, 'serves', 'ceramic goes without saying'],
  [
    R({ value: 1000, package: '0603' }),
    part('resistor', { value: 1000, package: '0603', technology: 'thick-film' }, 'decoded'),
    'exact',
    'thick film',
  ],
  [
    part('regulator', { partNumber: 'AMS1117-3.3' }),
    part('regulator', { partNumber: 'AMS1117-3.3', package: 'SOT-223' }),
    'check',
    'a type made in several packages',
  ],
]);

rule('another maker of a generic part serves; of a coil, a person looks', [
  [
    R({ value: 1000, package: '0603', partNumber: 'AB0603-1K', tolerance: 0.01 }),
    R({ value: 1000, package: '0603', partNumber: 'XY0603FT1K', tolerance: 0.01 }),
    'serves',
    'resistor',
  ],
  [
    part('inductor', { value: '10e-6', partNumber: 'A1' }),
    part('inductor', { value: '10e-6', partNumber: 'B2' }),
    'check',
    'inductor',
  ],
]);

rule('a screw is told by thread and length, a header by pins and pitch', [
  [
    part('screw', { thread: 'M3x0.5', length: '8e-3', head: 'pan' }),
    part('screw', { thread: 'M3', length: '8e-3', head: 'pan' }),
    'exact',
    'coarse pitch',
  ],
  [part('screw', { thread: 'M3', length: '10e-3' }), part('screw', { thread: 'M3', length: '8e-3' }), 'missing', 'longer'],
  [part('header', { pins: 4, pitch: '2.54e-3' }), part('header', { pins: 4, pitch: '2.5e-3' }), 'missing', '2.50 is not 2.54'],
  [
    part('crystal', { value: 16e6, 'load-capacitance': '18e-12' }),
    part('crystal', { value: 16e6, 'load-capacitance': '12e-12' }),
    'missing',
    'another load',
  ],
]);

void test('an assumed fact is never exact', () => {
  const asked = part('resistor', { value: 1000, package: '0603' }, 'assumed');
  assert.equal(serve(R({ value: 1000, package: '0603' }), asked).verdict, 'serves');
});

void test('±0.25 pF and ±5 % are compared by what they come to', () => {
  const absolute = (value: string): Part => {
    const fact = (key: 'tolerance-low' | 'tolerance-high'): Fact => ({ key, value: decimal(value), unit: 'F', origin: 'stated' });
    const base = C({ value: '10e-12', package: '0603', voltage: 50 });
    return {
      ...base,
      facts: { ...base.facts, 'tolerance-low': fact('tolerance-low'), 'tolerance-high': fact('tolerance-high') },
    };
  };
  const asked = C({ value: '10e-12', package: '0603', voltage: 50, tolerance: 0.05 });
  assert.equal(serve(absolute('0.25e-12'), asked).verdict, 'serves');
  assert.equal(serve(absolute('0.5e-12'), asked).verdict, 'exact');
  assert.equal(serve(absolute('1e-12'), asked).verdict, 'missing');
});
