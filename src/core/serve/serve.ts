import { wordFact, type FactKey, type Kind, type Part } from '#core/part/part.ts';
import { capacitorFindings } from './capacitor.ts';
import { compareFact } from './compare-fact.ts';
import { finding, type Finding } from './finding.ts';
import { isTypeName, nameFit, type NameFit } from './part-number.ts';
import { ALIKE, RULES, type KindRules } from './rules.data.ts';
import { isNeverSwapped, isProgrammed } from './safety.ts';
import { alikeVariant, measured } from './variant.ts';
import { rankOf, type Answer } from './verdict.ts';

/**
 * May this part serve for that demand? `exact`: every stated fact equal and no safety fact open; `serves`: every stated or assumed
 * demand met or bettered; `check`: a fact is not stated on one side, or a judgement; `missing`: a stated fact is below or different.
 * The reasons come worst first. `100n 0603 X7R 50V` for `100n 0603 25V` → serves; `100n 0603` for it → check; `100n 0805 50V` → missing.
 */
export function serve(has: Part, asked: Part): Answer {
  return answer(weigh(has, asked).deciding);
}

/** What was found of a bag's part against what is asked. */
export interface Weighed {
  /** what the verdict is made of: the worst of it */
  readonly deciding: readonly Finding[];
  /** every fact that was compared, also where the two are nothing like each other */
  readonly seen: readonly Finding[];
}

/** All findings behind the verdict of `serve`, fact by fact. */
export function weigh(has: Part, asked: Part): Weighed {
  if (asked.kind === 'not-a-part' || has.kind === 'not-a-part') return weighed(finding('missing', 'not-a-part'));
  const number = numberFit(has, asked);
  const kind = commonKind(has, asked, number);
  if (kind === null) return weighed(finding('missing', 'nothing-like-it'));
  const rules = RULES[kind];
  const facts = rules.facts.flatMap((rule) => compareFact(rule, has, asked));
  const found = kind === 'capacitor' ? [...facts, ...capacitorFindings(has, asked)] : facts;
  if (number === 'same')
    return weighed(
      finding('exact', 'part-number', { value: wordFact(asked, 'partNumber') ?? '' }, 'partNumber'),
      ...underSameNumber(found, asked),
      ...onBoard(has, asked),
      ...programmed(has, asked),
    );
  if (!isLike(rules, found, number, has, asked)) {
    const nothing = finding('missing', 'nothing-like-it');
    const named = rules.number === 'made-alike' ? [] : numberFindings(rules, has, asked, number);
    return { deciding: [...found.filter(({ level }) => level === 'missing'), nothing], seen: [...found, ...named, nothing] };
  }
  const told = [...found, ...numberFindings(rules, has, asked, number)];
  return weighed(...told, ...unnamed(rules, told, has, asked), ...programmed(has, asked));
}

function weighed(...found: readonly Finding[]): Weighed {
  return { deciding: found, seen: found };
}

/** What a fuse must state, and equal, to be the same: IEC 60127 marks characteristic, current and voltage, its size is its holder's. */
const FUSE_FACTS: readonly FactKey[] = ['value', 'safety', 'voltage', 'package'];

function answer(findings: readonly Finding[]): Answer {
  const sorted = findings.toSorted((a, b) => rankOf(b.level) - rankOf(a.level));
  const told = new Map(sorted.map(({ because }) => [`${because.code} ${Object.values(because.args).join('|')}`, because]));
  return { verdict: sorted[0]?.level ?? 'missing', because: [...told.values()] };
}

function numberFit(has: Part, asked: Part): NameFit | null {
  const [mine, wanted] = [wordFact(has, 'partNumber'), wordFact(asked, 'partNumber')];
  return mine === null || wanted === null ? null : nameFit(mine, wanted);
}

/** The kind by whose rules the two are compared; null where they have nothing in common. */
function commonKind(has: Part, asked: Part, number: NameFit | null): Kind | null {
  if (has.kind === asked.kind) return has.kind;
  const named = number !== null && number !== 'differs';
  const known = asked.kind === 'other' ? has.kind : asked.kind;
  if (named && (has.kind === 'other' || asked.kind === 'other' || number === 'same')) return known;
  return named && ALIKE.some((kinds) => kinds.includes(has.kind) && kinds.includes(asked.kind)) ? known : null;
}

/** The same number settles what either side leaves open; what contradicts it is shown, and another package stays another part. */
function underSameNumber(found: readonly Finding[], asked: Part): Finding[] {
  const typeName = isTypeName(wordFact(asked, 'partNumber') ?? '');
  return found.flatMap((one) => {
    if (one.fact === 'variant' && one.level !== 'missing') return [];
    if (one.because.code === 'not-asked' || one.because.code === 'usual') return [];
    if (one.because.code === 'not-stated') return one.fact === 'package' && typeName ? [one] : [];
    if (one.level === 'missing' && one.fact !== 'package') return [{ ...one, level: 'check' as const }];
    return one.level === 'missing' || one.level === 'check' || one.because.code === 'same' ? [one] : [];
  });
}

/** `INA219 module` and `INA219`: a type's number on a little board is not the chip; an orderable number says which it is. */
function onBoard(has: Part, asked: Part): Finding[] {
  const one = has.kind === 'module' || asked.kind === 'module';
  if (!one || has.kind === asked.kind || !isTypeName(wordFact(asked, 'partNumber') ?? '')) return [];
  return [finding('check', 'differs', { fact: 'kind', has: has.kind, asked: asked.kind })];
}

function isLike(rules: KindRules, found: readonly Finding[], number: NameFit | null, has: Part, asked: Part): boolean {
  if (number === 'packing' || number === 'base') return true;
  return rules.identity.some((key) =>
    key === 'variant'
      ? alikeVariant(wordFact(has, key) ?? '', wordFact(asked, key) ?? '')
      : found.some(({ fact, because }) => fact === key && because.code === 'same'),
  );
}

function numberFindings(rules: KindRules, has: Part, asked: Part, number: NameFit | null): Finding[] {
  const [mine, wanted] = [wordFact(has, 'partNumber'), wordFact(asked, 'partNumber')];
  if (wanted === null) return [];
  const args = { fact: 'partNumber', has: mine ?? '', asked: wanted };
  const alike = rules.number === 'made-alike';
  if (number === 'packing') return [finding(alike ? 'serves' : 'check', 'packing', args, 'partNumber')];
  // where any maker's will do by its facts, a longer number of the same maker will
  if (number === 'base' && !alike) return [finding('check', 'base-name', args, 'partNumber')];
  if (alike) return [finding('serves', 'made-alike', args, 'partNumber')];
  if (mine === null) return [finding('check', 'not-stated', args, 'partNumber')];
  return [finding(rules.number === 'names-it' ? 'missing' : 'check', 'differs', args, 'partNumber')];
}

/** Safety parts are swapped by hand only: an X2 capacitor or a fuse is exact when all is stated and equal, a cell never by its facts. */
function unnamed(rules: KindRules, found: readonly Finding[], has: Part, asked: Part): Finding[] {
  const level = (key: FactKey): string | undefined => found.find(({ fact }) => fact === key)?.level;
  const alike = found.every((one) => one.level === 'exact');
  if (asked.kind === 'fuse' && alike && FUSE_FACTS.every((key) => level(key) === 'exact')) return [];
  if (rules.unnamed === 'safety') return [finding('check', 'safety', { fact: 'partNumber' })];
  if (rules.unnamed === 'words' && alike && measured(asked)) return [];
  if (rules.unnamed !== null) return [finding('check', 'described'), ...caution(has, asked)];
  return alike ? [] : caution(has, asked);
}

/** Not exact, and of those that nobody swaps by rule. */
function caution(has: Part, asked: Part): Finding[] {
  return isNeverSwapped(has, false) || isNeverSwapped(asked, true) ? [finding('check', 'safety', { fact: 'safety' })] : [];
}

/** A programmed part is not told by the number of its type. */
function programmed(has: Part, asked: Part): Finding[] {
  return isProgrammed(has) || isProgrammed(asked) ? [finding('check', 'programmed')] : [];
}
