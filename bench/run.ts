import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Bench, Measured } from './bench.ts';
import { bench as find } from './find.ts';
import { bench as ledger } from './ledger.ts';
import { bench as match } from './match.ts';
import { bench as pages } from './pages.ts';
import { bench as read } from './read.ts';

const BENCHES: readonly Bench[] = [read, ledger, find, match, pages];
const RESULTS = fileURLToPath(new URL('results.md', import.meta.url));

/** `npm run bench`, `npm run bench -- find match`, `npm run bench -- --write` (keeps the table in bench/results.md). */
const { values, positionals } = parseArgs({ options: { write: { type: 'boolean', default: false } }, allowPositionals: true });
const chosen = BENCHES.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
const unknown = positionals.filter((name) => !BENCHES.some((bench) => bench.name === name));
if (unknown.length) {
  console.error(`No bench is called ${unknown.join(', ')}; there are ${BENCHES.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}

const written: string[] = [];
let missed = 0;
for (const bench of chosen) {
  const rows = await bench.run(tell);
  tell('');
  const page = [`## ${bench.name}`, '', bench.about, '', ...table(rows), ''].join('\n');
  console.log(page);
  written.push(page);
  missed += rows.filter(({ ok }) => !ok).length;
}
if (values.write) keep(written);
if (missed) console.error(`${missed} of the targets ${missed === 1 ? 'is' : 'are'} missed.`);
process.exitCode = missed ? 1 : 0;

/** One line on the screen that is written over; nothing where output is no terminal but the line itself. */
function tell(progress: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001B[K${progress}`);
  else if (progress) process.stderr.write(`${progress}\n`);
}

function table(rows: readonly Measured[]): string[] {
  const head = ['what', 'ours', 'other', 'ratio', 'target', ''];
  const cells = rows.map(({ what, ours, other, ratio, target, ok }) => [what, ours, other, ratio, target, ok ? 'ok' : 'missed']);
  const widths = head.map((name, column) => Math.max(name.length, 3, ...cells.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join(' | ')} |`;
  return [line(head), `| ${widths.map((width) => '-'.repeat(width)).join(' | ')} |`, ...cells.map(line)];
}

/** The benches that ran take the place of their former results; the others stay. */
function keep(pages: readonly string[]): void {
  const [cpu] = cpus();
  const machine = `${cpus().length} × ${cpu?.model.trim() ?? 'unknown processor'}, ${Math.round(totalmem() / 2 ** 30)} GiB, ${process.platform}, Node ${process.versions.node}, ${new Date().toISOString().slice(0, 10)}`;
  const fresh = pages.map((page) => page.replace('\n\n', `\n\n${machine}\n\n`));
  const before = known().filter((page) => !fresh.some((one) => heading(one) === heading(page)));
  const order = (page: string): number => BENCHES.findIndex(({ name }) => heading(page) === `## ${name}`);
  const all = [...before, ...fresh].toSorted((a, b) => order(a) - order(b));
  writeFileSync(
    RESULTS,
    `# What was measured last\n\nWritten by \`npm run bench -- --write\`. Rates on a shared machine move by up to 40 %; the ratios are taken in one run.\n\n${all.map((page) => page.trim()).join('\n\n')}\n`,
  );
}

function known(): string[] {
  try {
    return readFileSync(RESULTS, 'utf8')
      .split(/^(?=## )/m)
      .filter((page) => page.startsWith('## '));
  } catch {
    return [];
  }
}

function heading(page: string): string {
  return page.slice(0, page.indexOf('\n'));
}
