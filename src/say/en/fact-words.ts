import type { Fact, Kind } from '#core/part/part.ts';
import type { Decimal } from '#core/quantity/decimal.ts';
import { plainDigits, writeQuantity } from '#core/quantity/write-quantity.ts';

/** Between a number and its unit: narrow, and never broken. */
const NARROW = '\u202f';
const MINUS = '\u2212';

/** A fact's value on a screen: 47e2 ohm → `4.7 kΩ`, 1e-2 fraction → `1 %`, 8e-3 m → `8 mm`; a word as it is spelled for people. */
export function sayFact({ value, unit }: Fact): string {
  if (unit === null) return sayWord(value);
  const number = value as Decimal; // as: a fact with a unit holds a canonical decimal
  if (unit === 'fraction') return `${plainDigits(number, 2)}${NARROW}%`;
  if (unit === 'count') return plainDigits(number);
  if (unit === 'm') return `${plainDigits(number, 3)}${NARROW}mm`;
  if (unit === 'degC') return `${plainDigits(number).replace('-', MINUS)}${NARROW}°C`;
  if (unit === '1/K') return `${plainDigits(number, 6)}${NARROW}ppm/K`;
  // a supercapacitor is sold by the farad
  if (unit === 'F' && Number(number) >= 0.1) return `${plainDigits(number)}${NARROW}F`;
  return writeQuantity(number, unit).replace(' ', NARROW);
}

/** `±1 %`, `−20/+80 %`, `±0.5 pF`; of what swings, in ppm: `±30 ppm`. */
export function sayTolerance(low: Fact, high: Fact, kind: Kind): string {
  const ppm = low.unit === 'fraction' && (kind === 'crystal' || kind === 'oscillator');
  // as: a tolerance is a canonical decimal
  const size = (fact: Fact): string => (ppm ? `${plainDigits(fact.value as Decimal, 6)}${NARROW}ppm` : sayFact(fact));
  if (low.value === high.value) return `±${size(low)}`;
  const [less] = size(low).split(NARROW);
  return `${MINUS}${less}/+${size(high)}`;
}

/** Words whose letters or strokes stand otherwise in a sentence; the rest is said as it is kept. */
const WORDS: Readonly<Record<string, string>> = {
  npn: 'NPN',
  pnp: 'PNP',
  'n-channel': 'N-channel',
  'p-channel': 'P-channel',
  mf: 'male–female',
  ff: 'female–female',
  mm: 'male–male',
  dc: 'DC',
  'usb-c': 'USB-C',
  'usb-micro-b': 'USB micro-B',
  'usb-mini-b': 'USB mini-B',
  'usb-a': 'USB-A',
  'usb-b': 'USB-B',
  bnc: 'BNC',
  sma: 'SMA',
  rj45: 'RJ45',
  rj11: 'RJ11',
  'd-sub': 'D-sub',
  ffc: 'FFC',
  microsd: 'microSD',
  sd: 'SD',
  sim: 'SIM',
  xh: 'XH',
  ph: 'PH',
  zh: 'ZH',
  sh: 'SH',
  ic: 'IC',
  spst: 'SPST',
  spdt: 'SPDT',
  dpst: 'DPST',
  dpdt: 'DPDT',
  sp3t: 'SP3T',
  dip: 'DIP',
  oled: 'OLED',
  lcd: 'LCD',
  tft: 'TFT',
  ptc: 'PTC',
  bi: 'bidirectional',
  uni: 'unidirectional',
  'low-esr': 'low ESR',
  'screw-terminal': 'screw terminal',
  'heat-sink': 'heat sink',
  'right-angle': 'right angle',
  'breaking-l': 'low breaking capacity',
  'breaking-e': 'enhanced breaking capacity',
  'breaking-h': 'high breaking capacity',
  'taper-a': 'taper A',
  'taper-b': 'taper B',
  'taper-c': 'taper C',
  'common-anode': 'common anode',
  'common-cathode': 'common cathode',
  'common-mode': 'common mode',
  nimh: 'NiMH',
  lifepo4: 'LiFePO4',
  'li-ion': 'Li-ion',
  lipo: 'LiPo',
  'thick-film': 'thick film',
  'thin-film': 'thin film',
  'metal-film': 'metal film',
  'metal-oxide': 'metal oxide',
  carbon: 'carbon film',
  supercap: 'supercapacitor',
  pptc: 'resettable',
  'steel-zinc': 'zinc-plated steel',
  stainless: 'stainless steel',
};

const UNITS = 'mm2|mm|cm|m|nm|in|v|a|ma|w|k|va|ah|mah';
const MEASURE = new RegExp(String.raw`^([\d.]+(?:x[\d.]+)*)(${UNITS})$`);
const SPELLED: Readonly<Record<string, string>> = {
  mm2: 'mm²',
  in: 'inch',
  v: 'V',
  a: 'A',
  ma: 'mA',
  w: 'W',
  k: 'K',
  va: 'VA',
  ah: 'Ah',
  mah: 'mAh',
};

/** `mf` → `male–female`; `6x6mm` → `6 × 6 mm`; `b3950` → `B3950`. */
export function sayWord(word: string): string {
  const known = WORDS[word];
  if (known !== undefined) return known;
  const measure = MEASURE.exec(word);
  if (measure) return `${times(measure[1] ?? '')}${NARROW}${SPELLED[measure[2] ?? ''] ?? measure[2]}`;
  if (/^\d[\d.]*x(?:[\d.]+$|[a-z\d]+$)/.test(word)) return times(word).replaceAll(/[a-z]+/g, (letters) => letters.toUpperCase());
  if (/^awg\d/.test(word)) return `AWG${NARROW}${word.slice(3)}`;
  return /^[a-z]{1,4}\d/.test(word) ? word.toUpperCase() : word;
}

/** `5x20` → `5 × 20`. */
export function times(text: string): string {
  return text.replaceAll(/(?<=\d)x(?=[\da-z])/g, ' × ');
}
