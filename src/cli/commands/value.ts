import { tellValue, type NearestTold, type ValueTold } from '#actions/tell-value.ts';
import { cliText } from '#say/en/cli.ts';
import { deviationText, VALUE } from '#say/en/value.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import type { Terminal } from '../terminal.ts';

const COLUMNS: readonly ColumnOf<NearestTold>[] = [
  { head: 'series', cell: (row) => row.series },
  { head: 'nearest', cell: (row) => row.nearest, right: true },
  { head: 'off by', cell: (row) => deviationText(row.deviation), right: true },
  { head: 'next below', cell: (row) => row.below, right: true },
  { head: 'next above', cell: (row) => row.above, right: true },
];

function seriesLine({ series, number }: ValueTold): string {
  if (series === null) return VALUE.otherUnit;
  if (number === 0) return VALUE.link;
  return series.length ? VALUE.series(series) : VALUE.noSeries;
}

function tell(terminal: Terminal, text: string, told: ValueTold): void {
  terminal.out(VALUE.read(text, told.written, told.code));
  terminal.out(seriesLine(told));
  for (const line of tableLines(told.nearest, COLUMNS, terminal.columns)) terminal.out(line);
  const marks = told.marks.map(({ text: mark, onePercent }) => (onePercent ? VALUE.onePercent(mark) : mark));
  if (told.look && marks.length) terminal.out(VALUE.markedOn(told.look, marks));
  for (const { why, settle } of told.doubts) terminal.say(`${why} ${settle}`);
}

/** The answer as machines get it. */
function json(text: string, { read, number, written, code, series, nearest, marks, doubts }: ValueTold): object {
  return {
    text,
    value: number,
    unit: read.unit,
    written,
    code,
    series: series ?? [],
    nearest: nearest.map((row) => ({ ...row, deviation: Number(row.deviation) })),
    marks: marks.map(({ text: mark, onePercent }) => ({ text: mark, tolerance: onePercent ? 0.01 : null })),
    doubts,
  };
}

export const command = defineCommand({
  name: 'value',
  summary: 'Tell how a value is read, whether it is a standard one, and which are nearest.',
  usage: 'bagatelle value VALUE',
  example: 'bagatelle value 9k09',
  options: { json: JSON_OPTION },
  run({ words, options, terminal }) {
    const text = words.join(' ').trim();
    if (!text) return Promise.resolve(wrongUsage(cliText('words-missing', { what: 'VALUE' })));
    const told = tellValue(text);
    if (!told) {
      terminal.say(`bagatelle: ${VALUE.none(text)}`);
      return Promise.resolve(refused(null));
    }
    if (options.json) terminal.out(JSON.stringify(json(text, told)));
    else tell(terminal, text, told);
    return Promise.resolve(ENDED);
  },
});
