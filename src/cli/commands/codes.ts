import { previewCodes, type CodeOfBag } from '#actions/preview-codes.ts';
import { readStock } from '#db/read-stock.ts';
import { cliText } from '#say/en/cli.ts';
import { sayCodePreview, sayPatternFault } from '#say/en/codes.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';

interface Row extends CodeOfBag {
  /** other bags that would carry the same code though their part is another */
  readonly clash: readonly number[];
}

const COLUMNS: readonly ColumnOf<Row>[] = [
  { head: 'bag', cell: ({ bag }) => bag, right: true },
  { head: 'code now', cell: ({ now }) => now },
  { head: 'by the pattern', cell: ({ wouldBe }) => wouldBe },
  { head: 'same as bag', cell: ({ clash }) => clash.join(', '), gives: true },
];

export const command = defineCommand({
  name: 'codes',
  summary: 'Show what the part codes of all bags would be by a pattern, and which would clash; writes nothing.',
  usage: "bagatelle codes [--pattern '{kind}-{value}-{rest}']",
  example: "bagatelle codes --pattern '{kind}-{value}-{package}'",
  options: {
    pattern: { type: 'word', value: 'PATTERN', say: 'pieces in braces with - _ . / : + between; {rest} is what is not named' },
    json: JSON_OPTION,
  },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const { bags } = await withLab((lab) => lab.read(readStock));
    const previewed = previewCodes(options.pattern, bags);
    if (!previewed.ok) return wrongUsage(sayPatternFault(previewed.fault));
    const { bags: codes, differ, clashes } = previewed.preview;
    const sharing = new Map(clashes.map(({ code, of }) => [code, of.map(({ number }) => number)]));
    const rows = codes.map((one): Row => ({ ...one, clash: (sharing.get(one.wouldBe) ?? []).filter((bag) => bag !== one.bag) }));
    if (options.json) for (const row of rows) terminal.out(JSON.stringify(row));
    else {
      const changed = rows.filter(({ now, wouldBe, clash }) => now !== wouldBe || clash.length > 0);
      for (const line of tableLines(changed, COLUMNS, terminal.columns)) terminal.out(line);
    }
    terminal.say(sayCodePreview(rows.length, differ, clashes.length));
    return clashes.length > 0 ? refused(null) : ENDED;
  },
});
