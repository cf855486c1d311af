import { readPart } from '#core/part/read-part.ts';
import type { Fact, FactKey, Kind } from '#core/part/part.ts';
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
}

const MOST_ASKS = 12;
const LONGEST = 200;
const ESSENTIAL = new Set<FactKey>(['value', 'partNumber', 'thread', 'length', 'colour', 'pins', 'polarity', 'variant']);
const HAS_UNIT = /(?:Ω|Ω|ohms?|F|Hz?|[VWA%]|mm|V(?:DC|AC))$/i;
const OPEN_KINDS: readonly Kind[] = ['resistor', 'capacitor', 'inductor'];
const BOUNDS: readonly (readonly [RegExp, 'at-least' | 'at-most'])[] = [
  [/^(?:at least|more than|over|from|≥|>=|>) (?=\S)/i, 'at-least'],
  [/^(?:at most|less than|under|up to|≤|<=|<) (?=\S)/i, 'at-most'],
];

/**
 * What was typed, as things asked for. `"4,7 kΩ 0805"` → a value of 4700 ohm, a package; `"capacitor at least 50 V"` → a kind, a bound;
 * `"bag 12"` → a bag number; words that state no fact stay words.
 */
export function readQuery(text: string): Query {
  const words = joined(text.slice(0, LONGEST).replaceAll(/[≥≤]|[<>]=?/g, ' $& ').split(/\s+/).filter(Boolean));
  const whole = readPart(words.join(' ')).part.kind;
  const kind = whole === 'other' || whole === 'not-a-part' ? null : whole;
  const named = words.some((word) => kindNamed(word) === kind) ? kind : null;
  const asks: Ask[] = [];
  let rest = words;
  while (rest.length && asks.length < MOST_ASKS) {
    const [ask, used] = nextAsk(rest, named);
    asks.push(...ask);
    rest = rest.slice(used);
  }
  return { asks, kind };
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

function nextAsk(words: readonly string[], kind: Kind | null): [Ask[], number] {
  const [first = '', second] = words;
  if (second !== undefined && /^(?:bag|box)$/i.test(first)) {
    const only = first.toLowerCase() === 'bag' ? ('bag' as const) : ('box' as const);
    if (only === 'box' || bagNumber(second) !== null) return [[{ ...askOf(second, null), only, facts: [], others: [], kind: null, essential: true }], 2];
  }
  const text = words.join(' ');
  for (const [pattern, bound] of BOUNDS) {
    const phrase = pattern.exec(text)?.[0];
    if (phrase === undefined) continue;
    const used = phrase.trim().split(' ').length;
    const ask = askOf(words[used] ?? '', kind);
    const limit = ask.facts.find((fact) => fact.unit !== null);
    if (limit) return [[{ ...ask, facts: [limit], others: [], number: null, bound, essential: true }], used + 1];
  }
  return [fold(first) ? [askOf(first, kind)] : [], 1];
}

function askOf(typed: string, context: Kind | null): Ask {
  const { part } = readPart(typed, context ? { kind: context } : {});
  const facts = Object.values(part.facts).filter((fact) => fact !== undefined && fact.origin === 'stated') as Fact[]; // as: the filter leaves no undefined
  const others = context || HAS_UNIT.test(typed) || !/\d/.test(typed) ? [] : otherValues(typed, part.facts.value);
  const kind = kindNamed(typed);
  const essential = facts.length === 0 || facts.some(({ key }) => ESSENTIAL.has(key));
  return { typed, word: fold(typed), number: bagNumber(typed), only: null, kind, facts: kind ? [] : facts, others, bound: null, essential };
}

/** The value of the word when read as a resistance, a capacitance, an inductance: those that its own reading does not say. */
function otherValues(typed: string, own: Fact | undefined): Fact[] {
  return OPEN_KINDS.flatMap((kind) => {
    const value = readPart(typed, { kind }).part.facts.value;
    return value && (value.value !== own?.value || value.unit !== own.unit) ? [value] : [];
  });
}

function bagNumber(typed: string): number | null {
  const digits = /^#?([1-9]\d{0,8})$/.exec(typed)?.[1];
  return digits === undefined ? null : Number(digits);
}

/** The kind that a word names without stating any fact: `resistor`, not `4k7`. */
function kindNamed(word: string): Kind | null {
  if (/\d/.test(word)) return null;
  const { kind, facts } = readPart(word).part;
  return kind === 'other' || kind === 'not-a-part' || Object.keys(facts).length > 0 ? null : kind;
}
