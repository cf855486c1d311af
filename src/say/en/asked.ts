import type { AskMeans, AskPiece } from '#core/find/gloss-query.ts';
import type { FactKey } from '#core/part/part.ts';
import { factName } from './fact-name.ts';
import { sayFact } from './fact-words.ts';
import { NOT_GIVEN, sayFacts, type GlossWords } from './gloss.ts';
import { kindWord } from './kind-words.ts';

/** What was typed into Find over what it was looked for as: `at least 50V` over `at least 50 V`, a slip of the pen as a question. */
export function sayAsked(pieces: readonly AskPiece[]): GlossWords[] {
  return pieces.map(({ typed, means }) => ({ typed: typed || NOT_GIVEN, means: meansOf(means), how: HOW[means.sort] ?? 'read' }));
}

const HOW: Readonly<Partial<Record<AskMeans['sort'], GlossWords['how']>>> = {
  meant: 'doubt',
  nowhere: 'unread',
  'too-much': 'unread',
  any: 'filled',
};

/** What is said of each sort of meaning. */
const SAID: { readonly [Sort in AskMeans['sort']]: (means: Extract<AskMeans, { sort: Sort }>) => string } = {
  bag: ({ number, orValue }) => `bag ${number}${orValue ? ', or a value' : ''}`,
  box: ({ word }) => `box ${word}`,
  place: ({ word }) => `place ${word}`,
  supplier: ({ word }) => `from ${word}`,
  code: () => 'part code',
  'part-number': () => 'part number',
  word: () => 'the word',
  meant: ({ word }) => `${word}?`,
  kind: ({ kind }) => kindWord(kind),
  facts: ({ facts, kind }) => `${sayFacts(facts, kind ?? 'other')}${kind ? ` ${kindWord(kind)}` : ''}`,
  bound: ({ fact, bound }) => `${named(fact.key)}${bound === 'at-least' ? 'at least' : 'at most'} ${sayFact(fact)}`,
  nowhere: () => 'in no bag',
  'too-much': () => 'not looked for: too many words',
  any: ({ fact }) => `any ${fact}`,
};

function meansOf<Sort extends AskMeans['sort']>(means: Extract<AskMeans, { sort: Sort }>): string {
  const say = SAID[means.sort] as (means: AskMeans) => string; // as: the row of its own sort
  return say(means);
}

/** A value and a voltage are told by their unit. */
function named(key: FactKey): string {
  return key === 'value' || key === 'voltage' ? '' : `${factName(key)} `;
}
