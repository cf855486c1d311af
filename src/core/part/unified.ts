/** Unified threads as the trade writes them, `4-40`, and how long an inch is; UNC unless it says UNF (ASME B1.1, from memory). */
const SIZES = '0-80 1-64 1-72 2-56 3-48 4-40 5-40 6-32 6-40 8-32 8-36 10-24 10-32 12-24 1/4-20 1/4-28 5/16-18 3/8-16';
const KNOWN: ReadonlySet<string> = new Set(SIZES.split(' '));
const THREAD =
  /#?(\d{1,2}|\d\/\d{1,2})-(\d{2})(?:\s?UN[CF])?(?:\s?[xX*]\s?(\d+(?:[.,]\d+)?(?:-\d+\/\d+|\/\d+)?)(\s?mm|\s?"|\s?in(?:ch)?(?![a-z]))?)?(?!\s?[munpkµ]?[AVFHWΩ%°]|[\dA-Za-z.,/])/y;

/** `4-40 x 1/4"` → thread `4-40`, 6.35 mm long (a figure without unit is in inches); null where no such thread begins. */
export function unifiedThreadAt(text: string, start: number): { thread: string; length: string | null; end: number } | null {
  THREAD.lastIndex = start;
  const match = THREAD.exec(text);
  const thread = `${match?.[1]}-${match?.[2]}`;
  if (!match || !KNOWN.has(thread)) return null;
  const inMillimetres = match[4]?.trim() === 'mm';
  const length = match[3] === undefined ? null : inMillimetres ? match[3].replace(',', '.') : fromInches(match[3]);
  return { thread, length, end: start + match[0].length };
}

/** `1-1/4` → `31.75`. */
function fromInches(written: string): string {
  const [, whole = '0', over, under] = /^(?:(\d+(?:[.,]\d+)?)(?:-|$))?(?:(\d+)\/(\d+))?$/.exec(written) ?? [];
  const inches = Number(whole.replace(',', '.')) + (over === undefined ? 0 : Number(over) / Number(under));
  return String(Number((inches * 25.4).toFixed(5)));
}
