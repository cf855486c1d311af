import type { FactKey, Kind } from './part.ts';

/** What a kind is a special case of: evidence for a resistor also speaks for a potentiometer that was named as well. */
export const PARENT: Readonly<Partial<Record<Kind, Kind>>> = {
  'resistor-network': 'resistor', potentiometer: 'resistor', thermistor: 'resistor', varistor: 'resistor',
  ferrite: 'inductor', transformer: 'inductor', zener: 'diode', tvs: 'diode', led: 'diode', mosfet: 'transistor',
  regulator: 'ic', sensor: 'ic', module: 'ic', display: 'ic', oscillator: 'crystal', header: 'connector', jumper: 'connector',
  screw: 'mechanical', nut: 'mechanical', washer: 'mechanical', standoff: 'mechanical',
};

/** What the numbers of a kind mean. `value` is the unit of its value; `letters` begin its part code (IEEE 315 letters, else the trade's). */
export interface KindRow {
  readonly letters: string;
  readonly value?: string;
  /** facts that its text may state, apart from those that any part may have */
  readonly facts: readonly FactKey[];
}

export const KIND_ROWS: Readonly<Record<Kind, KindRow>> = {
  resistor: { letters: 'R', value: 'ohm', facts: ['tolerance-low', 'voltage', 'power', 'temperature-coefficient', 'technology'] },
  'resistor-network': { letters: 'RN', value: 'ohm', facts: ['tolerance-low', 'voltage', 'power', 'pins'] },
  potentiometer: { letters: 'RP', value: 'ohm', facts: ['tolerance-low', 'power', 'voltage'] },
  thermistor: { letters: 'RT', value: 'ohm', facts: ['tolerance-low'] },
  varistor: { letters: 'RV', facts: ['voltage', 'diameter'] },
  capacitor: { letters: 'C', value: 'F', facts: ['tolerance-low', 'voltage', 'dielectric', 'technology', 'polarised', 'safety', 'temperature-high', 'pitch'] },
  inductor: { letters: 'L', value: 'H', facts: ['tolerance-low', 'current', 'power'] },
  ferrite: { letters: 'FB', value: 'ohm', facts: ['tolerance-low', 'current'] },
  transformer: { letters: 'T', facts: ['voltage', 'power', 'current'] },
  diode: { letters: 'D', facts: ['voltage', 'current', 'power'] },
  zener: { letters: 'DZ', value: 'V', facts: ['tolerance-low', 'power', 'current'] },
  tvs: { letters: 'DT', facts: ['voltage', 'power'] },
  led: { letters: 'LED', facts: ['colour', 'current', 'power'] },
  transistor: { letters: 'Q', facts: ['voltage', 'current', 'power', 'polarity'] },
  mosfet: { letters: 'QM', facts: ['voltage', 'current', 'power', 'polarity'] },
  ic: { letters: 'U', facts: [] },
  regulator: { letters: 'UR', value: 'V', facts: ['current', 'tolerance-low'] },
  crystal: { letters: 'Y', value: 'Hz', facts: ['tolerance-low', 'load-capacitance'] },
  oscillator: { letters: 'G', value: 'Hz', facts: ['tolerance-low', 'voltage'] },
  connector: { letters: 'J', facts: ['pins', 'pitch', 'voltage', 'current'] },
  header: { letters: 'JH', facts: ['pins', 'pitch', 'length', 'voltage', 'current'] },
  switch: { letters: 'S', facts: ['voltage', 'current'] },
  relay: { letters: 'K', facts: ['voltage', 'current'] },
  fuse: { letters: 'F', value: 'A', facts: ['voltage', 'safety', 'technology'] },
  battery: { letters: 'BT', facts: ['voltage'] },
  sensor: { letters: 'US', facts: [] },
  module: { letters: 'A', facts: [] },
  display: { letters: 'DS', facts: ['colour'] },
  speaker: { letters: 'LS', value: 'ohm', facts: ['power', 'voltage'] },
  testpoint: { letters: 'TP', facts: ['colour'] },
  jumper: { letters: 'W', facts: ['pins', 'pitch'] },
  screw: { letters: 'HS', facts: ['thread', 'length', 'head', 'drive', 'material'] },
  nut: { letters: 'HN', facts: ['thread', 'length', 'material'] },
  washer: { letters: 'HW', facts: ['thread', 'material'] },
  standoff: { letters: 'HB', facts: ['thread', 'length', 'material'] },
  wire: { letters: 'WC', facts: ['colour', 'length', 'diameter', 'pins'] },
  mechanical: { letters: 'MP', facts: ['thread', 'length', 'material'] },
  other: { letters: 'X', facts: ['voltage', 'power', 'current'] },
  'not-a-part': { letters: 'NP', facts: [] },
};
