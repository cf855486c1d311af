import { readStock } from '#db/read-stock.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';

interface BoxRow {
  readonly box: string | null;
  readonly places: number | null;
  readonly bags: number;
  readonly exhausted: number;
  readonly toCount: number;
  readonly lifts: number | null;
}

const COLUMNS: readonly ColumnOf<BoxRow>[] = [
  { head: 'box', cell: (row) => row.box ?? 'no box' },
  { head: 'places', cell: (row) => row.places, right: true },
  { head: 'bags', cell: (row) => row.bags, right: true },
  { head: 'exhausted', cell: (row) => row.exhausted || '', right: true },
  { head: 'to count', cell: (row) => row.toCount || '', right: true },
  { head: 'boxes on it', cell: (row) => row.lifts, right: true },
];

export const command = defineCommand({
  name: 'boxes',
  summary: 'List the boxes in walking order, with how many bags each holds.',
  usage: 'bagatelle boxes',
  example: 'bagatelle boxes',
  options: { json: JSON_OPTION },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const { bags, boxes } = await withLab((lab) => lab.read(readStock));
    const known = boxes.toSorted((a, b) => a.order - b.order).map(({ name, places, lifts }) => ({ box: name, places, lifts }));
    const loose = bags.some((bag) => bag.box === null) ? [{ box: null, places: null, lifts: null }] : [];
    const rows = [...known, ...loose].map((box): BoxRow => {
      const inside = bags.filter((bag) => bag.box === box.box);
      const { length: exhausted } = inside.filter((bag) => bag.onHand === 0);
      return { ...box, bags: inside.length, exhausted, toCount: inside.filter((bag) => bag.toCount).length };
    });
    if (options.json) for (const row of rows) terminal.out(JSON.stringify(row));
    else for (const line of tableLines(rows, COLUMNS, terminal.columns)) terminal.out(line);
    return ENDED;
  },
});
