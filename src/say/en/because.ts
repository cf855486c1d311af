import type { Because, BecauseCode } from '#core/serve/verdict.ts';
import { count } from './count.ts';
import { factName } from './fact-name.ts';
import { factValue } from './fact-value.ts';

type Args = Because['args'];
const fact = (args: Args): string => factName(args['fact'], args['has'], args['asked'], args['value']);
const of = (args: Args, key: 'has' | 'asked'): string => factValue(args['fact'], args[key]);

const SENTENCES = {
  same: (a) => `the ${fact(a)} is the same (${of(a, 'has')})`,
  betters: (a) => `the ${fact(a)} is better than asked (${of(a, 'has')} for ${of(a, 'asked')})`,
  below: (a) => `the ${fact(a)} falls short (bag: ${of(a, 'has')}, asked: ${of(a, 'asked')})`,
  differs: (a) => `the ${fact(a)} differs (bag: ${of(a, 'has')}, asked: ${of(a, 'asked')})`,
  'not-stated': (a) =>
    a['fact'] === 'variant'
      ? `the bag does not say “${a['asked']}”`
      : a['asked'] === ''
        ? `neither line nor bag says the ${fact(a)}`
        : `the bag does not say its ${fact(a)} (asked: ${a['asked']})`,
  'not-asked': (a) =>
    a['fact'] === 'variant'
      ? `the line does not ask for “${a['has']}”`
      : `the line does not say which ${fact(a)}; the bag has ${a['has']}`,
  'part-number': (a) => `the same part number (${a['value']})`,
  packing: (a) => `the part numbers differ in their packing only, it seems (${a['has']} for ${a['asked']})`,
  'base-name': (a) =>
    `one part number is the head of the other (${a['has']} for ${a['asked']}); the rest may mean another version`,
  'made-alike': (a) =>
    a['has'] === ''
      ? `the bag has no part number, but the facts agree (asked: ${a['asked']})`
      : `another maker's number with the same facts (${a['has']} for ${a['asked']})`,
  usual: (a) => `the bag does not say its ${fact(a)}, but size ${a['package']} usually stands ${a['asked']}`,
  similar: (a) => `the packages look alike but are not the same (${a['has']} for ${a['asked']})`,
  described: () => 'told by words only, without a part number',
  safety: (a) =>
    a['asked']
      ? `a part for safety is never swapped by rule (${fact(a)}: the bag has ${of(a, 'has')}, asked is ${of(a, 'asked')})`
      : 'a part for safety is never swapped by rule',
  programmed: () => 'what a part is programmed with is not told by its number',
  polarised: (a) =>
    `a polarised part is no answer for one that is not, nor the other way round (bag: ${polarity(a['has'])}, line: ${polarity(a['asked'])})`,
  'dc-by-practice': (a) =>
    `by an assumption: the ${a['side'] === 'has' ? 'bag' : 'line'} gives a voltage alone, which means DC on a plain capacitor`,
  'bias-not-compared': (a) => `the loss under bias was not compared (${a['has']} loses capacitance under voltage)`,
  doubt: (a) => `it was read with a doubt about the ${fact({ fact: a['field'] ?? '' })}${a['text'] ? `: ${a['text']}` : ''}`,
  'quantity-not-refs': (a) =>
    `the quantity is ${a['quantity']}, but the line names ${count(a['refs'], 'ref')}; ${a['need']} a board ${a['need'] === 1 ? 'is' : 'are'} counted`,
  alternate: (a) => `the line names it as an alternate (${a['text']})`,
  'second-hand': (a) => SECOND_HAND[String(a['state'])] ?? `the bag is marked: ${a['state']}`,
  estimate: (a) =>
    a['sure'] === 0
      ? `about ${a['onHand']}, not counted`
      : `how many there are is an estimate: ${a['sure']} sure of ${a['onHand']}`,
  assumption: (a) => `by an assumption: ${a['text']}`,
  chosen: (a) => `bag ${a['bag']} was chosen for this before`,
  accepted: (a) => `accepted for this board${a['reason'] ? `, because “${a['reason']}”` : ''}`,
  'nothing-like-it': () => 'nothing like it is in the bags',
  nearest: (a) => `the nearest is bag ${a['bag']} (${fact(a)}: ${of(a, 'has')}, asked: ${of(a, 'asked')})`,
  'may-serve': (a) => `bag ${a['bag']} may serve`,
  astray: (a) => `bag ${a['bag']} was looked for and not found`,
  short: (a) => `${a['free']} free, ${a['need']} needed`,
  promised: (a) => `promised to ${a['build']}`,
  'not-fitted': () => 'not fitted on this board',
  later: () => 'left off for now, to be fitted later',
  'not-a-part': () => 'not a part',
} satisfies Record<BecauseCode, (args: Args) => string>;

/** What speaks against a bag, where a refusal or a warning carries it as `why` with its arguments: `: the value is another (2 A for 1 A)`. */
export function sayAgainst(args: Args): string {
  const say = Object.entries<(args: Args) => string>(SENTENCES).find(([code]) => code === args['why'])?.[1];
  return say ? `: ${say(args)}` : '';
}

const SECOND_HAND: Readonly<Record<string, string>> = {
  salvaged: 'the bag holds salvaged parts',
  mixed: 'the bag holds several lots mixed',
  expired: 'the bag is past its date',
};

function polarity(value: string | number | undefined): string {
  return value === 'yes' ? 'polarised' : value === 'no' ? 'not polarised' : 'not said';
}

/** The sentence of one reason, without a full stop: `{code: 'same', args: {fact: 'value', has: '4.7 kΩ'}}` → `the value is the same (4.7 kΩ)`. */
export function sayBecause(because: Because): string {
  return SENTENCES[because.code](because.args);
}
