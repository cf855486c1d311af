import { wordFact, type Part } from '#core/part/part.ts';
import { sizeClass, type SizeClass } from './size-class.ts';

const CHIPS: readonly SizeClass[] = ['chip-0201', 'chip-0402', 'chip-0603', 'chip-large', 'small-outline'];
const SURFACE =
  /^(?:T?S?SOP|V?SSOP|MSOP|SO|SOIC|[LTVH]?QFP|[VUW]?QFN|DFN|SON|BGA|WLCSP|SMA|SMB|SMC|SMF|MELF|MINIMELF|D2?PAK|TO-25|TO-26|SOJ|PLCC)/i;

/**
 * Where a part comes when a board is soldered, small first: chips by size, then small outlines and fine-pitch ICs, then leaded
 * parts from low to tall, connectors and hardware, cells last. Common practice, no source.
 */
export function solderRank(part: Part): number {
  const chip = CHIPS.indexOf(sizeClass(part));
  if (chip >= 0) return chip;
  if (SURFACE.test(wordFact(part, 'package') ?? '')) return CHIPS.length;
  return 10 + (LEADED[part.kind] ?? 5) + (wordFact(part, 'technology') === 'electrolytic' ? 4 : 0);
}

const LEADED: Partial<Record<Part['kind'], number>> = {
  jumper: 0,
  wire: 0,
  resistor: 1,
  diode: 1,
  zener: 1,
  tvs: 1,
  inductor: 1,
  ferrite: 1,
  'resistor-network': 2,
  ic: 2,
  crystal: 2,
  oscillator: 2,
  capacitor: 3,
  thermistor: 3,
  varistor: 3,
  transistor: 4,
  mosfet: 4,
  regulator: 4,
  led: 4,
  sensor: 4,
  testpoint: 4,
  potentiometer: 6,
  switch: 6,
  header: 7,
  connector: 7,
  fuse: 7,
  module: 8,
  display: 8,
  speaker: 8,
  relay: 8,
  transformer: 9,
  standoff: 11,
  screw: 11,
  nut: 11,
  washer: 11,
  mechanical: 11,
  battery: 12,
};
