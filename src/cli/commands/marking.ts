import { lookNamed, markingsOf, readStray } from '#actions/read-stray.ts';
import type { Reading } from '#core/part/marking/marking.ts';
import type { Marking } from '#core/part/marking/write-markings.ts';
import { cliText } from '#say/en/cli.ts';
import { LOOK_WORDS, PLAUSIBLE_WORDS, sayEvidence, sayReading, sayUnread } from '#say/en/markings.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage, type Ending } from '../command.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import type { Terminal } from '../terminal.ts';

const READINGS: readonly ColumnOf<Reading>[] = [
  { head: 'plausible', cell: ({ plausible }) => PLAUSIBLE_WORDS[plausible] },
  { head: 'reading', cell: sayReading },
  { head: 'on', cell: ({ look }) => LOOK_WORDS[look] },
  { head: 'why', cell: ({ evidence }) => evidence.map(sayEvidence).join('; '), gives: true },
];
const MARKINGS: readonly ColumnOf<Marking>[] = [
  { head: 'on', cell: ({ look }) => LOOK_WORDS[look] },
  { head: 'marking', cell: ({ text }) => text },
  { head: 'notation', cell: ({ notation }) => notation },
];

/** A reading as the contract has facts: numbers in the base unit, null where the marking does not say. */
function readingLine({ notation, look, kind, facts, plausible, evidence }: Reading): object {
  const number = (key: keyof typeof facts): number | null => (facts[key] ? Number(facts[key].value) : null);
  return {
    look,
    notation,
    kind,
    value: number('value'),
    unit: facts.value?.unit ?? null,
    toleranceLow: number('tolerance-low'),
    toleranceHigh: number('tolerance-high'),
    toleranceUnit: facts['tolerance-low']?.unit ?? null,
    voltage: number('voltage'),
    temperatureCoefficient: number('temperature-coefficient'),
    plausible,
    because: evidence.map((one) => ({ code: one.code, text: sayEvidence(one) })),
  };
}

function tell<Row>(
  terminal: Terminal,
  rows: readonly Row[],
  columns: readonly ColumnOf<Row>[],
  json: (row: Row) => object,
  asked: boolean,
): Ending {
  if (asked) for (const row of rows) terminal.out(JSON.stringify(json(row)));
  else for (const line of tableLines(rows, columns, terminal.columns)) terminal.out(line);
  return ENDED;
}

export const command = defineCommand({
  name: 'marking',
  summary: 'What a stray part may be, by its bands or by what is printed on it.',
  usage: 'bagatelle marking WORDS [--on LOOK] [--old] [--line] [--of]',
  example: 'bagatelle marking yellow violet red gold',
  options: {
    on: {
      type: 'word',
      value: 'LOOK',
      say: 'what it is: bands, chip, capacitor, can (with a polarity) or coil; any unless said',
    },
    old: { type: 'switch', say: 'a resistor from before 2016, when colours of tolerances changed' },
    line: { type: 'switch', say: 'a line stands under or over the figures' },
    of: { type: 'switch', say: 'the other way: WORDS say a part, and what may be marked on it is shown' },
    json: JSON_OPTION,
  },
  run({ words, options, terminal }) {
    if (!words.join('').trim()) return Promise.resolve(wrongUsage(cliText('words-missing', { what: 'WORDS' })));
    const json = options.json ?? false;
    if (options.of) {
      const markings = markingsOf(words.join(' '));
      if (markings.length === 0) terminal.say(cliText('no-marking', { words: words.join(' ') }));
      return Promise.resolve(tell(terminal, markings, MARKINGS, (one) => one, json));
    }
    const look = options.on === undefined ? null : lookNamed(options.on);
    if (options.on !== undefined && look === null)
      return Promise.resolve(wrongUsage(cliText('no-such-look', { look: options.on })));
    const { readings, unread } = readStray(words, { look, old: options.old ?? false, underlined: options.line ?? false });
    if (unread) {
      const { why, settle } = sayUnread(unread);
      terminal.say(`${why} ${settle}`);
      return Promise.resolve(refused(null));
    }
    return Promise.resolve(tell(terminal, readings, READINGS, readingLine, json));
  },
});
