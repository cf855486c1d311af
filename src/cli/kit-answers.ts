import type { ShownBuild } from '#actions/shown-build.ts';
import { kitAnswer, otherBuild, plannedKit } from '#api/kit-answers.ts';
import type { KitAnswer } from '#api/kits.ts';
import { sayBecause } from '#say/en/because.ts';
import { cliText } from '#say/en/cli.ts';
import { LINE_COLUMNS, ROUTE_COLUMNS, toldLines } from './kit-tables.ts';
import { tableLines } from './table.ts';
import type { Terminal } from './terminal.ts';

/** Builds of one plan that are to be shown, and all builds of it. */
export interface Shown {
  readonly shown: readonly ShownBuild[];
  readonly all: readonly ShownBuild[];
}

/** One object for each build: the contract of `kit`; a build that is kept, or one of several, says its name as well. */
export function writeKits(terminal: Terminal, { shown, all }: Shown): void {
  for (const one of shown) {
    const name = shown.length > 1 ? { name: one.open.name } : {};
    const answer = one.open.kept ? plannedKit(one, all, sayBecause) : { ...name, ...kitAnswer(one, all, sayBecause) };
    terminal.out(JSON.stringify(answer));
  }
}

/** Each build with its lines and its walk, and what the others get. */
export function tellKits(terminal: Terminal, { shown, all }: Shown): void {
  for (const [at, one] of shown.entries()) {
    if (at > 0) terminal.out('');
    if (shown.length > 1) terminal.out(`${one.open.name}\n`);
    tellKit(terminal, one, kitAnswer(one, all, sayBecause));
  }
  const others = all.filter((one) => !shown.includes(one));
  if (others.length === 0) return;
  terminal.out(`\n${cliText('others-head')}`);
  tellInShort(terminal, others);
}

/** What each build gets, one line for each. */
export function tellInShort(terminal: Terminal, builds: readonly ShownBuild[]): void {
  for (const one of builds) terminal.out(cliText('build-gets', otherBuild(one)));
}

function tellKit(terminal: Terminal, { lines }: ShownBuild, answer: KitAnswer): void {
  for (const line of tableLines(toldLines(lines, answer.lines), LINE_COLUMNS, terminal.columns)) terminal.out(line);
  terminal.out('');
  for (const line of tableLines(answer.route, ROUTE_COLUMNS, terminal.columns)) terminal.out(line);
  terminal.out('');
  terminal.out(cliText('kit-sum', answer));
}
