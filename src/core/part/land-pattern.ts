import {
  AXIAL_BODIES,
  CASE_CAPACITORS,
  CHIP_LETTERS,
  DIODE_BODIES,
  RESONATOR_LETTERS,
  SMALL_OUTLINES,
  SOP_NAMES,
  TRANSISTOR_OUTLINES,
} from './land-patterns.data.ts';
import { TANTALUM_CASES } from './packages.data.ts';
import { BODIES, FROM_METRIC } from './sizes.ts';

type Reader = (name: string) => string | null;

const READERS: readonly Reader[] = [twoTerminal, ballGrid, dualInLine, axial, pitched, resonator];
const CHIPS: ReadonlySet<string> = new Set(CHIP_LETTERS.split(' '));
const CASES: ReadonlySet<string> = new Set(CASE_CAPACITORS.split(' '));
const RESONATORS: ReadonlySet<string> = new Set(RESONATOR_LETTERS.split(' '));

/**
 * The package that a land pattern name of IPC-7351B or IPC-7251 stands for, in capitals, by the rule of the name: `RESC1608X55N` → 0603,
 * `SOIC127P600X175-8N` → SOIC-8, `DIP762W53P254L959H508Q8N` → DIP-8. Height and density never change the package, except where a
 * flatter one has a name of its own. Null for what follows no such rule, and for bodies without a name (`CAPAE660X550N`).
 */
export function landPattern(name: string): string | null {
  for (const reader of READERS) {
    const found = reader(name);
    if (found !== null) return found;
  }
  return null;
}

const within = (value: number, from: number, to: number): boolean => value >= from && value <= to;

/** Letters, then length and width in tenths of a millimetre: `CAPC1608X90N`, `DIOM5226X230N`, `RESC3216N`. */
function twoTerminal(name: string): string | null {
  const [, letters = '', digits = ''] = /(?:^|[_\-/])([A-Z]{3,7})(\d{4})(?=X\d|[NML](?![A-Z])|_|-|$)/.exec(name) ?? [];
  if (letters === '') return null;
  if (CHIPS.has(letters)) return FROM_METRIC.get(digits) ?? nearMetric(digits);
  const [length, width] = [Number(digits.slice(0, 2)), Number(digits.slice(2))];
  if (CASES.has(letters)) return caseCapacitor(length, width);
  return (
    DIODE_BODIES.find(
      ([of, lengthFrom, lengthTo, widthFrom, widthTo]) =>
        of === letters && within(length, lengthFrom, lengthTo) && within(width, widthFrom, widthTo),
    )?.[5] ?? null
  );
}

/** Libraries round bodies differently: `1607`, `2013`, `3217`; one tenth off is the same chip. */
function nearMetric(digits: string): string | null {
  for (const [metric, imperial] of FROM_METRIC)
    if (near(metric, Number(digits.slice(0, 2)), Number(digits.slice(2)))) return imperial;
  return null;
}

function caseCapacitor(length: number, width: number): string | null {
  const found = TANTALUM_CASES.find(([metric]) => near(metric, length, width));
  return found ? `EIA-${found[0]}` : null;
}

function near(metric: string, length: number, width: number): boolean {
  return Math.abs(Number(metric.slice(0, 2)) - length) <= 1 && Math.abs(Number(metric.slice(2)) - width) <= 1;
}

/** Pins stand first: `BGA121C50P11X11_600X600X100`. */
function ballGrid(name: string): string | null {
  const match = /(?:^|[_-])((?:[TUVLF]?F)?BGA)(\d+)[CN]\d+P\d+X\d+/.exec(name);
  return match ? `${match[1]}-${match[2]}` : null;
}

/** `DIP762W53P254L959H508Q8N`: row spacing, lead, pitch, length, height, and Q before the pins. */
function dualInLine(name: string): string | null {
  const match = /(?:^|[_-])[CP]?DIP[ST]?\d+W\d+P\d+L\d+H\d+Q(\d+)/.exec(name);
  return match ? `DIP-${match[1]}` : null;
}

/** `RESAD1016W60L630D250`, `DIOAD1016W50L400D190B`: lead spacing, lead, length and diameter of the body. */
function axial(name: string): string | null {
  const [, letters = '', lead = '', length = '', diameter = ''] = /(?:^|[_-])([A-Z]{3}AD)\d+W(\d+)L(\d+)D(\d+)/.exec(name) ?? [];
  const found = AXIAL_BODIES.find(
    ([of, leads, lengths, diameters]) =>
      of === letters &&
      within(Number(lead), ...leads) &&
      within(Number(length), ...lengths) &&
      within(Number(diameter), ...diameters),
  );
  return found?.[4] ?? null;
}

const PITCHED =
  /(?:^|[_-])(SOT|TO|SOIC|[HT]*SSOP|[TMQV]?SOP|[LT]?QFP|[A-Z]?[A-Z]?QFN|[TUVWX]?SON|[TUVW]?DFN|PLCC|SOJ|LCC|LGA|QSOP|CFP)(\d+)P(\d+)X(\d+)(?:X(\d+))?(?:X(\d+))?(?:L\d+)?-(\d+)/;

/** Letters, pitch, P, span, height, pins: `SOP65P640X120-16N`; flat packages give both spans. */
function pitched(name: string): string | null {
  const [, letters = '', pitch = '', span = '', second = '', third = '', fourth = '', pins = ''] = groups(PITCHED.exec(name));
  if (letters === '') return null;
  const dimensions = [span, second, third, fourth].filter((one) => one !== '').map(Number);
  if (letters === 'SOT') return smallOutline(Number(pitch), dimensions, pins);
  if (letters === 'TO') return transistorOutline(Number(pitch), dimensions, pins);
  const family = letters === 'SOP' ? sopName(Number(pitch), Number(span)) : letters;
  return `${family}-${withoutTab(letters, Number(pins))}`;
}

function groups(match: RegExpExecArray | null): string[] {
  return match ? Array.from(match, (group: string | undefined) => group ?? '') : [];
}

function smallOutline(pitch: number, [span = 0, height = 0]: readonly number[], pins: string): string | null {
  const found = SMALL_OUTLINES.find(
    ([of, from, to, counts, , heightTo]) =>
      of === pitch &&
      within(span, from, to) &&
      counts.split(' ').includes(pins) &&
      (heightTo === undefined || height <= heightTo),
  );
  return found?.[4] ?? null;
}

function transistorOutline(pitch: number, dimensions: readonly number[], pins: string): string | null {
  const [first = 0] = dimensions;
  const found = TRANSISTOR_OUTLINES.find(
    ([pitchFrom, pitchTo, firstFrom, firstTo, count, counts]) =>
      within(pitch, pitchFrom, pitchTo) &&
      within(first, firstFrom, firstTo) &&
      dimensions.length === count &&
      counts.split(' ').includes(pins),
  );
  return found?.[6] ?? null;
}

function sopName(pitch: number, span: number): string {
  return SOP_NAMES.find(([of, from, to]) => of === pitch && within(span, from, to))?.[3] ?? 'SOP';
}

/** QFN and SON patterns count the thermal tab as a pin: an odd count is one too many. */
function withoutTab(letters: string, pins: number): number {
  return /QFN|SON|DFN/.test(letters) && pins % 2 === 1 ? pins - 1 : pins;
}

/** `XTAL320X250X80N`, `OSCCC250X200X90N`: the body in hundredths of a millimetre; two lower digits are no body of a name. */
function resonator(name: string): string | null {
  const [, letters = '', length = '', width = ''] = /(?:^|[_-])([A-Z]{3,5})(\d{3})X(\d{3})X\d/.exec(name) ?? [];
  const body = `${length.slice(0, 2)}${width.slice(0, 2)}`;
  return RESONATORS.has(letters) && BODIES.has(body) ? body : null;
}
