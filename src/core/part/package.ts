import {
  AXIAL_SIZES, CHIP_SIZES, FOOTPRINT_KINDS, IPC_CHIPS, IPC_MOULDED_DIODES, IPC_SOT, METRIC_ALSO, METRIC_BODIES, METRIC_WHEN_ALONE, OUTLINES,
  PIN_FAMILIES, TANTALUM_CASES,
} from './packages.data.ts';
import type { Kind } from './part.ts';

/** A package as read: its name in the trade's spelling, and for which kinds it counts where that is limited. */
export interface PackageReading {
  readonly name: string;
  readonly start: number;
  readonly end: number;
  readonly of?: readonly Kind[];
  /** the other reading of the same digits: `0603` metric is `0201` */
  readonly other?: string;
  /** how sure the text is that this is a package: a bare number may be something else */
  readonly bare?: boolean;
}

const IMPERIAL: ReadonlySet<string> = new Set(CHIP_SIZES.map(([imperial]) => imperial));
const FROM_METRIC: ReadonlyMap<string, string> = new Map([...CHIP_SIZES.map(([imperial, metric]) => [metric, imperial] as const), ...Object.entries(METRIC_ALSO)]);
const ALONE_METRIC: ReadonlySet<string> = new Set(METRIC_WHEN_ALONE.split(' '));
const BODIES: ReadonlySet<string> = new Set(METRIC_BODIES.split(' '));
const AXIAL: ReadonlySet<string> = new Set(AXIAL_SIZES.split(' '));
const TANTALUM: ReadonlySet<string> = new Set(TANTALUM_CASES.map(([metric]) => metric));
const CASE_LETTERS: ReadonlyMap<string, string> = new Map(TANTALUM_CASES.flatMap(([metric, letter]) => (letter === null ? [] : [[letter, metric] as const])));
const FAMILY: ReadonlyMap<string, string> = new Map(PIN_FAMILIES.flatMap(([name, spellings]) => spellings.split(' ').map((spelling) => [spelling, name] as const)));
const OUTLINE: ReadonlyMap<string, readonly (readonly [name: string, of?: readonly Kind[]])[]> = outlineTable();

const longestFirst = (names: Iterable<string>): string => [...names].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|');
const FAMILY_ALTERNATION = longestFirst(FAMILY.keys());
const FAMILY_PINS = new RegExp(String.raw`(${FAMILY_ALTERNATION})(?:[-_ ]{0,2}0*([1-9]\d{0,2})(?!\.\d))?(?:[A-Z]{1,3})?(?![A-Z0-9])`, 'iy');
const PINS_FAMILY = new RegExp(String.raw`0*([1-9]\d{0,2})[- ]?(?:PIN[- ]?)?(${FAMILY_ALTERNATION})(?![A-Z0-9])`, 'iy');
const OUTLINE_AT = /((?:T?SOT|SOD|SC|TO|DO|HC|MO|LL|AT|MC|POWERDI|POWERPAK|POWERSO|R|A|P)[- ]?\d{1,3}[A-Z]{0,2}|SM[ABCFP]F?|MINI[- ]?MELF|MICRO[- ]?MELF|MELF|D[23]?PAK|DDPAK|I2?PAK|[DMA]BS|LFPAK(?:56)?|MINIDI[PL]|PLCC[246]|SUPERSOT-?[36])((?:[-/ ]?\d(?![.\d]))?(?:[-/]?(?:US?|S))?)(?![A-Z0-9]|\.\d)/iy;

function outlineTable(): Map<string, [name: string, of?: readonly Kind[]][]> {
  const table = new Map<string, [name: string, of?: readonly Kind[]][]>();
  for (const [name, spellings, of] of OUTLINES) {
    for (const spelling of spellings.split(' ')) table.set(squash(spelling), [...(table.get(squash(spelling)) ?? []), of ? [name, of] : [name]]);
  }
  return table;
}

function squash(text: string): string {
  return text.toUpperCase().replace(/[^A-Z0-9]/g, '');
}

/** The package name that begins at `start` of a free text: `SOIC-8`, `8-SOIC`, `SOT23-5`, `0603`, `DIN0207`, `4x0603`. */
export function packageAt(text: string, start: number): PackageReading | null {
  const code = text.charCodeAt(start);
  return code >= 48 && code <= 57 ? digitsAt(text, start) : namedAt(text, start);
}

const ARRAY = /(\d)\s?[xX*]\s?(0\d{3}|1206)(?!\d)|(0\d{3})[xX*](\d)(?!\d)/y;
const PAIR = /(\d{4,6})(?:\s?\(?|_)(\d{4})\s?(?:Metric|metric|M)\)?/y;
const METRIC = /(\d{4})\s?(?:Metric|metric)/y;
const FOUR = /(\d{4,6})(?![\dA-Za-z.,]|%)/y;
const ROUND = /(\d{4})\/(\d{1,2})(?!\d)/y;

function digitsAt(text: string, start: number): PackageReading | null {
  const array = at(ARRAY, text, start);
  if (array) return { name: array[1] ? `${array[1]}x${array[2]}` : `${array[4]}x${array[3]}`, start, end: start + array[0].length };
  const pair = at(PAIR, text, start);
  if (pair && IMPERIAL.has(pair[1] ?? '')) return { name: pair[1] ?? '', start, end: start + pair[0].length };
  const metric = at(METRIC, text, start);
  const imperial = metric && FROM_METRIC.get(metric[1] ?? '');
  if (metric && imperial) return { name: imperial, start, end: start + metric[0].length };
  const round = at(ROUND, text, start);
  if (round && AXIAL.has(round[1] ?? '')) return { name: `DIN${round[1]}`, start, end: start + round[0].length };
  const pins = at(PINS_FAMILY, text, start);
  if (pins) return { name: `${FAMILY.get((pins[2] ?? '').toUpperCase()) ?? ''}-${pins[1]}`, start, end: start + pins[0].length };
  const four = at(FOUR, text, start);
  return four ? bareSize(four[1] ?? '', start) : null;
}

/** A four-digit number on its own: a chip size where there is one of that name. */
function bareSize(digits: string, start: number): PackageReading | null {
  const end = start + digits.length;
  if (ALONE_METRIC.has(digits)) return { name: FROM_METRIC.get(digits) ?? digits, start, end, bare: true, ...(BODIES.has(digits) || TANTALUM.has(digits) ? { other: digits } : {}) };
  if (IMPERIAL.has(digits)) return { name: digits, start, end, bare: true };
  if (AXIAL.has(digits)) return { name: `DIN${digits}`, start, end, bare: true, of: ['resistor', 'inductor', 'capacitor', 'diode'] };
  if (BODIES.has(digits)) return { name: digits, start, end, bare: true, of: ['led', 'crystal', 'oscillator', 'inductor'] };
  return TANTALUM.has(digits) ? { name: `EIA-${digits}`, start, end, bare: true, of: ['capacitor'] } : null;
}

const DIN_AXIAL = /DIN\s?(0\d{3})/iy;
const TANTALUM_EIA = /EIA[- ]?(\d{4})(?:-\d{1,2})?/iy;
const CASE = /(?:case|gehause|boitier|taille|size|baugrosse)[- ]?(?:size|code)?[-: ]?\s?([A-EVXPRY])(?![A-Za-z0-9])|([A-DX])[- ]case(?![A-Za-z0-9])/iy;
const LED_ROUND = /(?:LED|BL)[-_ ]?(\d{1,2})(?:\.0)?MM(?![A-Z0-9])|T-?1(?:\s?3\/4|-3\/4)(?![\d])|T-?1(?![\dA-Z/])/iy;

function namedAt(text: string, start: number): PackageReading | null {
  const axial = at(DIN_AXIAL, text, start);
  if (axial) return { name: `DIN${axial[1]}`, start, end: start + axial[0].length };
  const tantalum = at(TANTALUM_EIA, text, start);
  if (tantalum) return { name: `EIA-${tantalum[1]}`, start, end: start + tantalum[0].length, of: ['capacitor'] };
  const outline = outlineAt(text, start);
  if (outline) return outline;
  const family = at(FAMILY_PINS, text, start);
  if (family) return familyOf(family, start);
  const letter = at(CASE, text, start);
  const metric = letter && CASE_LETTERS.get((letter[1] ?? letter[2] ?? '').toUpperCase());
  if (letter && metric) return { name: `EIA-${metric}`, start, end: start + letter[0].length, of: ['capacitor'] };
  const led = at(LED_ROUND, text, start);
  return led ? { name: led[1] ? `${led[1]}mm` : /3\/4/.test(led[0]) ? '5mm' : '3mm', start, end: start + led[0].length, of: ['led'] } : null;
}

function familyOf(match: RegExpExecArray, start: number): PackageReading | null {
  const spelling = (match[1] ?? '').toUpperCase();
  const name = FAMILY.get(spelling) ?? spelling;
  const pins = match[2];
  // two letters and no count are too little to be a package: `SO`, `TQ`
  if (pins === undefined && (spelling.length < 3 || /^(?:SON|SOL|SIP|SIL|SSO)$/.test(spelling))) return null;
  if (pins === undefined && match[1] !== spelling && match[1] !== spelling.toLowerCase()) return null;
  return { name: pins === undefined ? name : `${name}-${pins}`, start, end: start + match[0].length };
}

function outlineAt(text: string, start: number): PackageReading | null {
  const match = at(OUTLINE_AT, text, start);
  if (!match) return null;
  const [all, base = '', tail = ''] = match;
  const whole = OUTLINE.get(squash(base + tail));
  const end = start + all.length;
  const found = whole ?? OUTLINE.get(squash(base)) ?? OUTLINE.get(squash(base.replace(/[- ]?[23]$/, '')));
  if (!found) return null;
  const [name, of] = found[0] ?? [''];
  const pins = whole ? null : /(\d)$/.exec(tail)?.[1];
  const counted = /^(?:T?SOT|SC|TO)-/.test(name);
  const kept = counted && pins !== undefined && pins !== null && Number(pins) > 3 ? `${name}-${pins}` : name;
  return of ? { name: kept, start, end, of } : { name: kept, start, end };
}

function at(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}

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

const SIZE_IN_NAME = /(?<![\dA-Z.])(?:(?:R|C|L|D|F|M|Y|X|SMD|RES|CAP|IND|LED|DIO|DIODE|RESISTOR|CAPACITOR|INDUCTOR|CHIP|CHIPLED|FUSE|FB|BEAD|EUC|EUR|EUL|USC|USR|USL|S|SM|RC|CC|ARV|RCL_|BLM|NTC|HC)[-_ ]?)?(0\d{3,5}|[1-9]\d{3})(?![\d])(?!X\d)/g;
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
    if (found && !found.bare && (!found.of || kinds.length === 0 || kinds.some(([kind]) => found.of?.includes(kind)) || /^SM/.test(found.name))) return found;
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
    if (/^METRIC/.test(upper.slice(match.index + match[0].length))) {
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
  return !/[A-Za-z0-9.]/.test(before) || /^(?:SOT|SOD|TO-?\d|SOIC|TSSOP|SSOP|LQFP|TQFP|QFN|DIP|PLCC|SOP\d)/i.test(text.slice(i)) && /[A-Za-z]/.test(before) && /[A-Z]/.test(text[i] ?? '') && !/^(?:TO)/i.test(text.slice(i));
}
