/**
 * Words as the index compares them: lower case, without accents, `µ` as u and `Ω` as ohm, a decimal comma as a point, and no
 * signs except a point between digits. `"R-0805-4K7"` → `r08054k7`; `"4,7 kΩ"` → `4.7kohm`; `"Müller"` → `muller`.
 */
export function fold(text: string): string {
  return plain(text).replace(NOT_IN_A_WORD, '');
}

/**
 * The words of a text, folded, each once: whole chunks between blanks, the pieces of chunks that carry signs, and a number with
 * the unit after it. `"50 V, SOT-23"` → `50`, `v`, `50v`, `sot23`, `sot`.
 */
export function wordsOf(text: string): Set<string> {
  const words = new Set<string>();
  let before = '';
  for (const chunk of plain(text).split(BETWEEN_CHUNKS)) {
    add(words, chunk);
    if (isMeasure(before, chunk)) add(words, before + chunk);
    if (HAS_SIGN.test(chunk)) for (const piece of chunk.split(BETWEEN_PIECES)) if (piece.length > 2) add(words, piece);
    before = chunk;
  }
  return words;
}

/** A number and a unit that stand apart but belong together: `4.7`, `k`. */
export function isMeasure(number: string, unit: string): boolean {
  return NUMBER.test(number) && UNIT.test(unit);
}

const NUMBER = /^[\d.,]+$/;
const UNIT = /^(?:[pnuµμkKMG]?(?:Ω|Ω|ohms?|F|H|Hz|V|A|W)|[pnuµμkKMR]|mm|%|volts?|watts?|pins?|V(?:DC|AC))$/i;

const NOT_IN_A_WORD = /(?<!\d)\.|\.(?!\d)|[^\p{L}\p{N}.]/gu;
const BETWEEN_CHUNKS = /[\s;()[\]{}|"']+|,(?!\d)/u;
const BETWEEN_PIECES = /[^\p{L}\p{N}.]+/u;
const HAS_SIGN = /[^\p{L}\p{N}]/u;
const ASCII_ONLY = /^[\x20-\x7e]*$/;

function plain(text: string): string {
  const lower = ASCII_ONLY.test(text) ? text.toLowerCase() : unaccented(text);
  return lower.includes(',') ? lower.replaceAll(/(?<=\d),(?=\d)/g, '.') : lower;
}

function unaccented(text: string): string {
  return text
    .replaceAll(/[Ωω\u2126]/g, 'ohm')
    .replaceAll(/[µ\u03bc]/g, 'u')
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase();
}

function add(words: Set<string>, chunk: string): void {
  const word = chunk.replace(NOT_IN_A_WORD, '');
  if (word) words.add(word);
}
