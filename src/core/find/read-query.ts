import { readPart } from '#core/part/read-part.ts';
import { KINDS, type Fact, type FactKey, type Kind, type Part } from '#core/part/part.ts';
import { fromDigitText } from '#core/quantity/decimal.ts';
import { fold, isMeasure } from './fold.ts';

/** One thing that is asked for: a typed word, or a number with its unit, with everything that it may mean. */
export interface Ask {
  readonly typed: string;
  readonly word: string;
  /** `12`, `#12`, `bag 12` */
  readonly number: number | null;
  /** `box A` and `bag 12` mean nothing else */
  readonly only: 'bag' | 'box' | null;
  /** the kind that the word names, and nothing more: `resistor` */
  readonly kind: Kind | null;
  /** what it reads as; more than one fact for `M3x8` */
  readonly facts: readonly Fact[];
  /** values that it may also be: `100n` is a capacitance or an inductance */
  readonly others: readonly Fact[];
  /** `at least 50 V`, `over 50V`; `at most 1 %`, `under 1 %` */
  readonly bound: 'at-least' | 'at-most' | null;
  /** a bag without it is another thing; a bag without the others is the same in another package, rating, make */
  readonly essential: boolean;
}

export interface Query {
  readonly asks: readonly Ask[];
  /** kind of the whole text as read: breaks ties */
  readonly kind: Kind | null;
  /** what was too much to be looked for; empty as a rule */
  readonly rest: string;
}

const MOST_ASKS = 12;
const LONGEST = 200;
const ESSENTIAL = new Set<FactKey>(['value', 'partNumber', 'thread', 'length', 'colour', 'pins', 'polarity', 'variant']);
const HAS_UNIT = /(?:Ω|Ω|ohms?|F|Hz?|[VWA%]|mm|V(?:DC|AC))$/i;
const BARE_NUMBER = /^\d+(?:[.,]\d+)?$/;
/** Kinds that a value without its unit may be of. */
const OPEN_KINDS: readonly Kind[] = ['resistor', 'capacitor', 'inductor'];
/** Kinds of many things: a word that tells of one, such as 'amplifier', does not mean them all; only their own name does. */
const BROAD = new Set<Kind>(['ic', 'module', 'sensor', 'mechanical', 'connector', 'other', 'not-a-part']);
const BOUNDS: readonly (readonly [RegExp, 'at-least' | 'at-most'])[] = [
  [/^(?:at least|more than|over|from|≥|>=|>) (?=\S)/i, 'at-least'],
  [/^(?:at most|less than|under|up to|≤|<=|<) (?=\S)/i, 'at-most'],
];

/**
 * What was typed, as things asked for. `"4,7 kΩ 0805"` → a value of 4700 ohm, a package; `"capacitor at least 50 V"` → a kind, a bound;
 * `"bag 12"` → a bag number; words that state no fact stay words.
 */
export function readQuery(text: string): Query {
  const read = text.slice(0, LONGEST);
  const words = joined(
    read
      .replaceAll(/[≥≤]|[<>]=?/g, ' $& ')
      .split(/\s+/)
      .filter(Boolean),
  );
  const whole = readPart(words.join(' ')).part.kind;
  const kind = whole === 'other' || whole === 'not-a-part' ? null : whole;
  const asks: Ask[] = [];
  let rest = words;
  while (rest.length && asks.length < MOST_ASKS) {
    const [ask, used] = nextAsk(rest, kind);
    if (ask) asks.push(ask);
    rest = rest.slice(used);
  }
  return { asks, kind, rest: [...rest, text.slice(LONGEST)].join(' ').trim() };
}

/** `4.7 k` → `4.7k`, `50 V` → `50V`: a number and the unit after it are one word. */
function joined(words: readonly string[]): string[] {
  const out: string[] = [];
  for (const word of words) {
    const before = out.at(-1);
    if (before !== undefined && isMeasure(before, word)) out[out.length - 1] = before + word;
    else out.push(word);
  }
  return out;
}

function nextAsk(words: readonly string[], kind: Kind | null): [Ask | null, number] {
  const [first = '', second] = words;
  if (second !== undefined && /^(?:bag|box)$/i.test(first)) {
    const only = first.toLowerCase() === 'bag' ? ('bag' as const) : ('box' as const);
    if (only === 'box' || bagNumber(second) !== null)
      return [{ ...wordAsk(second), typed: `${first} ${second}`, number: bagNumber(second), only }, 2];
  }
  const text = words.join(' ');
  for (const [pattern, bound] of BOUNDS) {
    const phrase = pattern.exec(text)?.[0];
    if (phrase === undefined) continue;
    const used = phrase.trim().split(' ').length;
    const ask = askOf(words[used] ?? '', kind);
    const limit = ask.facts.find((fact) => fact.unit !== null) ?? ask.others[0];
    if (limit) return [{ ...wordAsk(ask.typed), typed: words.slice(0, used + 1).join(' '), facts: [limit], bound }, used + 1];
  }
  return [fold(first) ? askOf(first, kind) : null, 1];
}

function wordAsk(typed: string): Ask {
  return { typed, word: fold(typed), number: null, only: null, kind: null, facts: [], others: [], bound: null, essential: true };
}

/** One word, read by itself in the light of the kind that all words together tell of. */
function askOf(typed: string, context: Kind | null): Ask {
  const alone = readPart(typed).part;
  const facts = statedFacts(typed, alone, context);
  const kind = facts.length ? null : kindNamed(typed, alone.kind);
  const others = kind || !/\d/.test(typed) ? [] : otherValues(typed, context, facts);
  const essential = facts.length === 0 || facts.some(({ key }) => ESSENTIAL.has(key));
  return { ...wordAsk(typed), number: bagNumber(typed), kind, facts, others, essential };
}

/** What the word states by itself; where it needs a kind to be understood (`0805`, `1%`, `red`), by that of the whole. */
function statedFacts(typed: string, alone: Part, context: Kind | null): Fact[] {
  const own = stated(alone);
  if (own.length) return own;
  if (context) return stated(readPart(typed, { kind: context }).part);
  return /\d/.test(typed) ? stated(readPart(typed, { kind: 'resistor' }).part) : [];
}

/** Words that no fact holds are looked for as words. */
function stated({ facts }: Part): Fact[] {
  return Object.values(facts).filter((fact) => fact.origin === 'stated' && fact.key !== 'variant');
}

/** The values that the word may mean beside its own reading: `100n` in another kind, `104` as a marking, `4700` as a bare number. */
function otherValues(typed: string, context: Kind | null, facts: readonly Fact[]): Fact[] {
  if (HAS_UNIT.test(typed)) return [];
  const value = facts.find(({ key }) => key === 'value');
  if (facts.length && !value) return [];
  const kinds = context && OPEN_KINDS.includes(context) && !value ? [context] : OPEN_KINDS;
  const read = kinds.flatMap((kind) => {
    const asValue = BARE_NUMBER.test(typed) || LEADING[kind]?.test(typed);
    const { facts: told } = asValue ? readPart('', { kind, fields: { value: typed } }).part : readPart(typed, { kind }).part;
    return told.value && (told.value.value !== value?.value || told.value.unit !== value.unit) ? [told.value] : [];
  });
  const more = kinds.flatMap((kind) => printedCode(typed, kind) ?? []);
  return [...read, ...more.filter((code) => !read.some((one) => one.value === code.value && one.unit === code.unit))];
}

/** A letter in front stands for the point (IEC 60062): `u1` is 0.1 µF or µH, `k47` and `R47` are ohms. */
const LEADING: Readonly<Partial<Record<Kind, RegExp>>> = {
  resistor: /^[Rk]\d{1,3}$/,
  capacitor: /^[pnuµμ]\d{1,3}$/,
  inductor: /^[nuµμ]\d{1,3}$/,
};

/** What figures printed on a part count: ohms, pF or µH (IEC 60062). */
const PRINTED: Readonly<Partial<Record<Kind, { readonly unit: string; readonly power: number }>>> = {
  resistor: { unit: 'ohm', power: 0 },
  capacitor: { unit: 'F', power: -12 },
  inductor: { unit: 'H', power: -6 },
};

/** `472` on a part: 47 and two noughts. With no nought to add (`470`) the plain number is meant. */
function printedCode(typed: string, kind: Kind): Fact | null {
  const [, digits, noughts] = /^([1-9]\d)([1-7])$/.exec(typed) ?? [];
  const printed = PRINTED[kind];
  if (digits === undefined || noughts === undefined || !printed) return null;
  const value = fromDigitText(digits, Number(noughts) + printed.power);
  return { key: 'value', value, unit: printed.unit, origin: 'stated' };
}

function bagNumber(typed: string): number | null {
  const digits = /^#?([1-9]\d{0,8})$/.exec(typed)?.[1];
  return digits === undefined ? null : Number(digits);
}

function kindNamed(typed: string, kind: Kind): Kind | null {
  const named = KINDS.find((name) => name === typed.toLowerCase() || `${name}s` === typed.toLowerCase());
  return named ?? (BROAD.has(kind) ? null : kind);
}
