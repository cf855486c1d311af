import { packageAt } from './package.ts';
import { FOOTPRINT_KINDS, IPC_CHIPS, IPC_MOULDED_DIODES, IPC_SOT } from './packages.data.ts';
import type { Kind } from './part.ts';
import { ALONE_METRIC, AXIAL, bareSize, BODIES, FROM_METRIC, IMPERIAL, type PackageReading } from './sizes.ts';

/** What the name of a footprint says: the package, and for which kinds of part such names are drawn. */
export interface FootprintReading {
  readonly name: string | null;
  readonly of?: readonly Kind[];
  readonly other?: string;
  readonly kinds: readonly (readonly [kind: Kind, weight: number])[];
}

/** `"Resistor_SMD:R_0603_1608Metric"` → 0603, resistor; `"CAPC1608X90N"` → 0603, capacitor; `"DIL08"` → DIP-8. */
export function readFootprint(cell: string): FootprintReading {
  const name = cell.slice(cell.lastIndexOf(':') + 1).trim();
  const kinds = footprintKinds(name.toUpperCase(), cell.toUpperCase());
  const found = ipcName(name.toUpperCase()) ?? scanName(name, kinds);
  if (!found) return { name: null, kinds };
  return { name: found.name, kinds, ...(found.of ? { of: found.of } : {}), ...(found.other ? { other: found.other } : {}) };
}

function footprintKinds(name: string, whole: string): [Kind, number][] {
  const kinds: [Kind, number][] = [];
  for (const [pattern, kind, weight] of FOOTPRINT_KINDS) {
    if (pattern.test(name)) kinds.push([kind, weight]);
    else if (whole !== name && weight > 4 && pattern.test(whole)) kinds.push([kind, weight - 2]);
  }
  return kinds;
}

type Named = Pick<PackageReading, 'name' | 'of' | 'other'>;

function ipcName(name: string): Named | null {
  const chip = /^(RESC|CAPC|INDC|LEDC|DIOC|FUSC|BEADC|THRMC|VARC)(\d{4})(?=X|N|M|L|W|_|-|$)/.exec(name);
  if (chip && IPC_CHIPS.some(([prefix]) => prefix === chip[1])) {
    const size = FROM_METRIC.get(chip[2] ?? '') ?? nearMetric(chip[2] ?? '');
    return size ? { name: size } : null;
  }
  const tantalum = /^CAPMP?(\d{4})X/.exec(name);
  if (tantalum) return { name: `EIA-${tantalum[1]}` };
  const moulded = /^(?:DIOM|SODFL|SOD)(\d\d)\d\dX/.exec(name);
  const diode = moulded && IPC_MOULDED_DIODES.find(([lengths]) => lengths.split(' ').includes(moulded[1] ?? ''));
  if (diode) return { name: diode[1] };
  const melf = /^(?:DIO|RES)MELF(\d\d)/.exec(name);
  if (melf) return { name: Number(melf[1]) > 40 ? 'MELF' : 'SOD-80' };
  const sot = /^SOT(\d+)P\d+X\d+-(\d)/.exec(name);
  if (sot) return nonEmpty(IPC_SOT[sot[1] ?? '']?.[Number(sot[2]) - 3] ?? '');
  const dip = /^DIP\d+W\d+P\d+L\d+H\d+Q(\d+)/.exec(name);
  if (dip) return { name: `DIP-${dip[1]}` };
  const pitch = /^(SOIC|TSSOP|SSOP|SOP|QFP|QFN|SON|DFN|BGA|PLCC|SOJ|TO)\d+P\d+X\d+(?:X\d+)?(?:X\d+)?-(\d+)/.exec(name);
  return pitch && pitch[1] !== 'TO' ? { name: `${pitch[1]}-${withoutTab(pitch[1] ?? '', pitch[2] ?? '')}` } : null;
}

function nonEmpty(name: string): Named | null {
  return name ? { name } : null;
}

/** QFN and SON patterns count the thermal tab as a pin: an odd count is one too many. */
function withoutTab(family: string, pins: string): number {
  const count = Number(pins);
  return /QFN|SON|DFN/.test(family) && count % 2 === 1 ? count - 1 : count;
}

/** Libraries round bodies differently: `1607`, `2013`, `3217`; one tenth off is the same chip. */
function nearMetric(digits: string): string | null {
  const [length, width] = [Number(digits.slice(0, 2)), Number(digits.slice(2))];
  for (const [metric, imperial] of FROM_METRIC) {
    if (Math.abs(Number(metric.slice(0, 2)) - length) <= 1 && Math.abs(Number(metric.slice(2)) - width) <= 1) return imperial;
  }
  return null;
}

const SIZE_IN_NAME =
  /(?<![\dA-Z.])(?:(?:R|C|L|D|F|M|Y|X|SMD|RES|CAP|IND|LED|DIO|DIODE|RESISTOR|CAPACITOR|INDUCTOR|CHIP|CHIPLED|FUSE|FB|BEAD|EUC|EUR|EUL|USC|USR|USL|S|SM|RC|CC|ARV|RCL_|BLM|NTC|HC)[-_ ]?)?(0\d{3,5}|[1-9]\d{3})(?![\d])(?!X\d)/g;
const LED_DIAMETER = /(?:D|DIA|Ø|_)(\d{1,2})(?:\.0)?MM/;

function scanName(name: string, kinds: readonly (readonly [Kind, number])[]): Named | null {
  const upper = name.toUpperCase();
  const array = /(\d)X(0[246]0[123]|0805|1206)(?!\d)/.exec(upper);
  if (array) return { name: `${array[1]}x${array[2]}` };
  const led = kinds.some(([kind]) => kind === 'led');
  const crystal = kinds.some(([kind]) => kind === 'crystal' || kind === 'oscillator');
  for (let i = 0; i < name.length; i++) {
    if (!startsWord(name, i)) continue;
    const found = packageAt(name, i);
    if (
      found &&
      !found.bare &&
      (!found.of || kinds.length === 0 || kinds.some(([kind]) => found.of?.includes(kind)) || found.name.startsWith('SM'))
    )
      return found;
  }
  if (led) {
    const diameter = LED_DIAMETER.exec(upper) ?? /LED[-_ ]?(\d{1,2})(?:\.0)?MM|(?<![\d.])(\d{1,2})MM/.exec(upper);
    if (diameter) return { name: `${diameter[1] ?? diameter[2]}mm` };
  }
  return chipInName(upper, crystal, led);
}

function chipInName(upper: string, crystal: boolean, led: boolean): Named | null {
  let second: Named | null = null;
  SIZE_IN_NAME.lastIndex = 0;
  for (let match = SIZE_IN_NAME.exec(upper); match; match = SIZE_IN_NAME.exec(upper)) {
    const digits = match[1] ?? '';
    if (upper.startsWith('METRIC', match.index + match[0].length)) {
      const imperial = FROM_METRIC.get(digits);
      if (imperial && !second) second = { name: imperial };
      continue;
    }
    const size = bareSize(digits, 0);
    if (!size) continue;
    if ((crystal || (led && !ALONE_METRIC.has(digits))) && BODIES.has(digits)) return { name: digits };
    if (IMPERIAL.has(digits) || AXIAL.has(digits)) return size;
    second ??= { name: size.name, ...(size.other ? { other: size.other } : {}) };
  }
  return second;
}

/** A word begins after anything but a letter or digit, and where letters of lower case give way to digits or capitals. */
function startsWord(text: string, i: number): boolean {
  const before = text[i - 1];
  if (before === undefined) return true;
  if (!/[A-Za-z0-9]/.test(text[i] ?? '')) return false;
  return (
    !/[A-Za-z0-9.]/.test(before) ||
    (/^(?:SOT|SOD|TO-?\d|SOIC|TSSOP|SSOP|LQFP|TQFP|QFN|DIP|PLCC|SOP\d)/i.test(text.slice(i)) &&
      /[A-Za-z]/.test(before) &&
      /[A-Z]/.test(text[i] ?? '') &&
      !/^(?:TO)/i.test(text.slice(i)))
  );
}
