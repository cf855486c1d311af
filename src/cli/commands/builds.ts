import { readBuilds, type BuildSummary, type Kit, type KitTake } from '#db/read-builds.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { writeRefs } from '../kit-tables.ts';
import { withLab } from '../lab.ts';
import { namedBuild } from '../named-build.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import type { Terminal } from '../terminal.ts';

const BUILDS: readonly ColumnOf<BuildSummary>[] = [
  { head: 'build', cell: (build) => build.id.slice(0, 8) },
  { head: 'name', cell: (build) => build.name, gives: true },
  { head: 'boards', cell: (build) => build.boards, right: true },
  { head: 'priority', cell: (build) => build.priority, right: true },
  { head: 'due', cell: (build) => build.due },
  { head: 'state', cell: (build) => build.state },
  { head: 'to pick', cell: (build) => build.open, right: true },
  { head: 'short', cell: (build) => build.short || '', right: true },
];

const ROUTE: readonly ColumnOf<KitTake>[] = [
  { head: 'box', cell: (take) => take.box },
  { head: 'place', cell: (take) => take.place },
  { head: 'bag', cell: (take) => take.bag, right: true },
  { head: 'take', cell: (take) => take.planned, right: true },
  { head: 'picked', cell: (take) => (take.state === 'done' || take.picked ? take.picked : ''), right: true },
  { head: 'tray', cell: (take) => take.tray, right: true },
  { head: 'cell', cell: (take) => take.cell, right: true },
  { head: 'part', cell: (take) => take.code },
  { head: 'refs', cell: (take) => writeRefs(take.refs), gives: true },
];

const TRAYS: readonly ColumnOf<KitTake>[] = [
  { head: 'tray', cell: (take) => take.tray, right: true },
  { head: 'cell', cell: (take) => take.cell, right: true },
  { head: 'pieces', cell: (take) => take.planned, right: true },
  { head: 'part', cell: (take) => take.code },
  { head: 'refs', cell: (take) => writeRefs(take.refs), gives: true },
];

export const command = defineCommand({
  name: 'builds',
  summary: 'List the builds, or show the walk and the trays of one.',
  usage: 'bagatelle builds [BUILD]',
  example: 'bagatelle builds blinker',
  options: { json: JSON_OPTION },
  async run({ words: [word, extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    return withLab(async (lab) => {
      if (word === undefined) {
        tell(terminal, await lab.read(readBuilds), BUILDS, options.json === true);
        return ENDED;
      }
      const kit = await namedBuild(lab, word);
      if (!kit.ok) return refused(kit.refusal);
      if (options.json) terminal.out(JSON.stringify(kit.value));
      else tellKit(terminal, kit.value);
      return ENDED;
    });
  },
});

function tell<Row>(terminal: Terminal, rows: readonly Row[], columns: readonly ColumnOf<Row>[], json: boolean): void {
  if (json) for (const row of rows) terminal.out(JSON.stringify(row));
  else for (const line of tableLines(rows, columns, terminal.columns)) terminal.out(line);
}

function tellKit(terminal: Terminal, { build, takes }: Kit): void {
  terminal.out(cliText('build-head', { ...build, build: build.id.slice(0, 8) }));
  terminal.out(cliText('head-route'));
  tell(terminal, takes, ROUTE, false);
  terminal.out(cliText('head-trays'));
  tell(
    terminal,
    takes.toSorted((a, b) => a.tray - b.tray || a.cell - b.cell),
    TRAYS,
    false,
  );
}
