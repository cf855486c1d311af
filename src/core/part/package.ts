import { OUTLINES, PIN_FAMILIES, TANTALUM_CASES } from './packages.data.ts';
import type { Kind } from './part.ts';
import { AXIAL, bareSize, FROM_METRIC, IMPERIAL, type PackageReading } from './sizes.ts';

const TANTALUM: ReadonlySet<string> = new Set(TANTALUM_CASES.map(([metric]) => metric));
/** Metric body by the letter of the case. */
export const CASE_LETTERS: ReadonlyMap<string, string> = new Map(
  TANTALUM_CASES.flatMap(([metric, letter]) => (letter === null ? [] : [[letter, metric] as const])),
);
const FAMILY: ReadonlyMap<string, string> = new Map(
  PIN_FAMILIES.flatMap(([name, spellings]) => spellings.split(' ').map((spelling) => [spelling, name] as const)),
);
const OUTLINE: ReadonlyMap<string, readonly (readonly [name: string, of?: readonly Kind[]])[]> = outlineTable();

const longestFirst = (names: Iterable<string>): string =>
  [...names].sort((a, b) => b.length - a.length || (a < b ? -1 : 1)).join('|');
const FAMILY_ALTERNATION = longestFirst(FAMILY.keys());
const FAMILY_PINS = new RegExp(
  String.raw`(${FAMILY_ALTERNATION})(?:[-_ ]{0,2}0*([1-9]\d{0,2})(?!\.\d))?(?:[A-Z]{1,3})?(?![A-Z0-9])`,
  'iy',
);
const PINS_FAMILY = new RegExp(String.raw`0*([1-9]\d{0,2})[- ]?(?:PIN[- ]?)?(${FAMILY_ALTERNATION})(?![A-Z0-9])`, 'iy');
const OUTLINE_AT =
  /((?:T?SOT|SOD|SC|TO|DO|HC|MO|MS|LL|AT|MC|POWERDI|POWERPAK|POWERSO|R|A|P)[- ]?\d{1,3}[A-Z]{0,2}|SM[ABCFP]F?|MINI[- ]?MELF|MICRO[- ]?MELF|MELF|D[23]?PAK|DDPAK|I2?PAK|[DMA]BS|LFPAK(?:56)?|MINIDI[PL]|PLCC[246](?!\d)|SUPERSOT-?[36]|MICRO3|UMT[36]|UMD2|EMD2|UPAK)((?:[-/ ]?\d(?![.\d]))?(?:[-/]?(?:US?|S))?)(?:(?<=\d[-/]?\d)L)?(?![A-Z0-9]|\.\d)/iy;

function outlineTable(): Map<string, [name: string, of?: readonly Kind[]][]> {
  const table = new Map<string, [name: string, of?: readonly Kind[]][]>();
  for (const [name, spellings, of] of OUTLINES) {
    for (const spelling of spellings.split(' '))
      table.set(squash(spelling), [...(table.get(squash(spelling)) ?? []), of ? [name, of] : [name]]);
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
const METRIC = /(\d{4})\s?\(?(?:metric|metrisch|m[eé]trique|m[eé]trico)\)?/iy;
/** Metric body and height in tenths of a millimetre: only cases of tantalum and polymer are named so. */
const CASE_HEIGHT = /(1608|2012|3216|3528|6032|7343|736[01]|7260)-(0[689]|1\d|2\d|3\d|4\d)(?!\d)/y;
const FOUR = /(\d{4,6})(?![\dA-Za-z%]|[.,]\d)/y;
const LETTERED = /(?:R|C|L|D|LED|SMD|RES|CAP|IND|CHIP)[-_]?(0\d{3,4}|1206|1210|2010|2512)(?![\dA-Za-z])/iy;
const ROUND = /(\d{4})\/(\d{1,2})(?!\d)/y;

const CARTRIDGE = /(5|6[.,]3|6[.,]35|6)\s?[xX*×]\s?(20|25|30|32)(?:\s?mm)?(?![\dA-Za-z]|[.,x]\s?\d)/y;
const CARTRIDGES: ReadonlySet<string> = new Set(['5x20', '6.3x32', '6.3x30', '6x30', '6.3x25']);

/** `5x20 mm`, `6.3x32`: cartridge fuses and what holds them. */
export function cartridgeAt(text: string, start: number): PackageReading | null {
  const match = at(CARTRIDGE, text, start);
  const name = match && `${match[1]?.replace(',', '.').replace('6.35', '6.3')}x${match[2]}`;
  return match && name && CARTRIDGES.has(name) ? { name, start, end: start + match[0].length, of: ['fuse', 'connector'] } : null;
}

function digitsAt(text: string, start: number): PackageReading | null {
  const cartridge = cartridgeAt(text, start);
  if (cartridge) return cartridge;
  const array = at(ARRAY, text, start);
  if (array)
    return { name: array[1] ? `${array[1]}x${array[2]}` : `${array[4]}x${array[3]}`, start, end: start + array[0].length };
  const pair = at(PAIR, text, start);
  if (pair && IMPERIAL.has(pair[1] ?? ''))
    return {
      name: pair[1] ?? '',
      start,
      end: start + pair[0].length,
      ...(TANTALUM.has(pair[2] ?? '') ? { other: pair[2] ?? '' } : {}),
    };
  const metric = at(METRIC, text, start);
  const imperial = metric && FROM_METRIC.get(metric[1] ?? '');
  if (metric && imperial) return { name: imperial, start, end: start + metric[0].length };
  const round = at(ROUND, text, start);
  if (round && AXIAL.has(round[1] ?? '')) return { name: `DIN${round[1]}`, start, end: start + round[0].length };
  const pins = at(PINS_FAMILY, text, start);
  if (pins) return { name: `${FAMILY.get((pins[2] ?? '').toUpperCase()) ?? ''}-${pins[1]}`, start, end: start + pins[0].length };
  const cased = at(CASE_HEIGHT, text, start);
  if (cased) return { name: `EIA-${cased[1]}`, start, end: start + cased[0].length, of: ['capacitor'] };
  const four = at(FOUR, text, start);
  return four ? bareSize(four[1] ?? '', start) : null;
}

const DIN_AXIAL = /DIN\s?(0\d{3})/iy;
const TANTALUM_EIA = /EIA[- ]?(\d{4})(?:-\d{1,2})?/iy;
const CASE =
  /(?:case|gehause|gehäuse|boitier|boîtier|taille|size|baugrosse|baugröße|bauform)[- ]?(?:size|code)?[-: ]?\s?([A-EVXPRY])(?![A-Za-z0-9])|([A-DX])[- ]case(?![A-Za-z0-9])/iy;
const LED_ROUND = /(?:LED|BL)[-_ ]?(\d{1,2})(?:\.0)?MM(?![A-Z0-9])|T-?1(?:\s?3\/4|-3\/4)(?![\d])|T-?1(?![\dA-Z/])/iy;

const METRIC_BEFORE = /(?:metric|metrisch|m[eé]trique|m[eé]trico) (\d{4})(?!\d)/iy;

function namedAt(text: string, start: number): PackageReading | null {
  const measured = at(METRIC_BEFORE, text, start);
  const imperial = measured && FROM_METRIC.get(measured[1] ?? '');
  if (measured && imperial) return { name: imperial, start, end: start + measured[0].length };
  const axial = at(DIN_AXIAL, text, start);
  if (axial) return { name: `DIN${axial[1]}`, start, end: start + axial[0].length };
  const tantalum = at(TANTALUM_EIA, text, start);
  if (tantalum) return { name: `EIA-${tantalum[1]}`, start, end: start + tantalum[0].length, of: ['capacitor'] };
  const lettered = at(LETTERED, text, start);
  if (lettered && IMPERIAL.has(lettered[1] ?? ''))
    return { name: lettered[1] ?? '', start, end: start + lettered[0].length, bare: true };
  const outline = outlineAt(text, start);
  if (outline) return outline;
  const family = at(FAMILY_PINS, text, start);
  if (family) return familyOf(family, start);
  const letter = at(CASE, text, start);
  const metric = letter && CASE_LETTERS.get((letter[1] ?? letter[2] ?? '').toUpperCase());
  if (letter && metric) return { name: `EIA-${metric}`, start, end: start + letter[0].length, of: ['capacitor'] };
  const led = at(LED_ROUND, text, start);
  return led
    ? { name: led[1] ? `${led[1]}mm` : /3\/4/.test(led[0]) ? '5mm' : '3mm', start, end: start + led[0].length, of: ['led'] }
    : null;
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
  const found =
    whole ??
    OUTLINE.get(squash(base)) ??
    OUTLINE.get(squash(base.replace(/[- ]?[23]$/, ''))) ??
    OUTLINE.get(squash(base.replace(/(?<=\d)[HVLW]$/i, '')));
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
