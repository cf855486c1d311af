import type { Why, WhyCode } from '#core/find/why.ts';
import { factName } from './fact-name.ts';

type Args = Why['args'];
const fact = (args: Args): string => factName(args['fact'], args['has'], args['asked'], args['value']);

const SENTENCES = {
  'bag-number': (a) => `bag number ${a['number']}`,
  code: (a) => `its code is ${a['code']}`,
  'code-begins': (a) => `its code ${a['code']} begins so`,
  'part-number': (a) => `its part number is ${a['value']}`,
  'part-number-has': (a) => `'${a['typed']}' is in its part number ${a['value']}`,
  kind: (a) => `kind ${a['kind']}`,
  fact: (a) => `${fact(a)} ${a['value']}`,
  betters: (a) => `${fact(a)} ${a['has']}, better than ${a['asked']}`,
  'in-bounds': (a) => `${fact(a)} ${a['has']}`,
  near: (a) => `${fact(a)} ${a['has']}, near ${a['asked']}`,
  other: (a) => `but ${fact(a)} ${a['has']}, not ${a['asked']}`,
  'not-stated': (a) => `it does not say its ${fact(a)}`,
  box: (a) => `it is in box ${a['box']}`,
  place: (a) => `its place is ${a['place']}`,
  supplier: (a) => `it came from ${a['supplier']}`,
  word: (a) => `it says '${a['typed']}'`,
  meant: (a) => `'${a['typed']}' was read as '${a['word']}'`,
  without: (a) => `nothing of it answers '${a['typed']}'`,
  astray: () => 'it was looked for and not found',
  exhausted: () => 'it is exhausted',
} satisfies Record<WhyCode, (args: Args) => string>;

/** Why a bag was found, in words: `{code: 'betters', args: {fact: 'voltage', has: '100 V', asked: '50 V'}}` → `voltage 100 V, better than 50 V`. */
export function sayFound(why: Why): string {
  return SENTENCES[why.code](why.args);
}
