import { yesOrNo } from './fitted.ts';
import { looksLikeQuantity } from './quantity.ts';
import { isRef } from './refs.ts';

const BLANK = /^(?:[-–—~?.*_\s]*|n\/a|n\.a\.)$/i;

/** A cell that says nothing: empty, a dash, question marks, `n/a`. */
export function isBlank(cell: string | undefined): boolean {
  return cell === undefined || BLANK.test(cell.trim());
}

/** Every token looks like a reference or a range of them. */
export function isRefsCell(cell: string): boolean {
  const tokens = cell
    .replace(/(?<=\d)\s*(?:\.{2,3}|…)\s*(?=[A-Z]*\d)/gi, '-')
    .trim()
    .split(/[\s,;+/&]+/)
    .filter(Boolean);
  return (
    tokens.length > 0 &&
    tokens.every((token) => isRef(token) || /^[A-Z]{1,4}\d+[-–][A-Z]{0,4}\d+$/i.test(token) || /^[-–]$/.test(token))
  );
}

const VALUE = /^[±<>≤≥]?\s*\d+(?:[.,]\d+)?\s*(?:[pnuµμmkKMGR]|meg)?\s*\d*\s*(?:[FHΩRVAW]|ohms?|hz|farad|henry)?(?:[\s/,;].*)?$/iu;

/** A number with a prefix or a unit, as a value is written: `4k7`, `100n 50V`, `16 MHz`. A bare whole number is none. */
export function isValueCell(cell: string): boolean {
  const text = cell.trim();
  return VALUE.test(text) && !/^\d+$/.test(text);
}

export function isSizeCell(cell: string): boolean {
  return /^'?(?:01005|0201|0402|0603|0805|1206|1210|1808|1812|2010|2220|2512|(?:SOT|SOD|SOIC|SO|SSOP|TSSOP|MSOP|QFN|QFP|LQFP|TQFP|DIP|DIL|PDIP|SIP|TO|DO|BGA|DFN|DPAK|D2PAK|SM[ABC]|PLCC|SMD|THT|MELF|HC-?49)[-\s]?\w*(?:-\d+)?)$/i.test(
    cell.trim(),
  );
}

export function isFootprintCell(cell: string): boolean {
  return (
    /^[\w.-]+:[\w.,+-]+$/.test(cell.trim()) ||
    /^[RCLDQU]_?(?:0402|0603|0805|1206|1210)(?:_\w+)?$/i.test(cell.trim()) ||
    /_(?:P|D|W|L)\d+(?:\.\d+)?mm|_\d{4}Metric|\d+(?:\.\d+)?x\d+(?:\.\d+)?mm/.test(cell)
  );
}

export function isLink(cell: string): boolean {
  return /^(?:https?:\/\/|www\.)\S+$/i.test(cell.trim());
}

export function isPrice(cell: string): boolean {
  const text = cell.trim();
  return /^(?:[$€£¥]\s?\d[\d.,]*|\d[\d.,]*\s?(?:[$€£¥]|eur|usd|chf|kr))$/i.test(text) || /^\d+[.,]\d{2,5}$/.test(text);
}

/** A number that only a shop gives: `296-24465-1-ND`, `C15127`. */
export function isShopNumber(cell: string): boolean {
  return /^(?:\S+-ND|C\d{4,8})$/i.test(cell.trim());
}

export function isSupplierNumber(cell: string): boolean {
  return /^(?:\S+-ND|C\d{3,8}|\d{3}-[A-Z0-9][\w./-]+|\d{7}|\d{2,3}-\d{2,4})$/i.test(cell.trim());
}

/** Letters and digits in one word, as ordering codes are written. */
export function isPartNumber(cell: string): boolean {
  const text = cell.trim();
  return /^[A-Z0-9][\w.\-/#+,*]{3,}$/i.test(text) && /\d/.test(text) && /[A-Z]/i.test(text) && !isValueCell(text);
}

export function isWholeNumber(cell: string): boolean {
  return /^\d+$/.test(cell.trim());
}

export function isWords(cell: string): boolean {
  const text = cell.trim();
  const word = /\p{L}{2}/u.exec(text);
  return word !== null && /\s/.test(text.slice(word.index));
}

export function isCount(cell: string): boolean {
  return looksLikeQuantity(cell);
}

/** A cell that answers yes or no, or marks what is left off. */
export function isYesOrNo(cell: string): boolean {
  return yesOrNo(cell) !== null;
}

/** Share of the cells that say something and pass the test; 0 where none says anything. */
export function share(cells: readonly string[], test: (cell: string) => boolean): number {
  const said = cells.filter((cell) => !isBlank(cell));
  return said.length === 0 ? 0 : said.filter(test).length / said.length;
}

/** Whole numbers that count up by one from the first: the numbers of lines, not of pieces. */
export function isSequence(cells: readonly string[]): boolean {
  const numbers = cells.filter((cell) => !isBlank(cell)).map(Number);
  if (numbers.length < 3 || numbers.some((number) => !Number.isInteger(number))) return false;
  const steps = numbers.slice(1).filter((number, at) => number - (numbers[at] ?? 0) === 1).length;
  return steps >= (numbers.length - 1) * 0.8 && (numbers[0] ?? 0) <= 2;
}
