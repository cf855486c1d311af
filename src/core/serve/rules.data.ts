import type { FactKey, Kind } from '#core/part/part.ts';

/** How a bag's fact answers a line's. */
export type Rule =
  | 'equal' // must be the same, else nothing serves
  | 'judge' // a difference is for a person
  | 'at-least' // more betters
  | 'at-most' // less betters
  | 'dielectric' // by the order of dielectrics
  | 'package' // by outline
  | 'safety'; // never swapped by rule

export interface FactRule {
  readonly key: FactKey;
  readonly rule: Rule;
  /** the bag states it, the line does not, and more is not simply better: a person looks */
  readonly matters: boolean;
}

export interface KindRules {
  /** without one of these equal there is no likeness at all */
  readonly identity: readonly FactKey[];
  readonly facts: readonly FactRule[];
  /** what another part number means while the facts agree: nothing (`made-alike`), a look (`judge`), another part (`names-it`) */
  readonly number: 'made-alike' | 'judge' | 'names-it';
  /** why nothing but the same part number is more than a check: fuses, cells, mains parts are never substituted by rule; words describe too little */
  readonly unnamed: 'safety' | 'described' | null;
}

const rule = (rule: Rule, ...keys: FactKey[]): FactRule[] => keys.map((key) => ({ key, rule, matters: false }));
const matters = (rule: Rule, ...keys: FactKey[]): FactRule[] => keys.map((key) => ({ key, rule, matters: true }));

const ALWAYS: readonly FactRule[] = [
  ...matters('package', 'package'),
  ...matters('safety', 'safety'),
  ...rule('at-most', 'tolerance-low', 'tolerance-high'),
  ...rule('at-most', 'temperature-low'),
  ...rule('at-least', 'temperature-high'),
];
const RATED: readonly FactRule[] = rule('at-least', 'voltage', 'power', 'current');

function rules(identity: readonly FactKey[], facts: readonly FactRule[], number: KindRules['number'], unnamed: KindRules['unnamed'] = null): KindRules {
  const known = new Set(facts.map(({ key }) => key));
  return { identity, facts: [...facts, ...ALWAYS.filter(({ key }) => !known.has(key))], number, unnamed };
}

const VALUE = rule('equal', 'value');
const passive = (number: KindRules['number'], ...more: FactRule[]): KindRules =>
  rules(['value'], [...VALUE, ...RATED, ...rule('at-most', 'temperature-coefficient'), ...rule('judge', 'technology'), ...more], number);
const named = (...more: FactRule[]): KindRules =>
  rules(['partNumber'], [...more, ...rule('equal', 'polarity'), ...matters('judge', 'value'), ...RATED, ...rule('equal', 'pins'), ...rule('judge', 'technology')], 'names-it');
const fastener = (...more: FactRule[]): KindRules =>
  rules(['thread'], [...rule('equal', 'thread'), ...more, ...rule('judge', 'material', 'colour', 'drive'), ...rule('judge', 'variant')], 'made-alike');
const described = (unnamed: KindRules['unnamed'], ...identity: FactKey[]): KindRules =>
  rules(['partNumber', 'value', ...identity], [...VALUE, ...matters('equal', 'pins', 'pitch'), ...RATED, ...matters('judge', 'colour', 'length', 'diameter', 'variant')], 'judge', unnamed);

/** Which facts must be equal, which may be bettered and which are never swapped, for each kind. Common practice, no source. */
export const RULES: Readonly<Record<Kind, KindRules>> = {
  resistor: passive('made-alike', ...rule('judge', 'variant')),
  'resistor-network': passive('judge', ...matters('equal', 'pins'), ...matters('judge', 'variant')),
  potentiometer: passive('judge', ...matters('judge', 'variant')),
  thermistor: passive('judge', ...matters('judge', 'variant')),
  varistor: rules(['value', 'voltage'], [...rule('equal', 'value', 'voltage'), ...rule('equal', 'diameter')], 'judge', 'safety'),
  capacitor: passive('made-alike', ...rule('dielectric', 'dielectric'), ...matters('equal', 'pitch'), ...rule('judge', 'diameter', 'length', 'variant')),
  inductor: passive('judge', ...rule('judge', 'variant')),
  ferrite: passive('judge', ...rule('judge', 'variant')),
  transformer: rules(['partNumber', 'value'], [...VALUE, ...rule('judge', 'voltage', 'variant')], 'names-it', 'safety'),
  diode: named(...rule('judge', 'variant')),
  zener: rules(['value', 'partNumber'], [...VALUE, ...rule('at-least', 'power', 'current'), ...rule('judge', 'variant')], 'judge'),
  tvs: rules(['value', 'partNumber', 'voltage'], [...rule('equal', 'value', 'voltage'), ...rule('at-least', 'power', 'current'), ...matters('judge', 'variant')], 'judge'),
  led: rules(['colour', 'partNumber'], [...matters('equal', 'colour', 'diameter'), ...rule('judge', 'value', 'voltage', 'current', 'variant')], 'judge'),
  transistor: named(...rule('judge', 'variant')),
  mosfet: named(...rule('judge', 'variant')),
  ic: named(...rule('judge', 'variant')),
  regulator: named(...rule('judge', 'variant')),
  crystal: rules(['value'], [...VALUE, ...matters('equal', 'load-capacitance'), ...rule('judge', 'variant')], 'judge'),
  oscillator: rules(['value'], [...VALUE, ...matters('judge', 'voltage', 'variant')], 'judge'),
  connector: described('described', 'pins'),
  header: described(null, 'pins'),
  switch: described('described', 'variant'),
  relay: rules(['partNumber', 'voltage'], [...rule('equal', 'voltage'), ...rule('at-least', 'current'), ...matters('judge', 'variant')], 'names-it', 'safety'),
  fuse: rules(['value', 'current', 'partNumber'], [...rule('equal', 'value', 'current'), ...rule('at-least', 'voltage'), ...rule('judge', 'variant')], 'judge', 'safety'),
  battery: rules(['partNumber', 'package'], [...rule('judge', 'voltage', 'technology', 'variant')], 'names-it', 'safety'),
  sensor: named(...rule('judge', 'variant')),
  module: named(...rule('judge', 'variant')),
  display: named(...rule('judge', 'variant', 'colour')),
  speaker: described('described', 'diameter', 'variant'),
  testpoint: described(null, 'colour', 'package', 'variant'),
  jumper: described(null, 'pitch', 'length', 'package'),
  screw: fastener(...matters('equal', 'length', 'head')),
  nut: fastener(),
  washer: fastener(...rule('equal', 'diameter')),
  standoff: fastener(...matters('equal', 'length')),
  wire: described(null, 'diameter', 'variant'),
  mechanical: described('described', 'thread', 'variant'),
  other: described('described', 'variant'),
  'not-a-part': rules([], [], 'names-it'),
};

/** Kinds that readers may take for each other; between these a part number decides. */
export const ALIKE: readonly (readonly Kind[])[] = [
  ['ic', 'regulator', 'sensor', 'module', 'display', 'oscillator'],
  ['transistor', 'mosfet', 'regulator', 'ic'],
  ['diode', 'zener', 'tvs', 'led'],
  ['connector', 'header', 'jumper', 'testpoint'],
  ['inductor', 'ferrite'],
  ['mechanical', 'screw', 'nut', 'washer', 'standoff'],
];

/** A capacitor whose line names no voltage is served by one of at least this, in volt; below it a person looks. Common practice, no source. */
export const OPEN_VOLTAGE_FLOOR = '16e0';
