import type { FactKey, Kind } from '#core/part/part.ts';

/** How a bag's fact answers a line's. */
export type Rule =
  | 'equal' // must be the same, else nothing serves
  | 'judge' // a difference is for a person
  | 'at-least' // more betters
  | 'at-most' // less betters
  | 'dielectric' // by the order of dielectrics
  | 'package' // by outline
  | 'near' // equal to a tenth is for a person, else another
  | 'told' // must be the same, and silence says that it is not so
  | 'variant' // word by word: some exclude each other, others are for a person
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
  /** why nothing but the same part number is more than a check: fuses, cells, mains parts are never substituted by rule; words describe too little, or do unless they are equal and say a measure (`words`) */
  readonly unnamed: 'safety' | 'described' | 'words' | null;
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
const VARIANT = rule('variant', 'variant');
const RATED: readonly FactRule[] = rule('at-least', 'voltage', 'power', 'current');

function rules(identity: readonly FactKey[], facts: readonly FactRule[], number: KindRules['number'], unnamed: KindRules['unnamed'] = null): KindRules {
  const known = new Set(facts.map(({ key }) => key));
  return { identity, facts: [...facts, ...ALWAYS.filter(({ key }) => !known.has(key))], number, unnamed };
}

const VALUE = rule('equal', 'value');
const passive = (number: KindRules['number'], ...more: FactRule[]): KindRules =>
  rules(['value'], [...VALUE, ...RATED, ...rule('at-most', 'temperature-coefficient'), ...rule('judge', 'technology'), ...more, ...(more.some(({ key }) => key === 'variant') ? [] : VARIANT)], number);
const named = (...more: FactRule[]): KindRules =>
  rules(['partNumber', 'variant', 'polarity', 'value'], [...more, ...VARIANT, ...rule('equal', 'polarity'), ...matters('equal', 'value'), ...RATED, ...rule('equal', 'pins'), ...rule('judge', 'technology')], 'names-it', 'described');
const fastener = (...more: FactRule[]): KindRules =>
  rules(['thread'], [...rule('equal', 'thread'), ...more, ...matters('judge', 'material'), ...rule('judge', 'colour', 'drive'), ...matters('variant', 'variant')], 'made-alike');
const described = (unnamed: KindRules['unnamed'], ...identity: FactKey[]): KindRules =>
  rules(['partNumber', 'value', ...identity], [...VALUE, ...matters('equal', 'pins', 'pitch'), ...RATED, ...matters('judge', 'colour', 'length'), ...matters('equal', 'diameter'), ...matters('variant', 'variant')], 'judge', unnamed);
/** The voltage of a motor, a fan, a buzzer is what it runs on, no rating. */
const supplied = (unnamed: KindRules['unnamed'], ...identity: FactKey[]): KindRules => {
  const base = described(unnamed, ...identity);
  return { ...base, facts: base.facts.map((one) => (one.key === 'voltage' ? { ...one, rule: 'equal' } : one)) };
};

/** Which facts must be equal, which may be bettered and which are never swapped, for each kind. Common practice, no source. */
export const RULES: Readonly<Record<Kind, KindRules>> = {
  resistor: passive('made-alike', ...matters('variant', 'variant')),
  'resistor-network': passive('judge', ...matters('equal', 'pins'), ...matters('variant', 'variant')),
  potentiometer: passive('judge', ...matters('variant', 'variant')),
  thermistor: passive('judge', ...matters('variant', 'variant')),
  varistor: rules(['value', 'voltage'], [...rule('equal', 'value', 'voltage'), ...rule('equal', 'diameter')], 'judge', 'safety'),
  capacitor: passive('made-alike', ...rule('dielectric', 'dielectric'), ...rule('near', 'pitch'), ...rule('judge', 'diameter', 'length')),
  inductor: passive('judge'),
  ferrite: passive('judge'),
  transformer: rules(['partNumber', 'value', 'variant'], [...VALUE, ...rule('equal', 'voltage'), ...rule('at-least', 'power', 'current'), ...matters('variant', 'variant')], 'names-it', 'safety'),
  diode: named(),
  zener: rules(['value', 'partNumber'], [...VALUE, ...rule('at-least', 'power', 'current'), ...VARIANT], 'judge'),
  tvs: rules(['value', 'partNumber', 'voltage'], [...rule('equal', 'value', 'voltage'), ...rule('at-least', 'power', 'current'), ...matters('variant', 'variant')], 'judge'),
  led: rules(['colour', 'package', 'partNumber'], [...matters('equal', 'colour', 'diameter'), ...rule('judge', 'value', 'voltage', 'current'), ...matters('variant', 'variant')], 'judge'),
  transistor: named(),
  mosfet: named(),
  ic: named(),
  regulator: named(),
  crystal: rules(['value'], [...VALUE, ...matters('equal', 'load-capacitance'), ...VARIANT], 'judge'),
  oscillator: rules(['value'], [...VALUE, ...matters('equal', 'voltage'), ...VARIANT], 'judge'),
  connector: described('words', 'pins', 'variant'),
  header: described(null, 'pins'),
  switch: described('words', 'variant'),
  relay: rules(['partNumber', 'voltage'], [...rule('equal', 'voltage'), ...rule('at-least', 'current'), ...matters('variant', 'variant')], 'names-it', 'safety'),
  fuse: rules(['value', 'current', 'partNumber'], [...rule('equal', 'value', 'current'), ...rule('at-least', 'voltage'), ...matters('told', 'technology'), ...matters('variant', 'variant')], 'judge', 'safety'),
  battery: rules(['partNumber', 'package', 'variant'], [...rule('near', 'voltage'), ...rule('judge', 'technology'), ...matters('variant', 'variant')], 'names-it', 'safety'),
  sensor: named(),
  module: named(),
  display: named(...rule('equal', 'colour')),
  speaker: supplied('words', 'diameter', 'variant'),
  testpoint: described(null, 'colour', 'package', 'variant'),
  jumper: described(null, 'pitch', 'length', 'package', 'variant'),
  screw: fastener(...matters('equal', 'length', 'head')),
  nut: fastener(),
  washer: fastener(...rule('equal', 'diameter')),
  standoff: fastener(...matters('equal', 'length')),
  wire: described('words', 'diameter', 'variant'),
  mechanical: described('words', 'thread', 'variant'),
  other: supplied('words', 'variant'),
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
