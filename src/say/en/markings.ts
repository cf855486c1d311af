import type { Evidence, EvidenceCode, Look, Piece, Reading, Unread } from '#core/part/marking/marking.ts';
import type { Fact } from '#core/part/part.ts';
import type { Decimal } from '#core/quantity/decimal.ts';
import { plainDigits, writeQuantity } from '#core/quantity/write-quantity.ts';
import { sayFact, sayTolerance } from './fact-words.ts';

type Args = Evidence['args'];

/** `4.7 kΩ ±5 %`, `100 nF ±10 %, 100 V`: all that a reading says. */
export function sayReading({ facts, kind }: Pick<Reading, 'facts' | 'kind'>): string {
  const low = facts['tolerance-low'];
  const high = facts['tolerance-high'];
  const value = [facts.value && sayFact(facts.value), low && high && sayTolerance(low, high, kind)].filter(Boolean).join(' ');
  const more = [facts.voltage, facts['temperature-coefficient']].flatMap((fact) => (fact ? [sayFact(fact)] : []));
  return [value, ...more].join(', ');
}

/** What a person holds, as they see it. */
export const LOOK_WORDS: Readonly<Record<Look, string>> = {
  bands: 'resistor with bands',
  chip: 'chip resistor',
  capacitor: 'capacitor, no polarity',
  can: 'capacitor with a polarity',
  coil: 'inductor',
};

export const PLAUSIBLE_WORDS = { likely: 'likely', possible: 'possible', unlikely: 'unlikely' } as const;

const SLOTS: Readonly<Record<string, string>> = {
  figure: 'a figure',
  times: 'a multiplier',
  tolerance: 'a tolerance',
  temperature: 'a temperature coefficient',
};
const slot = (word: string | undefined): string => SLOTS[word ?? ''] ?? '';

const EVIDENCE = {
  'usual-notation': () => 'such parts are usually marked so',
  'less-usual-notation': () => 'some such parts are marked so',
  'usual-value': (a) => (a['series'] ? `a usual value, of series ${a['series']}` : 'a usual value'),
  'small-value': () => 'so small a value is made outside the series too',
  'usual-tolerance': () => 'a usual tolerance for so many bands',
  'only-way': (a) => `from the other end ${a['colour']} would be ${slot(a['slot'])}, and it is none`,
  'gap-fits': () => 'the wider gap stands before the tolerance',
  'nought-adds-none': (a) => `the last figure of ${a['figures']} counts noughts, and there is none`,
  'seldom-notation': () => 'such parts are seldom marked so',
  'rare-notation': () => 'only old or foreign parts are marked so',
  'unusual-value': () => 'not a value of E24 or E96',
  'first-figure-nought': () => 'a value does not begin with a nought',
  'rare-tolerance': () => 'a rare tolerance for so many bands',
  'tolerance-by-edition': (a) => `the colour means ±${a['now']} % since 2016, in older tables ±${a['old']} %`,
  'rare-temperature': () => 'a rare temperature coefficient',
  'gap-against': () => 'the wider gap would stand on the wrong side',
  'special-mark': (a) => `the last band, ${a['colour']}, would be a special mark of its maker`,
  'outside-range': () => 'such parts are not made so small or so large',
  'tight-for-size': () => 'so large a capacitor is hardly made so exact',
  'letter-two-ways': (a) => `${a['letter']} may mean a multiplier or a tolerance`,
  'letter-by-maker': (a) => `what ${a['letter']} means is the maker’s own`,
  'letter-seldom': (a) => `${a['letter']} is a seldom tolerance`,
  'ten-picofarad': (a) => `at 10 pF some makers count ${a['letter']} in pF, some in %`,
  'r-two-ways': (a) => `in ${a['text']} the R is the point, or the multiplier of a three-character code`,
  turned: (a) => `read upside down, as ${a['text']}`,
} satisfies Record<EvidenceCode, (args: Args) => string>;

/** What speaks for a reading or against it. */
export const sayEvidence = ({ code, args }: Evidence): string => EVIDENCE[code](args);

/** What one piece of a marking means: `violet` → `7`, `red` → `× 100`, `K` → `±10 %`. */
export function sayPiece({ is, means }: Piece, unit: string): string {
  if (is === 'times') return `× ${plainDigits(`1e${means}` as Decimal)}`; // as: a power of ten is a canonical decimal
  if (is === 'tolerance') return toleranceOf(means);
  if (is === 'temperature') return `${means}\u202fppm/K`;
  if (is === 'voltage') return sayFact(voltage(means));
  if (is === 'value') return writeQuantity(means as Decimal, unit).replace(' ', '\u202f'); // as: a value is a canonical decimal
  if (is === 'extra') return 'special mark';
  if (is === 'unknown') return 'maker’s own';
  return is === 'link' ? 'link' : means;
}

/** `10%` → `±10 %`, `20/80%` → `−20/+80 %`; a colour's has no unit and is in %. */
function toleranceOf(means: string): string {
  const [, sizes = '', unit = ''] = /^([\d./]+)(.*)$/.exec(means) ?? [];
  const [low, high] = sizes.split('/');
  return `${high === undefined ? `±${low}` : `\u2212${low}/+${high}`}\u202f${unit || '%'}`;
}

const voltage = (value: string): Fact => ({ key: 'voltage', value, unit: 'V', origin: 'decoded' });

/** Why nothing was read, and what may help. */
export function sayUnread(unread: Unread): { readonly why: string; readonly settle: string } {
  const sentences = {
    underlined: {
      why: 'Figures with a line under or over them are not read.',
      settle: 'Makers use the line for different things. Measure the part.',
    },
    'too-long': { why: 'That is too long for a marking.', settle: 'Type what stands on one line of the part.' },
    'no-notation': {
      why: 'No such marking is known on such a part.',
      settle: 'Turn the part round, look for a line under the figures, or choose another look. A meter settles it.',
    },
    'other-scheme': {
      why: 'A letter before two figures is another maker’s scheme, which is not read.',
      settle: 'Turn the part round, or measure it.',
    },
    'band-count': { why: 'Resistors have one black band, or three to six.', settle: 'Count the bands again.' },
    'band-meaningless': {
      why: `Neither end can be first: ${args(unread, 'colour')} is not ${slot(args(unread, 'slot'))}.`,
      settle: 'Look at the colours again, in daylight; white and silver, grey and silver, brown and red look alike.',
    },
  };
  return sentences[unread.code];
}

function args(unread: Unread, name: 'colour' | 'slot'): string {
  return unread.code === 'band-meaningless' ? unread.args[name] : '';
}
