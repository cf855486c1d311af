import { decimal, digitsOf, fromDigits, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { plainDigits } from '#core/quantity/write-quantity.ts';

/** Unified threads as the trade writes them, `4-40`, and how long an inch is; UNC unless it says UNF (ASME B1.1, from memory). */
const SIZES = '0-80 1-64 1-72 2-56 3-48 4-40 5-40 6-32 6-40 8-32 8-36 10-24 10-32 12-24 1/4-20 1/4-28 5/16-18 3/8-16';
const KNOWN: ReadonlySet<string> = new Set(SIZES.split(' '));
const THREAD =
  /#?(\d{1,2}|\d\/\d{1,2})-(\d{2})(?:\s?UN[CF])?(?:\s?[xX*]\s?(\d+(?:[.,]\d+)?(?:(?:-|\s)\d+\/\d+|\/\d+)?)(\s?mm|\s?"|\s?in(?:ch)?(?![a-z]))?)?(?!\s?[munpkµ]?[AVFHWΩ%°]|[\dA-Za-z.,/])/y;

/** `4-40 x 1/4"` → thread `4-40`, 6.35 mm long (a figure without unit is in inches); null where no such thread begins. */
export function unifiedThreadAt(text: string, start: number): { thread: string; length: string | null; end: number } | null {
  THREAD.lastIndex = start;
  const match = THREAD.exec(text);
  const thread = `${match?.[1]}-${match?.[2]}`;
  if (!match || !KNOWN.has(thread)) return null;
  const inMillimetres = match[4]?.trim() === 'mm';
  const written = match[3]?.replace(',', '.');
  const length = written === undefined ? null : inMillimetres ? written : millimetresOf(written);
  return { thread, length, end: start + match[0].length };
}

/** Inches as they are written, in mm and exact: `1-1/4` → `31.75`, `1/64` → `0.396875`. A third of an inch has no end: null. */
function millimetresOf(written: string): string | null {
  const [, whole = '0', over = '0', under = '1'] = /^(?:(\d+(?:\.\d+)?)(?:[-\s]|$))?(?:(\d+)\/(\d+))?$/.exec(written) ?? [];
  const part = binaryShare(BigInt(over), BigInt(under));
  if (part === null) return null;
  const { digits, exponent } = digitsOf(part);
  const base = digitsOf(decimal(whole));
  const power = Math.min(exponent, base.exponent);
  const inches = fromDigits(digits * 10n ** BigInt(exponent - power) + base.digits * 10n ** BigInt(base.exponent - power), power);
  return plainDigits(multiply(inches, decimal('25.4')));
}

/** Parts of an inch are halves of halves: over a power of two, which ends after as many places. */
function binaryShare(over: bigint, under: bigint): Decimal | null {
  for (let places = 0, power = 1n; places <= 7; places++, power *= 2n)
    if (power === under) return fromDigits(over * 5n ** BigInt(places), -places);
  return null;
}
