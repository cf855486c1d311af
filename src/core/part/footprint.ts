import { landPattern } from './land-pattern.ts';
import { CASE_LETTERS, packageAt } from './package.ts';
import { FOOTPRINT_KINDS } from './packages.data.ts';
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
  const pattern = landPattern(name.toUpperCase());
  const found = pattern === null ? scanName(name, kinds) : { name: pattern };
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

const SIZE_IN_NAME =
  /(?<![\dA-Z.])(?:(?:R|C|L|D|F|M|Y|X|SMD|RES|CAP|IND|LED|DIO|DIODE|RESISTOR|CAPACITOR|INDUCTOR|CHIP|CHIPLED|FUSE|FB|BEAD|EUC|EUR|EUL|USC|USR|USL|S|SM|RC|CC|ARV|RCL_|BLM|NTC|HC)[-_ ]?)?(0\d{3,5}|[1-9]\d{3})(?![\d])(?!X\d)/g;
/** `TANTAL_B`, `SMC_A`: the letter of a tantalum case behind the word for it. */
const CASE_NAME = /(?:^|[-_:])(?:C?TANT(?:AL(?:UM)?)?|SMC|CASE)[-_ ]?([A-EVX])(?![A-Z0-9])/;
const LED_DIAMETER = /(?:D|DIA|Ø|_)(\d{1,2})(?:\.0)?MM/;

function scanName(name: string, kinds: readonly (readonly [Kind, number])[]): Named | null {
  const upper = name.toUpperCase();
  const array = /(\d)X(0[246]0[123]|0805|1206)(?!\d)/.exec(upper);
  if (array) return { name: `${array[1]}x${array[2]}` };
  const led = kinds.some(([kind]) => kind === 'led');
  const crystal = kinds.some(([kind]) => kind === 'crystal' || kind === 'oscillator');
  const cased = kinds.some(([kind]) => kind === 'capacitor') ? CASE_LETTERS.get(CASE_NAME.exec(upper)?.[1] ?? '') : undefined;
  if (cased !== undefined && !/\d{4}/.test(upper)) return { name: `EIA-${cased}` };
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
