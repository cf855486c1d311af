import type { Kind } from './part.ts';
import { ASIDE_WORDS, FACT_WORDS, KIND_WORDS } from './words.data.ts';

export interface WordMeaning {
  readonly kinds: readonly Kind[];
  /** an abbreviation that leads a catalogue description */
  readonly lead: boolean;
  readonly facts: readonly (readonly [fact: string, value: string])[];
  /** begins an aside: `for`, `mit` */
  readonly aside: boolean;
}

export interface WordReading {
  readonly meaning: WordMeaning;
  readonly start: number;
  readonly end: number;
}

interface Node {
  readonly next: Map<string, Node>;
  meaning: WordMeaning | null;
}

const ROOT: Node = { next: new Map(), meaning: null };
const HEADS = new Map<string, WordMeaning>();
const EMPTY: WordMeaning = { kinds: [], lead: false, facts: [], aside: false };

for (const [kind, words] of KIND_WORDS) each(words, (word, mark) => put(word, mark, { kinds: [kind], lead: mark === '^' }));
for (const [fact, value, words] of FACT_WORDS) each(words, (word, mark) => put(word, mark, { facts: [[fact, value]] }));
each(ASIDE_WORDS, (word, mark) => put(word, mark, { aside: true }));

/**
 * The text as words are compared: lower case, without accents, `_` and `-` as blanks; one character for one, so that places stay
 * true. `"Kühlkörper_SMD"` → `"kuhlkorper smd"`.
 */
export function foldWords(text: string): string {
  const lower = text.toLowerCase();
  if (lower.length !== text.length) return text; // a letter that grows (İ): nothing of the trade's words in it
  // oxlint-disable-next-line no-control-regex -- printable ASCII only
  if (/^[\x20-\x7e]*$/.test(lower)) return lower.replace(/[_-]/g, ' ');
  let folded = '';
  for (let i = 0; i < lower.length; i++) {
    const char = lower[i] ?? '';
    folded +=
      char === '_' || char === '-' || char === '\u00ad'
        ? ' '
        : char < '\u0080' || char >= '\u0300'
          ? char
          : (char.normalize('NFD')[0] ?? char);
  }
  return folded;
}

/** The longest word or phrase of the trade that begins at `start` of a folded text. */
export function wordAt(folded: string, start: number): WordReading | null {
  let node: Node | undefined = ROOT;
  let found: WordReading | null = null;
  for (let i = start; i < folded.length; i++) {
    node = node.next.get(folded[i] ?? '');
    if (!node) break;
    if (node.meaning) {
      const end = endOfWord(folded, i + 1);
      if (end > 0) found = { meaning: node.meaning, start, end };
    }
  }
  if (!found) return compoundAt(folded, start);
  // `keramikkondensator` is in the table for what it is made of; its head says the kind
  const compound = found.meaning.kinds.length === 0 ? compoundAt(folded, start) : null;
  return compound?.end === found.end ? { ...found, meaning: joined(found.meaning, compound.meaning) } : found;
}

const ENDINGS: ReadonlySet<string> = new Set(['s', 'es', 'e', 'en', 'n', 'er', 'r', 'i']);

/** Where a word that was matched up to `i` ends, with a plural ending; 0 when it goes on as another word. */
function endOfWord(folded: string, i: number): number {
  let end = i;
  while (end < folded.length && isLetter(folded.charCodeAt(end))) end++;
  // a digit behind makes it a name: `LED1`, `CONN2`
  if (end === i) return isDigit(folded.charCodeAt(i)) && !isCjk(folded.charCodeAt(i - 1)) ? 0 : i;
  if (isCjk(folded.charCodeAt(i - 1)) || isCjk(folded.charCodeAt(i))) return i;
  return end - i <= 2 && ENDINGS.has(folded.slice(i, end)) && !isDigit(folded.charCodeAt(end)) ? end : 0;
}

/** letters; a longer run is no word */
const LONGEST_WORD = 80;

/** `metallschichtwiderstand` ends in a head that the table marks for it. */
function compoundAt(folded: string, start: number): WordReading | null {
  let end = start;
  while (end - start <= LONGEST_WORD && isLetter(folded.charCodeAt(end)) && !isCjk(folded.charCodeAt(end))) end++;
  if (end - start < 6 || end - start > LONGEST_WORD) return null;
  for (const cut of [0, 1, 2]) {
    if (cut > 0 && !ENDINGS.has(folded.slice(end - cut, end))) continue;
    for (let i = start + 2; i < end - cut - 2; i++) {
      const meaning = HEADS.get(folded.slice(i, end - cut));
      if (meaning) return { meaning, start, end };
    }
  }
  return null;
}

const isLetter = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code >= 0xc0;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isCjk = (code: number): boolean => code >= 0x2e80;

function each(words: string, put: (word: string, mark: string) => void): void {
  for (const item of words.split(',')) {
    const text = item.trim();
    const mark = text[0] === '^' || text[0] === '~' ? text[0] : '';
    if (text) put(foldWords(text.slice(mark.length)), mark);
  }
}

function put(word: string, mark: string, some: Partial<WordMeaning>): void {
  let node = ROOT;
  for (const char of word) {
    const next = node.next.get(char) ?? { next: new Map(), meaning: null };
    node.next.set(char, next);
    node = next;
  }
  node.meaning = joined(node.meaning ?? EMPTY, some);
  if (mark === '~') HEADS.set(word, joined(HEADS.get(word) ?? EMPTY, some));
}

function joined(known: WordMeaning, some: Partial<WordMeaning>): WordMeaning {
  return {
    kinds: [...known.kinds, ...(some.kinds ?? [])],
    lead: known.lead || (some.lead ?? false),
    facts: [...known.facts, ...(some.facts ?? [])],
    aside: known.aside || (some.aside ?? false),
  };
}
