import type { Kind } from '#core/part/part.ts';

/** What a kind is called: alone, and when there are several of it. */
const KINDS: Readonly<Record<Kind, readonly [one: string, several: string]>> = {
  resistor: ['resistor', 'resistors'],
  'resistor-network': ['resistor network', 'resistor networks'],
  potentiometer: ['potentiometer', 'potentiometers'],
  thermistor: ['thermistor', 'thermistors'],
  varistor: ['varistor', 'varistors'],
  capacitor: ['capacitor', 'capacitors'],
  inductor: ['inductor', 'inductors'],
  ferrite: ['ferrite', 'ferrites'],
  transformer: ['transformer', 'transformers'],
  diode: ['diode', 'diodes'],
  zener: ['zener diode', 'zener diodes'],
  tvs: ['TVS diode', 'TVS diodes'],
  led: ['LED', 'LEDs'],
  transistor: ['transistor', 'transistors'],
  mosfet: ['MOSFET', 'MOSFETs'],
  ic: ['IC', 'ICs'],
  regulator: ['regulator', 'regulators'],
  crystal: ['crystal', 'crystals'],
  oscillator: ['oscillator', 'oscillators'],
  connector: ['connector', 'connectors'],
  header: ['header', 'headers'],
  switch: ['switch', 'switches'],
  relay: ['relay', 'relays'],
  fuse: ['fuse', 'fuses'],
  battery: ['battery', 'batteries'],
  sensor: ['sensor', 'sensors'],
  module: ['module', 'modules'],
  display: ['display', 'displays'],
  speaker: ['speaker', 'speakers'],
  testpoint: ['test point', 'test points'],
  jumper: ['jumper', 'jumpers'],
  screw: ['screw', 'screws'],
  nut: ['nut', 'nuts'],
  washer: ['washer', 'washers'],
  standoff: ['standoff', 'standoffs'],
  wire: ['wire', 'wires'],
  mechanical: ['mechanical part', 'mechanical parts'],
  other: ['other part', 'other parts'],
  'not-a-part': ['not a part', 'no parts'],
};

/** `resistor`, `LED`, `test point`. */
export function kindWord(kind: Kind): string {
  return KINDS[kind][0];
}

/** `resistors`, `LEDs`, `test points`. */
export function kindWords(kind: Kind): string {
  return KINDS[kind][1];
}

/** `resistor` → `Resistor`. */
export function begun(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
