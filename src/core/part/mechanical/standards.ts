import { STANDARDS, type StandardRow } from './standards.data.ts';

export interface StandardReading {
  readonly row: StandardRow;
  /** as the table has it: `DIN 934` */
  readonly name: string;
  /** as it stands in the text */
  readonly written: string;
}

const NUMBER =
  /(?<![a-z0-9])(?:(?:din|en|bs|uni|nf)\s?)*(iso|din)\s?(?:en\s?)?(?:iso\s?)?(\d{1,5})(?:[ -]?([12ab])(?![\p{L}\p{N}.,]))?(?![\p{L}\p{N}])/gu;
const BY_NAME: ReadonlyMap<string, StandardRow> = new Map(
  STANDARDS.flatMap((row) => row.names.map((name) => [name, row] as const)),
);

/** The first standard of a fastener that a folded text names: `din en iso 4762`, `din912`, `din 125 a`. */
export function standardIn(folded: string): StandardReading | null {
  for (const match of folded.matchAll(NUMBER)) {
    const [written, body = '', number = '', part] = match;
    const issuer = written.includes('iso') ? 'ISO' : body.toUpperCase();
    const plain = `${issuer} ${number}`;
    const parted = part === undefined ? plain : `${plain}${/[12]/.test(part) ? '-' : ''}${part.toUpperCase()}`;
    const name = [parted, plain].find((one) => BY_NAME.has(one));
    const row = name === undefined ? undefined : BY_NAME.get(name);
    if (row && name !== undefined) return { row, name, written };
  }
  return null;
}

/** Do the numbers of this row name two parts at this thread? Then the variant says which. */
export function standsApart({ apart }: StandardRow, thread: string | null): boolean {
  if (!apart) return false;
  const size = /^M(\d+(?:\.\d+)?)/.exec(thread ?? '')?.[1];
  return apart.sizes === 'all' || (size !== undefined && apart.sizes.includes(size));
}

const THREADED = /(?<![\p{L}\p{N}])M\d{1,2}(?:[.,]\d)?(?![\p{L}\p{N}.]|-\d{3})|(?<![\p{L}\p{N}])M\d{1,2}(?:[.,]\d)?\s?[xX*]/u;

/** Is what looks like a part number (`ISO 7045`, a series of isolators too) the standard of a fastener? Beside a thread it is. */
export function isStandardOf(text: string, code: string): boolean {
  return /^(?:ISO|DIN)\s?\d/i.test(code) && THREADED.test(text) && standardIn(code.toLowerCase()) !== null;
}
