import { randomUUID } from 'node:crypto';
import { followStock } from '#actions/follow-stock.ts';
import { planBom, type PlannedBom } from '#actions/plan-bom.ts';
import { reserveBom } from '#actions/reserve-bom.ts';
import { kitAnswer, type KitAnswer } from '#api/kits.ts';
import type { Lab } from '#db/database.ts';
import { sayBecause } from '#say/en/because.ts';
import { cliText } from '#say/en/cli.ts';
import { warningText } from '#say/en/warnings.ts';
import { oneWord } from '../bag-words.ts';
import { namedBom } from '../bom-words.ts';
import { defineCommand, ENDED, refused } from '../command.ts';
import { LINE_COLUMNS, ROUTE_COLUMNS } from '../kit-tables.ts';
import { clock, who, withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';
import { tableLines } from '../table.ts';
import type { Terminal } from '../terminal.ts';
import { BOARDS, readWhole } from '../whole.ts';
import { WRITE_OPTIONS } from '../write-act.ts';

export const command = defineCommand({
  name: 'kit',
  summary: 'Plan a kit: which bags give how many, the walk, the trays. Kept only with --reserve.',
  usage: 'bagatelle kit BOM [--boards N] [--reserve [--name NAME]] [--no-spares]',
  example: 'bagatelle kit blinker.csv --boards 3 --reserve',
  options: {
    boards: { type: 'word', value: 'N', say: 'so many boards: 1 unless said' },
    reserve: { type: 'switch', say: 'promise the bags to this build' },
    name: { type: 'word', value: 'NAME', say: 'name of the build: that of the BOM unless said' },
    'no-spares': { type: 'switch', say: 'not a piece above the need' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const bomWord = oneWord(words, 'BOM');
    if (!bomWord.ok) return bomWord.ending;
    const boards = readWhole(options.boards ?? '1', '--boards', BOARDS);
    if (!boards.ok) return refused(boards.refusal);
    return withLab(async (lab) => {
      const bom = await namedBom(lab, bomWord.value);
      if (!bom.ok) return refused(bom.refusal);
      const spares = !options['no-spares'];
      const { name, board, revision, ...lines } = bom.value;
      const wanted = {
        id: options.id ?? randomUUID(),
        bom: lines,
        boards: boards.value,
        spares,
        name: options.name ?? name,
        ...(board !== undefined && { board }),
        ...(revision !== undefined && { revision }),
        ...(options.note !== undefined && { note: options.note }),
      };
      const planned = await withProgress(terminal, cliText('planning'), () =>
        options.reserve ? reserve(lab, terminal, wanted) : plan(lab, wanted),
      );
      if (!planned.ok) return refused(planned.refusal);
      const answer = kitAnswer(planned.value, sayBecause);
      if (options.json) terminal.out(JSON.stringify(answer));
      else tellKit(terminal, answer);
      return ENDED;
    });
  },
});

type Wanted = Parameters<typeof reserveBom>[4];

async function plan(lab: Lab, { bom, boards, spares }: Wanted): Promise<{ ok: true; value: PlannedBom }> {
  return { ok: true, value: await planBom(await followStock(lab).current(), bom, boards, { spares }) };
}

async function reserve(lab: Lab, terminal: Terminal, wanted: Wanted) {
  const outcome = await reserveBom(lab, followStock(lab), clock, who(), wanted);
  if (!outcome.ok) return outcome;
  const { planned, result } = outcome.value;
  for (const { name, build } of result.builds)
    terminal.say(cliText('reserved', { name, build: build.slice(0, 8), act: result.act.slice(0, 8) }));
  for (const warning of result.warnings) terminal.say(warningText(warning));
  return { ok: true as const, value: planned };
}

function tellKit(terminal: Terminal, answer: KitAnswer): void {
  for (const line of tableLines(answer.lines, LINE_COLUMNS, terminal.columns)) terminal.out(line);
  terminal.out('');
  for (const line of tableLines(answer.route, ROUTE_COLUMNS, terminal.columns)) terminal.out(line);
  terminal.out('');
  terminal.out(cliText('kit-sum', answer));
}
