import type { AskMeans, AskPiece } from '#core/find/gloss-query.ts';
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

function meansOf(means: AskMeans): string {
  switch (means.sort) {
    case 'bag':
      return `bag ${means.number}${means.orValue ? ', or a value' : ''}`;
    case 'box':
      return `box ${means.word}`;
    case 'place':
      return `place ${means.word}`;
    case 'supplier':
      return `from ${means.word}`;
    case 'code':
      return 'part code';
    case 'part-number':
      return 'part number';
    case 'word':
      return 'the word';
    case 'meant':
      return `${means.word}?`;
    case 'kind':
      return kindWord(means.kind);
    case 'facts':
      return `${sayFacts(means.facts, means.kind ?? 'other')}${means.kind ? ` ${kindWord(means.kind)}` : ''}`;
    case 'bound':
      return `${means.fact.key === 'value' || means.fact.key === 'voltage' ? '' : `${factName(means.fact.key)} `}${means.bound === 'at-least' ? 'at least' : 'at most'} ${sayFact(means.fact)}`;
    case 'nowhere':
      return 'in no bag';
    case 'too-much':
      return 'not looked for: too many words';
    case 'any':
      return `any ${means.fact}`;
  }
}
