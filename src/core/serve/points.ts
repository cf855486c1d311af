import type { FactKey, Facts, Kind, Part } from '#core/part/part.ts';
import { factText } from './fact-text.ts';
import type { Finding } from './finding.ts';
import { RULES, type Rule } from './rules.data.ts';
import { weigh } from './serve.ts';
import { rankOf, type BecauseCode, type Verdict } from './verdict.ts';

/** What a point is about: a fact, the thing as a whole, or what the line or the bag says beside its part. */
export type PointKey =
  | Exclude<FactKey, 'tolerance-low' | 'tolerance-high' | 'doubted'>
  | 'tolerance'
  | 'kind'
  | 'part'
  | 'alternate'
  | 'state';

/** How the two sides of a point stand to each other; `say/` holds the word of each. */
export type PointWord =
  | 'same'
  | 'higher'
  | 'lower'
  | 'tighter'
  | 'wider'
  | 'steadier'
  | 'less-steady'
  | 'similar'
  | 'differs'
  | 'any' // not asked, and any will do
  | 'not-asked' // not asked, and it matters
  | 'not-stated'
  | 'goes-without-saying'
  | 'usual' // not stated, but usual for the size
  | 'dc-by-practice' // a voltage alone means direct voltage
  | 'by-number' // left open, and the same part number settles it
  | 'other-maker'
  | 'packing'
  | 'version'
  | 'words-only'
  | 'never-swapped'
  | 'nothing-alike'
  | 'doubt' // read with a doubt
  | 'alternate' // the line names it beside its own part
  | 'to-look-at';

/** One fact of a line and of a bag side by side; `none` where it decides nothing. */
export interface Point {
  readonly key: PointKey;
  readonly asked: string | null;
  readonly has: string | null;
  readonly fit: Verdict | 'none';
  readonly word: PointWord;
}

/**
 * A part against what is asked, point by point: every fact that the rules compare or that either side states. Made of the findings
 * of `serve`, so that the worst point is its verdict. `100n 0603 X7R 50V` for `100n 0603 25V` → voltage 50 V for 25 V, higher, serves.
 */
export function pointsOf(has: Part, asked: Part): Point[] {
  const byKey = new Map<PointKey, Finding>();
  const { deciding, seen } = weigh(has, asked);
  const sameNumber = deciding.some(({ because }) => because.code === 'part-number');
  for (const one of seen) {
    if (SAID_BESIDE.has(one.because.code)) continue;
    const key = keyOf(one);
    const before = byKey.get(key);
    if (!before || rankOf(one.level) > rankOf(before.level)) byKey.set(key, one);
  }
  if ([...byKey].some(([key, { level }]) => key !== 'part' && level === 'missing')) byKey.delete('part');
  return keysOf(has, asked, byKey).map((key) => {
    const found = byKey.get(key);
    return found ? pointOf(key, found, has, asked) : openPoint(key, has, asked, sameNumber);
  });
}

/** The points in one order: the rules' own facts first, then what else is stated, what a part is called last. */
function keysOf(has: Part, asked: Part, found: ReadonlyMap<PointKey, Finding>): PointKey[] {
  const rules = RULES[asked.kind].facts.map(({ key }) => pointKey(key));
  const stated = [...Object.keys(asked.facts), ...Object.keys(has.facts)].map((key) => pointKey(key as FactKey)); // as: facts are kept by their key
  const all = new Set<PointKey | null>([...FIRST, ...rules, ...stated, ...found.keys(), ...LAST]);
  for (const key of LAST) {
    all.delete(key);
    all.add(key);
  }
  return [...all].filter(
    (key) => key !== null && (found.has(key) || textOf(has, key) !== null || textOf(asked, key) !== null),
  ) as PointKey[]; // as: null is left out
}

const FIRST: readonly PointKey[] = ['part', 'kind', 'value'];
const LAST: readonly PointKey[] = ['partNumber', 'maker'];

/** The point that a fact belongs to. */
export function pointKey(key: FactKey): PointKey | null {
  if (key === 'doubted') return null;
  return key === 'tolerance-low' || key === 'tolerance-high' ? 'tolerance' : key;
}

/** Reasons that stand beside the comparison of facts and decide nothing. */
const SAID_BESIDE: ReadonlySet<BecauseCode> = new Set(['bias-not-compared']);

/** Reasons that name no fact, or another than they are about. */
const KEY_OF_CODE: Readonly<Partial<Record<BecauseCode, PointKey>>> = {
  'nothing-like-it': 'part',
  'not-a-part': 'kind',
  described: 'partNumber',
  programmed: 'partNumber',
  polarised: 'polarised',
};

function keyOf({ fact, because: { code, args } }: Finding): PointKey {
  const named = (fact ?? args['fact'] ?? 'part') as FactKey; // as: a finding names facts only
  return KEY_OF_CODE[code] ?? pointKey(named) ?? 'part';
}

function pointOf(key: PointKey, found: Finding, has: Part, asked: Part): Point {
  const { level, because } = found;
  if (key === 'part') return { key, asked: asked.text, has: has.text, fit: level, word: 'nothing-alike' };
  if (key === 'kind') return { key, asked: asked.kind, has: has.kind, fit: level, word: 'differs' };
  const told = (side: 'has' | 'asked'): string | null => {
    const text = because.args[side];
    return text === undefined || text === '' || text === 'none' ? null : String(text);
  };
  const [mine, wanted] = [textOf(has, key) ?? told('has'), textOf(asked, key) ?? told('asked')];
  return { key, asked: wanted, has: mine, fit: level, word: wordOf(key, found, asked.kind, [mine, wanted]) };
}

type Sides = readonly [has: string | null, asked: string | null];

function wordOf(key: PointKey, { level, because }: Finding, kind: Kind, [mine, wanted]: Sides): PointWord {
  const { code } = because;
  const said = WORDS[code];
  if (said) return said;
  if (code === 'betters') return (BETTER[key] ?? BETTER[ruleOf(kind, key) ?? 'equal'])?.[0] ?? 'differs';
  if (code === 'below' && level === 'missing') return (BETTER[key] ?? BETTER[ruleOf(kind, key) ?? 'equal'])?.[1] ?? 'differs';
  if (code === 'safety') return mine === null && wanted !== null ? 'not-stated' : 'never-swapped';
  if (code === 'polarised' && (mine === null || wanted === null)) return mine === null ? 'not-stated' : 'not-asked';
  if (code === 'made-alike') return mine === null ? 'not-stated' : 'other-maker';
  return 'differs';
}

const WORDS: Readonly<Partial<Record<BecauseCode, PointWord>>> = {
  same: 'same',
  'part-number': 'same',
  'not-stated': 'not-stated',
  'not-asked': 'not-asked',
  usual: 'usual',
  similar: 'similar',
  described: 'words-only',
  programmed: 'never-swapped',
  packing: 'packing',
  'base-name': 'version',
  'dc-by-practice': 'dc-by-practice',
  'nothing-like-it': 'nothing-alike',
};

/** What is said of the better side, and of the worse: by the point where it has words of its own, else by its rule. */
const BETTER: Readonly<Partial<Record<PointKey | Rule, readonly [PointWord, PointWord]>>> = {
  tolerance: ['tighter', 'wider'],
  'temperature-coefficient': ['steadier', 'less-steady'],
  dielectric: ['steadier', 'less-steady'],
  'at-least': ['higher', 'lower'],
  'at-most': ['lower', 'higher'],
};

function ruleOf(kind: Kind, key: PointKey): Rule | undefined {
  return RULES[kind].facts.find((one) => one.key === key)?.rule;
}

/** A fact of which the rules say nothing here. */
function openPoint(key: PointKey, has: Part, asked: Part, sameNumber: boolean): Point {
  const [mine, wanted] = [textOf(has, key), textOf(asked, key)];
  const point = { key, asked: wanted, has: mine, fit: 'none' as const };
  if (sameNumber && mine !== wanted) return { ...point, word: 'by-number' };
  if (wanted === null) return { ...point, word: 'any' };
  if (mine !== null) return { ...point, word: mine.toLowerCase() === wanted.toLowerCase() ? 'same' : 'any' };
  return { ...point, word: key === 'technology' ? 'goes-without-saying' : 'any' };
}

/** What one side states of a point; null where it states nothing. */
function textOf(part: Part, key: PointKey): string | null {
  if (key === 'part' || key === 'kind' || key === 'alternate' || key === 'state') return null;
  if (key === 'tolerance') return toleranceText(part.facts);
  const fact = part.facts[key];
  return fact && fact.value !== '' ? factText(fact) : null;
}

/** `±1 %`, `−20 +80 %`. */
function toleranceText({ 'tolerance-low': low, 'tolerance-high': high }: Facts): string | null {
  const [below, above] = [low && factText(low), high && factText(high)];
  if (below === undefined && above === undefined) return null;
  if (below === above) return `±${below}`;
  return [below && `−${below}`, above && `+${above}`].filter(Boolean).join(' ');
}

/** The worst point that decides something: the verdict, where nothing but the facts does. */
export function worstOf(points: readonly Point[]): Verdict {
  return points.reduce<Verdict>((worst, { fit }) => (fit !== 'none' && rankOf(fit) > rankOf(worst) ? fit : worst), 'exact');
}
